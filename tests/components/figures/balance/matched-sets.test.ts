import { describe, expect, it } from 'vitest';
import { partMatching } from '../../../../src/calculators/balance/part-matching.ts';
import { demoWork } from '../../../../src/components/calculator/demo-work.ts';
import {
  isInTenths,
  matchedSets,
  pinWords,
  reachOf,
  type Matched,
} from '../../../../src/components/figures/balance/matched-sets.ts';

const { baseline } = demoWork(partMatching).sets;

function matched(change: Readonly<Record<string, unknown>> = {}): Matched {
  const input = { ...baseline.input, ...change } as typeof baseline.input;
  const found = matchedSets({ input, output: baseline.output, stale: false });
  if (found === undefined) throw new Error('The example has all numbers.');
  return found;
}
const sum = (masses: readonly number[]): number => masses.reduce((all, mass) => all + mass, 0);

describe('matched sets', () => {
  it('are those of the results, each part in one of them', () => {
    const { sets, kinds, spread, listedSpread, isLeast, unproved } = matched();
    expect(spread).toBe(baseline.output?.['spread']);
    expect(listedSpread).toBe(baseline.output?.['listedSpread']);
    expect([isLeast, unproved]).toEqual([true, 0]);
    expect(kinds).toEqual(['pistonMasses', 'pinMasses', 'smallEndMasses']);
    for (const [kind] of kinds.entries())
      expect(sets.map(({ parts }) => parts[kind] ?? 0).toSorted((a, b) => a - b)).toEqual([
        1, 2, 3, 4, 5, 6, 7, 8,
      ]);
    // Putting parts together otherwise makes no mass.
    expect(sum(sets.map(({ total }) => total))).toBeCloseTo(
      sum(sets.map(({ listed }) => listed)),
      12,
    );
  });

  it('lose what they are above the lightest and the spread wanted', () => {
    const { sets, lightest } = matched({ targetSpread: 0.0001 });
    for (const { total, off } of sets)
      expect(off).toBeCloseTo(Math.max(0, total - lightest - 0.0001), 12);
    expect(Math.max(...sets.map(({ off }) => off))).toBeCloseTo(0.0002, 9);
  });

  it('have two rods on a pin, each rod on one, and none where there is nothing to choose', () => {
    const { pins } = matched();
    const rods = pins.flatMap((pin) => pin.rods);
    expect(rods.toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(pins.map(pinWords)[0]).toMatch(/^\d \+ \d$/);
    expect(matched({ rodsPerPin: 1 }).pins).toEqual([]);
    expect(matched({ bigEndMasses: undefined }).pins).toEqual([]);
  });

  it('of banks keep pistons and rods on their side, and a pin takes a rod of each', () => {
    const { sets, pins } = matched({ partBanks: 'halves' });
    for (const { parts } of sets) expect((parts[0] ?? 0) <= 4).toBe((parts[2] ?? 0) <= 4);
    for (const { rods } of pins) expect(rods.filter((rod) => rod < 4)).toHaveLength(1);
  });

  it('are shown in tenths of a gram where they were weighed so', () => {
    expect(isInTenths(matched())).toBe(true);
    const fine = matched({ pistonMasses: [0.42805, ...Array<number>(7).fill(0.428)] });
    expect(isInTenths(fine)).toBe(false);
  });

  it('are drawn from the lowest mark to the highest, the spread wanted among them', () => {
    const [low, high] = reachOf([matched()]);
    expect(low).toBeLessThan(0);
    expect(high).toBeGreaterThanOrEqual(0.0005);
  });

  it('are not drawn while a number is missing or refused', () => {
    const input = { ...baseline.input, pinMasses: [0.1] };
    for (const each of [undefined, {}, input])
      expect(matchedSets({ input: each, output: undefined, stale: false })).toBeUndefined();
  });
});
