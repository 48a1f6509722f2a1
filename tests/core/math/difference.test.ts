import fc from 'fast-check';
import { expect, it } from 'vitest';
import { difference } from '../../../src/core/math/difference.ts';

const real = fc.double({ min: -1e6, max: 1e6, noNaN: true });

it('is nothing where two ways of adding give one number', () => {
  expect(0.4212 + 0.1708 - 0.592).not.toBe(0);
  expect(difference(0.4212 + 0.1708, 0.592)).toBe(0);
});

it('knows the rounding of a small rest of great terms', () => {
  const left = 55.59 - 3.5534 - 52;
  const other = 55.59 - 52 - 3.5534;
  expect(left).not.toBe(other);
  expect(difference(left, other)).not.toBe(0);
  expect(difference(left, other, 55.59)).toBe(0);
});

it('is the plain difference everywhere else', () => {
  expect(difference(3, 1)).toBe(2);
  fc.assert(
    fc.property(real, real, (a, b) => {
      const plain = a - b;
      fc.pre(Math.abs(plain) > 1e-12 * Math.max(Math.abs(a), Math.abs(b)));
      expect(difference(a, b)).toBe(plain);
    }),
  );
});

it('is 0 and not minus 0 where nothing is left', () => {
  expect(difference(-0, 0)).toBe(0);
  expect(difference(3 - 1e-15, 3)).toBe(0);
});

it('changes sign with its terms and is nothing between a number and itself', () => {
  fc.assert(
    fc.property(real, real, (a, b) => {
      expect(difference(a, b) + difference(b, a)).toBe(0);
      expect(difference(a, a)).toBe(0);
    }),
  );
});
