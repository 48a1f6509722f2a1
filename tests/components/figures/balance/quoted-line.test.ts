import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bobweightImplied } from '../../../../src/calculators/balance/bobweight-implied.ts';
import {
  lineDomain,
  quotedLine,
  standingOf,
  type QuotedLine,
} from '../../../../src/components/figures/balance/quoted-line.ts';

const input = {
  bobweight: 1.7,
  pistonMass: 0.43,
  pinMass: 0.12,
  rodMass: 0.6,
  ringMass: 0.04,
  lockMass: 0.002,
  shellMass: 0.04,
  oilMass: 0.004,
  rodsPerPin: 2,
  reciprocatingFraction: 0.5,
};

function lineOf(change: Partial<typeof input> = {}): QuotedLine {
  const given = { ...input, ...change };
  const line = quotedLine({ input: given, output: bobweightImplied.compute(given), stale: false });
  if (line === undefined) throw new Error('There is a line.');
  return line;
}

describe('the line of a quoted bobweight', () => {
  it('holds what the parts give, by hand', () => {
    // Two rods: shells and 0.6 of the rod in full, and half of 0.4 of it and of all that reciprocates; and the oil.
    const low = 2 * (0.04 + 0.36 + 0.5 * (0.24 + 0.592)) + 0.004;
    const { common, possible, unsaid } = lineOf();
    expect(common[0]).toBeCloseTo(low, 12);
    expect(common[1] - common[0]).toBeCloseTo(2 * 0.5 * 0.2 * 0.6, 12);
    expect(possible[1] - possible[0]).toBeCloseTo(2 * 0.5 * 0.6, 12);
    // A third of the shells and half of rings and locks, twice, and of the oil.
    expect(unsaid).toBeCloseTo((2 * (0.04 + 0.5 * 0.042) + 0.004) / 3, 12);
  });
  it('has the quoted bobweight where its share says', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 0.95, noNaN: true }),
        fc.integer({ min: 1, max: 9 }),
        (bobweight, reciprocatingFraction, rodsPerPin) => {
          const line = lineOf({ bobweight, reciprocatingFraction, rodsPerPin });
          const [none, all] = line.possible;
          expect(none + line.share * (all - none)).toBeCloseTo(bobweight, 9);
          expect(standingOf(line) === 'impossible').toBe(!(line.share > 0 && line.share < 1));
        },
      ),
    );
  });
  it('is not drawn while a number is missing', () => {
    const output = bobweightImplied.compute(input);
    expect(quotedLine({ input: { ...input, rodMass: undefined }, output, stale: false })).toBe(
      undefined,
    );
    expect(quotedLine({ input: undefined, output: undefined, stale: true })).toBe(undefined);
  });
});

it('tells a share inside the range from one outside and from one that no rod has', () => {
  const at = (share: number): QuotedLine => ({ ...lineOf(), share });
  expect([0.6, 0.7, 0.8].map((share) => standingOf(at(share)))).toEqual(Array(3).fill('inside'));
  expect([0.59, 0.81].map((share) => standingOf(at(share)))).toEqual(['outside', 'outside']);
  expect([0, 1, -0.3, 4].map((share) => standingOf(at(share)))).toEqual(
    Array(4).fill('impossible'),
  );
});

it('the scale holds both sets with all that is drawn', () => {
  const lines = [lineOf(), lineOf({ bobweight: 9, rodMass: 0.3 })];
  const [from, to] = lineDomain(lines);
  for (const { quoted, possible, common, unsaid } of lines)
    for (const mass of [quoted, ...possible, common[0] - unsaid, common[1] + unsaid]) {
      expect(mass).toBeGreaterThanOrEqual(from);
      expect(mass).toBeLessThanOrEqual(to);
    }
  expect(lineDomain([])).toEqual([0, 1]);
});
