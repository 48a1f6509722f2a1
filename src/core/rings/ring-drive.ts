import { pistonMotion } from '../motion/piston-motion.ts';
import { above } from '../refuse.ts';

/** What the cylinder and the crank do to the ring over one cycle, from −π to 3π with firing TDC at zero. */
export interface RingDrive {
  /** [rad/s]. */
  readonly speed: number;
  /** Number of equal steps of the tables. */
  readonly steps: number;
  /** Cylinder pressure [Pa], its slope [Pa/rad], piston acceleration [m/s², towards the crank], way (−1…1, 1 down), travel [m] below TDC. */
  readonly pressure: Float64Array;
  readonly acceleration: Float64Array;
  readonly way: Float64Array;
  readonly travel: Float64Array;
  /** [m²] piston area and [m³] swept volume. */
  readonly swept: number;
  readonly crankcase: number;
}

const cycle = 4 * Math.PI;

/**
 * Makes the tables once, for every variant of one engine. `pressure` holds the cylinder's pressure [Pa] at
 * `n + 1` equal steps from −π to 3π, the last equal to the first in a steady cycle (`pressureCycle` gives it).
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
): RingDrive {
  const speed = above(engine, 'maxSpeed');
  const crankcase = above(engine, 'crankcasePressure');
  const bore = above(engine, 'bore');
  const steps = pressure.length - 1;
  const acceleration = new Float64Array(steps);
  const way = new Float64Array(steps);
  const travel = new Float64Array(steps + 1);
  const gentle = 0.03 * (engine.stroke / Math.PI) * speed;
  for (let i = 0; i <= steps; i++) {
    const motion = pistonMotion(engine, -Math.PI + (cycle * i) / steps, speed);
    travel[i] = motion.displacement;
    if (i === steps) break;
    acceleration[i] = motion.acceleration;
    way[i] = Math.tanh(motion.speed / gentle);
  }
  return {
    speed,
    steps,
    pressure: Float64Array.from({ length: steps }, (_, i) => pressure[i] ?? 0),
    acceleration,
    way,
    travel,
    swept: (Math.PI / 4) * bore * bore * engine.stroke,
    crankcase,
  };
}

/** One angle of the drive; the slopes are per radian. */
export interface DriveAt {
  pressure: number;
  slope: number;
  acceleration: number;
  accelerationSlope: number;
  way: number;
  waySlope: number;
}

/** A cubic through four neighbours for the pressure, straight lines for the rest. The cycle repeats. */
export function driveAt(drive: RingDrive, angle: number, out: DriveAt): void {
  const n = drive.steps;
  const place = ((angle + Math.PI) / cycle) * n;
  const whole = Math.floor(place);
  const s = place - whole;
  const per = n / cycle;
  const i = ((whole % n) + n) % n;
  const j = i + 1 === n ? 0 : i + 1;
  const { pressure: p, acceleration: a, way: w } = drive;
  const p0 = p[i === 0 ? n - 1 : i - 1] ?? 0;
  const p1 = p[i] ?? 0;
  const p2 = p[j] ?? 0;
  const p3 = p[j + 1 === n ? 0 : j + 1] ?? 0;
  const c1 = (p2 - p0) / 2;
  const c2 = p0 - 2.5 * p1 + 2 * p2 - 0.5 * p3;
  const c3 = (p3 - p0) / 2 + 1.5 * (p1 - p2);
  out.pressure = p1 + s * (c1 + s * (c2 + s * c3));
  out.slope = per * (c1 + s * (2 * c2 + 3 * s * c3));
  const a1 = a[i] ?? 0;
  const a2 = a[j] ?? 0;
  out.acceleration = a1 + s * (a2 - a1);
  out.accelerationSlope = per * (a2 - a1);
  const w1 = w[i] ?? 0;
  const w2 = w[j] ?? 0;
  out.way = w1 + s * (w2 - w1);
  out.waySlope = per * (w2 - w1);
}

export function driveStill(): DriveAt {
  return { pressure: 0, slope: 0, acceleration: 0, accelerationSlope: 0, way: 0, waySlope: 0 };
}
