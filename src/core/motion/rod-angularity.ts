import { finite } from '../refuse.ts';
import { linkage, type SliderCrank } from './slider-crank.ts';

/** How far a rod leans and what it makes of a force along the bore. Angles in rad, thrust as a share of that force. */
export interface RodLean {
  /** Between rod and bore; a size where the stroke is named, else signed as the crankpin lies to the right (+). */
  readonly lean: number;
  /** Force across the bore over force along it: tan of the lean. */
  readonly thrust: number;
}

/** The rod at one place of the stroke, with the crank angle [rad] from true TDC at which it stands so. */
export interface GreatestLean extends RodLean {
  readonly crankAngle: number;
}

function leanOf(sine: number): RodLean {
  return { lean: Math.asin(sine), thrust: sine / Math.sqrt((1 - sine) * (1 + sine)) };
}

/**
 * The rod at a crank angle [rad] from true TDC: sin φ = (r sin ψ − e)/l with ψ counted from the line of the bore,
 * and the side thrust tan φ of a force of one along the bore.
 *
 * Source: R. S. Khurmi, J. K. Gupta, Theory of Machines, 14th ed. 2009, §15.6 (side thrust F_N = F_P tan φ). Left
 * out: friction and the rod's own inertia, which bring a couple of their own.
 *
 * Throws OutOfDomain as {@link linkage} does, and for a crank angle that is not finite.
 */
export function rodLean(geometry: SliderCrank & { readonly crankAngle: number }): RodLean {
  const { r, l, e, psiTop } = linkage(geometry);
  return leanOf((r * Math.sin(finite(geometry, 'crankAngle') + psiTop) - e) / l);
}

/**
 * The greatest lean on the way down and on the way up. The crank stands square to the bore there, whatever the
 * rod's length; an offset takes from one stroke what it gives to the other: sin φ = (r ∓ e)/l.
 *
 * Throws OutOfDomain as {@link linkage} does.
 */
export function greatestLeans(geometry: SliderCrank): {
  readonly down: GreatestLean;
  readonly up: GreatestLean;
} {
  const { r, l, e, psiTop } = linkage(geometry);
  return {
    down: { ...leanOf((r - e) / l), crankAngle: Math.PI / 2 - psiTop },
    up: { ...leanOf((r + e) / l), crankAngle: (3 / 2) * Math.PI - psiTop },
  };
}
