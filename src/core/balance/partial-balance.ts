import { wholeRods } from './bobweight.ts';
import { above, atLeast, finite, fraction } from '../refuse.ts';

/** One crankpin with one rod, or with two rods in a V. */
export interface PartialBalance {
  /** [kg] Reciprocating mass of one cylinder. */
  readonly reciprocatingMass: number;
  /** [kg] Everything that turns with the pin. */
  readonly rotatingMass: number;
  /** Balance factor f, of the reciprocating mass that the counterweight takes, 0 to 1. */
  readonly reciprocatingFraction: number;
  /** [m] Twice the throw. */
  readonly stroke: number;
  /** [rad/s] Crank speed. */
  readonly maxSpeed: number;
  /** [rad] One rod: from top dead centre. Two rods: from the pin standing midway between the banks. */
  readonly crankAngle: number;
  /** [rad] Between the banks; unused with one rod. */
  readonly bankAngle: number;
  readonly rodsPerPin: number;
  /** [m] Radius at which the balance mass sits, opposite the pin. */
  readonly balanceRadius: number;
}

/** Masses in kg, forces in N. All forces are primary: the part that repeats once a turn. */
export interface PartialBalanceResult {
  readonly balanceMass: number;
  /** F₁ = m r ω² of one cylinder. */
  readonly inertiaForce: number;
  /** Rotating with the crank, before the counterweight. */
  readonly forward: number;
  /** The part of F₁ that rotates backward, signed along the middle of the banks. */
  readonly backwardShare: number;
  /** Rotating against the crank; no counterweight on the crank can reach it. */
  readonly backward: number;
  /** What the counterweight leaves of the forward part; negative once f exceeds ½. */
  readonly forwardLeft: number;
  readonly residual: number;
  readonly residualGreatest: number;
  readonly residualLeast: number;
}

/**
 * Partial balance of the primary force. A straight-line force F₁cosθ is ½F₁ rotating with the crank and ½F₁
 * rotating against it. The counterweight takes f n F₁ of the forward part n F₁/2; the backward parts of two
 * rods on one pin add up to F₁cosγ.
 *
 * B b = (m_rot + f n m_rec) r. One cylinder leaves F₁√[(1−f)²cos²θ + f²sin²θ].
 * Orders above the first are left out: the second is about λ (a quarter to a third) of F₁.
 * @throws OutOfDomain for more than two rods, f outside 0 to 1, or a size that is not above zero
 * Source: Khurmi and Gupta, Theory of Machines (2009), ch. 22; Bevan, The Theory of Machines, ch. 14.
 */
export function partialBalance(pin: PartialBalance): PartialBalanceResult {
  const n = wholeRods(pin, 2);
  const f = fraction(pin, 'reciprocatingFraction');
  const m = above(pin, 'reciprocatingMass');
  const r = above(pin, 'stroke') / 2;
  const omega = atLeast(pin, 'maxSpeed');
  const theta = finite(pin, 'crankAngle');
  const F1 = m * r * omega ** 2;
  const backwardShare = reverseShare(n, finite(pin, 'bankAngle'));
  const reverse = backwardShare * F1;
  const forward = (n / 2) * F1;
  const forwardLeft = n * (0.5 - f) * F1;
  return {
    balanceMass: ((atLeast(pin, 'rotatingMass') + f * n * m) * r) / above(pin, 'balanceRadius'),
    inertiaForce: F1,
    forward,
    backwardShare,
    backward: Math.abs(reverse),
    forwardLeft,
    residual: Math.hypot(
      (forwardLeft + reverse) * Math.cos(theta),
      (forwardLeft - reverse) * Math.sin(theta),
    ),
    residualGreatest: Math.abs(forwardLeft) + Math.abs(reverse),
    residualLeast: Math.abs(Math.abs(forwardLeft) - Math.abs(reverse)),
  };
}

/**
 * The part that rotates backward, in units of F₁, signed along the middle of the banks: ½ for one rod, cosγ
 * for two. A right angle between the banks gives a zero that floating point would miss by 6e-17.
 */
function reverseShare(rodsPerPin: number, bankAngle: number): number {
  if (rodsPerPin === 1) return 0.5;
  const cosine = Math.cos(bankAngle);
  return Math.abs(cosine) < 1e-15 ? 0 : cosine;
}
