import { atLeast, finite } from '../refuse.ts';
import { linkage, postureAt } from '../motion/slider-crank.ts';

/**
 * Samples of one turn for the mean. The function is smooth and periodic, so that equal samples converge
 * faster than any power of their number: 64 give it to 1e-13 up to λ = 0.5.
 */
const samples = 64;

function meanOfTurn(f: (angle: number) => number): number {
  let sum = 0;
  for (let i = 0; i < samples; i++) sum += f((2 * Math.PI * i) / samples);
  return sum / samples;
}

/** What goes up and down in one cylinder: its mass [kg], twice the throw and the rod length [m]. */
export interface SlidingParts {
  readonly mass: number;
  readonly stroke: number;
  readonly rodLength: number;
}

/**
 * Mean over a turn of (piston speed ÷ rω)², exact law: the share of its mass with which a reciprocating part
 * counts at the throw. ½(1 + λ²/4 + …): a little over half. No unit.
 *
 * Throws OutOfDomain unless the rod is longer than half the stroke.
 */
export function reciprocatingShare(geometry: {
  readonly stroke: number;
  readonly rodLength: number;
}): number {
  const link = linkage(geometry);
  return meanOfTurn((angle) => postureAt(link, angle).slope ** 2);
}

/**
 * Torque [N·m] that the reciprocating parts of one cylinder exert on the crank at steady speed `speed`
 * [rad/s] and crank angle `angle` [rad] after TDC; positive drives the crank. Exact law, no offset.
 *
 * The force route: piston speed times inertia force over crank speed, T = −m (v/ω) a. After TDC the piston
 * must be brought up to speed, so the first quarter is negative.
 */
export function inertiaTorque(
  { mass, stroke, rodLength }: SlidingParts,
  angle: number,
  speed: number,
): number {
  const r = stroke / 2;
  const { slope, bend } = postureAt(linkage({ stroke, rodLength }), angle);
  return -mass * r * r * speed * speed * slope * bend;
}

/**
 * What the reciprocating parts of one cylinder amount to as inertia about the crank at one angle [kg·m²]:
 * m (v/ω)². Its rate of change gives {@link inertiaTorque} a second time: T = −½ ω² dI/dθ.
 */
export function equivalentInertia(
  { mass, stroke, rodLength }: SlidingParts,
  angle: number,
): number {
  const link = linkage({ stroke, rodLength });
  return mass * (link.r * postureAt(link, angle).slope) ** 2;
}

/** One turn of the inertia torque of one cylinder, its mean and its size. */
export interface TorqueTurn {
  /** Crank angles [rad], 0 to 2π, both ends included, and the torque at each [N·m]. */
  readonly angles: readonly number[];
  readonly torques: readonly number[];
  /** Mean over the turn [N·m]: zero but for the rounding of the sum. */
  readonly mean: number;
  /** Square root of twice the mean square: the height of a sine of the same effective size [N·m]. */
  readonly amplitude: number;
}

/**
 * The inertia torque of one cylinder's reciprocating parts over a turn at steady speed [rad/s].
 *
 * Its mean is zero for any mass, any rod and any speed: kinetic energy is the same after a turn as before,
 * so that what the parts take from the crank in one part of the turn they give back in another.
 *
 * Throws OutOfDomain for a negative mass, a speed that is no finite number, or a geometry that cannot turn.
 */
export function torqueOfTurn(parts: SlidingParts, speed: number): TorqueTurn {
  const link = linkage(parts);
  const mass = atLeast({ reciprocatingMass: parts.mass }, 'reciprocatingMass');
  const scale = mass * (link.r * finite({ maxSpeed: speed }, 'maxSpeed')) ** 2;
  // One every three degrees: harmonics up to the 119th are integrated exactly.
  const steps = 120;
  const angles: number[] = [];
  const torques: number[] = [];
  let sum = 0;
  let squares = 0;
  for (let i = 0; i <= steps; i++) {
    const angle = (2 * Math.PI * i) / steps;
    const { slope, bend } = postureAt(link, angle);
    const torque = -scale * slope * bend;
    angles.push(angle);
    torques.push(torque);
    if (i === steps) break;
    sum += torque;
    squares += torque * torque;
  }
  return { angles, torques, mean: sum / steps, amplitude: Math.sqrt((2 * squares) / steps) };
}
