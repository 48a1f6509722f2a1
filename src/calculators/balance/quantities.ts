import { angle, area, count, length, mass, metalDensity, percent, weighings } from '../quantity.ts';

/* What hangs on a crankpin, and what of it is matched. */

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
export const pistonMasses = weighings(
  'pistonMasses',
  'm_piston,i',
  'Pistons, each',
  [15, 90, 650, 3000],
  {
    origin: 'part',
    demo: [
      '428.0; 427.1; 429.2; 428.6; 426.8; 428.3; 427.7; 429.0',
      '318.0; 317.2; 318.7; 318.3; 317.6; 318.4; 317.8; 318.6',
    ],
    most: 16,
  },
);
export const pinMasses = weighings('pinMasses', 'm_pin,i', 'Wrist pins, each', [4, 18, 180, 1000], {
  origin: 'part',
  demo: [
    '120.2; 120.6; 119.9; 120.4; 120.1; 120.0; 120.5; 120.3',
    '77.0; 76.8; 77.2; 77.1; 76.9; 77.1; 76.8; 77.0',
  ],
  most: 16,
});
export const smallEndMasses = weighings(
  'smallEndMasses',
  'm_se,k',
  'Small ends, each',
  [8, 50, 250, 1500],
  {
    origin: 'part',
    demo: [
      '170.6; 171.4; 169.9; 170.2; 171.0; 170.8; 170.1; 171.2',
      '138.2; 137.8; 138.6; 138.4; 137.9; 138.5; 138.0; 138.3',
    ],
    most: 16,
  },
);
export const ringMasses = weighings(
  'ringMasses',
  'm_rings,i',
  'Rings and locks, those of each piston',
  [1, 8, 60, 300],
  { origin: 'part', demo: '', most: 16 },
);
export const bigEndMasses = weighings(
  'bigEndMasses',
  'm_be,k',
  'Big ends, each',
  [15, 105, 660, 4000],
  {
    origin: 'part',
    demo: [
      '421.2; 422.9; 420.1; 421.8; 420.6; 422.3; 421.0; 421.6',
      '300.1; 299.5; 300.8; 300.4; 299.7; 300.6; 299.9; 300.3',
    ],
    most: 16,
  },
);
export const targetSpread = mass(
  'targetSpread',
  'Δm_t',
  'Spread wanted of the sets',
  [0, 0.2, 2, 50],
  { origin: 'choice', demo: ['0.5 g', '0.2 g'] },
);
export const cutArea = area('cutArea', 'A_cut', 'Area that is cut', [1, 50, 2000, 10000], {
  origin: 'choice',
  demo: ['180 mm²', '120 mm²'],
});
export const cutDensity = metalDensity(
  'cutDensity',
  'ρ_cut',
  'Density of the metal cut',
  [1.5, 2.6, 7.9, 20],
  { origin: 'thing', demo: ['2.70', '2.76'], plusMinus: 0.02 },
);
export { balanceShafts } from './balance-shafts.choices.ts';
export { partBanks } from './part-banks.choices.ts';
export { crankLayout } from './crank-layout.choices.ts';
