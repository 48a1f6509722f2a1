import type * as quantities from '../quantities/weighing.ts';
import type { NotesOf } from './note.ts';

export const weighing: NotesOf<typeof quantities> = {
  scaleResolution: { measure: 'Read it from the label of the scale.' },
  fixtureRepeat: {
    measure:
      'Lift the same rod off and put it back five times; the standard deviation of the readings.',
  },
  supportOffset: {
    measure:
      'Estimate how far the support touches from the centre of the eye; a knife edge or a ball bearing keeps it small.',
  },
  checkMass: {
    measure: 'The value on its certificate.',
    note: 'OIML R 111 class M1 allows 25 mg at 500 g.',
  },
  checkReading: {
    measure: 'Put the check mass on the scale before and after the parts, and note what it reads.',
  },
  batchMass: { measure: 'Scale, all the small parts of the batch at once.' },
  batchCount: { measure: 'Count.', note: 'Ten is usual for locks.' },
};
