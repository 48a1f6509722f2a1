import type * as quantities from '../quantities/masses.ts';
import type { NotesOf } from './note.ts';

export const masses: NotesOf<typeof quantities> = {
  pistonMass: {
    measure: 'Scale. Bare: no pin, rings or locks, clean and dry.',
    note: 'Check the scale with a known mass first, and weigh twice.',
  },
  pinMass: { measure: 'Scale, clean and dry.' },
  ringMass: { measure: 'Scale, all rings of one piston together.' },
  lockMass: {
    measure: 'Weigh ten locks and divide; count both locks of the pin.',
    note: 'Zero for a pin that is pressed into the rod.',
  },
  rodMass: {
    measure: 'Scale: the whole rod with its bolts, without shells.',
    note: 'The two ends must add up to it within the repeatability of the fixture. A larger gap shows friction, a side pull or a wrong tare; it cannot show a support that is off centre.',
  },
  bigEndMass: {
    measure:
      'Big end on the scale, small end hung at the same height so that the rod lies level. Lift off and repeat; use the mean.',
  },
  smallEndMass: {
    measure:
      'Small end on the scale, big end hung at the same height so that the rod lies level. Lift off and repeat; use the mean.',
  },
  shellMass: { measure: 'Scale, both shells of one rod.' },
  capMass: {
    measure: 'Scale: the cap with its share of the bolts and its half shell.',
    note: 'What lies beyond the parting line is what the bolts must hold.',
  },
  oilMass: {
    measure: 'Assumed. The volume of the drilling times 0.86 g/cm³ shows the size.',
    note: 'Write on the card that it was assumed.',
  },
  rodsPerPin: {
    measure: 'Count.',
    note: 'Two on most V engines, one on an in-line engine or on each half of a split pin.',
  },
  reciprocatingFraction: {
    measure: 'Chosen: it follows from the layout, or from a decision to move the shake.',
  },
  partnerRotating: {
    measure:
      'Big end, shells and their share weighed for both rods of the pin; the second less the first.',
  },
  partnerReciprocating: {
    measure:
      'Piston, pin, rings, locks and small end weighed for both rods of the pin; the second less the first.',
  },
  bobweight: { measure: 'Scale, the clamp complete with its shims, screws and added weights.' },
  bobweightError: { measure: 'Weigh the clamp and subtract the wanted bobweight.' },
  rotatingMass: {
    measure: 'Sum of the weighed parts that turn with one crankpin: big ends, shells, oil.',
  },
  reciprocatingMass: {
    measure:
      'Sum of the weighed parts that slide with one piston: piston, pin, rings, locks, small end.',
  },
  balanceRadius: {
    measure: 'Rule or caliper from the surface of a main journal, plus half the journal.',
  },
  planeA: {
    measure: 'Rule along the crank, from its middle.',
    note: 'Negative: towards the nose.',
  },
  planeB: {
    measure: 'Rule along the crank, from its middle.',
    note: 'Positive: towards the flywheel.',
  },
};
