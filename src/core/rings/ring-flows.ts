import type { RingPack, RingSeat } from './ring-pack.ts';
import { ringGas, seatLeak } from './ring-pack.ts';

/** Relative pressure difference below which a hole's flow is taken straight instead of as a root. */
const gentle = 2e-4;
const γ = ringGas.heatRatio;
const choked = Math.sqrt(γ) * (2 / (γ + 1)) ** ((γ + 1) / (2 * (γ - 1)));
const critical = (2 / (γ + 1)) ** (γ / (γ - 1));

/** A flow [kg/s] and how it changes with the pressure before, the pressure after, and the gap's height. */
export interface Sensitive {
  flow: number;
  byFirst: number;
  bySecond: number;
  byHeight: number;
}

export function still(): Sensitive {
  return { flow: 0, byFirst: 0, bySecond: 0, byHeight: 0 };
}

/** ψ and dψ/dr for one pressure ratio; straight where the ratio is nearly one, or its slope has no bound. */
function psi(ratio: number): readonly [number, number] {
  if (ratio <= critical) return [choked, 0];
  const r = Math.min(ratio, 1 - gentle);
  const root = r ** (1 / γ);
  const speed = Math.sqrt(((2 * γ) / (γ - 1)) * (1 - r / root));
  if (ratio > 1 - gentle) {
    const slope = (root * speed) / gentle;
    return [slope * (1 - ratio), -slope];
  }
  return [root * speed, (root * speed) / (γ * r) - 1 / speed];
}

/**
 * Flow [kg/s] through a hole of effective area `area` [m²] from `first` to `second` [Pa], negative the other
 * way. As `flowFunction`, but straight within 0.02 % of equal pressures: the difference that a flow needs
 * there is overstated by at most that share.
 */
export function holeFlow(
  area: number,
  first: number,
  second: number,
  rt: number,
  out: Sensitive,
): void {
  const scale = area / Math.sqrt(rt);
  out.byHeight = 0;
  if (first >= second) {
    const [value, slope] = psi(second / first);
    out.flow = scale * first * value;
    out.byFirst = scale * (value - (second / first) * slope);
    out.bySecond = scale * slope;
  } else {
    const [value, slope] = psi(first / second);
    out.flow = -scale * second * value;
    out.bySecond = -scale * (value - (first / second) * slope);
    out.byFirst = -scale * slope;
  }
}

/**
 * Flow [kg/s] through a flank's open gap of height `gap` [m]: the laminar slot w·h³(p_1² − p_2²)/(24µlRT),
 * but no more than the choked hole of its area. Negative the other way.
 */
export function flankFlow(
  pack: RingPack,
  overlap: number,
  gap: number,
  first: number,
  second: number,
  out: Sensitive,
): void {
  if (gap <= 0) {
    out.flow = out.byFirst = out.bySecond = out.byHeight = 0;
    return;
  }
  const creep = (pack.girth * gap ** 3) / (24 * pack.viscosity * overlap * pack.rt);
  const laminar = creep * (first * first - second * second);
  const scale = (pack.girth * gap * choked) / Math.sqrt(pack.rt);
  const most = scale * Math.max(first, second);
  if (Math.abs(laminar) <= most) {
    out.flow = laminar;
    out.byFirst = 2 * creep * first;
    out.bySecond = -2 * creep * second;
    out.byHeight = (3 * laminar) / gap;
    return;
  }
  const sign = Math.sign(laminar);
  out.flow = sign * most;
  out.byFirst = sign > 0 ? scale : 0;
  out.bySecond = sign > 0 ? 0 : -scale;
  out.byHeight = (sign * most) / gap;
}

/** Cylinder and piston at one crank angle: pressure [Pa], the ring's acceleration with the piston [m/s²], and −1 to 1 for the way the piston goes (1 down). */
export interface Drive {
  pressure: number;
  acceleration: number;
  way: number;
}

/** Flows [kg/s] round the ring, all downward: the order of the paths in the page's list. */
export interface RingFlows {
  readonly above: Sensitive;
  readonly ports: Sensitive;
  readonly below: Sensitive;
  readonly gapBehind: Sensitive;
  readonly gapFace: Sensitive;
  readonly exit: Sensitive;
}

export function ringFlows(): RingFlows {
  return {
    above: still(),
    ports: still(),
    below: still(),
    gapBehind: still(),
    gapFace: still(),
    exit: still(),
  };
}

/**
 * Works out every flow. `lift` [m] is the ring's height over the lower flank; `behind`, `land`, `crankcase`
 * are pressures [Pa, absolute]. With `shut` the upper side clearance passes nothing.
 */
export function fillFlows(
  pack: RingPack,
  seat: RingSeat,
  pressure: number,
  crankcase: number,
  behind: number,
  land: number,
  lift: number,
  flows: RingFlows,
): void {
  const open = seat === 'shut' ? 0 : pack.clearance - lift;
  flankFlow(pack, pack.overlapAbove, open, pressure, behind, flows.above);
  holeFlow(pack.portArea, pressure, behind, pack.rt, flows.ports);
  flankFlow(pack, pack.overlapBelow, lift, behind, land, flows.below);
  const door = pack.gapDoor * (seatLeak + Math.max(0, lift));
  holeFlow(door, behind, land, pack.rt, flows.gapBehind);
  flows.gapBehind.byHeight = door > 0 ? (flows.gapBehind.flow * pack.gapDoor) / door : 0;
  holeFlow(pack.gapArea, pressure, land, pack.rt, flows.gapFace);
  holeFlow(pack.exitArea, land, crankcase, pack.rt, flows.exit);
}
