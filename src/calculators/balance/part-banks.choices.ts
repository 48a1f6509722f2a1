import type { ChoiceEntry } from '../define.ts';

/** Whether pistons and rods may go to any cylinder. */
export const partBanks = {
  type: 'choice',
  name: 'partBanks',
  label: 'Pistons and rods fit',
  symbol: 'K_bank',
  options: {
    any: 'any cylinder',
    halves: 'their own bank: the first half of each list is one',
  },
  demo: { baseline: 'any', candidate: 'any' },
} as const satisfies ChoiceEntry<'any' | 'halves'>;
