import { greatestLeans, rodLean, type GreatestLean } from '../../../core/motion/rod-angularity.ts';
import { short } from '../parts/short.ts';
import type { FigureSet } from '../types.ts';
import { geometryOf, poseAt, type Pose } from './mechanism.ts';

/** One set's rod at a crank angle, and where it leans most on both strokes. Angles in rad, thrust as a share. */
export interface LeaningRod {
  readonly pose: Pose;
  /** Positive with the crankpin to the right of the pin. */
  readonly lean: number;
  /** Force across the bore over force along it; signed as the lean. */
  readonly thrust: number;
  readonly down: GreatestLean;
  readonly up: GreatestLean;
  readonly mostDown: Pose;
  readonly mostUp: Pose;
}

/** The rod of a set at the crank angle `theta` [rad after TDC]; `undefined` while a length is missing. */
export function leaningRod(set: FigureSet, theta: number): LeaningRod | undefined {
  const geometry = geometryOf(set);
  if (geometry === undefined) return undefined;
  const { down, up } = greatestLeans(geometry);
  return {
    pose: poseAt(geometry, theta),
    ...rodLean({ ...geometry, crankAngle: theta }),
    down,
    up,
    mostDown: poseAt(geometry, down.crankAngle),
    mostUp: poseAt(geometry, up.crankAngle),
  };
}

/** Drawing units: the longest arrows, and what stands above, below and beside a linkage. */
export const frame = { force: 78, thrust: 36, top: 24, bottom: 12, side: 46 } as const;
/** Half the piston's width, its crown above the pin and its skirt below, for form: as parts of the stroke. */
export const piston = { half: 0.46, crown: 0.34, skirt: 0.26 } as const;

/** What both sets are drawn with, so that they can be compared by eye. */
export interface LeanScale {
  /** Drawing units to a metre, and to a force of one along the bore. */
  readonly length: number;
  readonly force: number;
  /** Of the crank axis from the top, and of the whole drawing. */
  readonly axis: number;
  readonly height: number;
}

/** The scales with which every rod has room in a column `column` units wide, the drawing at most `tallest` high. */
export function leanScale(rods: readonly LeaningRod[], column: number, tallest: number): LeanScale {
  const most = (of: (rod: LeaningRod) => number): number => Math.max(1e-3, ...rods.map(of));
  const up = most(({ pose }) => pose.topDead + piston.crown * pose.geometry.stroke);
  const down = most(({ pose }) => 0.62 * pose.geometry.stroke);
  const side = most(({ pose }) =>
    Math.max(
      0.56 * pose.geometry.stroke,
      piston.half * pose.geometry.stroke + Math.abs(pose.boreAxis),
    ),
  );
  const above = frame.top + frame.force + 6;
  const length = Math.min(
    (tallest - above - frame.bottom) / (up + down),
    (column / 2 - frame.side) / side,
  );
  const axis = above + up * length;
  const thrust = Math.max(
    1e-3,
    ...rods.flatMap((rod) => [rod.down.thrust, rod.up.thrust].map(Math.abs)),
  );
  return {
    length,
    force: Math.min(frame.force, frame.thrust / thrust),
    axis,
    height: axis + down * length + frame.bottom,
  };
}

/** The arc by which a rod leans, from the line of the bore below its pin to the rod, `radius` units from the pin. */
export function leanArc(lean: number, radius: number): string {
  const sweep = lean > 0 ? 0 : 1;
  return `M0 ${short(radius)}A${short(radius)} ${short(radius)} 0 0 ${sweep} ${short(radius * Math.sin(lean))} ${short(radius * Math.cos(lean))}`;
}
