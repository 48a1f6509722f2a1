import { above } from '../refuse.ts';
import type { OrderOfShaking, Shaking } from './shaking-forces.ts';
import type { Order } from './turning-parts.ts';
import { scaled, type Vector } from './vectors.ts';

/** What one balance shaft carries, as it stands at crank angle zero. */
export interface BalanceShaft {
  /** [kg·m] In the plane about which couples are taken. */
  readonly unbalance: Vector;
  /** [kg·m²] Of weights at its ends, opposite each other. */
  readonly coupleUnbalance: Vector;
}

/** Two shafts that turn against each other, geared to the crank. */
export interface ShaftPair {
  /** Turns as the crank does. */
  readonly forward: BalanceShaft;
  /** Turns against it. */
  readonly backward: BalanceShaft;
  /** What is left of the shaking with both. */
  readonly left: Shaking;
}

/**
 * The pair of balance shafts that takes one whole order: at crank speed (1) or at twice it (2). A shaft at n times the
 * crank speed pulls with U (nω)², so that each carries its part of the force over (nω)², opposite to it.
 *
 * At crank speed, counterweights on the crank can do what the forward shaft does, and one shaft is enough.
 * @throws OutOfDomain for a speed that is not above zero
 * Source: F. W. Lanchester’s two shafts, as in T. Bevan, The Theory of Machines; own derivation.
 */
export function balanceShafts(
  shaking: Shaking,
  running: { readonly maxSpeed: number },
  order: Order,
): ShaftPair {
  const squared = (order * above(running, 'maxSpeed')) ** 2;
  const name = order === 1 ? 'primary' : 'secondary';
  const { force, couple } = shaking[name];
  const shaft = (part: 'forward' | 'backward'): BalanceShaft => ({
    unbalance: scaled(force[part], -1 / squared),
    coupleUnbalance: scaled(couple[part], -1 / squared),
  });
  return {
    forward: shaft('forward'),
    backward: shaft('backward'),
    left: { ...shaking, [name]: nothing },
  };
}

const none: Vector = { along: 0, across: 0 };
const nothing: OrderOfShaking = {
  force: { forward: none, backward: none },
  couple: { forward: none, backward: none },
};
