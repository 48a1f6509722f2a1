import { atLeast, above, fraction } from '../refuse.ts';
import { sumOf } from './vectors.ts';

/** What hangs on one throw. */
export interface LoadedThrow {
  /** [rad] */
  readonly angle: number;
  /** [m] Along the crank from its middle. */
  readonly position: number;
  /** [m] Twice the throw. */
  readonly stroke: number;
  /** [kg] All that rotates with the pin: big ends, shells, oil. */
  readonly rotatingMass: number;
  /** [kg] Reciprocating mass of each cylinder on it. */
  readonly reciprocatingMasses: readonly number[];
}

/** Bobweights of a crank whose pins may carry unlike masses. */
export interface CrankBobweights {
  /** [kg] For each throw, in their order: m_rot + f Σ m_rec. */
  readonly bobweights: readonly number[];
  /** False where these very weights cancel as a force and as a couple, so that the machine reads the same without. */
  readonly areNeeded: boolean;
}

/**
 * The bobweight of each pin, or half of a split pin, and whether the balancing machine needs them at all.
 *
 * @throws OutOfDomain for f outside 0 to 1, a rotating mass below zero, a reciprocating mass or stroke not above zero
 * Source: the forward half of a straight-line force, T. Bevan, The Theory of Machines, ch. 14; own summary.
 */
export function crankBobweights(
  throws: readonly LoadedThrow[],
  balance: { readonly reciprocatingFraction: number },
): CrankBobweights {
  const f = fraction(balance, 'reciprocatingFraction');
  const loads = throws.map((one) => {
    const reciprocating = one.reciprocatingMasses
      .map((reciprocatingMass) => above({ reciprocatingMass }, 'reciprocatingMass'))
      .reduce((sum, mass) => sum + mass, 0);
    const bobweight = atLeast(one, 'rotatingMass') + f * reciprocating;
    return { ...one, bobweight, unbalance: (bobweight * above(one, 'stroke')) / 2 };
  });
  const force = sumOf(loads, ({ unbalance, angle }) => [unbalance, angle]);
  const couple = sumOf(loads, ({ unbalance, angle, position }) => [position * unbalance, angle]);
  return {
    bobweights: loads.map(({ bobweight }) => bobweight),
    areNeeded: [force, couple].some(({ along, across }) => along !== 0 || across !== 0),
  };
}
