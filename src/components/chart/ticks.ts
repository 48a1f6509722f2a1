/**
 * Round numbers between `from` and `to`, about `count` of them (2 or more), at steps of 1, 2 or 5 times a
 * power of ten. Empty unless `from` lies below `to`, both finite.
 *
 * The rule of d3-array's `ticks`, which a test holds it to; that package does not shake down to this one
 * function, and every page with a chart would carry the rest.
 */
export function ticks(from: number, to: number, count: number): number[] {
  const rough = (to - from) / count;
  if (!(rough > 0) || !Number.isFinite(rough)) return [];
  const power = Math.floor(Math.log10(rough));
  const error = rough / 10 ** power;
  const factor =
    error >= Math.sqrt(50) ? 10 : error >= Math.sqrt(10) ? 5 : error >= Math.sqrt(2) ? 2 : 1;
  // Below one the steps are counted in whole parts of one: 3/10 is exact where 3 × 0.1 is not.
  const parts = power < 0 ? 10 ** -power / factor : 1;
  const step = power < 0 ? 1 : 10 ** power * factor;
  const first = Math.ceil((from * parts) / step - 1e-10);
  const last = Math.floor((to * parts) / step + 1e-10);
  return Array.from(
    { length: Math.max(0, last - first + 1) },
    (_, i) => ((first + i) * step) / parts,
  );
}
