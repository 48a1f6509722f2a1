import type {
  Absent,
  MaybeOutput,
  NumberOutput,
  OutputEntry,
  Result,
} from '../../calculators/define.ts';
import { unitFor } from '../../calculators/output-unit.ts';
import { decimalsFor, formatNumber, formatQuantity, withUnit } from '../../units/format.ts';
import type { System } from '../../units/kinds.ts';
import { differenceFromSI, fromSI } from '../../units/units.ts';
import type { Pair } from './both.ts';

export type Shown = NumberOutput | MaybeOutput;

/** Figures shown when no ± says how many are justified. */
const plainFigures = 4;

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
  if (plusMinus === undefined || plusMinus === 0)
    return formatQuantity(result, unit, { significant: plainFigures });
  if (!sure) return formatQuantity(result, unit, { plusMinus });
  return spread(fromSI(result, unit), differenceFromSI(plusMinus, unit), unit);
}

/** A difference (a ±, a step) in the unit given, to two figures; no zero point shifts it. */
export function formatDifference(si: number, unit: string): string {
  return withUnit(formatNumber(differenceFromSI(si, unit), { significant: 2 }), unit);
}

/** A value and its ±, both in the unit, to the same decimals: "1685.2 ± 2.3 g". */
function spread(value: number, plusMinus: number, unit: string): string {
  const decimals = decimalsFor(value, plusMinus);
  const digits = (number: number): string => formatNumber(number, { decimals });
  return withUnit(`${digits(value)} ± ${digits(plusMinus)}`, unit);
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
  const change = candidate - baseline;
  const unit = unitFor(output, system);
  const sign = change > 0 ? '+' : '';
  if (sure && doubt !== undefined && doubt.plusMinus > 0)
    return (
      sign + spread(differenceFromSI(change, unit), differenceFromSI(doubt.plusMinus, unit), unit)
    );
  // Two results that differ by rounding alone are the same result.
  if (Math.abs(change) <= 1e-12 * Math.max(Math.abs(baseline), Math.abs(candidate))) return 'none';
  const justified = doubt !== undefined && doubt.plusMinus > 0;
  return (
    sign +
    formatQuantity(change, unit, justified ? { plusMinus: doubt.plusMinus } : { significant: 3 })
  );
}

/** Candidate over baseline, with its own ± where it has one; undefined where a quotient would say nothing. */
export function ratio(
  { baseline, candidate, ratio: doubt }: Pair,
  sure = false,
): string | undefined {
  if (typeof baseline !== 'number' || typeof candidate !== 'number') return undefined;
  const quotient = candidate / baseline;
  if (!Number.isFinite(quotient) || quotient <= 0 || baseline === candidate) return undefined;
  return sure && doubt !== undefined && doubt.plusMinus > 0
    ? spread(quotient, doubt.plusMinus, 'ratio')
    : formatNumber(quotient, { significant: 3 });
}
