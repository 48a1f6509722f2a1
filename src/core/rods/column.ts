import { above } from '../refuse.ts';

/** A straight bar under a central push. */
export interface Column {
  /** [Pa] */
  readonly youngsModulus: number;
  /** [Pa] in compression; taken as equal to that in tension. */
  readonly yieldStrength: number;
  /** Length between the points where it bends freely, over the radius of gyration. */
  readonly slenderness: number;
}

/** Mean stresses [Pa] at which such a bar gives way, by the formulas of three schools. */
export interface BucklingStresses {
  /** π²E/s²: a perfectly straight elastic bar; infinite where s is 0. */
  readonly euler: number;
  /** Johnson's parabola below the transition, Euler's curve above it: the two touch there. */
  readonly johnson: number;
  /** Rankine's σ_c/(1 + s²/c) with the divisor that makes it run into Euler's curve, c = π²E/σ_c. */
  readonly rankine: number;
  /** The same with a divisor given. */
  readonly rankineGiven: number;
  /** s at which Johnson's parabola touches Euler's curve, at half the yield strength. */
  readonly transition: number;
  /** π²E/σ_c, the divisor that fits this material. */
  readonly divisor: number;
}

/** Textbook divisor of Rankine's formula for mild steel with a crushing stress of 320 MPa. */
export const mildSteelDivisor = 7500;

/**
 * Buckling of a bar with a central push. Johnson: σ_y[1 − σ_y s²/(4π²E)] up to s = √(2π²E/σ_y), then Euler
 * (J. E. Shigley, C. R. Mischke, Mechanical Engineering Design, section on columns; from memory). Rankine:
 * R. S. Khurmi, J. K. Gupta, A Textbook of Machine Design, 2005, section 32.15, where the divisor 7500 stands
 * for mild steel.
 *
 * Rankine adds reciprocals: 1/σ = 1/σ_c + 1/σ_Euler. That fixes the divisor as π²E/σ_c, about 6400 for 320 MPa
 * and 207 GPa, 1840 for 1100 MPa. The textbook's 7500 is a fit to mild steel; carried to a strong steel it
 * promises strength that Euler's curve forbids.
 *
 * Neglected: an eccentric push, an initial bend, local buckling of thin flanges, fillets.
 *
 * Throws OutOfDomain unless modulus, yield strength and divisor are greater than 0; RangeError for a negative
 * slenderness. That is worked out and never entered: whoever does so refuses the length at fault, as
 * {@link slendernessOf} does.
 */
export function bucklingStresses(
  column: Column,
  rankineDivisor = mildSteelDivisor,
): BucklingStresses {
  const E = above(column, 'youngsModulus');
  const σ = above(column, 'yieldStrength');
  const s = column.slenderness;
  if (!(s >= 0)) throw new RangeError(`no bar has a slenderness of ${s}`);
  const c = above({ rankineDivisor }, 'rankineDivisor');
  const euler = (Math.PI ** 2 * E) / s ** 2;
  const transition = Math.PI * Math.sqrt((2 * E) / σ);
  const divisor = (Math.PI ** 2 * E) / σ;
  return {
    euler,
    johnson: s < transition ? σ * (1 - σ / (4 * euler)) : euler,
    rankine: σ / (1 + s ** 2 / divisor),
    rankineGiven: σ / (1 + s ** 2 / c),
    transition,
    divisor,
  };
}

/**
 * Slenderness of a bar: `endFactor` times length [m] over the radius of gyration [m] of its section.
 * Throws OutOfDomain unless all three are greater than 0.
 */
export function slendernessOf(bar: {
  readonly rodLength: number;
  readonly gyrationRadius: number;
  /** Free length over length: 1 pinned, 0.5 fixed at both ends, 2 fixed at one. */
  readonly endFactor: number;
}): number {
  return (above(bar, 'endFactor') * above(bar, 'rodLength')) / above(bar, 'gyrationRadius');
}
