import { describe, expect, it } from 'vitest';
import {
  relativeStep,
  steadySearch,
  type Matrix,
  type Pair,
} from '../../../src/core/math/steady.ts';

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
});
