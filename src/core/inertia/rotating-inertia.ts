import { reciprocatingShare } from './inertia-torque.ts';
import { above, atLeast, below, refusal } from '../refuse.ts';

/** Geometry and masses of the moving parts of an engine whose cylinders are alike; lengths in m, masses in kg. */
export interface MovingParts {
  /** Whole number of cylinders, at least 1. */
  readonly cylinders: number;
  /** Twice the throw. */
  readonly stroke: number;
  readonly rodLength: number;
  readonly pistonMass: number;
  readonly pinMass: number;
  readonly ringMass: number;
  readonly lockMass: number;
  readonly smallEndMass: number;
  readonly bigEndMass: number;
  readonly shellMass: number;
}

/** What turns with the crank and is measured or computed as one inertia each [kg·m²]. */
export interface TurningParts {
  readonly crankInertia: number;
  readonly damperInertia: number;
  readonly clutchInertia: number;
  /** Greater than zero: an engine without a flywheel has its inertia in the clutch or in the damper. */
  readonly flywheelInertia: number;
}

/** The inertia [kg·m²] about the crank's axis, part by part, and its sum. */
export interface EngineInertia {
  readonly crank: number;
  readonly bigEnds: number;
  /** Mean over a turn of what piston, pin, rings, locks and small end amount to. */
  readonly reciprocating: number;
  readonly damper: number;
  readonly clutch: number;
  readonly flywheel: number;
  readonly total: number;
  /** The share with which a mass going up and down counts at the throw; see {@link reciprocatingShare}. */
  readonly share: number;
}

/** Mass [kg] that goes up and down in one cylinder: piston, pin, rings, locks, small end as weighed. */
export function reciprocatingMass(parts: MovingParts): number {
  return (
    atLeast(parts, 'pistonMass') +
    atLeast(parts, 'pinMass') +
    atLeast(parts, 'ringMass') +
    atLeast(parts, 'lockMass') +
    atLeast(parts, 'smallEndMass')
  );
}

function wholeCylinders(engine: { readonly cylinders: number }): number {
  const n = above(engine, 'cylinders');
  if (!Number.isInteger(n)) throw refusal(engine, 'cylinders', 'at least', 1, 'a whole number');
  return n;
}

/**
 * Inertia of an engine about its crank, part by part [kg·m²].
 *
 * Rods' big ends with their shells go round with the crankpin: cylinders × (m_be + m_shell) r². What goes up
 * and down stores ½ m v², which varies over a turn; its mean is that of ½ m r² (1 + λ²/4 + …) held at the
 * crank ("half the reciprocating mass": W. Ker Wilson, Practical Solution of Torsional Vibration Problems, and
 * J. P. Den Hartog, Mechanical Vibrations; both from memory), here by exact quadrature.
 *
 * Neglected: the rod counts as its two weighed ends, which gives m·a·b instead of its own inertia; the true
 * rod has about a fifth less of that part: 0.05 and 0.1 % of the two example engines, mean of a turn.
 * Left out: camshafts, pumps, belts (their inertia times the square of their speed ratio).
 *
 * Throws OutOfDomain for a negative mass or inertia, a flywheel of no inertia, cylinders that are no whole
 * number, or a geometry that cannot turn.
 */
export function engineInertia(parts: MovingParts, turning: TurningParts): EngineInertia {
  const share = reciprocatingShare(parts);
  const square = wholeCylinders(parts) * (parts.stroke / 2) ** 2;
  const crank = atLeast(turning, 'crankInertia');
  const damper = atLeast(turning, 'damperInertia');
  const clutch = atLeast(turning, 'clutchInertia');
  const flywheel = above(turning, 'flywheelInertia');
  const bigEnds = square * (atLeast(parts, 'bigEndMass') + atLeast(parts, 'shellMass'));
  const reciprocating = square * share * reciprocatingMass(parts);
  return {
    crank,
    bigEnds,
    reciprocating,
    damper,
    clutch,
    flywheel,
    total: crank + bigEnds + reciprocating + damper + clutch + flywheel,
    share,
  };
}

/** A flat ring or, with `flywheelInside` = 0, a disc of one material. Lengths in m, density in kg/m³. */
export interface RingDimensions {
  readonly flywheelDiameter: number;
  readonly flywheelInside: number;
  readonly flywheelThickness: number;
  readonly flywheelDensity: number;
}

/**
 * Mass [kg] and inertia [kg·m²] of a ring or disc about its axis: m = ρ t π(d² − d_i²)/4, I = m(d² + d_i²)/8.
 * Exact for a flat ring. Bolt holes, a starter ring and a step in thickness are not in it: the starter ring
 * sits where inertia is made, and a disc without it can be short by a fifth and more.
 *
 * Throws OutOfDomain for an inside diameter not below the outside one, and for a wheel with no thickness
 * or no density: a flywheel with no mass.
 */
export function ringInertia(ring: RingDimensions): {
  readonly mass: number;
  readonly inertia: number;
} {
  const d = above(ring, 'flywheelDiameter');
  atLeast(ring, 'flywheelInside');
  const di = below(ring, 'flywheelInside', d, 'the outside diameter');
  const t = above(ring, 'flywheelThickness');
  const ρ = above(ring, 'flywheelDensity');
  const mass = (ρ * t * Math.PI * (d - di) * (d + di)) / 4;
  return { mass, inertia: (mass * (d * d + di * di)) / 8 };
}

/** Energy [J] held by an inertia [kg·m²] at a speed [rad/s]: ½Iω². */
export function kineticEnergy(inertia: number, speed: number): number {
  return (inertia * speed * speed) / 2;
}

/**
 * Time [s] from one speed to another [rad/s] with a constant net torque [N·m] on the inertia [kg·m²] alone.
 *
 * Throws OutOfDomain unless the torque is greater than zero and the second speed is above the first.
 */
export function riseTime(
  inertia: number,
  rise: { readonly netTorque: number; readonly speedFrom: number; readonly speedTo: number },
): number {
  const torque = above(rise, 'netTorque');
  const from = atLeast(rise, 'speedFrom');
  const to = above(rise, 'speedTo', from, 'the speed at the start');
  return (inertia * (to - from)) / torque;
}

/** Gear ratio, final drive and rolling radius [m]: how many turns of the engine lie in a metre of road. */
export interface RoadGearing {
  readonly gearRatio: number;
  readonly finalDrive: number;
  readonly tyreRadius: number;
}

/**
 * Kilograms on the road for one kg·m² at the crank: (i_g i_f)²/r_t² [1/m²]. Both sides store the same
 * kinetic energy, so the ratio counts by its square. No loss is in it; see geared-inertia.ts for the
 * two directions of power.
 *
 * Throws OutOfDomain for a ratio or a radius that is not greater than zero.
 */
export function roadFactor(gearing: RoadGearing): number {
  const turns =
    (above(gearing, 'gearRatio') * above(gearing, 'finalDrive')) / above(gearing, 'tyreRadius');
  return turns * turns;
}
