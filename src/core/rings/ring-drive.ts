import { at } from '../math/at.ts';
import { pistonMotion } from '../motion/piston-motion.ts';
import { above } from '../refuse.ts';

/** What the cylinder and the crank do to the ring over one cycle, from −π to 3π with firing TDC at zero. */
export interface RingDrive {
  /** Number of equal intervals of the tables, each `interval` [s] long. */
  readonly steps: number;
  readonly interval: number;
  /**
   * Values at both ends of each interval: cylinder pressure [Pa], piston acceleration [m/s², towards the
   * crank], way (−1…1, 1 down), travel [m] below TDC.
   */
  readonly pressure: Float64Array;
  readonly acceleration: Float64Array;
  readonly way: Float64Array;
  readonly travel: Float64Array;
  readonly crankcase: number;
  /** The span of the pressures [Pa] that drive the gas: the cylinder's over the cycle, and the crankcase's. */
  readonly lowest: number;
  readonly highest: number;
  /** Places in the tables to step to, from the first after zero to the last. */
  readonly nodes: readonly number[];
  /** The shortest step [intervals], taken where the ring moves. */
  readonly shortest: number;
}

const cycle = 4 * Math.PI;

/** Crank angle [rad] at a place in the tables, counted in intervals. */
export function angleAt({ steps }: Pick<RingDrive, 'steps'>, place: number): number {
  return -Math.PI + (cycle * place) / steps;
}

/** A table's value at a place between its values, on a straight line. */
export function between(table: Float64Array, place: number): number {
  const whole = Math.floor(place);
  const before = at(table, whole);
  return whole === place ? before : before + (place - whole) * (at(table, whole + 1) - before);
}

/** The same on a cubic through the four values around (E. Catmull and R. Rom, 1974), for reading results. */
export function smoothly(table: Float64Array, place: number): number {
  const last = table.length - 1;
  const whole = Math.min(Math.floor(place), last - 1);
  const s = place - whole;
  const [p1, p2] = [at(table, whole), at(table, whole + 1)];
  const p0 = whole > 0 ? at(table, whole - 1) : 2 * p1 - p2;
  const p3 = whole + 2 <= last ? at(table, whole + 2) : 2 * p2 - p1;
  const bend = p0 - 2.5 * p1 + 2 * p2 - 0.5 * p3;
  const twist = (p3 - p0) / 2 + 1.5 * (p1 - p2);
  return p1 + s * ((p2 - p0) / 2 + s * (bend + s * twist));
}

/** The cycle is cut into this many equal stretches, each stepped through evenly: four degrees. */
const stretches = 180;
/** Share of the cylinder's pressure by which it may change in one step. */
const change = 0.022;
/** The shortest step there is, taken where the ring moves: an eighth of a degree, in parts of a cycle. */
const pieces = 5760;

/** The greatest share by which the pressure changes in an interval, from `from` to before `to`. */
export function steepest(pressure: Float64Array, from: number, to: number): number {
  let most = 0;
  for (let i = from; i < to; i++)
    most = Math.max(most, Math.abs(at(pressure, i + 1) / at(pressure, i) - 1));
  return most;
}

/**
 * Where to step: each stretch in equal steps, as close as the steepest place in it and its neighbours asks,
 * but at least two intervals long, so that half a step ends on the table.
 */
function stepNodes(pressure: Float64Array, fineness: number): number[] {
  const number = stretches * fineness;
  const each = (pressure.length - 1) / number;
  const steep = Array.from({ length: number }, (_, k) =>
    steepest(pressure, k * each, (k + 1) * each),
  );
  const nodes: number[] = [];
  for (let k = 0; k < number; k++) {
    const around = Math.max(...steep.slice(Math.max(0, k - 1), k + 2));
    let length = each;
    while (length % 4 === 0 && length * around > change / fineness) length /= 2;
    for (let place = length; place <= each; place += length) nodes.push(k * each + place);
  }
  return nodes;
}

/**
 * Makes the tables once, for every variant of one engine. `pressure` holds the cylinder's pressure [Pa] at
 * `n + 1` equal steps from −π to 3π, the last equal to the first in a steady cycle (`pressureCycle` gives it);
 * n is a multiple of 360 times `fineness`, by which all steps are shorter than the usual ones.
 *
 * The friction's direction turns within a few degrees of each dead centre instead of at once:
 * tanh of the piston's speed over 3 % of its mean.
 * Throws OutOfDomain for no speed, no crankcase pressure, or a linkage that cannot turn.
 */
export function ringDrive(
  engine: {
    readonly bore: number;
    readonly stroke: number;
    readonly rodLength: number;
    readonly maxSpeed: number;
    readonly crankcasePressure: number;
  },
  pressure: ArrayLike<number>,
  fineness = 1,
): RingDrive {
  const speed = above(engine, 'maxSpeed');
  const crankcase = above(engine, 'crankcasePressure');
  const steps = pressure.length - 1;
  const acceleration = new Float64Array(steps + 1);
  const way = new Float64Array(steps + 1);
  const travel = new Float64Array(steps + 1);
  const gentle = 0.03 * (engine.stroke / Math.PI) * speed;
  const turn = steps / 2;
  for (let i = 0; i <= turn; i++) {
    const motion = pistonMotion(engine, angleAt({ steps }, i), speed);
    travel[i] = travel[turn + i] = motion.displacement;
    acceleration[i] = acceleration[turn + i] = motion.acceleration;
    way[i] = way[turn + i] = Math.tanh(motion.speed / gentle);
  }
  const cylinder = Float64Array.from(pressure);
  return {
    steps,
    interval: cycle / steps / speed,
    pressure: cylinder,
    acceleration,
    way,
    travel,
    crankcase,
    lowest: cylinder.reduce((a, b) => Math.min(a, b), crankcase),
    highest: cylinder.reduce((a, b) => Math.max(a, b), crankcase),
    nodes: stepNodes(cylinder, fineness),
    shortest: steps / pieces / fineness,
  };
}
