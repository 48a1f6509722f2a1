import { airViscosity } from './orifice-flow.ts';
import { above, atLeast, atMost, below, fraction, refusal } from '../refuse.ts';

/** Gas constant of air [J/(kg·K)] and the ratio of specific heats of the gas between the rings. */
export const ringGas = { gasConstant: 287, heatRatio: 1.35 } as const;

/** How the top ring may move, or where it is held. */
export type RingSeat = 'free' | 'lower' | 'shut';
/** Holes from the crown, or slots through the groove's upper face. */
export type PortKind = 'crown' | 'lateral';

/** Top ring, its groove, and the land below, as measured. Lengths in m, pressures in Pa, temperatures in K. */
export interface RingPackInput {
  readonly bore: number;
  readonly ring1Height: number;
  readonly ring1Radial: number;
  /** Tangential force [N] that closes the ring to the bore. */
  readonly ring1Tension: number;
  readonly ringDensity: number;
  readonly ringSideClearance: number;
  readonly ringBackClearance: number;
  readonly topLandHeight: number;
  /** Bore less land diameter. */
  readonly topLandClearance: number;
  readonly secondLandHeight: number;
  readonly secondLandClearance: number;
  /** End gaps in the bore, running: hot. */
  readonly ring1Gap: number;
  readonly ring2Gap: number;
  readonly portCount: number;
  readonly portDiameter: number;
  readonly portKind: PortKind;
  /** Share of the holes' area that is closed, 0 to 1. */
  readonly portPlugged: number;
  readonly dischargeCoefficient: number;
  /** Share of p_1 − p_2 that presses the ring to the bore, by where the face touches. */
  readonly faceFactor: number;
  /** Share of the pressure difference across a closed flank that holds it closed. */
  readonly flankFactor: number;
  readonly ringFriction: number;
  readonly ringTemperature: number;
}

/** The same, worked into what the flows and forces need. SI. */
export interface RingPack {
  /** [m³] behind the ring, and of the second land. */
  readonly behindVolume: number;
  readonly landVolume: number;
  /** [m²] one face of the ring; its mass [kg]. */
  readonly sideArea: number;
  readonly mass: number;
  /** [m] mean circumference, and what the flanks overlap above and below. */
  readonly girth: number;
  readonly overlapAbove: number;
  readonly overlapBelow: number;
  readonly clearance: number;
  /** [m²] effective areas: ports, gap of the top ring past its face, gap of the second ring. */
  readonly portArea: number;
  readonly gapArea: number;
  readonly exitArea: number;
  /** [m] hot gap of the top ring times the discharge coefficient: the door at the gap is this by its height. */
  readonly gapDoor: number;
  /** [m²] the bore's surface that the ring touches, for its load; pressure [Pa] of its own tension there. */
  readonly faceArea: number;
  readonly tensionPressure: number;
  /** R·T [J/kg], viscosity [Pa·s]. */
  readonly rt: number;
  readonly viscosity: number;
  readonly faceFactor: number;
  readonly flankFactor: number;
  readonly friction: number;
}

/**
 * Height [m] by which a closed flank still leaks at the ring's ends, from waviness and finish: assumed, so
 * that no space is sealed for ever. Common practice, no source.
 */
export const seatLeak = 5e-6;

/**
 * The greatest side clearance [m] there is. With more the ring tips in its groove and hammers it out, and
 * neither a thin flat gap nor a ring that moves flat has a meaning. Common practice, no source.
 */
export const greatestSideClearance = 0.4e-3;

/** Free area [m²] of the ports as drilled: whole circles from the crown, half circles cut into the upper face. */
export function portArea(portCount: number, portDiameter: number, portKind: PortKind): number {
  const circle = (Math.PI / 4) * portDiameter ** 2;
  return portCount * (portKind === 'crown' ? circle : circle / 2);
}

/**
 * Checks a ring pack and works out its volumes, areas and masses.
 *
 * Behind the ring: a hollow cylinder of the back clearance, as high as ring and side clearance together.
 * Second land: the annulus between land and bore; the space behind the second ring is left out, so that the
 * land's pressure comes out somewhat high. The crevice above the top ring is taken at cylinder pressure.
 * Side clearance is groove height less ring height, so a ring thicker than its groove has a negative one.
 *
 * Throws OutOfDomain naming `ringSideClearance` (negative, or too great for a groove), `ringBackClearance` (no
 * volume), `portDiameter` (greater than the top land is high), `portCount` (holes that would touch each other), or
 * any other bad value.
 */
export function ringPack(input: RingPackInput): RingPack {
  const bore = above(input, 'bore');
  const height = above(input, 'ring1Height');
  above(input, 'ring1Radial');
  const radial = below(input, 'ring1Radial', bore / 2, 'half the bore');
  atLeast(input, 'ringSideClearance');
  const side = atMost(input, 'ringSideClearance', greatestSideClearance);
  const back = above(input, 'ringBackClearance');
  const landHeight = above(input, 'topLandHeight');
  const topGap = atLeast(input, 'topLandClearance') / 2;
  below(input, 'topLandClearance', 2 * radial, 'twice the ring’s radial wall');
  const secondGap = above(input, 'secondLandClearance') / 2;
  below(input, 'secondLandClearance', 2 * radial, 'twice the ring’s radial wall');
  const secondHeight = above(input, 'secondLandHeight');
  const count = atLeast(input, 'portCount');
  const hole = atLeast(input, 'portDiameter');
  if (count > 0) {
    atMost(input, 'portDiameter', landHeight, 'the height of the top land');
    const room = Math.PI * (bore - 2 * radial);
    if (count * hole >= room)
      throw refusal(input, 'portCount', 'less than', room / hole, 'what fits round the groove');
  }
  const plugged = fraction(input, 'portPlugged');
  above(input, 'dischargeCoefficient');
  const coefficient = atMost(input, 'dischargeCoefficient', 1);
  const gap1 = atLeast(input, 'ring1Gap');
  const gap2 = atLeast(input, 'ring2Gap');
  const temperature = above(input, 'ringTemperature');
  const girth = Math.PI * (bore - radial);
  const sideArea = girth * radial;
  const faceArea = Math.PI * bore * height;
  const tension = atLeast(input, 'ring1Tension');
  return {
    behindVolume: Math.PI * (bore - 2 * radial - back) * back * (height + side),
    landVolume: Math.PI * (bore - secondGap) * secondGap * secondHeight,
    sideArea,
    mass: above(input, 'ringDensity') * height * sideArea,
    girth,
    overlapAbove: radial - topGap,
    overlapBelow: radial - secondGap,
    clearance: side,
    portArea: coefficient * (1 - plugged) * portArea(count, hole, input.portKind),
    gapArea: coefficient * gap1 * Math.min(topGap, secondGap),
    exitArea: coefficient * gap2 * secondGap,
    gapDoor: coefficient * gap1,
    faceArea,
    tensionPressure: (2 * tension) / (bore * height),
    rt: ringGas.gasConstant * temperature,
    viscosity: airViscosity(temperature),
    faceFactor: fraction(input, 'faceFactor'),
    flankFactor: fraction(input, 'flankFactor'),
    friction: atLeast(input, 'ringFriction'),
  };
}

/**
 * End gap [m] of a ring as it runs: cold gap less π·d·(α_r·(T_r − T_0) − α_b·(T_b − T_0)), never below zero
 * (the ends then touch, and a ring whose ends butt breaks its land). Temperatures in K, expansions in 1/K.
 * Source: growth of two circles (own derivation).
 */
export function hotGap(
  coldGap: number,
  {
    bore,
    ringExpansion,
    ringTemperature,
    boreExpansion,
    boreTemperature,
    room = 293.15,
  }: {
    readonly bore: number;
    readonly ringExpansion: number;
    readonly ringTemperature: number;
    readonly boreExpansion: number;
    readonly boreTemperature: number;
    readonly room?: number;
  },
): number {
  const closing =
    ringExpansion * (ringTemperature - room) - boreExpansion * (boreTemperature - room);
  return Math.max(0, coldGap - Math.PI * bore * closing);
}
