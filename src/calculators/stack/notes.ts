import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './quantities.ts';

/** How the quantities of this subject are measured. */
export const notes: NotesOf<typeof quantities> = {
  compressionRatio: {
    measure:
      'From measured volumes: swept and clearance volume together over the clearance volume.',
  },
  pistonToHead: { measure: 'Deck clearance and gasket as pressed, at the lowest corner.' },
};
