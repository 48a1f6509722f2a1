import { at } from '../math/at.ts';
import { angleAt, type RingDrive } from './ring-drive.ts';
import { copyState, startState, type RingState } from './ring-state.ts';
import type { RingStepper } from './ring-step.ts';

/** Where the ring is: on the lower flank, in flight between both, on the upper one. */
export type RingPlace = 'low' | 'flying' | 'high';

/** One cycle as it was stepped through. Places count the drive's intervals from −π. */
export interface RingWalk {
  readonly end: RingState;
  readonly places: readonly number[];
  /** [Pa, absolute], and [m] over the lower flank. */
  readonly behind: readonly number[];
  readonly land: readonly number[];
  readonly lift: readonly number[];
  /** Where the ring left its flank or came to rest on one [rad], in order. */
  readonly moves: readonly RingMove[];
  /** How many steps of implicit Euler it took, those of refused steps included. */
  readonly work: number;
}

/** A change of the ring's place. */
export interface RingMove {
  readonly angle: number;
  readonly from: RingPlace;
  readonly to: RingPlace;
}

function placeOf(lift: number, clearance: number): RingPlace {
  if (lift <= 0) return 'low';
  return lift < clearance ? 'flying' : 'high';
}

/**
 * Walks once through the cycle from `start`, on every `stride`-th of the drive's nodes.
 *
 * Where the ring moves, a step is refused and halved until it is calm or the shortest; then steps may double
 * again. So the steps taken number at most those of the nodes and of the shortest length together, and those
 * refused hardly more: each halving is one doubling undone.
 */
export function walkCycle(
  stepper: RingStepper,
  drive: RingDrive,
  clearance: number,
  start: RingState,
  stride: number,
): RingWalk {
  const now = startState(start.behind, start.land, start.lift, start.rise);
  const next = startState(0, 0);
  const places = [0];
  const behind = [now.behind];
  const land = [now.land];
  const lift = [now.lift];
  const moves: RingMove[] = [];
  const least = drive.shortest * stride;
  const last = drive.nodes.length - 1;
  let work = 0;
  let place = 0;
  let node = 0;
  let length = drive.steps;
  while (place < drive.steps) {
    while (at(drive.nodes, Math.min(node, last)) <= place) node += stride;
    length = Math.min(2 * length, at(drive.nodes, Math.min(node, last)) - place);
    work += 3;
    while (!stepper.step(now, place, length, next) && length > least) {
      length = Math.max(least, length / 2);
      work += 3;
    }
    const [from, to] = [placeOf(now.lift, clearance), placeOf(next.lift, clearance)];
    if (from !== to) moves.push({ angle: angleAt(drive, place + length / 2), from, to });
    place += length;
    copyState(next, now);
    places.push(place);
    behind.push(now.behind);
    land.push(now.land);
    lift.push(now.lift);
  }
  return { end: now, places, behind, land, lift, moves, work };
}
