import { angle, gradeSpeed, heavyMass, length, mass, unbalance } from '../quantity.ts';

/* What may be left in a crank, and what no reading shows. */

export const planeA = length(
  'planeA',
  'z_A',
  "Correction plane A from the crank's middle",
  [-1000, -260, -60, 0],
  { origin: 'thing', demo: '-194 mm', plusMinus: 1 },
);
export const planeB = length(
  'planeB',
  'z_B',
  "Correction plane B from the crank's middle",
  [0, 60, 260, 1000],
  { origin: 'thing', demo: '194 mm', plusMinus: 1 },
);
export const balanceGrade = gradeSpeed(
  'balanceGrade',
  'G',
  'Balance quality grade',
  [0.1, 2.5, 40, 4000],
  { origin: 'choice', demo: ['16 mm/s', '6.3 mm/s'] },
);
export const crankMass = heavyMass('crankMass', 'm_crank', 'Crank, bare', [0.4, 2.5, 38, 2000], {
  origin: 'part',
  demo: ['20.4 kg', '18.1 kg'],
  plusMinus: 0.05,
});
export const bobweightsMass = heavyMass(
  'bobweightsMass',
  'm_bobs',
  'All bobweights together',
  [0, 0, 15, 200],
  { origin: 'part', demo: ['6.741 kg', '4.932 kg'], plusMinus: 0.005 },
);
export const bearingSpan = length(
  'bearingSpan',
  'l_b',
  'Bearing A to bearing B',
  [20, 90, 560, 5000],
  { origin: 'thing', demo: '400 mm', plusMinus: 1 },
);
export const cgToBearingA = length(
  'cgToBearingA',
  'l_A',
  'Bearing A to the centre of mass',
  [-1500, 25, 300, 6500],
  { origin: 'part', demo: ['203 mm', '201 mm'], plusMinus: 2 },
);
export const residualA = unbalance(
  'residualA',
  'U_res,A',
  'Residual read in plane A',
  [0, 0, 300, 200000],
  { origin: 'part', demo: ['240 g·mm', '60 g·mm'], plusMinus: 20 },
);
export const residualB = unbalance(
  'residualB',
  'U_res,B',
  'Residual read in plane B',
  [0, 0, 300, 200000],
  { origin: 'part', demo: ['190 g·mm', '70 g·mm'], plusMinus: 20 },
);
export const unbalanceFloor = unbalance(
  'unbalanceFloor',
  'U_floor',
  'Floor at the flywheel’s end',
  [0, 10, 500, 200000],
  { origin: 'part', demo: ['279.8 g·mm', '192.8 g·mm'] },
);
export const mountingOffset = length(
  'mountingOffset',
  'e_m',
  'Crank’s axis off the axis it turns about on the machine',
  [0, 0.002, 0.03, 0.5],
  { origin: 'assumption', demo: '0.0125 mm', plusMinus: 0.005 },
);
export const flywheelMass = heavyMass(
  'flywheelMass',
  'm_fw',
  'Flywheel with its starter ring',
  [0, 1.5, 14, 200],
  { origin: 'part', demo: ['9.4 kg', '4.6 kg'], plusMinus: 0.02 },
);
export const flywheelClearance = length(
  'flywheelClearance',
  'c_reg',
  'Clearance of the flywheel on its register',
  [0, 0.005, 0.08, 1],
  { origin: 'part', demo: '0.040 mm', plusMinus: 0.005 },
);
export const bobweightUnbalance = unbalance(
  'bobweightUnbalance',
  'U_bob',
  'From the bobweights’ error, in the worse end plane',
  [0, 0, 300, 200000],
  { origin: 'part', demo: ['119.0 g·mm', '89.2 g·mm'] },
);

/* Unbalance in two planes, and moved to two others. */

export const planeUnbalanceA = unbalance(
  'planeUnbalanceA',
  'U_A',
  'Unbalance in plane A',
  [0, 10, 20000, 500000],
  { origin: 'part', demo: ['4200 g·mm', '2600 g·mm'], plusMinus: 20 },
);
export const planeAngleA = angle(
  'planeAngleA',
  'α_A',
  'Heavy spot in plane A, clockwise from throw 1',
  [-360, 0, 360, 360],
  { origin: 'part', demo: ['188 deg', '160 deg'], plusMinus: 2 },
);
export const planeUnbalanceB = unbalance(
  'planeUnbalanceB',
  'U_B',
  'Unbalance in plane B',
  [0, 10, 20000, 500000],
  { origin: 'part', demo: ['3100 g·mm', '3400 g·mm'], plusMinus: 20 },
);
export const planeAngleB = angle(
  'planeAngleB',
  'α_B',
  'Heavy spot in plane B, clockwise from throw 1',
  [-360, 0, 360, 360],
  { origin: 'part', demo: ['32 deg', '64 deg'], plusMinus: 2 },
);
export const newPlaneA = length(
  'newPlaneA',
  'z_A*',
  'New plane A from the crank’s middle',
  [-3000, -400, 100, 3000],
  { origin: 'choice', demo: '-120 mm' },
);
export const newPlaneB = length(
  'newPlaneB',
  'z_B*',
  'New plane B from the crank’s middle',
  [-3000, -100, 400, 3000],
  { origin: 'choice', demo: '232 mm' },
);
export const thirdUnbalance = unbalance(
  'thirdUnbalance',
  'U_3',
  'A third unbalance, of a flywheel or of one pin',
  [0, 10, 20000, 500000],
  { origin: 'thing', demo: '', optional: true },
);
export const thirdAngle = angle(
  'thirdAngle',
  'α_3',
  'Its heavy spot, clockwise from throw 1',
  [-360, 0, 360, 360],
  { origin: 'thing', demo: '', optional: true },
);
export const thirdPlace = length(
  'thirdPlace',
  'z_3',
  'Its place from the crank’s middle',
  [-3000, -400, 400, 3000],
  { origin: 'thing', demo: '', optional: true },
);
export const fourthUnbalance = unbalance(
  'fourthUnbalance',
  'U_4',
  'A fourth unbalance',
  [0, 10, 20000, 500000],
  { origin: 'thing', demo: '', optional: true },
);
export const fourthAngle = angle(
  'fourthAngle',
  'α_4',
  'Heavy spot of the fourth, clockwise from throw 1',
  [-360, 0, 360, 360],
  { origin: 'thing', demo: '', optional: true },
);
export const fourthPlace = length(
  'fourthPlace',
  'z_4',
  'Place of the fourth from the crank’s middle',
  [-3000, -400, 400, 3000],
  { origin: 'thing', demo: '', optional: true },
);
export const newBobweight = mass(
  'newBobweight',
  'm_new',
  'Bobweight of one crankpin from now on',
  [0, 200, 2700, 15000],
  { origin: 'part', demo: ['1685.2 g', '1233.1 g'], plusMinus: 0.5 },
);
export const balancedBobweight = mass(
  'balancedBobweight',
  'm_was',
  'Bobweight that the crank is balanced for',
  [0, 200, 2700, 15000],
  { origin: 'part', demo: '1850 g', plusMinus: 1 },
);
export { takenAt } from './bobweight-change.choices.ts';

/* Weights outside the end mains. */

export { balancedWith, swappedPart } from './outside-masses.choices.ts';
export const damperUnbalance = unbalance(
  'damperUnbalance',
  'U_dmp',
  'Unbalance of the weighted damper',
  [0, 500, 20000, 200000],
  { origin: 'thing', demo: ['8600 g·mm', '5400 g·mm'], plusMinus: 100 },
);
export const damperAngle = angle(
  'damperAngle',
  'α_dmp',
  'Where the damper is heavy, clockwise from throw 1',
  [-360, 0, 360, 360],
  { origin: 'thing', demo: '198 deg', plusMinus: 2 },
);
export const damperPlace = length(
  'damperPlace',
  'z_dmp',
  'Damper’s weight from the crank’s middle',
  [-3000, -420, -80, 3000],
  { origin: 'thing', demo: '-246 mm', plusMinus: 1 },
);
export const flywheelUnbalance = unbalance(
  'flywheelUnbalance',
  'U_fw',
  'Unbalance of the weighted flywheel',
  [0, 500, 20000, 200000],
  { origin: 'thing', demo: ['11200 g·mm', '7000 g·mm'], plusMinus: 100 },
);
export const flywheelAngle = angle(
  'flywheelAngle',
  'α_fw',
  'Where the flywheel is heavy, clockwise from throw 1',
  [-360, 0, 360, 360],
  { origin: 'thing', demo: '18 deg', plusMinus: 2 },
);
export const flywheelPlace = length(
  'flywheelPlace',
  'z_fw',
  'Flywheel’s weight from the crank’s middle',
  [-3000, 80, 420, 3000],
  { origin: 'thing', demo: '232 mm', plusMinus: 1 },
);
