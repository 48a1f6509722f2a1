import { added, scaled, type Vector } from './vectors.ts';

/**
 * A force and a couple that turn with the crank, as two forces in two planes: in plane A (z_B F − C)/(z_B − z_A), in
 * plane B (C − z_A F)/(z_B − z_A). The same for unbalances, in kg·m and kg·m².
 *
 * @param both the force, and its couple about the place from which the planes are counted
 * @param planes places [m] along the crank, z_A below z_B
 * Source: equilibrium of forces and of moments.
 */
export function inTwoPlanes(
  both: { readonly force: Vector; readonly couple: Vector },
  planes: { readonly zA: number; readonly zB: number },
): { readonly atA: Vector; readonly atB: Vector } {
  const { force, couple } = both;
  const { zA, zB } = planes;
  const apart = zB - zA;
  return {
    atA: scaled(added(scaled(force, zB), scaled(couple, -1)), 1 / apart),
    atB: scaled(added(couple, scaled(force, -zA)), 1 / apart),
  };
}
