import type { Units } from '../../calculators/practice/draw.ts';
import { practiceFormat } from '../../calculators/practice/make.ts';
import type { Plan } from '../../calculators/practice/plan.ts';

export const kindWords = {
  number: 'A number to work out',
  choice: 'A choice between two sets',
  order: 'Three sets to put in order',
  read: 'A height to read off a curve',
} as const satisfies Record<Plan['kind'], string>;
export const unitWords = {
  mixed: 'Both systems, as a shop meets them',
  metric: 'Metric',
  inch: 'Inch',
} as const satisfies Record<Units, string>;
export const printWords = {
  all: 'The sheets, then the key',
  sheets: 'The sheets alone',
  key: 'The key alone',
} as const;

export type Kind = keyof typeof kindWords;
export type Printed = keyof typeof printWords;

/** What is chosen of a sheet, the numbers as they were typed. */
export interface SheetFields {
  readonly seed: string;
  readonly count: string;
  readonly kinds: readonly Kind[];
  readonly units: Units;
  readonly print: Printed;
}

/** What was typed, read; `say` of what cannot be. */
export type Whole =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly say: string };

export const mostVariants = 30;
const mostDigits = 9;

function wholeOf(text: string, what: string, range: string): Whole {
  const typed = text.trim();
  if (typed === '')
    return { ok: false, say: `Nothing is entered. ${what} is a whole number ${range}.` };
  const shown = typed.length > 24 ? `${typed.slice(0, 24)}…` : typed;
  if (!/^\d+$/u.test(typed))
    return { ok: false, say: `“${shown}” is no whole number. ${what} is a whole number ${range}.` };
  return { ok: true, value: Number(typed) };
}

/** The number of variants as typed. */
export function readCount(text: string): Whole {
  const range = `from 1 to ${String(mostVariants)}`;
  const what = 'The number of variants';
  const read = wholeOf(text, what, range);
  if (!read.ok || (read.value >= 1 && read.value <= mostVariants)) return read;
  return { ok: false, say: `${what} is ${range}. You entered ${text.trim().slice(0, 24)}.` };
}

/** The seed as typed. */
export function readSeed(text: string): Whole {
  const read = wholeOf(text, 'The seed', `of at most ${String(mostDigits)} digits`);
  if (!read.ok || text.trim().length <= mostDigits) return read;
  return {
    ok: false,
    say: `The seed has at most ${String(mostDigits)} digits. You entered ${String(text.trim().length)}.`,
  };
}

/** The end of an address that makes the same sheets again. */
export function sheetHash({ seed, count, kinds, units, print }: SheetFields): string {
  const parts = new URLSearchParams({ seed: seed.trim(), n: count.trim() });
  parts.set('kinds', kinds.join('.'));
  parts.set('units', units);
  parts.set('print', print);
  parts.set('v', String(practiceFormat));
  return `#${parts.toString()}`;
}

/** True for a name that a table of words has. */
function isIn<T extends string>(words: Readonly<Record<T, string>>, name: string): name is T {
  return Object.hasOwn(words, name);
}

/**
 * What the end of an address asks for. What it leaves out is taken from `usual`; what it has is kept as it stands, also
 * where it cannot be read, so that the form shows it.
 *
 * @returns the fields, and what must be said of an address that is of another version or has unknown words
 */
export function readSheetHash(
  hash: string,
  usual: SheetFields,
): { readonly fields: SheetFields; readonly say: string } {
  const parts = new URLSearchParams(hash.replace(/^#/u, ''));
  const unknown: string[] = [];
  const one = <T extends string>(
    words: Readonly<Record<T, string>>,
    key: string,
    otherwise: T,
  ): T => {
    const name = parts.get(key);
    if (name === null) return otherwise;
    if (isIn(words, name)) return name;
    unknown.push(name.slice(0, 20));
    return otherwise;
  };
  const named = parts.get('kinds')?.split('.') ?? usual.kinds;
  unknown.push(...named.filter((name) => !isIn(kindWords, name)).map((name) => name.slice(0, 20)));
  const kinds = named.filter((name) => isIn(kindWords, name));
  const fields: SheetFields = {
    seed: parts.get('seed') ?? usual.seed,
    count: parts.get('n') ?? usual.count,
    kinds: kinds.length > 0 ? kinds : usual.kinds,
    units: one(unitWords, 'units', usual.units),
    print: one(printWords, 'print', usual.print),
  };
  const version = parts.get('v');
  const notes: string[] = [];
  if (version !== null && version !== String(practiceFormat))
    notes.push(
      `The link is of another version of the exercises (${version.slice(0, 12)}; this page has ${String(practiceFormat)}), so its numbers cannot be made again. Here are sheets with the same choices and other numbers.`,
    );
  if (unknown.length > 0)
    notes.push(
      `The link has words that this page does not know: ${unknown.map((name) => `“${name}”`).join(', ')}. They are passed over.`,
    );
  return { fields, say: notes.join(' ') };
}
