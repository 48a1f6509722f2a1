import { above, atLeast, atMost, below, finite } from '../refuse.ts';

/** A rotor as it is balanced, with what is clamped on it for that. */
export interface BalancedRotor {
  /** [kg] The crank alone. */
  readonly crankMass: number;
  /** [kg] All bobweights together; 0 where the crank is balanced without any. */
  readonly bobweightsMass: number;
  /** [rad/s] Highest service speed. */
  readonly maxSpeed: number;
}

/** Where a rotor is borne and where its centre of mass lies. */
export interface Bearings {
  /** [m] Between the middles of bearing A and bearing B. */
  readonly bearingSpan: number;
  /** [m] From bearing A to the centre of mass, positive towards B; negative or above the span where it overhangs. */
  readonly cgToBearingA: number;
}

/** Places of the two correction planes [m], from halfway between the bearings, positive towards bearing B. */
export interface CorrectionPlanes {
  readonly planeA: number;
  readonly planeB: number;
}

/** One number for each of two planes. */
export interface AtBoth {
  readonly a: number;
  readonly b: number;
}

/** The least share of a bearing, and the greatest with the centre of mass between the bearings and outside. */
export const shareLimits = { least: 0.3, between: 0.7, overhung: 1.3 } as const;

/**
 * [kg] What turns on the balancing machine. Throws OutOfDomain for a crank without mass or bobweights below 0.
 */
export function balancedMass(rotor: Pick<BalancedRotor, 'crankMass' | 'bobweightsMass'>): number {
  return above(rotor, 'crankMass') + atLeast(rotor, 'bobweightsMass');
}

/**
 * What a balance quality grade permits: the eccentricity e_per = G/ω [m] of the centre of mass and the residual
 * unbalance U_per = G m/ω [kg·m] of the whole rotor. Force is that unbalance at the highest speed [N], U_per ω² = G m ω.
 *
 * @param grade `balanceGrade` [m/s], the number of the grade being in mm/s
 * @throws OutOfDomain for a grade, a mass or a speed that is not above 0
 * Source: ISO 21940-11:2016, the definition of the balance quality grade (ISO 1940-1:2003 before), as quoted by others.
 */
export function permissible(
  grade: { readonly balanceGrade: number },
  rotor: BalancedRotor,
): { readonly eccentricity: number; readonly unbalance: number; readonly force: number } {
  const mass = balancedMass(rotor);
  const omega = above(rotor, 'maxSpeed');
  const eccentricity = above(grade, 'balanceGrade') / omega;
  const unbalance = mass * eccentricity;
  return { eccentricity, unbalance, force: unbalance * omega ** 2 };
}

/**
 * The shares of U_per that stand at the two bearings, in the ratio of their static loads: A has (L − l_A)/L and B has
 * l_A/L. No share is below 0.3. None is above 0.7 with the centre of mass between the bearings, or above 1.3 with it
 * outside; farther out than 0.3 of the span the rule says nothing more.
 *
 * @throws OutOfDomain for a span not above 0, or a centre of mass farther out than that
 * Source: ISO 1940-1:2003, 7 (ISO 21940-11:2016 as well), from memory.
 */
export function bearingShares(bearings: Bearings): AtBoth {
  const span = above(bearings, 'bearingSpan');
  const outside = shareLimits.overhung * span;
  atMost(bearings, 'cgToBearingA', outside, '1.3 of the bearing span');
  const place = atLeast(bearings, 'cgToBearingA', span - outside, 'minus 0.3 of the bearing span');
  const most = place < 0 || place > span ? shareLimits.overhung : shareLimits.between;
  return { a: held((span - place) / span, most), b: held(place / span, most) };
}

/** The size of a share, held between the least and the greatest. */
function held(share: number, most: number): number {
  return Math.min(Math.max(Math.abs(share), shareLimits.least), most);
}

/**
 * What an unbalance of one in each correction plane makes at each bearing at the worst angle between the two: the
 * sizes of both add. `ofA.b` is what a unit in plane A makes at bearing B.
 *
 * @throws OutOfDomain for a span not above 0, or planes that coincide or stand in the wrong order
 * Source: own derivation; equilibrium of forces and moments of a stiff rotor.
 */
export function reach(
  bearings: Pick<Bearings, 'bearingSpan'>,
  planes: CorrectionPlanes,
): { readonly ofA: AtBoth; readonly ofB: AtBoth } {
  const span = above(bearings, 'bearingSpan');
  const zB = finite(planes, 'planeB');
  const zA = below(planes, 'planeA', zB, 'the place of plane B');
  const from = (z: number): AtBoth => ({
    a: Math.abs(span / 2 - z) / span,
    b: Math.abs(span / 2 + z) / span,
  });
  return { ofA: from(zA), ofB: from(zB) };
}

/**
 * The allowance moved to the correction planes, as shares of U_per. It is divided between them by the distances of the
 * centre of mass, within 0.3 to 0.7, and then made as large as it can be without either bearing getting more than its
 * share, whatever the angle between the two residuals. With both planes and the centre of mass between the bearings and
 * no limit met it is all of U_per; with planes that overhang it is less.
 *
 * @throws OutOfDomain as {@link bearingShares} and {@link reach} do
 * Source: own derivation. The standard takes the values of the bearings where the planes stand near them.
 */
export function correctionShares(bearings: Bearings, planes: CorrectionPlanes): AtBoth {
  const shares = bearingShares(bearings);
  const { ofA, ofB } = reach(bearings, planes);
  const centre = bearings.cgToBearingA - bearings.bearingSpan / 2;
  const { least, between } = shareLimits;
  const apart = planes.planeB - planes.planeA;
  const a = Math.min(Math.max((planes.planeB - centre) / apart, least), between);
  const b = 1 - a;
  const whole = Math.min(shares.a / (a * ofA.a + b * ofB.a), shares.b / (a * ofA.b + b * ofB.b));
  return { a: a * whole, b: b * whole };
}

/**
 * What the residuals that were read in the two correction planes amount to: at each bearing at the worst angle [kg·m],
 * and as the unbalance of the whole rotor [kg·m] that would use the shares of the bearings as far. Sizes alone count.
 *
 * @throws OutOfDomain for a residual below 0, and as {@link bearingShares} and {@link reach} do
 * Source: own derivation, the reverse of {@link correctionShares}.
 */
export function residualOf(
  read: { readonly residualA: number; readonly residualB: number },
  bearings: Bearings,
  planes: CorrectionPlanes,
): { readonly atBearings: AtBoth; readonly whole: number } {
  const shares = bearingShares(bearings);
  const { ofA, ofB } = reach(bearings, planes);
  const [uA, uB] = [atLeast(read, 'residualA'), atLeast(read, 'residualB')];
  const atBearings = { a: uA * ofA.a + uB * ofB.a, b: uA * ofA.b + uB * ofB.b };
  return { atBearings, whole: Math.max(atBearings.a / shares.a, atBearings.b / shares.b) };
}

/**
 * [m/s] The grade that an unbalance [kg·m] of the whole rotor amounts to at its highest speed: G = U ω/m.
 *
 * @throws OutOfDomain for a mass or a speed that is not above 0
 */
export function gradeOf(unbalance: number, rotor: BalancedRotor): number {
  return (unbalance * above(rotor, 'maxSpeed')) / balancedMass(rotor);
}
