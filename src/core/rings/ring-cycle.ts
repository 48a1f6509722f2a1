import { at } from '../math/at.ts';
import { relativeStep, steadySearch, type Pair } from '../math/steady.ts';
import { angleAt, between, type RingDrive } from './ring-drive.ts';
import type { RingPack, RingSeat } from './ring-pack.ts';
import { startState, type RingState } from './ring-state.ts';
import { ringStepper } from './ring-step.ts';
import { walkCycle, type RingMove, type RingWalk } from './ring-walk.ts';

/** One steady cycle of the ring, as it was stepped through: −π to 3π, firing TDC at zero. */
export interface RingTrace {
  /** [rad], in rising order; pressures [Pa, absolute]; `lift` [m] over the lower flank. */
  readonly angle: Float64Array;
  readonly cylinder: Float64Array;
  readonly behind: Float64Array;
  readonly land: Float64Array;
  readonly lift: Float64Array;
  /** Gas [kg] that came in from the cylinder less what went back, and that left to the crankcase. */
  readonly inflow: number;
  readonly outflow: number;
  /** By how much the gas in each space differs from a cycle before, added up, over the gas in both. */
  readonly drift: number;
  /** Where the ring left its flank or came to rest on one, in order. */
  readonly moves: readonly RingMove[];
  /** Steps of implicit Euler in all cycles together. */
  readonly work: number;
}

/** Cycles walked one after the other on every `stride`-th node. */
interface Round {
  readonly stride: number;
  /** The most that there may be. */
  readonly cycles: number;
  /** Share of a pressure: once the search would change neither by more, they are settled. */
  readonly within: number;
}

const coarse: Round = { stride: 4, cycles: 10, within: 3e-3 };
const fine: Round = { stride: 1, cycles: 6, within: 5e-4 };

/** Steps of Euler after which a round takes no new cycle. */
const mostWork = 40_000;

/** Share of the clearance by which the ring may end higher or lower than it began in a steady cycle. */
const sameLift = 0.01;

function traceOf(
  walk: RingWalk,
  start: RingState,
  pack: RingPack,
  drive: RingDrive,
  work: number,
): RingTrace {
  const { end } = walk;
  const [inBehind, inLand] = [pack.behindVolume / pack.rt, pack.landVolume / pack.rt];
  const moreBehind = inBehind * (end.behind - start.behind);
  const moreLand = inLand * (end.land - start.land);
  const held = inBehind * start.behind + inLand * start.land;
  const places = new Float64Array(walk.places);
  return {
    angle: places.map((place) => angleAt(drive, place)),
    cylinder: places.map((place) => between(drive.pressure, place)),
    behind: new Float64Array(walk.behind),
    land: new Float64Array(walk.land),
    lift: new Float64Array(walk.lift),
    inflow: end.inflow,
    outflow: end.outflow,
    drift: (Math.abs(moreBehind) + Math.abs(moreLand)) / held,
    moves: walk.moves,
    work,
  };
}

/**
 * The steady cycle of the gas round the top ring, with the ring free to lift, held low, or its upper side
 * clearance shut.
 *
 * Cycles are repeated, the two pressures carried on by the search for a steady cycle, until they settle or one
 * of the bounds on cycles and work is reached; a ring that never repeats its motion then shows as `drift`. No
 * input can make it more than {@link mostWork} steps and one cycle, and the last cycle.
 * The oil's pull when a flank opens, the twist of the ring and its bending are left out.
 */
export function ringCycle(pack: RingPack, drive: RingDrive, seat: RingSeat): RingTrace {
  const stepper = ringStepper(pack, drive, seat);
  const search = steadySearch(drive.lowest, drive.highest);
  let work = 0;

  function settle(
    from: RingState,
    { stride, cycles, within }: Round,
  ): { readonly start: RingState; readonly walk: RingWalk; readonly next: RingState } {
    search.restart();
    let start = from;
    for (let cycle = 1; ; cycle++) {
      const walk = walkCycle(stepper, drive, pack.clearance, start, stride);
      const { end } = walk;
      work += walk.work;
      const pair: Pair = [start.behind, start.land];
      const tried = search.next(
        pair,
        [end.behind, end.land],
        [end.behindOfBehind, end.behindOfLand, end.landOfBehind, end.landOfLand],
      );
      const repeats = Math.abs(end.lift - start.lift) <= sameLift * pack.clearance;
      const next = repeats ? startState(...tried, end.lift, end.rise) : end;
      const settled = repeats && relativeStep(pair, tried) <= within;
      if (settled || cycle === cycles || work > mostWork) return { start, walk, next };
      start = next;
    }
  }

  const begin = startState(at(drive.pressure, 0), drive.crankcase);
  const { start, walk } = settle(settle(begin, coarse).next, fine);
  return traceOf(walk, start, pack, drive, work);
}
