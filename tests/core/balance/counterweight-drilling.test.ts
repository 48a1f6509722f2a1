import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/counterweight-drilling/routes.ts';
import { counterweightDrilling as declaration } from '../../../src/calculators/balance/counterweight-drilling.ts';
import {
  counterweightDrilling,
  type DrillingInput,
} from '../../../src/core/balance/counterweight-drilling.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';
import { removedMetal } from './removed-metal.ts';

const degrees = Math.PI / 180;

/** Three holes of 14 mm about a heavy spot at 188°. */
const plan: DrillingInput = {
  holeKind: 'radial',
  unbalanceRead: 4.2e-3,
  heavyAngle: 188 * degrees,
  holeDiameter: 0.014,
  pointAngle: 118 * degrees,
  holeCount: 3,
  holeSpacing: 24 * degrees,
  counterweightRadius: 0.074,
  counterweightWidth: 0.019,
  counterweightAngle: 180 * degrees,
  steelDensity: 7850,
  holeAngleLimit: 50 * degrees,
  depthLimit: 0.025,
  keepOutRadius: 0.04,
  holeWall: 0.002,
  axialHoleRadius: 0.062,
};
const page = { ...plan, drillList: 'metric' } as const;

/** A plan that nothing is against, or undefined where something is. */
function planned(input: DrillingInput) {
  try {
    return counterweightDrilling(input);
  } catch (error) {
    if (error instanceof OutOfDomain) return undefined;
    throw error;
  }
}

const inputs = fc.record({
  holeKind: fc.constantFrom('radial' as const, 'axial' as const),
  unbalanceRead: evenly(1e-3, 9e-3),
  heavyAngle: evenly(-300, 300).map((angle) => angle * degrees),
  holeDiameter: evenly(0.008, 0.015),
  pointAngle: evenly(90, 180).map((angle) => angle * degrees),
  holeCount: fc.integer({ min: 1, max: 4 }),
  holeSpacing: evenly(20, 30).map((angle) => angle * degrees),
  counterweightRadius: evenly(0.073, 0.09),
  counterweightWidth: evenly(0.019, 0.03),
  counterweightAngle: evenly(-180, 180).map((angle) => angle * degrees),
  steelDensity: evenly(7000, 7900),
  holeAngleLimit: evenly(45, 60).map((angle) => angle * degrees),
  depthLimit: evenly(0.01, 0.024),
  keepOutRadius: evenly(0.03, 0.04),
  holeWall: evenly(0, 0.002),
  axialHoleRadius: evenly(0.055, 0.06),
});

describe('second routes', () => {
  test(proves(routes.metalByElements), () => {
    for (const [count, heavy, limit] of [
      [3, 188, 25],
      [1, 175, 25],
      [4, 222, 25],
      [2, 150, 12],
    ] as const) {
      const input = {
        ...page,
        holeCount: count,
        heavyAngle: heavy * degrees,
        depthLimit: limit * 1e-3,
      };
      const out = declaration.compute(input);
      const one = removedMetal(input, input, out.depth);
      const angles = Array.from(
        { length: count },
        (_, i) =>
          out.firstHole + (count > 1 ? (i * (out.lastHole - out.firstHole)) / (count - 1) : 0),
      );
      const sum = { x: 0, y: 0 };
      for (const angle of angles) {
        sum.x += one.unbalance * Math.cos(angle);
        sum.y += one.unbalance * Math.sin(angle);
      }
      const rest = {
        x: input.unbalanceRead * Math.cos(input.heavyAngle) - sum.x,
        y: input.unbalanceRead * Math.sin(input.heavyAngle) - sum.y,
      };
      // The elements are fine enough for five figures of the whole.
      const fine = 1e-5 * input.unbalanceRead;
      expect(Math.abs(Math.hypot(rest.x, rest.y) - out.left)).toBeLessThan(fine);
      if (typeof out.leftAngle === 'number') {
        expect(Math.abs(out.left * Math.cos(out.leftAngle) - rest.x)).toBeLessThan(fine);
        expect(Math.abs(out.left * Math.sin(out.leftAngle) - rest.y)).toBeLessThan(fine);
      } else expect(Math.hypot(rest.x, rest.y)).toBeLessThan(fine);
      expect(Math.abs(Math.hypot(sum.x, sum.y) - out.taken)).toBeLessThan(fine);
      expect(
        Math.abs(Math.atan2(sum.y, sum.x) - Math.atan2(Math.sin(out.middle), Math.cos(out.middle))),
      ).toBeLessThan(1e-9);
      expect(out.perHole / one.unbalance).toBeCloseTo(1, 5);
      expect(out.spread).toBeCloseTo(Math.hypot(sum.x, sum.y) / (count * one.unbalance), 12);
      expect(out.pointShare).toBeCloseTo(one.point / one.unbalance, 5);
      // Of the mass the missing cap is the first term of a series.
      expect(out.holeMass / one.mass).toBeCloseTo(1, 4);
      expect(out.allMass / (count * one.mass)).toBeCloseTo(1, 4);
      const deepest = removedMetal(input, input, input.depthLimit);
      expect(out.most / (out.spread * count * deepest.unbalance)).toBeCloseTo(1, 5);
      // From a flat rim the same hole takes more by what the page says is missing: a rim 1000 times as large is flat.
      const shift = 999 * input.counterweightRadius;
      const wide = { ...input, counterweightRadius: 1000 * input.counterweightRadius };
      const flat = removedMetal(input, wide, out.depth);
      expect(
        Math.abs(flat.unbalance - flat.mass * shift - one.unbalance - out.rimLoss),
      ).toBeLessThan(
        // The great radius loses figures.
        1e-4 * one.unbalance,
      );
    }
  });

  test('holes parallel to the shaft, as point masses at their radius', () => {
    const out = declaration.compute({ ...page, holeKind: 'axial', unbalanceRead: 3e-3 });
    const volume = (Math.PI / 4) * 0.014 ** 2 * (out.depth + 0.007 / Math.tan(59 * degrees) / 3);
    expect(out.holeMass).toBeCloseTo(7850 * volume, 12);
    expect(out.perHole).toBeCloseTo(7850 * volume * 0.062, 12);
    expect(out.taken + out.left).toBeCloseTo(3e-3, 12);
    expect(out.rimLoss).toBe(0);
  });
});

describe('properties', () => {
  test(proves(routes.holesScale), () => {
    let met = 0;
    fc.assert(
      fc.property(inputs, evenly(-400, 400), (input, turned) => {
        const one = planned(input);
        const other = planned({
          ...input,
          heavyAngle: input.heavyAngle + turned * degrees,
          counterweightAngle: input.counterweightAngle + turned * degrees,
        });
        if (one === undefined || other === undefined) return;
        met += 1;
        expect(other.depth).toBeCloseTo(one.depth, 11);
        expect(other.taken).toBeCloseTo(one.taken, 13);
        expect(other.middle - one.middle).toBeCloseTo(turned * degrees, 9);
      }),
      { numRuns: 600 },
    );
    expect(met).toBeGreaterThan(60);
  });

  test('nothing is taken that was not there: what is left is never more than what was read', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const one = planned(input);
        if (one === undefined) return;
        const left = Math.hypot(one.leftAlong, one.leftAcross);
        expect(left).toBeLessThanOrEqual(input.unbalanceRead * (1 + 1e-12));
        expect(one.leftAlong).toBeGreaterThanOrEqual(0);
        expect(one.depth).toBeLessThanOrEqual(input.depthLimit);
        expect(one.taken).toBeLessThanOrEqual(one.most * (1 + 1e-12));
        // No other depth of the same holes leaves less.
        if (one.depth < input.depthLimit && one.leftAlong > 0) expect(input.holeKind).toBe('axial');
      }),
      { numRuns: 600 },
    );
  });

  test('a mirror image mirrors', () => {
    const right = counterweightDrilling({ ...plan, heavyAngle: 215 * degrees });
    const left = counterweightDrilling({ ...plan, heavyAngle: 145 * degrees });
    expect(left.depth).toBeCloseTo(right.depth, 14);
    expect(left.middle - plan.counterweightAngle).toBeCloseTo(
      plan.counterweightAngle - right.middle,
      12,
    );
    expect(left.leftAcross).toBeCloseTo(-right.leftAcross, 15);
    expect(right.leftAcross).toBeGreaterThan(0);
  });

  test('beyond the limit the holes go to it, and the rest is said', () => {
    const much = counterweightDrilling({ ...plan, unbalanceRead: 8e-3 });
    expect(much.depth).toBe(0.025);
    expect(much.taken).toBe(much.most);
    expect(much.leftAlong).toBeCloseTo(8e-3 - much.most, 12);
  });
});

describe('refusals', () => {
  test.each<[string, Partial<DrillingInput>, string]>([
    ['holes that meet', { holeSpacing: 14 * degrees }, 'holeSpacing'],
    [
      'holes beyond the allowed angle',
      { holeCount: 6, holeAngleLimit: 45 * degrees },
      'holeSpacing',
    ],
    ['a hole wider than the rim', { holeDiameter: 0.017 }, 'holeDiameter'],
    ['a hole that reaches a journal', { depthLimit: 0.031 }, 'depthLimit'],
    ['a hole that is never round', { depthLimit: 1e-4 }, 'depthLimit'],
    ['the other side of the crank', { heavyAngle: 8 * degrees }, 'heavyAngle'],
    ['a mere touch of the drill', { unbalanceRead: 1e-5 }, 'unbalanceRead'],
    ['no density', { steelDensity: 0 }, 'steelDensity'],
    ['half a hole', { holeCount: 2.5 }, 'holeCount'],
    ['out through the rim', { holeKind: 'axial', axialHoleRadius: 0.067 }, 'axialHoleRadius'],
    ['into the journal', { holeKind: 'axial', axialHoleRadius: 0.045 }, 'axialHoleRadius'],
    [
      'a point longer than the width',
      { holeKind: 'axial', counterweightWidth: 0.004 },
      'counterweightWidth',
    ],
    ['holes in a face that meet', { holeKind: 'axial', holeSpacing: 14 * degrees }, 'holeSpacing'],
  ])('%s', (_, change, quantity) => {
    expect(() => counterweightDrilling({ ...plan, ...change })).toThrow(
      expect.objectContaining({ name: 'OutOfDomain', quantity }),
    );
  });
});
