import { above, atLeast, finite } from '../refuse.ts';

/** Poisson's ratio of both metals. 0.02 more or less in one of them changes no pressure by 2 per cent. */
export const fitPoisson = 0.29;

/** A solid slug pressed into a hole. Lengths in m, moduli in Pa. */
export interface PressFit {
  readonly slugDiameter: number;
  /** What the slug is thicker than its hole, on the diameter. */
  readonly slugInterference: number;
  readonly slugModulus: number;
  readonly counterweightModulus: number;
}

/** The same with what warms up: expansions in 1/K, the temperature [K] at which both were measured. */
export interface WarmPressFit extends PressFit {
  readonly slugExpansion: number;
  readonly crankExpansion: number;
  readonly assemblyTemperature: number;
}

/**
 * Hoop stress at the bore of a ring for each Pa of pressure in it: (D² + d²)/(D² − d²). 1 in metal without end.
 *
 * @param bore d [m]
 * @param outside D [m]
 * @throws RangeError for a ring without metal
 */
export function boreFactor(bore: number, outside: number): number {
  if (!(bore > 0 && outside > bore))
    throw new RangeError(`a ring from ${bore} m to ${outside} m has no metal`);
  // Written in d/D, so that metal without end, D = ∞, is answered too.
  const share = (bore / outside) ** 2;
  return (1 + share) / (1 - share);
}

/**
 * Pressure [Pa] between slug and hole for an interference [m] on the diameter; 0 for a gap.
 *
 * p = δ / (d [(q + ν)/E_cw + (1 − ν)/E_W]) with q of {@link boreFactor}: the hole opens and the solid slug is
 * squeezed, and both together are the interference. Plane stress: nothing holds slug or ring along the shaft.
 *
 * @param outside [m] diameter of the ring that the metal around the slug is taken for
 * @throws OutOfDomain for a diameter or a modulus that is not above 0
 * Source: G. Lamé's thick cylinder; as in J. E. Shigley, Mechanical Engineering Design, "Press and Shrink Fits" (from memory).
 */
export function fitPressure(fit: PressFit, outside: number, onDiameter: number): number {
  const d = above(fit, 'slugDiameter');
  const ring = (boreFactor(d, outside) + fitPoisson) / above(fit, 'counterweightModulus');
  const slug = (1 - fitPoisson) / above(fit, 'slugModulus');
  return Math.max(0, onDiameter) / (d * (ring + slug));
}

/**
 * What a temperature [K] takes of the interference [m]: steel grows more than the alloy, d(α_cw − α_W)(T − T₀).
 * Negative below the temperature at which both were measured.
 */
export function interferenceLost(fit: WarmPressFit, temperature: number): number {
  const faster = finite(fit, 'crankExpansion') - finite(fit, 'slugExpansion');
  return above(fit, 'slugDiameter') * faster * (temperature - finite(fit, 'assemblyTemperature'));
}

/**
 * The temperature [K] at which nothing is left of the interference; undefined where the counterweight does not grow
 * faster than the slug.
 *
 * @throws OutOfDomain for an interference below 0
 */
export function looseAt(fit: WarmPressFit): number | undefined {
  const faster = finite(fit, 'crankExpansion') - finite(fit, 'slugExpansion');
  const first = atLeast(fit, 'slugInterference');
  if (!(faster > 0)) return undefined;
  return finite(fit, 'assemblyTemperature') + first / (above(fit, 'slugDiameter') * faster);
}
