import { at } from '../math/at.ts';
import type { RingTrace } from './ring-cycle.ts';
import { angleAt, type RingDrive } from './ring-drive.ts';
import { netGas, radialForce } from './ring-forces.ts';
import type { RingPack } from './ring-pack.ts';
import { greatest, least } from './ring-summary.ts';

/** The four strokes in the order of the trace, which starts at BDC before compression. */
export const strokes = ['compression', 'power', 'exhaust', 'intake'] as const;
export type Stroke = (typeof strokes)[number];

/** Trace and cylinder at the drive's equal steps; pressures [Pa, absolute], angles [rad], lift [m]. */
export interface RingCurves {
  readonly angle: Float64Array;
  readonly cylinder: Float64Array;
  readonly behind: Float64Array;
  readonly land: Float64Array;
  readonly lift: Float64Array;
}

/**
 * The trace on the drive's equal steps. Between the steps of the integration it is not the pressure behind
 * that runs straight but its distance from the cylinder's, which changes far more gently.
 */
export function ringCurves(trace: RingTrace, drive: RingDrive): RingCurves {
  const cylinder = drive.pressure;
  const angle = cylinder.map((_, i) => angleAt(drive, i));
  const [behind, land, lift] = [angle.slice(), angle.slice(), angle.slice()];
  const last = trace.angle.length - 1;
  let k = 0;
  for (let i = 0; i <= drive.steps; i++) {
    while (k < last - 1 && at(trace.angle, k + 1) <= at(angle, i)) k++;
    const [from, to] = [at(trace.angle, k), at(trace.angle, k + 1)];
    const share = Math.min(1, Math.max(0, (at(angle, i) - from) / (to - from)));
    const on = (list: Float64Array): number =>
      at(list, k) + share * (at(list, k + 1) - at(list, k));
    behind[i] = at(cylinder, i) - on(trace.cylinder) + on(trace.behind);
    land[i] = on(trace.land);
    lift[i] = on(trace.lift);
  }
  return { angle, cylinder, behind, land, lift };
}

/** Loads on the bore, each list by stroke. */
export interface RingLoads {
  /** Mean net gas pressure [Pa] on the bore over each stroke; negative lifts the ring off. */
  readonly gas: Readonly<Record<Stroke, number>>;
  /** ∫ radial force · |piston travel| over each stroke [J]: times a coefficient it is the friction work. */
  readonly slide: Readonly<Record<Stroke, number>>;
  /** The greatest and the least net gas pressure [Pa] at any angle. */
  readonly greatestGas: number;
  readonly leastGas: number;
  /** Net gas [Pa] at each angle of the curves. */
  readonly curve: Float64Array;
}

/** Loads of the ring on the bore over the strokes, by trapezia on the curves' equal steps. */
export function ringLoads(pack: RingPack, curves: RingCurves, drive: RingDrive): RingLoads {
  const { angle, cylinder, behind, land } = curves;
  const curve = cylinder.map((p, i) => netGas(pack, p, at(behind, i), at(land, i)));
  const force = cylinder.map((p, i) => radialForce(pack, p, at(behind, i), at(land, i)));
  const gas = { compression: 0, power: 0, exhaust: 0, intake: 0 };
  const slide = { compression: 0, power: 0, exhaust: 0, intake: 0 };
  const each = drive.steps / strokes.length;
  strokes.forEach((stroke, number) => {
    for (let i = number * each; i < (number + 1) * each; i++) {
      gas[stroke] += (at(curve, i) + at(curve, i + 1)) / 2 / each;
      const way = Math.abs(at(drive.travel, i + 1) - at(drive.travel, i));
      slide[stroke] += ((at(force, i) + at(force, i + 1)) / 2) * way;
    }
  });
  return {
    gas,
    slide,
    greatestGas: greatest(angle, curve).value,
    leastGas: least(angle, curve),
    curve,
  };
}
