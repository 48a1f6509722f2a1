import { guarded } from './guarded.ts';
import { maximum } from './peak.ts';

/** Smallest spacing of doubles near one. */
const epsilon = Number.EPSILON;

/**
 * The root of `f` between `low` and `high`, where `f` has opposite signs (an end that is itself a root is
 * returned at once). Brent's method: bisection's certainty with the pace of inverse quadratic interpolation.
 *
 * `tolerance` is the half-width of the last interval in the unit of x; zero (the default) means as close
 * as doubles allow. A pole with a change of sign is found as well: {@link rootsBetween} rejects those.
 *
 * Throws RangeError where the ends have the same sign, or where `f` is not finite on the way.
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973), ch. 4.
 */
export function bracketedRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance = 0,
): number {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(Math.sign(fa) * Math.sign(fb) < 0))
    throw new RangeError(`no change of sign between ${low} and ${high}`);
  let [c, fc] = [a, fa];
  let [step, previous] = [b - a, b - a];
  for (let turn = 0; turn < 200; turn++) {
    if (fb > 0 === fc > 0) {
      [c, fc] = [a, fa];
      step = previous = b - a;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const near = 2 * epsilon * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= near || fb === 0) return b;
    if (Math.abs(previous) < near || Math.abs(fa) <= Math.abs(fb)) {
      step = previous = half;
    } else {
      const s = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * half * s;
        q = 1 - s;
      } else {
        const t = fa / fc;
        const u = fb / fc;
        p = s * (2 * half * t * (t - u) - (b - a) * (u - 1));
        q = (t - 1) * (u - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      p = Math.abs(p);
      if (2 * p < Math.min(3 * half * q - Math.abs(near * q), Math.abs(previous * q))) {
        previous = step;
        step = p / q;
      } else {
        step = previous = half;
      }
    }
    [a, fa] = [b, fb];
    b += Math.abs(step) > near ? step : Math.sign(half) * (near || Number.MIN_VALUE);
    fb = f(b);
    if (Number.isNaN(fb)) throw new RangeError(`the function has no value at ${b}`);
  }
  return b;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The last point with a value between `inside` (has one) and `outside` (has none). */
function edgeOfDomain(f: (x: number) => number, inside: Point, outside: number): Point {
  let best = inside;
  let bad = outside;
  for (let turn = 0; turn < 60; turn++) {
    const x = (best.x + bad) / 2;
    if (x === best.x || x === bad) break;
    const y = guarded(f, x);
    if (Number.isNaN(y)) bad = x;
    else best = { x, y };
  }
  return best;
}

/**
 * Every root of `f` that `cells` equal cells between `low` and `high` let one find, in rising order.
 *
 * A function that throws, or has no finite value somewhere, has no root there; a root between the last
 * good sample and the edge of such a hole is found. A change of sign across a pole is no root and is
 * dropped. Where |f| has a lowest point between samples without a change of sign, that point is looked
 * into: it yields a pair of close roots, one double root (|f| below 1e-10 of its size around), or none.
 *
 * `maybeMore` says "at least these": `f` is zero over a stretch, or it changed sign twice within two
 * neighbouring cells or jumped across a pole, so it moves faster than the cells can follow.
 * About `cells` + 20 evaluations for each root.
 */
export function rootsBetween(
  f: (x: number) => number,
  low: number,
  high: number,
  cells: number,
): { roots: number[]; maybeMore: boolean } {
  const found: number[] = [];
  let maybeMore = false;
  const width = (high - low) / cells;

  const runs: Point[][] = [];
  let run: Point[] = [];
  let hole: number | undefined;
  for (let i = 0; i <= cells; i++) {
    const x = i === cells ? high : low + i * width;
    const y = guarded(f, x);
    if (Number.isNaN(y)) {
      const last = run.at(-1);
      if (last !== undefined) {
        const edge = edgeOfDomain(f, last, x);
        if (edge.x > last.x) run.push(edge);
        runs.push(run);
        run = [];
      }
      hole = x;
    } else {
      if (run.length === 0 && hole !== undefined) {
        const edge = edgeOfDomain(f, { x, y }, hole);
        if (edge.x < x) run.push(edge);
      }
      run.push({ x, y });
    }
  }
  runs.push(run);

  const safe = (x: number): number => guarded(f, x);

  /** Root of a cell whose ends differ in sign, unless it turns out to be a pole. */
  function crossing(a: Point, b: Point): void {
    let x: number;
    try {
      x = bracketedRoot(safe, a.x, b.x);
    } catch {
      // A hole inside the cell: neither side of it is known well enough to promise anything.
      maybeMore = true;
      return;
    }
    const ends = Math.max(Math.abs(a.y), Math.abs(b.y));
    if (Math.abs(safe(x)) <= 1e-6 * ends) found.push(x);
    else maybeMore = true;
  }

  for (const points of runs) {
    points.forEach((here, i) => {
      const before = points[i - 1];
      const after = points[i + 1];
      if (here.y === 0) {
        found.push(here.x);
        if (after?.y === 0) maybeMore = true;
        return;
      }
      if (after !== undefined && here.y * after.y < 0) crossing(here, after);
      if (before === undefined || after === undefined) return;
      const sign = Math.sign(here.y);
      const lowest =
        sign * before.y > 0 &&
        sign * after.y > 0 &&
        Math.abs(here.y) <= Math.abs(before.y) &&
        Math.abs(here.y) < Math.abs(after.y);
      if (!lowest) return;
      const dip = maximum((x) => -sign * safe(x), before.x, after.x, 2);
      const bottom = { x: dip.at, y: -sign * dip.value };
      if (sign * bottom.y < 0) {
        crossing(before, bottom);
        crossing(bottom, after);
        maybeMore = true;
      } else if (Math.abs(bottom.y) <= 1e-10 * Math.max(Math.abs(before.y), Math.abs(after.y))) {
        found.push(bottom.x);
      }
    });
  }

  const apart = 1e-9 * Math.max(Math.abs(low), Math.abs(high), Math.abs(high - low));
  const roots: number[] = [];
  for (const x of found.sort((p, q) => p - q))
    if (x - (roots.at(-1) ?? -Infinity) > apart) roots.push(x);
  return { roots, maybeMore };
}
