import type { ChoiceEntry } from '../define.ts';

/** Which counterweights take a change of bobweight. */
export type TakenAt = 'ends' | 'webs';

/** Where a change of bobweight is taken. */
export const takenAt = {
  type: 'choice',
  name: 'takenAt',
  label: 'Counterweights that take it',
  symbol: 'K_t',
  options: {
    ends: 'two, in the end planes',
    webs: 'the webs of every pin',
  },
  demo: { baseline: 'ends', candidate: 'ends' },
} as const satisfies ChoiceEntry<TakenAt>;
