import { above } from '../refuse.ts';

/** Diameters and stroke [m] of one throw and the main journal beside it. */
export interface Throw {
  readonly mainDiameter: number;
  readonly crankpinDiameter: number;
  /** Twice the distance of the two axes. */
  readonly stroke: number;
}

/** What one throw shares with its main journal, seen along the shaft. */
export interface CrankOverlap {
  /** Length [m] common to both circles on the line through their centres; negative is a gap. */
  readonly overlap: number;
  /** Overlap over crankpin diameter. */
  readonly share: number;
  /** The stroke [m] at which these two diameters would just touch. */
  readonly touchingStroke: number;
}

/**
 * Overlap of crankpin and main journal: (D_m + D_p − S)/2, since the axes lie half a stroke apart
 * (IACS UR M53, Rev. 1, 2004, section 3.1, there with the throw E = S/2).
 *
 * A length on a drawing, not a strength: fillet radius, web and hardened skin decide with it. Negative
 * overlap is legal; then the web alone joins the two journals. Throws OutOfDomain for a diameter or a
 * stroke that is not greater than 0.
 */
export function crankOverlap(crank: Throw): CrankOverlap {
  const touchingStroke = above(crank, 'mainDiameter') + above(crank, 'crankpinDiameter');
  const overlap = (touchingStroke - above(crank, 'stroke')) / 2;
  return { overlap, share: overlap / crank.crankpinDiameter, touchingStroke };
}
