import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  depthOfCut,
  matchParts,
  pairOnPins,
  takeOff,
} from '../../../src/core/balance/part-matching.ts';

const grams = (...masses: readonly number[]) => ({ masses: masses.map((mass) => mass / 1000) });
const spread = (totals: readonly number[]): number => Math.max(...totals) - Math.min(...totals);
const ids = (count: number): number[] => Array.from({ length: count }, (_, place) => place);

/** Every order of the places of a list, the slow and plain way. */
function orders(places: readonly number[]): readonly (readonly number[])[] {
  if (places.length < 2) return [places];
  return places.flatMap((first) =>
    orders(places.filter((each) => each !== first)).map((rest) => [first, ...rest]),
  );
}
/** The least spread of all matchings, by trying every order of every list but the first [g]. */
function bruteForce(lists: readonly (readonly number[])[]): number {
  const [first = [], ...others] = lists;
  return others.length === 0
    ? spread(first)
    : Math.min(
        ...orders(ids(first.length)).map((order) => {
          const [second = [], ...rest] = others;
          return bruteForce([
            first.map((mass, set) => mass + (second[order[set] ?? 0] ?? 0)),
            ...rest,
          ]);
        }),
      );
}
/** Lists of whole tenths of a gram, as a scale shows them. */
const lists = (count: number, kinds: number) =>
  fc.array(fc.array(fc.integer({ min: 1000, max: 1040 }), { minLength: count, maxLength: count }), {
    minLength: kinds,
    maxLength: kinds,
  });
const kg = (list: readonly number[]) => ({ masses: list.map((tenths) => tenths / 10_000) });

describe('matching', () => {
  it.each([
    [2, 5],
    [3, 4],
    [4, 3],
    [3, 5],
  ])('of %i lists of %i parts is that of trying everything', (kinds, count) => {
    fc.assert(
      fc.property(lists(count, kinds), (tenths) => {
        const { spread: found, isLeast, bound } = matchParts(tenths.map(kg), 0.0001);
        expect(isLeast).toBe(true);
        // Sums of decimals written in binary.
        expect(10_000 * found).toBeCloseTo(bruteForce(tenths), 6);
        expect(bound).toBeLessThanOrEqual(found + 1e-12);
      }),
      { numRuns: count === 5 && kinds === 3 ? 15 : 60 },
    );
  });

  it('of two lists goes by rank: the lightest pin to the heaviest piston', () => {
    const { orders: found, spread: least } = matchParts([
      grams(430, 428, 429, 431),
      grams(120.3, 120, 120.1, 120.2),
    ]);
    expect(found[1]).toEqual([2, 0, 3, 1]);
    expect(least).toBeCloseTo(0.0027, 12);
  });

  it('never ends above what is listed, nor below the bound', () => {
    fc.assert(
      fc.property(lists(12, 3), (tenths) => {
        const { spread: found, asListed, bound, isLeast } = matchParts(tenths.map(kg), 0.0001);
        expect(found).toBeLessThanOrEqual(asListed + 1e-12);
        expect(bound).toBeLessThanOrEqual(found + 1e-12);
        expect(isLeast).toBe(found <= bound + 1e-12);
      }),
      { numRuns: 8 },
    );
  });

  it('of sixteen parts comes within a division of sets that were made alike', () => {
    const first = ids(16).map((place) => 4200 + ((place * 7) % 16));
    const second = ids(16).map((place) => 1200 + ((place * 5) % 16));
    const third = first.map((mass, set) => 7000 - mass - (second[set] ?? 0));
    const { spread: found, isLeast } = matchParts([first, second, third].map(kg), 0.0001);
    expect(found).toBeLessThan(0.00011);
    expect(isLeast).toBe(found < 0.00005);
  });

  it('counts a bound up to the next division where all masses are whole ones', () => {
    // 3001 tenths of a gram on two sets: one must be a tenth heavier.
    const { bound, isLeast } = matchParts([kg([1000, 1001]), kg([500, 500])], 0.0001);
    expect(bound).toBeCloseTo(0.0001, 12);
    expect(isLeast).toBe(true);
    // A heavy piston cannot be hidden: with the lightest pin it still weighs 20 g more than the other.
    expect(matchParts([grams(450, 420), grams(120, 110)]).bound).toBeCloseTo(0.02, 12);
  });

  it('keeps parts in their bank where two kinds are bound', () => {
    const banks = [0, 1, 0, 1];
    const bound = matchParts([
      { ...grams(430, 400, 431, 401), banks },
      { ...grams(120, 150, 121, 151), banks: [0, 1, 0, 1] },
    ]);
    for (const [set, part] of (bound.orders[1] ?? []).entries()) expect(part % 2).toBe(set % 2);
    expect(bound.totals.map((total) => Math.round(total * 1000))).toEqual([551, 551, 551, 551]);
    // A bank of one kind alone binds nothing: the set goes where its piston goes.
    const free = matchParts([grams(120, 150, 121, 151), { ...grams(430, 400, 431, 401), banks }]);
    expect(free.spread).toBeCloseTo(0, 12);
  });
});

describe('partners on a pin', () => {
  it('are those of trying every pairing', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 6, maxLength: 6 }),
        (masses) => {
          const pairs = pairOnPins(masses);
          const least = Math.min(
            ...orders(ids(6)).map((order) =>
              spread(
                [0, 2, 4].map(
                  (at) => (masses[order[at] ?? 0] ?? 0) + (masses[order[at + 1] ?? 0] ?? 0),
                ),
              ),
            ),
          );
          expect(spread(pairs.map(({ total }) => total))).toBe(least);
          expect(pairs.flatMap(({ sets }) => sets).toSorted()).toEqual(ids(6));
        },
      ),
      { numRuns: 40 },
    );
  });

  it('stand in different banks where there are two', () => {
    const pairs = pairOnPins([10, 20, 30, 41], [0, 0, 1, 1]);
    expect(pairs).toEqual([
      { sets: [1, 2], total: 50 },
      { sets: [0, 3], total: 51 },
    ]);
  });
});

it('takes off what the lightest does not have, and no more than is asked', () => {
  expect(takeOff([10, 12, 15], 1)).toEqual([0, 1, 4]);
  expect(takeOff([10, 12, 15], 5)).toEqual([0, 0, 0]);
});

it('cuts as deep as the metal is light: 2.7 g of aluminium over 1000 mm² is 1 mm', () => {
  expect(depthOfCut({ mass: 0.0027, area: 1000e-6, density: 2700 })).toBeCloseTo(0.001, 12);
});

it.each([
  ['no part', () => matchParts([{ masses: [] }]), /1 to 16; they are 0/],
  ['too many', () => matchParts([grams(...ids(17).map((at) => at + 1))]), /1 to 16; they are 17/],
  ['no mass', () => matchParts([grams(1, 0)]), /greater than 0 kg; it is 0/],
  ['no number', () => matchParts([grams(1, Number.NaN)]), /it is NaN/],
  ['a missing part', () => matchParts([grams(1, 2), grams(1)]), /of 2 parts.*one is of 1/],
  ['a missing bank', () => matchParts([{ ...grams(1, 2), banks: [0] }]), /one is of 1/],
  [
    'other banks',
    () =>
      matchParts([
        { ...grams(1, 2), banks: [0, 1] },
        { ...grams(1, 2), banks: [0, 0] },
      ]),
    /as many parts for each bank/,
  ],
  ['a negative division', () => matchParts([grams(1)], -1), /at least 0 kg; it is -1/],
  ['an odd number on pins', () => pairOnPins([1, 2, 3]), /even; it is 3/],
  ['three banks', () => pairOnPins([1, 2, 3, 4], [0, 0, 1, 2]), /two banks/],
  ['unequal banks', () => pairOnPins([1, 2, 3, 4], [0, 0, 0, 1]), /two banks/],
  ['a pair of no mass', () => pairOnPins([1, 0]), /greater than 0 kg/],
  ['a negative target', () => takeOff([1], -1), /at least 0 kg; it is -1/],
  ['a negative mass', () => depthOfCut({ mass: -1, area: 1, density: 1 }), /at least 0 kg/],
  ['no area', () => depthOfCut({ mass: 1, area: 0, density: 1 }), /area of the cut.*it is 0/],
  ['no density', () => depthOfCut({ mass: 1, area: 1, density: 0 }), /density.*it is 0/],
])('refuses %s', (_what, run, words) => {
  expect(run).toThrow(RangeError);
  expect(run).toThrow(words);
});
