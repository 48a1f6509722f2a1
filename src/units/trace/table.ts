/** A text cut into columns of numbers, with what was noticed on the way. */
export interface NumberTable {
  /** The words over the columns; empty when no line of words came before the numbers. */
  readonly heading: readonly string[];
  /** Column by column, all equally long. */
  readonly columns: readonly (readonly number[])[];
  /** Lines after the first line of numbers that held none, or too few. */
  readonly skipped: number;
}

/** The sentence that says why a text is no table of numbers. */
export interface NoTable {
  readonly say: string;
}

/** Lines and characters above which a text is not read: some hundred cycles, and nothing a page should hold. */
const mostLines = 200_000;
const mostCharacters = 8_000_000;

type Separator = ';' | '\t' | ',' | ' ';

function cut(line: string, separator: Separator): string[] {
  const cells = separator === ' ' ? line.trim().split(/\s+/u) : line.split(separator);
  return cells.map((cell) => cell.trim().replace(/^"(.*)"$/u, '$1'));
}

/** A number with a point or a comma as its decimal sign; NaN for anything else. */
function numberOf(cell: string): number {
  if (!/^[+\-−]?(\d+[.,]?\d*|[.,]\d+)(e[+-]?\d+)?$/iu.test(cell)) return Number.NaN;
  return Number(cell.replace('−', '-').replace(',', '.'));
}

function numbersIn(cells: readonly string[]): number {
  return cells.filter((cell) => !Number.isNaN(numberOf(cell))).length;
}

/**
 * Which sign parts the columns. Semicolons and tabs leave no doubt. A comma parts columns when every line of
 * numbers then has as many cells as it has words above it, or when a point marks the decimals; otherwise
 * white space parts them and the commas mark decimals.
 */
function separatorOf(lines: readonly string[]): Separator | undefined {
  const sample = lines.filter((line) => /\d/u.test(line)).slice(0, 50);
  const most = (sign: string): boolean =>
    sample.filter((line) => line.includes(sign)).length > sample.length / 2;
  if (most(';')) return ';';
  if (most('\t')) return '\t';
  const spaced = sample.filter((line) => numbersIn(cut(line, ' ')) >= 2).length;
  if (spaced > sample.length / 2) return ' ';
  if (!most(',')) return undefined;
  const point = sample.some((line) => /\d\.\d/u.test(line));
  const wide = Math.max(...sample.map((line) => cut(line, ',').length));
  // "12,5,34,1": commas as both signs cannot be told apart.
  return point || wide <= 3 ? ',' : undefined;
}

/**
 * Reads a table of numbers as it is pasted or exported: columns parted by tabs, semicolons, white space or
 * commas, decimals with a point or a comma, any number of lines of words before the numbers (the last of them
 * with enough words is the heading). Lines without numbers further down are counted and left out.
 */
export function readTable(text: string): NumberTable | NoTable {
  if (text.length > mostCharacters)
    return { say: 'The text is longer than eight million characters. Cut it to a few cycles.' };
  const lines = text
    .replace(/^\uFEFF/u, '')
    .split(/\r\n|\r|\n/u)
    .filter((line) => line.trim() !== '');
  if (lines.length === 0) return { say: 'There is no text to read.' };
  if (lines.length > mostLines)
    return { say: 'The text has more than 200 000 lines. Cut it to a few cycles.' };
  const separator = separatorOf(lines);
  if (separator === undefined)
    return {
      say: 'No two columns of numbers were found. Put crank angle and pressure in columns, parted by a tab, a semicolon or a comma; where commas mark decimals, part the columns by a semicolon or a tab.',
    };
  const first = lines.findIndex((line) => numbersIn(cut(line, separator)) >= 2);
  if (first < 0) return { say: 'No line with two numbers was found.' };
  const width = cut(lines[first] ?? '', separator).length;
  const heading =
    lines
      .slice(0, first)
      .map((line) => cut(line, separator))
      .filter((cells) => cells.length >= width && numbersIn(cells) === 0)
      .at(-1) ?? [];
  // A second line of words is the units' line of an export: "deg; bar".
  const above = lines
    .slice(0, first)
    .map((line) => cut(line, separator))
    .filter((cells) => cells.length >= width && numbersIn(cells) === 0);
  const names = Array.from({ length: width }, (_, i) =>
    above
      .map((cells) => cells[i] ?? '')
      .join(' ')
      .trim(),
  );
  const columns: number[][] = Array.from({ length: width }, () => []);
  let skipped = 0;
  for (const line of lines.slice(first)) {
    const cells = cut(line, separator);
    if (numbersIn(cells) < 2) {
      skipped += 1;
      continue;
    }
    columns.forEach((column, i) => column.push(numberOf(cells[i] ?? '')));
  }
  return { heading: heading.length === 0 ? [] : names, columns, skipped };
}
