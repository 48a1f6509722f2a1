import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './quantities.ts';

/** How the quantities of this subject are measured. */
export const notes: NotesOf<typeof quantities> = {
  bore: {
    measure:
      'Dial bore gauge set in a micrometer; three heights, two directions at each. Use the mean for volume and the least for clearance.',
    note: 'A bore is honed and measured with the torque plate on.',
  },
  stroke: {
    measure: 'Dial indicator on the piston, from one dead centre to the other.',
    note: 'The stroke is twice the throw.',
  },
  rodLength: {
    measure:
      'Rod fixture, or the gap between the two bores plus half of each bore, measured with both bores round and the bolts tightened.',
  },
  pinOffset: {
    measure: 'Caliper from the pin bore to each face of the skirt; half the difference.',
    note: 'Positive towards the major thrust side.',
  },
  boreOffset: {
    measure: 'From the drawing. It can rarely be measured on the bench.',
    note: 'Also called désaxé.',
  },
  maxSpeed: { measure: 'Chosen, then confirmed by the log.' },
  missedShiftSpeed: {
    measure:
      'The highest speed in the log of a missed shift, or an assumed margin above the redline.',
  },
  commonSpeed: { measure: 'Chosen: one speed at which both sets are compared.' },
  crankAngle: {
    measure:
      'Degree disc on the nose, zero set at true TDC with a dial indicator read on both sides of it.',
  },
  crankAcceleration: {
    measure: 'From the log: change of speed over time.',
    note: 'Zero at a steady speed.',
  },
  rodPoint: { measure: 'Caliper from the centre of the big end along the line to the small end.' },
};
