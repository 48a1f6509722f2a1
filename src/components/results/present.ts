import type {
  Absent,
  MaybeOutput,
  NumberOutput,
  OutputEntry,
  Result,
} from '../../calculators/define.ts';
import { unitFor } from '../../calculators/output-unit.ts';
import { formatNumber, withUnit } from '../../units/format.ts';
import {
  formatResult,
  formatTo,
  placesBeside,
  resultDigits,
  resultPlaces,
} from '../../units/result.ts';
import type { System } from '../../units/kinds.ts';
import { shorterWay } from '../../units/turn.ts';
import { differenceFromSI, fromSI } from '../../units/units.ts';
import type { Pair } from './both.ts';

export type Shown = NumberOutput | MaybeOutput;

/** True for outputs that stand in the results table; series are drawn, not listed. */
export function isShown(output: OutputEntry): output is Shown {
  return output.type !== 'series';
}

export function isAbsent(result: Result | undefined): result is Absent {
  return typeof result === 'object' && 'absent' in result;
}

/**
 * A result as the page prints it, or the reason why there is none. A ± sets how many digits are shown, and is
 * printed behind them where it was asked for.
 */
export function present(
  output: Shown,
  result: Result | undefined,
  system: System,
  plusMinus?: number,
  sure = false,
): string {
  if (isAbsent(result)) return result.absent;
  if (typeof result !== 'number') return '—';
  const unit = unitFor(output, system);
  if (!sure || plusMinus === undefined || plusMinus === 0)
    return formatResult(result, unit, plusMinus);
  return spread(fromSI(result, unit), differenceFromSI(plusMinus, unit), unit);
}

/** A difference (a ±, a step) in the unit given, to two figures; no zero point shifts it. */
export function formatDifference(si: number, unit: string): string {
  return withUnit(formatNumber(differenceFromSI(si, unit), { significant: 2 }), unit);
}

/**
 * A value and its ±, both in the unit, to the same decimals: "1685.2 ± 2.3 g". A ± too small for the figures of a
 * result is rounded up to their last place.
 */
function spread(value: number, plusMinus: number, unit: string): string {
  const places = placesBeside(value, plusMinus, unit);
  const shown = Math.max(plusMinus, 10 ** -places);
  return withUnit(`${formatTo(value, places)} ± ${formatTo(shown, places)}`, unit);
}

/** The result in multiples of standard gravity, for the accelerations that say so. */
export function inGravity(result: Result | undefined): string | undefined {
  if (typeof result !== 'number') return undefined;
  return formatNumber(fromSI(result, 'gravity'), { significant: 4 });
}

/** Candidate less baseline, signed, with its own ± where it has one. */
export function difference(
  output: Shown,
  { baseline, candidate, difference: doubt }: Pair,
  system: System,
  sure = false,
): string {
  if (typeof baseline !== 'number' || typeof candidate !== 'number') return '—';
  const change =
    output.direction === true ? shorterWay(candidate - baseline) : candidate - baseline;
  const unit = unitFor(output, system);
  const sign = change > 0 ? '+' : '';
  if (sure && doubt !== undefined && doubt.plusMinus > 0)
    return (
      sign + spread(differenceFromSI(change, unit), differenceFromSI(doubt.plusMinus, unit), unit)
    );
  // Two results that differ by rounding alone are the same result.
  if (Math.abs(change) <= 1e-10 * Math.max(Math.abs(baseline), Math.abs(candidate))) return 'none';
  const size = differenceFromSI(change, unit);
  const isDoubted = doubt !== undefined && doubt.plusMinus > 0;
  const decimals = isDoubted
    ? placesBeside(size, differenceFromSI(doubt.plusMinus, unit), unit)
    : placesOfBoth(fromSI(baseline, unit), fromSI(candidate, unit), size, unit);
  const digits = resultDigits(size, decimals, unit);
  if (!isDoubted && Number.parseFloat(digits.replace('−', '-')) === 0) return 'none';
  return withUnit(sign + digits, unit);
}

/** To the last place that both results have; two figures where they are nearer to each other than that. */
function placesOfBoth(one: number, other: number, size: number, unit: string): number {
  return Math.max(
    Math.min(resultPlaces(one, unit), resultPlaces(other, unit)),
    Math.min(resultPlaces(size, unit), 1 - Math.floor(Math.log10(Math.abs(size)))),
  );
}

/** Candidate over baseline, with its own ± where it has one; undefined where a quotient would say nothing. */
export function ratio(
  output: Shown,
  { baseline, candidate, ratio: doubt }: Pair,
  sure = false,
): string | undefined {
  if (typeof baseline !== 'number' || typeof candidate !== 'number') return undefined;
  if (output.direction === true) return undefined;
  const quotient = candidate / baseline;
  if (!Number.isFinite(quotient) || quotient <= 0 || baseline === candidate) return undefined;
  return sure && doubt !== undefined && doubt.plusMinus > 0
    ? spread(quotient, doubt.plusMinus, 'ratio')
    : formatNumber(quotient, { significant: 3 });
}
