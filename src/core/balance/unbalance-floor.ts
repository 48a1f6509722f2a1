import { atLeast } from '../refuse.ts';
import { balancedMass, type BalancedRotor } from './residual-unbalance.ts';

/** What differs from one mounting to the next, and what was not as weighed. */
export interface FloorInput extends Pick<BalancedRotor, 'crankMass' | 'bobweightsMass'> {
  /** [m] How far the crank's own axis lies off the axis it turns about on the machine. */
  readonly mountingOffset: number;
  /** [kg] */
  readonly flywheelMass: number;
  /** [m] Diametral clearance of the flywheel on its register. */
  readonly flywheelClearance: number;
  /** [kg·m] What the error of the bobweights makes in the worse end plane. */
  readonly bobweightUnbalance: number;
}

/**
 * What no reading of the balancing machine can show, as unbalances [kg·m]. `mounting` is the rotor's mass times the
 * offset of its axis, half of which stands at each end; `register` is the flywheel's mass times half its clearance, all
 * of it at its own end. At that end the three come together by an angle that nobody knows: `floor` is the root of the
 * sum of their squares, `worst` their sum.
 *
 * Left out: the flywheel's overhang over the last bearing, and dirt, keys and covers that are fitted later.
 * @throws OutOfDomain for a crank without mass and for any other number below 0
 * Source: own derivation; the products are those of ISO 21940-14 on balance errors, from memory.
 */
export function unbalanceFloor(input: FloorInput): {
  readonly mounting: number;
  readonly register: number;
  readonly floor: number;
  readonly worst: number;
} {
  const mounting = balancedMass(input) * atLeast(input, 'mountingOffset');
  const register = (atLeast(input, 'flywheelMass') * atLeast(input, 'flywheelClearance')) / 2;
  const bobweights = atLeast(input, 'bobweightUnbalance');
  return {
    mounting,
    register,
    floor: Math.hypot(mounting / 2, register, bobweights),
    worst: mounting / 2 + register + bobweights,
  };
}
