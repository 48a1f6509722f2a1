import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { falsePosition } from '../../../src/core/math/false-position.ts';
import { evenly } from '../../evenly.ts';

/** The root found, and all places tried on the way. */
function search(f: (x: number) => number, low: number, high: number, within: number) {
  const tried: number[] = [];
  const asked = (x: number): number => (tried.push(x), f(x));
  return { root: falsePosition(asked, [low, f(low)], [high, f(high)], within), tried };
}

describe('false position with the end that stays halved', () => {
  it('tries 4/3, 7/5 and 37/26 for the root of two, as a hand works it out', () => {
    const [first, second, third] = search((x) => x * x - 2, 1, 2, 1e-12).tried;
    // The chord from (1, −1) to (2, 2), from (4/3, −2/9) to (2, 2), and from (7/5, −1/25) to (2, 1), half of it.
    expect(first).toBeCloseTo(4 / 3, 15);
    expect(second).toBeCloseTo(7 / 5, 15);
    expect(third).toBeCloseTo(37 / 26, 15);
  });

  it('finds the root of a straight line at once, wherever it lies', () => {
    fc.assert(
      fc.property(evenly(-0.9, 0.9), evenly(-3, 3), (root, exponent) => {
        const line = search((x) => 10 ** exponent * (x - root), -1, 1, 1e-12);
        expect(line.tried[0]).toBeCloseTo(root, 14);
        expect(line.root).toBeCloseTo(root, 14);
        expect(line.tried.length).toBeLessThanOrEqual(3);
      }),
    );
  });

  it('ends with a trial that hits the root', () => {
    expect(search((x) => x - 0.25, 0, 1, 0)).toEqual({ root: 0.25, tried: [0.25] });
  });

  it('ends with the first trial that moves by no more than it may, and returns the last place asked for', () => {
    const f = (x: number): number => x ** 3 - 5;
    const all = search(f, 1, 3, 1e-12).tried;
    expect(all.length).toBeGreaterThan(5);
    const moves = all.map((x, i) => Math.abs(x - (all[i - 1] ?? 3)));
    for (const within of [...moves, 0.5, 0.05, 5e-3, 5e-4]) {
      const { root, tried } = search(f, 1, 3, within);
      expect(tried).toEqual(all.slice(0, 1 + moves.findIndex((move) => move <= within)));
      expect(root).toBe(tried.at(-1));
    }
  });

  it('needs few trials where one end of the plain method would stay for ever', () => {
    // A chord that keeps its end at the steep side takes hundreds of trials for each of these.
    const curves: readonly [(x: number) => number, number, number, number][] = [
      [(x) => x ** 10 - 1, 0, 1.3, 1],
      [(x) => Math.exp(x) - 2, -30, 5, Math.LN2],
      [(x) => 2 - Math.exp(-x), -5, 30, -Math.LN2],
      [(x) => Math.tanh(20 * (x - 0.3)), 0, 1, 0.3],
    ];
    for (const [f, low, high, wanted] of curves) {
      const { root, tried } = search(f, low, high, 1e-12);
      expect(root).toBeCloseTo(wanted, 13);
      expect(tried.length).toBeLessThanOrEqual(20);
    }
  });

  it('stays between its ends, and stands at the root where it has ended before its last trial', () => {
    fc.assert(
      fc.property(evenly(-0.95, 0.95), evenly(0, 40), evenly(-0.4, 0.4), (wanted, cube, bend) => {
        // It rises everywhere, at least a fifth as steeply as x.
        const g = (x: number): number => x + cube * x ** 3 + bend * x * x;
        const { root, tried } = search((x) => g(x) - g(wanted), -1, 1, 1e-12);
        for (const x of tried) expect(Math.abs(x)).toBeLessThanOrEqual(1);
        if (tried.length < 50) expect(Math.abs(g(root) - g(wanted))).toBeLessThan(1e-9);
      }),
    );
  });

  it('ends after fifty trials of what never settles', () => {
    // Beside a jump the two ends close in more slowly than by halving.
    const { root, tried } = search((x) => (x < 0.3 ? -1 : 1), 0, 1, 0);
    expect(tried).toHaveLength(50);
    expect(root).toBeCloseTo(0.3, 10);
    expect(search(() => Number.NaN, 0, 1, 1e-3).tried).toHaveLength(50);
  });
});
