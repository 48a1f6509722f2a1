import {
  count,
  crankSpeed,
  density,
  distance,
  energy,
  heavyMass,
  inertia,
  length,
  rateOfSpeed,
  ratio,
  time,
  torque,
} from '../quantity.ts';

/* What turns, what it is geared to, and what swings on the bench. */

export const cylinders = count('cylinders', 'N_cyl', 'Cylinders', [1, 1, 12, 16], {
  origin: 'thing',
  demo: '8',
});
export const crankInertia = inertia(
  'crankInertia',
  'I_crank',
  'Bare crank, inertia',
  [0.0003, 0.004, 0.09, 2],
  { origin: 'part', demo: ['0.0560 kg·m²', '0.0462 kg·m²'], plusMinus: 0.001 },
);
export const damperInertia = inertia(
  'damperInertia',
  'I_dmp',
  'Damper with its hub, inertia',
  [0, 0.001, 0.03, 0.5],
  { origin: 'part', demo: ['0.0095 kg·m²', '0.0068 kg·m²'], plusMinus: 0.0003 },
);
export const clutchInertia = inertia(
  'clutchInertia',
  'I_cl',
  'Clutch cover and plates, inertia',
  [0, 0.004, 0.12, 2],
  { origin: 'part', demo: ['0.062 kg·m²', '0.016 kg·m²'], plusMinus: 0.002 },
);
export const flywheelInertia = inertia(
  'flywheelInertia',
  'I_fw',
  'Flywheel with its starter ring, inertia',
  [0.0003, 0.008, 0.2, 3],
  { origin: 'part', demo: ['0.118 kg·m²', '0.049 kg·m²'], plusMinus: 0.003 },
);
export const flywheelDiameter = length(
  'flywheelDiameter',
  'd_fw',
  'Flywheel, outside diameter',
  [50, 140, 340, 800],
  { origin: 'part', demo: ['290 mm', '235 mm'], plusMinus: 0.5 },
);
export const flywheelInside = length(
  'flywheelInside',
  'd_fw,i',
  'Flywheel, inside diameter (0 for a disc)',
  [0, 0, 200, 790],
  { origin: 'part', demo: '0 mm', plusMinus: 0.5 },
);
export const flywheelThickness = length(
  'flywheelThickness',
  't_fw',
  'Flywheel, mean thickness',
  [2, 6, 40, 150],
  { origin: 'part', demo: ['18 mm', '12 mm'], plusMinus: 0.5 },
);
export const flywheelDensity = density(
  'flywheelDensity',
  'ρ_fw',
  'Flywheel, density of its metal',
  [1.6, 2.6, 7.9, 20],
  { origin: 'thing', demo: '7.85 g/cm3', plusMinus: 0.05 },
);
export const speedRise = rateOfSpeed(
  'speedRise',
  'α_n',
  'Rate of rise in speed',
  [1, 200, 8000, 80000],
  { origin: 'choice', demo: ['700 rpm/s', '1100 rpm/s'] },
);
export const speedFrom = crankSpeed(
  'speedFrom',
  'n_1',
  'Speed at the start of the rise',
  [0, 500, 5500, 25000],
  { origin: 'choice', demo: ['4000 rpm', '5200 rpm'] },
);
export const speedTo = crankSpeed(
  'speedTo',
  'n_2',
  'Speed at the end of the rise',
  [0, 6000, 13500, 25000],
  { origin: 'choice', demo: ['6200 rpm', '8300 rpm'] },
);
export const netTorque = torque('netTorque', 'M', 'Net torque at the crank', [1, 50, 900, 3000], {
  origin: 'thing',
  demo: ['300 N·m', '350 N·m'],
  plusMinus: 10,
});
export const gearRatio = ratio('gearRatio', 'i_g', 'Gear ratio, lowest used', [0.4, 0.7, 4, 8], {
  origin: 'thing',
  demo: '2.20',
});
export const finalDrive = ratio('finalDrive', 'i_f', 'Final drive ratio', [1, 2.6, 6, 15], {
  origin: 'thing',
  demo: '3.42',
});
export const tyreRadius = distance(
  'tyreRadius',
  'r_t',
  'Rolling radius of the driven tyre',
  [0.15, 0.24, 0.36, 1],
  { origin: 'thing', demo: '0.300 m', plusMinus: 0.003 },
);
export const wheelInertia = inertia(
  'wheelInertia',
  'I_w',
  'One road wheel with tyre and brake, inertia',
  [0.02, 0.25, 1.8, 30],
  { origin: 'thing', demo: '0.80 kg·m²', plusMinus: 0.08 },
);
export const carMass = heavyMass(
  'carMass',
  'm_car',
  'Car with driver and fuel',
  [30, 250, 1900, 5000],
  { origin: 'thing', demo: '1120 kg', plusMinus: 5 },
);
export const drivelineEfficiency = ratio(
  'drivelineEfficiency',
  'η_d',
  'Efficiency of gearbox and axle',
  [0.5, 0.86, 0.96, 1],
  { origin: 'assumption', demo: '0.93', plusMinus: 0.02 },
);
export const engineInertia = inertia(
  'engineInertia',
  'I_E',
  'All that turns with the crank, inertia',
  [0.002, 0.02, 0.5, 10],
  { origin: 'part', demo: ['0.2545 kg·m²', '0.1246 kg·m²'], plusMinus: 0.005 },
);
export const energySwing = energy(
  'energySwing',
  'ΔE',
  'Swing of energy within a cycle',
  [1, 10, 1500, 100000],
  { origin: 'assumption', demo: '60 J', plusMinus: 10 },
);
export const meanSpeed = crankSpeed('meanSpeed', 'n_m', 'Mean speed', [100, 600, 9000, 25000], {
  origin: 'choice',
  demo: '900 rpm',
});
export const swingMass = heavyMass('swingMass', 'm_sw', 'Part on the swing', [0.05, 1, 40, 500], {
  origin: 'part',
  demo: ['20.4 kg', '18.1 kg'],
  plusMinus: 0.02,
});
export const swingCount = count(
  'swingCount',
  'N_sw',
  'Swings timed, to and fro',
  [1, 10, 100, 1000],
  { origin: 'choice', demo: '20' },
);
export const swingTime = time(
  'swingTime',
  't_sw',
  'Time of all of them, mean of several tries',
  [1, 15, 120, 2000],
  { origin: 'part', demo: ['21.46 s', '20.70 s'], plusMinus: 0.1 },
);
export const swingSpacing = length(
  'swingSpacing',
  's_w',
  'Wire (or edge) from the centre',
  [10, 60, 250, 600],
  { origin: 'thing', demo: '120.0 mm', plusMinus: 0.2 },
);
export const swingWire = distance('swingWire', 'l_w', 'Length of the wires', [0.1, 0.6, 2.5, 6], {
  origin: 'thing',
  demo: '1.500 m',
  plusMinus: 0.002,
});
export const platformMass = heavyMass(
  'platformMass',
  'm_pf',
  'Platform of a trifilar swing',
  [0, 0.5, 5, 100],
  { origin: 'thing', demo: '1.500 kg', plusMinus: 0.005 },
);
export const platformTime = time(
  'platformTime',
  't_pf',
  'Time of the swings with the platform empty',
  [1, 15, 120, 2000],
  { origin: 'thing', demo: '38.4 s', plusMinus: 0.1 },
);
export const edgeDistance = length(
  'edgeDistance',
  'x_e',
  'Distance of the two knife edges',
  [40, 100, 260, 700],
  { origin: 'part', demo: ['180.80 mm', '181.35 mm'], plusMinus: 0.1 },
);
export const smallEndTime = time(
  'smallEndTime',
  't_se',
  'Time hung in the small end',
  [1, 15, 120, 2000],
  { origin: 'part', demo: ['37.75 s', '37.77 s'], plusMinus: 0.05 },
);
export const bigEndTime = time(
  'bigEndTime',
  't_be',
  'Time hung in the big end',
  [1, 15, 120, 2000],
  { origin: 'part', demo: ['34.30 s', '34.69 s'], plusMinus: 0.05 },
);
export const rodSwingCount = count(
  'rodSwingCount',
  'N_r',
  'Swings timed from each end',
  [1, 10, 100, 1000],
  { origin: 'choice', demo: '50' },
);
export { flywheelFrom, swingRig } from './rotating-inertia.choices.ts';
