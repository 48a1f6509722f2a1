import type * as quantities from '../quantities/crank.ts';
import type { NotesOf } from './note.ts';

export const crank: NotesOf<typeof quantities> = {
  mainDiameter: { measure: 'Micrometer, two places along the journal, two directions at each.' },
  crankpinDiameter: {
    measure: 'Micrometer, two places along the journal, two directions at each.',
  },
};
