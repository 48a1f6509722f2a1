import { seededRandom } from '../math/random.ts';
import type { Masses } from './matching-bound.ts';

/** Which part of a list each set holds: its place in the list. */
export type Order = readonly number[];

/** Parts of one kind, one for each cylinder. */
export interface PartList {
  /** [kg] */
  readonly masses: Masses;
  /** The bank that each part fits; absent where every part fits every cylinder. */
  readonly banks?: readonly number[] | undefined;
}

/** What was found: an order for each list, and the totals [kg] of the sets that they make. */
export interface Found {
  readonly orders: readonly Order[];
  readonly totals: Masses;
}

/** More orders than this are not tried one by one; those of eight parts are as many. */
const most = 40_320;
/** Rounds of the search that goes on from the best found. */
const rounds = 3000;

/** Greatest less least. */
export function spreadOf(masses: Masses): number {
  return Math.max(...masses) - Math.min(...masses);
}

/** The total of each set [kg]. */
export function totalsOf(lists: readonly PartList[], orders: readonly Order[]): number[] {
  return (orders[0] ?? []).map((_, set) =>
    lists.reduce((sum, { masses }, list) => sum + at(masses, at(orders[list] ?? [], set)), 0),
  );
}

/** An entry that is there by construction; NaN, which no result survives, where it is not. */
function at(numbers: readonly number[], place: number): number {
  return numbers[place] ?? Number.NaN;
}

/** Places of a list, together where they may be exchanged: all of them, or bank by bank. */
function classesOf(count: number, banks: readonly number[] | undefined): readonly number[][] {
  const places = Array.from({ length: count }, (_, place) => place);
  const names = [...new Set(banks ?? [0])];
  return names.map((bank) => places.filter((place) => (banks?.[place] ?? bank) === bank));
}

/** For each class of sets the parts of a list that may go there. `bankOfSet` is the bank of each set. */
function choices(list: PartList, bankOfSet: readonly number[] | undefined) {
  const { masses, banks } = list;
  if (banks === undefined || bankOfSet === undefined) {
    const [all = []] = classesOf(masses.length, undefined);
    return [{ sets: all, parts: all }];
  }
  return classesOf(masses.length, bankOfSet).map((sets) => ({
    sets,
    parts: banks.flatMap((bank, part) => (bank === bankOfSet[sets[0] ?? 0] ? [part] : [])),
  }));
}

/**
 * The order of one list that goes best with what the sets weigh without it: the lightest part to the heaviest set,
 * bank by bank where parts fit one bank only. It makes the heaviest total as light and the lightest as heavy as any
 * order can, both at once, since exchanging two parts of any other order widens no gap; so the spread is least.
 *
 * @param rest the total of each set without this list [kg]
 */
function bestOrder(list: PartList, rest: Masses, bankOfSet: readonly number[] | undefined): Order {
  const order: number[] = rest.map(() => Number.NaN);
  for (const { sets, parts } of choices(list, bankOfSet)) {
    const heavyFirst = sets.toSorted((a, b) => at(rest, b) - at(rest, a));
    const lightFirst = parts.toSorted((a, b) => at(list.masses, a) - at(list.masses, b));
    heavyFirst.forEach((set, rank) => (order[set] = at(lightFirst, rank)));
  }
  return order;
}

/** Every order of a list that its banks allow. */
function* everyOrder(list: PartList, bankOfSet: readonly number[] | undefined): Generator<Order> {
  const order: number[] = list.masses.map(() => Number.NaN);
  const groups = choices(list, bankOfSet);
  function* fill(group: number, rank: number, free: readonly number[]): Generator<Order> {
    const { sets = [], parts = [] } = groups[group] ?? {};
    const set = sets[rank];
    if (set === undefined) {
      if (group + 1 >= groups.length) yield [...order];
      else yield* fill(group + 1, 0, groups[group + 1]?.parts ?? []);
      return;
    }
    for (const part of rank === 0 ? parts : free) {
      order[set] = part;
      yield* fill(
        group,
        rank + 1,
        (rank === 0 ? parts : free).filter((each) => each !== part),
      );
    }
  }
  yield* fill(0, 0, groups[0]?.parts ?? []);
}

function factorial(n: number): number {
  return n < 2 ? 1 : n * factorial(n - 1);
}

/** How many orders a list has. */
function countOrders(list: PartList, bankOfSet: readonly number[] | undefined): number {
  return choices(list, bankOfSet).reduce((count, { parts }) => count * factorial(parts.length), 1);
}

const without = (totals: Masses, { masses }: PartList, order: Order): Masses =>
  totals.map((total, set) => total - at(masses, at(order, set)));

/**
 * The best of all orders. The first list stays as it is, since only who goes with whom counts; the last is put in
 * its best order, so that only those in between are tried.
 *
 * @returns undefined when they are too many
 */
export function tryAll(lists: readonly PartList[], enough: number): Found | undefined {
  const [first, ...others] = lists;
  if (first === undefined) return undefined;
  const bankOfSet = first.banks;
  const between = others.slice(0, -1);
  if (between.reduce((count, list) => count * countOrders(list, bankOfSet), 1) > most)
    return undefined;
  const last = others.at(-1);
  const identity = first.masses.map((_, set) => set);
  let best: Found = { orders: lists.map(() => identity), totals: [] };
  let least = Infinity;
  function go(orders: readonly Order[]): void {
    if (least <= enough) return;
    const list = between[orders.length - 1];
    if (list !== undefined) {
      for (const order of everyOrder(list, bankOfSet)) go([...orders, order]);
      return;
    }
    const rest = totalsOf(lists.slice(0, orders.length), orders);
    const whole = last === undefined ? orders : [...orders, bestOrder(last, rest, bankOfSet)];
    const totals = totalsOf(lists, whole);
    const spread = spreadOf(totals);
    if (spread < least) [best, least] = [{ orders: whole, totals }, spread];
  }
  go([identity]);
  return best;
}

/**
 * A good matching of many parts: from the best found so far a few parts are exchanged by lot, and the lists are put
 * in their best order one after the other until none gains; again and again, always with the same lots.
 *
 * @param enough a spread [kg] that nothing can fall below, at which it ends
 */
export function search(lists: readonly PartList[], enough: number): Found {
  const bankOfSet = lists[0]?.banks;
  const random = seededRandom(lists.length);
  const draw = (count: number): number => Math.floor(random() * count);

  function settle(start: readonly Order[]): Found {
    let orders = [...start];
    let totals = totalsOf(lists, orders);
    for (let before = Infinity; spreadOf(totals) < before;) {
      before = spreadOf(totals);
      for (const [place, list] of lists.entries()) {
        if (place === 0) continue;
        const rest = without(totals, list, orders[place] ?? []);
        orders = orders.with(place, bestOrder(list, rest, bankOfSet));
        totals = totalsOf(lists, orders);
      }
    }
    return { orders, totals };
  }
  function shaken(orders: readonly Order[]): readonly Order[] {
    const place = 1 + draw(lists.length - 1);
    const list = lists[place];
    if (list === undefined) return orders;
    const order = [...(orders[place] ?? [])];
    for (let times = 1 + draw(3); times > 0; times -= 1) {
      const groups = choices(list, bankOfSet);
      const { sets } = groups[draw(groups.length)] ?? { sets: [] };
      const [a, b] = [at(sets, draw(sets.length)), at(sets, draw(sets.length))];
      [order[a], order[b]] = [at(order, b), at(order, a)];
    }
    return orders.with(place, order);
  }

  const start = lists.map((list) => bestOrder(list, list.masses, bankOfSet));
  let best = settle(
    start.with(
      0,
      (lists[0]?.masses ?? []).map((_, set) => set),
    ),
  );
  for (let round = 0; round < rounds && spreadOf(best.totals) > enough; round += 1) {
    const next = settle(shaken(best.orders));
    if (spreadOf(next.totals) <= spreadOf(best.totals)) best = next;
  }
  return best;
}
