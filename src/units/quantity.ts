import { kindWords } from './kinds.ts';
import { deadCentre, oversize, withoutGradeLetter } from './trade.ts';
import { readCompound } from './compound.ts';
import { explain, fits, grains, improper, slang, slips } from './doubts.ts';
import { likelier } from './likelier.ts';
import { clean, longestTyped, plainToken, takeNumber, type TypedNumber } from './number.ts';
import { acceptedUnits, quote, refuse, suggest, typedText } from './say.ts';
import type { ReadContext, Reading } from './reading.ts';
import type { Refusal } from './say.ts';
import { findUnit, toSI, unitOf, type Unit } from './units.ts';

/**
 * Reads a quantity typed or pasted into a field: decimal point or comma, thousands separated, fractions,
 * a unit of the field's kind or none. Never throws on what a reader may type and never gives NaN or
 * Infinity; throws RangeError only when `context.unit` is no unit.
 *
 * Where something else than what was typed is likely by the ranges, both are offered and nothing is read
 * ({@link likelier}). A value outside `hard` is otherwise still read (what cannot be is for `core` to refuse),
 * with a question when it fits in another unit. `1,875` is read as whichever of 1.875 and 1875 fits the
 * ranges, else asked. The whole text is read or none of it: no number is ever taken from the front of a text.
 */
export function readQuantity(typed: string, context: ReadContext): Reading {
  if (typed.trim().length > longestTyped)
    return refuse(
      'too-long',
      context,
      `You entered ${typed.trim().length} characters; at most ${longestTyped} are read.`,
    );
  const text = withoutGradeLetter(clean(typed), context);
  if (text === '') return refuse('empty', context, 'Nothing is entered.');
  const over = oversize(text, context);
  if (over !== undefined) return over;
  const compound = readCompound(text, context);
  if (compound !== undefined) return compound;
  const found = takeNumber(text);
  if (typeof found === 'string') return noNumber(found, text, context);
  const number = context.kind === 'angularSpeed' ? inThousands(found) : found;
  const { rest } = number;
  const dead = /^(.*?)\s*([ab])([tb])dc$/i.exec(rest);
  if (dead !== null && context.kind === 'angle') {
    const stem = dead[1] ?? '';
    if (stem === '' || findUnit(stem, 'angle')?.id === 'deg')
      return deadCentre(number, dead[2] ?? '', dead[3] ?? '', context);
  }
  const unit = rest === '' ? unitOf(context.unit) : unitTyped(rest, context);
  if (unit === undefined) return unknown(number, text, context);
  if (unit.kind !== context.kind)
    return refuse(
      'wrong-kind',
      context,
      `You entered ${kindWords[unit.kind]}: ${text.slice(0, 60)}.`,
    );
  return choose(number, unit, text, context);
}

/** `8.4k rpm` is 8400 of them; a number without its k is returned as it is. */
function inThousands(number: TypedNumber): TypedNumber {
  const [, rest] = /^k(?!rad)\s*(.*)$/i.exec(number.rest) ?? [];
  if (rest === undefined || number.form !== 'decimal' || number.exponent !== '') return number;
  const { sign, whole, decimals } = number;
  const digits = whole + decimals.padEnd(3, '0');
  const cut = whole.length + 3;
  const more = digits.slice(cut);
  const shifted = takeNumber(`${sign}${digits.slice(0, cut)}${more === '' ? '' : `.${more}`}`);
  return typeof shifted === 'string' ? number : { ...shifted, rest, step: number.step * 1000 };
}

function unitTyped(rest: string, { kind, unit }: ReadContext): Unit | undefined {
  // "20°" in a temperature is a temperature, on the scale of the field.
  if (kind === 'temperature' && /^(°|deg)$/i.test(rest)) return unitOf(unit);
  return findUnit(rest, kind);
}

function noNumber(
  why: 'text' | 'zero-denominator' | 'too-large',
  text: string,
  context: ReadContext,
): Refusal {
  const entered = `You entered ${quote(text)}`;
  if (why === 'zero-denominator')
    return refuse(why, context, `${entered}: a fraction cannot have 0 below its line.`);
  if (why === 'too-large')
    return refuse('text', context, `${entered}: that number is too large or too small to use.`);
  const wrong = !/\d/.test(text)
    ? 'which holds no number'
    : /^[+-]?[\d.,]/.test(text)
      ? 'which is not a number in a form known here'
      : 'where the number does not come first';
  return refuse('text', context, `${entered}, ${wrong}.`);
}

function unknown({ rest }: TypedNumber, text: string, context: ReadContext): Refusal {
  const entered = `You entered ${quote(text)}`;
  if (/(^\^?|[^a-z^/])\d/i.test(rest))
    return refuse('text', context, `${entered}, which is more than one number.`);
  if (/±|\+ ?\/? ?-/.test(rest))
    return refuse(
      'text',
      context,
      `${entered}; behind the ± stands no number that can be its size.`,
    );
  const known = acceptedUnits(context.kind);
  const accepted = known === '' ? 'No unit is wanted' : `Units read here: ${known}`;
  return refuse(
    'unknown-unit',
    context,
    `${entered}; ${quote(rest)} is not a unit known here. ${accepted}.`,
  );
}

/** Settles `1,875`, then checks that the value is finite and, for a count, whole. */
function choose(number: TypedNumber, unit: Unit, text: string, context: ReadContext): Reading {
  if (number.form === 'decimal' && number.asThousands !== undefined) {
    const thousands: TypedNumber = {
      form: 'decimal',
      token: number.token,
      rest: number.rest,
      sign: number.sign,
      value: number.asThousands,
      step: 1,
      whole: number.whole + number.decimals,
      decimals: '',
      mark: '',
      separator: ',',
      exponent: '',
    };
    const picked = pick(number, thousands, unit, context);
    if (picked === undefined) {
      const both = [number, thousands].map((n) => typedText(plainToken(n), unit));
      return refuse(
        'ambiguous',
        context,
        `You entered ${quote(text)}: ${both.join(' or ')}?`,
        both.map(suggest),
      );
    }
    return settle(picked, unit, text, context);
  }
  return settle(number, unit, text, context);
}

function pick(
  decimal: TypedNumber,
  thousands: TypedNumber,
  unit: Unit,
  context: ReadContext,
): TypedNumber | undefined {
  if (context.kind === 'count') return Number.isInteger(decimal.value) ? undefined : thousands;
  for (const range of [context.hard, context.usual]) {
    const a = fits(toSI(decimal.value, unit.id), range) ?? true;
    const b = fits(toSI(thousands.value, unit.id), range) ?? true;
    if (a !== b) return a ? decimal : thousands;
    if (!a) return undefined;
  }
  return undefined;
}

function settle(number: TypedNumber, unit: Unit, text: string, context: ReadContext): Reading {
  const { value } = number;
  const si = toSI(value, unit.id);
  if (!Number.isFinite(si) || (si === 0 && value !== 0 && unit.offset === undefined))
    return noNumber('too-large', text, context);
  const whole = context.kind === 'count';
  if (whole && !Number.isInteger(value))
    return refuse('not-whole', context, `You entered ${text.slice(0, 60)}.`);
  const [first, ...others] = [...grains(number), ...likelier(number, unit, context)];
  if (first !== undefined) {
    const texts = [first, ...others];
    return refuse(
      'ambiguous',
      context,
      `You entered ${quote(text)}: ${texts.join(' or ')}?`,
      texts.map(suggest),
    );
  }
  const doubts = [
    improper(number, unit),
    slang(number, unit),
    ...slips(number, unit, si, context),
  ].filter((d) => d !== undefined);
  // What was written in thousands is said in full.
  const echo =
    /\dk/i.test(text.replace(/ /g, '')) && context.kind === 'angularSpeed'
      ? `${text} = ${typedText(plainToken(number), unit)}`
      : explain(number, unit, context);
  return {
    ok: true,
    si,
    value,
    unit: unit.id,
    typedUnit: number.rest !== '',
    step: whole ? Math.max(1, number.step) : number.step,
    ...(echo === undefined ? {} : { echo }),
    ...(doubts[0] === undefined ? {} : { question: doubts[0].question }),
    suggestions: doubts.flatMap((d) => d.suggestions),
  };
}
