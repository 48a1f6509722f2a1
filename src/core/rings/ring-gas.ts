import { flankConductance, holeConductance } from './ring-flows.ts';
import { seatLeak, type RingPack, type RingSeat } from './ring-pack.ts';
import type { RingState } from './ring-state.ts';

/** The two volumes and the six paths between cylinder, volumes and crankcase. */
export interface RingNetwork {
  /** Takes the paths as they are at these pressures [Pa]: cylinder, behind the ring, second land. */
  open(p1: number, pb: number, p2: number): void;
  /**
   * Pressures and gas after `seconds`, into `to`, with the ring at `lift` [m] and the cylinder at `p1` [Pa] at
   * the end. Leaves the ring's place in `to` alone.
   */
  fill(from: RingState, p1: number, lift: number, seconds: number, to: RingState): void;
}

/**
 * Makes the network of one pack. With `shut` the upper side clearance passes nothing.
 *
 * Volumes keep the wall's temperature, V/(RT)·dp/dt = in − out. Each path passes its conductance times the
 * difference of pressure; conductances as at the start of the step, pressures as at its end (implicit Euler):
 *
 *   (V_b/RT + t·(g_above + g_ports + g_between))·p_b − t·g_between·p_2 = V_b/RT·p_b0 + t·(g_above + g_ports)·p_1
 *
 * and the same for the land. Since no conductance is negative, each new pressure is a mean of the old ones,
 * the cylinder's and the crankcase's, with positive weights. So it lies between the least and the greatest of
 * them, however long the step. What leaves one volume enters the next, so that no gas is lost or made.
 */
export function ringNetwork(pack: RingPack, crankcase: number, seat: RingSeat): RingNetwork {
  const { rt, clearance, overlapAbove, overlapBelow } = pack;
  const behindHeld = pack.behindVolume / rt;
  const landHeld = pack.landVolume / rt;
  let [cylinder, behind, land] = [0, 0, 0];
  let [ports, door, face, exit] = [0, 0, 0, 0];
  return {
    open(p1, pb, p2) {
      cylinder = p1;
      behind = pb;
      land = p2;
      ports = holeConductance(pack.portArea, p1, pb, rt);
      door = holeConductance(pack.gapDoor, pb, p2, rt);
      face = holeConductance(pack.gapArea, p1, p2, rt);
      exit = holeConductance(pack.exitArea, p2, crankcase, rt);
    },
    fill(from, p1, lift, seconds, to) {
      const upper =
        seat === 'shut'
          ? 0
          : flankConductance(pack, overlapAbove, clearance - lift, cylinder, behind);
      const lower = flankConductance(pack, overlapBelow, lift, behind, land);
      const into = seconds * (upper + ports);
      const between = seconds * (lower + door * (seatLeak + lift));
      const past = seconds * face;
      const away = seconds * exit;
      // Cramer's rule, written out so that nothing nearly equal is subtracted, even through a wide path.
      const b = behindHeld + into;
      const l = landHeld + past + away;
      const all = b * l + between * (b + l);
      const [bb, both, ll] = [(l + between) / all, between / all, (b + between) / all];
      const toBehind = behindHeld * from.behind + into * p1;
      const toLand = landHeld * from.land + past * p1 + away * crankcase;
      to.behind = bb * toBehind + both * toLand;
      to.land = both * toBehind + ll * toLand;
      to.inflow = from.inflow + into * (p1 - to.behind) + past * (p1 - to.land);
      to.outflow = from.outflow + away * (to.land - crankcase);
      const [ownBehind, ownLand] = [bb * behindHeld, ll * landHeld];
      const [acrossBehind, acrossLand] = [both * landHeld, both * behindHeld];
      to.behindOfBehind = ownBehind * from.behindOfBehind + acrossBehind * from.landOfBehind;
      to.landOfBehind = acrossLand * from.behindOfBehind + ownLand * from.landOfBehind;
      to.behindOfLand = ownBehind * from.behindOfLand + acrossBehind * from.landOfLand;
      to.landOfLand = acrossLand * from.behindOfLand + ownLand * from.landOfLand;
    },
  };
}
