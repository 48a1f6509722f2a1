import { above } from '../refuse.ts';
import type { OrderOfShaking, Shaking } from './shaking-forces.ts';
import type { Order } from './turning-parts.ts';
import { scaled, type Vector } from './vectors.ts';

/** What one balance shaft carries, as it stands at crank angle zero. */
export interface BalanceShaft {
  /** [kg·m] In the plane about which couples are taken. */
  readonly unbalance: Vector;
  /** [kg·m²] Of weights at its ends, opposite each other: unbalance of one times their distance. */
  readonly coupleUnbalance: Vector;
}

/** Crank speed [rad/s]. */
interface Running {
  readonly maxSpeed: number;
}

/** What carries one part of one order: a shaft at n times crank speed pulls with U (nω)², so U is its part over that. */
function shaftFor(
  { force, couple }: OrderOfShaking,
  part: 'forward' | 'backward',
  order: Order,
  running: Running,
): BalanceShaft {
  const squared = (order * above(running, 'maxSpeed')) ** 2;
  return {
    unbalance: scaled(force[part], -1 / squared),
    coupleUnbalance: scaled(couple[part], -1 / squared),
  };
}

const none: Vector = { along: 0, across: 0 };

/**
 * The shaft that turns against the crank, at its speed, and takes what rotates backward of the primary. What rotates
 * forward is left to the counterweights.
 *
 * @throws OutOfDomain for a speed that is not above zero
 * Source: as {@link pairAtTwiceSpeed}.
 */
export function shaftAgainstCrank(
  shaking: Shaking,
  running: Running,
): { readonly shaft: BalanceShaft; readonly left: Shaking } {
  const { force, couple } = shaking.primary;
  return {
    shaft: shaftFor(shaking.primary, 'backward', 1, running),
    left: {
      ...shaking,
      primary: { force: { ...force, backward: none }, couple: { ...couple, backward: none } },
    },
  };
}

/**
 * The two shafts that turn against each other at twice crank speed and take the whole secondary.
 *
 * @throws OutOfDomain for a speed that is not above zero
 * Source: T. Bevan, The Theory of Machines, ch. 14 (direct and reverse cranks); own derivation of the sizes.
 */
export function pairAtTwiceSpeed(
  shaking: Shaking,
  running: Running,
): { readonly forward: BalanceShaft; readonly backward: BalanceShaft; readonly left: Shaking } {
  const nothing = { forward: none, backward: none };
  return {
    forward: shaftFor(shaking.secondary, 'forward', 2, running),
    backward: shaftFor(shaking.secondary, 'backward', 2, running),
    left: { ...shaking, secondary: { force: nothing, couple: nothing } },
  };
}

/** Which balance shafts an engine has. */
export interface ShaftsFitted {
  /** One against the crank, at its speed. */
  readonly one: boolean;
  /** A pair at twice its speed. */
  readonly pair: boolean;
}

/** What the shafts fitted leave of the shaking. Throws OutOfDomain as they do, where there is one. */
export function behindShafts(shaking: Shaking, running: Running, fitted: ShaftsFitted): Shaking {
  const left = fitted.one ? shaftAgainstCrank(shaking, running).left : shaking;
  return fitted.pair ? pairAtTwiceSpeed(left, running).left : left;
}
