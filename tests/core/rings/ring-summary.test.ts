import { describe, expect, it } from 'vitest';
import type { RingTrace } from '../../../src/core/rings/ring-cycle.ts';
import { greatest, least, timeOffLower } from '../../../src/core/rings/ring-summary.ts';

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

describe('the time off the lower flank', () => {
  const none = list();
  const trace = (angle: Float64Array, lift: Float64Array): RingTrace => ({
    ...{ angle, lift, cylinder: none, behind: none, land: none, moves: [] },
    ...{ inflow: 0, outflow: 0, drift: 0, unbooked: 0, work: 0 },
  });
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
