import { atLeast, finite } from '../refuse.ts';
import type { CrankWeight } from './crank-weights.ts';
import { atPlanes, type AtPlanes } from './moved-planes.ts';

/** How a crank was balanced: alone, or with the weighted damper and flywheel that belong to it. */
export type BalancedWith = 'neutral' | 'own';
/** Which part is exchanged for one of the other kind. */
export type SwappedPart = 'damper' | 'flywheel' | 'both';

/** A damper and a flywheel with a weight, outside the end mains. */
export interface WeightedParts {
  /** [kg·m] Mass of its weight times radius. */
  readonly damperUnbalance: number;
  /** [rad] Where it is heavy, from throw 1. */
  readonly damperAngle: number;
  /** [m] Along the crank from its middle; towards the nose it is negative. */
  readonly damperPlace: number;
  readonly flywheelUnbalance: number;
  readonly flywheelAngle: number;
  readonly flywheelPlace: number;
}

/** A weighted damper and flywheel as unbalances along the crank. Throws OutOfDomain for one below 0, or no number. */
export function weightedParts(parts: WeightedParts): {
  readonly damper: CrankWeight;
  readonly flywheel: CrankWeight;
} {
  return {
    damper: {
      unbalance: atLeast(parts, 'damperUnbalance'),
      angle: finite(parts, 'damperAngle'),
      position: finite(parts, 'damperPlace'),
    },
    flywheel: {
      unbalance: atLeast(parts, 'flywheelUnbalance'),
      angle: finite(parts, 'flywheelAngle'),
      position: finite(parts, 'flywheelPlace'),
    },
  };
}

/** What weighted parts make in the crank’s planes, and what a swap leaves there. */
export interface OutsideMasses {
  /** [kg·m] Both weighted parts; a crank balanced with them holds the opposite. */
  readonly made: AtPlanes;
  /** [kg·m] After one part, or both, was exchanged for the other kind. */
  readonly left: AtPlanes;
  /** [kg·m] The larger of the exchanged weights. */
  readonly greatest: number;
}

/**
 * Weighted parts outside the end mains, and the exchange of one for the other kind. A crank balanced with its own weighted
 * parts misses what a neutral part does not have: the opposite of its weight is left. A crank balanced alone gets a
 * weight that it does not need: the weight itself is left.
 *
 * @throws OutOfDomain as {@link weightedParts} and {@link atPlanes} do
 * Source: equilibrium of forces and of moments.
 */
export function outsideMasses(
  parts: WeightedParts,
  planes: { readonly planeA: number; readonly planeB: number },
  swap: { readonly balancedWith: BalancedWith; readonly swappedPart: SwappedPart },
): OutsideMasses {
  const { damper, flywheel } = weightedParts(parts);
  const swapped = { damper: [damper], flywheel: [flywheel], both: [damper, flywheel] }[
    swap.swappedPart
  ];
  const turn = swap.balancedWith === 'own' ? Math.PI : 0;
  return {
    made: atPlanes([damper, flywheel], planes),
    left: atPlanes(
      swapped.map((one) => ({ ...one, angle: one.angle + turn })),
      planes,
    ),
    greatest: Math.max(...swapped.map(({ unbalance }) => unbalance)),
  };
}
