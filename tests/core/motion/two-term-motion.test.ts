import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pistonMotion } from '../../../src/core/motion/piston-motion.ts';
import { twoTermMotion, twoTermPeaks } from '../../../src/core/motion/two-term-motion.ts';
import { evenly } from '../../evenly.ts';

const ratios = fc.double({ min: 0.1, max: 0.9, noNaN: true });
const angles = evenly(-7, 13);

/** A throw of 0.04 m with the ratio λ of throw to rod. */
function crank(λ: number): { readonly stroke: number; readonly rodLength: number } {
  return { stroke: 0.08, rodLength: 0.04 / λ };
}

describe('closed forms and limits', () => {
  it('is at rest at the dead centres, a whole stroke apart, with the exact acceleration', () => {
    const [r, omega, λ] = [0.04, 600, 0.3];
    const top = twoTermMotion(crank(λ), 0, omega, 900);
    expect(top).toEqual({ displacement: 0, speed: 0, acceleration: r * omega ** 2 * (1 + λ) });
    const bottom = twoTermMotion(crank(λ), Math.PI, omega);
    expect(bottom.displacement).toBeCloseTo(2 * r, 15);
    expect(bottom.speed / (r * omega)).toBeCloseTo(0, 15);
    expect(bottom.acceleration / (r * omega ** 2)).toBeCloseTo(-(1 - λ), 14);
  });
  it('has come down by half the throw ratio more than the throw at a quarter turn', () => {
    for (const λ of [0.1, 0.25, 0.6])
      expect(twoTermMotion(crank(λ), Math.PI / 2, 0).displacement / 0.04).toBeCloseTo(
        1 + λ / 2,
        14,
      );
  });
  it('errs by the cube of the throw ratio in displacement and speed', () => {
    // Halving the ratio leaves an eighth of the error, up to the next power: a few of its squares.
    const errors = [0.1, 0.05].map((λ) => {
      const [short, exact] = [twoTermMotion, pistonMotion].map((of) => of(crank(λ), 1, 1));
      return [
        (short?.displacement ?? 0) - (exact?.displacement ?? 0),
        (short?.speed ?? 0) - (exact?.speed ?? 0),
      ];
    });
    errors[0]?.forEach((error, i) =>
      expect(Math.abs(error / (errors[1]?.[i] ?? 0) - 8)).toBeLessThan(0.1),
    );
  });
});

describe('properties', () => {
  it('has speed and acceleration as the derivatives of the displacement, at any gain of speed', () => {
    // The crank at θ turns at ω and gains α: at the time t it stands at θ + ωt + αt²/2.
    const omega = 300;
    fc.assert(
      fc.property(ratios, angles, evenly(-9e4, 9e4), (λ, θ, α) => {
        const at = (t: number): number =>
          twoTermMotion(crank(λ), θ + omega * t + (α * t * t) / 2, omega).displacement;
        const now = twoTermMotion(crank(λ), θ, omega, α);
        // A hundredth of a radian: the differences are short by some 1e-4 of it in the greatest term.
        const h = 0.01 / omega;
        const [before, here, after] = [at(-h), at(0), at(h)];
        expect(Math.abs((after - before) / (2 * h) - now.speed)).toBeLessThan(2e-4 * 0.04 * omega);
        expect(Math.abs((after - 2 * here + before) / (h * h) - now.acceleration)).toBeLessThan(
          4e-4 * 0.04 * omega ** 2,
        );
      }),
    );
  });
  it('never passes its extremes, and reaches them', () => {
    fc.assert(
      fc.property(ratios, (λ) => {
        const { angle, peakSpeed, greatestUpward } = twoTermPeaks(crank(λ), 500);
        const turn = Array.from({ length: 3600 }, (_, i) =>
          twoTermMotion(crank(λ), (i * Math.PI) / 1800, 500),
        );
        // Samples a tenth of a degree apart miss a peak by less than (0.05°)² of its curvature, 4e-6 at most.
        const fastest = Math.max(...turn.map(({ speed }) => speed));
        const least = Math.min(...turn.map(({ acceleration }) => acceleration));
        expect(fastest / peakSpeed).toBeLessThanOrEqual(1 + 1e-12);
        expect(fastest / peakSpeed).toBeGreaterThan(1 - 5e-6);
        expect(least / greatestUpward).toBeLessThanOrEqual(1 + 1e-12);
        expect(least / greatestUpward).toBeGreaterThan(1 - 5e-6);
        const { acceleration } = twoTermMotion(crank(λ), angle, 500);
        expect(acceleration / (0.04 * 500 ** 2)).toBeCloseTo(0, 14);
      }),
      { numRuns: 40 },
    );
  });
});
