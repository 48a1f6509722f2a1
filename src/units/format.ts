import { clean, takeNumber } from './number.ts';
import { differenceFromSI, findUnit, fromSI, toSI, unitOf } from './units.ts';

const formatters = new Map<string, Intl.NumberFormat>();

/** Making a formatter costs a hundred times more than using one, so each is made once. */
function formatter(key: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  let found = formatters.get(key);
  if (found === undefined) {
    // `min2`: no separator below 10 000. `negative`: no sign on what rounds to zero.
    found = new Intl.NumberFormat('en-GB', {
      useGrouping: 'min2',
      signDisplay: 'negative',
      ...options,
    });
    formatters.set(key, found);
  }
  return found;
}

function dress(text: string): string {
  return text.replace(/,/g, '\u202f').replace('-', '−');
}

export function refuseNonFinite(value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`only finite numbers are shown, not ${value}`);
}

function clamp(digits: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, Math.round(digits)));
}

/**
 * A number for reading: decimal point, U+2212 minus, narrow no-break spaces between thousands from 10 000.
 *
 * `decimals` fixes the places after the point. `significant` fixes the figures, trailing zeros kept; from
 * 1e15 and below 1e-6 as `1.234 × 10²¹`. With neither: five figures at most, no trailing zeros.
 * Throws RangeError for NaN and the infinities, which must never reach a page.
 */
export function formatNumber(
  value: number,
  how: { readonly significant?: number; readonly decimals?: number } = {},
): string {
  refuseNonFinite(value);
  const size = Math.abs(value);
  if (size >= 1e15 || (how.decimals === undefined && size !== 0 && size < 1e-6))
    return scientific(value, clamp(how.significant ?? 5, 1, 17));
  if (how.decimals !== undefined) {
    const places = clamp(how.decimals, 0, 20);
    return dress(
      formatter(`d${places}`, {
        minimumFractionDigits: places,
        maximumFractionDigits: places,
      }).format(value),
    );
  }
  if (how.significant === undefined || value === 0)
    return dress(formatter('m', { maximumSignificantDigits: 5 }).format(value));
  const figures = clamp(how.significant, 1, 17);
  return dress(
    formatter(`s${figures}`, {
      minimumSignificantDigits: figures,
      maximumSignificantDigits: figures,
    }).format(value),
  );
}

function scientific(value: number, figures: number): string {
  const [digits = '', power = ''] = value.toExponential(figures - 1).split('e');
  const raised = [...power].map((c) =>
    c === '-' ? '⁻' : c === '+' ? '' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)],
  );
  return `${dress(digits)}\u00a0×\u00a010${raised.join('')}`;
}

/** A number and its unit, joined by a no-break space; a degree of angle follows without one. */
export function withUnit(text: string, unitId: string): string {
  const { symbol } = unitOf(unitId);
  return symbol === '' || symbol === '°' ? text + symbol : `${text}\u00a0${symbol}`;
}

/**
 * An SI value in the given unit, with its symbol: `1685.2 g`.
 *
 * `plusMinus` (SI, a difference) sets the places shown by {@link decimalsFor} but is not printed; it gives
 * way to `decimals`, and `significant` comes last. Throws RangeError for a value that is not finite.
 */
export function formatQuantity(
  si: number,
  unitId: string,
  how: {
    readonly significant?: number;
    readonly plusMinus?: number;
    readonly decimals?: number;
  } = {},
): string {
  refuseNonFinite(si);
  const value = fromSI(si, unitId);
  const { plusMinus, decimals, significant } = how;
  const number =
    decimals !== undefined
      ? formatNumber(value, { decimals })
      : plusMinus !== undefined && plusMinus > 0
        ? formatNumber(value, {
            decimals: decimalsFor(value, differenceFromSI(plusMinus, unitId)),
          })
        : formatNumber(value, significant === undefined ? {} : { significant });
  return withUnit(number, unitId);
}

/**
 * The shortest decimal text that reads back as the same double, for files and CSV: `0.04796`, `1e-7`.
 * Throws RangeError for NaN and the infinities.
 */
export function formatPlain(value: number): string {
  refuseNonFinite(value);
  return String(value === 0 ? 0 : value);
}

/**
 * Places after the point that a ± justifies: the ± keeps two figures when it begins with 1 or 2, else one
 * (two would claim to know the ± itself too well, one figure of 1 would round it by up to half).
 * Both arguments in the unit shown. With no ±, enough places for six figures of the value.
 */
export function decimalsFor(value: number, plusMinus: number): number {
  refuseNonFinite(value);
  if (!(plusMinus > 0) || !Number.isFinite(plusMinus))
    return value === 0 ? 0 : clamp(5 - Math.floor(Math.log10(Math.abs(value))), 0, 20);
  const [digits = '', power = ''] = plusMinus.toExponential(1).split('e');
  return clamp((Number(digits) < 3 ? 1 : 0) - Number(power), 0, 20);
}

/** Inches to a tenth at most are names of sizes: a rod of 6 or 6.0 in is one of 152.4 mm, not of 152. */
function isSizeInInches(value: number, step: number, unitId: string): boolean {
  return unitId === 'in' && step > 0.09 && Math.abs(value) < 1000;
}

/**
 * Converts a value between units and rounds it to what its digits say, as NIST SP 811 B.7.2: to the
 * coarsest decimal place whose rounding error is not greater than the one implied by `step`, one unit of
 * the last digit typed (36 ft → 11.0 m). Never coarser than the units place. A `step` of 0 marks an exact
 * value, a fraction or a size in inches: seven figures at most, no trailing zeros. Returns number text without a unit.
 */
export function convertDigits(
  value: number,
  step: number,
  fromUnit: string,
  toUnit: string,
): string {
  const converted = fromSI(toSI(value, fromUnit), toUnit);
  refuseNonFinite(converted);
  if (step === 0 || isSizeInInches(value, step, fromUnit))
    return dress(
      formatter('x', { maximumSignificantDigits: 7, useGrouping: false }).format(converted),
    );
  const ratio = unitOf(fromUnit).factor / unitOf(toUnit).factor;
  // The small allowance keeps 0.001 × 1000 from falling just below 1 and costing a digit.
  const places = clamp(Math.ceil(-Math.log10(step * ratio) - 1e-9), 0, 20);
  return dress(
    formatter(`u${places}`, {
      minimumFractionDigits: places,
      maximumFractionDigits: places,
      useGrouping: false,
    }).format(converted),
  );
}

/**
 * A typed number in another unit of the same kind, with the precision its digits imply (see
 * {@link convertDigits}). A unit typed behind the number wins over `fromUnit`. `1,875` counts as 1.875.
 * Returns number text without a unit. Throws RangeError for unreadable text or units of different kinds.
 */
export function convertTyped(text: string, fromUnit: string, toUnit: string): string {
  const typed = takeNumber(clean(text));
  const target = unitOf(toUnit);
  if (typeof typed === 'string') throw new RangeError(`"${text}" does not begin with a number`);
  const source = typed.rest === '' ? unitOf(fromUnit) : findUnit(typed.rest, target.kind);
  if (source?.kind !== target.kind)
    throw new RangeError(`"${text}" (${fromUnit}) cannot be converted to ${toUnit}`);
  return convertDigits(
    typed.value,
    typed.form === 'fraction' ? 0 : typed.step,
    source.id,
    target.id,
  );
}
