import type { Entry, ListEntry, NumberEntry, SetId } from '../calculators/define.ts';
import { clean, takeNumber, type TypedNumber } from '../units/number.ts';
import { readQuantity, type ReadContext } from '../units/read.ts';
import { findUnit, toSI, unitOf, units } from '../units/units.ts';
import type { StoredValue } from './values.ts';

/** A number taken apart into digits and unit. */
export interface Typed {
  /** The digits as typed, in plain form: `-2.100`, `1 7/8`, `7/8`, `1.5e3`; a decimal point, no grouping. */
  readonly number: string;
  /** Id of the unit written behind the digits; undefined when there is none. */
  readonly unit: string | undefined;
}

/**
 * Takes typed text apart without working it out, so that the digits survive: `47,96 mm` is `47.96` in `mm`,
 * `1⅞"` is `1 7/8` in `in`. Undefined when the text is no number, or when its separators leave two readings.
 *
 * @param near id of a unit of the same kind; decides between spellings that two kinds share.
 * @param value the number as the parser read it, where known; it decides between two readings of `1,875`.
 */
export function takeApart(text: string, near: string, value?: number): Typed | undefined {
  const typed = takeNumber(clean(text));
  if (typeof typed === 'string') return undefined;
  const number = digitsOf(typed, value);
  if (number === undefined) return undefined;
  if (typed.rest === '') return { number, unit: undefined };
  const unit = unitSpelled(typed.rest, near);
  return unit === undefined ? undefined : { number, unit };
}

function digitsOf(typed: TypedNumber, value: number | undefined): string | undefined {
  const sign = typed.sign === '-' ? '-' : '';
  if (typed.form === 'fraction') {
    const whole = typed.whole === '' ? '' : `${typed.whole} `;
    return `${sign}${whole}${typed.top}/${typed.bottom}`;
  }
  const { whole, decimals, exponent, asThousands } = typed;
  if (value === undefined ? asThousands !== undefined : value !== typed.value) {
    return value !== undefined && value === asThousands ? `${sign}${whole}${decimals}` : undefined;
  }
  const point = decimals === '' ? '' : `.${decimals}`;
  return `${sign}${whole || '0'}${point}${exponent.toLowerCase().replace('+', '')}`;
}

/** Id of the unit that is spelled so, of the kind of `near` where possible; undefined when there is none. */
export function unitSpelled(spelling: string, near: string): string | undefined {
  const kind = Object.hasOwn(units, near) ? units[near]?.kind : undefined;
  return findUnit(clean(spelling), kind ?? 'length')?.id;
}

/** What the parser needs to know about an entry to read a value of it in `unit`, its own metric one if empty. */
export function contextOf(entry: NumberEntry | ListEntry, unit: string): ReadContext {
  const inSI = ([low, high]: readonly [number, number]): readonly [number, number] => [
    toSI(low, entry.rangeUnit),
    toSI(high, entry.rangeUnit),
  ];
  return {
    label: entry.label,
    kind: entry.kind,
    unit: unit === '' ? entry.metric : unit,
    usual: inSI(entry.usual),
    hard: inSI(entry.hard),
  };
}

/** {@link takeApart} with the parser's own reading to settle what the digits alone leave open. */
export function takeApartAs(entry: Entry, stored: StoredValue): Typed | undefined {
  if (entry.type !== 'number') return undefined;
  const context = contextOf(entry, stored.unit);
  const reading = readQuantity(stored.text, context);
  return reading.ok ? takeApart(stored.text, context.unit, reading.value) : undefined;
}

const examples = new WeakMap<Entry, Partial<Record<SetId, StoredValue>>>();

/**
 * The invented example that stands in a field until the reader writes there, with the ordinary shop
 * uncertainty of such a measurement as its ±. The same object each time: most fields hold it at most keys.
 */
export function exampleOf(set: SetId, entry: Entry): StoredValue {
  const known = examples.get(entry) ?? {};
  if (known[set] !== undefined) return known[set];
  const example = makeExample(set, entry);
  examples.set(entry, { ...known, [set]: example });
  return example;
}

function makeExample(set: SetId, entry: Entry): StoredValue {
  const text = entry.demo[set];
  if (entry.type === 'choice') return { text, unit: '' };
  if (entry.type === 'list') return { text, unit: entry.metric };
  const typed = takeApart(text, entry.metric);
  const value =
    typed === undefined
      ? { text, unit: entry.metric }
      : { text: typed.number, unit: typed.unit ?? entry.metric };
  // What can be left out adds no doubt of its own to a result until the reader gives it some.
  if (entry.usualPlusMinus === undefined || entry.optional === true) return value;
  const digits = String(entry.usualPlusMinus);
  const plusMinus =
    value.unit === entry.rangeUnit ? digits : `${digits} ${unitOf(entry.rangeUnit).symbol}`;
  return { ...value, plusMinus };
}
