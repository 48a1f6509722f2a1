import { above, finite, fraction } from '../refuse.ts';
import type { Cylinder } from './cylinders.ts';
import { inTwoPlanes } from './two-planes.ts';
import { direction, length, sumOf, type Vector } from './vectors.ts';

/** A weight that turns with the crank. */
export interface CrankWeight {
  /** [rad] At crank angle zero. */
  readonly angle: number;
  /** [m] As that of a cylinder. */
  readonly position: number;
  /** [kg·m] Mass times radius. */
  readonly unbalance: number;
}

/**
 * The weights opposite the throws that take the balance factor f of each reciprocating mass: f m r. Those for what
 * rotates take it whole and are left out on both sides.
 *
 * @throws OutOfDomain for f outside 0 to 1
 */
export function carriedWeights(
  cylinders: readonly Cylinder[],
  balance: { readonly reciprocatingFraction: number },
): readonly CrankWeight[] {
  const f = fraction(balance, 'reciprocatingFraction');
  return cylinders.map(({ angle, position, reciprocatingMass, stroke }) => ({
    angle: angle + Math.PI,
    position,
    unbalance: (f * reciprocatingMass * stroke) / 2,
  }));
}

/**
 * The two weights that take all that counterweights can: one in each of two planes across the crank, against the
 * forward half of every pull. Planes [m], A below B.
 *
 * @throws OutOfDomain for planes that coincide or stand in the wrong order
 */
export function perfectWeights(
  cylinders: readonly Cylinder[],
  planes: { readonly planeA: number; readonly planeB: number },
): readonly [CrankWeight, CrankWeight] {
  const zA = finite(planes, 'planeA');
  const zB = above(planes, 'planeB', zA, 'the place of plane A');
  const half = ({ reciprocatingMass, stroke }: Cylinder): number =>
    (reciprocatingMass * stroke) / 4;
  const { atA, atB } = inTwoPlanes(
    {
      force: sumOf(cylinders, (one) => [half(one), one.angle]),
      couple: sumOf(cylinders, (one) => [half(one) * one.position, one.angle]),
    },
    { zA, zB },
  );
  return against({ atA, atB }, planes);
}

/** The weights [kg·m] that leave nothing of an unbalance in each of two planes: as large, and opposite. */
export function against(
  { atA, atB }: { readonly atA: Vector; readonly atB: Vector },
  planes: { readonly planeA: number; readonly planeB: number },
): readonly [CrankWeight, CrankWeight] {
  const opposite = (vector: Vector, position: number): CrankWeight => ({
    angle: direction(vector) + Math.PI,
    position,
    unbalance: length(vector),
  });
  return [opposite(atA, planes.planeA), opposite(atB, planes.planeB)];
}
