import { describe, expect, it } from 'vitest';
import { parabolaTop } from '../../../src/core/math/parabola.ts';

describe('the parabola', () => {
  it('finds the top of one through uneven places', () => {
    const f = (x: number): number => 3 - 2 * (x - 0.3) ** 2;
    const top = parabolaTop([0, 0.2, 0.7], [f(0), f(0.2), f(0.7)]);
    expect(top.at).toBeCloseTo(0.3, 12);
    expect(top.value).toBeCloseTo(3, 12);
  });
  it('leaves three level points alone', () => {
    expect(parabolaTop([0, 1, 2], [5, 5, 5])).toEqual({ at: 1, value: 5 });
  });
});
