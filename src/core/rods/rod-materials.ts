import { above, atLeast } from '../refuse.ts';
import { deadCentreAcceleration } from '../loads/reversal-load.ts';

/** What one rod has to carry, whatever it is made of: SI throughout. */
export interface RodDuty {
  readonly maxSpeed: number;
  readonly stroke: number;
  readonly rodLength: number;
  readonly reciprocatingMass: number;
  readonly bore: number;
  /** [Pa], absolute. */
  readonly peakPressure: number;
  readonly crankcasePressure: number;
}

/** The same in forces [N], all positive. */
export interface RodForces {
  /** At overlap TDC and the highest speed: reciprocating mass times rω²(1 + λ). */
  readonly pull: number;
  /** Peak pressure less the crankcase's on the bore, at low speed. */
  readonly push: number;
  /** Half the swing from the one to the other. */
  readonly amplitude: number;
  /** The greater of the two. */
  readonly greatest: number;
}

/**
 * Forces along the rod from the reciprocating mass and the gas. The whole reciprocating mass counts, small end
 * included, so that the pull is that of a cut below the small end. Neglected: what {@link deadCentreAcceleration}
 * neglects, and the inertia that relieves the push as speed rises.
 *
 * Throws OutOfDomain for a geometry that cannot turn, a speed, mass or pressure below zero, or no bore.
 */
export function rodForces(duty: RodDuty): RodForces {
  const { top } = deadCentreAcceleration(duty);
  const pull = atLeast(duty, 'reciprocatingMass') * top * atLeast(duty, 'maxSpeed') ** 2;
  const push =
    ((atLeast(duty, 'peakPressure') - atLeast(duty, 'crankcasePressure')) *
      Math.PI *
      above(duty, 'bore') ** 2) /
    4;
  return { pull, push, amplitude: (pull + push) / 2, greatest: Math.max(pull, push) };
}

/** A metal: stresses in Pa, density in kg/m³, expansion in 1/K. */
export interface RodMetal {
  readonly density: number;
  readonly youngsModulus: number;
  readonly expansion: number;
  readonly yieldStrength: number;
  /** Amplitude it bears for `fatigueLife` reversals. */
  readonly fatigueStrength: number;
}

/** What is asked of the shank, both sets alike. */
export interface RodTargets {
  readonly rodMargin: number;
  readonly rodNotchFactor: number;
  /** [m] of the whole rod at the pull. */
  readonly stretchWanted: number;
  readonly stretchFactor: number;
  /** [m] between the eyes. */
  readonly shankLength: number;
}

/** Sections [m²] that one metal needs for one duty. */
export interface RodAreas {
  /** For the margin against fatigue: jK_f F_a/σ_D. */
  readonly fatigueArea: number;
  /** For the same margin against yield: jF/R_p, F the greater of pull and push. */
  readonly yieldArea: number;
  /** The greater of these two. */
  readonly marginArea: number;
  /** For the stretch: k_st F_pull l_s/(E δ). */
  readonly stretchArea: number;
  /** The least that meets margin and stretch. */
  readonly bothArea: number;
}

/**
 * The least sections with which a shank of this metal meets a margin and holds a stretch: closed forms, since
 * stress and stretch both fall as one over the area. A mean push is given no credit: the amplitude alone is
 * set against the fatigue strength for complete reversal.
 *
 * Neglected: that a heavier rod adds to its own pull (its small end is part of the reciprocating mass, which is
 * held here), that eyes and bolts follow other rules, buckling, whip.
 *
 * Throws OutOfDomain unless margin, length and the stretch wanted are greater than 0 and the factors for notch
 * and stretch at least 1; RangeError for a property of the metal that is not greater than 0.
 */
export function rodAreas(forces: RodForces, metal: RodMetal, targets: RodTargets): RodAreas {
  const j = above(targets, 'rodMargin');
  const k = atLeast(targets, 'rodNotchFactor', 1);
  const { fatigueStrength, yieldStrength, youngsModulus } = metal;
  // Metals stand in a table: a bad row is no reader's to mend, so that there is no quantity to refuse.
  if (!(fatigueStrength > 0 && yieldStrength > 0 && youngsModulus > 0))
    throw new RangeError('a metal has no strength or no stiffness');
  const fatigueArea = (j * k * forces.amplitude) / fatigueStrength;
  const yieldArea = (j * forces.greatest) / yieldStrength;
  const stretchArea =
    (atLeast(targets, 'stretchFactor', 1) * forces.pull * above(targets, 'shankLength')) /
    (youngsModulus * above(targets, 'stretchWanted'));
  const marginArea = Math.max(fatigueArea, yieldArea);
  return {
    fatigueArea,
    yieldArea,
    marginArea,
    stretchArea,
    bothArea: Math.max(marginArea, stretchArea),
  };
}

/** Stretch [m] of the whole rod with a shank of `area` [m²]. */
export function stretchOf(
  area: number,
  forces: RodForces,
  metal: RodMetal,
  targets: RodTargets,
): number {
  return (
    (targets.stretchFactor * forces.pull * targets.shankLength) /
    (metal.youngsModulus * above({ shankArea: area }, 'shankArea'))
  );
}
