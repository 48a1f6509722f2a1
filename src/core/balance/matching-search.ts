import { at } from '../math/at.ts';
import { seededRandom } from '../math/random.ts';
import type { Masses } from './matching-parts.ts';

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

/** Greatest less least. */
export function spreadOf(masses: Masses): number {
  return Math.max(...masses) - Math.min(...masses);
}

/** The total of each set [kg]. */
export function totalsOf(lists: readonly PartList[], orders: readonly Order[]): number[] {
  return at(orders, 0).map((_, set) =>
    lists.reduce((sum, { masses }, list) => sum + at(masses, at(at(orders, list), set)), 0),
  );
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
export function bestOrder(
  list: PartList,
  rest: Masses,
  bankOfSet: readonly number[] | undefined,
): Order {
  const order: number[] = rest.map(() => Number.NaN);
  for (const { sets, parts } of choices(list, bankOfSet)) {
    const heavyFirst = sets.toSorted((a, b) => at(rest, b) - at(rest, a));
    const lightFirst = parts.toSorted((a, b) => at(list.masses, a) - at(list.masses, b));
    heavyFirst.forEach((set, rank) => (order[set] = at(lightFirst, rank)));
  }
  return order;
}

/** Whether a part may go to a set: always, unless both the list and the sets are bound to banks. */
export function fits(
  { banks }: PartList,
  part: number,
  bankOfSet: readonly number[] | undefined,
  set: number,
): boolean {
  return banks === undefined || bankOfSet === undefined || banks[part] === bankOfSet[set];
}

function factorial(n: number): number {
  return n < 2 ? 1 : n * factorial(n - 1);
}

/** How many orders a list has. */
export function countOrders(list: PartList, bankOfSet: readonly number[] | undefined): number {
  return choices(list, bankOfSet).reduce((count, { parts }) => count * factorial(parts.length), 1);
}

const without = (totals: Masses, { masses }: PartList, order: Order): Masses =>
  totals.map((total, set) => total - at(masses, at(order, set)));

/**
 * A good matching of many parts: from the best found so far a few parts are exchanged by lot, and the lists are put
 * in their best order one after the other until none gains; again and again, always with the same lots.
 *
 * @param enough a spread [kg] that nothing can fall below, at which it ends
 * @param rounds how often it goes on from there
 */
export function search(lists: readonly PartList[], enough: number, rounds: number): Found {
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
        const rest = without(totals, list, at(orders, place));
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
    const order = [...at(orders, place)];
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
  let current = best;
  for (let round = 0; round < rounds && spreadOf(best.totals) > enough; round += 1) {
    const next = settle(shaken(current.orders));
    // A little worse is taken at first, so that it does not stay in the first hollow.
    const patience = 1 + 0.5 * (1 - round / rounds);
    if (spreadOf(next.totals) <= spreadOf(current.totals) * patience) current = next;
    if (spreadOf(next.totals) < spreadOf(best.totals)) best = next;
  }
  return best;
}
