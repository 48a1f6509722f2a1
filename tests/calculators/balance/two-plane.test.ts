import { describe, expect, test } from 'vitest';
import { bobweightChange } from '../../../src/calculators/balance/bobweight-change.ts';
import { outsideMasses } from '../../../src/calculators/balance/outside-masses.ts';
import { planeTransfer } from '../../../src/calculators/balance/plane-transfer.ts';

const degrees = Math.PI / 180;
const read = {
  planeUnbalanceA: 4.2e-3,
  planeAngleA: 188 * degrees,
  planeA: -0.194,
  planeUnbalanceB: 3.1e-3,
  planeAngleB: 32 * degrees,
  planeB: 0.194,
  bearingSpan: 0.4,
  newPlaneA: -0.12,
  newPlaneB: 0.232,
};
const change = {
  crankLayout: 'v8-cross',
  newBobweight: 1.2331,
  balancedBobweight: 1.6852,
  stroke: 0.073,
  maxSpeed: (8400 * Math.PI) / 30,
  takenAt: 'ends',
  cylinderSpacing: 0.1,
  planeA: -0.194,
  planeB: 0.194,
} as const;
const weighted = {
  balancedWith: 'own',
  swappedPart: 'flywheel',
  damperUnbalance: 8.6e-3,
  flywheelUnbalance: 11.2e-3,
  flywheelPlace: 0.232,
  maxSpeed: (6400 * Math.PI) / 30,
  damperAngle: 198 * degrees,
  damperPlace: -0.246,
  flywheelAngle: 18 * degrees,
  planeA: -0.194,
  planeB: 0.194,
} as const;

describe('by hand', () => {
  test('planes that do not move leave the reading as it is', () => {
    const same = planeTransfer.compute({ ...read, newPlaneA: -0.194, newPlaneB: 0.194 });
    expect(same.movedA).toBeCloseTo(4.2e-3, 15);
    expect(same.movedAngleA).toBeCloseTo(188 * degrees, 12);
    expect(same.lightB).toBeCloseTo(212 * degrees, 12);
  });

  test('a flywheel alone, entered as a third unbalance, overhangs by its lever', () => {
    const none = { ...read, planeUnbalanceA: 0, planeUnbalanceB: 0 };
    const { movedA, movedB, movedAngleA, bearingA, bearingB } = planeTransfer.compute({
      ...none,
      newPlaneA: -0.2,
      newPlaneB: 0.2,
      thirdUnbalance: 0.01,
      thirdAngle: 0,
      thirdPlace: 0.24,
    });
    expect(movedB).toBeCloseTo(0.011, 14);
    expect(movedA).toBeCloseTo(0.001, 14);
    // The new planes stand at the bearings.
    expect([bearingA, bearingB]).toEqual([movedA, movedB]);
    expect(movedAngleA).toBeCloseTo(Math.PI, 12);
  });

  test('452.1 g less on every pin: 13.4 kg·mm at each end, or 8.3 at every web', () => {
    const ends = bobweightChange.compute(change);
    expect(ends.endUnbalance * 1e6).toBeCloseTo(13449, 0);
    expect(ends.perWeight).toBe(ends.endUnbalance);
    // Unit throws at −1½, −½, ½ and 1½ spacings and 0, 90, 270 and 180°.
    const { forceAlong, forceAcross, coupleAlong, coupleAcross } = ends;
    expect([forceAlong, forceAcross]).toEqual([0, 0]);
    expect([coupleAlong, coupleAcross]).toEqual([expect.closeTo(-3, 12), expect.closeTo(-1, 12)]);
    expect(ends.endAngleB).toBeCloseTo(18.435 * degrees, 4);
    // 0.4521 kg · 36.5 mm at 879.6 rad/s: 12.77 kN at a pin, 1/√2 of it on the second main.
    expect(ends.pinPull).toBeCloseTo(0.4521 * 0.0365 * 879.646 ** 2, -1);
    expect(ends.mainPull).toBeCloseTo(ends.pinPull * Math.SQRT1_2, 6);
    const webs = bobweightChange.compute({ ...change, takenAt: 'webs' });
    expect(webs.perWeight * 1e6).toBeCloseTo((452.1 * 36.5) / 2, 6);
    expect(webs).toMatchObject({ weights: 8, mainPull: 0, bending: 0 });
    expect(webs.endUnbalance).toBe(ends.endUnbalance);
  });

  test('an exchanged flywheel: its own pull, and more than its own unbalance in the near plane', () => {
    const { swapPull, leftB, leftA } = outsideMasses.compute(weighted);
    expect(swapPull).toBeCloseTo(0.0112 * 670.2064 ** 2, 1);
    expect(leftB).toBeCloseTo((0.0112 * 426) / 388, 14);
    expect(leftA).toBeCloseTo((0.0112 * 38) / 388, 14);
  });
});

describe('what has no answer says why', () => {
  test('no unbalance has no angle', () => {
    const { movedAngleA, staticAngle } = planeTransfer.compute({
      ...read,
      planeUnbalanceA: 0,
      planeUnbalanceB: 0,
    });
    expect(movedAngleA).toEqual({ absent: 'there is no unbalance in this plane' });
    expect(staticAngle).toEqual({ absent: 'there is no static part' });
  });

  test('a single has no middle main; a flat crank shows nothing at its ends', () => {
    const single = bobweightChange.compute({ ...change, crankLayout: 'single' });
    expect(single.mainPull).toEqual({ absent: 'there is no main between two pins' });
    const flat = bobweightChange.compute({ ...change, crankLayout: 'v8-flat' });
    expect(flat.endAngleA).toEqual({ absent: 'the change makes no unbalance in this plane' });
    expect(flat.pinPull).toBeGreaterThan(10_000);
    expect(flat.mainPull).toBeCloseTo(flat.pinPull, 6);
  });

  test('planes that coincide, and a third unbalance without its angle, are refused', () => {
    expect(() => planeTransfer.compute({ ...read, newPlaneA: 0.232 })).toThrow('newPlaneA');
    expect(() => planeTransfer.compute({ ...read, thirdUnbalance: 0.01 })).toThrow('thirdAngle');
  });
});

test('limits speak when they should', () => {
  const moved = (of: Partial<typeof read>): string[] => {
    const input = { ...read, ...of };
    const output = planeTransfer.compute(input);
    return planeTransfer.limits.filter(({ holds }) => !holds(input, output)).map(({ id }) => id);
  };
  expect(moved({})).toEqual([]);
  expect(moved({ newPlaneA: 0.14 })).toEqual(['wide-apart']);
  expect(moved({ newPlaneA: 0.2, newPlaneB: 0.4 })).toEqual(['not-outside']);
  const flat = { ...change, crankLayout: 'inline-4-flat' } as const;
  expect(
    bobweightChange.limits
      .filter(({ holds }) => !holds(flat, bobweightChange.compute(flat)))
      .map(({ id }) => id),
  ).toEqual(['seen-by-machine']);
  const inside = { ...weighted, flywheelPlace: 0.1 };
  expect(
    outsideMasses.limits
      .filter(({ holds }) => !holds(inside, outsideMasses.compute(inside)))
      .map(({ id }) => id),
  ).toEqual(['outside']);
});
