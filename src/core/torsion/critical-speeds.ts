import { at } from '../math/at.ts';
import type { Firing } from './firing.ts';
import type { Mode } from './natural-modes.ts';

/** Orders looked at: every half one up to here. Harmonics of the torque above are small in a petrol engine. */
export const mostOrder = 12;

/**
 * What the cylinders can do together in one mode at one order (times a turn of the crank; halves too, since a
 * four-stroke cycle is two turns): |Σ Θ e^{iqψ}| over Σ|Θ|, with ψ the crank angle at which each fires and Θ the swing
 * of its place. 1 where all push in step, 0 where they cancel. Equal cylinders; no unit.
 *
 * @throws RangeError for an order not above zero: no reader enters one
 * Source: J. P. Den Hartog, Mechanical Vibrations, 5.6 (star diagrams); W. Ker Wilson, Practical Solution of Torsional
 * Vibration Problems (phase-vector sums).
 */
export function phaseSum(
  firings: readonly Firing[],
  swings: readonly number[],
  order: number,
): number {
  if (!(order > 0)) throw new RangeError(`an order must be greater than 0; it is ${order}`);
  let [along, across, all] = [0, 0, 0];
  for (const { place, angle } of firings) {
    const swing = at(swings, place);
    along += swing * Math.cos(order * angle);
    across += swing * Math.sin(order * angle);
    all += Math.abs(swing);
  }
  return all > 0 ? Math.hypot(along, across) / all : 0;
}

/** A {@link phaseSum} below this drives a mode too little to be named: a choice, and no law. */
export const inStep = 0.25;

/** A speed at which an order of the torque meets a natural frequency. */
export interface Critical {
  /** Counted from 0 at the lowest. */
  readonly mode: number;
  readonly order: number;
  /** [rad/s] Of the crank. */
  readonly speed: number;
  /** {@link phaseSum} of this mode and order, 0 to 1. */
  readonly sum: number;
}

/**
 * Critical speeds of all modes and orders up to {@link mostOrder}: natural frequency over order. `placesFrom` is how
 * many inertias of the line stand before the first throw.
 *
 * How strong the torque of one cylinder is at an order is not in it: that takes its pressure and its moving parts.
 */
export function criticalSpeeds(
  modes: readonly Mode[],
  firings: readonly Firing[],
  placesFrom: number,
): readonly Critical[] {
  return modes.flatMap(({ frequency, shape }, mode) =>
    Array.from({ length: 2 * mostOrder }, (_, i) => {
      const order = (i + 1) / 2;
      const sum = phaseSum(firings, shape.slice(placesFrom), order);
      return { mode, order, speed: (2 * Math.PI * frequency) / order, sum };
    }),
  );
}
