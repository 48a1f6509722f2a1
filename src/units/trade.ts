import { fits } from './doubts.ts';
import { convertDigits } from './format.ts';
import { plainToken, takeNumber, type TypedNumber } from './number.ts';
import type { Read, ReadContext } from './reading.ts';
import { quote, refuse, suggest, typedText, type Refusal } from './say.ts';
import { findUnit, toSI, unitOf } from './units.ts';

/**
 * "+30" or "30 over" on a bore is an oversize, not a bore: asked, since the standard bore is not known here.
 * A bare whole number counts thousandths of an inch, as the trade says it, except a single digit in a
 * metric field. Fields whose least value may be 0 or less hold a difference already.
 */
export function oversize(text: string, context: ReadContext): Refusal | undefined {
  if (context.kind !== 'length' || !/\bbore\b/i.test(context.label)) return undefined;
  if (context.hard !== undefined && context.hard[0] <= 0) return undefined;
  const over = / ?over(size)?$/i;
  const number = takeNumber(text.replace(over, ''));
  if (typeof number === 'string' || !(number.sign === '+' || over.test(text))) return undefined;
  const field = unitOf(context.unit);
  const unit = number.rest === '' ? field : findUnit(number.rest, 'length');
  if (unit?.kind !== 'length') return undefined;
  const { value } = number;
  const thousandths =
    number.rest === '' && Number.isInteger(value) && !(field.system === 'metric' && value < 10);
  const size = thousandths
    ? `${(value / 1000).toFixed(3)} in`
    : typedText(plainToken(number), unit);
  return refuse(
    'ambiguous',
    context,
    `You entered ${quote(text)}: ${size} over the standard bore? Then enter the finished bore.`,
    fits(toSI(value, unit.id), context.hard) === true
      ? [suggest(typedText(plainToken(number), unit))]
      : [],
  );
}

/** A balance quality grade is written G 6.3, and is a speed of 6.3 mm/s. The text without its letter; no other is touched. */
export function withoutGradeLetter(text: string, { kind, label }: ReadContext): string {
  return kind === 'speed' && /\bgrade\b/i.test(label)
    ? text.replace(/^g[ -]?(?=[\d.])/i, '')
    : text;
}

/** Before dead centre counts backwards, after it forwards; bottom dead centre stands at 180°. */
export function deadCentre(
  number: TypedNumber,
  side: string,
  centre: string,
  context: ReadContext,
): Read | Refusal {
  const shown = `${plainToken(number)}° ${`${side}${centre}dc`.toUpperCase()}`;
  if (number.value < 0) {
    const size = plainToken(number).slice(1);
    const [before, after] = [`${size}° B${centre}DC`, `${size}° A${centre}DC`];
    return refuse(
      'ambiguous',
      context,
      `You entered ${quote(shown)}: ${before.toUpperCase()} or ${after.toUpperCase()}?`,
      [suggest(before.toUpperCase()), suggest(after.toUpperCase())],
    );
  }
  const turn = /b/i.test(side) ? -number.value : number.value;
  const value = turn === 0 ? 0 : turn;
  const angle = /b/i.test(centre) ? 180 + value : value;
  return {
    ok: true,
    si: toSI(angle, 'deg'),
    value: angle,
    unit: 'deg',
    typedUnit: true,
    step: number.step,
    echo: `${shown} = ${convertDigits(angle, number.step, 'deg', 'deg')}° after TDC`,
    suggestions: [],
  };
}
