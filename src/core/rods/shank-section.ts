import { above, atMost } from '../refuse.ts';

/**
 * Which way the flanges of a shank lie. `i`: across the plane in which the crank turns, one above and one
 * below, so that the letter is seen in a cut with the crank turning up and down. `h`: along that plane, one
 * on each side.
 */
export type SectionShape = 'i' | 'h';

/** A cut through the shank of a rod [m], two equal flanges and a web between them, without fillets or draft. */
export interface ShankSection {
  readonly shankShape: SectionShape;
  /** In the plane in which the crank turns, whichever shape. */
  readonly shankHeight: number;
  /** Across that plane. */
  readonly shankWidth: number;
  readonly flangeThickness: number;
  readonly webThickness: number;
}

/** What the cut is worth. `x` is the axis about which the rod bends in the plane of motion, `y` the other. */
export interface SectionProperties {
  /** [m²] */
  readonly area: number;
  /** [m] from the outer face of one flange to that of the other: height of an I, width of an H. */
  readonly flangeSpan: number;
  /** [m] the long side of a flange: width of an I, height of an H. */
  readonly flangeWidth: number;
  /** [m⁴] about the axis that runs along the flanges. */
  readonly alongFlanges: number;
  /** [m⁴] about the axis that runs along the web. */
  readonly alongWeb: number;
  /** [m⁴] for bending in the plane of motion. */
  readonly secondMomentX: number;
  /** [m⁴] for bending across it. */
  readonly secondMomentY: number;
  /** [m³] secondMomentX over half the height. */
  readonly modulusX: number;
}

/**
 * Area and second moments of an I or an H: the rectangle around it less its two pockets about the one axis,
 * flanges and web added about the other (R. S. Khurmi, J. K. Gupta, A Textbook of Machine Design, 2005,
 * section 32.15: 11 t², 419 t⁴/12 and 131 t⁴/12 for an I of 5 t by 4 t).
 *
 * Neglected: fillets, which add area in the corners (often 3 to 8 %), and draft, which takes some away.
 *
 * Throws OutOfDomain for a dimension that is not greater than 0, flanges that together are thicker than the
 * side they share, or a web thicker than the flange is wide. Flanges that just meet make a full rectangle.
 */
export function shankSection(cut: ShankSection): SectionProperties {
  const upright = cut.shankShape === 'i';
  const height = above(cut, 'shankHeight');
  const width = above(cut, 'shankWidth');
  const [d, b] = upright ? [height, width] : [width, height];
  const [span, side] = upright ? ['height', 'width'] : ['width', 'height'];
  above(cut, 'flangeThickness');
  above(cut, 'webThickness');
  const t = atMost(cut, 'flangeThickness', d / 2, `half the ${span} of the section`);
  const w = atMost(cut, 'webThickness', b, `the ${side} of the section`);
  const pocket = d - 2 * t;
  const alongFlanges = (b * d ** 3 - (b - w) * pocket ** 3) / 12;
  const alongWeb = (2 * t * b ** 3 + pocket * w ** 3) / 12;
  const secondMomentX = upright ? alongFlanges : alongWeb;
  return {
    area: 2 * b * t + pocket * w,
    flangeSpan: d,
    flangeWidth: b,
    alongFlanges,
    alongWeb,
    secondMomentX,
    secondMomentY: upright ? alongWeb : alongFlanges,
    modulusX: secondMomentX / (height / 2),
  };
}
