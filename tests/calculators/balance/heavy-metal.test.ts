import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/heavy-metal/routes.ts';
import { classRange, slugClass } from '../../../src/calculators/balance/heavy-metal.choices.ts';
import { heavyMetal } from '../../../src/calculators/balance/heavy-metal.ts';
import { proves } from '../../proves.ts';

const perMinute = Math.PI / 30;
const input = {
  addedUnbalance: 5.6e-3,
  slugClass: 'class-1',
  slugDiameter: 0.019,
  slugLength: 0.018,
  slugRadius: 0.06,
  slugCount: 2,
  slugSpacing: (24 * Math.PI) / 180,
  steelDensity: 7850,
  counterweightRadius: 0.074,
  counterweightWidth: 0.019,
  keepOutRadius: 0.036,
  maxSpeed: 6400 * perMinute,
  missedShiftSpeed: 8400 * perMinute,
  slugInterference: 45e-6,
  slugModulus: 280e9,
  counterweightModulus: 207e9,
  slugExpansion: 5e-6,
  crankExpansion: 12e-6,
  counterweightTemperature: 383.15,
  assemblyTemperature: 293.15,
} as const;

describe('by hand', () => {
  test(
    proves(routes.byHand, 'density of a class, of a certificate, and what the range does'),
    () => {
      // Class 1 is 16.85 to 17.30 g/cm³.
      const { density, classSwing } = heavyMetal.compute(input);
      expect(density).toBeCloseTo(17075, 9);
      expect(classSwing).toBeCloseTo(0.225 / 9.225, 12);
      const stated = heavyMetal.compute({ ...input, slugDensity: 17000 });
      expect(stated.density).toBe(17000);
      expect(stated.slugMass * 1e3).toBeCloseTo(86.76, 2);
      expect(stated.massGain * 1e3).toBeCloseTo(46.7, 2);
    },
  );

  test(proves(routes.byHand, 'the pull over two ligaments, at over-rev'), () => {
    const shorter = { ...input, slugLength: 0.016, slugDensity: 17000 };
    const { overPull, rimStress, besideStress } = heavyMetal.compute(shorter);
    // 77.1 g at 60 mm and 879.6 rad/s; 2 · 4.5 · 16 mm² outside, and 5.949 · 16 mm² for one wall between two slugs.
    expect(overPull).toBeCloseTo(3580, 0);
    expect(rimStress / 1e6).toBeCloseTo(3580 / 144, 1);
    expect(besideStress).toBeCloseTo(overPull / (0.0059494 * 0.016), -3);
  });

  test('a hole opposite and a slug do as steel and as the difference', () => {
    const { oppositeHole, perSlug } = heavyMetal.compute(input);
    expect(oppositeHole / perSlug).toBeCloseTo(7.85 / 9.225, 12);
  });

  test('heat: 19 mm, 7 ppm and 90 K are 12 µm', () => {
    const { lost, warmInterference, warmPressure, pressure } = heavyMetal.compute(input);
    expect(lost * 1e6).toBeCloseTo(11.97, 10);
    expect(warmInterference * 1e6).toBeCloseTo(33.03, 10);
    expect(warmPressure / pressure).toBeCloseTo(33.03 / 45, 12);
  });
});

test('the classes are those of the standard, and follow each other', () => {
  const ranges = (Object.keys(slugClass.options) as (keyof typeof slugClass.options)[]).map(
    classRange,
  );
  expect(ranges).toHaveLength(4);
  ranges.forEach(({ least, most }, i) => {
    expect(most).toBeGreaterThan(least);
    expect(least).toBeGreaterThan(ranges[i - 1]?.least ?? 0);
  });
});

describe('what has no answer says why', () => {
  test('one slug has no wall beside it', () => {
    const { besideWall, besideStress } = heavyMetal.compute({ ...input, slugCount: 1 });
    expect(besideWall).toEqual({ absent: 'there is one slug only' });
    expect(besideStress).toEqual({ absent: 'there is one slug only' });
  });

  test('too much for any number of slugs, and a fit that heat does not loosen', () => {
    const { slugsNeeded, looseTemperature } = heavyMetal.compute({
      ...input,
      addedUnbalance: 0.05,
      crankExpansion: 5e-6,
    });
    expect(slugsNeeded).toMatchObject({ absent: expect.stringContaining('no number') });
    expect(looseTemperature).toMatchObject({ absent: expect.stringContaining('faster') });
  });
});

test('limits speak when they should', () => {
  const said = (change: Partial<Parameters<typeof heavyMetal.compute>[0]>): string[] => {
    const all = { ...input, ...change };
    const output = heavyMetal.compute(all);
    return heavyMetal.limits.filter(({ holds }) => !holds(all, output)).map(({ id }) => id);
  };
  expect(said({ addedUnbalance: 4e-3 })).toEqual([]);
  expect(said({})).toEqual(['not-enough']);
  expect(said({ addedUnbalance: 6e-3 })).toEqual(['not-enough', 'long']);
  expect(said({ addedUnbalance: 4e-3, slugDensity: 17800 })).toEqual(['class']);
  expect(said({ addedUnbalance: 4e-3, slugDensity: 16800 })).toEqual(['class']);
  expect(said({ addedUnbalance: 4e-3, slugDensity: 17300 })).toEqual([]);
  expect(said({ addedUnbalance: 4e-3, slugSpacing: 1.2 })).toEqual(['fan']);
  expect(said({ addedUnbalance: 4e-3, slugInterference: 37e-6 })).toEqual(['band']);
  expect(said({ addedUnbalance: 4e-3, slugInterference: 77e-6 })).toEqual(['band']);
  expect(said({ addedUnbalance: 4e-3, slugInterference: 38e-6 })).toEqual([]);
  expect(
    said({ addedUnbalance: 4e-3, counterweightTemperature: 293.15 + 45e-6 / 0.019 / 7e-6 }),
  ).toEqual(['loose']);
});
