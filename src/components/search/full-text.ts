import { to } from '../site/to.ts';

/** A section of a page, with the words around what was found; they are marked by `<mark>`. */
export interface FoundPart {
  readonly title: string;
  readonly url: string;
  readonly excerpt: string;
}

/** A page on which words of the query stand. */
export interface FoundPage {
  readonly url: string;
  readonly excerpt: string;
  readonly meta: { readonly title: string };
  readonly sub_results: readonly FoundPart[];
}

/** What the site uses of pagefind, whose code and index the build lays beside the pages (build/search.js). */
interface Pagefind {
  options(how: { readonly excerptEllipsis: string }): Promise<void>;
  init(): Promise<void>;
  destroy(): Promise<void>;
  search(
    query: string,
  ): Promise<{ readonly results: readonly { data(): Promise<FoundPage> }[] } | null>;
}

let asked: Promise<Pagefind> | undefined;
let tries = 0;

async function fetchPagefind(): Promise<Pagefind> {
  tries += 1;
  // Some browsers keep a failure as long as the page lives, but by its address.
  const address = `${to('pagefind/pagefind.js')}${tries > 1 ? `?${String(tries)}` : ''}`;
  const pagefind = (await import(/* @vite-ignore */ address)) as Pagefind;
  await pagefind.options({ excerptEllipsis: '…' });
  await pagefind.init();
  return pagefind;
}

/** Has what finds words fetched; what failed is tried again at the next call. */
export async function openFullText(): Promise<Pagefind> {
  asked ??= fetchPagefind();
  try {
    return await asked;
  } catch (error) {
    asked = undefined;
    throw error;
  }
}

/** Words as they are compared by how they begin. */
function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}

/**
 * Whether a page has been found by the words of a query. Where the index has no word that begins so, pagefind takes one
 * that the query begins with, were it a single letter.
 */
function isMeant(query: string, { excerpt }: FoundPage): boolean {
  const marked = [...excerpt.matchAll(/<mark>(.*?)<\/mark>/gs)].flatMap(([, word = '']) =>
    wordsOf(word),
  );
  return wordsOf(query).some((asked) => marked.some((word) => word.startsWith(asked.slice(0, 3))));
}

/**
 * The pages with all words of a query, the best first; each is fetched when it is asked for.
 *
 * @throws if what finds them cannot be fetched
 */
export async function pagesWith(query: string): Promise<readonly (() => Promise<FoundPage>)[]> {
  // One letter begins every second word; a symbol with an index is no word.
  if (/^[\x20-\x7e]?$|_/.test(query)) return [];
  const pagefind = await openFullText();
  try {
    const { results } = (await pagefind.search(query)) ?? { results: [] };
    const best = await results[0]?.data();
    // All are found by the same words.
    const isFound = best !== undefined && isMeant(query, best);
    return isFound ? results.map((result) => () => result.data()) : [];
  } catch (error) {
    // It gives its worker five seconds to start and goes on without, where the page's policy lets no WebAssembly run.
    await pagefind.destroy();
    asked = undefined;
    throw error;
  }
}
