import type { PortKind, RingSeat } from '../../core/ring-pack.ts';
import type { ChoiceEntry } from '../define.ts';

/** How the holes are made. */
export const portKind = {
  type: 'choice',
  name: 'portKind',
  label: 'Gas ports are',
  symbol: 'K_po',
  options: {
    crown: 'holes from the crown',
    lateral: 'half-round slots in the groove’s upper face',
  },
  demo: { baseline: 'crown', candidate: 'crown' },
} as const satisfies ChoiceEntry<PortKind>;

/** Whether the top ring may leave its lower flank, and whether gas passes above it. */
export const ringSeat = {
  type: 'choice',
  name: 'ringSeat',
  label: 'The top ring',
  symbol: 'K_r',
  options: {
    free: 'moves as the forces tell it',
    lower: 'is held on its lower flank',
    shut: 'has its upper side clearance shut (oil, carbon)',
  },
  demo: { baseline: 'free', candidate: 'free' },
} as const satisfies ChoiceEntry<RingSeat>;
