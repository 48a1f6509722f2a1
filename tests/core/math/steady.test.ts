import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  relativeStep,
  steadySearch,
  type Matrix,
  type Pair,
} from '../../../src/core/math/steady.ts';
import { evenly } from '../../evenly.ts';

/** Passes until the search would change a pair by less than one part in 1e8; at most 60. */
function passes(
  process: (from: Pair) => Pair,
  slope: (from: Pair) => Matrix,
  start: Pair,
  learns = true,
): { readonly at: Pair; readonly count: number } {
  const search = steadySearch(1e-6, 1e6);
  let at = start;
  for (let count = 1; count < 60; count++) {
    const next = search.next(at, process(at), slope(at));
    if (relativeStep(at, next) < 1e-8) return { at, count };
    at = next;
    if (!learns) search.restart();
  }
  return { at, count: 60 };
}

describe('the steady search', () => {
  const slow = ([x, y]: Pair): Pair => [0.995 * x + 0.01 * y + 0.02, 0.1 * x + 0.3 * y + 0.5];

  it('finds the fixed point of a linear process at once, with its slope', () => {
    const { at, count } = passes(slow, () => [0.995, 0.01, 0.1, 0.3], [1, 1]);
    // (1 − 0.995)x − 0.01y = 0.02 and −0.1x + 0.7y = 0.5: x = 0.019/0.0025, y = 0.0045/0.0025.
    expect(at[0]).toBeCloseTo(7.6, 7);
    expect(at[1]).toBeCloseTo(1.8, 7);
    // One step but for the nine digits that a closed process is given up for, and one to see it.
    expect(count).toBeLessThan(5);
  });

  it('learns what the slope gets wrong, where the plain step takes many passes', () => {
    const process = ([x, y]: Pair): Pair => [0.99 * x + 0.01 * y, 0.5 * y + 3];
    const wrong = (): Matrix => [0.98, 0.01, 0, 0.5];
    const { at, count } = passes(process, wrong, [1, 1]);
    expect(at[0]).toBeCloseTo(6, 6);
    expect(at[1]).toBeCloseTo(6, 6);
    // Half of the way each time without learning: ln 1e-8/ln ½ passes.
    expect(passes(process, wrong, [1, 1], false).count).toBeGreaterThan(20);
    expect(count).toBeLessThan(15);
  });

  it('settles a vessel filled at a steady rate and emptied through a choked hole', () => {
    // dp/dt = 1 − p/4 by conductances p/(4(p − 0.2)) frozen at each pass: slope exp(−conductance).
    const process = ([x, y]: Pair): Pair => [4 + (x - 4) * Math.exp(-0.25), y];
    const frozen = ([x]: Pair): Matrix => [Math.exp(-x / (4 * (x - 0.2))), 0, 0, 1];
    const { at, count } = passes(process, frozen, [0.5, 3]);
    expect(at[0]).toBeCloseTo(4, 8);
    expect(at[1]).toBe(3);
    expect(count).toBeLessThan(12);
  });

  it('never tries what lies outside its bounds', () => {
    const search = steadySearch(1, 2);
    // Newton's step would lead to 11: what the process returned is tried instead.
    expect(search.next([1.5, 1.5], [1.6, 1.5], [0.99, 0, 0, 0.5])).toEqual([1.6, 1.5]);
  });

  it('takes the plain step where what it learnt would lead outside', () => {
    const search = steadySearch(1, 120);
    search.next([100, 100], [105, 100], [0.5, 0, 0, 0.5]);
    // 5 missing at 100 and 3 at 110 promise 125; the slope given promises 116.
    const [x] = search.next([110, 100], [113, 100], [0.5, 0, 0, 0.5]);
    expect(x).toBeCloseTo(116, 5);
    const free = steadySearch(1, 1000);
    free.next([100, 100], [105, 100], [0.5, 0, 0, 0.5]);
    expect(free.next([110, 100], [113, 100], [0.5, 0, 0, 0.5])[0]).toBeCloseTo(125, 5);
  });

  it('goes no more than three times as far as the slope says', () => {
    const search = steadySearch(0, 1e9);
    search.next([100, 100], [110, 100], [0.5, 0, 0, 0.5]);
    // What came out has hardly changed from 100 to 120: a learnt step alone would go to thousands.
    const [x] = search.next([120, 100], [129.99, 100], [0.5, 0, 0, 0.5]);
    expect(x).toBeLessThanOrEqual(120 + 3 * 20);
  });

  it('goes on the way of a process that by its slope returns what it gets', () => {
    // A billionth further each time: given up as closed, it is tried a whole unit further.
    const [x] = steadySearch(0, 10).next([1, 1], [1 + 1e-9, 1], [1, 0, 0, 0.5]);
    expect(x).toBeCloseTo(2, 6);
  });

  it('takes a step that ends on a bound', () => {
    // Half of the way is done at once, so that the step is twice as long: to 1 or 2, where the bounds are. What
    // is added for a closed process is taken off the slope, or it would end a billionth short.
    const half = 0.5 + 1e-9;
    for (const [from, to] of [
      [1.5, 1],
      [1.5, 2],
    ] as const) {
      const middle = (from + to) / 2;
      const next = (one: Pair, other: Pair): Pair =>
        steadySearch(1, 2).next(one, other, [half, 0, 0, half]);
      expect(next([from, 1.5], [middle, 1.5])).toEqual([to, 1.5]);
      expect(next([1.5, from], [1.5, middle])).toEqual([1.5, to]);
    }
  });

  it('goes two and a half times as far as the slope says where it has learnt so, but not four', () => {
    const third = (to: number): number => {
      const search = steadySearch(1, 1e9);
      search.next([100, 100], [105, 100], [0.5, 0, 0, 0.5]);
      return search.next([110, 100], [to, 100], [0.5, 0, 0, 0.5])[0];
    };
    // From 5 missing to 3: 10 more would close 2, so 15 close all. From 5 to 3.75: 30, where the slope says 7.5.
    expect(third(113)).toBeCloseTo(125, 5);
    expect(third(113.75)).toBeCloseTo(117.5, 5);
  });
});

describe('Broyden’s update', () => {
  type Vector = readonly [number, number];
  const times = ([a, b, c, d]: Matrix, [x, y]: Vector): Vector => [a * x + b * y, c * x + d * y];
  const minus = (one: Vector, other: Vector): Vector => [one[0] - other[0], one[1] - other[1]];
  /** The least change of `slope` by which a step `d` makes `r` out of what is missing. */
  function corrected(slope: Matrix, d: Vector, r: Vector): Matrix {
    const [e, f] = minus(r, times(slope, d));
    const size = d[0] ** 2 + d[1] ** 2;
    const [a, b, c, g] = slope;
    return [
      a + (e * d[0]) / size,
      b + (e * d[1]) / size,
      c + (f * d[0]) / size,
      g + (f * d[1]) / size,
    ];
  }
  /** What is missing less what a step of `next` less `from` makes of it by `slope`: nothing for Newton's step. */
  const left = (slope: Matrix, from: Vector, missing: Vector, next: Vector): Vector =>
    minus(missing, times(slope, minus(from, next)));

  const place = fc.tuple(evenly(90, 110), evenly(190, 210));
  const slight = evenly(-0.1, 0.1);
  const matrix = fc.tuple(evenly(0.3, 0.5), slight, slight, evenly(0.3, 0.5));

  it('makes the next step that of the least matrix which explains the last, kept from pass to pass', () => {
    fc.assert(
      fc.property(
        fc.tuple(place, place, place),
        fc.tuple(matrix, matrix, matrix),
        matrix,
        (froms, given, truth) => {
          const search = steadySearch(-1e9, 1e9);
          // The process: what is missing is (1 − truth)(x − 100, y − 200).
          const missing = ([x, y]: Vector): Vector =>
            minus([x - 100, y - 200], times(truth, [x - 100, y - 200]));
          const slopes = given.map(([a, b, c, d]): Matrix => [1 - a, -b, -c, 1 - d]) as [
            Matrix,
            Matrix,
            Matrix,
          ];
          const [first, second, third] = froms;
          const step = (from: Vector, slope: Matrix): Vector =>
            search.next(from, minus(from, missing(from)), slope);
          const moved = minus(second, first);
          const again = minus(third, second);
          // Steps too short to learn from are another test's.
          fc.pre([moved, again].every(([x, y]) => Math.hypot(x, y) > 1));

          step(first, given[0]);
          const two = step(second, given[1]);
          const learnt = corrected(slopes[1], moved, minus(missing(second), missing(first)));
          // Slopes are given as out over in, and a billionth is added to each.
          const [x, y] = left(learnt, second, missing(second), two);
          expect(Math.hypot(x, y)).toBeLessThan(1e-6);

          const three = step(third, given[2]);
          const kept = learnt.map(
            (value, i) => value - (slopes[1][i] ?? 0) + (slopes[2][i] ?? 0),
          ) as [number, number, number, number];
          const more = corrected(kept, again, minus(missing(third), missing(second)));
          const [u, v] = left(more, third, missing(third), three);
          expect(Math.hypot(u, v)).toBeLessThan(1e-6);
        },
      ),
    );
  });

  it('learns from no step shorter than a five-hundredth of the values, of whatever size', () => {
    for (const [x, y] of [
      [1e5, 1e5],
      [1e5, 1],
      [1, 1e5],
      [1e-3, 1e-3],
    ] as const)
      for (const [share, learns] of [
        [1.5e-3, false],
        [4e-3, true],
      ] as const) {
        const long = share * Math.hypot(x, y);
        const search = steadySearch(-1e9, 1e9);
        const half: Matrix = [0.5, 0, 0, 0.5];
        const size = 3 * long;
        search.next([x, y], [x + size / 2, y], half);
        // What is missing falls by 0.3 of the step, where the slope given says by half of it.
        const [next] = search.next([x + long, y], [x + long + 0.4 * size, y], half);
        const slope = (0.1 * size) / long;
        expect((next - x - long) / size).toBeCloseTo(learns ? 0.4 / slope : 0.8, 5);
      }
  });
});
