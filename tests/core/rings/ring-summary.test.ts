import { describe, expect, it } from 'vitest';
import type { RingTrace } from '../../../src/core/rings/ring-cycle.ts';
import { angleAt, ringDrive } from '../../../src/core/rings/ring-drive.ts';
import { greatest, lagOf, least, timeOffLower } from '../../../src/core/rings/ring-summary.ts';
import { hill } from './hill.ts';

const list = (...values: number[]): Float64Array => new Float64Array(values);

describe('the greatest and the least value', () => {
  it('are the top of the parabola through the highest sample and its neighbours', () => {
    const places = list(0, 1, 2, 2.5, 4);
    const values = places.map((x) => 7 - (x - 2.2) ** 2);
    const { at, value } = greatest(places, values);
    expect(at).toBeCloseTo(2.2, 12);
    expect(value).toBeCloseTo(7, 12);
    const valley = values.map((y) => -y);
    expect(least(places, valley)).toBeCloseTo(-7, 12);
  });
  it('are an end where that is the highest, and the first of two alike', () => {
    expect(greatest(list(1, 2, 3), list(9, 5, 1))).toEqual({ at: 1, value: 9 });
    expect(greatest(list(1, 2, 3), list(1, 5, 9))).toEqual({ at: 3, value: 9 });
    expect(greatest(list(1, 2, 3), list(4, 4, 4))).toEqual({ at: 1, value: 4 });
    expect(least(list(1, 2, 3), list(1, 5, 9))).toBe(1);
  });
});

const none = list();
/** A trace of which only some lists matter. */
function traceOf(lists: Partial<RingTrace>): RingTrace {
  return {
    ...{ angle: none, lift: none, cylinder: none, behind: none, land: none, moves: [] },
    ...{ inflow: 0, outflow: 0, drift: 0, work: 0 },
    ...lists,
  };
}

describe('the lag at 15 bar', () => {
  const steps = 360;
  /** Of a cylinder and a space behind the ring at these pressures [bar] at each place. */
  function lag(above: (place: number) => number, behind: (place: number) => number) {
    const places = Float64Array.from({ length: steps + 1 }, (_, i) => i);
    const cylinder = places.map((place) => 1e5 * above(place));
    const drive = ringDrive(hill, cylinder);
    const angle = places.map((place) => angleAt(drive, place));
    return lagOf(
      traceOf({ angle, cylinder, behind: places.map((place) => 1e5 * behind(place)) }),
      drive,
    );
  }
  /** Rises by a bar a place from 1 bar, and falls as it rose. */
  const hat = (place: number): number => 1 + Math.min(place, steps - place);
  const interval = (4 * Math.PI) / steps;

  it('is the time in which the pressure behind makes up for what it is late', () => {
    for (const late of [0, 0.25, 1, 7.5, 30]) {
      const behind = (place: number): number => hat(Math.max(0, place - late));
      expect(lag(hat, behind)).toBeCloseTo(late * interval, 9);
    }
  });
  it('is read where samples stand at 15 bar itself, in rising', () => {
    expect(lag(hat, (place) => hat(place) - 2)).toBeCloseTo(2 * interval, 9);
    // Down to 15 bar and up again is no rise through it; neither is a rise that ends below.
    const dip = (place: number): number => 15 + Math.abs(place - steps / 2) / 10;
    expect(lag(dip, dip)).toBe('cylinder');
    expect(lag(hat, dip)).toBe('behind');
    expect(lag(hat, (place) => hat(place) / 20)).toBe('behind');
  });
});

describe('the time off the lower flank', () => {
  const trace = (angle: Float64Array, lift: Float64Array): RingTrace => traceOf({ angle, lift });
  const turns = list(-1, 0, 0.5, 1, 3).map((part) => part * Math.PI);
  it('is counted from the step in which the ring leaves to that in which it lands', () => {
    expect(timeOffLower(trace(turns, list(0, 0, 2e-5, 0, 0)))).toBeCloseTo(0.25, 14);
    expect(timeOffLower(trace(turns, list(0, 1e-5, 1e-5, 1e-5, 0)))).toBeCloseTo(1, 14);
  });
  it('is nothing for a ring that stays down, and all of it for one that never comes down', () => {
    expect(timeOffLower(trace(turns, list(0, 0, 0, 0, 0)))).toBe(0);
    expect(timeOffLower(trace(turns, list(1, 1, 1, 1, 1)))).toBeCloseTo(1, 14);
  });
});
