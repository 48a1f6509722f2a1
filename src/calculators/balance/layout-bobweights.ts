import { crankBobweights } from '../../core/balance/crank-bobweights.ts';
import { secondBank, type Throw } from '../../core/balance/crank-throws.ts';
import { heavierBy } from '../../core/balance/cylinders.ts';

/** Bobweights of a layout whose cylinders are alike, but for those of its second bank. */
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
 * @param parts stroke [m], masses [kg]: what rotates with the first pin, what reciprocates in each cylinder, and
 *   how much more in one of the second bank
 * @throws OutOfDomain as `crankBobweights` and `heavierBy`
 */
export function layoutBobweights(
  throws: readonly Throw[],
  parts: {
    readonly stroke: number;
    readonly rotatingMass: number;
    readonly reciprocatingMass: number;
    readonly partnerReciprocating?: number | undefined;
    readonly reciprocatingFraction: number;
  },
): LayoutBobweights {
  const rods = throws[0]?.banks.length ?? 1;
  const second = secondBank(throws);
  const more = heavierBy(parts);
  const { bobweights, areNeeded } = crankBobweights(
    throws.map(({ angle, position, banks }) => ({
      angle,
      position,
      stroke: parts.stroke,
      // As many big ends on each pin as rods.
      rotatingMass: (parts.rotatingMass * banks.length) / rods,
      reciprocatingMasses: banks.map(
        (bank) => parts.reciprocatingMass + (bank === second ? more : 0),
      ),
    })),
    parts,
  );
  return {
    rods,
    pinBobweight: bobweights[0] ?? 0,
    bobweights: areNeeded ? bobweights.length : 0,
  };
}
