import { at } from '../math/at.ts';
import { above, atMost } from '../refuse.ts';

/** One step of the standard's table: its upper end (belongs to it) and its tolerances [m]. */
export interface ToleranceStep {
  readonly upTo: number;
  readonly IT5: number;
  readonly IT6: number;
  readonly IT7: number;
}
export type ToleranceGrade = 'IT5' | 'IT6' | 'IT7';

/**
 * The step a nominal diameter [m] falls in: above the one before, up to and including its end.
 * Throws OutOfDomain for a diameter not above 0 or beyond the last step. `steps` in rising order, at least one.
 */
export function toleranceStep<S extends ToleranceStep>(
  steps: readonly S[],
  fitDiameter: number,
): S {
  above({ fitDiameter }, 'fitDiameter');
  const last = at(steps, steps.length - 1);
  atMost({ fitDiameter }, 'fitDiameter', last.upTo, 'the end of the table');
  const found = steps.find(({ upTo }) => fitDiameter <= upTo);
  if (found === undefined) throw new RangeError('the steps are not in rising order');
  return found;
}

/** Limit deviations [m] of a hole H and a shaft h from their nominal diameter, and what lies between. */
export interface FitLimits {
  readonly holeUpper: number;
  readonly holeLower: number;
  readonly shaftUpper: number;
  readonly shaftLower: number;
  /** Least hole on greatest shaft: 0 for H and h, whatever the grades. */
  readonly leastClearance: number;
  readonly greatestClearance: number;
}

/** H holes begin at the nominal diameter and go up by their tolerance [m]; h shafts end there and go down. */
export function fitLimits(holeTolerance: number, shaftTolerance: number): FitLimits {
  return {
    holeUpper: holeTolerance,
    holeLower: 0,
    shaftUpper: 0,
    shaftLower: -shaftTolerance,
    leastClearance: 0,
    greatestClearance: holeTolerance + shaftTolerance,
  };
}

/**
 * The tolerance unit i [m] of a diameter [m]: 0.45·∛D + 0.001·D in µm with D in mm. IT5 is 7i, IT6 10i and
 * IT7 16i, D being the geometric mean of a step's ends; the standard's rounding is not plain, so its table
 * decides and this only shows where the table comes from (ISO 286-1:1988, annex; quoted).
 */
export function toleranceUnit(diameter: number): number {
  const D = above({ fitDiameter: diameter }, 'fitDiameter') * 1000;
  return (0.45 * Math.cbrt(D) + 0.001 * D) * 1e-6;
}
