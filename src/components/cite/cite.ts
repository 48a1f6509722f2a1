import { dayInWords } from '../site/day-in-words.ts';

/** A page of this site as others cite it. There is no author to name: the site speaks for itself. */
export interface Cited {
  readonly title: string;
  /** Path from the site's root, which also makes the key of the entry: `bobweight/`. */
  readonly path: string;
  /** Of the site. */
  readonly version: string;
  /** Of the calculations. */
  readonly calculations: number;
  /** The day of that version of the calculations, as 2026-11-30. */
  readonly date: string;
}

function partsOf(date: string): readonly [year: number, month: number, day: number] {
  const [year = NaN, month = NaN, day = NaN] = date.split('-').map(Number);
  return [year, month, day];
}

function versionOf({ version, calculations }: Cited): string {
  return `${version}, calculations ${calculations}`;
}

/** One line without the address: Throwbook, “Bobweight”, version 0.1.0, calculations 1, 30 November 2026. */
export function citationLine(cited: Cited): string {
  return `Throwbook, “${cited.title}”, version ${versionOf(cited)}, ${dayInWords(cited.date)}`;
}

/** The same with the address. */
export function plainCitation(cited: Cited, address: string): string {
  return `${citationLine(cited)}, ${address}`;
}

function keyOf({ path, calculations }: Cited): string {
  return `throwbook-${path.replaceAll('/', '')}-${calculations}`;
}

/** Text as BibTeX takes it between braces. */
function inBibtex(text: string): string {
  return text.replace(/[&%$#_{}]/g, '\\$&').replace(/[‘’]/g, "'");
}

export function bibtex(cited: Cited, address: string): string {
  const [year, month] = partsOf(cited.date);
  const fields = [
    ['title', `{Throwbook}: ${inBibtex(cited.title)}`],
    ['version', versionOf(cited)],
    ['year', String(year)],
    ['month', String(month)],
    ['url', address],
  ] as const;
  const lines = fields.map(([name, text]) => `  ${name} = {${text}},\n`).join('');
  return `@misc{${keyOf(cited)},\n${lines}}\n`;
}

/** An item of CSL-JSON, in the list that reference managers take. */
export function cslJson(cited: Cited, address: string): string {
  const item = {
    id: keyOf(cited),
    type: 'webpage',
    title: cited.title,
    'container-title': 'Throwbook',
    version: versionOf(cited),
    issued: { 'date-parts': [partsOf(cited.date)] },
    URL: address,
  };
  return `${JSON.stringify([item], undefined, 2)}\n`;
}
