import type { BalancedWith, SwappedPart } from '../../core/balance/outside-masses.ts';
import type { ChoiceEntry } from '../define.ts';

/** With which parts a crank was balanced. */
export const balancedWith = {
  type: 'choice',
  name: 'balancedWith',
  label: 'The crank is balanced',
  symbol: 'K_ext',
  options: {
    own: 'with own weighted parts',
    neutral: 'alone, for neutral parts',
  },
  demo: { baseline: 'own', candidate: 'own' },
} as const satisfies ChoiceEntry<BalancedWith>;

/** What is exchanged for a part of the other kind. */
export const swappedPart = {
  type: 'choice',
  name: 'swappedPart',
  label: 'Exchanged for the other kind',
  symbol: 'K_sw',
  options: {
    flywheel: 'the flywheel',
    damper: 'the damper',
    both: 'both',
  },
  demo: { baseline: 'flywheel', candidate: 'flywheel' },
} as const satisfies ChoiceEntry<SwappedPart>;
