/** Fetches what leads on from a link, when the page is opened with one or comes to one. */
function lead(): void {
  import('./lead-on.svelte.ts').catch(() => window.addEventListener('online', lead));
}
if (document.querySelector('[data-pending=link]')) lead();
window.addEventListener('hashchange', () => {
  // Asked as `notebook/is-link.ts` does, without fetching what that is packed with.
  if (/=|%3D/i.test(location.hash)) lead();
});
