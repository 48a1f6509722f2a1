import { formatNumber, refuseNonFinite, withUnit } from './format.ts';
import { differenceFromSI, fromSI } from './units.ts';

/** Figures of a result where no ± says how many are justified. */
export const resultFigures = 4;

/** Smaller than any result in any unit here: what is left is the rounding of a sum or of a sine of whole turns. */
const nothing = 1e-9;

/**
 * The most places after the point that a result has in a unit, however small it is: nothing finer is measured in
 * a shop, and most of it would be the noise of the sum. Other units have as many as their figures ask for.
 */
const finest: Readonly<Record<string, number>> = {
  mm: 4,
  in: 5,
  um: 1,
  thou: 2,
  g: 2,
  kg: 3,
  lb: 3,
  rpm: 0,
  deg: 2,
  degC: 1,
  degF: 1,
  pct: 2,
  bar: 3,
  psi: 1,
  N: 2,
  kN: 3,
  lbf: 2,
};

/**
 * Places after the point of a result in `unitId`, `value` in that unit; negative where tens or hundreds are
 * rounded. Four figures, but a mass of 10 g and more to a tenth of a gram, as a scale shows it, so that a whole
 * and its half are given alike, and a speed to one revolution a minute.
 */
export function resultPlaces(value: number, unitId: string): number {
  const size = Math.abs(value);
  if (unitId === 'g' && size >= 10 && size < 1e5) return 1;
  if (unitId === 'rpm') return 0;
  const most = finest[unitId] ?? 20;
  if (size === 0) return Math.min(most, resultFigures - 1);
  return Math.min(most, resultFigures - 1 - Math.floor(Math.log10(size)));
}

/**
 * A result [SI] as the page prints it: to the places that its ± [SI, a difference] justifies, without printing
 * the ±; with none, as {@link resultPlaces} has them. Zeros at the end are dropped, which would claim a
 * precision that nobody sees a reason for. A gram keeps its tenth.
 * Throws RangeError for a value that is not finite.
 */
export function formatResult(si: number, unitId: string, plusMinus = 0): string {
  refuseNonFinite(si);
  const exact = fromSI(si, unitId);
  const value = Math.abs(exact) < nothing ? 0 : exact;
  const places =
    plusMinus > 0 && Number.isFinite(plusMinus)
      ? placesBeside(value, differenceFromSI(plusMinus, unitId), unitId)
      : resultPlaces(value, unitId);
  // A number too small for a row of zeros is written in powers of ten.
  return value !== 0 && places > 9
    ? withUnit(withoutFalseZeros(formatNumber(value, { significant: resultFigures })), unitId)
    : withUnit(resultDigits(value, places, unitId), unitId);
}

/** A number in `unitId` to `places` after the point, without false zeros at its end; a gram keeps its tenth. */
export function resultDigits(value: number, places: number, unitId: string): string {
  const text = formatTo(value, places);
  return unitId === 'g' && places === 1 ? text : withoutFalseZeros(text);
}

/** Places that a length with a ± may have beyond the figures of a result: a micrometer shows them. */
const measured: Readonly<Record<string, number>> = { mm: 3, in: 4 };

/**
 * Places after the point of a result beside its ±, both in the unit shown: the ± keeps two figures when it begins
 * with 1 or 2, else one, as `decimalsFor`. No finer than a result without ± has them, however small the ± is: a model is not known better.
 * Negative where tens or hundreds are rounded: 35 300 ± 600.
 */
export function placesBeside(value: number, plusMinus: number, unitId: string): number {
  const [digits = '', power = ''] = plusMinus.toExponential(1).split('e');
  const asked = (Number(digits) < 3 ? 1 : 0) - Number(power);
  const most = Math.max(resultPlaces(value, unitId), measured[unitId] ?? -Infinity);
  return Math.min(asked, most);
}

/** A number to `places` after the point; negative places round to tens, hundreds and so on. */
export function formatTo(value: number, places: number): string {
  if (places >= 0) return formatNumber(value, { decimals: places });
  const step = 10 ** -places;
  return formatNumber(Math.round(value / step) * step, { decimals: 0 });
}

/** A formatted number without the zeros that end its decimals: `0.002800` is `0.0028`, `1.000` is `1`. */
export function withoutFalseZeros(text: string): string {
  return text.replace(/(\.\d*?)0+(?!\d)/u, '$1').replace(/\.(?!\d)/u, '');
}
