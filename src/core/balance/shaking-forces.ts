import { above, atLeast, finite } from '../refuse.ts';
import type { CrankWeight } from './crank-weights.ts';
import { checkCylinders, type Cylinder } from './cylinders.ts';
import {
  partsAt,
  turningParts,
  type Order,
  type Pull,
  type TurningParts,
} from './turning-parts.ts';
import { added, type Vector } from './vectors.ts';

/** Crank speed [rad/s], and the place [m] about which couples are taken: the crank’s middle where none is given. */
export interface Running {
  readonly maxSpeed: number;
  readonly referencePlane?: number;
}

/** A force [N], and its couple [N·m]: force times place, pointing as the force does on the flywheel side. */
export interface OrderOfShaking {
  readonly force: TurningParts;
  readonly couple: TurningParts;
}

/** What shakes an engine once a turn and twice a turn. */
export interface Shaking {
  readonly primary: OrderOfShaking;
  readonly secondary: OrderOfShaking;
}

/**
 * Free forces and couples of any crank: each cylinder pulls along its bore with m r ω² cos ψ and m r ω² λ cos 2ψ,
 * λ = r/L, ψ from its own top dead centre; the weights pull with U ω² at their own angle. Firing plays no part.
 *
 * Stiff crank at steady speed, no offset of bore or pin, each rod in one plane across the crank. The second order is
 * λ + λ³/4 + … ; only its first term is taken, as the textbooks do, and it is 2 % low at λ = 0.29.
 * @throws OutOfDomain and RangeError as {@link checkCylinders}; OutOfDomain for a mass or stroke not above zero, a rod
 * not longer than the throw, a speed below zero
 * Source: T. Bevan, The Theory of Machines (2005), ch. 14; own derivation of the turning parts.
 */
export function shakingForces(
  cylinders: readonly Cylinder[],
  running: Running,
  weights: readonly CrankWeight[] = [],
): Shaking {
  checkCylinders(cylinders);
  const omega = atLeast(running, 'maxSpeed');
  const { referencePlane: plane = 0 } = running;
  if (!Number.isFinite(plane))
    throw new RangeError('The plane of reference must be a finite place.');
  const pulls = cylinders.map((cylinder) => pullsOf(cylinder, omega));
  const of = (order: Order, arm: (position: number) => number): TurningParts =>
    turningParts(
      pulls.map(({ primary, secondary, angle, bank, position }): Pull => {
        const size = order === 1 ? primary : secondary;
        return { angle, bank, size: arm(position) * size };
      }),
      order,
      order === 1
        ? weights.map(({ angle, position, unbalance }) => ({
            angle,
            size: arm(position) * unbalance * omega ** 2,
          }))
        : [],
    );
  const all = (order: Order): OrderOfShaking => ({
    force: of(order, () => 1),
    couple: of(order, (position) => position - plane),
  });
  return { primary: all(1), secondary: all(2) };
}

function pullsOf(cylinder: Cylinder, omega: number) {
  const r = above(cylinder, 'stroke') / 2;
  const L = above(cylinder, 'rodLength', r, 'half the stroke');
  const primary = above(cylinder, 'reciprocatingMass') * r * omega ** 2;
  return { ...cylinder, primary, secondary: (primary * r) / L };
}

/** Primary and secondary of one thing, and both together. */
export interface AtAnAngle {
  readonly primary: Vector;
  readonly secondary: Vector;
  readonly together: Vector;
}

/** Force [N] and couple [N·m] with the crank at an angle [rad]. Throws OutOfDomain unless it is a number. */
export function shakingAt(
  shaking: Shaking,
  crank: { readonly crankAngle: number },
): { readonly force: AtAnAngle; readonly couple: AtAnAngle } {
  const theta = finite(crank, 'crankAngle');
  const of = (what: keyof OrderOfShaking): AtAnAngle => {
    const primary = partsAt(shaking.primary[what], 1, theta);
    const secondary = partsAt(shaking.secondary[what], 2, theta);
    return { primary, secondary, together: added(primary, secondary) };
  };
  return { force: of('force'), couple: of('couple') };
}

/** What is taken off a part that turns with the crank or against it, and what nothing on the crank can take. */
export interface Reach {
  /** Counterweights take it whole, at the best of all sizes. */
  readonly byCounterweights: { readonly force: Vector; readonly couple: Vector };
  /** What stays all the same. */
  readonly byNone: Shaking;
}

/** Splits shaking into what counterweights can take (the forward primary) and what none reaches (all else). */
export function reachOf({ primary, secondary }: Shaking): Reach {
  const none: Vector = { along: 0, across: 0 };
  return {
    byCounterweights: { force: primary.force.forward, couple: primary.couple.forward },
    byNone: {
      primary: {
        force: { ...primary.force, forward: none },
        couple: { ...primary.couple, forward: none },
      },
      secondary,
    },
  };
}
