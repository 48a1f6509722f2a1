import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './quantities.ts';

/** How the quantities of this subject are measured. */
export const notes: NotesOf<typeof quantities> = {
  mainDiameter: { measure: 'Micrometer, two places along the journal, two directions at each.' },
  crankpinDiameter: {
    measure: 'Micrometer, two places along the journal, two directions at each.',
  },
  rodHousing: {
    measure: 'Dial bore gauge with the bolts tightened as for running, in line with the beam.',
    note: 'Without shells. The parts and the gauge at one temperature.',
  },
  housingOutside: {
    measure: 'Caliper at the thinnest place of the eye: the bore plus twice the metal there.',
    note: 'A big end is no ring. This stands for one that yields as much.',
  },
  rodShellWall: {
    measure: 'Micrometer with a ball anvil, in the middle of the half shell.',
    note: 'Thinner towards the parting line, on purpose.',
  },
  rodShellWidth: { measure: 'Caliper.' },
  crushHeight: {
    measure:
      'Checking block at the checking load, or a feeler at the parting line with one bolt slack, which shows both halves together.',
    note: 'What one half is longer than half its bore. Never file it.',
  },
  rodClearance: {
    measure:
      'Shells in and bolts tightened, bore gauge zeroed on the journal itself, in line with the beam.',
    note: 'A soft strip shows one spot to about 0.013 mm. At 45 degrees the reading is greater by design.',
  },
  journalOutOfRound: { measure: 'Greatest less least diameter in one place along the journal.' },
  journalTaper: { measure: 'Diameter at one end of the journal less that at the other.' },
  bearingLoad: {
    measure: 'From the reversal load: the pull on the crankpin. Or from a cycle of loads.',
  },
  housingPoisson: { measure: 'Material table. It counts for little here.' },
  shellModulus: { measure: 'Material table: low-carbon steel.' },
  shellExpansion: { measure: 'Material table: low-carbon steel.' },
  crankExpansion: { measure: 'Material table: steel, or cast iron.' },
  coldStartTemperature: { measure: 'The coldest morning on which the engine will be turned.' },
  crankpinTemperature: {
    measure:
      'Assumed, a few kelvin above the rod: the heat is made in the film and the pin is cooled least.',
  },
  fitDiameter: {
    measure: 'The drawing’s size, without its tolerance. It chooses the step of the table.',
  },
  holeGrade: {
    measure:
      'Chosen on the drawing: the letter and figure behind the nominal diameter of the hole.',
  },
  shaftGrade: {
    measure:
      'Chosen on the drawing: the letter and figure behind the nominal diameter of the shaft.',
  },
};
