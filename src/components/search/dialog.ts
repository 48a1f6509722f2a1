import { element } from './element.ts';
import { type Answer, find, prepare } from './find.ts';
import { nameItem, nothingFound, pageItem } from './results.ts';

/** Where this device remembers that the key alone opens nothing; `public/early.js` reads it. */
const noKey = 'throwbook/no-search-key';
/** What is shown of each list before its reader asks for more. */
const most = { names: 5, pages: 6 };
/** From the last letter to the search [ms]. */
const quiet = 120;

const field = element('input', {
  type: 'text',
  id: 'search-field',
  autocomplete: 'off',
  spellcheck: 'false',
  enterkeyhint: 'search',
});
const close = element('button', { type: 'button' }, 'Close');
const form = element(
  'form',
  { role: 'search' },
  element('label', { for: field.id }, 'A word, a part or a symbol'),
  element('div', { class: 'search-line' }, field, close),
);
const status = element('p', { class: 'search-status', role: 'status' });
const found = element('div', { class: 'search-found' });
const byKey = element('input', { type: 'checkbox' });
const dialog = element(
  'dialog',
  { class: 'search no-print', 'aria-label': 'Search' },
  // What a press beside the sheet hits is the dialog itself.
  element(
    'div',
    { class: 'search-sheet' },
    form,
    status,
    found,
    element(
      'label',
      { class: 'search-key' },
      byKey,
      element('span', {}, 'The key ', element('kbd', {}, '/'), ' opens the search'),
    ),
  ),
);

/** A list with its heading; what is more than `limit` comes at a press. */
async function listOf<T>(
  title: string,
  all: readonly T[],
  limit: number,
  itemOf: (one: T) => HTMLLIElement | Promise<HTMLLIElement>,
): Promise<readonly HTMLElement[]> {
  if (all.length === 0) return [];
  const items = element('ol', {}, ...(await Promise.all(all.slice(0, limit).map(itemOf))));
  const rest = all.slice(limit);
  if (rest.length === 0) return [element('h2', {}, title), items];
  const more = element('button', { type: 'button' }, `${String(rest.length)} more`);
  more.addEventListener('click', () => {
    void Promise.all(rest.map(itemOf)).then((added) => {
      more.remove();
      items.append(...added);
      added[0]?.querySelector('a')?.focus();
    });
  });
  return [element('h2', {}, title), items, more];
}

function counted(count: number, one: string, many: string): string {
  return `${String(count)} ${count === 1 ? one : many}`;
}

/** How much was found, in words. */
function told(query: string, { names, pages, from }: Answer): string {
  if (names.length + pages.length === 0) return `Nothing was found for “${query}”.`;
  const sums = [
    ...(names.length > 0 ? [counted(names.length, 'entry', 'entries')] : []),
    ...(pages.length > 0 ? [counted(pages.length, 'page', 'pages')] : []),
  ];
  const words = from === undefined ? query : `${from.to}, also called ${from.word}`;
  return `${sums.join(' and ')} for “${words}”.`;
}

/** The search that is on its way; an older one that comes later is shown no more. */
let latest: Promise<void> = Promise.resolve();
let turn = 0;

async function show(query: string): Promise<void> {
  turn += 1;
  const mine = turn;
  try {
    const answer: Answer = query === '' ? { names: [], pages: [] } : await find(query);
    const { names, pages } = answer;
    const lists = await Promise.all([
      listOf('Terms, symbols and sources', names, most.names, nameItem),
      listOf('In the text', pages, most.pages, async (page) => pageItem(await page())),
    ]);
    if (mine !== turn) return;
    status.textContent = query === '' ? '' : told(query, answer);
    const isEmpty = query !== '' && names.length + pages.length === 0;
    found.replaceChildren(...(isEmpty ? [nothingFound()] : lists.flat()));
  } catch {
    if (mine !== turn) return;
    found.replaceChildren();
    status.textContent =
      'The search could not be fetched: the connection is lost, or slow. The next letter tries again.';
  }
}

let timer: ReturnType<typeof setTimeout> | undefined;
let shownFor = '';

/** Searches for what stands in the field now, unless it is shown already. */
function searchNow(): Promise<void> {
  clearTimeout(timer);
  const query = field.value.trim();
  if (query !== shownFor) {
    shownFor = query;
    latest = show(query);
  }
  return latest;
}

function links(): readonly HTMLAnchorElement[] {
  return [...found.querySelectorAll('a')];
}

/** Up and down go from the field to the first link, from link to link, and back. */
function moveFocus(event: KeyboardEvent): void {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (step === undefined || event.target === byKey) return;
  const stops: readonly HTMLElement[] = [field, ...links()];
  const at = stops.findIndex((stop) => stop === document.activeElement);
  event.preventDefault();
  stops[Math.min(Math.max(at + step, 0), stops.length - 1)]?.focus();
}

field.addEventListener('input', () => {
  clearTimeout(timer);
  timer = setTimeout(() => void searchNow(), quiet);
});
form.addEventListener('submit', (event) => {
  event.preventDefault();
  void searchNow().then(() => links()[0]?.click());
});
close.addEventListener('click', () => {
  dialog.close();
});
dialog.addEventListener('keydown', moveFocus);
dialog.addEventListener('click', (event) => {
  const { target, ctrlKey, metaKey, shiftKey } = event;
  const leaves = target instanceof Element && target.closest('a') !== null;
  // Who opens a page beside this one goes on reading the list.
  if (target === dialog || (leaves && !ctrlKey && !metaKey && !shiftKey)) dialog.close();
});
byKey.addEventListener('change', () => {
  document.documentElement.toggleAttribute('data-no-search-key', !byKey.checked);
  try {
    if (byKey.checked) localStorage.removeItem(noKey);
    else localStorage.setItem(noKey, 'no');
  } catch {
    // Storage is forbidden: it holds for this page.
  }
});

/** Opens the search over the page, with what was looked for last marked so that typing takes its place. */
export function openSearch(): void {
  if (dialog.open) return;
  if (!dialog.isConnected) document.body.append(dialog);
  byKey.checked = !document.documentElement.hasAttribute('data-no-search-key');
  dialog.showModal();
  field.focus();
  field.select();
  // What fails here is told at the first search.
  prepare().catch(() => undefined);
}
