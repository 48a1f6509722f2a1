import { describe, expect, it } from 'vitest';
import { matchedCsv } from '../../../../src/components/figures/balance/matched-csv.ts';
import { partMatching } from '../../../../src/calculators/balance/part-matching.ts';
import { demoWork } from '../../../../src/components/calculator/demo-work.ts';
import {
  isInTenths,
  hasShortNames,
  matchedSets,
  partName,
  pinWords,
  reachOf,
  type Matched,
} from '../../../../src/components/figures/balance/matched-sets.ts';
import type { TypedValues } from '../../../../src/notebook/standing.ts';

const { baseline } = demoWork(partMatching).sets;

function matched(change: Readonly<Record<string, unknown>> = {}, typed?: TypedValues): Matched {
  const input = { ...baseline.input, ...change } as typeof baseline.input;
  const found = matchedSets({ input, typed, output: baseline.output, stale: false });
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
    const all = matched();
    const { pins } = all;
    const rods = pins.flatMap((pin) => pin.rods);
    expect(rods.toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(pins.map((pin) => pinWords(all, pin))[0]).toMatch(/^\d \+ \d$/);
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

  it('call a part by its mark, a rod by that of either end, and others by their places', () => {
    const list = { text: '', unit: 'g' };
    const all = matched(
      {},
      {
        pistonMasses: { ...list, marks: ['A', '', 'C'] },
        bigEndMasses: { ...list, marks: ['R1', 'R2', 'R3', 'R4', 'R5', 'R6', 'R7', 'R8'] },
      },
    );
    expect([1, 2, 3, 4].map((place) => partName(all, 'pistonMasses', place))).toEqual([
      'A',
      '2',
      'C',
      '4',
    ]);
    expect(partName(all, 'pinMasses', 5)).toBe('5');
    expect(pinWords(all, { rods: [0, 7], total: 1 })).toBe('R1 + R8');
    expect(hasShortNames(all)).toBe(true);
    expect(hasShortNames({ ...all, marks: { pistonMasses: ['A-100'] } })).toBe(false);
  });

  it('are saved with the mass of every part, by name, and add up', () => {
    const all = matched({}, { pistonMasses: { text: '', unit: 'g', marks: ['=A1'] } });
    const [head = '', ...lines] = matchedCsv([{ set: 'baseline', matched: all }], 'g')
      .trim()
      .split('\r\n');
    const places = (words: string): number => head.split(',').indexOf(words);
    expect(lines).toHaveLength(8);
    // What a spreadsheet would take for a formula is text there.
    expect(lines[0]).toMatch(/^baseline,1,'=A1,/);
    for (const line of lines) {
      const cells = line.split(',');
      const grams = (words: string): number => Number(cells[places(`${words} (g)`)]);
      expect(grams('piston') + grams('pin') + grams('rod')).toBeCloseTo(grams('matched'), 6);
    }
  });

  it('are not drawn while a number is missing or refused', () => {
    const input = { ...baseline.input, pinMasses: [0.1] };
    for (const each of [undefined, {}, input])
      expect(matchedSets({ input: each, output: undefined, stale: false })).toBeUndefined();
  });
});
