import { short } from '../parts/short.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** One throw as it is drawn, lengths in m: radii of both journals and the distance of their axes. */
export interface ThrowDrawing {
  readonly main: number;
  readonly pin: number;
  readonly reach: number;
  readonly overlap: number;
}

/** The throw of one set; `undefined` while a number is missing. */
export function throwOf({ input, output }: FigureSet): ThrowDrawing | undefined {
  const main = numberOf(input, 'mainDiameter');
  const pin = numberOf(input, 'crankpinDiameter');
  const stroke = numberOf(input, 'stroke');
  const overlap = numberOf(output, 'overlap');
  if (main === undefined || pin === undefined || stroke === undefined || overlap === undefined)
    return undefined;
  return { main: main / 2, pin: pin / 2, reach: stroke / 2, overlap };
}

/**
 * The area two circles share, as a path; y runs downward, the main journal of radius `R` about the origin,
 * the pin of radius `r` about (0, −e). Empty where they do not meet.
 */
export function lens(R: number, r: number, e: number): string {
  if (e >= R + r) return '';
  if (e <= Math.abs(R - r)) {
    const [radius, y] = R < r ? [R, 0] : [r, -e];
    return `M${short(-radius)} ${short(y)}a${short(radius)} ${short(radius)} 0 1 0 ${short(2 * radius)} 0a${short(radius)} ${short(radius)} 0 1 0 ${short(-2 * radius)} 0z`;
  }
  const y = (e * e + R * R - r * r) / (2 * e);
  const x = Math.sqrt(R * R - y * y);
  // Which arc of each circle bounds the lens: the long one where the chord lies beyond its centre.
  const longMain = y < 0 ? 1 : 0;
  const longPin = y > e ? 1 : 0;
  return `M${short(-x)} ${short(-y)}A${short(R)} ${short(R)} 0 ${longMain} 1 ${short(x)} ${short(-y)}A${short(r)} ${short(r)} 0 ${longPin} 1 ${short(-x)} ${short(-y)}z`;
}

/** The web for form: the outline round both circles, each grown by `more`. */
export function web(R: number, r: number, e: number, more: number): string {
  const [A, a] = [R + more, r + more];
  if (e <= Math.abs(A - a)) {
    const [radius, y] = A > a ? [A, 0] : [a, -e];
    return `M${short(-radius)} ${short(y)}a${short(radius)} ${short(radius)} 0 1 0 ${short(2 * radius)} 0a${short(radius)} ${short(radius)} 0 1 0 ${short(-2 * radius)} 0z`;
  }
  // Outer tangents touch both circles in the direction whose height is (A − a)/e below the level.
  const down = (A - a) / e;
  const out = Math.sqrt(1 - down * down);
  const long = down > 0 ? 1 : 0;
  const at = (radius: number, side: number, centre: number): string =>
    `${short(side * radius * out)} ${short(centre - radius * down)}`;
  return `M${at(A, 1, 0)}A${short(A)} ${short(A)} 0 ${long} 1 ${at(A, -1, 0)}L${at(a, -1, -e)}A${short(a)} ${short(a)} 0 ${1 - long} 1 ${at(a, 1, -e)}z`;
}
