/** True for a reader who asked to be sent no more than must be. */
function savesData(): boolean {
  return (
    'connection' in navigator && (navigator.connection as { saveData?: boolean }).saveData === true
  );
}

/** Refused in a private window or on an insecure address: the site then works as any other does. */
async function begin(): Promise<void> {
  try {
    await (await import('./keep.ts')).keep(navigator.serviceWorker);
  } catch {
    // On the next page it is tried again.
  }
}

// A development server keeps nothing. What the page itself needs comes first.
if (import.meta.env.PROD && 'serviceWorker' in navigator && !savesData())
  window.addEventListener('load', () => {
    if ('requestIdleCallback' in window) requestIdleCallback(() => void begin());
    else setTimeout(() => void begin(), 1000);
  });
