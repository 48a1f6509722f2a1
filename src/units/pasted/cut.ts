/** The sign between two cells of a line; `none` where a line is one cell. */
export const separators = { tab: '\t', semicolon: ';', comma: ',', none: '' } as const;
export type Separator = keyof typeof separators;

/** A pasted text cut into lines and cells, as it stands there; every line has as many cells as the longest. */
export interface Cut {
  readonly separator: Separator;
  readonly rows: readonly (readonly string[])[];
}

/** The sentence that says why a text was not cut. */
export interface Uncut {
  readonly say: string;
}

/** Longer is a slip of the clipboard: some thousand lines of a few columns are a tenth of it. */
const longestPasted = 2_000_000;
/** More lines than one list of parts with its heading, sums and remarks has. */
export const mostLines = 100;

/**
 * Cuts what was copied from a spreadsheet, or stands in a file of separated values (RFC 4180): cells in quotes may
 * hold separators, line breaks and doubled quotes. Empty lines before the first and after the last are left out, and
 * those between keep their place. Too many lines are counted, and not cut.
 *
 * @param separator where the reader says it; else it is found out, a tab before a semicolon before a comma
 */
export function cutPasted(text: string, separator?: Separator): Cut | Uncut {
  const plain = text.replace(/^\uFEFF/u, '');
  if (plain.trim() === '') return { say: 'Nothing is pasted yet.' };
  if (plain.length > longestPasted) {
    return {
      say: 'The text is longer than two million characters. Copy only the cells of the parts that were weighed.',
    };
  }
  const lines = plain.trim().split(/\r\n|\r|\n/u).length;
  if (lines > mostLines) {
    return {
      say: `The text has ${String(lines)} lines; at most ${String(mostLines)} are read. Copy only the cells of the parts that were weighed, at most one for each cylinder.`,
    };
  }
  const found = separator ?? separatorOf(plain);
  const rows = trimmed(cellsOf(plain, separators[found]));
  const width = Math.max(...rows.map((row) => row.length));
  return {
    separator: found,
    rows: rows.map((row) => [...row, ...Array<string>(width - row.length).fill('')]),
  };
}

/** Cell by cell. A quote opens a quoted cell only at its beginning: `1 7/8"` is no quoted cell. */
function cellsOf(text: string, sign: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at <= text.length) {
    const quoted = text[at] === '"' ? quotedAt(text, at, sign) : undefined;
    const end = quoted?.end ?? endOfCell(text, at, sign);
    row.push((quoted?.text ?? text.slice(at, end)).trim());
    const isCell = sign !== '' && text.startsWith(sign, end);
    if (!isCell) {
      rows.push(row);
      row = [];
    }
    at = end + (text.startsWith('\r\n', end) ? 2 : 1);
  }
  return rows;
}

function endOfCell(text: string, from: number, sign: string): number {
  for (let at = from; at < text.length; at += 1)
    if (text[at] === '\n' || text[at] === '\r' || text[at] === sign) return at;
  return text.length;
}

/** The quoted cell at a quote, where its closing quote ends the cell; undefined where it does not. */
function quotedAt(
  text: string,
  from: number,
  sign: string,
): { readonly text: string; readonly end: number } | undefined {
  let at = from + 1;
  while (at < text.length) {
    if (text[at] !== '"') at += 1;
    else if (text[at + 1] === '"') at += 2;
    else break;
  }
  const end = at + 1;
  const after = text[end];
  if (at >= text.length) return undefined;
  if (after !== undefined && after !== '\n' && after !== '\r' && after !== sign) return undefined;
  return { text: text.slice(from + 1, at).replaceAll('""', '"'), end };
}

function isBlank(row: readonly string[]): boolean {
  return row.every((cell) => cell === '');
}

function trimmed(rows: readonly string[][]): readonly string[][] {
  const first = rows.findIndex((row) => !isBlank(row));
  const last = rows.findLastIndex((row) => !isBlank(row));
  return rows.slice(first, last + 1);
}

function separatorOf(text: string): Separator {
  if (text.includes('\t')) return 'tab';
  if (text.includes(';')) return 'semicolon';
  return text.includes(',') && isCommaSeparated(text) ? 'comma' : 'none';
}

/**
 * A comma parts cells where a point marks decimals or quotes keep commas in, where a line has three cells and more,
 * or where a heading has one with no space behind it. Else it marks the decimals of one column.
 */
function isCommaSeparated(text: string): boolean {
  const lines = text.split(/\r\n|\r|\n/u).filter((line) => line.includes(','));
  const [first = ''] = lines;
  return (
    lines.some((line) => /\d\.\d|(?:^|,)"/u.test(line)) ||
    lines.some((line) => line.split(',').length > 2) ||
    (!/\d/u.test(first) && /,(?=\S)/u.test(first))
  );
}
