import { formatPlain } from './format.ts';
import { likelihood } from './likelier.ts';
import { clean, takeNumber } from './number.ts';
import { readQuantity } from './quantity.ts';
import type { ReadContext } from './reading.ts';
import { typedText } from './say.ts';
import { findUnit, unitOf, type Unit } from './units.ts';

/**
 * The readings that a text holds, as typed. Semicolons, line breaks, tabs, a comma followed by a space, and
 * plain spaces between numbers part them, so that a block pasted from a spreadsheet is read cell by cell; a
 * no-break space stays inside a number, and `1 lb 2 oz` is one reading.
 */
export function cells(typed: string): string[] {
  return (
    typed
      .split(/[;\n\r\t\v\f\u2028\u2029；]|,(?=\s)|,\s*$/)
      // A plain space before a number starts a new item, unless that number is the fraction of a mixed one.
      .flatMap((part) => joined(part.split(/(?<=[^\s/⁄]) +(?=[-+−]?[.,]?\d)(?!\d+ ?[/⁄] ?\d)/)))
      .map((part) => part.trim().replace(/^"([^"]*)"$/, '$1'))
      .filter((part) => part !== '')
  );
}

/** What stands in a list for a part that was not weighed, so that those after it keep their places. */
export const gap = '–';

/** True for digits with or without a point: a number that has neither unit nor comma, and only one reading. */
export function isPlain(item: string): boolean {
  return /^\d{1,9}(?:\.\d{1,9})?$/.test(item);
}

/** True for a reading that is nothing but a dash. */
export function isGap(item: string): boolean {
  return /^[-‐-―−]+$/.test(item.trim());
}

/** Ounces go with the pounds before them. */
function joined(parts: readonly string[]): string[] {
  const whole: string[] = [];
  for (const part of parts.map((one) => one.trim())) {
    const before = whole.at(-1);
    const ounces = /^[\d.,/ ]+(?:oz|ounces?)\b/i.test(part);
    if (before !== undefined && ounces && /^-?\d+ ?(?:lbs?|pounds?)$/i.test(before))
      whole.splice(-1, 1, `${before} ${part}`);
    else whole.push(part);
  }
  return whole;
}

/** Ways to read one cell, likeliest first: each a list of readings. Never empty. */
export type Ways = readonly (readonly string[])[];

/**
 * A comma without a space may part two readings or be the decimal sign of one: `421,422`. What the ranges make
 * likely is returned; both where both are. Readings of one quantity lie close together or have equally many
 * digits: `170,90` is no pair.
 */
export function waysToRead(cell: string, context: ReadContext): Ways {
  const text = clean(cell);
  if (!/\d,\d/.test(text)) return [[cell]];
  const one = readQuantity(cell, context);
  const parts = text.split(',');
  const unit = unitBehind(parts.at(-1) ?? '', context)?.id ?? context.unit;
  const read = parts.map((part) => readQuantity(part, { ...context, unit }));
  const sizes = read.map((part) =>
    part.ok && likelihood(part.si, context) === 2 ? part.si : Number.NaN,
  );
  const [least, most] = [Math.min(...sizes), Math.max(...sizes)];
  const lengths = new Set(parts.map((part) => /^[+-]?\d*/.exec(part)?.[0].length));
  const many = lengths.size === 1 ? !Number.isNaN(most) : most - least <= 0.1 * Math.abs(most);
  if (!many) return [[cell]];
  if (!one.ok) {
    const others =
      one.problem === 'ambiguous' ? one.suggestions.map(({ text: said }) => [said]) : [];
    return [parts, ...others];
  }
  if (likelihood(one.si, context) === 0) return [parts];
  const value = formatPlain(one.value);
  return [parts, [one.typedUnit ? typedText(value, unitOf(one.unit)) : value]];
}

/** The unit of the context's kind written behind the number that a text begins with. */
export function unitBehind(text: string, { kind }: ReadContext): Unit | undefined {
  const number = takeNumber(clean(text));
  if (typeof number === 'string' || number.rest === '') return undefined;
  const unit = findUnit(number.rest, kind);
  return unit?.kind === kind ? unit : undefined;
}
