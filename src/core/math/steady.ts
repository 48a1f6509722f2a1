/** A search for two numbers that a long process returns unchanged. */
export interface SteadySearch {
  /** `from` went in, `to` came out; writes what to try next into `out` (the first two places of each). */
  next(from: ArrayLike<number>, to: ArrayLike<number>, out: Float64Array): void;
  /** Drops what was learnt, after the process has changed its nature. */
  forget(): void;
}

/**
 * Broyden's search for a fixed point of two positive unknowns: each pass of the process also teaches how
 * fast it comes to rest, so that a slow one is carried on at once. A trial never more than triples, or falls
 * below a third of, what came out.
 * Source: C. G. Broyden, Mathematics of Computation 19 (1965); from memory, checked by a test.
 */
export function steadySearch(): SteadySearch {
  let known = false;
  // The matrix of d(from − to)/d(from), the last point, and its difference.
  let [a, b, c, d] = [1, 0, 0, 1];
  let [x0, y0, f0, g0] = [0, 0, 0, 0];
  return {
    forget() {
      known = false;
      [a, b, c, d] = [1, 0, 0, 1];
    },
    next(from, to, out) {
      const [x, y] = [from[0] ?? 0, from[1] ?? 0];
      const [X, Y] = [to[0] ?? 0, to[1] ?? 0];
      const [f, g] = [x - X, y - Y];
      const [dx, dy] = [x - x0, y - y0];
      const size = dx * dx + dy * dy;
      if (known && size > 1e-24 * (x * x + y * y)) {
        const rf = (f - f0 - a * dx - b * dy) / size;
        const rg = (g - g0 - c * dx - d * dy) / size;
        [a, b, c, d] = [a + rf * dx, b + rf * dy, c + rg * dx, d + rg * dy];
      }
      [x0, y0, f0, g0] = [x, y, f, g];
      known = true;
      const determinant = a * d - b * c;
      let [u, v] = [X, Y];
      if (Math.abs(determinant) > 1e-9) {
        u = x - (d * f - b * g) / determinant;
        v = y - (a * g - c * f) / determinant;
      }
      out[0] = Math.min(Math.max(u, X / 3), 3 * X);
      out[1] = Math.min(Math.max(v, Y / 3), 3 * Y);
    },
  };
}
