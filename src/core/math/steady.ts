/** Two numbers that belong together. */
export type Pair = readonly [number, number];

/** A matrix of two rows: first row, second row. */
export type Matrix = readonly [number, number, number, number];

/** A search for two numbers that a long process returns unchanged. */
export interface SteadySearch {
  /** `from` went in, `to` came out, and `slope` is about ∂to/∂from: returns what to try next. */
  next(from: Pair, to: Pair, slope: Matrix): Pair;
  /** Keeps what was learnt, but compares the next pass with none before: the process has changed a little. */
  restart(): void;
}

/** Added to 1 where the process returns what it gets, so that its own value is then kept. */
const closed = 1e-9;
/** Shortest step [of the values] from which a slope is learnt: below it the process's own noise rules. */
const legible = 2e-3;
/** How many times farther than the given slope says a learnt one may lead. */
const boldest = 3;

/** How far `to` lies from `from`, as a share of `from`, in the number that moves more. */
export function relativeStep(from: Pair, to: Pair): number {
  return Math.max(Math.abs(to[0] / from[0] - 1), Math.abs(to[1] / from[1] - 1));
}

/** Newton's step for x − to(x) = 0 with the matrix of its slope. */
function newton([x, y]: Pair, [f, g]: Pair, [a, b, c, d]: Matrix): Pair {
  const determinant = a * d - b * c;
  return [x - (d * f - b * g) / determinant, y - (a * g - c * f) / determinant];
}

/**
 * Looks for the fixed point of a process of two positive numbers that leads no pair out of `low` … `high`.
 *
 * Newton's method with the slope given, corrected in the directions tried by what came out of them (Broyden's
 * update, kept from pass to pass). The corrected step is taken where it stays inside `low` … `high` and goes
 * no more than three times as far as the plain one; else the plain one where that stays inside; else what the
 * process returned.
 * Source: C. G. Broyden, Mathematics of Computation 19 (1965); from memory, checked by a test.
 */
export function steadySearch(low: number, high: number): SteadySearch {
  let learnt: Matrix = [0, 0, 0, 0];
  let before: { readonly from: Pair; readonly rest: Pair } | undefined;
  const inside = ([x, y]: Pair): boolean => x >= low && x <= high && y >= low && y <= high;

  function learn([x, y]: Pair, [f, g]: Pair, [a, b, c, d]: Matrix): void {
    if (before === undefined) return;
    const [dx, dy] = [x - before.from[0], y - before.from[1]];
    const size = dx * dx + dy * dy;
    if (size < legible * legible * (x * x + y * y)) return;
    const [ea, eb, ec, ed] = learnt;
    const p = (f - before.rest[0] - (a + ea) * dx - (b + eb) * dy) / size;
    const q = (g - before.rest[1] - (c + ec) * dx - (d + ed) * dy) / size;
    learnt = [ea + p * dx, eb + p * dy, ec + q * dx, ed + q * dy];
  }

  return {
    next(from, to, [xx, xy, yx, yy]) {
      const rest: Pair = [from[0] - to[0], from[1] - to[1]];
      const slope: Matrix = [1 + closed - xx, -xy, -yx, 1 + closed - yy];
      learn(from, rest, slope);
      before = { from, rest };
      const plain = newton(from, rest, slope);
      const sure = inside(plain) ? plain : to;
      const [a, b, c, d] = slope;
      const [ea, eb, ec, ed] = learnt;
      const bold = newton(from, rest, [a + ea, b + eb, c + ec, d + ed]);
      const near = relativeStep(from, bold) <= boldest * relativeStep(from, sure);
      return near && inside(bold) ? bold : sure;
    },
    restart() {
      before = undefined;
    },
  };
}
