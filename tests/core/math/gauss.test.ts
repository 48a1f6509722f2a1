import { expect, it } from 'vitest';
import { gauss } from '../../../src/core/math/gauss.ts';

it('is exact for polynomials up to the ninth degree, in one cell, and not for the tenth', () => {
  for (let power = 0; power <= 10; power++) {
    const exact = (2.5 ** (power + 1) - 0.5 ** (power + 1)) / (power + 1);
    const error = Math.abs(gauss((x) => x ** power, 0.5, 2.5, 1) / exact - 1);
    if (power < 10) expect(error).toBeLessThan(1e-14);
    else expect(error).toBeGreaterThan(1e-9);
  }
});

it('errs by the tenth power of a cell’s width', () => {
  // And the twelfth and so on: two cells of the width one leave a thousandth of what one of two leaves, about.
  const error = (cells: number): number => gauss(Math.exp, 0, 2, cells) - Math.expm1(2);
  expect(Math.log2(error(1) / error(2))).toBeCloseTo(10, -0.3);
});

it('turns its sign with the ends, and never asks for them', () => {
  const f = (x: number): number => 1 / Math.sqrt(x * (1 - x));
  expect(gauss(f, 1, 0, 8)).toBeCloseTo(-gauss(f, 0, 1, 8), 12);
  expect(Number.isFinite(gauss(f, 0, 1, 8))).toBe(true);
});
