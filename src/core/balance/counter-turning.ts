import { partialBalance, type PartialBalance } from './partial-balance.ts';
import { added, vectorAt, type Vector } from './vectors.ts';
import { turningParts } from './turning-parts.ts';

/**
 * The primary forces [N] on one crankpin at one crank angle. `along` is the middle of the banks, away from the
 * crank; `across` stands 90° further in the sense of rotation. One rod has one bank, with its middle along the bore.
 */
export interface CounterTurning {
  /** Of each piston, along its own bore. */
  readonly pulls: readonly Vector[];
  /** What of them rotates with the crank, all cylinders together; it points to the crankpin. */
  readonly forward: Vector;
  /** What of each rotates against it. */
  readonly backward: readonly Vector[];
  /** Of the part of the counterweight that answers the reciprocating mass; it points away from the crankpin. */
  readonly counterweight: Vector;
  /** What is left of all pulls behind the counterweight. */
  readonly left: Vector;
  /** The half axes of the ellipse that the tip of `left` goes round in a turn; never negative. */
  readonly path: Vector;
}

/**
 * The forces of {@link partialBalance} as vectors. A pull F₁cos(θ−β) along the bank β is ½F₁ at the angle θ of the
 * crankpin and ½F₁ at 2β − θ. The counterweight is f n F₁ opposite the pin.
 *
 * @throws OutOfDomain as {@link partialBalance} does
 * Source: T. Bevan, The Theory of Machines (2005), ch. 14 (direct and reverse cranks).
 */
export function counterTurning(pin: PartialBalance): CounterTurning {
  const { inertiaForce, forward, forwardLeft, backwardShare } = partialBalance(pin);
  const { crankAngle: theta, bankAngle, rodsPerPin, reciprocatingFraction } = pin;
  const banks = rodsPerPin === 1 ? [0] : [-bankAngle / 2, bankAngle / 2];
  const pulls = banks.map((bank) => vectorAt(inertiaForce * Math.cos(theta - bank), bank));
  const counterweight = vectorAt(-rodsPerPin * reciprocatingFraction * inertiaForce, theta);
  return {
    pulls,
    forward: vectorAt(forward, theta),
    backward: banks.map(
      (bank) => turningParts([{ angle: theta, bank, size: inertiaForce }], 1).backward,
    ),
    counterweight,
    left: added(...pulls, counterweight),
    path: {
      along: Math.abs(forwardLeft + backwardShare * inertiaForce),
      across: Math.abs(forwardLeft - backwardShare * inertiaForce),
    },
  };
}
