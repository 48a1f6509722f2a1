import { describe, expect, it } from 'vitest';
import { parabolaTop } from '../../../src/core/math/parabola.ts';

describe('the parabola', () => {
  it('finds the top of one through uneven places', () => {
    for (const place of [0.3, 5.3, -4]) {
      const f = (x: number): number => 3 - 2 * (x - place) ** 2;
      const [a, b, c] = [place - 0.3, place - 0.1, place + 0.4];
      const top = parabolaTop([a, b, c], [f(a), f(b), f(c)]);
      expect(top.at).toBeCloseTo(place, 12);
      expect(top.value).toBeCloseTo(3, 12);
    }
  });
  it('leaves three level points alone', () => {
    expect(parabolaTop([0, 1, 2], [5, 5, 5])).toEqual({ at: 1, value: 5 });
  });
});
