import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/counterweight-drilling/routes.ts';
import {
  axialDepth,
  axialHole,
  fullDiameterFrom,
  pointLength,
  radialDepth,
  radialHole,
} from '../../../src/core/balance/drilled-hole.ts';
import { bracketedRoot } from '../../../src/core/math/roots.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';
import { removedMetal } from './removed-metal.ts';

const degrees = Math.PI / 180;
const steel = 7850;
/** 16 mm, 118°, 20 mm deep in a rim of 74 mm. */
const drill = { holeDiameter: 0.016, pointAngle: 118 * degrees };
const rim = { counterweightRadius: 0.074, steelDensity: steel };

/** A drill, a rim and a depth that leaves the axis alone. */
const holes = fc
  .record({
    radius: evenly(0.03, 0.15),
    thick: evenly(0.05, 0.6),
    angle: evenly(80, 180),
    share: evenly(0.02, 0.98),
    density: evenly(2000, 8200),
  })
  .map(({ radius, thick, angle, share, density }) => {
    const one = { holeDiameter: thick * radius, pointAngle: angle * degrees };
    const metal = { counterweightRadius: radius, steelDensity: density };
    const least = fullDiameterFrom(one, metal);
    const most = radius - pointLength(one);
    return { drill: one, rim: metal, depth: least + share * (most - least) };
  });

describe('closed forms', () => {
  test(proves(routes.twoCylinders, 'the half of two crossing cylinders'), () => {
    const flat = { holeDiameter: 2 * 0.05 * (1 - 1e-9), pointAngle: Math.PI };
    const { unbalance } = radialHole(
      flat,
      { counterweightRadius: 0.05, steelDensity: 1000 },
      0.05 * (1 - 1e-9),
    );
    // The integral of (R² − x²)^(3/2) from −R to R. The drill is thinner than the rim by a billionth.
    expect(unbalance).toBeCloseTo(1000 * ((3 * Math.PI) / 8) * 0.05 ** 4, 8);
  });

  test(
    proves(routes.twoCylinders, 'a cone alone stands at a quarter of its height from its base'),
    () => {
      const { point } = radialHole(drill, rim, 0.02);
      const height = 0.008 / Math.tan(59 * degrees);
      const cone = (Math.PI / 3) * 0.008 ** 2 * height;
      expect(point).toBeCloseTo(steel * cone * (0.074 - 0.02 - height / 4), 15);
    },
  );

  test('a flat drill in a rim so large that it is flat takes cylinder times radius of its middle', () => {
    const flat = { holeDiameter: 0.01, pointAngle: Math.PI };
    const wide = { counterweightRadius: 10, steelDensity: steel };
    const cylinder = steel * (Math.PI / 4) * 1e-4 * 0.02;
    const { unbalance, rimLoss } = radialHole(flat, wide, 0.02);
    expect(unbalance + rimLoss).toBeCloseTo(cylinder * (10 - 0.01), 12);
    expect(rimLoss / unbalance).toBeLessThan(2e-5);
  });

  test('the sizes that the text states: 16 mm, 20 mm deep, rim 74 mm', () => {
    const hole = radialHole(drill, rim, 0.02);
    // 2154 g·mm from a flat rim, of which the point is 6 per cent; the rim's curve costs 12.6 g·mm.
    expect((hole.unbalance + hole.rimLoss) * 1e6).toBeCloseTo(2154, 0);
    expect(hole.rimLoss * 1e6).toBeCloseTo(12.6, 1);
    expect(hole.rimLoss / hole.unbalance).toBeCloseTo(0.006, 3);
    expect(hole.point / hole.unbalance).toBeCloseTo(0.062, 3);
    // The point's mass set at half the depth would be 1.3 per cent too much.
    const height = pointLength(drill);
    const lumped = hole.mass * (0.074 - 0.01);
    expect(height * 1e3).toBeCloseTo(4.807, 3);
    expect(lumped / hole.unbalance - 1).toBeCloseTo(0.013, 2);
  });

  test('a hole in a flat face weighs cylinder and cone at one radius', () => {
    const face = { axialHoleRadius: 0.06, steelDensity: steel };
    const { unbalance, mass, rimLoss } = axialHole(drill, face, 0.01);
    const volume = (Math.PI / 4) * 0.016 ** 2 * (0.01 + pointLength(drill) / 3);
    expect(mass).toBeCloseTo(steel * volume, 12);
    expect(unbalance).toBeCloseTo(mass * 0.06, 15);
    expect(rimLoss).toBe(0);
  });

  test('the hole is round from the depth of the arc over its diameter', () => {
    expect(fullDiameterFrom(drill, rim)).toBeCloseTo(
      0.074 - Math.sqrt(0.074 ** 2 - 0.008 ** 2),
      15,
    );
    expect(fullDiameterFrom({ ...drill, holeDiameter: 0.148 * (1 - 1e-12) }, rim)).toBeCloseTo(
      0.074,
      6,
    );
  });
});

describe('properties', () => {
  test(
    proves(routes.holesScale, 'everything twice as large is sixteen times the unbalance'),
    () => {
      fc.assert(
        fc.property(holes, ({ drill: one, rim: metal, depth }) => {
          const small = radialHole(one, metal, depth);
          const large = radialHole(
            { ...one, holeDiameter: 2 * one.holeDiameter },
            { ...metal, counterweightRadius: 2 * metal.counterweightRadius },
            2 * depth,
          );
          expect(large.unbalance / small.unbalance).toBeCloseTo(16, 9);
          expect(large.mass / small.mass).toBeCloseTo(8, 9);
        }),
      );
    },
  );

  test('twice the density is twice as much', () => {
    fc.assert(
      fc.property(holes, ({ drill: one, rim: metal, depth }) => {
        const heavy = { ...metal, steelDensity: 2 * metal.steelDensity };
        const [light, twice] = [radialHole(one, metal, depth), radialHole(one, heavy, depth)];
        for (const name of ['unbalance', 'point', 'rimLoss', 'mass'] as const)
          expect(twice[name]).toBeCloseTo(2 * light[name], 12);
      }),
    );
  });

  test('the depth for what a hole takes is its depth', () => {
    fc.assert(
      fc.property(holes, ({ drill: one, rim: metal, depth }) => {
        const back = radialDepth(one, metal, radialHole(one, metal, depth).unbalance);
        // Near the axis one more millimetre takes next to nothing: the square root of the rounding.
        expect(Math.abs(back - depth)).toBeLessThan(1e-8 * metal.counterweightRadius);
      }),
    );
    const face = { axialHoleRadius: 0.06, steelDensity: steel };
    expect(axialDepth(drill, face, axialHole(drill, face, 0.0123).unbalance)).toBeCloseTo(
      0.0123,
      14,
    );
  });
});

describe('second routes', () => {
  test(proves(routes.solvedBySearch), () => {
    fc.assert(
      fc.property(holes, ({ drill: one, rim: metal, depth }) => {
        const wanted = radialHole(one, metal, depth).unbalance;
        const [low, high] = [
          fullDiameterFrom(one, metal),
          metal.counterweightRadius - pointLength(one),
        ];
        const taken = (h: number): number => radialHole(one, metal, h).unbalance - wanted;
        const found = bracketedRoot(taken, low, high * (1 - 1e-12));
        expect(Math.abs(found - radialDepth(one, metal, wanted))).toBeLessThan(
          1e-7 * metal.counterweightRadius,
        );
      }),
    );
  });

  test(proves(routes.metalByElements, 'one hole, element by element'), () => {
    fc.assert(
      fc.property(holes, ({ drill: one, rim: metal, depth }) => {
        const hole = radialHole(one, metal, depth);
        const sum = removedMetal(one, metal, depth);
        // The elements are fine enough for four figures of the metal at the rim; the rim's curve is worth far more.
        const fine = 3e-5 * hole.mass * metal.counterweightRadius;
        expect(Math.abs(hole.unbalance - sum.unbalance)).toBeLessThan(fine);
        expect(Math.abs(hole.point - sum.point)).toBeLessThan(fine);
        expect(sum.across / sum.unbalance).toBeCloseTo(0, 9);
        // Of the mass the cap is one term of a series: the next is d²/(32R²) of it, and the others are less.
        const cap = hole.rimLoss / metal.counterweightRadius;
        const next = 0.05 * (one.holeDiameter / metal.counterweightRadius) ** 2 * cap;
        expect(Math.abs(hole.mass - sum.mass)).toBeLessThan(next + 1e-4 * hole.mass);
      }),
      { numRuns: 40 },
    );
  });
});

describe('refusals', () => {
  test('a hole that is not yet round, or reaches the axis', () => {
    expect(() => radialHole(drill, rim, fullDiameterFrom(drill, rim) / 2)).toThrow(RangeError);
    expect(() => radialHole(drill, rim, 0.074 - pointLength(drill) / 2)).toThrow(RangeError);
    expect(() => radialHole(drill, rim, Number.NaN)).toThrow(RangeError);
    const face = { axialHoleRadius: 0.06, steelDensity: steel };
    expect(() => axialHole(drill, face, -1e-6)).toThrow(RangeError);
  });

  test('more than any depth takes is answered by the depth that takes the most', () => {
    expect(radialDepth(drill, rim, 1)).toBeCloseTo(0.074 - pointLength(drill) / 3, 15);
  });
});
