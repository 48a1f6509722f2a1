import { leastSpread, type Masses } from './matching-bound.ts';
import { search, spreadOf, tryAll, type Order, type PartList } from './matching-search.ts';

export type { Order, PartList } from './matching-search.ts';

/** Parts put together to sets, one for each cylinder. */
export interface Matching {
  /** For each list, in the order given, which of its parts each set holds. */
  readonly orders: readonly Order[];
  /** What each set weighs [kg]. */
  readonly totals: Masses;
  /** Heaviest set less lightest [kg]. */
  readonly spread: number;
  /** The spread of the parts put together as they were listed [kg]. */
  readonly asListed: number;
  /** A spread that no matching of these parts falls below [kg]. */
  readonly bound: number;
  /** True when no matching of these parts has a lesser spread. */
  readonly isLeast: boolean;
}

/** As many cylinders as the search is made for. */
const mostParts = 16;
/** Rounding of a sum of a few masses [kg]: far below any scale's division. */
const rounding = 1e-12;

/** @throws RangeError unless every mass is a finite number above 0 [kg] */
function checkMasses(masses: Masses): void {
  for (const mass of masses)
    if (!(mass > 0 && mass < Infinity))
      throw new RangeError(`the mass of a part must be greater than 0 kg; it is ${mass}`);
}

function checkLists(lists: readonly PartList[], division: number): void {
  const count = lists[0]?.masses.length ?? 0;
  if (count < 1 || count > mostParts)
    throw new RangeError(`the parts of a list must be 1 to ${mostParts}; they are ${count}`);
  if (!(division >= 0 && division < Infinity))
    throw new RangeError(`the division of the scale must be at least 0 kg; it is ${division}`);
  for (const { masses, banks } of lists) {
    checkMasses(masses);
    for (const { length } of [masses, banks ?? masses])
      if (length !== count)
        throw new RangeError(
          `every list must be of ${count} parts, as the first; one is of ${length}`,
        );
  }
  const bound = lists.flatMap(({ banks }) =>
    banks === undefined ? [] : [banks.toSorted().join()],
  );
  if (new Set(bound).size > 1)
    throw new RangeError('every list bound to banks must have as many parts for each bank');
}

/**
 * Puts parts together to one set a cylinder so that the heaviest and the lightest set differ as little as can be
 * (the balanced assignment of S. Martello et al., Operations Research Letters 3, 1984).
 *
 * Two lists are solved by sorting: the lightest of one with the heaviest of the other. With three and more the
 * question is as hard as numerical three-dimensional matching (M. R. Garey and D. S. Johnson, Computers and
 * Intractability, 1979, SP16): all orders are tried where they are few, as with eight parts in three lists;
 * otherwise it is searched, and `isLeast` is true only when the spread found reaches {@link leastSpread}. Parts that
 * fit one bank only are exchanged within their bank; that of one list alone binds nothing, since a set goes to
 * the bank of its part.
 *
 * @param lists pistons, pins, small ends …: up to 16 parts in each, masses in [kg]
 * @param division the scale's smallest division [kg]; 0 when it is not known
 * @throws RangeError for lists of different lengths, a mass that is not positive, no part or more than 16, or
 * banks that do not go together
 */
export function matchParts(lists: readonly PartList[], division = 0): Matching {
  checkLists(lists, division);
  const asListed = spreadOf(
    (lists[0]?.masses ?? []).map((_, set) =>
      lists.reduce((sum, { masses }) => sum + (masses[set] ?? Number.NaN), 0),
    ),
  );
  const bound = leastSpread(
    lists.map(({ masses }) => masses),
    division,
  );
  const enough = bound + rounding;
  // The sets belong to the banks of the first list that is bound to any.
  const base = Math.max(
    0,
    lists.findIndex(({ banks }) => banks !== undefined),
  );
  const places = lists.map((_, place) => (place === 0 ? base : place <= base ? place - 1 : place));
  const turned = places.flatMap((place) => lists[place] ?? []);
  const all = tryAll(turned, enough);
  const { orders, totals } = all ?? search(turned, enough);
  const spread = spreadOf(totals);
  return {
    orders: lists.map((_, place) => orders[places.indexOf(place)] ?? []),
    totals,
    spread,
    asListed,
    bound: all === undefined ? bound : spread,
    isLeast: all !== undefined || spread <= enough,
  };
}

/** Two sets that share a crankpin, by their places, and their total [kg]. */
export interface Partners {
  readonly sets: readonly [number, number];
  readonly total: number;
}

/**
 * Which two rods go on one crankpin so that the pins' totals differ as little as can be: the heaviest with the
 * lightest, the second heaviest with the second lightest, and so on; with banks, one of each. It makes the heaviest
 * pair as light and the lightest as heavy as any pairing can, by the argument of two lists.
 *
 * @param masses what each set puts on its pin [kg]; an even number of them
 * @param banks the bank of each set, where a pin takes one set of each of two banks
 * @throws RangeError for an odd number, or banks that are not two of the same size
 */
export function pairOnPins(masses: Masses, banks?: readonly number[]): readonly Partners[] {
  checkMasses(masses);
  const half = masses.length / 2;
  if (!Number.isInteger(half))
    throw new RangeError(
      `two sets go on each pin; their number must be even; it is ${masses.length}`,
    );
  const heavyFirst = masses
    .map((_, set) => set)
    .toSorted((a, b) => (masses[b] ?? 0) - (masses[a] ?? 0));
  const isLeft = (set: number, rank: number): boolean =>
    banks === undefined ? rank < half : banks[set] === banks[0];
  const left = heavyFirst.filter(isLeft);
  const right = heavyFirst.filter((set, rank) => !isLeft(set, rank)).toReversed();
  if (left.length !== half || new Set(banks).size > 2)
    throw new RangeError('two banks with as many sets in each must share the pins');
  return left.flatMap((a, pin) => {
    const b = right[pin];
    const total = (masses[a] ?? Number.NaN) + (masses[b ?? a] ?? Number.NaN);
    return b === undefined ? [] : [{ sets: [a, b] as const, total }];
  });
}

/**
 * What to take off each set so that none is heavier than the lightest by more than `target` [kg]. Matching is always
 * to the lightest: mass can be taken off and not put on.
 *
 * @param target the spread that is wanted [kg], at least 0
 */
export function takeOff(totals: Masses, target: number): Masses {
  if (!(target >= 0 && target < Infinity))
    throw new RangeError(`the spread that is wanted must be at least 0 kg; it is ${target}`);
  const limit = Math.min(...totals) + target;
  return totals.map((total) => Math.max(0, total - limit));
}

/**
 * How deep a cut takes a mass off: m / (ρ A) [m].
 *
 * @param cut `mass` to take off [kg], `area` of the cut [m²] and `density` of the metal [kg/m³]
 * @throws RangeError for a negative mass, or an area or density that is not positive
 */
export function depthOfCut(cut: {
  readonly mass: number;
  readonly area: number;
  readonly density: number;
}): number {
  const { mass, area, density } = cut;
  if (!(mass >= 0 && mass < Infinity))
    throw new RangeError(`the mass to take off must be at least 0 kg; it is ${mass}`);
  for (const [name, value] of [
    ['area of the cut', area],
    ['density', density],
  ] as const)
    if (!(value > 0 && value < Infinity))
      throw new RangeError(`the ${name} must be greater than 0; it is ${value}`);
  return mass / (density * area);
}
