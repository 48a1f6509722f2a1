import { falsePosition } from '../math/false-position.ts';
import { between, type RingDrive } from './ring-drive.ts';
import { axialGas, radialForce } from './ring-forces.ts';
import { ringNetwork } from './ring-gas.ts';
import type { RingPack, RingSeat } from './ring-pack.ts';
import { copyState, extrapolate, startState, type RingState } from './ring-state.ts';

/** Gas and ring carried on by the drive. Places and lengths count the drive's intervals. */
export interface RingStepper {
  /**
   * One step into `to`. True where it is calm: the ring rests on the same flank all the time, or flies
   * smoothly. A step that is not is as good as its length, and a shorter one finds the move.
   */
  step(from: RingState, place: number, length: number, to: RingState): boolean;
}

/** Share of the clearance to which a height in flight is worked out. */
const fine = 1e-7;

/** Share of a pressure that arithmetic may add or lose. */
const rounding = 1e-12;

/** Share of the clearance by which two halves and a whole step may differ in a smooth flight. */
const smooth = 0.01;

/** One step of implicit Euler. */
interface EulerStep {
  /** Takes the paths as they are in this state. */
  open(from: RingState, place: number): void;
  /** Carries it on by `length`, into `to`. */
  go(from: RingState, place: number, length: number, to: RingState): void;
}

/**
 * One step of implicit Euler for gas and ring together.
 *
 * The ring: m·(a_p − ẍ) = F, with a_p the piston's acceleration towards the crank, x the height over the lower
 * flank, F the gas's force downward less the bore's drag, all as at the end of the step. A flank stops the ring
 * dead (the oil takes up the blow), and it stays there while F presses it on. Whatever the forces, some height
 * satisfies this: the ring rests where the sum points into a flank, and else a change of sign lies between.
 */
function eulerStep(pack: RingPack, drive: RingDrive, seat: RingSeat): EulerStep {
  const gas = ringNetwork(pack, drive.crankcase, seat);
  const { clearance, mass, friction } = pack;
  const within = fine * clearance;

  function settle(from: RingState, end: number, seconds: number, to: RingState): number {
    const p1 = between(drive.pressure, end);
    if (seat !== 'free') {
      gas.fill(from, p1, from.lift, seconds, to);
      return from.lift;
    }
    const piston = between(drive.acceleration, end);
    const drag = friction * between(drive.way, end);
    /** By how much [m/s] the ring at `lift` rises faster than the forces make it. */
    function surplus(lift: number): number {
      gas.fill(from, p1, lift, seconds, to);
      const { behind, land } = to;
      const down =
        axialGas(pack, p1, behind, land, lift) - drag * radialForce(pack, p1, behind, land);
      return (lift - from.lift) / seconds - from.rise - seconds * (piston - down / mass);
    }
    const here = surplus(from.lift);
    if (here > 0 && from.lift > 0) {
      const low = surplus(0);
      if (low >= 0) return 0;
      return falsePosition(surplus, [0, low], [from.lift, here], within);
    }
    if (here < 0 && from.lift < clearance) {
      const high = surplus(clearance);
      if (high <= 0) return clearance;
      return falsePosition(surplus, [from.lift, here], [clearance, high], within);
    }
    return from.lift;
  }

  return {
    open(from, place) {
      gas.open(between(drive.pressure, place), from.behind, from.land);
    },
    go(from, place, length, to) {
      const seconds = length * drive.interval;
      to.lift = settle(from, place + length, seconds, to);
      to.rise = to.lift > 0 && to.lift < clearance ? (to.lift - from.lift) / seconds : 0;
    },
  };
}

/**
 * Makes the stepper of one pack, one engine and one way of seating.
 *
 * Two halves of implicit Euler and one whole give the second order: twice the one less the other
 * (L. F. Richardson, 1911). Where a path is so wide that the pressures only follow, each step's conductances
 * are those of the step before, and the error falls in step with the length; a test holds it.
 * Each of the three keeps the pressures between those that drive them and the ring between its flanks; the
 * halves stand as they are where the difference would not, or where it would mix a ring at rest with one in
 * flight.
 */
export function ringStepper(pack: RingPack, drive: RingDrive, seat: RingSeat): RingStepper {
  const euler = eulerStep(pack, drive, seat);
  const { clearance } = pack;
  const [middle, halves, whole] = [startState(0, 0), startState(0, 0), startState(0, 0)];
  const lowest = drive.lowest * (1 - rounding);
  const highest = drive.highest * (1 + rounding);
  function driven({ behind, land }: RingState): boolean {
    return Math.min(behind, land) >= lowest && Math.max(behind, land) <= highest;
  }
  function flies({ lift }: RingState): boolean {
    return lift > 0 && lift < clearance;
  }
  return {
    step(from, place, length, to) {
      const half = length / 2;
      euler.open(from, place);
      euler.go(from, place, half, middle);
      euler.go(from, place, length, whole);
      euler.open(middle, place + half);
      euler.go(middle, place + half, half, halves);
      const { lift } = from;
      const rests =
        !flies(from) && middle.lift === lift && halves.lift === lift && whole.lift === lift;
      const inAir = flies(middle) && flies(halves) && flies(whole);
      extrapolate(halves, whole, to);
      if (!driven(to) || !(rests || (inAir && flies(to)))) copyState(halves, to);
      if (rests) return true;
      return flies(from) && inAir && Math.abs(halves.lift - whole.lift) <= smooth * clearance;
    },
  };
}
