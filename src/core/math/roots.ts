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
  if (Math.sign(fa) !== -Math.sign(fb))
    throw new RangeError(`no change of sign between ${low} and ${high}`);
  // As if the other end had been tried last: the first turn puts the whole interval in their place.
  let [c, fc] = [b, fb];
  let [step, previous] = [0, 0];
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
    const y = guarded(f, x);
    if (Number.isNaN(y)) bad = x;
    else best = { x, y };
  }
  return best;
}

/** The samples of `f`, cut where it has no value; each piece reaches to the edge of such a hole. */
function sampledPieces(
  f: (x: number) => number,
  low: number,
  high: number,
  cells: number,
): readonly (readonly Point[])[] {
  const width = (high - low) / cells;
  const pieces: Point[][] = [];
  let piece: Point[] = [];
  let hole: number | undefined;
  for (let i = 0; i <= cells; i++) {
    const x = i === cells ? high : low + i * width;
    const y = guarded(f, x);
    if (Number.isNaN(y)) {
      const last = piece.at(-1);
      if (last !== undefined) {
        const edge = edgeOfDomain(f, last, x);
        if (edge.x > last.x) piece.push(edge);
        pieces.push(piece);
        piece = [];
      }
      hole = x;
    } else {
      if (piece.length === 0 && hole !== undefined) {
        const edge = edgeOfDomain(f, { x, y }, hole);
        if (edge.x < x) piece.push(edge);
      }
      piece.push({ x, y });
    }
  }
  return [...pieces, piece];
}

/** What a search has come upon so far. */
interface Finds {
  readonly roots: number[];
  maybeMore: boolean;
}

/** Adds the root of a cell whose ends differ in sign, unless it turns out to be a pole. */
function addCrossing(f: (x: number) => number, a: Point, b: Point, finds: Finds): void {
  let x: number;
  try {
    x = bracketedRoot(f, a.x, b.x);
  } catch {
    // A hole inside the cell: neither side of it is known well enough to promise anything.
    finds.maybeMore = true;
    return;
  }
  const ends = Math.max(Math.abs(a.y), Math.abs(b.y));
  if (Math.abs(f(x)) <= 1e-6 * ends) finds.roots.push(x);
  else finds.maybeMore = true;
}

/** Adds the roots around a sample that is nearer to zero than both its neighbours, without a change of sign. */
function addDip(
  f: (x: number) => number,
  [before, here, after]: readonly [Point, Point, Point],
  finds: Finds,
): void {
  const sign = Math.sign(here.y);
  const lowest =
    Math.sign(before.y) === sign &&
    Math.sign(after.y) === sign &&
    Math.abs(here.y) <= Math.abs(before.y) &&
    Math.abs(here.y) < Math.abs(after.y);
  if (!lowest) return;
  const dip = maximum((x) => -sign * f(x), before.x, after.x, 2);
  const bottom = { x: dip.at, y: -sign * dip.value };
  if (Math.sign(bottom.y) === -sign) {
    addCrossing(f, before, bottom, finds);
    addCrossing(f, bottom, after, finds);
    finds.maybeMore = true;
  } else if (Math.abs(bottom.y) <= 1e-10 * Math.max(Math.abs(before.y), Math.abs(after.y))) {
    finds.roots.push(bottom.x);
  }
}

/** The numbers in rising order, those left out that stand no further than `apart` from the one before. */
function distinct(numbers: readonly number[], apart: number): number[] {
  const kept: number[] = [];
  for (const x of [...numbers].sort((p, q) => p - q)) {
    const last = kept.at(-1);
    if (last === undefined || x - last > apart) kept.push(x);
  }
  return kept;
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
  const finds: Finds = { roots: [], maybeMore: false };
  const safe = (x: number): number => guarded(f, x);
  for (const points of sampledPieces(f, low, high, cells)) {
    points.forEach((here, i) => {
      const before = points[i - 1];
      const after = points[i + 1];
      if (here.y === 0) {
        finds.roots.push(here.x);
        if (after?.y === 0) finds.maybeMore = true;
        return;
      }
      if (after !== undefined && Math.sign(here.y) === -Math.sign(after.y))
        addCrossing(safe, here, after, finds);
      if (before !== undefined && after !== undefined) addDip(safe, [before, here, after], finds);
    });
  }
  const apart = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
  return { roots: distinct(finds.roots, apart), maybeMore: finds.maybeMore };
}
