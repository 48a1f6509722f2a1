import type * as quantities from './quantities.ts';

/** How a quantity is measured at the bench, and what is easily got wrong. Read by the build only. */
export interface QuantityNote {
  readonly measure: string;
  readonly note?: string;
}

/**
 * One note for every quantity of the dictionary; the compiler names the one that is missing. The ways of
 * measuring are those of the trade: common practice, no source.
 */
export const quantityNotes: Readonly<Record<keyof typeof quantities, QuantityNote>> = {
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
  maxSpeed: { measure: 'Chosen, then confirmed by the log.' },
  missedShiftSpeed: {
    measure:
      'The highest speed in the log of a missed shift, or an assumed margin above the highest intended speed.',
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
  crankcasePressure: { measure: 'Absolute pressure sensor in the crankcase.' },
  overrunPressure: {
    measure:
      'Absolute pressure sensor in the cylinder or, near enough, in the manifold with the throttle shut.',
  },
  shankSection: { measure: 'Caliper from the centre of the small end along the beam.' },
  rodMassAbove: {
    measure:
      'From a model of the rod, or dip the small end in water up to the section and multiply the volume it displaces by the density of the rod.',
  },
  mainDiameter: { measure: 'Micrometer, two places along the journal, two directions at each.' },
  crankpinDiameter: {
    measure: 'Micrometer, two places along the journal, two directions at each.',
  },
  bigEndReadings: {
    measure: 'One reading for each lift of the big end, separated by semicolons.',
    note: 'Five lifts show the spread.',
  },
  smallEndReadings: {
    measure: 'One reading for each lift of the small end, separated by semicolons.',
    note: 'Five lifts show the spread.',
  },
};
