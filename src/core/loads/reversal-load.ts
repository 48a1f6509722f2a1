import { above, atLeast, atMost, below } from '../refuse.ts';

/** Lengths [m] that set the piston's acceleration at the dead centres. */
export interface CrankGeometry {
  readonly stroke: number;
  /** Centre to centre; greater than half the stroke. */
  readonly rodLength: number;
}

/** What hangs on a cut through the shank: masses [kg], and where it is cut [m]. */
export interface PartsAbove {
  readonly pistonMass: number;
  readonly ringMass: number;
  readonly lockMass: number;
  readonly pinMass: number;
  /** From the pin centre towards the crankpin; at most the rod's length. */
  readonly shankSection: number;
  /** Rod metal between that section and the small end's top. */
  readonly rodMassAbove: number;
}

/** The same with the rest of the rod, cap and shells [kg]. */
export interface HangingParts extends PartsAbove {
  /** The rod's two ends as weighed with the rod level; their sum is the whole rod with its bolts. */
  readonly smallEndMass: number;
  readonly bigEndMass: number;
  readonly shellMass: number;
  /** Cap, bolts and half shell: all that stays on the far side of the parting line. */
  readonly capMass: number;
}

/**
 * The pull through each section for a crank speed of one radian a second: force divided by ω²
 * [N·s²/rad² = kg·m]. Times ω² it is the pull at overlap TDC; positive is tension.
 */
export interface PullFactors {
  /** Piston bosses: piston, rings, locks. */
  readonly boss: number;
  /** Small-end eye: the pin as well. */
  readonly eye: number;
  /** Shank at `shankSection`: the rod metal above it as well. */
  readonly shank: number;
  /** All that counts as reciprocating: eye and the small end as weighed. */
  readonly reciprocating: number;
  /** Parting line of the big end, both bolts together. */
  readonly parting: number;
  /** Crankpin: the whole rod with its shells. */
  readonly crankpin: number;
}

function checkGeometry(geometry: CrankGeometry): void {
  const stroke = above(geometry, 'stroke');
  above(geometry, 'rodLength', stroke / 2, 'half the stroke');
}

/**
 * Piston acceleration at the dead centres divided by ω² [m], for a rod whose pin runs on the bore's axis:
 * `top` = r(1 + λ), `bottom` = r(1 − λ), and `crankpin` = r between them; r = stroke/2, λ = r/L. At TDC the
 * acceleration points to the crank, at BDC to the head; both are given positive. Exact, no series.
 *
 * Neglected: an offset e of pin or bore. At the shifted TDC the acceleration is greater by 1/cos β, the pull
 * along the rod by 1/cos² β, with sin β = e/(L + r): 0.002 % for 0.8 mm, 0.6 % for 14 mm in a rod and throw
 * of 180 mm together (see {@link offsetGain}).
 *
 * Throws OutOfDomain unless stroke > 0 and rodLength > stroke/2.
 */
export function deadCentreAcceleration(geometry: CrankGeometry): {
  readonly top: number;
  readonly bottom: number;
  readonly crankpin: number;
} {
  checkGeometry(geometry);
  const r = geometry.stroke / 2;
  const λ = r / geometry.rodLength;
  return { top: r * (1 + λ), bottom: r * (1 - λ), crankpin: r };
}

/**
 * How many times greater the pull along the rod at TDC is with an offset [m] between the crank's axis and
 * the pin's path than without: 1/cos² β, sin β = offset/(L + r). With crank and rod in one line at rest along
 * it, the pin's acceleration along that line is rω²(1 + λ); along the bore it is that over cos β, and the
 * rod's force is the bore's force over cos β again.
 *
 * Throws OutOfDomain unless the offset's size is below L + r.
 */
export function offsetGain(geometry: CrankGeometry, boreOffset: number): number {
  checkGeometry(geometry);
  const reach = geometry.rodLength + geometry.stroke / 2;
  const limitName = 'rod length and half the stroke together';
  below({ boreOffset }, 'boreOffset', reach, limitName);
  above({ boreOffset }, 'boreOffset', -reach, `minus ${limitName}`);
  const sine = boreOffset / reach;
  return 1 / ((1 - sine) * (1 + sine));
}

/**
 * Pull at overlap TDC through every section of one cylinder's parts, divided by ω² [kg·m].
 *
 * The rod is taken as its two weighed ends, which give the force on the crankpin exactly: the acceleration
 * along the rod is linear, and the ends keep mass and centre of gravity. Parting line: ω²r[m_rec(1 + λ) +
 * (m_be + m_shell − m_cap)], the cap taken at the crankpin's centre (A. I. Kolchin, V. P. Demidov, Design of
 * Automotive Engines, 1984, big-end design; from memory, and derived on the page). Shank: the metal above
 * the section has its centre taken half way from the pin to it. With its centre anywhere from the pin to the
 * section its own part is wrong by at most rω²λ·y/(2L): about 2 % of a part that is a sixth of the pull.
 *
 * Neglected: friction, weight, gas (see {@link suctionForce}). The cap's centre really lies a distance d
 * beyond the crankpin, so that less of the crankpin's force belongs to it and more to the parting line, by
 * m_cap·rω²λ·d/L: 0.8 % of the parting-line pull for 30 mm on a rod of 142 mm.
 *
 * Throws OutOfDomain for a negative mass, a section beyond the rod, rod metal above it heavier than the
 * rod, a cap heavier than big end and shells together, or a geometry that cannot turn.
 */
export function pullFactors(geometry: CrankGeometry, parts: HangingParts): PullFactors {
  const { top, crankpin: r } = deadCentreAcceleration(geometry);
  const upper = pullsAbove(geometry, parts);
  const smallEnd = atLeast(parts, 'smallEndMass');
  const ownBigEnd = atLeast(parts, 'bigEndMass');
  const bigEnd = ownBigEnd + atLeast(parts, 'shellMass');
  atLeast(parts, 'capMass');
  atMost(parts, 'rodMassAbove', smallEnd + ownBigEnd, 'both ends of the rod together');
  const cap = atMost(parts, 'capMass', bigEnd, 'big end and shells together');

  const reciprocating = upper.eye + smallEnd * top;
  return {
    ...upper,
    reciprocating,
    parting: reciprocating + (bigEnd - cap) * r,
    crankpin: reciprocating + bigEnd * r,
  };
}

/**
 * The first three of {@link pullFactors}, which need only what hangs above the cut through the shank.
 *
 * Throws OutOfDomain for a negative mass, a section beyond the rod, or a geometry that cannot turn.
 */
export function pullsAbove(
  geometry: CrankGeometry,
  parts: PartsAbove,
): Pick<PullFactors, 'boss' | 'eye' | 'shank'> {
  const { top, crankpin: r } = deadCentreAcceleration(geometry);
  const { rodLength } = geometry;
  const carried = atLeast(parts, 'pistonMass') + atLeast(parts, 'ringMass');
  const boss = (carried + atLeast(parts, 'lockMass')) * top;
  const eye = boss + atLeast(parts, 'pinMass') * top;
  atLeast(parts, 'shankSection');
  const section = atMost(parts, 'shankSection', rodLength, 'the rod length');
  const λ = r / rodLength;
  const halfWay = r * (1 + λ * (1 - section / (2 * rodLength)));
  return { boss, eye, shank: eye + atLeast(parts, 'rodMassAbove') * halfWay };
}

/**
 * Force [N] by which a closed throttle adds to the pull: crankcase less cylinder pressure [Pa, absolute]
 * over the bore's area. Positive pulls the piston towards the head; negative where the cylinder's pressure
 * is the higher one, and then it relieves the rod.
 *
 * Throws OutOfDomain unless bore > 0 and both pressures are at least zero.
 */
export function suctionForce(engine: {
  readonly bore: number;
  readonly crankcasePressure: number;
  readonly overrunPressure: number;
}): number {
  const bore = above(engine, 'bore');
  const suction = atLeast(engine, 'crankcasePressure') - atLeast(engine, 'overrunPressure');
  return (suction * Math.PI * bore ** 2) / 4;
}

/**
 * Crank speed at which a section with pull factor `own` [kg·m] carries what a section with factor
 * `reference` carries at `referenceSpeed`; in the unit of that speed. Pull grows with the square of speed,
 * so it is referenceSpeed·√(reference/own). Undefined where nothing hangs on the own section.
 */
export function equalPullSpeed(
  reference: number,
  referenceSpeed: number,
  own: number,
): number | undefined {
  return own > 0 ? referenceSpeed * Math.sqrt(reference / own) : undefined;
}
