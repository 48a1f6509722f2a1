import { at } from '../math/at.ts';
import { atLeast } from '../refuse.ts';
import { isFew } from './matching-all.ts';
import { leastSpread, rounding } from './matching-bound.ts';
import {
  checkParts,
  partNames,
  type Banks,
  type Masses,
  type PartName,
  type Parts,
} from './matching-parts.ts';
import { prove } from './matching-proof.ts';
import { search, spreadOf, totalsOf, type Order } from './matching-search.ts';

/** Parts put together to sets, one for each cylinder. Sets are counted as the pistons are listed. */
export interface Matching {
  /** Of each kind that was given, which of its parts each set holds. */
  readonly orders: { readonly [N in PartName]?: Order };
  /** What each set weighs [kg]. */
  readonly totals: Masses;
  /** Heaviest set less lightest [kg]. */
  readonly spread: number;
  /** What the parts weigh put together as they were listed [kg]. */
  readonly listed: Masses;
  /** A spread that no matching of these parts falls below [kg]; the spread itself where it is least. */
  readonly bound: number;
  /** True when no matching of these parts has a lesser spread. */
  readonly isLeast: boolean;
}

/** Rounds of the search: where all ways are tried after it, it only spares them when luck has it. */
const fewRounds = 100;
const manyRounds = 1000;

/** How the parts may be put together, and how finely they were weighed. */
export interface Rules {
  /** The scale's smallest division [kg]; 0 when it is not known. */
  readonly scaleResolution: number;
  readonly banks?: Banks;
}

/**
 * @throws RangeError unless every kind bound to banks has a bank for each part, and as many parts for each bank
 */
function checkBanks(banks: Banks, count: number): void {
  const bound = partNames.flatMap((name) => banks[name] ?? []);
  const sizes = partNames.flatMap((name) => banks[name]?.toSorted().join() ?? []);
  if (bound.length !== sizes.length * count || new Set(sizes).size > 1)
    throw new RangeError('every list bound to banks must have as many parts for each bank');
}

/**
 * Puts parts together to one set a cylinder so that the heaviest and the lightest set differ as little as can be
 * (the balanced assignment of S. Martello et al., Operations Research Letters 3, 1984; from memory).
 *
 * Two lists are solved by sorting: the lightest of one with the heaviest of the other. With three and more the
 * question is as hard as numerical three-dimensional matching (M. R. Garey and D. S. Johnson, Computers and
 * Intractability, 1979, SP16; quoted by others). It is searched; where the spread found does not reach
 * {@link leastSpread}, all ways to a lesser one are tried as long as they are few, which eight parts in three lists
 * are. Parts that fit one bank only are exchanged within their bank; that of one kind alone binds nothing, since a
 * set goes to the bank of its part.
 *
 * @throws OutOfDomain for a mass that is not above 0, no piston or more than 16, lists of unlike length, or a
 * division below 0; RangeError for banks that do not go together
 */
export function matchParts(parts: Parts, rules: Rules = { scaleResolution: 0 }): Matching {
  checkParts(parts);
  const { banks = {} } = rules;
  checkBanks(banks, parts.pistonMasses.length);
  const division = atLeast(rules, 'scaleResolution');
  const names = partNames.filter((name) => parts[name] !== undefined);
  const lists = names.map((name) => ({ masses: parts[name] ?? [], banks: banks[name] }));
  const asListed = lists.map(({ masses }) => masses.map((_, place) => place));
  const bound = leastSpread(
    lists.map(({ masses }) => masses),
    division,
  );

  // The sets belong to the banks of the first kind that is bound to any: that list stands first.
  const base = Math.max(
    0,
    lists.findIndex((list) => list.banks !== undefined),
  );
  const turned = lists.toSpliced(base, 1);
  turned.unshift(...lists.slice(base, base + 1));
  const first = search(turned, bound + rounding, isFew(turned) ? fewRounds : manyRounds);
  const isReached = lists.length < 3 || spreadOf(first.totals) <= bound + rounding;
  const { found, isLeast } = isReached ? { found: first, isLeast: true } : prove(turned, first);
  const orders = found.orders.slice(1);
  orders.splice(base, 0, ...found.orders.slice(0, 1));

  const byPiston = inOrderOfFirst(orders);
  const totals = totalsOf(lists, byPiston);
  const spread = spreadOf(totals);
  return {
    orders: Object.fromEntries(names.map((name, place) => [name, at(byPiston, place)])),
    totals,
    spread,
    listed: totalsOf(lists, asListed),
    bound: isLeast ? spread : Math.min(bound, spread),
    isLeast,
  };
}

/** The same sets, counted so that the first list stands as it was given. */
function inOrderOfFirst(orders: readonly Order[]): readonly Order[] {
  const first = at(orders, 0);
  const places = first.map((_, part) => first.indexOf(part));
  return orders.map((order) => places.map((place) => at(order, place)));
}
