import type { SwingRig } from '../../../core/inertia/bench-swing.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** A part on its swing as it is drawn: lengths in m, times in s. */
export interface SwungPart {
  readonly rig: SwingRig;
  /** Of the wires; 0 on the knife edge, which has none. */
  readonly wire: number;
  /** From the axis to a wire, or from the edge to the centre of gravity. */
  readonly spacing: number;
  readonly gyration: number;
  readonly period: number;
  readonly time: number;
  readonly mass: number;
  readonly inertia: number;
}

/** The part of one set; `undefined` while a number is missing. */
export function swungPart({ input, output }: FigureSet): SwungPart | undefined {
  const rig = input?.swingRig;
  if (rig !== 'bifilar' && rig !== 'trifilar' && rig !== 'knife-edge') return undefined;
  const found = {
    wire: rig === 'knife-edge' ? 0 : numberOf(input, 'swingWire'),
    spacing: numberOf(input, 'swingSpacing'),
    gyration: numberOf(output, 'gyration'),
    period: numberOf(output, 'swingPeriod'),
    time: numberOf(input, 'swingTime'),
    mass: numberOf(input, 'swingMass'),
    inertia: numberOf(output, 'partInertia'),
  };
  return Object.values(found).includes(undefined)
    ? undefined
    : { rig, ...(found as Omit<SwungPart, 'rig'>) };
}

/** How far the part is turned when it is let go [rad]: ten degrees, the most that counts as small. */
export const letGo = Math.PI / 18;

/** Where the part stands `time` [s] after it was let go [rad]: a small swing without loss is a cosine. */
export function turnedBy({ period }: SwungPart, time: number): number {
  return letGo * Math.cos((2 * Math.PI * time) / period);
}

/** The feet of the wires round the axis [rad], the first on the right; none on the knife edge. */
export function wiresOf(rig: SwingRig): readonly number[] {
  const count = { bifilar: 2, trifilar: 3, 'knife-edge': 0 }[rig];
  return Array.from({ length: count }, (_, i) => (2 * Math.PI * i) / count);
}

/** The outline of a part is for form: a little larger than what must have room in it. */
export function outline({ spacing, gyration }: SwungPart): number {
  return 1.12 * Math.max(spacing, gyration);
}

/** How far the outline of a part on the knife edge reaches above the edge [m]. */
export function aboveEdge({ spacing, gyration }: SwungPart): number {
  return Math.max(0, 1.12 * gyration - spacing);
}

/** Heights in drawing units: the side view with its wires, and the view from above with what stands round it. */
export const frame = { side: 150, top: 62, gap: 30, plate: 9, foot: 26 } as const;

/** What both sets are drawn with, so that they can be compared by eye: drawing units to a metre. */
export interface SwingScale {
  readonly side: number;
  readonly above: number;
  /** A pendulum, which is drawn from the side alone. */
  readonly pendulum: number;
  /** Of the middle of the view from above, and of the whole drawing. */
  readonly middle: number;
  readonly height: number;
}

/** The scales with which both parts have room in a column that is `column` drawing units wide. */
export function swingScale(parts: readonly SwungPart[], column: number): SwingScale {
  const most = (list: readonly SwungPart[], of: (part: SwungPart) => number): number =>
    Math.max(1e-3, ...list.map(of));
  const wired = parts.filter(({ rig }) => rig !== 'knife-edge');
  const hung = parts.filter(({ rig }) => rig === 'knife-edge');
  const half = column / 2 - 8;
  const above = half / most(wired, outline);
  const middle = frame.top + frame.side + frame.plate + frame.gap + half;
  const height = middle + half + frame.foot;
  return {
    side: Math.min(frame.side / most(wired, ({ wire }) => wire), above),
    above,
    pendulum: Math.min(
      (height - frame.top - frame.foot - 12) /
        most(hung, (part) => part.spacing + aboveEdge(part) + 1.12 * part.gyration),
      half / most(hung, ({ spacing, gyration }) => spacing * Math.sin(letGo) + 1.12 * gyration),
    ),
    middle,
    height,
  };
}
