import type { AngleSense, CrankTurns, ReadingNames } from '../../core/balance/unbalance-reading.ts';
import type { ChoiceEntry } from '../define.ts';

/** What the angle of a reading points at. */
export const readingNames = {
  type: 'choice',
  name: 'readingNames',
  label: 'The angle points to',
  symbol: 'K_U',
  options: {
    heavy: 'the heavy spot',
    light: 'the light spot',
  },
  demo: { baseline: 'heavy', candidate: 'heavy' },
} as const satisfies ChoiceEntry<ReadingNames>;

/** Which way it grows. */
export const angleSense = {
  type: 'choice',
  name: 'angleSense',
  label: 'The angle counts',
  symbol: 'K_α',
  options: {
    with: 'with rotation',
    against: 'against rotation',
  },
  demo: { baseline: 'against', candidate: 'against' },
} as const satisfies ChoiceEntry<AngleSense>;

/** How the crank turns on the machine. */
export const crankTurns = {
  type: 'choice',
  name: 'crankTurns',
  label: 'On the machine, seen from its nose, the crank turns',
  symbol: 'K_rot',
  options: {
    clockwise: 'clockwise',
    anticlockwise: 'anticlockwise',
  },
  demo: { baseline: 'clockwise', candidate: 'clockwise' },
} as const satisfies ChoiceEntry<CrankTurns>;
