import type * as quantities from '../quantities/readings.ts';
import type { NotesOf } from './note.ts';

export const readings: NotesOf<typeof quantities> = {
  bigEndReadings: {
    measure: 'One reading for each lift of the big end, separated by semicolons.',
    note: 'Five lifts show the spread.',
  },
  smallEndReadings: {
    measure: 'One reading for each lift of the small end, separated by semicolons.',
    note: 'Five lifts show the spread.',
  },
};
