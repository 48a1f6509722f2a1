/** Opens the folded section whose heading the address names, at arrival and at each link within the page. */
function openNamed(): void {
  const named = location.hash.length > 1 ? document.getElementById(location.hash.slice(1)) : null;
  const fold = named?.closest('summary')?.closest('details') ?? named?.closest('details');
  if (fold instanceof HTMLDetailsElement) fold.open = true;
}
openNamed();
window.addEventListener('hashchange', openNamed);

const all = document.querySelector<HTMLButtonElement>('[data-open-sections]');
all?.addEventListener('click', () => {
  for (const fold of document.querySelectorAll<HTMLDetailsElement>('details.section'))
    fold.open = true;
  all.remove();
});
