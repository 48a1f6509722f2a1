import { expect, test } from 'vitest';
import { at } from '../../../src/core/math/at.ts';

test('a list has the values it has, and no others', () => {
  expect(at([3, 4], 1)).toBe(4);
  expect(at(Float64Array.of(0), 0)).toBe(0);
  for (const index of [-1, 2, 0.5, Number.NaN]) expect(() => at([3, 4], index)).toThrow(RangeError);
});
