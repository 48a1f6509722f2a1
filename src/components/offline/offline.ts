/** True for a reader who asked to be sent no more than must be. */
function savesData(): boolean {
  const { connection } = navigator as Navigator & { connection?: { saveData?: boolean } };
  return connection?.saveData === true;
}

/** Refused in a private window or on an insecure address: the site then works as any other does. */
function begin(): void {
  // On the next page it is tried again.
  import('./keep.ts').then((kept) => kept.keep(navigator.serviceWorker)).catch(() => undefined);
}

// A development server keeps nothing. What the page itself needs comes first.
if (import.meta.env.PROD && 'serviceWorker' in navigator && !savesData())
  window.addEventListener('load', () => {
    ('requestIdleCallback' in window ? requestIdleCallback : setTimeout)(begin);
  });
