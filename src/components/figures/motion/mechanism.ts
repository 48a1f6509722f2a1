import { deadCentres } from '../../../core/motion/piston-motion.ts';
import { linkage, postureAt, type SliderCrank } from '../../../core/motion/slider-crank.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** A place in the plane of the mechanism [m]: x to the right of the crank axis, y above it. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** The mechanism at one crank angle, ready to be drawn. Lengths in m, angles in rad, clockwise. */
export interface Pose {
  readonly geometry: SliderCrank;
  readonly throwRadius: number;
  /** Crank from the line of the bore. */
  readonly psi: number;
  /** The same at top dead centre. */
  readonly psiTop: number;
  /** Rod from the line of the bore; positive with the crankpin to the right of the pin. */
  readonly phi: number;
  readonly crankpin: Place;
  readonly pin: Place;
  /** Where the axis of the bore stands. */
  readonly boreAxis: number;
  /** Height of the piston pin at the dead centres. */
  readonly topDead: number;
  readonly bottomDead: number;
}

/** The lengths of a set, or `undefined` while it has none. */
export function geometryOf(set: FigureSet): SliderCrank | undefined {
  const stroke = numberOf(set.input, 'stroke');
  const rodLength = numberOf(set.input, 'rodLength');
  if (stroke === undefined || rodLength === undefined) return undefined;
  return {
    stroke,
    rodLength,
    boreOffset: numberOf(set.input, 'boreOffset'),
    pinOffset: numberOf(set.input, 'pinOffset'),
  };
}

/**
 * Where every part stands at the crank angle `theta` [rad from true TDC]; crank seen from its nose, turning
 * clockwise. Throws OutOfDomain for a linkage that cannot turn.
 */
export function poseAt(geometry: SliderCrank, theta: number): Pose {
  const link = linkage(geometry);
  const { psi, phi, cosPhi } = postureAt(link, theta);
  const { travel } = deadCentres(geometry);
  const topDead = Math.sqrt((link.l + link.r - link.e) * (link.l + link.r + link.e));
  return {
    geometry,
    throwRadius: link.r,
    psi,
    psiTop: link.psiTop,
    phi,
    crankpin: { x: link.r * Math.sin(psi), y: link.r * Math.cos(psi) },
    pin: { x: link.e, y: link.r * Math.cos(psi) + link.l * cosPhi },
    boreAxis: geometry.boreOffset ?? 0,
    topDead,
    bottomDead: topDead - travel,
  };
}
