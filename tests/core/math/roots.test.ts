import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at } from '../../../src/core/math/at.ts';
import { bracketedRoot, rootsBetween } from '../../../src/core/math/roots.ts';
import { evenly } from '../../evenly.ts';

describe('bracketedRoot', () => {
  it('finds the fixed point of the cosine', () => {
    // OEIS A003957, to the last digits of a double.
    expect(bracketedRoot((x) => Math.cos(x) - x, 0, 1)).toBeCloseTo(0.7390851332151607, 15);
  });
  it('finds a root that is flat and one that is steep', () => {
    expect(bracketedRoot((x) => (x - 0.4) ** 5, -1, 1.5)).toBeCloseTo(0.4, 14);
    expect(bracketedRoot((x) => Math.tanh(1e6 * (x - 0.3)), 0, 1)).toBeCloseTo(0.3, 12);
  });
  it('stops at the tolerance asked for', () => {
    let calls = 0;
    const root = bracketedRoot((x) => (calls++, Math.exp(x) - 2), 0, 5, 1e-3);
    expect(Math.abs(root - Math.LN2)).toBeLessThan(1e-3);
    expect(calls).toBeLessThan(14);
  });
  it('tries the secant first, then the parabola through three points', () => {
    const tried: number[] = [];
    const f = (x: number): number => Math.exp(x) - 0.5;
    bracketedRoot((x) => (tried.push(x), f(x)), -1, 1);
    const [a, b, secant, parabola] = [at(tried, 0), at(tried, 1), at(tried, 2), at(tried, 3)];
    expect(secant).toBeCloseTo((a * f(b) - b * f(a)) / (f(b) - f(a)), 14);
    // x as a polynomial in y by Lagrange's formula, at y = 0.
    const [u, v, w] = [f(a), f(b), f(secant)];
    expect(parabola).toBeCloseTo(
      (a * v * w) / ((u - v) * (u - w)) +
        (b * u * w) / ((v - u) * (v - w)) +
        (secant * u * v) / ((w - u) * (w - v)),
      14,
    );
  });
  it('takes a parabola’s step up to three quarters of the interval, and halves beyond', () => {
    // Heights by the order of asking put the secant a billionth beside the middle. The parabola through −1, `third` and 1 there is
    // at y = 0 as far as Lagrange's formula says, in widths: 0.37 of 0.5, which is taken, and 0.39, which is not.
    const fourth = (width: number, third: number): number => {
      const tried: number[] = [];
      const heights = [-1, 1 + 1e-9, third];
      bracketedRoot((x) => heights[tried.push(x) - 1] ?? 0, 0, width);
      return at(tried, 3) / width;
    };
    for (const width of [1e-2, 1, 1e2])
      for (const [third, expected] of [
        [-0.53, 0.5 / (0.47 * 1.53) + 0.53 / (2 * 1.53)],
        [-0.55, 0.75],
      ] as const)
        expect(fourth(width, third)).toBeCloseTo(expected, 8);
  });
  it('needs a dozen values of a smooth function, where halving needs fifty', () => {
    const curves: readonly [(x: number) => number, number, number][] = [
      [(x) => Math.cos(x) - x, 0, 1],
      [(x) => Math.exp(x) - 2, -30, 5],
      [(x) => x ** 3 - 2 * x - 5, 2, 3],
      [(x) => (x - 1e6 - 0.3) ** 3 + (x - 1e6 - 0.3), 1e6, 1e6 + 1],
    ];
    for (const [f, low, high] of curves) {
      let calls = 0;
      bracketedRoot((x) => (calls++, f(x)), low, high);
      expect(calls).toBeLessThanOrEqual(12);
    }
  });
  it('finds a jump between sides of any height', () => {
    // The secant's steps are then shorter than doubles tell apart: halving has to take over.
    for (const low of [1, 1e-9, 1e-20, 1e-300])
      for (const turned of [1, -1])
        expect(bracketedRoot((x) => (turned * x < 0.3 ? -low : 1), -2, 2)).toBeCloseTo(
          turned * 0.3,
          14,
        );
  });
  it('stands no further from the root than the tolerance asked for', () => {
    // A jump leaves halving alone, whose last interval is nearly as wide as the tolerance lets it be.
    fc.assert(
      fc.property(evenly(-0.99, 0.99), (jump) => {
        const root = bracketedRoot((x) => (x < jump ? -1 : 1), -1, 1, 1e-3);
        expect(Math.abs(root - jump)).toBeLessThanOrEqual(1e-3 * (1 + 1e-9));
      }),
    );
  });
  it('returns an end that is a root', () => {
    expect(bracketedRoot((x) => x, 0, 1)).toBe(0);
    expect(bracketedRoot((x) => x - 1, 0, 1)).toBe(1);
  });
  it('refuses ends of one sign and a function without a value', () => {
    expect(() => bracketedRoot((x) => x * x + 1, -1, 1)).toThrow(RangeError);
    expect(() => bracketedRoot((x) => (Math.abs(x) < 0.5 ? Number.NaN : x), -1, 2)).toThrow(
      RangeError,
    );
  });
  it('inverts monotonic functions of any size', () => {
    fc.assert(
      fc.property(evenly(-6, 6), evenly(-8, 8), (x, exponent) => {
        const scale = 10 ** exponent;
        const f = (t: number): number => scale * (t ** 3 + t - (x ** 3 + x));
        expect(Math.abs(bracketedRoot(f, -7, 7) - x)).toBeLessThan(1e-13);
      }),
    );
  });
});

describe('rootsBetween', () => {
  it('finds all simple roots', () => {
    const { roots, maybeMore } = rootsBetween(Math.sin, 1, 20, 64);
    expect(roots.length).toBe(6);
    roots.forEach((root, i) => expect(root).toBeCloseTo((i + 1) * Math.PI, 12));
    expect(maybeMore).toBe(false);
  });
  it('finds a root in the first cell and in the last', () => {
    expect(rootsBetween((x) => x - 0.05, 0, 1, 10).roots).toEqual([0.05]);
    expect(rootsBetween((x) => x - 0.95, 0, 1, 10).roots).toEqual([0.95]);
    expect(rootsBetween((x) => x - 1, 0, 1, 10).roots).toEqual([1]);
  });
  it('finds the same whatever the size of x and of the function', () => {
    const wave = (x: number): number => Math.sin(x) * (x - 7.3) ** 2;
    for (const long of [1e-9, 1e-6, 1, 1e6])
      for (const high of [1e-200, 1e-12, 1e9, 1e200]) {
        const f = (x: number): number => high * wave(x / long);
        const { roots, maybeMore } = rootsBetween(f, long, 20 * long, 64);
        expect(roots).toHaveLength(7);
        expect(at(roots, 2) / long).toBeCloseTo(7.3, 6);
        expect(maybeMore).toBe(false);
        const close = (x: number): number => high * ((x / long - 0.37) ** 2 + 1e-4);
        expect(rootsBetween(close, 0, long, 8)).toEqual({ roots: [], maybeMore: false });
        const jump = (x: number): number => (x / long < 0.37 ? -high : high);
        expect(rootsBetween(jump, 0, long, 8)).toEqual({ roots: [], maybeMore: true });
      }
  });
  it('finds a root that stands all but on a sample', () => {
    const level = Math.exp(0.5) * (1 + 1e-13);
    const { roots, maybeMore } = rootsBetween((x) => Math.exp(x) - level, 0, 1, 4);
    expect(roots).toHaveLength(1);
    expect(maybeMore).toBe(false);
  });
  it('finds a double root between two samples that are alike, once', () => {
    for (const power of [2, 40]) {
      // The fortieth power is exactly nothing around its root: a value of 0 is no change of sign either.
      const { roots, maybeMore } = rootsBetween((x) => x ** power, -3, 3, 3);
      expect(roots).toHaveLength(1);
      expect(roots[0]).toBeCloseTo(0, 7);
      expect(maybeMore).toBe(false);
    }
  });
  it('counts a double root on a sample once, whatever sign rounding gives it', () => {
    // (x − c)²(x − c + 1) in powers of x, at its best good to 1e-8 of c.
    for (let k = 1; k < 690; k += 4) {
      const c = k / 700;
      const f = (x: number): number =>
        x * x * x - 3 * c * x * x + 3 * c * c * x - c * c * c + (x * x - 2 * c * x + c * c);
      const { roots } = rootsBetween(f, 0, 2 * c, 8);
      expect(roots).toHaveLength(1);
      expect((roots[0] ?? 0) / c).toBeCloseTo(1, 7);
    }
  });
  it('finds a double root and two roots in one cell', () => {
    const double = rootsBetween((x) => (x - 0.37) ** 2, 0, 1, 8);
    expect(double.roots.length).toBe(1);
    expect(double.roots[0]).toBeCloseTo(0.37, 5);
    const pair = rootsBetween((x) => (x - 0.401) * (x - 0.402), 0, 1, 8);
    expect(pair.roots.length).toBe(2);
    expect(pair.roots[0]).toBeCloseTo(0.401, 9);
    expect(pair.roots[1]).toBeCloseTo(0.402, 9);
    expect(pair.maybeMore).toBe(true);
  });
  it('finds no root where the curve only comes close', () => {
    expect(rootsBetween((x) => (x - 0.37) ** 2 + 1e-4, 0, 1, 8).roots).toEqual([]);
  });
  it('drops a pole', () => {
    const { roots, maybeMore } = rootsBetween((x) => 1 / (x - 0.333), 0, 1, 10);
    expect(roots).toEqual([]);
    expect(maybeMore).toBe(true);
    expect(rootsBetween(Math.tan, -1, 4, 50).roots.map((x) => x.toFixed(9))).toEqual(
      [0, Math.PI].map((x) => x.toFixed(9)),
    );
  });
  it('works beside holes, and right up to their edge', () => {
    const throwing = (x: number): number => {
      if (x < 0.5) throw new RangeError('outside');
      return Math.sqrt(x - 0.5) - 0.01;
    };
    expect(rootsBetween(throwing, 0, 1, 7).roots[0]).toBeCloseTo(0.5001, 10);
    expect(rootsBetween((x) => Math.log(x) + 5, -1, 0.5, 9).roots[0]).toBeCloseTo(Math.exp(-5), 10);
    expect(rootsBetween(() => Number.NaN, 0, 1, 5)).toEqual({ roots: [], maybeMore: false });
    for (const cells of [4, 5])
      expect(rootsBetween((x) => Math.sqrt(0.2 - x) - 0.05, 0, 1, cells).roots[0]).toBeCloseTo(
        0.1975,
        9,
      );
  });
  it('takes a root on the very edge of a hole once, from either side', () => {
    const only = { roots: [0.5], maybeMore: false };
    expect(rootsBetween((x) => (x > 0.5 ? Number.NaN : x - 0.5), 0, 1, 4)).toEqual(only);
    expect(rootsBetween((x) => (x < 0.5 ? Number.NaN : x - 0.5), 0, 1, 4)).toEqual(only);
  });
  it('looks for the edge of a hole once, in sixty steps', () => {
    let calls = 0;
    rootsBetween((x) => (calls++, Math.log(x) + 5), -1, 0.5, 90);
    // 91 samples, sixty halvings and one root.
    expect(calls).toBeLessThan(91 + 60 + 20);
  });
  it('counts a root on a sample once, and says so when the function is zero throughout', () => {
    expect(rootsBetween((x) => x - 0.5, 0, 1, 4)).toEqual({ roots: [0.5], maybeMore: false });
    const flat = rootsBetween(() => 0, 0, 1, 4);
    expect(flat.maybeMore).toBe(true);
    expect(flat.roots.length).toBeGreaterThan(0);
  });
  it('finds the roots of random cubics', () => {
    const root = fc.integer({ min: -900, max: 900 }).map((n) => n / 100);
    fc.assert(
      fc.property(fc.uniqueArray(root, { minLength: 3, maxLength: 3 }), (three) => {
        const sorted = [...three].sort((a, b) => a - b);
        fc.pre(sorted.slice(1).every((x, i) => x - (sorted[i] ?? 0) > 0.5));
        const f = (x: number): number => sorted.reduce((y, r) => y * (x - r), 1);
        const { roots } = rootsBetween(f, -10.013, 10, 64);
        expect(roots.length).toBe(3);
        roots.forEach((x, i) => expect(x).toBeCloseTo(sorted[i] ?? Number.NaN, 10));
      }),
    );
  });
});
