import { ticks } from './ticks.ts';

/** A straight-line map from the numbers of an axis to the units of the drawing, and back. */
export interface Scale {
  readonly domain: readonly [number, number];
  readonly range: readonly [number, number];
  readonly ticks: readonly number[];
  at(value: number): number;
  invert(position: number): number;
}

/** True where two ends differ by no more than rounding: an axis between them would show only noise. */
function level(low: number, high: number): boolean {
  const size = Math.max(Math.abs(low), Math.abs(high));
  return !(high - low > 1e-9 * size) || size < 1e-200;
}

/**
 * Maps `domain` onto `range` with about `count` round ticks inside the domain.
 * A domain of no width is widened to both sides, so that nothing is divided by zero.
 */
export function affine(
  domain: readonly [number, number],
  range: readonly [number, number],
  count: number,
): Scale {
  const room = Math.max(1, Math.abs(domain[0]) / 1000);
  const [from, to] = level(...domain) ? [domain[0] - room, domain[1] + room] : domain;
  const slope = (range[1] - range[0]) / (to - from);
  return {
    domain: [from, to],
    range,
    ticks: ticks(from, to, count),
    at: (value) => range[0] + (value - from) * slope,
    invert: (position) => from + (position - range[0]) / slope,
  };
}

/**
 * The smallest and greatest finite number of all lists, widened to the next tick on both ends and always
 * containing `include`. Without a finite number it is [0, 1].
 */
export function niceDomain(
  lists: readonly ArrayLike<number | undefined>[],
  count: number,
  include: readonly number[] = [],
): [number, number] {
  let low = Infinity;
  let high = -Infinity;
  for (const list of [...lists, include]) {
    for (let i = 0; i < list.length; i += 1) {
      const value = list[i];
      if (value === undefined || !Number.isFinite(value)) continue;
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  if (low > high) return [0, 1];
  if (level(low, high))
    return Math.max(-low, high) < 1e-200 ? [0, 1] : [Math.min(0, low), Math.max(0, high)];
  const marks = ticks(low, high, count);
  const first = marks[0];
  const second = marks[1];
  const last = marks.at(-1);
  if (first === undefined || second === undefined || last === undefined) return [low, high];
  // Ticks lie at whole multiples of the step; multiplying keeps 0.3 from becoming 0.30000000000000004.
  const step = second - first;
  const down = low < first ? first - step : first;
  const up = high > last ? last + step : last;
  return [Number(down.toPrecision(12)), Number(up.toPrecision(12))];
}

/** The decimals that the ticks of an axis need so that no two read alike. */
export function tickDecimals(marks: readonly number[]): number {
  const first = marks[0];
  const second = marks[1];
  if (first === undefined || second === undefined) return 0;
  const step = Math.abs(second - first);
  return Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
}
