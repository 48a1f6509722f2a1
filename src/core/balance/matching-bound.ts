import { at } from '../math/at.ts';
import type { Masses } from './matching-parts.ts';

/** Rounding of a sum of a few masses [kg]: far below any scale's division. */
export const rounding = 1e-12;

const ascending = (masses: Masses): number[] => masses.toSorted((a, b) => a - b);

/** Sums of the first one, two, three … of a list. */
function running(masses: Masses): readonly number[] {
  let sum = 0;
  return masses.map((mass) => (sum += mass));
}

/**
 * Between which totals any matching lies: its heaviest set weighs at least `heaviest`, its lightest at most
 * `lightest` [kg].
 *
 * Some sets hold the k heaviest parts of one list. Their other parts weigh at least as much as the k lightest of
 * each other list, and the heaviest set is at least as heavy as their mean; so for every list and every k, and
 * likewise from below. With k equal to the number of cylinders it is the mean of all. Own derivation.
 *
 * @param lists one list a kind of part, all of the same length
 */
export function totalsOfAny(lists: readonly Masses[]): {
  readonly heaviest: number;
  readonly lightest: number;
} {
  const up = lists.map((masses) => running(ascending(masses)));
  const down = lists.map((masses) => running(ascending(masses).toReversed()));
  let heaviest = -Infinity;
  let lightest = Infinity;
  const sumAt = (sums: readonly (readonly number[])[], of: number, k: number): number =>
    sums.reduce((sum, each, list) => (list === of ? sum : sum + at(each, k)), 0);
  lists.forEach((masses, list) => {
    masses.forEach((_, k) => {
      const [most, least] = [at(at(down, list), k), at(at(up, list), k)];
      heaviest = Math.max(heaviest, (most + sumAt(up, list, k)) / (k + 1));
      lightest = Math.min(lightest, (least + sumAt(down, list, k)) / (k + 1));
    });
  });
  return { heaviest, lightest };
}

/** Whether a mass is a whole number of divisions, but for what the binary writing of a decimal adds [both kg]. */
function isWhole(mass: number, division: number): boolean {
  const count = mass / division;
  return Math.abs(count - Math.round(count)) < 1e-6;
}

/**
 * A spread [kg] that no matching of these parts can fall below: the difference of the two totals between which any
 * matching lies. Where every mass is a whole number of the scale's divisions every total is one too, so the
 * heaviest and the lightest are counted up and down to the next; two whole totals with the same mean in between
 * differ by a division at least.
 *
 * @param lists one list a kind of part, all of the same length [kg]
 * @param division the scale's smallest division [kg]; 0 when it is not known
 */
export function leastSpread(lists: readonly Masses[], division: number): number {
  const { heaviest, lightest } = totalsOfAny(lists);
  const counted = division > 0 && lists.every((list) => list.every((m) => isWhole(m, division)));
  if (!counted) return heaviest - lightest > rounding ? heaviest - lightest : 0;
  const [least, most] = [
    Math.ceil(heaviest / division - 1e-6),
    Math.floor(lightest / division + 1e-6),
  ];
  return Math.max(0, least - most) * division;
}
