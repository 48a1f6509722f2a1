import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './quantities.ts';

/** How the quantities of this subject are measured. */
export const notes: NotesOf<typeof quantities> = {
  pistonMass: {
    measure: 'Scale. Bare: no pin, rings or locks, clean and dry.',
    note: 'Check the scale with a known mass first, and weigh twice.',
  },
  pinMass: { measure: 'Scale, clean and dry.' },
  ringMass: { measure: 'Scale, all rings of one piston together.' },
  lockMass: {
    measure: 'Weigh ten locks and divide; enter the pair.',
    note: 'Zero for a pin that is pressed into the rod.',
  },
  shellMass: { measure: 'Scale, both shells of one rod together.' },
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
    note: 'In per cent of the reciprocating mass. 50 % for two rods on a common pin at 90°.',
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
    measure: 'Sum of the weighed parts that rotate with one crankpin: big ends, shells, oil.',
  },
  reciprocatingMass: {
    measure:
      'Sum of the weighed parts that reciprocate with one piston: piston, pin, rings, locks, small end.',
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
  cylinderSpacing: {
    measure: 'Caliper over the outer edges of two neighbouring bores, less the mean of both bores.',
  },
  bankAngle: { measure: 'From the drawing, or a digital level on each deck.' },
  crankLayout: {
    measure:
      'Count the cylinders, look at the crank from its front end, and take the row whose throws stand as these do.',
  },
};
