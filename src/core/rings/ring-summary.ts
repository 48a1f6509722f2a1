import { parabolaTop } from '../math/parabola.ts';
import type { RingTrace } from './ring-cycle.ts';
import { driveAt, driveStill, type RingDrive } from './ring-drive.ts';
import { netGas, radialForce } from './ring-forces.ts';
import type { RingPack } from './ring-pack.ts';

/** The four strokes in the order of the trace, which starts at BDC before compression. */
export const strokes = ['compression', 'power', 'exhaust', 'intake'] as const;
export type Stroke = (typeof strokes)[number];

/** The pressure [Pa, absolute] at whose rise the lag is read. */
export const lagPressure = 15e5;

/** A place in a rising list: the index before `x` and the share of the way to the next. */
function place(list: Float64Array, x: number, from: number): readonly [number, number] {
  let i = from;
  while (i < list.length - 2 && (list[i + 1] ?? x) <= x) i++;
  const [a, b] = [list[i] ?? x, list[i + 1] ?? x];
  return [i, b > a ? Math.min(1, Math.max(0, (x - a) / (b - a))) : 0];
}

/** Trace and cylinder at equal steps of the drive's tables. */
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
  const n = drive.steps;
  const made = (): Float64Array => new Float64Array(n + 1);
  const curves = { angle: made(), cylinder: made(), behind: made(), land: made(), lift: made() };
  let from = 0;
  for (let i = 0; i <= n; i++) {
    const angle = -Math.PI + (4 * Math.PI * i) / n;
    const [k, s] = place(trace.angle, angle, from);
    from = k;
    const between = (list: Float64Array): number =>
      (list[k] ?? 0) + s * ((list[k + 1] ?? list[k] ?? 0) - (list[k] ?? 0));
    const cylinder = drive.pressure[i === n ? 0 : i] ?? 0;
    curves.angle[i] = angle;
    curves.cylinder[i] = cylinder;
    curves.behind[i] = cylinder - between(trace.cylinder) + between(trace.behind);
    curves.land[i] = between(trace.land);
    curves.lift[i] = between(trace.lift);
  }
  return curves;
}

/** The greatest of the values at rising places, refined by the parabola through its neighbours. */
export function greatest(
  places: Float64Array,
  values: Float64Array,
): { readonly at: number; readonly value: number } {
  let best = 0;
  for (let i = 1; i < values.length; i++) if ((values[i] ?? 0) > (values[best] ?? 0)) best = i;
  if (best === 0 || best === values.length - 1)
    return { at: places[best] ?? 0, value: values[best] ?? 0 };
  const three = (list: Float64Array): [number, number, number] => [
    list[best - 1] ?? 0,
    list[best] ?? 0,
    list[best + 1] ?? 0,
  ];
  return parabolaTop(three(places), three(values));
}

/** By how much [Pa] the pressure behind the ring falls short of the cylinder's at most, and where [rad]. */
export function greatestShortfall(trace: RingTrace): { at: number; value: number } {
  return greatest(
    trace.angle,
    trace.cylinder.map((p, i) => p - (trace.behind[i] ?? 0)),
  );
}

/** The first angle [rad] after BDC at which the pressure rises through `level`; undefined if it never does. */
function rise(
  trace: RingTrace,
  drive: RingDrive,
  behind: boolean,
  level: number,
): number | undefined {
  const list = behind ? trace.behind : trace.cylinder;
  const now = driveStill();
  for (let i = 1; i < list.length; i++) {
    if (!((list[i - 1] ?? 0) < level && (list[i] ?? 0) >= level)) continue;
    const [a, b] = [trace.angle[i - 1] ?? 0, trace.angle[i] ?? 0];
    const short = (k: number): number =>
      behind ? (trace.cylinder[k] ?? 0) - (trace.behind[k] ?? 0) : 0;
    let [low, high] = [a, b];
    for (let turn = 0; turn < 40; turn++) {
      const middle = (low + high) / 2;
      driveAt(drive, middle, now);
      const s = (middle - a) / (b - a);
      const p = now.pressure - (short(i - 1) + s * (short(i) - short(i - 1)));
      if (p < level) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  }
  return undefined;
}

/**
 * How much later [rad] the pressure behind rises through {@link lagPressure} than the cylinder's.
 * `cylinder` or `behind` where that one never rises so far.
 */
export function lagOf(trace: RingTrace, drive: RingDrive): number | 'cylinder' | 'behind' {
  const first = rise(trace, drive, false, lagPressure);
  if (first === undefined) return 'cylinder';
  const second = rise(trace, drive, true, lagPressure);
  return second === undefined ? 'behind' : second - first;
}

/** Loads on the bore, in the order of {@link strokes}. */
export interface RingLoads {
  /** Mean net gas pressure [Pa] on the bore over each stroke; negative lifts the ring off. */
  readonly gas: readonly number[];
  /** ∫ radial force · |piston travel| over each stroke [J]: times a coefficient it is the friction work. */
  readonly slide: readonly number[];
  /** The greatest and the least net gas pressure [Pa] at any angle. */
  readonly greatestGas: number;
  readonly leastGas: number;
  /** Net gas [Pa] at each angle of the curves. */
  readonly curve: Float64Array;
}

/** Loads of the ring on the bore over the strokes, by trapezia on the curves' equal steps. */
export function ringLoads(pack: RingPack, curves: RingCurves, drive: RingDrive): RingLoads {
  const n = drive.steps;
  const curve = curves.cylinder.map((p, i) =>
    netGas(pack, p, curves.behind[i] ?? 0, curves.land[i] ?? 0),
  );
  const force = curves.cylinder.map((p, i) =>
    radialForce(pack, p, curves.behind[i] ?? 0, curves.land[i] ?? 0),
  );
  const gas = [0, 0, 0, 0];
  const slide = [0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    const stroke = Math.min(3, Math.floor((4 * (i + 0.5)) / n));
    const both = (list: Float64Array): number => ((list[i] ?? 0) + (list[i + 1] ?? 0)) / 2;
    gas[stroke] = (gas[stroke] ?? 0) + (both(curve) * 4) / n;
    const way = Math.abs((drive.travel[i + 1] ?? 0) - (drive.travel[i] ?? 0));
    slide[stroke] = (slide[stroke] ?? 0) + both(force) * way;
  }
  return {
    gas,
    slide,
    greatestGas: greatest(curves.angle, curve).value,
    leastGas: -greatest(
      curves.angle,
      curve.map((p) => -p),
    ).value,
    curve,
  };
}

/** Share of the cycle (0 to 1) that the ring spends off its lower flank. */
export function timeOffLower({ angle, lift }: RingTrace): number {
  let off = 0;
  for (let i = 1; i < angle.length; i++)
    if (((lift[i - 1] ?? 0) + (lift[i] ?? 0)) / 2 > 0) off += (angle[i] ?? 0) - (angle[i - 1] ?? 0);
  return off / (4 * Math.PI);
}
