import { atLeast, finite } from '../refuse.ts';
import { descent, linkage, postureAt } from './slider-crank.ts';
import type { SliderCrank } from './slider-crank.ts';

export type { SliderCrank } from './slider-crank.ts';

/** Where the piston is and how it moves, at one crank angle. */
export interface PistonMotion {
  /** [m] below top dead centre. */
  readonly displacement: number;
  /** [m/s], positive downward. */
  readonly speed: number;
  /** [m/s²], positive towards the crank. */
  readonly acceleration: number;
  /** [rad] from the line of the bore, positive with the crankpin to the right of the piston pin. */
  readonly rodAngle: number;
  /** [rad/s], the rate of `rodAngle`. */
  readonly rodSpeed: number;
  /** [rad/s²], the rate of `rodSpeed`. */
  readonly rodAcceleration: number;
}

/**
 * Exact motion of the piston and of the rod.
 *
 * `geometry` in m; `crankAngle` [rad] from true top dead centre; `crankSpeed` [rad/s], zero or more;
 * `crankAcceleration` [rad/s²], positive when the crank speeds up. With sin φ = (r sin ψ − e)/L:
 * speed rω (sin ψ + tan φ cos ψ), acceleration rω² (cos ψ − tan φ sin ψ + (r/L) cos²ψ/cos³φ)
 * + αr (sin ψ + tan φ cos ψ). Displacement keeps its relative accuracy down to the dead centre.
 *
 * Neglected: clearances, stretch, and the rock of the piston.
 * Throws OutOfDomain for a linkage that cannot turn, a negative speed, or an argument that is not finite.
 * Source: loop closure, as in Beer and Johnston, Vector Mechanics: Dynamics (2009), §15.7; own derivation
 * for the forms free of cancellation.
 */
export function pistonMotion(
  geometry: SliderCrank,
  crankAngle: number,
  crankSpeed: number,
  crankAcceleration = 0,
): PistonMotion {
  const link = linkage(geometry);
  const { r, throwRatio: λ } = link;
  const omega = atLeast({ maxSpeed: crankSpeed }, 'maxSpeed');
  const alpha = finite({ crankAcceleration }, 'crankAcceleration');
  const at = postureAt(link, finite({ crankAngle }, 'crankAngle'));
  const rodSpeed = at.turn * omega;
  return {
    displacement: r * descent(link, at),
    speed: r * omega * at.slope,
    acceleration: r * (omega * omega * at.bend + alpha * at.slope),
    rodAngle: at.phi,
    rodSpeed,
    rodAcceleration:
      (λ * (alpha * Math.cos(at.psi) - omega * omega * Math.sin(at.psi))) / at.cosPhi +
      rodSpeed * rodSpeed * Math.tan(at.phi),
  };
}

/** Where an offset puts the dead centres, and what it does to the travel. */
export interface DeadCentres {
  /** [rad] the crank past the line of the bore when the piston is highest. */
  readonly topAngle: number;
  /** [rad] from true top dead centre to bottom dead centre: the length of the downstroke. */
  readonly bottomAngle: number;
  /** [m] from one dead centre to the other. */
  readonly travel: number;
  /** [m] by which the travel exceeds twice the throw; zero without offset, never negative. */
  readonly strokeGain: number;
}

/**
 * Dead centres of a linkage [m]: rod and crank in one line, stretched (top) or folded (bottom).
 * sin ψ_top = e/(L+r), sin(ψ_bottom − π) = e/(L−r), travel √((L+r)²−e²) − √((L−r)²−e²), here in forms
 * that subtract nothing nearly equal. Throws OutOfDomain as {@link pistonMotion} does.
 * Source: the two right-angled triangles of the dead centres (own derivation).
 */
export function deadCentres(geometry: SliderCrank): DeadCentres {
  const { r, l, e, psiTop } = linkage(geometry);
  const high = Math.sqrt((l + r - e) * (l + r + e));
  const low = Math.sqrt((l - r - e) * (l - r + e));
  const excess = (e * e) / (l + r + high) + (e * e) / (l - r + low);
  const strokeGain = (2 * r * excess) / (high + low);
  return {
    topAngle: psiTop,
    bottomAngle: Math.PI + Math.asin(e / (l - r)) - psiTop,
    travel: 2 * r + strokeGain,
    strokeGain,
  };
}

/**
 * Speed [m/s] and acceleration [m/s²] of a point on the rod's centre line, as magnitudes.
 *
 * `rodPoint` [m] counts from the crankpin centre towards the piston pin: zero is the crankpin itself, the
 * rod length the piston. Other arguments and refusals as {@link pistonMotion}.
 * Source: relative motion of two points of a rigid body, Beer and Johnston (2009), §15.5 and §15.8.
 */
export function rodPointMotion(
  geometry: SliderCrank,
  rodPoint: number,
  crankAngle: number,
  crankSpeed: number,
  crankAcceleration = 0,
): { speed: number; acceleration: number } {
  const { r } = linkage(geometry);
  const motion = pistonMotion(geometry, crankAngle, crankSpeed, crankAcceleration);
  const s = finite({ rodPoint }, 'rodPoint');
  const psi = crankAngle + deadCentres(geometry).topAngle;
  const [sin, cos] = [Math.sin(psi), Math.cos(psi)];
  const [sinPhi, cosPhi] = [Math.sin(motion.rodAngle), Math.cos(motion.rodAngle)];
  const [omega, alpha] = [crankSpeed, crankAcceleration];
  const [turn, spin] = [motion.rodSpeed, motion.rodAcceleration];
  return {
    speed: Math.hypot(r * omega * cos - s * turn * cosPhi, r * omega * sin + s * turn * sinPhi),
    acceleration: Math.hypot(
      r * (alpha * cos - omega * omega * sin) - s * (spin * cosPhi - turn * turn * sinPhi),
      r * (alpha * sin + omega * omega * cos) + s * (spin * sinPhi + turn * turn * cosPhi),
    ),
  };
}

/**
 * Displacement [m], speed [m/s] and acceleration [m/s²] over one turn, at `cells` + 1 equal steps of the
 * crank angle [rad] from true TDC to the next. Arguments, signs and refusals as {@link pistonMotion}.
 */
export function motionCurves(
  geometry: SliderCrank,
  crankSpeed: number,
  crankAcceleration: number,
  cells: number,
): {
  angle: Float64Array;
  displacement: Float64Array;
  speed: Float64Array;
  acceleration: Float64Array;
} {
  const link = linkage(geometry);
  const { r } = link;
  const omega = atLeast({ maxSpeed: crankSpeed }, 'maxSpeed');
  const alpha = finite({ crankAcceleration }, 'crankAcceleration');
  const angle = Float64Array.from({ length: cells + 1 }, (_, i) => (2 * Math.PI * i) / cells);
  const displacement = new Float64Array(cells + 1);
  const speed = new Float64Array(cells + 1);
  const acceleration = new Float64Array(cells + 1);
  angle.forEach((theta, i) => {
    const at = postureAt(link, theta);
    displacement[i] = r * descent(link, at);
    speed[i] = r * omega * at.slope;
    acceleration[i] = r * (omega * omega * at.bend + alpha * at.slope);
  });
  return { angle, displacement, speed, acceleration };
}
