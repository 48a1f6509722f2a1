import { at } from '../math/at.ts';
import { tryAll } from './matching-all.ts';
import { totalsOfAny } from './matching-bound.ts';
import {
  fits,
  spreadOf,
  totalsOf,
  type Found,
  type Order,
  type PartList,
} from './matching-search.ts';

/** Parts tried in all before the question is left open: some tens of milliseconds. */
const mostTries = 600_000;
/** Totals that differ by less are the same [kg]: far below any scale's division, far above rounding. */
const fine = 1e-9;

/** What the trial of all ways has shown. */
export interface Proof {
  readonly found: Found;
  /** True when no matching has a lesser spread; false when there were too many ways to try. */
  readonly isLeast: boolean;
}

/**
 * Every total that a set can have between two masses, lightest first. Only the lightest set's total must be tried,
 * and it is one of these.
 */
function possibleTotals(lists: readonly PartList[], from: number, to: number): readonly number[] {
  const sums = lists.reduce<readonly number[]>(
    (all, { masses }) => distinct(all.flatMap((sum) => masses.map((mass) => sum + mass))),
    [0],
  );
  return sums.filter((sum) => sum >= from - fine && sum <= to + fine);
}

function distinct(sums: readonly number[]): readonly number[] {
  const sorted = sums.toSorted((a, b) => a - b);
  return sorted.filter((sum, place) => place === 0 || sum - at(sorted, place - 1) > fine);
}

/**
 * Puts sets together one after the other, with every total from `least` to `most` [kg], and goes back where a part
 * fits no longer.
 *
 * @param budget tries that are left; it is counted down
 * @returns the orders, `undefined` where there is no such matching or the budget has run out
 */
function within(
  lists: readonly PartList[],
  least: number,
  most: number,
  budget: { left: number },
): readonly Order[] | undefined {
  const [first, ...others] = lists;
  if (first === undefined) return undefined;
  const { masses } = first;
  const middle = masses.reduce((sum, mass) => sum + mass, 0) / masses.length;
  // The piston farthest from the mean has the fewest partners.
  const sets = masses
    .map((_, set) => set)
    .toSorted((a, b) => Math.abs(at(masses, b) - middle) - Math.abs(at(masses, a) - middle));
  const taken = others.map(() => masses.map(() => false));
  const orders = others.map(() => masses.map(() => Number.NaN));
  /** The lightest and the heaviest that the lists from one on can add. */
  const rest = [...others, undefined].map((_, from) => {
    const add = (end: (...masses: number[]) => number): number =>
      others.slice(from).reduce((sum, list) => sum + end(...list.masses), 0);
    return { lightest: add(Math.min), heaviest: add(Math.max) };
  });

  /** Gives the set of this rank its part of this list, and all that follows. */
  function put(rank: number, place: number, total: number): boolean {
    const set = sets[rank];
    if (set === undefined) return true;
    const list = others[place];
    const { lightest, heaviest } = at(rest, place);
    if (total + heaviest < least - fine || total + lightest > most + fine) return false;
    if (list === undefined) return put(rank + 1, 0, at(masses, sets[rank + 1] ?? 0));
    const [used, order] = [at(taken, place), at(orders, place)];
    let before = Number.NaN;
    for (const part of list.masses.keys()) {
      if (used[part] === true) continue;
      if (!fits(list, part, first?.banks, set)) continue;
      const mass = at(list.masses, part);
      // A part of the same mass as the one just tried gives nothing new.
      if (mass === before) continue;
      if ((budget.left -= 1) < 0) return false;
      before = list.banks === undefined ? mass : Number.NaN;
      used[part] = true;
      order[set] = part;
      if (put(rank, place + 1, total + mass)) return true;
      used[part] = false;
    }
    return false;
  }
  return put(0, 0, at(masses, sets[0] ?? 0)) ? [masses.map((_, set) => set), ...orders] : undefined;
}

/**
 * Whether a matching is the best there is. Where the ways are few all are tried. Else all ways to a lesser spread are
 * tried, set by set, each left as soon as a total falls out of the spread that is asked for; where one is found, it
 * goes on from that.
 *
 * @param found a matching, as the search has left it
 */
export function prove(lists: readonly PartList[], found: Found): Proof {
  const all = tryAll(lists);
  if (all !== undefined) return { found: all, isLeast: true };
  const { heaviest, lightest } = totalsOfAny(lists.map(({ masses }) => masses));
  const budget = { left: mostTries };
  let best = found;
  for (;;) {
    const spread = spreadOf(best.totals) - 2 * fine;
    if (spread < 0) return { found: best, isLeast: true };
    const better = possibleTotals(lists, heaviest - spread, lightest)
      .values()
      .map((least) => within(lists, least, least + spread, budget))
      .find((orders) => orders !== undefined);
    if (budget.left < 0) return { found: best, isLeast: false };
    if (better === undefined) return { found: best, isLeast: true };
    best = { orders: better, totals: totalsOf(lists, better) };
  }
}
