import { to } from '../site/to.ts';

/*
 * What every page begins with of the search: it hears who asks for it. All else is fetched then.
 */

/** The key alone can be turned off: who speaks to a computer in words may press it without meaning to. */
const notHere = 'input, select, textarea, [data-no-search-key] *';

function open(event: Event): void {
  event.preventDefault();
  import('./dialog.ts').then(
    (dialog) => {
      dialog.openSearch();
    },
    // As without a script.
    () => {
      location.href = to('search/');
    },
  );
}

document.addEventListener('keydown', (event) => {
  const { key, ctrlKey, metaKey, target } = event;
  if (ctrlKey || metaKey ? key === 'k' : key === '/' && !(target as Element).matches(notHere))
    open(event);
});
document.querySelector('[data-search]')?.addEventListener('click', open);
