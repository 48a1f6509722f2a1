import { unitFor } from '../../../calculators/output-unit.ts';
import { halfStrokeAngle, motionPeaks } from '../../../core/motion/piston-extremes.ts';
import { deadCentres, pistonMotion } from '../../../core/motion/piston-motion.ts';
import { linkage, postureAt, type SliderCrank } from '../../../core/motion/slider-crank.ts';
import type { System } from '../../../units/kinds.ts';
import { numberOf, pointsOf, setIds } from '../read.ts';
import type { FigureSet, FigureWork } from '../types.ts';

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

/** One of the three curves of the piston's motion. */
export interface MotionCurve {
  readonly name: string;
  readonly title: string;
  readonly output: string;
  /** What curve and number stand for: names of the calculator, with spaces between. */
  readonly quantity: string;
  /** The unit shown. */
  readonly unit: string;
}

/** The curves of the motion, each with the unit it is shown in. */
export function motionCurves(system: System): readonly MotionCurve[] {
  return [
    {
      name: 'displacement',
      output: 'displacementCurve',
      quantity: 'displacement displacementCurve',
      title: 'Below TDC',
      unit: unitFor({ kind: 'length' }, system),
    },
    {
      name: 'speed',
      output: 'speedCurve',
      quantity: 'pistonSpeed speedCurve peakSpeed',
      title: 'Piston speed, + downward',
      unit: unitFor({ kind: 'speed', metric: 'm/s', inch: 'ft/min' }, system),
    },
    {
      name: 'acceleration',
      output: 'accelerationCurve',
      quantity: 'acceleration accelerationCurve accelerationTop accelerationBottom',
      title: 'Piston acceleration, + downward',
      unit: unitFor({ kind: 'acceleration' }, system),
    },
  ];
}

/**
 * How many decimals the numbers of each curve are given: four figures of its greatest value, and as many decimals near
 * zero, where more would be noise.
 */
export function motionDecimals(
  { sets }: FigureWork,
  curves: readonly MotionCurve[],
): readonly number[] {
  return curves.map(({ output, unit }) => {
    let greatest = 0;
    for (const set of setIds) {
      const { y } = pointsOf(sets[set].output, output, 'deg', unit);
      for (let i = 0; i < y.length; i += 1) greatest = Math.max(greatest, Math.abs(y[i] ?? 0));
    }
    return greatest === 0 ? 0 : Math.max(0, 3 - Math.floor(Math.log10(greatest)));
  });
}

/** The quantities of {@link MotionCurve}, in their order, at a crank angle. */
export type Motion = readonly (number | undefined)[];

/**
 * How the piston of a set moves at a crank angle [rad from true TDC] and at the set's own highest speed: its way below
 * TDC [m], its speed [m/s] and its acceleration [m/s²], both positive downward. Empty while a number is missing.
 */
export function motionOf(set: FigureSet, theta: number): Motion {
  const geometry = geometryOf(set);
  const speed = numberOf(set.input, 'maxSpeed');
  if (geometry === undefined || speed === undefined) return [];
  const rate = numberOf(set.input, 'crankAcceleration') ?? 0;
  const { displacement, speed: along, acceleration } = pistonMotion(geometry, theta, speed, rate);
  return [displacement, along, acceleration];
}

/** The crank angles that have a name [° after true TDC]. */
export function namedAngles(
  geometry: SliderCrank,
): readonly { readonly label: string; readonly at: number; readonly quantity?: string }[] {
  const degree = 180 / Math.PI;
  return [
    { label: 'TDC', at: 0 },
    {
      label: 'Greatest speed',
      at: motionPeaks(geometry, 1).down.angle * degree,
      quantity: 'peakSpeedAngle',
    },
    {
      label: 'Half stroke',
      at: halfStrokeAngle(geometry) * degree,
      quantity: 'halfStrokeAngle',
    },
    { label: '90°', at: 90 },
    {
      label: 'BDC',
      at: deadCentres(geometry).bottomAngle * degree,
      quantity: 'bottomAngle',
    },
  ];
}
