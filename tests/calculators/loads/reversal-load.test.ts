import { describe, expect, it } from 'vitest';
import { reversalLoad } from '../../../src/calculators/loads/reversal-load.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { toSI } from '../../../src/units/units.ts';
import { must } from '../must.ts';

type Given = Parameters<typeof reversalLoad.compute>[0];

function demo(set: 'baseline' | 'candidate'): Given {
  return Object.fromEntries(
    Object.entries(reversalLoad.inputs).map(([name, { demo }]) => {
      const [number, unit] = demo[set].split(' ');
      return [name, toSI(Number(number), must(unit))];
    }),
  ) as Given;
}

const road = demo('baseline');
const hill = demo('candidate');
const of = { road: reversalLoad.compute(road), hill: reversalLoad.compute(hill) };
const compare = (before: Given, after: Given) =>
  must(reversalLoad.compare)({
    baseline: { input: before, output: reversalLoad.compute(before) },
    candidate: { input: after, output: reversalLoad.compute(after) },
  });
const rpm = Math.PI / 30;

// Regression against the sheet worked by hand for the invented example engine; nothing published stands behind it.
it.each([
  ['bossPull', 9604, 12099],
  ['eyePull', 12081, 14817],
  ['reciprocatingPull', 15597, 19696],
  ['partingPull', 20191, 25573],
  ['crankpinPull', 23175, 29188],
  ['suction', 470, 470],
] as const)('%s of the example sets', (name, first, second) => {
  expect(Math.round(of.road[name])).toBe(first);
  expect(Math.round(of.hill[name])).toBe(second);
});

describe('both sets', () => {
  it('compare at one common speed', () => {
    const slow = reversalLoad.compute({ ...hill, maxSpeed: 6400 * rpm });
    expect(Math.round(slow.reciprocatingPull)).toBe(11433);
    expect(of.hill.commonPull).toBeCloseTo(slow.partingPull, 6);
    expect(of.road.commonPull).toBeCloseTo(of.road.partingPull, 6);
  });

  it('meet at a speed where the loads are the same', () => {
    const speeds = compare(road, hill);
    expect(Math.round((speeds.equalReciprocatingSpeed as number) / rpm)).toBe(7475);
    for (const [speed, pull] of [
      ['equalLoadSpeed', 'partingPull'],
      ['equalEyeSpeed', 'eyePull'],
      ['equalReciprocatingSpeed', 'reciprocatingPull'],
    ] as const) {
      const there = reversalLoad.compute({ ...hill, maxSpeed: speeds[speed] as number });
      expect(there[pull] / of.road[pull]).toBeCloseTo(1, 12);
    }
  });

  it('have no such speed where nothing hangs on the section', () => {
    const bare = {
      ...hill,
      pistonMass: 0,
      ringMass: 0,
      lockMass: 0,
      pinMass: 0,
    };
    expect(compare(road, bare).equalEyeSpeed).toHaveProperty('absent');
    expect(compare(road, bare).equalLoadSpeed).toBeTypeOf('number');
  });
});

describe('speed', () => {
  it('counts twice, exactly', () => {
    for (const factor of [0, 0.5, 1.05, 2, 100]) {
      const other = reversalLoad.compute({ ...road, maxSpeed: road.maxSpeed * factor });
      for (const name of [
        'bossPull',
        'eyePull',
        'shankPull',
        'partingPull',
        'crankpinPull',
      ] as const)
        expect(other[name]).toBeCloseTo(of.road[name] * factor ** 2, 6);
      expect(other.suction).toBe(of.road.suction);
    }
  });

  it('five per cent over is 10.25 per cent more', () => {
    const over = { ...road, missedShiftSpeed: road.maxSpeed * 1.05 };
    const { missedShiftExcess, missedShiftPull, partingPull } = reversalLoad.compute(over);
    expect(missedShiftExcess).toBeCloseTo(0.1025, 12);
    expect(missedShiftPull / partingPull).toBeCloseTo(1.1025, 12);
  });

  it('of zero gives zero, a reason for what cannot be, and a curve with a length', () => {
    const still = reversalLoad.compute({
      ...road,
      maxSpeed: 0,
      missedShiftSpeed: 0,
      commonSpeed: 0,
    });
    expect(still.partingPull).toBe(0);
    expect(still.missedShiftExcess).toEqual({ absent: 'the redline is zero' });
    expect(still.suctionShare).toHaveProperty('absent');
    const { x, y } = still.pullCurve;
    expect(x[x.length - 1]).toBeGreaterThan(0);
    expect(Array.from(y).every(Number.isFinite)).toBe(true);
  });

  it('of 1e9 turns a minute still gives numbers', () => {
    const fast = reversalLoad.compute({ ...road, maxSpeed: 1e9 * rpm });
    for (const result of Object.values(fast))
      if (typeof result === 'number') expect(Number.isFinite(result)).toBe(true);
  });

  it.each(['maxSpeed', 'missedShiftSpeed', 'commonSpeed'] as const)(
    '%s below zero is refused',
    (name) => {
      expect(() => reversalLoad.compute({ ...road, [name]: -1 })).toThrow(OutOfDomain);
      expect(() => reversalLoad.compute({ ...road, [name]: -1 })).toThrow(name);
    },
  );
});

it('runs its curve from standstill to fifteen per cent past the greater speed', () => {
  const { x, y } = of.road.pullCurve;
  expect(x[0]).toBe(0);
  expect(must(x[x.length - 1]) / rpm).toBeCloseTo(1.15 * 6900, 9);
  const i = 40;
  expect(y[i]).toBeCloseTo(of.road.partingPull * (must(x[i]) / road.maxSpeed) ** 2, 6);
});

describe('closed throttle', () => {
  it('adds to the eye and to the parting line', () => {
    expect(of.road.eyePullClosed - of.road.eyePull).toBeCloseTo(of.road.suction, 9);
    expect(of.road.partingPullClosed - of.road.partingPull).toBeCloseTo(of.road.suction, 9);
  });
});

describe('limits', () => {
  const broken = (patch: Partial<Given>): string[] => {
    const input = { ...road, ...patch };
    const output = reversalLoad.compute(input);
    return reversalLoad.limits.filter((limit) => !limit.holds(input, output)).map(({ id }) => id);
  };
  it('hold for both example sets', () => {
    expect(broken({})).toEqual([]);
    expect(broken(hill)).toEqual([]);
  });
  it.each([
    ['missed-shift-above', { missedShiftSpeed: road.maxSpeed * 0.9 }],
    ['suction-pulls', { overrunPressure: 102e3 }],
    ['section-in-upper-half', { shankSection: 0.08 }],
    ['rod-metal-fits', { rodMassAbove: 0.18 }],
  ])('%s is flagged', (id, patch) => expect(broken(patch)).toEqual([id]));
});

it('works out at the push where the rod helps', () => {
  const { accelerationTop, accelerationBottom, bottomPush, reciprocating } = of.road;
  expect(accelerationBottom).toBeLessThan(accelerationTop);
  expect(bottomPush).toBeCloseTo(reciprocating * accelerationBottom, 9);
});
