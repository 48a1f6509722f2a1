import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  closureTolerance,
  meanPlusMinus,
  pieceMass,
  repeats,
  scaleError,
  supportShift,
  weighedEnds,
} from '../../../src/core/rods/rod-weighing.ts';
import { routes } from '../../../content/topics/rod-weighing/routes.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import { proves } from '../../proves.ts';
import { evenly } from '../../evenly.ts';

const mass = fc.double({ min: 0.02, max: 5, noNaN: true });
const span = fc.double({ min: 0.05, max: 0.4, noNaN: true });

/**
 * Second route: what two supports read under a rod of mass m with its centre of mass at x, both measured
 * from the big-end centre. Moments about each support in turn.
 */
function readings(m: number, x: number, bigSupport: number, smallSupport: number) {
  const reach = smallSupport - bigSupport;
  return {
    bigEndMass: (m * (smallSupport - x)) / reach,
    smallEndMass: (m * (x - bigSupport)) / reach,
  };
}

test('a rod on two supports at its centres shows where its centre of mass is', () => {
  fc.assert(
    fc.property(mass, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (rodMass, share) => {
      const ends = readings(rodMass, share * 0.15, 0, 0.15);
      const back = weighedEnds({ ...ends, rodMass, rodLength: 0.15 });
      expect(back.centreFromBigEnd).toBeCloseTo(share * 0.15, 10);
    }),
  );
});

describe('repeats', () => {
  test('the five lifts of an invented road rod', () => {
    const { mean, spread } = repeats(
      { bigEndReadings: [0.421, 0.4215, 0.4211, 0.4209, 0.4215] },
      'bigEndReadings',
    );
    expect(mean).toBeCloseTo(0.4212, 12);
    // By hand: squares of −2, 3, −1, −3, 3 tenths of a gram are 32; over 4, root: 2.828 tenths.
    expect(spread).toBeCloseTo(Math.sqrt(8) * 1e-4, 12);
  });

  test('one lift has a mean and no spread', () => {
    expect(repeats({ smallEndReadings: [0.17] }, 'smallEndReadings')).toEqual({
      mean: 0.17,
      spread: undefined,
    });
  });

  test('a shift of every lift moves the mean and leaves the spread', () => {
    fc.assert(
      fc.property(fc.array(mass, { minLength: 2, maxLength: 20 }), mass, (list, shift) => {
        const before = repeats({ bigEndReadings: list }, 'bigEndReadings');
        const shifted = list.map((reading) => reading + shift);
        const after = repeats({ bigEndReadings: shifted }, 'bigEndReadings');
        expect(after.mean).toBeCloseTo(before.mean + shift, 10);
        expect(after.spread ?? -1).toBeCloseTo(before.spread ?? -2, 8);
      }),
    );
  });
});

describe('the sum of the ends', () => {
  const scale = { fixtureRepeat: 3e-4, scaleResolution: 1e-4 };
  const once = { bigEnd: 1, smallEnd: 1 };

  test('may miss by 0.85 g with one lift each, 0.3 g of scatter and a 0.1 g division', () => {
    // By hand: 2 √(0.09 + 0.09 + 3 × 0.01/12) g.
    expect(closureTolerance(scale, once) * 1e3).toBeCloseTo(0.8544, 4);
  });

  test('may miss by 0.39 g with five lifts each', () => {
    // By hand: 2 √(0.018 + 0.018 + 3 × 0.01/12) g.
    expect(closureTolerance(scale, { bigEnd: 5, smallEnd: 5 }) * 1e3).toBeCloseTo(0.3924, 4);
  });

  test('is three roundings where nothing scatters: both ends, and the whole rod', () => {
    const still = { fixtureRepeat: 0, scaleResolution: 1e-3 };
    expect(closureTolerance(still, once)).toBeCloseTo(2 * Math.sqrt(3 / 12) * 1e-3, 15);
  });

  test('is the ± of the two means and of one more rounded reading', () => {
    const lifts = fc.integer({ min: 1, max: 20 });
    fc.assert(
      fc.property(lifts, lifts, (bigEnd, smallEnd) => {
        const parts = [
          meanPlusMinus(scale, bigEnd),
          meanPlusMinus(scale, smallEnd),
          2e-4 / Math.sqrt(12),
        ];
        const tolerance = closureTolerance(scale, { bigEnd, smallEnd });
        expect(tolerance / Math.hypot(...parts)).toBeCloseTo(1, 12);
      }),
    );
  });

  test('covers 95 of 100 honest weighings', () => {
    // Second route: draw scatter and rounding, and count. The sum of normal and even errors is near normal.
    const random = seededRandom(11);
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const read = (mass: number, s: number) => Math.round((mass + s * normal()) / 1e-4) * 1e-4;
    const trials = 4000;
    let inside = 0;
    for (let i = 0; i < trials; i++) {
      const [big, small] = [0.42 + 1e-3 * random(), 0.17 + 1e-3 * random()];
      const miss = read(big, 3e-4) + read(small, 3e-4) - read(big + small, 0);
      if (Math.abs(miss) <= closureTolerance(scale, once)) inside++;
    }
    // 0.9545 for two standard deviations; three standard errors of 4000 draws are 0.01.
    expect(Math.abs(inside / trials - 0.9545)).toBeLessThan(0.01);
  });

  test(proves(routes.alwaysEqualsRod), () => {
    const off = evenly(-0.01, 0.01);
    const place = fc.double({ min: 0.1, max: 0.6, noNaN: true });
    fc.assert(
      fc.property(mass, span, place, off, off, (rodMass, rodLength, share, one, other) => {
        const ends = readings(rodMass, share * rodLength, one, rodLength + other);
        expect(ends.bigEndMass + ends.smallEndMass).toBeCloseTo(rodMass, 9);
      }),
    );
  });
});

describe('misplaced supports', () => {
  const rodMass = 0.592;
  const rodLength = 0.142;
  const x = 0.0409;
  const ends = readings(rodMass, x, 0, rodLength);

  test(proves(routes.rodLyingMm), () => {
    const shift = supportShift({ ...ends, rodMass, rodLength, supportOffset: 1e-3 });
    expect(shift.both * 1e3).toBeCloseTo(4.169, 3);
    const moved = readings(rodMass, x, 1e-3, rodLength + 1e-3);
    expect(moved.bigEndMass - ends.bigEndMass).toBeCloseTo(shift.both, 12);
    expect(moved.smallEndMass - ends.smallEndMass).toBeCloseTo(-shift.both, 12);
  });

  test('one support alone moves the share of its own end', () => {
    const shift = supportShift({ ...ends, rodMass, rodLength, supportOffset: 1e-3 });
    const big = readings(rodMass, x, 1e-3, rodLength);
    expect(big.bigEndMass - ends.bigEndMass).toBeCloseTo(shift.bigEndOnly, 12);
    const small = readings(rodMass, x, 0, rodLength - 1e-3);
    expect(small.smallEndMass - ends.smallEndMass).toBeCloseTo(shift.smallEndOnly, 12);
  });

  test('both is what the two single cases add up to, to first order', () => {
    const delta = 1e-6;
    const shift = supportShift({ ...ends, rodMass, rodLength, supportOffset: delta });
    expect((shift.bigEndOnly + shift.smallEndOnly) / shift.both).toBeCloseTo(1, 4);
  });
});

test('a piece of a batch and the error of a scale', () => {
  expect(pieceMass({ batchMass: 6e-3, batchCount: 10 })).toBeCloseTo(6e-4, 15);
  expect(scaleError({ checkMass: 0.5, checkReading: 0.5001 })).toBeCloseTo(1e-4, 12);
});
