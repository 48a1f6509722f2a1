import { at } from '../math/at.ts';
import {
  bestOrder,
  countOrders,
  fits,
  totalsOf,
  type Found,
  type Order,
  type PartList,
} from './matching-search.ts';

/** More orders than this are not tried one by one: eight parts in three lists have 40 320, six in four 518 400. */
const mostOrders = 600_000;

/** Greatest less least of `rest` and `light` put together by rank; `sorted` is room for the rest, heaviest first. */
function spreadByRank(rest: Float64Array, light: Float64Array, sorted: Float64Array): number {
  let [least, greatest] = [Infinity, -Infinity];
  // Sorted by insertion: so few numbers are nowhere sorted faster.
  for (let place = 0; place < rest.length; place += 1) {
    const mass = at(rest, place);
    let rank = place;
    for (; rank > 0 && at(sorted, rank - 1) < mass; rank -= 1) sorted[rank] = at(sorted, rank - 1);
    sorted[rank] = mass;
  }
  for (let rank = 0; rank < rest.length; rank += 1) {
    const total = at(sorted, rank) + at(light, rank);
    if (total < least) least = total;
    if (total > greatest) greatest = total;
  }
  return greatest - least;
}

/** Whether {@link tryAll} tries these: one list after the first fits every cylinder, and the orders of all others are few. */
export function isFew([first, ...others]: readonly PartList[]): boolean {
  const freePlace = others.findIndex(({ banks }) => banks === undefined);
  const counts = others
    .toSpliced(Math.max(0, freePlace), 1)
    .map((list) => countOrders(list, first?.banks));
  return freePlace >= 0 && counts.reduce((all, count) => all * count, 1) <= mostOrders;
}

/**
 * The best of all matchings. The first list stays as it is, since only who goes with whom counts, and one that fits
 * every cylinder is put in its best order at the end; so only the orders of the lists in between are tried.
 *
 * @returns undefined when they are too many, or when every list is bound to banks
 */
export function tryAll(lists: readonly PartList[]): Found | undefined {
  const [first, ...others] = lists;
  const freePlace = others.findIndex(({ banks }) => banks === undefined);
  const free = others[freePlace];
  if (first === undefined || free === undefined || !isFew(lists)) return undefined;
  const between = others.toSpliced(freePlace, 1);

  const sets = first.masses.map((_, set) => set);
  const light = Float64Array.from(free.masses).sort();
  const sorted = new Float64Array(sets.length);
  // What each set weighs with the parts that it has so far, list by list.
  const rests = [first, ...between].map(() => Float64Array.from(first.masses));
  const taken = between.map(() => sets.map(() => false));
  const orders = between.map(() => sets.map(() => Number.NaN));
  let best: readonly Order[] = [];
  let least = Infinity;

  function put(place: number, set: number): void {
    const list = between[place];
    const [before, after] = [rests[place], rests[place + 1]];
    if (list === undefined || before === undefined || after === undefined) {
      const spread = spreadByRank(before ?? sorted, light, sorted);
      if (spread < least) [best, least] = [orders.map((order) => [...order]), spread];
      return;
    }
    if (set === sets.length) {
      put(place + 1, 0);
      return;
    }
    const [used, order] = [at(taken, place), at(orders, place)];
    for (const part of sets) {
      if (used[part] === true || !fits(list, part, first?.banks, set)) continue;
      used[part] = true;
      order[set] = part;
      after[set] = at(before, set) + at(list.masses, part);
      put(place, set + 1);
      used[part] = false;
    }
  }
  put(0, 0);

  const rest = totalsOf([first, ...between], [sets, ...best]);
  const whole = best.toSpliced(freePlace, 0, bestOrder(free, rest, first.banks));
  const all = [sets, ...whole];
  return { orders: all, totals: totalsOf(lists, all) };
}
