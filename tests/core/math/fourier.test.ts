import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fourier } from '../../../src/core/math/fourier.ts';
import { evenly } from '../../evenly.ts';

describe('fourier', () => {
  it('gives back the coefficients of a sum of harmonics', () => {
    const coefficient = evenly(-10, 10);
    fc.assert(
      fc.property(
        fc.array(coefficient, { minLength: 9, maxLength: 9 }),
        fc.constantFrom(16, 17, 64),
        (c, samples) => {
          const c0 = c[0] ?? 0;
          const pairs = [1, 2, 3, 4].map((k) => ({
            k,
            cos: c[2 * k - 1] ?? 0,
            sin: c[2 * k] ?? 0,
          }));
          const f = (x: number): number =>
            pairs.reduce(
              (sum, { k, cos, sin }) => sum + cos * Math.cos(k * x) + sin * Math.sin(k * x),
              c0,
            );
          const { mean, cosine, sine } = fourier(f, [1, 2, 3, 4, 5], samples);
          expect(mean).toBeCloseTo(c0, 12);
          for (const { k, cos, sin } of pairs) {
            expect(cosine[k - 1]).toBeCloseTo(cos, 12);
            expect(sine[k - 1]).toBeCloseTo(sin, 12);
          }
          expect(cosine[4]).toBeCloseTo(0, 12);
          expect(sine[4]).toBeCloseTo(0, 12);
        },
      ),
    );
  });
  it('agrees with a closed form: 1/(5 - 4 cos θ) has coefficients 2/3 · 2^-k', () => {
    const { mean, cosine } = fourier((x) => 1 / (5 - 4 * Math.cos(x)), [1, 2, 6], 128);
    expect(mean).toBeCloseTo(1 / 3, 14);
    expect(cosine[0]).toBeCloseTo(1 / 3, 14);
    expect(cosine[1]).toBeCloseTo(1 / 6, 14);
    expect(cosine[2]).toBeCloseTo(1 / 96, 14);
  });
  it('refuses orders that the samples cannot tell apart', () => {
    for (const orders of [[0], [1.5], [8], [-1]])
      expect(() => fourier(Math.cos, orders, 16)).toThrow(RangeError);
  });
});
