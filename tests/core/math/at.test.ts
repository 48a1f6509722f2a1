import { expect, it } from 'vitest';
import { at } from '../../../src/core/math/at.ts';

it('gives what stands there, a zero as well', () => {
  expect(at([5, 0], 1)).toBe(0);
  expect(at(Float64Array.of(1.5), 0)).toBe(1.5);
});

it.each([-1, 2, 0.5, Number.NaN])('has nothing at %d of two', (index) => {
  expect(() => at([5, 0], index)).toThrow(RangeError);
  expect(() => at([5, 0], index)).toThrow(`no item ${index} in a list of 2`);
});
