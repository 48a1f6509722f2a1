import { wholeRods } from '../../core/balance/bobweight.ts';
import type { Masses, Parts } from '../../core/balance/matching-parts.ts';
import { matchParts, type Matching } from '../../core/balance/part-matching.ts';
import { pairOnPins } from '../../core/balance/pin-partners.ts';
import type { Absent } from '../define.ts';

/** What a matching turns on, by the names of the dictionary. */
export interface ToMatch extends Parts {
  readonly scaleResolution: number;
  readonly partBanks: 'any' | 'halves';
}

/** The bank of each cylinder where the first half of each list is one bank, and the other half the other. */
export function halvesOf(count: number): readonly number[] {
  return Array.from({ length: count }, (_, place) => (place < count / 2 ? 0 : 1));
}

/**
 * The last matching of each list of pistons: what else is typed on the page, swept or solved for leaves the parts as
 * they are, and a search takes longer than all the rest. An entry goes with its list.
 */
const last = new WeakMap<Masses, { readonly of: ToMatch; readonly matching: Matching }>();
const names = [
  'pinMasses',
  'smallEndMasses',
  'ringMasses',
  'bigEndMasses',
  'scaleResolution',
  'partBanks',
] as const;

/**
 * The parts of one set of the notebook put together, pistons and rods in their banks where that is chosen.
 *
 * @throws OutOfDomain as `matchParts`
 */
export function matchingOf(given: ToMatch): Matching {
  const { pistonMasses, scaleResolution } = given;
  const known = last.get(pistonMasses);
  if (known !== undefined && names.every((name) => known.of[name] === given[name]))
    return known.matching;
  const halves = halvesOf(pistonMasses.length);
  const banks =
    given.partBanks === 'halves' && given.smallEndMasses !== undefined
      ? { pistonMasses: halves, smallEndMasses: halves }
      : {};
  const matching = matchParts(given, { scaleResolution, banks });
  last.set(pistonMasses, { of: { ...given }, matching });
  return matching;
}

/** The rods on one crankpin, by their places in the list, and the mass of their big ends [kg]. */
export interface OnPin {
  readonly rods: readonly number[];
  readonly total: number;
}

/** Rods on a pin that partners are chosen for. */
const mostRods = 2;

/**
 * Which rods share a pin. Single rods stay as they are; of two the heavy big end goes with the light one, each from
 * another bank where the banks may not be exchanged.
 *
 * @throws OutOfDomain for a number of rods on a pin that is not whole
 */
export function pinsOf(
  given: ToMatch & { readonly rodsPerPin: number },
  { orders }: Matching,
): readonly OnPin[] | Absent {
  const { bigEndMasses: ends } = given;
  const rodsOnPin = wholeRods(given, 9);
  if (ends === undefined) return { absent: 'Weigh the big ends too.' };
  if (rodsOnPin > mostRods) return { absent: 'Partners are chosen for two rods on a pin.' };
  if (rodsOnPin === 1) return ends.map((total, rod) => ({ rods: [rod], total }));
  if (ends.length % 2 === 1) return { absent: 'An odd number of rods does not go on pins by two.' };
  const rodOfSet = orders.smallEndMasses ?? ends.map((_, rod) => rod);
  const bySet = rodOfSet.map((rod) => ends[rod] ?? Number.NaN);
  const banks = given.partBanks === 'halves' ? halvesOf(ends.length) : undefined;
  return pairOnPins({ bigEndMasses: bySet }, banks).map(({ sets, total }) => ({
    rods: sets.map((set) => rodOfSet[set] ?? set),
    total,
  }));
}
