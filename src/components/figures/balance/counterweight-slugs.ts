import { short } from '../parts/short.ts';
import { numberOf, numbersOf } from '../read.ts';
import type { FigureSet } from '../types.ts';
import { spotAt } from './counter-turning.ts';
import { counterweightPath } from './counterweight.ts';

const inputs = [
  'slugDiameter',
  'slugLength',
  'slugRadius',
  'slugCount',
  'slugSpacing',
  'counterweightRadius',
  'counterweightWidth',
  'keepOutRadius',
  'slugInterference',
] as const;
const outputs = [
  'perSlug',
  'left',
  'pull',
  'overPull',
  'slugMass',
  'massGain',
  'rimWall',
  'rimStress',
  'warmInterference',
] as const;

/** Slugs in a counterweight as the drawing needs them: SI, by the names of the calculator. */
export type DrawnSlugs = Readonly<
  Record<(typeof inputs)[number] | (typeof outputs)[number], number>
> & {
  /** [m] Undefined for one slug. */
  readonly besideWall: number | undefined;
  /** [rad] Where the slugs stand, clockwise from straight up. */
  readonly angles: readonly number[];
};

/** The middle of the counterweight: throw 1 is drawn upwards, so it is opposite. */
export const middle = Math.PI;

/** The slugs of a set, or `undefined` while it has none. */
export function drawnSlugs({ input, output }: FigureSet): DrawnSlugs | undefined {
  const given = numbersOf(input, inputs);
  const made = numbersOf(output, outputs);
  if (given === undefined || made === undefined) return undefined;
  const { slugCount, slugSpacing } = given;
  return {
    ...given,
    ...made,
    besideWall: numberOf(output, 'besideWall'),
    // From left to right below the shaft, where angles run the other way.
    angles: Array.from(
      { length: slugCount },
      (_, i) => middle + ((slugCount - 1) / 2 - i) * slugSpacing,
    ),
  };
}

/** Half the angle [rad] that the counterweight is drawn with: all slugs, and something for form. */
export function halfAngle({ angles, slugDiameter, slugRadius }: DrawnSlugs): number {
  const spread = (angles[0] ?? middle) - middle;
  return Math.min(2.2, Math.max(0.75, spread + Math.asin(slugDiameter / 2 / slugRadius) + 0.2));
}

/** The counterweight from the nose, about the axis; drawing units. Its sides are drawn for form. */
export function outlinePath(slugs: DrawnSlugs, scale: number): string {
  return counterweightPath({
    middle,
    half: halfAngle(slugs),
    rim: slugs.counterweightRadius * scale,
    keepOut: slugs.keepOutRadius * scale,
  });
}

/** A stroke along a radius from one distance to another; drawing units. */
export function radialPath(angle: number, from: number, to: number): string {
  const [start, end] = [spotAt(from, angle), spotAt(to, angle)];
  return `M${short(start.x)} ${short(start.y)}L${short(end.x)} ${short(end.y)}`;
}

/** The stroke across the wall between the first two slugs, and its middle; `undefined` for one slug. */
export function wallBetween(
  { angles, slugRadius, slugDiameter }: DrawnSlugs,
  scale: number,
): { readonly path: string; readonly x: number; readonly y: number } | undefined {
  const [first, second] = angles;
  if (first === undefined || second === undefined) return undefined;
  const [one, other] = [spotAt(slugRadius * scale, first), spotAt(slugRadius * scale, second)];
  const share = (slugDiameter / 2) * scale;
  const away = Math.hypot(other.x - one.x, other.y - one.y);
  const [dx, dy] = [(other.x - one.x) / away, (other.y - one.y) / away];
  return {
    path:
      `M${short(one.x + share * dx)} ${short(one.y + share * dy)}` +
      `L${short(other.x - share * dx)} ${short(other.y - share * dy)}`,
    x: short((one.x + other.x) / 2),
    y: short((one.y + other.y) / 2),
  };
}
