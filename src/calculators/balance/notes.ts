import type { NotesOf } from '../quantity-notes.ts';
import type * as quantities from './quantities.ts';

/** How the quantities of what hangs on a crankpin are measured. */
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
  cylinderSpacing: {
    measure: 'Caliper over the outer edges of two neighbouring bores, less the mean of both bores.',
  },
  bankAngle: { measure: 'From the drawing, or a digital level on each deck.' },
  pistonMasses: {
    measure: 'Scale: every piston bare, clean and dry. Mark each with its place in the list.',
    note: 'All on one day and one scale, separated by semicolons. What is compared is the difference.',
  },
  pinMasses: {
    measure: 'Scale: every wrist pin, marked with its place in the list.',
    note: 'Leave the list empty where pins stay with their pistons, and weigh both together.',
  },
  smallEndMasses: {
    measure: 'Small end of every rod on the scale, the rod level, each lifted off and repeated.',
    note: 'The mean of the repeats. A rod keeps its cap, so it has one place in both of its lists.',
  },
  ringMasses: {
    measure: 'Scale: the rings of one piston together, with the pair of locks of its pin.',
    note: 'Only if lots are to be exchanged: file the gaps first, since a ring belongs to its bore from then on.',
  },
  bigEndMasses: {
    measure: 'Big end of every rod on the scale, in the same order as the small ends.',
    note: 'Bolts in, bearing shells out.',
  },
  targetSpread: {
    measure: 'Chosen: how far the heaviest set may be above the lightest.',
    note: 'Finer than the scale repeats is a number on paper.',
  },
  cutArea: {
    measure:
      'From the drawing or a caliper: the face or the pad that the part’s maker leaves for it.',
    note: 'Straight walls are assumed. For a drill it is the area of its hole.',
  },
  cutDensity: {
    measure: 'Data sheet of the alloy: about 2.7 g/cm³ for aluminium, 7.85 for steel.',
  },
  partBanks: {
    measure:
      'Chosen, from the parts: offset pins, valve reliefs or a chamfer on one side tell left from right.',
    note: 'Pins and rings fit either bank.',
  },
  balanceShafts: {
    measure:
      'Look for a geared shaft beside the crank: how many, how fast, and which way each turns.',
    note: 'Each is taken to carry just what it is for.',
  },
  crankLayout: {
    measure:
      'Count the cylinders, look at the crank from its front end, and take the row whose throws stand as these do.',
    note: 'Where none does, the last entry is an own layout, written throw by throw.',
  },
};
