import { above } from '../refuse.ts';

/** A swinging thing and a ring on a spring of its own. */
export interface TunedPair {
  /** [kg·m²] What swings without the ring, as it is felt where the ring sits. */
  readonly mainInertia: number;
  /** [Hz] Its natural frequency without the ring. */
  readonly mainFrequency: number;
  /** [kg·m²] */
  readonly ringInertia: number;
}

/** How a ring on a spring and a damper is best tuned. */
export interface BestTuning {
  /** Ring over what swings: μ. */
  readonly ratio: number;
  /** [Hz] Of the ring on its spring, its hub held still: the main frequency over 1 + μ. */
  readonly frequency: number;
  /** [N·m/rad] */
  readonly stiffness: number;
  /** Share of critical damping, 2 J ω at the main frequency: √(3μ/(8(1 + μ)³)). */
  readonly damping: number;
  /** Height of the two peaks over the twist that the same torque makes at rest: √(1 + 2/μ). */
  readonly peak: number;
}

/**
 * The tuning at which both peaks of the main swing are equally high, and the damping that makes them lowest.
 *
 * Viscous damping, one mode alone, a steady torque on the main inertia. Rubber damps otherwise, and warms and ages.
 * @throws OutOfDomain for an inertia or a frequency not above zero
 * Source: J. P. Den Hartog, Mechanical Vibrations, 4th ed., 3.3; damping after J. E. Brock (1946).
 */
export function bestTuning(pair: TunedPair): BestTuning {
  const ring = above(pair, 'ringInertia');
  const ratio = ring / above(pair, 'mainInertia');
  const frequency = above(pair, 'mainFrequency') / (1 + ratio);
  return {
    ratio,
    frequency,
    stiffness: ring * (2 * Math.PI * frequency) ** 2,
    damping: Math.sqrt((3 * ratio) / (8 * (1 + ratio) ** 3)),
    peak: Math.sqrt(1 + 2 / ratio),
  };
}

/**
 * The two frequencies [Hz] into which the main one splits when a ring is hung on by a spring [N·m/rad], undamped:
 * roots of x⁴ − (1 + (1 + μ)f²)x² + f² = 0, with x and the ring’s own f over the main frequency.
 *
 * Their product is that of the two frequencies, so that the lower one is worked from the upper and loses no figure.
 * @throws OutOfDomain as {@link bestTuning}, and for a stiffness not above zero
 * Source: J. P. Den Hartog, Mechanical Vibrations, 4th ed., 3.2.
 */
export function splitFrequencies(pair: TunedPair & { readonly ringStiffness: number }): {
  readonly lower: number;
  readonly upper: number;
} {
  const main = above(pair, 'mainFrequency');
  const ratio = above(pair, 'ringInertia') / above(pair, 'mainInertia');
  const f = ringFrequency(pair) / main;
  const half = (1 + (1 + ratio) * f * f) / 2;
  // half² − f², as a sum of what is never negative.
  const root = Math.sqrt(((1 - (1 + ratio) * f * f) / 2) ** 2 + ratio * f * f);
  const upper = Math.sqrt(half + root);
  return { lower: (main * f) / upper, upper: main * upper };
}

/** [Hz] Of a ring [kg·m²] on its spring [N·m/rad], the hub held still. Throws OutOfDomain unless both are above zero. */
export function ringFrequency(ring: {
  readonly ringInertia: number;
  readonly ringStiffness: number;
}): number {
  return Math.sqrt(above(ring, 'ringStiffness') / above(ring, 'ringInertia')) / (2 * Math.PI);
}
