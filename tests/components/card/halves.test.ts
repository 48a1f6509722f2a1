import fc from 'fast-check';
import { expect, test } from 'vitest';
import { halvesOf } from '../../../src/components/card/halves.ts';

test.each([
  [1.2331, '616.6 + 616.5 g'],
  [1.6852, '2 × 842.6 g'],
  [1.00004, '2 × 500.0 g'],
  [0.0001, '0.1 + 0.0 g'],
])('%s kg is %s', (kilograms, expected) => {
  expect(halvesOf(kilograms).replaceAll(/\s/gu, ' ')).toBe(expected);
});

test('the halves add up to the bobweight as it is printed', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 99_999 }), (tenths) => {
      const [more = 0, less = more] = Array.from(
        halvesOf(tenths / 1e4)
          .replace('2 ×', '')
          .replaceAll(/\s(?=\d{3}\b)/gu, '')
          .matchAll(/[\d.]+/g),
        ([number]) => Math.round(Number(number) * 10),
      );
      expect(more + less).toBe(tenths);
      expect(more - less).toBeLessThanOrEqual(1);
    }),
  );
});
