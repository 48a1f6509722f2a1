import { guarded } from './guarded.ts';

/**
 * The greatest value of `f` between `low` and `high`, and where it stands: the best of `cells` equal cells
 * (default 24), refined by golden section. A value is good to a few parts in 1e15, its place only to about
 * 1e-8 of the interval, since a peak is flat; take the root of the derivative where the place matters.
 * Ends count; of equal values the first is taken. Points where `f` throws or has no finite value are passed over; NaN if it has none anywhere.
 */
export function maximum(
  f: (x: number) => number,
  low: number,
  high: number,
  cells = 24,
): { at: number; value: number } {
  const g = (x: number): number => {
    const y = guarded(f, x);
    return Number.isNaN(y) ? -Infinity : y;
  };
  const width = (high - low) / cells;
  let at = low;
  let value = -Infinity;
  const keep = (x: number, y: number): void => {
    if (y > value) [at, value] = [x, y];
  };
  for (let i = 0; i <= cells; i++) {
    const x = i === cells ? high : low + i * width;
    keep(x, g(x));
  }
  if (value === -Infinity) return { at: Number.NaN, value: Number.NaN };
  const golden = (Math.sqrt(5) - 1) / 2;
  let a = Math.max(low, at - width);
  let b = Math.min(high, at + width);
  let p = b - golden * (b - a);
  let q = a + golden * (b - a);
  let [gp, gq] = [g(p), g(q)];
  for (let turn = 0; turn < 60; turn++) {
    if (gp >= gq) {
      [b, q, gq] = [q, p, gp];
      p = b - golden * (b - a);
      gp = g(p);
    } else {
      [a, p, gp] = [p, q, gq];
      q = a + golden * (b - a);
      gq = g(q);
    }
    keep(p, gp);
    keep(q, gq);
    if (b - a <= 1e-9 * Math.abs(at)) break;
  }
  return { at, value };
}
