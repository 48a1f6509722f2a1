import { above, atLeast } from '../refuse.ts';

/** The shape of a burn. Angles [rad]: `burnStart` before TDC, `burnDuration` from start to end. */
export interface BurnShape {
  readonly burnStart: number;
  readonly burnDuration: number;
  /** Wiebe's a: at the end 1 − e^−a of the charge is burnt. */
  readonly wiebeEfficiency: number;
  /** Wiebe's m: the greater, the later the burn gets going. */
  readonly wiebeForm: number;
}

/**
 * Share of the charge burnt when the share `z` (0…1) of the duration has passed:
 * x = 1 − exp(−a z^(m+1)) (I. I. Wiebe; J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, §9.2).
 * Zero before the start; after the end it stays at 1 − e^−a (0.9933 for a = 5): the rest does not burn.
 *
 * Throws OutOfDomain unless wiebeEfficiency > 0 and wiebeForm ≥ 0.
 */
export function burntShare(
  shape: Pick<BurnShape, 'wiebeEfficiency' | 'wiebeForm'>,
  z: number,
): number {
  const a = above(shape, 'wiebeEfficiency');
  const m = atLeast(shape, 'wiebeForm');
  return -Math.expm1(-a * Math.min(Math.max(z, 0), 1) ** (m + 1));
}

/**
 * Crank angle [rad from TDC, after it positive] at which half of what burns has burnt:
 * z = (−ln(1 − x)/a)^(1/(m+1)) with x = (1 − e^−a)/2.
 *
 * Throws OutOfDomain unless wiebeEfficiency > 0, wiebeForm ≥ 0 and burnDuration ≥ 0.
 */
export function halfBurntAngle(shape: BurnShape): number {
  const half = burntShare(shape, 1) / 2;
  const z = (-Math.log1p(-half) / shape.wiebeEfficiency) ** (1 / (shape.wiebeForm + 1));
  return z * atLeast(shape, 'burnDuration') - shape.burnStart;
}
