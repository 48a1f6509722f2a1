import { at } from '../math/at.ts';
import { parabolaTop } from '../math/parabola.ts';
import type { RingTrace } from './ring-cycle.ts';
import { angleAt, smoothly, type RingDrive } from './ring-drive.ts';
import { netGas } from './ring-forces.ts';
import type { RingPack } from './ring-pack.ts';

/** The pressure [Pa, absolute] at whose rise the lag is read. */
const lagPressure = 15e5;

/** The greatest of the values at rising places, refined by the parabola through its neighbours. */
export function greatest(
  places: Float64Array,
  values: Float64Array,
): { readonly at: number; readonly value: number } {
  let best = 0;
  for (let i = 1; i < values.length; i++) if (at(values, i) > at(values, best)) best = i;
  if (best === 0 || best === values.length - 1)
    return { at: at(places, best), value: at(values, best) };
  const three = (list: Float64Array): [number, number, number] => [
    at(list, best - 1),
    at(list, best),
    at(list, best + 1),
  ];
  return parabolaTop(three(places), three(values));
}

/** The least of the values, in the same way. */
export function least(places: Float64Array, values: Float64Array): number {
  return -greatest(
    places,
    values.map((value) => -value),
  ).value;
}

/** By how much [Pa] the pressure behind the ring falls short of the cylinder's at most, and where [rad]. */
export function greatestShortfall(trace: RingTrace): { at: number; value: number } {
  return greatest(
    trace.angle,
    trace.cylinder.map((p, i) => p - at(trace.behind, i)),
  );
}

/** Net gas pressure [Pa] on the bore at each step of a trace. */
export function gasOf(pack: RingPack, { cylinder, behind, land }: RingTrace): Float64Array {
  return cylinder.map((p, i) => netGas(pack, p, at(behind, i), at(land, i)));
}

/**
 * The first angle [rad] after BDC at which the pressure rises through `level` [Pa]: the cylinder's, or that
 * behind the ring. Undefined if it never does. Between two steps it is the distance from the cylinder's pressure
 * that runs straight, and the cylinder's runs smoothly.
 */
function rise(
  trace: RingTrace,
  drive: RingDrive,
  which: 'cylinder' | 'behind',
  level: number,
): number | undefined {
  const list = trace[which];
  const short = (i: number): number => at(trace.cylinder, i) - at(list, i);
  for (let i = 1; i < list.length; i++) {
    if (!(at(list, i - 1) < level && at(list, i) >= level)) continue;
    const [from, to] = [at(trace.angle, i - 1), at(trace.angle, i)];
    let [low, high] = [0, 1];
    for (let turn = 0; turn < 40; turn++) {
      const share = (low + high) / 2;
      const place =
        ((from + share * (to - from) - angleAt(drive, 0)) * drive.steps) / (4 * Math.PI);
      const missing = short(i - 1) + share * (short(i) - short(i - 1));
      if (smoothly(drive.pressure, place) - missing < level) low = share;
      else high = share;
    }
    return from + low * (to - from);
  }
  return undefined;
}

/**
 * How much later [rad] the pressure behind rises through {@link lagPressure} than the cylinder's.
 * `cylinder` or `behind` where that one never rises so far.
 */
export function lagOf(trace: RingTrace, drive: RingDrive): number | 'cylinder' | 'behind' {
  const first = rise(trace, drive, 'cylinder', lagPressure);
  if (first === undefined) return 'cylinder';
  const second = rise(trace, drive, 'behind', lagPressure);
  return second === undefined ? 'behind' : second - first;
}

/** Share of the cycle (0 to 1) that the ring spends off its lower flank. */
export function timeOffLower({ angle, lift }: RingTrace): number {
  let off = 0;
  for (let i = 1; i < angle.length; i++)
    if (at(lift, i - 1) + at(lift, i) > 0) off += at(angle, i) - at(angle, i - 1);
  return off / (4 * Math.PI);
}

/** Where [rad] the ring first leaves its lower flank, and where it last comes down on it; undefined if never. */
export function liftOf({ moves }: RingTrace): {
  readonly leaves: number | undefined;
  readonly lands: number | undefined;
} {
  return {
    leaves: moves.find(({ from }) => from === 'low')?.angle,
    lands: moves.findLast(({ to }) => to === 'low')?.angle,
  };
}
