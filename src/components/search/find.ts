import { to } from '../site/to.ts';
import { type FoundPage, openFullText, pagesWith } from './full-text.ts';
import { inOurWords, type NameHit, type Named, namesFor, type Translated } from './names.ts';

/** What a query has found, the best first. */
export interface Answer {
  readonly names: readonly NameHit[];
  /** Pages and sections with its words; each is fetched when it is asked for. */
  readonly pages: readonly (() => Promise<FoundPage>)[];
  /** The other word for which this site's was looked for in the text. */
  readonly from?: Translated['from'];
}

let names: Promise<readonly Named[]> | undefined;

/** Everything that has a name; what could not be fetched is fetched anew at the next search. */
async function allNames(): Promise<readonly Named[]> {
  names ??= fetch(to('search/names.json')).then(async (answer) => {
    if (!answer.ok) throw new Error(`names.json: ${String(answer.status)}`);
    return (await answer.json()) as readonly Named[];
  });
  try {
    return await names;
  } catch (error) {
    names = undefined;
    throw error;
  }
}

/** Has all fetched that a search needs, before the first word is typed. */
export async function prepare(): Promise<void> {
  await Promise.all([allNames(), openFullText()]);
}

/** @throws if what is needed cannot be fetched */
export async function find(query: string): Promise<Answer> {
  const all = await allNames();
  const { query: ours, from } = inOurWords(query, all);
  const names = namesFor(query, all);
  const pages = await pagesWith(ours);
  if (from !== undefined && pages.length > 0) return { names, pages, from };
  return { names, pages: from === undefined ? pages : await pagesWith(query) };
}
