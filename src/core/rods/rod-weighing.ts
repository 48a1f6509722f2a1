import { difference } from '../math/difference.ts';
import { above, atLeast, below, finite, OutOfDomain } from '../refuse.ts';

/** Mean and scatter of repeated readings. `spread` is absent when there is only one reading. */
export interface Repeats {
  readonly mean: number;
  readonly spread: number | undefined;
}

/**
 * Arithmetic mean and experimental standard deviation (divisor n − 1) of repeated readings of one mass.
 *
 * @param rod its readings [kg] (n) by their names in the dictionary, each above zero
 * @param quantity which of them
 * @throws OutOfDomain when there is no reading, or one of them is not above zero
 * Source: JCGM 100:2008, 4.2.1 and 4.2.2.
 */
export function repeats<Q extends 'bigEndReadings' | 'smallEndReadings'>(
  rod: { readonly [K in Q]: readonly number[] },
  quantity: Q,
): Repeats {
  const readings = rod[quantity];
  const n = readings.length;
  if (n < 1) throw new OutOfDomain(quantity, n, 'at least', 1, 'one reading');
  for (const reading of readings) above({ [quantity]: reading } as Record<Q, number>, quantity);
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / n;
  if (n === 1) return { mean, spread: undefined };
  // Squares of differences, not the difference of squares: the scatter is a thousandth of the mean.
  const squares = readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0);
  return { mean, spread: Math.sqrt(squares / (n - 1)) };
}

/** What the two ends say together. */
export interface WeighedEnds {
  /** [kg] Sum of the two ends. */
  readonly endSum: number;
  /** [kg] Sum less the whole rod; positive when the ends weigh too much. */
  readonly closure: number;
  /** [m] Centre of mass, from the big-end centre towards the small end. */
  readonly centreFromBigEnd: number;
  /** Share of the ends' sum that the big end carries, 0 to 1. */
  readonly bigEndShare: number;
}

/**
 * The sum of two end weighings, its misfit, and the centre of mass by moments about the big-end centre:
 * x = L m_se / (m_be + m_se). The sum of the ends stands below the line, not the whole rod, so that a
 * misfit does not tilt the answer towards one end.
 *
 * Assumes a level rod, supports under the eye centres and no side pull.
 * @throws OutOfDomain for a mass or a length that is not above zero
 * Source: equilibrium of a beam on two supports (any text on statics).
 */
export function weighedEnds(rod: {
  readonly bigEndMass: number;
  readonly smallEndMass: number;
  readonly rodMass: number;
  readonly rodLength: number;
}): WeighedEnds {
  const bigEnd = above(rod, 'bigEndMass');
  const smallEnd = above(rod, 'smallEndMass');
  const whole = above(rod, 'rodMass');
  const L = above(rod, 'rodLength');
  const endSum = bigEnd + smallEnd;
  return {
    endSum,
    closure: difference(endSum, whole),
    centreFromBigEnd: (L * smallEnd) / endSum,
    bigEndShare: bigEnd / endSum,
  };
}

/** What a scale and its fixture are worth: the spread of repeated lifts, and the scale's division [kg]. */
export interface Scale {
  readonly fixtureRepeat: number;
  readonly scaleResolution: number;
}

/** How often each end was lifted and read. */
export interface Lifts {
  readonly bigEnd: number;
  readonly smallEnd: number;
}

/**
 * [kg] How far the sum of the two means may miss the whole rod: 2 √(s²/n_be + s²/n_se + 3 d²/12), about two
 * standard deviations. Each end repeats to s and its mean to s/√n. Three numbers were rounded to a division
 * d: either end, and the whole rod, read once on the same scale, lying freely so that it has no s of its own.
 *
 * The rounding is not averaged away by lifting, as in {@link meanPlusMinus}.
 * @throws OutOfDomain for a negative spread, or a division that is not above zero
 * Source: own derivation; combination and the rectangular d²/12 as JCGM 100:2008, 4.3.7 and 5.1.2.
 */
export function closureTolerance(scale: Scale, lifts: Lifts): number {
  const s = atLeast(scale, 'fixtureRepeat');
  const d = above(scale, 'scaleResolution');
  const roundings = 3;
  return 2 * Math.sqrt(s ** 2 / lifts.bigEnd + s ** 2 / lifts.smallEnd + (roundings * d ** 2) / 12);
}

/** [kg] What misplaced supports do to the ends. One end gains exactly what the other loses. */
export interface SupportShift {
  /** The rod lies δ along both supports: m δ/L. */
  readonly both: number;
  /** Only the big-end support sits δ towards the small end: m_be δ/(L − δ). */
  readonly bigEndOnly: number;
  /** Only the small-end support sits δ towards the big end: m_se δ/(L − δ). */
  readonly smallEndOnly: number;
}

/**
 * Error of the ends from supports that miss the eye centres by δ. For the two single cases a positive δ
 * points towards the other eye, and the end named then reads too heavy by the amount given.
 *
 * Exact statics, no small-angle step. `both` is also the most that two supports, each off by up to δ,
 * can do to first order in δ/L.
 * @throws OutOfDomain when δ reaches the other eye
 * Source: own derivation, moments about the supports.
 */
export function supportShift(rod: {
  readonly bigEndMass: number;
  readonly smallEndMass: number;
  readonly rodMass: number;
  readonly rodLength: number;
  readonly supportOffset: number;
}): SupportShift {
  const L = above(rod, 'rodLength');
  const delta = below(rod, 'supportOffset', L, 'the rod length');
  const bigEnd = above(rod, 'bigEndMass');
  const smallEnd = above(rod, 'smallEndMass');
  return {
    both: (above(rod, 'rodMass') * delta) / L,
    bigEndOnly: (bigEnd * delta) / (L - delta),
    smallEndOnly: (smallEnd * delta) / (L - delta),
  };
}

/**
 * [kg] Mass of one small part from a pile weighed together. The division of the scale and its rounding
 * shrink with the count, which is why it is done.
 * @throws OutOfDomain for a pile that weighs nothing or a count below one
 */
export function pieceMass(batch: {
  readonly batchMass: number;
  readonly batchCount: number;
}): number {
  return above(batch, 'batchMass') / atLeast(batch, 'batchCount', 1);
}

/** [kg] Reading less certified mass: positive when the scale reads too heavy. */
export function scaleError(check: {
  readonly checkMass: number;
  readonly checkReading: number;
}): number {
  return difference(finite(check, 'checkReading'), above(check, 'checkMass'));
}

/**
 * [kg] About two standard deviations of the mean of `count` lifts: 2 √(s²/n + d²/12). The division is not
 * averaged away, since a part that comes back to the same place is rounded to the same digit each time.
 * Misplaced supports are not in it: see {@link supportShift}.
 * @throws OutOfDomain for a negative spread or a division that is not above zero
 * Source: JCGM 100:2008, 4.2.3 and 4.3.7.
 */
export function meanPlusMinus(scale: Scale, count: number): number {
  const s = atLeast(scale, 'fixtureRepeat');
  const d = above(scale, 'scaleResolution');
  return 2 * Math.sqrt(s ** 2 / count + d ** 2 / 12);
}
