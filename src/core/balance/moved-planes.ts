import { atLeast, below, finite } from '../refuse.ts';
import type { CrankWeight } from './crank-weights.ts';
import { inTwoPlanes } from './two-planes.ts';
import { added, scaled, sumOf, type Vector } from './vectors.ts';

/** One unbalance [kg·m] in each of two planes. */
export interface AtPlanes {
  readonly atA: Vector;
  readonly atB: Vector;
}

/**
 * What unbalances along a crank come to: the force Σ U [kg·m], and Σ (z − z₀) U [kg·m²], the couple about a place z₀ [m].
 * A place that is moved by d changes the couple by −d Σ U, and the force not at all.
 */
export function resultant(
  unbalances: readonly CrankWeight[],
  place = 0,
): { readonly force: Vector; readonly couple: Vector } {
  return {
    force: sumOf(unbalances, ({ unbalance, angle }) => [unbalance, angle]),
    couple: sumOf(unbalances, ({ unbalance, angle, position }) => [
      unbalance * (position - place),
      angle,
    ]),
  };
}

/**
 * The same unbalance in two other planes: what they must hold to make the same force and the same couple. Planes may
 * stand between the unbalances or outside them; an unbalance that overhangs counts more than once in the near plane.
 *
 * @param planes places [m] along the crank, A below B, from where the unbalances are counted
 * @throws OutOfDomain for planes that coincide or stand in the wrong order, or a place that is no number
 * Source: equilibrium of forces and of moments; T. Bevan, The Theory of Machines, ch. 14.
 */
export function atPlanes(
  unbalances: readonly CrankWeight[],
  planes: { readonly planeA: number; readonly planeB: number },
): AtPlanes {
  const zB = finite(planes, 'planeB');
  const zA = below(planes, 'planeA', zB, 'the place of plane B');
  return settled(unbalances, { zA, zB });
}

/** Unbalances that are known: in two planes, and of up to two things more. */
export interface KnownUnbalances {
  /** [kg·m] */
  readonly planeUnbalanceA: number;
  /** [rad] Heavy spot from throw 1. */
  readonly planeAngleA: number;
  /** [m] Along the crank, from its middle. */
  readonly planeA: number;
  readonly planeUnbalanceB: number;
  readonly planeAngleB: number;
  readonly planeB: number;
  /** Left out where there is none; with one, its angle and its place must be known, too. */
  readonly thirdUnbalance?: number | undefined;
  readonly thirdAngle?: number | undefined;
  readonly thirdPlace?: number | undefined;
  readonly fourthUnbalance?: number | undefined;
  readonly fourthAngle?: number | undefined;
  readonly fourthPlace?: number | undefined;
}

/**
 * Known unbalances as a list. Their planes may coincide: what stands in one plane adds up there.
 *
 * @throws OutOfDomain for an unbalance below 0, or an angle or place that is no number
 */
export function knownUnbalances(known: KnownUnbalances): readonly CrankWeight[] {
  const list: CrankWeight[] = [
    {
      unbalance: atLeast(known, 'planeUnbalanceA'),
      angle: finite(known, 'planeAngleA'),
      position: finite(known, 'planeA'),
    },
    {
      unbalance: atLeast(known, 'planeUnbalanceB'),
      angle: finite(known, 'planeAngleB'),
      position: finite(known, 'planeB'),
    },
  ];
  const { thirdUnbalance, thirdAngle = NaN, thirdPlace = NaN } = known;
  if (thirdUnbalance !== undefined)
    list.push({
      unbalance: atLeast({ thirdUnbalance }, 'thirdUnbalance'),
      angle: finite({ thirdAngle }, 'thirdAngle'),
      position: finite({ thirdPlace }, 'thirdPlace'),
    });
  const { fourthUnbalance, fourthAngle = NaN, fourthPlace = NaN } = known;
  if (fourthUnbalance !== undefined)
    list.push({
      unbalance: atLeast({ fourthUnbalance }, 'fourthUnbalance'),
      angle: finite({ fourthAngle }, 'fourthAngle'),
      position: finite({ fourthPlace }, 'fourthPlace'),
    });
  return list;
}

/** {@link atPlanes} for planes that are chosen anew, with their names in what is refused. */
export function movedToPlanes(
  unbalances: readonly CrankWeight[],
  planes: { readonly newPlaneA: number; readonly newPlaneB: number },
): AtPlanes {
  const zB = finite(planes, 'newPlaneB');
  const zA = below(planes, 'newPlaneA', zB, 'the new place of plane B');
  return settled(unbalances, { zA, zB });
}

/** What rounding alone leaves of unbalances that cancel is nothing: it would show as a heavy spot that is not there. */
function settled(
  unbalances: readonly CrankWeight[],
  { zA, zB }: { readonly zA: number; readonly zB: number },
): AtPlanes {
  const { atA, atB } = inTwoPlanes(resultant(unbalances), { zA, zB });
  const arm = Math.max(
    Math.abs(zA),
    Math.abs(zB),
    ...unbalances.map(({ position }) => Math.abs(position)),
  );
  const sizes = unbalances.reduce((sum, { unbalance }) => sum + Math.abs(unbalance), 0);
  const rounding = (1e-14 * sizes * arm) / (zB - zA);
  const seen = (vector: Vector): Vector => ({
    along: Math.abs(vector.along) <= rounding ? 0 : vector.along,
    across: Math.abs(vector.across) <= rounding ? 0 : vector.across,
  });
  return { atA: seen(atA), atB: seen(atB) };
}

/**
 * Unbalances in two planes as a static part, which stands halfway between them, and a couple: this vector in plane B
 * and its opposite in plane A. All in kg·m.
 *
 * Source: ISO 21940-2, the terms static and couple unbalance; own summary.
 */
export function staticAndCouple({ atA, atB }: AtPlanes): {
  readonly together: Vector;
  readonly couple: Vector;
} {
  return {
    together: added(atA, atB),
    couple: scaled(added(atB, scaled(atA, -1)), 0.5),
  };
}
