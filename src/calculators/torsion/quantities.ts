import {
  frequency,
  inertia,
  inertias,
  length,
  metalModulus,
  numbers,
  torsionalStiffness,
  torsionalStiffnesses,
} from '../quantity.ts';

/* A crank as inertias on springs, and what its springs are made of. */

export const throwInertia = inertia(
  'throwInertia',
  'I_thr',
  'One throw with its rods and pistons, inertia',
  [0.0002, 0.002, 0.03, 1],
  { origin: 'part', demo: ['0.0163 kg·m²', '0.0132 kg·m²'], plusMinus: 0.0008 },
);
export const throwStiffness = torsionalStiffness(
  'throwStiffness',
  'k_thr',
  'Stiffness from one crankpin to the next',
  [5, 100, 2500, 100000],
  { origin: 'part', demo: ['622 kN·m/rad', '469 kN·m/rad'], plusMinus: 100 },
);
export const hubInertia = inertia(
  'hubInertia',
  'I_hub',
  'Damper’s hub alone, inertia',
  [0.0001, 0.0005, 0.012, 0.5],
  { origin: 'part', demo: ['0.0035 kg·m²', '0.0026 kg·m²'], plusMinus: 0.0003 },
);
export const ringStiffness = torsionalStiffness(
  'ringStiffness',
  'k_ring',
  'Stiffness of the damper’s ring on its hub',
  [0.1, 5, 120, 5000],
  { origin: 'part', demo: ['28 kN·m/rad', '24 kN·m/rad'], plusMinus: 3 },
);
export const noseStiffness = torsionalStiffness(
  'noseStiffness',
  'k_nose',
  'Stiffness from the damper to the first crankpin',
  [5, 100, 2500, 100000],
  { origin: 'part', demo: ['600 kN·m/rad', '520 kN·m/rad'], plusMinus: 120 },
);
export const flangeStiffness = torsionalStiffness(
  'flangeStiffness',
  'k_fl',
  'Stiffness from the last crankpin to the flywheel',
  [5, 150, 4000, 200000],
  { origin: 'part', demo: ['1100 kN·m/rad', '950 kN·m/rad'], plusMinus: 220 },
);
export const firingOrder = numbers('firingOrder', 'K_fire', 'Firing order', [1, 1, 12, 64], {
  origin: 'choice',
  demo: '',
  optional: true,
  most: 64,
});
export { cylinderNumbering } from './firing-orders.choices.ts';

/* The shape of one throw. */

export const mainLength = length(
  'mainLength',
  'l_m',
  'Main journal, length between its webs',
  [8, 18, 36, 160],
  { origin: 'thing', demo: '26.0 mm', plusMinus: 0.1 },
);
export const crankpinLength = length(
  'crankpinLength',
  'l_p',
  'Crankpin, length between its webs',
  [8, 18, 60, 200],
  { origin: 'thing', demo: '45.0 mm', plusMinus: 0.1 },
);
export const mainBore = length(
  'mainBore',
  'd_m',
  'Bore through the main journal',
  [0, 0, 30, 150],
  {
    origin: 'thing',
    demo: '0 mm',
    plusMinus: 0.2,
  },
);
export const crankpinBore = length(
  'crankpinBore',
  'd_p',
  'Bore through the crankpin',
  [0, 0, 30, 120],
  {
    origin: 'thing',
    demo: ['0 mm', '18 mm'],
    plusMinus: 0.2,
  },
);
export const crankWebThickness = length(
  'crankWebThickness',
  't_web',
  'Crank web, thickness along the shaft',
  [4, 12, 28, 120],
  { origin: 'thing', demo: '20.0 mm', plusMinus: 0.3 },
);
export const crankWebWidth = length(
  'crankWebWidth',
  'w_web',
  'Crank web, width beside the pin',
  [15, 60, 110, 400],
  { origin: 'thing', demo: '90.0 mm', plusMinus: 1 },
);
export const crankShearModulus = metalModulus(
  'crankShearModulus',
  'G_cr',
  'Shear modulus of the crank’s metal',
  [30, 62, 82, 90],
  { origin: 'thing', demo: '80 GPa', plusMinus: 2 },
);

/* A ring tuned to one frequency of a crank. */

export const mainInertia = inertia(
  'mainInertia',
  'I_M',
  'What swings at the damper without its ring, inertia',
  [0.0005, 0.006, 0.15, 10],
  { origin: 'part', demo: ['0.0391 kg·m²', '0.0333 kg·m²'], plusMinus: 0.003 },
);
export const mainFrequency = frequency(
  'mainFrequency',
  'f_M',
  'Natural frequency without the ring',
  [1, 150, 700, 5000],
  { origin: 'part', demo: ['409 Hz', '450 Hz'], plusMinus: 20 },
);
export const ringInertia = inertia(
  'ringInertia',
  'I_ring',
  'Damper’s ring, inertia',
  [0.0001, 0.001, 0.03, 5],
  {
    origin: 'part',
    demo: ['0.0060 kg·m²', '0.0042 kg·m²'],
    plusMinus: 0.0003,
  },
);

/* Any inertias in line. */

export const lineInertias = inertias(
  'lineInertias',
  'I_i',
  'Inertias, from one end to the other',
  [0.00001, 0.001, 10, 1e6],
  {
    origin: 'part',
    demo: [
      '0.0095; 0.0163; 0.0163; 0.0163; 0.0163; 0.180',
      '0.0068; 0.0132; 0.0132; 0.0132; 0.0132; 0.065',
    ],
    most: 10,
  },
);
export const lineStiffnesses = torsionalStiffnesses(
  'lineStiffnesses',
  'k_i',
  'Stiffnesses between them',
  [0.001, 1, 5000, 1e7],
  { origin: 'part', demo: ['600; 622; 622; 622; 1100', '520; 469; 469; 469; 950'], most: 9 },
);
export const trialFrequency = frequency(
  'trialFrequency',
  'f_try',
  'Frequency to try in Holzer’s table',
  [0, 20, 2000, 100000],
  { origin: 'choice', demo: '300 Hz' },
);
