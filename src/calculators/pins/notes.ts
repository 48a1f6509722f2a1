import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './quantities.ts';

/** How the quantities of this subject are measured. */
export const notes: NotesOf<typeof quantities> = {
  pinDiameter: { measure: 'Micrometer, at the small end and at both bosses.' },
  pinBore: {
    measure: 'Pin gauge or caliper, in the straight part.',
    note: 'Zero for a solid pin.',
  },
  pinTaperBore: {
    measure: 'Caliper at the mouth.',
    note: 'The same as the bore where there is no taper.',
  },
  pinTaperLength: {
    measure: 'Depth gauge, or a pin gauge of the straight bore pushed up to where it stops.',
    note: 'Zero where there is no taper. Both ends alike.',
  },
  pinLength: { measure: 'Micrometer.' },
  smallEndWidth: {
    measure: 'Caliper over the faces of the small end.',
    note: 'Less any chamfers of its bush.',
  },
  bossGap: { measure: 'Caliper, inside jaws, between the inner faces of the bosses.' },
  pinDensity: {
    measure: 'From the material: 7.85 g/cm³ for steel. Or weigh the pin and divide by its volume.',
  },
  pinModulus: { measure: 'From the material: 200 to 210 GPa for steel.' },
};
