import { above, atLeast } from '../refuse.ts';
import { rounding } from './matching-bound.ts';
import type { Masses } from './matching-parts.ts';

/**
 * What to take off each set [kg] so that none is heavier than the lightest by more than the spread wanted. Matching
 * is always to the lightest: mass can be taken off and not put on.
 *
 * @param wanted `targetSpread`, the spread that is wanted [kg]
 * @throws OutOfDomain for a spread below 0
 */
export function takeOff(totals: Masses, wanted: { readonly targetSpread: number }): Masses {
  const limit = Math.min(...totals) + atLeast(wanted, 'targetSpread');
  // What rounding alone leaves above the limit is no mass.
  return totals.map((total) => (total - limit > rounding ? total - limit : 0));
}

/**
 * How deep a cut with straight walls takes a mass off: m / (ρ A) [m].
 *
 * @param mass to take off [kg]
 * @param cut `cutArea`, the area that is cut [m²], and `cutDensity`, the density of the metal [kg/m³]
 * @throws OutOfDomain for an area or a density that is not above 0
 */
export function depthOfCut(
  mass: number,
  cut: { readonly cutArea: number; readonly cutDensity: number },
): number {
  return mass / (above(cut, 'cutDensity') * above(cut, 'cutArea'));
}
