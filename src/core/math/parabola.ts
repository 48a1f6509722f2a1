/**
 * The top of the parabola through three points, the middle one the highest: where it stands and its value.
 * The places may be unevenly spaced, in rising order. Three points on one level give the middle one.
 */
export function parabolaTop(
  x: readonly [number, number, number],
  y: readonly [number, number, number],
): { at: number; value: number } {
  const [a, b, c] = x;
  const left = (y[1] - y[0]) / (b - a);
  const right = (y[2] - y[1]) / (c - b);
  const bend = (right - left) / (c - a);
  if (!(bend < 0)) return { at: b, value: y[1] };
  const slope = left + bend * (b - a);
  const at = Math.min(Math.max(b - slope / (2 * bend), a), c);
  const d = at - b;
  return { at, value: y[1] + d * (slope + bend * d) };
}
