import { describe, expect, it } from 'vitest';
import { pressureCycle } from '../../../src/core/loads/cylinder-pressure.ts';
import { gasPort } from '../../../src/core/rings/gas-port.ts';
import { ringCycle } from '../../../src/core/rings/ring-cycle.ts';
import { ringDrive } from '../../../src/core/rings/ring-drive.ts';
import { degree, hill, packOf, rpm } from './hill.ts';
import { standInTable } from './stand-in.ts';

describe('what a cycle fails to repeat', () => {
  const drive = ringDrive(hill, standInTable(5760), 1);

  it.each([{}, { portCount: 0 }, { portCount: 0, ringSideClearance: 45e-6 }])(
    'is the gas by which each space differs, by the gas law, over the gas in both: %o',
    (change) => {
      const pack = packOf(change);
      const { behind, land, drift, work } = ringCycle(pack, drive, 'lower');
      const gas = (pressure: number, volume: number): number => (pressure * volume) / pack.rt;
      const held = (place: number): readonly [number, number] => [
        gas(behind.at(place) ?? Number.NaN, pack.behindVolume),
        gas(land.at(place) ?? Number.NaN, pack.landVolume),
      ];
      const [[first, second], [lastFirst, lastSecond]] = [held(0), held(-1)];
      const missing = Math.abs(lastFirst - first) + Math.abs(lastSecond - second);
      // A difference of two nearly equal pressures keeps few of their digits.
      expect(Math.abs(drift - missing / (first + second))).toBeLessThan(1e-12);
      expect(work).toBeGreaterThan(behind.length - 1);
    },
  );

  it('is told of the ring that repeats worst', () => {
    const result = gasPort({ ...hill, ringSeat: 'free' });
    const all = [result, result.shut].flatMap(({ entered, unported, plugged }) =>
      [entered, unported, plugged].map(({ trace }) => trace.drift),
    );
    expect(new Set(all).size).toBeGreaterThan(1);
    for (const drift of all) expect(result.drift).toBeGreaterThanOrEqual(drift);
  });
});

describe('the search for the cycle that repeats', () => {
  const throttle = { manifoldPressure: 70e3, volumetricEfficiency: 0.74 };
  const halfOpen = pressureCycle({ ...hill, ...throttle }, 5760).pressure;

  it('ends as soon for a ring that stands on the upper flank where the cycle begins', () => {
    // With the throttle closed the cylinder is at 0.3 bar as the intake stroke ends, and the gas below holds the ring up.
    const closed = { manifoldPressure: 30e3, volumetricEfficiency: 0.32, maxSpeed: 1000 * rpm };
    const { entered, unported } = gasPort({ ...hill, ...closed });
    for (const { angle, lift, drift, work } of [entered, unported].map(({ trace }) => trace)) {
      expect([lift[0], lift.at(-1)]).toEqual([hill.ringSideClearance, hill.ringSideClearance]);
      expect(drift).toBeLessThan(5e-4);
      // Each step is three of Euler: no more than three cycles of the closest steps.
      expect(work).toBeLessThan(3 * 3 * (angle.length - 1));
    }
  });

  it.each([
    [500, 0.25, standInTable(5760)],
    [500, 0.5, standInTable(5760)],
    [2000, 0.75, halfOpen],
  ])(
    'ends with a height that repeats as the pressures do: %d min⁻¹, flank factor %d',
    (speed, flankFactor, pressure) => {
      // In flight over BDC the ring comes to its place a cycle later than the pressures to theirs.
      const drive = ringDrive({ ...hill, maxSpeed: speed * rpm }, pressure);
      const { lift, drift } = ringCycle(packOf({ flankFactor }), drive, 'free');
      expect(drift).toBeLessThan(5e-4);
      const [first = Number.NaN, last = Number.NaN] = [lift[0], lift.at(-1)];
      expect(first).toBeGreaterThan(0);
      expect(Math.abs(last - first)).toBeLessThan(0.01 * hill.ringSideClearance);
    },
  );

  it('is given up after sixteen cycles for a ring that never repeats its motion', () => {
    // Nothing holds a flank closed: the ring lands and leaves again a little otherwise in every cycle.
    const drive = ringDrive(hill, standInTable(5760), 1);
    const pack = packOf({ flankFactor: 0, portCount: 0 });
    const { angle, drift, work } = ringCycle(pack, drive, 'free');
    expect(drift).toBeGreaterThan(0.1);
    // Ten of the sixteen take fewer steps, which makes up for those that are refused.
    expect(work).toBeLessThan(16 * 3 * (angle.length - 1));
  });
});

it.each([1, 2])(
  'the tables have eighths of a degree, %i times as many, and twice that where the pressure is steep',
  (fineness) => {
    const ring = { ...hill, ringSeat: 'lower' } as const;
    expect(gasPort(ring, fineness).drive.steps).toBe(5760 * fineness);
    // Burns within 2° and 12° raise the pressure by up to 24 % and 4 % in an eighth of a degree; 2 % is steep.
    for (const degrees of [2, 12]) {
      const sudden = { ...ring, burnDuration: degrees * degree, wiebeForm: 1 };
      expect(gasPort(sudden, fineness).drive.steps).toBe(2 * 5760 * fineness);
    }
  },
);
