import { describe, expect, it } from 'vitest';
import { gasPort } from '../../../src/core/rings/gas-port.ts';
import { ringCycle } from '../../../src/core/rings/ring-cycle.ts';
import { ringDrive } from '../../../src/core/rings/ring-drive.ts';
import { hill, packOf } from './hill.ts';
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

it.each([1, 2])(
  'the tables have eighths of a degree, %i times as many, and twice that where the pressure is steep',
  (fineness) => {
    const ring = { ...hill, ringSeat: 'lower' } as const;
    expect(gasPort(ring, fineness).drive.steps).toBe(5760 * fineness);
    // A burn within 2° raises the pressure by more than 2 % in an eighth of a degree.
    const sudden = { ...ring, burnDuration: (2 * Math.PI) / 180, wiebeForm: 1 };
    expect(gasPort(sudden, fineness).drive.steps).toBe(2 * 5760 * fineness);
  },
);
