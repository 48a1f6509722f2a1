import { drillLists, type DrillList } from '../../../calculators/balance/drill-sizes.choices.ts';
import { nearestDrill } from '../../../core/balance/drill-sizes.ts';
import { short } from '../parts/short.ts';
import { formatNumber } from '../../../units/format.ts';
import { numbersOf } from '../read.ts';
import type { FigureSet } from '../types.ts';
import { spotAt } from './counter-turning.ts';
import { counterweightPath } from './counterweight.ts';

/** Holes in a counterweight as the drawing needs them: [m] and [rad], angles from throw 1, clockwise seen from the nose. */
export interface DrawnHoles {
  readonly isRadial: boolean;
  /** What the drill is called. */
  readonly drill: string;
  readonly diameter: number;
  readonly depth: number;
  readonly tipDepth: number;
  readonly angles: readonly number[];
  readonly radius: number;
  readonly width: number;
  readonly middle: number;
  readonly limit: number;
  readonly keepOut: number;
  /** Of holes parallel to the shaft. */
  readonly at: number;
  readonly heavy: number;
  /** [kg·m] */
  readonly read: number;
  readonly left: number;
}

const inputs = [
  'unbalanceRead',
  'heavyAngle',
  'holeCount',
  'holeDiameter',
  'holeSpacing',
  'counterweightRadius',
  'counterweightWidth',
  'counterweightAngle',
  'holeAngleLimit',
  'keepOutRadius',
  'axialHoleRadius',
] as const;
const outputs = ['drill', 'depth', 'tipDepth', 'firstHole', 'left'] as const;

function isDrillList(value: unknown): value is DrillList {
  return typeof value === 'string' && Object.hasOwn(drillLists, value);
}

/** The holes of a set, or `undefined` while it has none. */
export function drawnHoles({ input, output }: FigureSet): DrawnHoles | undefined {
  const given = numbersOf(input, inputs);
  const made = numbersOf(output, outputs);
  const list = input?.['drillList'];
  if (given === undefined || made === undefined || !isDrillList(list)) return undefined;
  return {
    isRadial: input?.['holeKind'] !== 'axial',
    drill: nearestDrill(drillLists[list], given).name,
    diameter: made.drill,
    depth: made.depth,
    tipDepth: made.tipDepth,
    angles: Array.from(
      { length: given.holeCount },
      (_, i) => made.firstHole + i * given.holeSpacing,
    ),
    radius: given.counterweightRadius,
    width: given.counterweightWidth,
    middle: given.counterweightAngle,
    limit: given.holeAngleLimit,
    keepOut: given.keepOutRadius,
    at: given.axialHoleRadius,
    heavy: given.heavyAngle,
    read: given.unbalanceRead,
    left: made.left,
  };
}

/** A direction as it is written: from 0 to less than 360°. */
export function directionWords(angle: number): string {
  const degrees = (((angle * 180) / Math.PI) % 360) + 360;
  return `${formatNumber((Math.round(degrees * 10) / 10) % 360)}°`;
}

/** Half the angle [rad] that the counterweight is drawn with: the allowed one, half a hole, and something for form. */
export function halfAngle({ limit, diameter, radius }: DrawnHoles): number {
  return Math.min(2.2, limit + Math.asin(Math.min(1, diameter / 2 / radius)) + 0.1);
}

/** The counterweight from the nose, about the axis; drawing units. */
export function outlinePath(holes: DrawnHoles, scale: number): string {
  return counterweightPath({
    middle: holes.middle,
    half: halfAngle(holes),
    rim: holes.radius * scale,
    keepOut: holes.keepOut * scale,
  });
}

/** One hole from the rim as it lies in the plane of the drawing, its axis upwards from the shaft; drawing units. */
export function holePath(holes: DrawnHoles, scale: number): string {
  const half = (holes.diameter / 2) * scale;
  const rim = Math.sqrt(Math.max(0, holes.radius ** 2 - (holes.diameter / 2) ** 2)) * scale;
  const shoulder = (holes.radius - holes.depth) * scale;
  const tip = (holes.radius - holes.tipDepth) * scale;
  return `M${short(-half)} ${short(-rim)}V${short(-shoulder)}L0 ${short(-tip)}L${short(half)} ${short(-shoulder)}V${short(-rim)}M${short(-half)} ${short(-shoulder)}H${short(half)}`;
}

/** How far the drawing from the nose reaches up and down from the axis, words about the rim included; drawing units. */
export function reachOf(
  holes: DrawnHoles,
  scale: number,
  words: number,
): { readonly up: number; readonly down: number } {
  const half = halfAngle(holes);
  const around = [
    holes.heavy,
    ...Array.from({ length: 25 }, (_, i) => holes.middle + (i / 12 - 1) * half),
  ].map((angle) => spotAt(holes.radius * scale + words, angle).y);
  const least = holes.keepOut * scale + 34;
  return { up: Math.max(least, ...around.map((y) => -y)), down: Math.max(least, ...around) };
}
