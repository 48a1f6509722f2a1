import type { ListField } from '../field.ts';
import type { Kind } from '../kinds.ts';
import { clean, takeNumber } from '../number.ts';
import { findUnit } from '../units.ts';
import { cutPasted, type Separator, type Uncut } from './cut.ts';

/** One column of what was pasted. */
export interface PastedColumn {
  /** The words over it; empty where none stand there. */
  readonly heading: string;
  /** Id of the unit that its heading names. */
  readonly unit: string | undefined;
  /** Numbers of the kind that is asked for, the numbers of the cylinders, or words. */
  readonly holds: 'numbers' | 'places' | 'words';
  /** As pasted, one for each place; empty where the cell is blank. */
  readonly cells: readonly string[];
}

/** What was pasted, as it is understood. Nothing of it is dropped: lines after the numbers stand in `rest`. */
export interface Pasted {
  readonly separator: Separator;
  /** True when each line was one kind of part, and not each column. */
  readonly turned: boolean;
  /** How many lines there are, and which of them are taken as numbers: from, counted from 0, to before. */
  readonly lines: number;
  readonly from: number;
  readonly to: number;
  readonly columns: readonly PastedColumn[];
  /** Lines after the numbers, cell by cell; those before are the headings of the columns. */
  readonly rest: readonly (readonly string[])[];
}

/** What the reader says of it where it was understood wrongly. */
export interface PastedAs {
  readonly separator?: Separator | undefined;
  readonly turned?: boolean | undefined;
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/** The greatest number of a cylinder. */
const mostPlaces = 16;
/** A line that sums up the ones above it. */
const sums = /^(?:mean|average|avg|sum|total|max|min|maximum|minimum|spread|range|Σ|∑|Ø)/iu;

/**
 * Understands what was pasted: which lines are headings and sums, which unit a heading names, which column has the
 * numbers of the cylinders. Where cylinders are numbered, each row goes to the place that its number says.
 *
 * @param field a list that the numbers may be for: it says of what kind they are
 */
export function readPasted(text: string, field: ListField, as: PastedAs = {}): Pasted | Uncut {
  const cut = cutPasted(text, as.separator);
  if ('say' in cut) return cut;
  const isNumber = (cell: string): boolean => holdsNumber(cell, field.kind);
  const turned = as.turned ?? isTurned(cut.rows, isNumber);
  const rows = turned ? transposed(cut.rows) : cut.rows;
  const first = rows.findIndex((row) => row.some(isNumber));
  const from = Math.min(as.from ?? Math.max(0, first), rows.length);
  const last = rows.findIndex((row, at) => at > from && sums.test(row.find(Boolean) ?? ''));
  const to = Math.max(from, Math.min(as.to ?? (last < 0 ? rows.length : last), rows.length));
  const body = rows.slice(from, to);
  const width = rows[0]?.length ?? 0;
  const columns = Array.from({ length: width }, (_, at) => ({
    heading: headingOf(rows.slice(0, from), at),
    cells: body.map((row) => row[at] ?? ''),
  }));
  const numbered = columns.findIndex((column) => isNumbering(column, columns.length));
  const places = columns[numbered]?.cells.map(Number);
  return {
    separator: cut.separator,
    turned,
    lines: rows.length,
    from,
    to,
    columns: columns.map(({ heading, cells }, at) => ({
      heading,
      unit: unitInHeading(heading, field.kind),
      holds: at === numbered ? 'places' : cells.some(isNumber) ? 'numbers' : 'words',
      cells: places === undefined ? cells : inPlaces(cells, places),
    })),
    rest: rows.slice(to).filter((row) => row.some(Boolean)),
  };
}

/** True for a number alone, or one with a unit of the kind behind it. */
function holdsNumber(cell: string, kind: Kind): boolean {
  const number = takeNumber(clean(cell));
  if (typeof number === 'string') return false;
  return number.rest === '' || findUnit(number.rest, kind)?.kind === kind;
}

/** Few lines of many numbers, with no heading over them: one line a kind of part, the cylinders side by side. */
function isTurned(
  rows: readonly (readonly string[])[],
  isNumber: (cell: string) => boolean,
): boolean {
  const width = rows[0]?.length ?? 0;
  const numbers = Math.max(...rows.map((row) => row.filter(isNumber).length));
  const isHeaded = rows[0]?.some(isNumber) !== true;
  return !isHeaded && numbers > 3 && numbers > rows.length && width > rows.length;
}

function transposed(rows: readonly (readonly string[])[]): readonly (readonly string[])[] {
  return (rows[0] ?? []).map((_, at) => rows.map((row) => row[at] ?? ''));
}

function headingOf(lines: readonly (readonly string[])[], at: number): string {
  return lines
    .map((line) => line[at] ?? '')
    .filter(Boolean)
    .join(' ');
}

/** Each cylinder once, by its whole number: as its heading says, or as 1, 2, 3 … beside another column. */
function isNumbering(
  { heading, cells }: { readonly heading: string; readonly cells: readonly string[] },
  width: number,
): boolean {
  const numbers = cells.map(Number);
  const whole = cells.every(
    (cell, at) => /^\d{1,2}$/.test(cell) && Number(numbers[at]) >= 1 && at < mostPlaces,
  );
  if (!whole || numbers.length === 0 || width < 2) return false;
  if (Math.max(...numbers) > mostPlaces || new Set(numbers).size < numbers.length) return false;
  const isNamed = /^(?:cyl|no\b|nr\b|n°|#|place|number)/iu.test(heading);
  return isNamed || numbers.every((number, at) => number === at + 1);
}

function inPlaces(cells: readonly string[], places: readonly number[]): readonly string[] {
  const placed = Array<string>(Math.max(...places)).fill('');
  cells.forEach((cell, at) => (placed[(places[at] ?? 0) - 1] = cell));
  return placed;
}

/**
 * Id of the unit that a heading names: `Mass [g]`, `weight (oz)`, `pistons, g`. Undefined where it names none, and for
 * `gr`, which is grams in one shop and grains in the next.
 */
export function unitInHeading(heading: string, kind: Kind): string | undefined {
  const inside = [...heading.matchAll(/[[(]([^\])]*)[\])]/gu)].map(([, words = '']) => words);
  const tokens = heading.split(/[\s,;:/|()[\]]+/u).reverse();
  for (const token of [...inside, ...tokens]) {
    const unit = token === '' || /^gr\.?s?$/iu.test(token) ? undefined : findUnit(token, kind);
    if (unit?.kind === kind) return unit.id;
  }
  return undefined;
}
