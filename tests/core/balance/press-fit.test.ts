import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/heavy-metal/routes.ts';
import {
  boreFactor,
  fitPoisson,
  fitPressure,
  interferenceLost,
  looseAt,
} from '../../../src/core/balance/press-fit.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';
import { steppedFit } from './stepped-fit.ts';

/** 19 mm with 0.045 mm, alloy in steel. */
const fit = {
  slugDiameter: 0.019,
  slugInterference: 45e-6,
  slugModulus: 280e9,
  counterweightModulus: 207e9,
  slugExpansion: 5e-6,
  crankExpansion: 11.5e-6,
  assemblyTemperature: 293.15,
};

/** Fits of every size, a ring at least a fifth of the slug thick, and how much warmer they run. */
const fits = fc
  .record({
    diameter: evenly(0.008, 0.04),
    strain: evenly(0.0005, 0.004),
    slugModulus: evenly(200e9, 400e9),
    counterweightModulus: evenly(100e9, 220e9),
    wall: evenly(0.2, 3),
    warmer: evenly(-50, 130),
  })
  .map(({ diameter, strain, slugModulus, counterweightModulus, wall, warmer }) => ({
    fit: {
      ...fit,
      slugDiameter: diameter,
      slugInterference: strain * diameter,
      slugModulus,
      counterweightModulus,
    },
    outside: diameter * (1 + 2 * wall),
    temperature: fit.assemblyTemperature + warmer,
  }));

describe('published values', () => {
  // Solutions to Shigley's Mechanical Engineering Design, problems of chapter 3, as read; the checks have them in full.
  test('problem 3-68: shaft of 1 in in a hub of 2 in, 0.001 in on the radius', () => {
    const inch = 0.0254;
    const psi = 6894.757293168361;
    const one = {
      slugDiameter: inch,
      slugInterference: 0.002 * inch,
      slugModulus: 30e6 * psi,
      counterweightModulus: 30e6 * psi,
    };
    const pressure = fitPressure(one, 2 * inch, one.slugInterference);
    expect(pressure / psi).toBeCloseTo(22500, 6);
    expect((pressure * boreFactor(inch, 2 * inch)) / psi).toBeCloseTo(37500, 6);
  });
});

describe('closed forms and limits', () => {
  test(proves(routes.limitsOfTheRing, 'a thin ring is a hoop'), () => {
    const wall = 1e-7;
    const outside = fit.slugDiameter + 2 * wall;
    const pressure = fitPressure(fit, outside, fit.slugInterference);
    // All of the interference is strain of the hoop, whose stress t/R of it presses.
    const stress = (fit.counterweightModulus * fit.slugInterference) / fit.slugDiameter;
    expect(pressure / ((stress * wall) / (fit.slugDiameter / 2))).toBeCloseTo(1, 4);
    expect((boreFactor(fit.slugDiameter, outside) * pressure) / stress).toBeCloseTo(1, 4);
  });

  test(proves(routes.limitsOfTheRing, 'a slug in metal without end'), () => {
    expect(boreFactor(0.019, Infinity)).toBe(1);
    const pressure = fitPressure(fit, Infinity, fit.slugInterference);
    const give = (1 + fitPoisson) / 207e9 + (1 - fitPoisson) / 280e9;
    expect(pressure).toBeCloseTo(45e-6 / 0.019 / give, 3);
    // All of one metal: half the modulus times the strain, whatever Poisson's ratio.
    const alike = { ...fit, slugModulus: 207e9 };
    expect(fitPressure(alike, Infinity, 45e-6)).toBeCloseTo((207e9 / 2) * (45e-6 / 0.019), 3);
  });

  test('a gap presses nothing', () => {
    expect(fitPressure(fit, 0.03, -1e-6)).toBe(0);
    expect(fitPressure(fit, 0.03, 0)).toBe(0);
  });

  test('19 mm, 80 K warmer: 9.9 µm of the interference are lost', () => {
    expect(interferenceLost(fit, fit.assemblyTemperature + 80) * 1e6).toBeCloseTo(9.88, 10);
    expect(interferenceLost(fit, fit.assemblyTemperature - 80) * 1e6).toBeCloseTo(-9.88, 10);
  });

  test('a counterweight that grows no faster never lets go', () => {
    expect(looseAt({ ...fit, crankExpansion: 5e-6 })).toBeUndefined();
    expect(looseAt({ ...fit, crankExpansion: 4e-6 })).toBeUndefined();
  });
});

describe('properties', () => {
  test(proves(routes.slugsScale, 'a fit twice as large presses alike'), () => {
    fc.assert(
      fc.property(fits, ({ fit: one, outside }) => {
        const twice = {
          ...one,
          slugDiameter: 2 * one.slugDiameter,
          slugInterference: 2 * one.slugInterference,
        };
        const ratio =
          fitPressure(twice, 2 * outside, twice.slugInterference) /
          fitPressure(one, outside, one.slugInterference);
        expect(ratio).toBeCloseTo(1, 12);
      }),
    );
  });

  test('more metal around presses more, and its bore is stretched less for each unit of pressure', () => {
    fc.assert(
      fc.property(fits, ({ fit: one, outside }) => {
        const thicker = outside * 1.2;
        expect(fitPressure(one, thicker, one.slugInterference)).toBeGreaterThan(
          fitPressure(one, outside, one.slugInterference),
        );
        expect(boreFactor(one.slugDiameter, thicker)).toBeLessThan(
          boreFactor(one.slugDiameter, outside),
        );
      }),
    );
  });

  test('the interference is used up exactly where it is said', () => {
    fc.assert(
      fc.property(fits, ({ fit: one }) => {
        const at = looseAt(one);
        expect(at).toBeDefined();
        expect(interferenceLost(one, at ?? Number.NaN) / one.slugInterference).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('second route', () => {
  test(proves(routes.followedThroughWalls, 'pressure and hoop stress, cold and warm'), () => {
    fc.assert(
      fc.property(fits, ({ fit: one, outside, temperature }) => {
        const left = one.slugInterference - interferenceLost(one, temperature);
        const pressure = fitPressure(one, outside, left);
        const stepped = steppedFit(one, outside, temperature);
        // The stepping is good to some 1e-8; the temperature is a difference of numbers that are nearly the same.
        const fine = 1e-6 * (pressure + 1e5);
        expect(Math.abs(stepped.pressure - pressure)).toBeLessThan(fine);
        const hoop = boreFactor(one.slugDiameter, outside) * pressure;
        expect(Math.abs(stepped.hoop - hoop)).toBeLessThan(4 * fine);
      }),
      { numRuns: 15 },
    );
  });

  test(proves(routes.followedThroughWalls, 'the temperature at which nothing is left'), () => {
    const at = looseAt(fit) ?? Number.NaN;
    expect(steppedFit(fit, 0.028, at + 1).pressure).toBe(0);
    expect(steppedFit(fit, 0.028, at - 1).pressure).toBeGreaterThan(0);
  });
});

describe('refusals', () => {
  test('a ring without metal', () => {
    expect(() => boreFactor(0.02, 0.02)).toThrow(RangeError);
    expect(() => boreFactor(0, 0.02)).toThrow(RangeError);
    expect(() => boreFactor(0.02, Number.NaN)).toThrow(RangeError);
  });
});
