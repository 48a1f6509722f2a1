import { crankBobweights } from '../../core/balance/crank-bobweights.ts';
import type { Throw } from '../../core/balance/crank-throws.ts';

/** Bobweights of a layout whose cylinders are alike. */
export interface LayoutBobweights {
  /** Rods on the first throw. */
  readonly rods: number;
  /** [kg] Bobweight of the first throw; that of another is in proportion to its rods. */
  readonly pinBobweight: number;
  /** How many the balancing machine needs: one for every throw, or none. */
  readonly bobweights: number;
}

/**
 * The bobweights of a layout.
 *
 * @param parts stroke [m], masses [kg]: what rotates with the first pin, and what reciprocates in each cylinder
 * @throws OutOfDomain as `crankBobweights`
 */
export function layoutBobweights(
  throws: readonly Throw[],
  parts: {
    readonly stroke: number;
    readonly rotatingMass: number;
    readonly reciprocatingMass: number;
    readonly reciprocatingFraction: number;
  },
): LayoutBobweights {
  const rods = throws[0]?.banks.length ?? 1;
  const { bobweights, areNeeded } = crankBobweights(
    throws.map(({ angle, position, banks }) => ({
      angle,
      position,
      stroke: parts.stroke,
      // As many big ends on each pin as rods.
      rotatingMass: (parts.rotatingMass * banks.length) / rods,
      reciprocatingMasses: banks.map(() => parts.reciprocatingMass),
    })),
    parts,
  );
  return {
    rods,
    pinBobweight: bobweights[0] ?? 0,
    bobweights: areNeeded ? bobweights.length : 0,
  };
}
