import { integrateStiff } from '../math/rosenbrock.ts';
import { steadySearch } from '../math/steady.ts';
import { driveAt, driveStill, type RingDrive } from './ring-drive.ts';
import { flyingSize, ringEquations, seatedSize, type RingPlace } from './ring-motion.ts';
import type { RingPack, RingSeat } from './ring-pack.ts';

/** One steady cycle of the ring, as the integration stepped through it: −π to 3π, firing TDC at zero. */
export interface RingTrace {
  /** [rad], in rising order; both pressures [Pa, absolute]; `lift` [m] over the lower flank. */
  readonly angle: Float64Array;
  readonly cylinder: Float64Array;
  readonly behind: Float64Array;
  readonly land: Float64Array;
  readonly lift: Float64Array;
  /** Gas [kg] that came in from the cylinder less what went back, and that left to the crankcase. */
  readonly in: number;
  readonly out: number;
  /**
   * By how much the gas held in the two spaces differs from a cycle before, over what came in: below 1e-9 in a
   * steady cycle, more where a ring that trembles between its flanks never repeats exactly.
   */
  readonly drift: number;
  /** What came in less what went out less what is held more, over what came in: bookkeeping. */
  readonly unbooked: number;
  /** Where the ring left its flank or came to rest on one [rad], in order. */
  readonly moves: readonly { readonly angle: number; readonly to: RingPlace }[];
  /** Cycles until it repeated, and steps of the last one. */
  readonly cycles: number;
  readonly steps: number;
}

/** How exactly. `relative` is the error allowed in a step's pressures. */
export interface RingPrecision {
  readonly relative: number;
  readonly longestStep: number;
  readonly mostCycles: number;
  /** The greatest drift (see {@link RingTrace}) of a cycle that counts as steady. */
  readonly steady: number;
}

const usual: RingPrecision = {
  relative: 1e-4,
  longestStep: Math.PI / 60,
  mostCycles: 40,
  steady: 2e-10,
};

const start = -Math.PI;
const end = 3 * Math.PI;
/** [rad] The shortest stay on a flank, so that a ring that only trembles there costs no end of steps. */
const stay = 1e-3;

/** Cycles on one set of steps before they are made anew. */
const patience = 14;

interface State {
  y: Float64Array;
  place: RingPlace;
}

interface Log {
  angle: number[];
  behind: number[];
  land: number[];
  lift: number[];
  moves: { angle: number; to: RingPlace }[];
}

function relativeChange(from: State, to: State): number {
  const of = (i: number): number => Math.abs((to.y[i] ?? 0) / (from.y[i] ?? 0) - 1);
  return Math.max(of(0), of(1));
}

/**
 * The steady cycle of the gas round the top ring, with the ring free to lift, held low, or its upper side
 * clearance shut.
 *
 * The ring sits on a flank while the forces hold it there; it flies by its own equation of motion when they
 * do not, and stops dead where it lands (the oil takes up the blow). Each change is located to 1e-9 of a
 * cycle. The oil's pull when a flank opens, the twist of the ring and its bending are left out.
 *
 * Cycles are repeated, both pressures being carried on by what the last cycles taught (Broyden), until the
 * gas held changes by less than `steady` of what flows in, or `mostCycles` are done.
 */
export function ringCycle(
  pack: RingPack,
  drive: RingDrive,
  seat: RingSeat,
  precision: Partial<RingPrecision> = {},
): RingTrace {
  const { relative, longestStep, mostCycles, steady } = { ...usual, ...precision };
  const equations = ringEquations(pack, drive, seat);
  const mayLift = seat === 'free' && pack.clearance > 0;
  const absolute = [20, 20, 1, 1, 1e-8, 1e-7];

  function once(
    from: State,
    log: Log,
    mesh: readonly number[] | undefined,
  ): State & { steps: number } {
    let { place } = from;
    let t = start;
    let y = from.y;
    let steps = 0;
    let firstStep = 0.01;
    const seen = (at: number, now: Float64Array): void => {
      if (log.angle.length > 0 && at <= (log.angle.at(-1) ?? at)) return;
      log.angle.push(at);
      log.behind.push(now[0] ?? 0);
      log.land.push(now[1] ?? 0);
      log.lift.push(
        now.length === flyingSize
          ? Math.min(Math.max(now[4] ?? 0, 0), pack.clearance)
          : place === 'high'
            ? pack.clearance
            : 0,
      );
    };
    let earliest = t;
    while (t < end - 1e-12) {
      const flying = place === 'flying';
      if (!flying) equations.place = place;
      const control = { relative, absolute, firstStep, longestStep, mesh, seen };
      const after = flying
        ? integrateStiff(equations.flying, t, y, end, {
            ...control,
            firstStep: stay,
            inside: (_, now) => Math.min(now[4] ?? 0, pack.clearance - (now[4] ?? 0)),
          })
        : mayLift
          ? integrateStiff(equations.seated, t, y, end, {
              ...control,
              inside: (at, now) => (at < earliest ? 1 : equations.hold(at, now)),
            })
          : integrateStiff(equations.seated, t, y, end, control);
      steps += after.steps;
      firstStep = stay;
      t = after.t;
      y = after.y;
      if (!after.stopped) break;
      if (flying) {
        place = (y[4] ?? 0) > pack.clearance / 2 ? 'high' : 'low';
        y = y.slice(0, seatedSize);
        earliest = t + stay;
      } else {
        const lift = place === 'high' ? pack.clearance : 0;
        place = 'flying';
        const air = new Float64Array(flyingSize);
        air.set(y);
        air[4] = lift;
        y = air;
      }
      log.moves.push({ angle: t, to: place });
    }
    return { y, place, steps };
  }

  const held = (y: Float64Array): number =>
    ((y[0] ?? 0) * pack.behindVolume + (y[1] ?? 0) * pack.landVolume) / pack.rt;
  const fresh = (state: State): State => {
    const y = Float64Array.from(state.y);
    y[2] = 0;
    y[3] = 0;
    return { y, place: state.place };
  };

  const now = driveStill();
  driveAt(drive, start, now);
  let state: State = {
    y: Float64Array.of(now.pressure, 1.1 * drive.crankcase, 0, 0),
    place: 'low',
  };
  const search = steadySearch();
  let mesh: readonly number[] | undefined;
  let frozenAt = 0;
  for (let cycles = 1; ; cycles++) {
    const log: Log = { angle: [], behind: [], land: [], lift: [], moves: [] };
    const next = once(state, log, mesh);
    const through = Math.max(Math.abs(next.y[2] ?? 0), 1e-12);
    const change = held(next.y) - held(state.y);
    const rest =
      Math.abs((next.y[0] ?? 0) - (state.y[0] ?? 0)) * pack.behindVolume +
      Math.abs((next.y[1] ?? 0) - (state.y[1] ?? 0)) * pack.landVolume;
    const repeats = next.place === state.place && rest / pack.rt <= steady * through;
    if (repeats || cycles === mostCycles)
      return {
        angle: Float64Array.from(log.angle),
        cylinder: Float64Array.from(log.angle, (at) => {
          driveAt(drive, at, now);
          return now.pressure;
        }),
        behind: Float64Array.from(log.behind),
        land: Float64Array.from(log.land),
        lift: Float64Array.from(log.lift),
        in: next.y[2] ?? 0,
        out: next.y[3] ?? 0,
        drift: rest / pack.rt / through,
        unbooked: ((next.y[2] ?? 0) - (next.y[3] ?? 0) - change) / through,
        moves: log.moves,
        cycles,
        steps: next.steps,
      };
    const settled = next.place === state.place;
    // Steps that follow the error jump with it, and the cycle with them: near the end they are kept.
    if (mesh === undefined && settled && relativeChange(state, next) < 1e-2) {
      mesh = log.angle;
      frozenAt = cycles;
    } else if (mesh !== undefined && (!settled || cycles > frozenAt + patience)) mesh = undefined;
    const carried = fresh(next);
    if (settled && next.place !== 'flying') search.next(state.y, next.y, carried.y);
    else search.forget();
    state = carried;
  }
}
