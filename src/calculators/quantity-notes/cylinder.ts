import type * as quantities from '../quantities/cylinder.ts';
import type { NotesOf } from './note.ts';

export const cylinder: NotesOf<typeof quantities> = {
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
  cylinderSpacing: {
    measure: 'Caliper over the outer edges of two neighbouring bores, less the mean of both bores.',
  },
  bankAngle: { measure: 'From the drawing, or a digital level on each deck.' },
};
