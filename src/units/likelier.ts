import { fits } from './doubts.ts';
import { convertDigits } from './format.ts';
import { plainToken, type TypedNumber } from './number.ts';
import type { ReadContext } from './reading.ts';
import { typedText } from './say.ts';
import { toSI, unitsOfKind, unitOf, type Unit } from './units.ts';

/** How likely a value is in its field: 2 usual, 1 possible, 0 outside. Without ranges everything is usual. */
export function likelihood(si: number, { hard, usual }: ReadContext): 0 | 1 | 2 {
  if (fits(si, hard) === false) return 0;
  return fits(si, usual) === false ? 1 : 2;
}

/** Units in which numbers are said without them, besides the field's own. */
const everyday: ReadonlySet<string> = new Set(['mm', 'in', 'g', 'kg', 'bar', 'psi', 'kPa']);
/** And those in which clearances are said: fields that are below 0.1 mm as a rule. */
const ofClearances: ReadonlySet<string> = new Set(['um', 'thou']);

function isSaid(unit: Unit, { usual }: ReadContext): boolean {
  return everyday.has(unit.id) || (ofClearances.has(unit.id) && (usual?.[1] ?? 1) <= 1e-4);
}

/**
 * What was probably meant where what was typed is not likely and something else is: the texts that say so,
 * likeliest first, and last the one that says what was typed. Empty where the number can stand.
 *
 * A bare number may be in another unit than the one assumed: 428 in a field that last held kilograms, 86 in one
 * of inches, 0.55 in one of per cent. `8.400` may be 8400. A unit that was typed is taken at its word.
 */
export function likelier(number: TypedNumber, unit: Unit, context: ReadContext): readonly string[] {
  if (number.value === 0) return [];
  const here = likelihood(toSI(number.value, unit.id), context);
  const texts: string[] = [];
  const both = here === 0 && context.hard !== undefined ? dotted(number) : undefined;
  // Rounded in its last bit, which no range notices.
  if (both !== undefined && likelihood(toSI(number.value * 1000, unit.id), context) > 0)
    texts.push(typedText(both.thousands, unit));
  if (number.rest === '' && context.usual !== undefined && here < 2)
    texts.push(
      ...unitsOfKind(context.kind)
        .filter((other) => other.id !== unit.id && moreLikely(number, unit, other, here, context))
        .map((other) => explicit(number, other)),
    );
  if (texts.length === 0) return [];
  const typed = both === undefined ? explicit(number, unit) : typedText(both.decimal, unit);
  return [...new Set([...texts, typed])];
}

/** A slip of unit is told from an unusual number by its size: less than this, and the range cannot tell. */
const apart = 10;

function moreLikely(
  number: TypedNumber,
  unit: Unit,
  other: Unit,
  here: 0 | 1 | 2,
  context: ReadContext,
): boolean {
  const there = likelihood(toSI(number.value, other.id), context);
  if (context.kind === 'ratio') {
    // A compression ratio is never said in per cent: only what can be a share of a whole is.
    if (!shareLike(context) || there === 0) return false;
    return other.id === 'pct' ? here === 0 : other.id === 'ratio' && Math.abs(number.value) < 1;
  }
  const own = context.own?.includes(other.id) === true;
  if (here === 0) return there === 2 ? own || isSaid(other, context) : own && there === 1;
  const times = unit.factor / other.factor;
  return own && there === 2 && Math.max(times, 1 / times) >= apart;
}

function shareLike({ usual, own, unit }: ReadContext): boolean {
  return unit === 'pct' || own?.includes('pct') === true || (usual !== undefined && usual[1] <= 1);
}

/** The number with a unit that leaves no doubt; a plain number has no sign of its own but per cent. */
function explicit(number: TypedNumber, unit: Unit): string {
  if (unit.id !== 'ratio') return typedText(plainToken(number), unit);
  const step = number.form === 'fraction' ? 0 : number.step;
  return typedText(convertDigits(number.value, step, 'ratio', 'pct'), unitOf('pct'));
}

/**
 * `8.400` with its point as the sign of thousands, 8400, and with a point that can only be a decimal one: with
 * fewer than three decimals, or more.
 */
function dotted(number: TypedNumber): { thousands: string; decimal: string } | undefined {
  if (number.form !== 'decimal' || number.mark !== '.' || number.separator !== '') return undefined;
  const { whole, decimals, exponent } = number;
  if (!/^[1-9]\d{0,2}$/.test(whole) || decimals.length !== 3 || exponent !== '') return undefined;
  const sign = number.sign === '-' ? '−' : '';
  const short = decimals.replace(/0+$/, '');
  const point = short === '' ? '' : `.${short.length === 3 ? `${short}0` : short}`;
  return { thousands: sign + whole + decimals, decimal: sign + whole + point };
}
