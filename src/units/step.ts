import {
  clean,
  fractionStep,
  longestTyped,
  takeNumber,
  type Decimal,
  type Fraction,
} from './number.ts';

/**
 * The text after one press of a step key: `one` unit of the last digit typed, `ten` of them, or a `tenth`,
 * which adds a digit. Notation stays: unit as typed, trailing zeros, decimal comma, thousands separators,
 * a missing leading zero, fractions. Integer arithmetic, so up and down return to the start exactly.
 *
 * Fractions step by sixteenths, or by their own denominator where it is finer or unusual, and keep a zero
 * remainder (`1 15/16` → `2 0/16`), or the next step would be a whole one. Their `tenth` is a quarter step
 * (sixteenths → sixty-fourths), since no rule is divided into tenths of a sixteenth.
 *
 * `undefined` when there is no number at the front, or none left to step.
 */
export function stepText(
  typed: string,
  direction: 1 | -1,
  size: 'one' | 'ten' | 'tenth',
): string | undefined {
  if (typed.length > longestTyped) return undefined;
  const number = takeNumber(clean(typed));
  if (typeof number === 'string') return undefined;
  const next =
    number.form === 'fraction'
      ? stepFraction(number, direction, size)
      : stepDecimal(number, direction, size);
  return next === undefined ? undefined : next + suffix(typed, number.token);
}

/** What follows the number in the raw text, found by reading ever longer beginnings of it. */
function suffix(typed: string, token: string): string {
  for (let end = 1; end <= typed.length; end++) {
    const front = takeNumber(clean(typed.slice(0, end)));
    if (typeof front !== 'string' && front.token === token && front.rest === '')
      return typed.slice(end);
  }
  return '';
}

function stepDecimal(
  number: Decimal,
  direction: 1 | -1,
  size: 'one' | 'ten' | 'tenth',
): string | undefined {
  const finer = size === 'tenth';
  // 1,875 may be thousands or decimals; the same text serves both unless a digit is added.
  if (finer && number.asThousands !== undefined) return undefined;
  const places = number.decimals.length + (finer ? 1 : 0);
  let count = BigInt(number.whole + number.decimals + (finer ? '0' : ''));
  if (number.sign === '-') count = -count;
  count += BigInt(direction * (size === 'ten' ? 10 : 1));
  const digits = String(count < 0n ? -count : count).padStart(places + 1, '0');
  const whole = digits.slice(0, digits.length - places);
  const decimals = digits.slice(digits.length - places);
  const mark = number.mark || (number.separator === '.' ? ',' : '.');
  const body = number.separator
    ? whole.replace(/\B(?=(\d{3})+$)/g, number.separator)
    : number.whole === '' && whole === '0'
      ? ''
      : whole;
  const sign = count < 0n ? '-' : count > 0n && number.sign === '+' ? '+' : '';
  const tail = places > 0 ? mark + decimals : number.mark;
  return sign + body + tail + number.exponent;
}

function stepFraction(
  number: Fraction,
  direction: 1 | -1,
  size: 'one' | 'ten' | 'tenth',
): string | undefined {
  const typed = BigInt(number.bottom);
  const coarse = BigInt(fractionStep(Number(number.bottom)));
  const bottom = size === 'tenth' ? coarse * 4n : coarse;
  if (bottom > 9999n && bottom !== typed) return undefined;
  let top = (BigInt(number.whole || '0') * typed + BigInt(number.top)) * (bottom / typed);
  if (number.sign === '-') top = -top;
  top += BigInt(direction * (size === 'ten' ? 10 : 1));
  const sign = top < 0n ? '-' : '';
  const amount = top < 0n ? -top : top;
  const whole = amount / bottom;
  let [above, below] = [amount % bottom, bottom];
  // Only sixteenths reduce: 1/2 still steps by sixteenths, but 2/32 reduced would step by more than 1/32.
  while (bottom === 16n && above !== 0n && above % 2n === 0n)
    [above, below] = [above / 2n, below / 2n];
  return `${sign}${whole === 0n ? '' : `${whole} `}${above}/${below}`;
}
