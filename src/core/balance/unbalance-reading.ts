import { atLeast, finite } from '../refuse.ts';

/** What a reading's angle points at. */
export type ReadingNames = 'heavy' | 'light';
/** Which way its angle grows, seen against the crank as it turns on the machine. */
export type AngleSense = 'with' | 'against';
/** How the crank turns on the machine, seen from its nose. */
export type CrankTurns = 'clockwise' | 'anticlockwise';

/** What one plane of a balancing machine says, and the choices that its meaning turns on. */
export interface Reading {
  /** [kg·m] */
  readonly unbalanceRead: number;
  /** [rad] From the machine's zero. */
  readonly unbalanceAngle: number;
  readonly readingNames: ReadingNames;
  /** [rad] The machine's zero, from throw 1, clockwise seen from the nose. */
  readonly angleOrigin: number;
  readonly angleSense: AngleSense;
  readonly crankTurns: CrankTurns;
}

/** The same reading on the crank. Angles [rad] from throw 1, clockwise seen from the nose, from 0 to a whole turn. */
export interface SettledReading {
  readonly heavy: number;
  readonly light: number;
  /** [kg·m] What would be there after the right correction on the wrong side. */
  readonly wrongSide: number;
  /** [kg·m] And after one at the angle counted the wrong way round from the machine's zero. */
  readonly wrongSense: number;
}

/** An angle [rad] as one from 0 to less than a whole turn. */
export function withinTurn(angle: number): number {
  const turn = 2 * Math.PI;
  const rest = angle % turn;
  const within = rest < 0 ? rest + turn : rest;
  // A tiny angle below 0 comes out as a whole turn.
  return within === turn ? 0 : within + 0;
}

/** 1 where the machine's angle grows clockwise seen from the nose, −1 where it grows the other way. */
export function senseOf(reading: Pick<Reading, 'angleSense' | 'crankTurns'>): 1 | -1 {
  return (reading.angleSense === 'with') === (reading.crankTurns === 'clockwise') ? 1 : -1;
}

/**
 * Where the heavy spot of a reading is, and what a wrong choice would cost. An unbalance U that is corrected at an
 * angle wrong by ε is left with 2U sin(ε/2): 2U on the wrong side, and 2U|sin α| where the angle α was counted the wrong
 * way round.
 *
 * @throws OutOfDomain for an unbalance below 0, or an angle that is no number
 * Source: own derivation.
 */
export function settleReading(reading: Reading): SettledReading {
  const unbalance = atLeast(reading, 'unbalanceRead');
  const angle = finite(reading, 'unbalanceAngle');
  const named = finite(reading, 'angleOrigin') + senseOf(reading) * angle;
  const heavy = reading.readingNames === 'heavy' ? named : named + Math.PI;
  return {
    heavy: withinTurn(heavy),
    light: withinTurn(heavy + Math.PI),
    wrongSide: 2 * unbalance,
    wrongSense: 2 * unbalance * Math.abs(Math.sin(angle)),
  };
}
