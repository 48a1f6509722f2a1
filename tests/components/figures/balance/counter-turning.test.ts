import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { partialBalance } from '../../../../src/calculators/balance/partial-balance.ts';
import {
  angleOf,
  arrow,
  forcesOf,
  greatestOf,
  spotAt,
  spreadRound,
} from '../../../../src/components/figures/balance/counter-turning.ts';
import { demoWork } from '../../../../src/components/calculator/demo-work.ts';
import { length, type Vector } from '../../../../src/core/balance/vectors.ts';

const { input, output } = demoWork(partialBalance).sets.baseline;

describe('the arrows of a set', () => {
  it('are those of its numbers', () => {
    const forces = forcesOf(input, 1);
    expect(length(forces?.forward ?? { along: 0, across: 0 })).toBeCloseTo(
      Number(output?.['forward']),
      6,
    );
  });

  it('are none while a number is missing', () => {
    expect(forcesOf({ ...input, stroke: 'none' }, 1)).toBeUndefined();
    expect(forcesOf(undefined, 1)).toBeUndefined();
    expect(greatestOf(undefined, true)).toBe(0);
  });

  it('are never longer than the greatest, at any angle, factor, bank and number of rods', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -7, max: 7, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: Math.PI, noNaN: true }),
        fc.constantFrom(1, 2),
        (angle, reciprocatingFraction, bankAngle, rodsPerPin) => {
          const numbers = { ...input, reciprocatingFraction, bankAngle, rodsPerPin };
          const forces = forcesOf(numbers, angle);
          if (forces === undefined) throw new Error('The example has all numbers.');
          const { pulls, forward, backward, counterweight, left } = forces;
          const longest = (...more: readonly Vector[]): number =>
            Math.max(...[forward, ...backward, ...more].map(length));
          // A sum of forces is rounded; a part in 10¹² of them is nothing.
          const most = 1 + 1e-12;
          expect(longest(...pulls)).toBeLessThanOrEqual(greatestOf(numbers, false) * most);
          expect(longest(counterweight, left)).toBeLessThanOrEqual(
            greatestOf(numbers, true) * most,
          );
        },
      ),
    );
  });
});

describe('an arrow', () => {
  it('points where its force does, with its tip at its size', () => {
    expect(angleOf({ along: 0, across: 2 })).toBeCloseTo(Math.PI / 2, 12);
    const { x, y } = spotAt(10, Math.PI / 2);
    expect(x).toBeCloseTo(10, 12);
    expect(y).toBeCloseTo(0, 12);
    expect(arrow(50, 0, 5)).toEqual({
      line: 'M0 0L0 -36',
      head: 'M0 -50L5 -36L-5 -36z',
    });
  });

  it('shorter than its head is a smaller head, and next to nothing is none', () => {
    expect(arrow(7, 0, 5).head).toBe('M0 -7L2.5 0L-2.5 0z');
    expect(arrow(0.5, 0, 5)).toEqual({ line: '', head: '' });
  });
});

describe('words round a ring', () => {
  const apart = 0.62;
  const angles = fc.array(fc.double({ min: -7, max: 7, noNaN: true }), {
    minLength: 1,
    maxLength: 5,
  });

  function gaps(places: readonly number[]): readonly number[] {
    const sorted = places.toSorted((one, other) => one - other);
    return sorted.map((place, at) => {
      const next = sorted[at + 1];
      return next === undefined ? (sorted[0] ?? 0) + 2 * Math.PI - place : next - place;
    });
  }

  it('stand apart', () => {
    fc.assert(
      fc.property(angles, (some) => {
        const places = spreadRound(some, apart);
        expect(places).toHaveLength(some.length);
        // It is approached in steps that halve; what is left after sixty is less than the eye sees.
        for (const gap of gaps(places)) expect(gap).toBeGreaterThan(apart - 0.02);
      }),
    );
  });

  it('stay where they are when they are apart', () => {
    const places = spreadRound([5, 0.1, 2], apart);
    for (const [at, angle] of [5, 0.1, 2].entries()) expect(places[at]).toBeCloseTo(angle, 12);
  });

  it('make way to both sides alike', () => {
    const [one = 0, other = 0] = spreadRound([1, 1], apart);
    expect(other - one).toBeCloseTo(apart, 9);
    expect(one + other).toBeCloseTo(2, 9);
  });
});
