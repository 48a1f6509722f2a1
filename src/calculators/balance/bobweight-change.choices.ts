import type { ChoiceEntry } from '../define.ts';

/** Which counterweights take a change of bobweight. */
export type TakenAt = 'ends' | 'webs';

/** Where a change of bobweight is taken. */
export const takenAt = {
  type: 'choice',
  name: 'takenAt',
  label: 'Taken at',
  symbol: 'K_t',
  options: {
    ends: 'two counterweights, in the end planes',
    webs: 'the two webs of every pin',
  },
  demo: { baseline: 'ends', candidate: 'ends' },
} as const satisfies ChoiceEntry<TakenAt>;
