import { contextOf, type Field, type TypedValue } from './field.ts';
import { clean, takeNumber, type TypedNumber } from './number.ts';
import { readQuantity } from './quantity.ts';
import { findUnit, units } from './units.ts';

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

/** {@link takeApart} with the parser's own reading to settle what the digits alone leave open. */
export function takeApartAs(field: Field, value: TypedValue): Typed | undefined {
  if (field.type !== 'number') return undefined;
  const context = contextOf(field, value.unit);
  const reading = readQuantity(value.text, context);
  return reading.ok ? takeApart(value.text, context.unit, reading.value) : undefined;
}
