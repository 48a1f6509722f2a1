import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { residualUnbalance } from '../../../../src/calculators/balance/residual-unbalance.ts';
import {
  apart,
  gradeMarks,
  gradeName,
  gradesShown,
  logScale,
  rangesOf,
} from '../../../../src/components/figures/balance/grade-scale.ts';
import { evenly } from '../../../evenly.ts';

const input = {
  balanceGrade: 0.0063,
  crankMass: 18,
  bobweightsMass: 5,
  maxSpeed: 880,
  residualA: 6e-5,
  residualB: 7e-5,
  unbalanceFloor: 2e-4,
  bearingSpan: 0.4,
  cgToBearingA: 0.2,
  planeA: -0.19,
  planeB: 0.19,
  balanceRadius: 0.07,
};
const set = (change: Partial<typeof input> = {}) => {
  const given = { ...input, ...change };
  return { input: given, output: residualUnbalance.compute(given), stale: false };
};

describe('the marks of a set', () => {
  it('stand as far from the axis as grade, reading and floor say', () => {
    const marks = gradeMarks(set());
    expect(marks?.permitted).toBeCloseTo(0.0063 / 880, 15);
    // Two floors of 0.2 kg·mm on 23 kg.
    expect(marks?.floor).toBeCloseTo(4e-4 / 23, 15);
    expect(marks?.read).toBeCloseTo((marks?.reached ?? Number.NaN) / 880, 15);
    expect(marks?.mass).toBe(23);
  });

  it('leave out what was not read, and all where a number is missing', () => {
    const { input: given } = set();
    const unread = { ...given, residualA: undefined };
    const output = residualUnbalance.compute(unread);
    const marks = gradeMarks({ input: unread, output, stale: false });
    expect(marks?.read).toBeUndefined();
    expect(marks?.permitted).toBeGreaterThan(0);
    expect(gradeMarks({ input: undefined, output: undefined, stale: true })).toBeUndefined();
  });
});

describe('a logarithmic scale', () => {
  it('makes equal ratios equally long', () => {
    const scale = logScale([1, 100], [0, 200], 20);
    expect([1, 10, 100].map((value) => scale.at(value))).toEqual([0, 100, 200]);
    expect(scale.at(2) - scale.at(1)).toBeCloseTo(scale.at(80) - scale.at(40), 10);
    expect(scale.ticks).toEqual([1, 2, 5, 10, 20, 50, 100]);
  });

  it('keeps tens alone where there is no room for more', () => {
    expect(logScale([0.9, 1100], [300, 0], 50).ticks).toEqual([1, 10, 100, 1000]);
  });

  it('holds every mark of both sets, the floor included', () => {
    const both = [gradeMarks(set()), gradeMarks(set({ maxSpeed: 670, balanceGrade: 0.016 }))];
    const { speeds, distances } = rangesOf(both.filter((marks) => marks !== undefined));
    for (const marks of both) {
      expect(marks?.speed).toBeGreaterThan(speeds[0]);
      expect(marks?.speed).toBeLessThan(speeds[1]);
      for (const distance of [marks?.permitted, marks?.read, marks?.floor]) {
        expect(distance).toBeGreaterThan(distances[0]);
        expect(distance).toBeLessThan(distances[1]);
      }
    }
  });
});

describe('the lines of the grades', () => {
  it('are those that reach the right edge', () => {
    const speeds = logScale([400, 1000], [0, 300], 1);
    const distances = logScale([2e-6, 50e-6], [300, 0], 1);
    // At 1000 rad/s the right edge runs from G 2 to G 50.
    expect(gradesShown(speeds, distances).map(gradeName)).toEqual(['2.5', '6.3', '16', '40']);
  });
});

describe('words beside marks', () => {
  it('stay in order, apart and inside, and where they belong if there is room', () => {
    const places = fc
      .array(evenly(20, 280), { minLength: 1, maxLength: 3 })
      .map((list) => list.toSorted((a, b) => a - b));
    fc.assert(
      fc.property(places, (wanted) => {
        const set = apart(wanted, 16, [20, 280]);
        for (const [i, place] of set.entries()) {
          expect(place).toBeGreaterThanOrEqual(20);
          expect(place).toBeLessThanOrEqual(280);
          const next = set[i + 1];
          if (next !== undefined) expect(next - place).toBeGreaterThanOrEqual(16 - 1e-9);
        }
      }),
    );
    expect(apart([50, 90, 200], 16, [20, 280])).toEqual([50, 90, 200]);
    expect(apart([50, 52, 53], 16, [20, 280])).toEqual([50, 66, 82]);
  });
});
