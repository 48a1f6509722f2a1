import { describe, expect, it } from 'vitest';
import { maximum } from '../../../src/core/math/peak.ts';

describe('maximum', () => {
  it('refines a peak, and takes an end when that is highest', () => {
    const peak = maximum((x) => Math.sin(x), 0, Math.PI);
    expect(peak.value).toBe(1);
    expect(peak.at).toBeCloseTo(Math.PI / 2, 7);
    expect(maximum((x) => x, 0, 2)).toEqual({ at: 2, value: 2 });
  });
  it('refines as well below zero and in the small', () => {
    for (const place of [3e-6, -3e-6, 3, -3, 0, 3e6, -3e6]) {
      const size = Math.abs(place) || 1;
      const peak = maximum((x) => 1 - ((x - place) / size) ** 2, place - size, place + 0.7 * size);
      // As flat as it is, within 1e-8 of the place the value is 1 to the last digit.
      expect(peak.value).toBeCloseTo(1, 15);
      expect(Math.abs(peak.at - place) / size).toBeLessThan(3e-8);
    }
  });
  it('takes the first of equal values', () => {
    expect(maximum(() => 5, 2, 3)).toEqual({ at: 2, value: 5 });
  });
  it('takes the higher of two hills', () => {
    const hills = maximum((x) => Math.cos(3 * x) + 0.1 * x, 0, 7);
    expect(hills.at).toBeCloseTo((2 * Math.PI * 3) / 3 + Math.asin(0.1 / 3) / 3, 6);
  });
  it('passes over holes; NaN when there is no value at all', () => {
    expect(maximum((x) => (x > 1 ? Number.NaN : x), 0, 2).value).toBeCloseTo(1, 7);
    expect(maximum(() => Number.NaN, 0, 1).value).toBeNaN();
  });
});
