import { pistonMotion } from '../motion/piston-motion.ts';
import { above, atLeast, finite } from '../refuse.ts';
import { pullsAbove } from '../loads/reversal-load.ts';

/** What moves, what presses, and where the shank is cut: SI throughout. */
export interface ShankDuty {
  readonly stroke: number;
  readonly rodLength: number;
  readonly bore: number;
  /** [rad/s] */
  readonly maxSpeed: number;
  readonly pistonMass: number;
  readonly ringMass: number;
  readonly lockMass: number;
  readonly pinMass: number;
  /** [m] from the pin centre to the cut. */
  readonly shankSection: number;
  /** Rod metal from the small end's top to the cut. */
  readonly rodMassAbove: number;
  /** [Pa], absolute. */
  readonly peakPressure: number;
  readonly crankcasePressure: number;
  /** [rad] after TDC. */
  readonly peakAngle: number;
}

/** Forces [N] along the shank, all positive: a pull stretches it, a push presses it together. */
export interface ShankForces {
  /** At overlap TDC and the highest speed, no gas. */
  readonly pull: number;
  /** The gas alone: peak pressure less that of the crankcase, on the bore. */
  readonly gas: number;
  /** At peak pressure and the highest speed, inertia relieving; negative where the inertia wins. */
  readonly push: number;
  /** At peak pressure and hardly any speed: nothing relieves. */
  readonly lowSpeedPush: number;
}

/**
 * Forces through one cut of the shank. The pull is that of {@link pullsAbove}; the push is gas less the same
 * masses times their acceleration at the angle of the peak, the rod metal's taken half way from the pin to the
 * cut, all divided by the cosine of the rod's angle. At low speed the angle of the peak is taken as nothing,
 * which costs 0.2 % at 15°.
 *
 * Neglected: ring friction, weight, pin offset (see reversal-load). Throws OutOfDomain for what
 * {@link pullsAbove} and {@link pistonMotion} refuse, a pressure below zero, or a bore that is not greater than 0.
 */
export function shankForces(duty: ShankDuty): ShankForces {
  const { shank } = pullsAbove(duty, duty);
  const gas =
    ((atLeast(duty, 'peakPressure') - atLeast(duty, 'crankcasePressure')) *
      Math.PI *
      above(duty, 'bore') ** 2) /
    4;
  const θ = finite(duty, 'peakAngle');
  const ω = duty.maxSpeed;
  const { acceleration, rodAngle } = pistonMotion(duty, θ, ω);
  const crankpin = (duty.stroke / 2) * ω ** 2 * Math.cos(θ);
  const share = duty.shankSection / (2 * duty.rodLength);
  const sliding = duty.pistonMass + duty.ringMass + duty.lockMass + duty.pinMass;
  const inertia =
    sliding * acceleration + duty.rodMassAbove * (acceleration + (crankpin - acceleration) * share);
  return {
    pull: shank * ω ** 2,
    gas,
    push: (gas - inertia) / Math.cos(rodAngle),
    lowSpeedPush: gas,
  };
}

/**
 * Greatest bending moment [N·m] that a uniform rod's own mass puts on it while it is swung: mω²rL/(9√3), at
 * L/√3 from the pin, when crank and rod stand square to each other (R. S. Khurmi, J. K. Gupta, A Textbook of
 * Machine Design, 2005, section 32.14). The acceleration across the rod grows evenly from nothing at the pin
 * to rω² at the crankpin; the rod is held at both ends like a beam on two supports.
 *
 * Neglected: the eyes, which weigh more than the shank but sit at the supports, and the push or pull along the
 * bent rod, which for a bend of a hundredth of a millimetre adds next to nothing.
 */
export function whipMoment(rod: {
  /** [kg/m³] */
  readonly rodDensity: number;
  /** [m²] */
  readonly area: number;
  readonly stroke: number;
  readonly rodLength: number;
  readonly maxSpeed: number;
}): number {
  const { area, stroke, rodLength, maxSpeed } = rod;
  const mass = above(rod, 'rodDensity') * area * rodLength;
  return (mass * maxSpeed ** 2 * (stroke / 2) * rodLength) / (9 * Math.sqrt(3));
}

/**
 * How far the whip bends a uniform rod aside at the share `along` of its length from the pin, over the greatest
 * bend: that of a beam on two supports under a load that grows evenly from nothing, x(7 − 10x² + 3x⁴), greatest at
 * x² = 1 − √(8/15). Derived by integrating the moment x(1 − x²)/6 twice. Throws RangeError outside 0 to 1; no reader
 * enters a place, so that it is no quantity to refuse.
 */
export function whipShape(along: number): number {
  if (!(along >= 0 && along <= 1)) throw new RangeError('A place on the rod lies from 0 to 1.');
  const bend = (x: number): number => x * (7 - 10 * x ** 2 + 3 * x ** 4);
  return bend(along) / bend(Math.sqrt(1 - Math.sqrt(8 / 15)));
}

/** Where along the rod the whip bends it most: this share of its length from the pin. */
export const whipPlace = 1 / Math.sqrt(3);
