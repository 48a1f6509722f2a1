import { copyText } from './copy.ts';

/*
 * The build knows no host: a citation is made with the path alone, and here the address takes its place. Buttons copy
 * what stands above them.
 */
for (const part of document.querySelectorAll<HTMLElement>('[data-address]')) {
  const path = part.textContent;
  part.textContent = new URL(path, location.href).href;
}
for (const button of document.querySelectorAll<HTMLButtonElement>('[data-copy]')) {
  button.addEventListener('click', () => {
    const text = document.getElementById(button.dataset['copy'] ?? '');
    const said = button.parentElement?.querySelector('[role=status]');
    if (text === null || said === null || said === undefined) return;
    void copyText(text).then((words) => {
      said.textContent = words;
    });
  });
}
/** Opens what the address names: it is folded. */
function openNamed(): void {
  const named = document.getElementById(location.hash.slice(1));
  if (!(named instanceof HTMLDetailsElement)) return;
  named.open = true;
  named.scrollIntoView();
}
window.addEventListener('hashchange', openNamed);
openNamed();
