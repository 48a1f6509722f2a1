import type { HoleKind } from '../../core/balance/counterweight-drilling.ts';
import type { ChoiceEntry } from '../define.ts';

/** From where a counterweight is drilled. */
export const holeKind = {
  type: 'choice',
  name: 'holeKind',
  label: 'Holes',
  symbol: 'K_h',
  options: {
    radial: 'from the rim, towards the shaft',
    axial: 'from a face, parallel to the shaft',
  },
  demo: { baseline: 'radial', candidate: 'radial' },
} as const satisfies ChoiceEntry<HoleKind>;
