import { to } from '../site/to.ts';
import { element } from './element.ts';
import type { FoundPage } from './full-text.ts';
import type { NameHit, NameKind } from './names.ts';

const kindWords: Readonly<Record<NameKind, string>> = {
  term: 'Glossary',
  quantity: 'Quantity to enter',
  result: 'Result',
  caution: 'Caution',
  source: 'Source',
  topic: 'Topic',
  page: 'Page',
};

/** Sections of one page that are shown at most. */
const mostParts = 3;

/** A symbol with its subscript set low, as `text/Symbol.svelte` sets it. */
function symbolOf(symbol: string): HTMLElement {
  const [stem = '', subscript = ''] = symbol.split(/_(.*)/s);
  const shown = element('var', {}, stem);
  if (subscript !== '') shown.append(element('sub', {}, subscript));
  return shown;
}

/** One thing that the query names: its name as a link, its other name where that was typed, and what it is. */
export function nameItem({ named, by }: NameHit): HTMLLIElement {
  const { kind, name, symbol, path, text } = named;
  const link = element('a', { href: to(path) }, name);
  if (symbol !== undefined) link.append(' ', symbolOf(symbol));
  const item = element('li', {}, link);
  if (by !== undefined) item.append(kind === 'term' ? `, also called ${by}` : `, for “${by}”`);
  item.append(' ', element('small', {}, kindWords[kind]));
  if (text !== '') item.append(element('p', {}, text));
  return item;
}

/** Words of a page with those found marked. They come as HTML, of which nothing but the marks is taken. */
function excerptOf(html: string): HTMLParagraphElement {
  const plain = (text: string): string => text.replaceAll('&lt;', '<').replaceAll('&gt;', '>');
  const words = element('p');
  // The meaning of a term, left out of the index, has left a space behind the term.
  const closed = html.replace(/\s+(?=[.,;:)])/g, '');
  closed.split(/<mark>(.*?)<\/mark>/s).forEach((part, place) => {
    words.append(place % 2 === 1 ? element('mark', {}, plain(part)) : plain(part));
  });
  return words;
}

/** A page on which the words stand, with the sections that have them. */
export function pageItem(page: FoundPage): HTMLLIElement {
  const item = element('li', {}, element('a', { href: page.url }, page.meta.title));
  const parts = page.sub_results.filter(({ url }) => url !== page.url).slice(0, mostParts);
  const top = page.sub_results.find(({ url }) => url === page.url);
  if (top !== undefined || parts.length === 0) item.append(excerptOf((top ?? page).excerpt));
  if (parts.length > 0)
    item.append(
      element(
        'ul',
        {},
        ...parts.map(({ title, url, excerpt }) =>
          element('li', {}, element('a', { href: url }, title), excerptOf(excerpt)),
        ),
      ),
    );
  return item;
}

/** What to try where nothing was found. */
export function nothingFound(): HTMLElement {
  const link = (path: string, name: string): HTMLElement => element('a', { href: to(path) }, name);
  return element(
    'p',
    { class: 'search-none' },
    'Try one word, or its first letters; the part by another name; a symbol as it is printed, m_bob or λ. Or look through the ',
    link('glossary/', 'glossary'),
    ', the ',
    link('symbols/', 'symbols'),
    ' or the ',
    link('topics/', 'topics'),
    '.',
  );
}
