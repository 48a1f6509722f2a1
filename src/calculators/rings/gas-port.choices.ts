import type { PortKind, RingSeat } from '../../core/rings/ring-pack.ts';
import type { ChoiceEntry } from '../define.ts';

/** How the holes are made. */
export const portKind = {
  type: 'choice',
  name: 'portKind',
  label: 'Gas ports are',
  symbol: 'K_po',
  options: {
    crown: 'vertical, from the crown',
    lateral: 'lateral, half-round slots',
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
    free: 'moves freely',
    lower: 'is held low',
    shut: 'has no gap above it',
  },
  demo: { baseline: 'free', candidate: 'free' },
} as const satisfies ChoiceEntry<RingSeat>;
