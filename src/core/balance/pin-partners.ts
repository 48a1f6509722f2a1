import { at } from '../math/at.ts';
import { above } from '../refuse.ts';
import type { Masses } from './matching-parts.ts';

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
 * @param rods the big end of each set [kg]; an even number of them
 * @param banks the bank of each set, where a pin takes one set of each of two banks
 * @throws OutOfDomain for a mass that is not above 0; RangeError for an odd number, or banks that are not two of
 * the same size
 */
export function pairOnPins(
  rods: { readonly bigEndMasses: Masses },
  banks?: readonly number[],
): readonly Partners[] {
  const { bigEndMasses: masses } = rods;
  for (const mass of masses) above({ bigEndMasses: mass }, 'bigEndMasses');
  const half = masses.length / 2;
  if (!Number.isInteger(half))
    throw new RangeError(
      `two sets go on each pin; their number must be even; it is ${masses.length}`,
    );
  const heavyFirst = masses.map((_, set) => set).toSorted((a, b) => at(masses, b) - at(masses, a));
  const isLeft = (set: number, rank: number): boolean =>
    banks === undefined ? rank < half : banks[set] === banks[0];
  const left = heavyFirst.filter(isLeft);
  const right = heavyFirst.filter((set, rank) => !isLeft(set, rank)).toReversed();
  if (left.length !== half || new Set(banks).size > 2)
    throw new RangeError('two banks with as many sets in each must share the pins');
  return left.map((a, pin) => {
    const b = at(right, pin);
    return { sets: [a, b], total: at(masses, a) + at(masses, b) };
  });
}
