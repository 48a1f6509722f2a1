import { angle, count, length, mass, percent } from '../quantity.ts';

/* What hangs on a crankpin, and where a crank is corrected. */

export const pistonMass = mass('pistonMass', 'm_piston', 'Piston, bare', [15, 90, 650, 3000], {
  origin: 'part',
  demo: ['428.0 g', '318.0 g'],
  plusMinus: 0.1,
});
export const pinMass = mass('pinMass', 'm_pin', 'Wrist pin', [4, 18, 180, 1000], {
  origin: 'part',
  demo: ['120.2 g', '77.0 g'],
  plusMinus: 0.1,
});
export const ringMass = mass('ringMass', 'm_rings', 'Rings of one piston', [1, 8, 60, 300], {
  origin: 'part',
  demo: ['38.0 g', '23.5 g'],
  plusMinus: 0.1,
});
export const lockMass = mass('lockMass', 'm_locks', 'Pin locks (pair)', [0, 0, 5, 25], {
  origin: 'part',
  demo: ['0 g', '1.2 g'],
  plusMinus: 0.05,
});
export const shellMass = mass('shellMass', 'm_shell', 'Bearing pair of one rod', [2, 10, 85, 400], {
  origin: 'part',
  demo: ['41.0 g', '36.0 g'],
  plusMinus: 0.1,
});
export const oilMass = mass('oilMass', 'm_oil', 'Oil allowance of one crankpin', [0, 1, 8, 40], {
  origin: 'assumption',
  demo: ['4.0 g', '3.0 g'],
  plusMinus: 2,
});
export const rodsPerPin = count('rodsPerPin', 'n_rod', 'Rods on one crankpin', [1, 1, 2, 9], {
  origin: 'choice',
  demo: '2',
});
export const reciprocatingFraction = percent(
  'reciprocatingFraction',
  'f',
  'Balance factor',
  [0, 36, 55, 100],
  { origin: 'choice', demo: '50 %' },
);
export const partnerRotating = mass(
  'partnerRotating',
  'Δm_rot',
  "Second rod's rotating mass, heavier by",
  [-500, -10, 10, 500],
  { origin: 'part', demo: '0 g', plusMinus: 0.5 },
);
export const partnerReciprocating = mass(
  'partnerReciprocating',
  'Δm_rec',
  "Second rod's reciprocating mass, heavier by",
  [-500, -20, 20, 500],
  { origin: 'part', demo: '0 g', plusMinus: 0.5 },
);
export const bobweight = mass(
  'bobweight',
  'm_bob',
  'Bobweight of one crankpin',
  [30, 200, 2700, 15000],
  { origin: 'part', demo: ['1685.2 g', '1233.1 g'], plusMinus: 0.5 },
);
export const bobweightError = mass(
  'bobweightError',
  'Δm_bob',
  'Error or change of every bobweight',
  [-5000, 0.1, 500, 5000],
  { origin: 'part', demo: ['4 g', '3 g'] },
);
export const rotatingMass = mass(
  'rotatingMass',
  'm_rot',
  'Rotating mass at one crankpin',
  [0, 100, 1400, 500000],
  { origin: 'part', demo: ['928.4 g', '675.2 g'], plusMinus: 0.5 },
);
export const reciprocatingMass = mass(
  'reciprocatingMass',
  'm_rec',
  'Reciprocating mass of one cylinder',
  [1, 150, 1000, 500000],
  { origin: 'part', demo: ['756.8 g', '557.9 g'], plusMinus: 0.5 },
);
export const balanceRadius = length(
  'balanceRadius',
  'b',
  'Radius of the balance mass',
  [5, 30, 95, 1000],
  { origin: 'part', demo: ['74.0 mm', '73.0 mm'], plusMinus: 0.5 },
);
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
export const cylinderSpacing = length(
  'cylinderSpacing',
  'a_c',
  'Cylinder spacing along the crank',
  [30, 70, 115, 200],
  { origin: 'thing', demo: '100.0 mm', plusMinus: 0.05 },
);
export const bankAngle = angle('bankAngle', 'γ', 'Angle between the banks', [0, 0, 180, 180], {
  origin: 'thing',
  demo: '90 deg',
  plusMinus: 0.1,
});
export { crankLayout } from './crank-layout.choices.ts';
