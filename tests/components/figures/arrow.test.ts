import fc from 'fast-check';
import { expect, it } from 'vitest';
import { arrow } from '../../../src/components/figures/parts/arrow.ts';

it('an arrow goes from its place to its point, with a head on both sides of it', () => {
  expect(arrow(1, 2, 0, 20, 10)).toBe('M1 2L1 22M-2.6 12L1 22L4.6 12');
});

it('one too short to be seen is not drawn', () => {
  expect(arrow(5, 5, 0.6, 0.6)).toBe('');
  expect(arrow(5, 5, 0, 0)).toBe('');
});

it('no head is longer than its arrow', () => {
  const side = fc.double({ min: -60, max: 60, noNaN: true });
  fc.assert(
    fc.property(side, side, (dx, dy) => {
      fc.pre(Math.hypot(dx, dy) >= 1);
      const numbers = (arrow(0, 0, dx, dy).match(/-?\d+(\.\d+)?/gu) ?? []).map(Number);
      const [, , x = 0, y = 0, leftX = 0, leftY = 0, , , rightX = 0, rightY = 0] = numbers;
      // Straight across the head the arrow has run at most its whole length back; paths hold hundredths.
      const [midX, midY] = [(leftX + rightX) / 2, (leftY + rightY) / 2];
      expect(Math.hypot(x - midX, y - midY)).toBeLessThanOrEqual(
        Math.min(7, Math.hypot(x, y)) + 0.03,
      );
    }),
  );
});
