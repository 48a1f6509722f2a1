import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bracketedRoot, rootsBetween } from '../../../src/core/math/roots.ts';

describe('bracketedRoot', () => {
  it('finds the fixed point of the cosine', () => {
    // OEIS A003957, to the last digits of a double.
    expect(bracketedRoot((x) => Math.cos(x) - x, 0, 1)).toBeCloseTo(0.7390851332151607, 15);
  });
  it('finds a root that is flat and one that is steep', () => {
    expect(bracketedRoot((x) => (x - 0.4) ** 5, -1, 1.5)).toBeCloseTo(0.4, 3);
    expect(bracketedRoot((x) => Math.tanh(1e6 * (x - 0.3)), 0, 1)).toBeCloseTo(0.3, 12);
  });
  it('stops at the tolerance asked for', () => {
    let calls = 0;
    const root = bracketedRoot((x) => (calls++, Math.exp(x) - 2), 0, 5, 1e-3);
    expect(Math.abs(root - Math.LN2)).toBeLessThan(1e-3);
    expect(calls).toBeLessThan(14);
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
      fc.property(
        fc.double({ min: -6, max: 6, noNaN: true }),
        fc.double({ min: -8, max: 8, noNaN: true }),
        (x, exponent) => {
          const scale = 10 ** exponent;
          const f = (t: number): number => scale * (t ** 3 + t - (x ** 3 + x));
          expect(Math.abs(bracketedRoot(f, -7, 7) - x)).toBeLessThan(1e-13);
        },
      ),
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
    expect(rootsBetween((x) => Math.sqrt(0.2 - x) - 0.05, 0, 1, 5).roots[0]).toBeCloseTo(0.1975, 9);
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
