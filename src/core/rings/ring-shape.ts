import { at } from '../math/at.ts';
import { bracketedRoot } from '../math/roots.ts';
import { type GappedRing, ringLine, type RingName } from './ring-tension.ts';

/** Points along half a ring where its ends are sought: the shape is then good to a millionth of the radius. */
const halfPoints = 61;

/** A point of the middle line [m]: x to the side, y away from the point opposite the gap. */
export interface RingPoint {
  readonly x: number;
  readonly y: number;
}

/**
 * Half of a ring's middle line, from the point opposite the gap to one end, for a ring that presses evenly
 * once it is closed to the radius `radius`. Its curvature when free is (1/r) [1 − K (1 + cos φ)], since it
 * gives up M/(E I); the length of the line stays. Exact for any bend of a thin ring, unlike the linear
 * closure 3π K r. `half` is the angle of the end in the bore [rad]; K = 0 gives the closed ring.
 */
export function ringHalf(
  radius: number,
  conformability: number,
  half: number,
  points: number,
): readonly RingPoint[] {
  const steps = points - 1;
  const turn = (phi: number): number => phi - conformability * (phi + Math.sin(phi));
  const line: RingPoint[] = [{ x: 0, y: 0 }];
  let [x, y] = [0, 0];
  const width = half / steps;
  for (let i = 0; i < steps; i++) {
    // Simpson's rule on each piece: its error at 60 pieces is below a millionth of the radius.
    const [a, b, c] = [turn(i * width), turn((i + 0.5) * width), turn((i + 1) * width)];
    x += ((Math.cos(a) + 4 * Math.cos(b) + Math.cos(c)) * radius * width) / 6;
    y += ((Math.sin(a) + 4 * Math.sin(b) + Math.sin(c)) * radius * width) / 6;
    line.push({ x, y });
  }
  return line;
}

/** Angle [rad] from the point opposite the gap to one end of a ring closed to `gap` [m] on `radius`. */
export function endAngle(radius: number, gap: number): number {
  return Math.PI - gap / (2 * radius);
}

/**
 * The free gap [m] that goes with a conformability K when the ends are followed along their real way,
 * measured between the ends of the middle line.
 */
export function followedFreeGap(radius: number, conformability: number, gap: number): number {
  const half = ringHalf(radius, conformability, endAngle(radius, gap), halfPoints);
  return 2 * at(half, halfPoints - 1).x;
}

/**
 * The relaxed shape of a ring with the free gap given [m], as half of its middle line; the inverse of
 * {@link followedFreeGap}. Throws as `ringLine` does.
 */
export function freeShape<N extends RingName>(ring: GappedRing<N>, name: N): readonly RingPoint[] {
  const { radius } = ringLine(ring, name);
  const gap = ring[`${name}Gap`];
  const freeGap = ring[`${name}FreeGap`];
  const linear = (freeGap - gap) / (3 * Math.PI * radius);
  const conformability = bracketedRoot(
    (k) => followedFreeGap(radius, k, gap) - freeGap,
    0,
    1.2 * linear,
    1e-9,
  );
  return ringHalf(radius, conformability, endAngle(radius, gap), halfPoints);
}
