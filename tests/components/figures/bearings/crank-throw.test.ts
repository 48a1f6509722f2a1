import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crankOverlap as calculator } from '../../../../src/calculators/bearings/crank-overlap.ts';
import { lens, throwOf, web } from '../../../../src/components/figures/bearings/crank-throw.ts';

/** All numbers of a path, in order. */
const numbers = (path: string): number[] => (path.match(/-?\d+(\.\d+)?/gu) ?? []).map(Number);
const radius = fc.double({ min: 20, max: 120, noNaN: true });

describe('what two journals share', () => {
  it('is bounded by two places that lie on both circles', () => {
    fc.assert(
      fc.property(
        radius,
        radius,
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        (R, r, part) => {
          const e = Math.abs(R - r) + part * (R + r - Math.abs(R - r));
          const [x1 = 0, y1 = 0] = numbers(lens(R, r, e));
          // A hundredth of a unit is what the path is written to.
          expect(Math.abs(Math.hypot(x1, y1) - R)).toBeLessThan(0.02);
          expect(Math.abs(Math.hypot(x1, y1 + e) - r)).toBeLessThan(0.02);
        },
      ),
    );
  });
  it('is nothing where they do not meet, and the smaller circle where it lies inside', () => {
    expect(lens(30, 20, 50)).toBe('');
    expect(lens(30, 20, 60)).toBe('');
    expect(lens(30, 10, 15)).toBe('M-10 -15a10 10 0 1 0 20 0a10 10 0 1 0 -20 0z');
    expect(lens(10, 30, 15)).toBe('M-10 0a10 10 0 1 0 20 0a10 10 0 1 0 -20 0z');
  });
});

it('the web’s flanks touch both grown circles', () => {
  fc.assert(
    fc.property(radius, radius, fc.double({ min: 1.05, max: 4, noNaN: true }), (R, r, part) => {
      const more = 10;
      const e = part * (Math.abs(R - r) + 1);
      const path = web(R, r, e, more);
      // M x y A … x y L x y A … x y
      const [, , , , , , , x1 = 0, y1 = 0, x2 = 0, y2 = 0] = numbers(path);
      const [A, a] = [R + more, r + more];
      expect(Math.abs(Math.hypot(x1, y1) - A)).toBeLessThan(0.02);
      expect(Math.abs(Math.hypot(x2, y2 + e) - a)).toBeLessThan(0.02);
      // A tangent stands square on the radius to where it touches.
      const along = [x2 - x1, y2 - y1] as const;
      const length = Math.hypot(...along);
      if (length > 5)
        expect(Math.abs(along[0] * x1 + along[1] * y1) / (length * A)).toBeLessThan(0.01);
    }),
  );
});

describe('the throw of a set', () => {
  const input = { mainDiameter: 0.06, crankpinDiameter: 0.052, stroke: 0.073 };
  it('is read from its numbers', () => {
    const output = calculator.compute(input);
    expect(throwOf({ input, output, stale: false })).toEqual({
      main: 0.03,
      pin: 0.026,
      reach: 0.0365,
      overlap: output.overlap,
    });
  });
  it('is not drawn while one is missing', () => {
    expect(throwOf({ input: { ...input, stroke: undefined }, output: {}, stale: false })).toBe(
      undefined,
    );
    expect(throwOf({ input: undefined, output: undefined, stale: true })).toBe(undefined);
  });
});
