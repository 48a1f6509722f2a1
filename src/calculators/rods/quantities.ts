import {
  area,
  count,
  expansion,
  length,
  mass,
  metalDensity,
  metalModulus,
  ratio,
  strength,
  temperature,
  weighings,
} from '../quantity.ts';

/* A rod on the scale, its shank, its metal. */

export const rodMass = mass(
  'rodMass',
  'm_rod',
  'Rod with bolts, without bearings',
  [25, 160, 900, 5000],
  { origin: 'part', demo: ['592.0 g', '438.0 g'], plusMinus: 0.1 },
);
export const bigEndMass = mass('bigEndMass', 'm_be', 'Big end on the scale', [15, 105, 660, 4000], {
  origin: 'part',
  demo: ['421.2 g', '300.1 g'],
  plusMinus: 0.5,
});
export const smallEndMass = mass(
  'smallEndMass',
  'm_se',
  'Small end on the scale',
  [8, 50, 250, 1500],
  { origin: 'part', demo: ['170.6 g', '138.2 g'], plusMinus: 0.5 },
);
export const capMass = mass(
  'capMass',
  'm_cap',
  'Cap with its bolts and half shell',
  [10, 45, 300, 1500],
  { origin: 'part', demo: ['182 g', '128 g'], plusMinus: 0.2 },
);
export const bigEndReadings = weighings(
  'bigEndReadings',
  'm_be,i',
  'Big end on the scale, every reading',
  [15, 105, 660, 4000],
  {
    origin: 'part',
    demo: ['421.0; 421.5; 421.1; 420.9; 421.5', '300.0; 300.4; 299.8; 300.3; 300.0'],
    most: 20,
  },
);
export const smallEndReadings = weighings(
  'smallEndReadings',
  'm_se,i',
  'Small end on the scale, every reading',
  [8, 50, 250, 1500],
  {
    origin: 'part',
    demo: ['170.9; 170.4; 170.3; 170.8; 170.6', '138.0; 138.5; 138.4; 137.9; 138.2'],
    most: 20,
  },
);
export const scaleResolution = mass(
  'scaleResolution',
  'd_s',
  'Scale division',
  [0.001, 0.1, 1, 20],
  { origin: 'thing', demo: '0.1 g' },
);
export const fixtureRepeat = mass(
  'fixtureRepeat',
  's_rep',
  'Repeated end weighings: standard deviation',
  [0, 0.1, 1, 20],
  { origin: 'thing', demo: '0.3 g' },
);
export const supportOffset = length(
  'supportOffset',
  'δ',
  "Support off the eye's centre by",
  [-20, 0, 1, 20],
  { origin: 'assumption', demo: '0.2 mm', plusMinus: 0.1 },
);
export const checkMass = mass(
  'checkMass',
  'm_chk',
  'Check mass, as certified',
  [1, 100, 2000, 20000],
  { origin: 'thing', demo: '500 g', plusMinus: 0.025 },
);
export const checkReading = mass(
  'checkReading',
  'r_chk',
  'Check mass, as the scale reads it',
  [0.1, 100, 2000, 21000],
  { origin: 'thing', demo: '500.1 g', plusMinus: 0.1 },
);
export const batchMass = mass(
  'batchMass',
  'M_batch',
  'Small parts weighed together',
  [0.01, 1, 400, 20000],
  { origin: 'part', demo: ['6.0 g', '6.1 g'], plusMinus: 0.1 },
);
export const batchCount = count(
  'batchCount',
  'N_batch',
  'How many were weighed together',
  [1, 8, 20, 1000],
  { origin: 'choice', demo: '10' },
);
export const shankHeight = length(
  'shankHeight',
  'H_s',
  'Beam section, height in the plane of motion',
  [5, 14, 34, 90],
  { origin: 'part', demo: ['20.0 mm', '27.0 mm'], plusMinus: 0.1 },
);
export const shankWidth = length(
  'shankWidth',
  'B_s',
  'Beam section, width across that plane',
  [4, 10, 24, 70],
  { origin: 'part', demo: ['15.5 mm', '19.0 mm'], plusMinus: 0.1 },
);
export const flangeThickness = length(
  'flangeThickness',
  't_f',
  'Flange thickness of the beam',
  [1, 2.4, 7, 20],
  { origin: 'part', demo: ['4.0 mm', '6.0 mm'], plusMinus: 0.1 },
);
export const webThickness = length(
  'webThickness',
  't_w',
  'Web thickness of the beam',
  [1, 2.2, 8, 25],
  { origin: 'part', demo: ['3.6 mm', '7.0 mm'], plusMinus: 0.1 },
);
export const shankArea = area(
  'shankArea',
  'A_s',
  'Least area of the beam, where it is known',
  [15, 55, 450, 2000],
  { origin: 'part', demo: ['167.2 mm2', '333.0 mm2'], plusMinus: 5 },
);
export const shankLength = length(
  'shankLength',
  'l_s',
  'Length of the beam between the two eyes',
  [15, 60, 140, 350],
  { origin: 'part', demo: ['100 mm', '106 mm'], plusMinus: 2 },
);
export const stretchFactor = ratio(
  'stretchFactor',
  'k_st',
  'Stretch of the whole rod over that of the beam',
  [1, 1.3, 2.5, 5],
  { origin: 'assumption', demo: '1.6', plusMinus: 0.4 },
);
export const youngsModulus = metalModulus(
  'youngsModulus',
  'E',
  "Young's modulus of the rod",
  [60, 70, 212, 220],
  { origin: 'thing', demo: ['207 GPa', '71 GPa'], plusMinus: 3 },
);
export const rodDensity = metalDensity(
  'rodDensity',
  'ρ_rod',
  'Density of the rod',
  [2.6, 2.77, 7.87, 8.1],
  { origin: 'thing', demo: ['7.83 g/cm3', '2.81 g/cm3'], plusMinus: 0.05 },
);
export const yieldStrength = strength(
  'yieldStrength',
  'R_p',
  'Yield strength of the rod, at its temperature',
  [100, 350, 1500, 2100],
  { origin: 'thing', demo: ['600 MPa', '440 MPa'], plusMinus: 30 },
);
export const rodExpansion = expansion(
  'rodExpansion',
  'α_rod',
  'Thermal expansion of the rod',
  [7, 8.6, 23.6, 26],
  { origin: 'thing', demo: ['11.5 ppm/K', '23.4 ppm/K'], plusMinus: 0.4 },
);
export const rodTemperature = temperature(
  'rodTemperature',
  'T_rod',
  'Rod temperature, running',
  [20, 90, 150, 220],
  { origin: 'assumption', demo: ['105 degC', '100 degC'], plusMinus: 15 },
);
export const assemblyTemperature = temperature(
  'assemblyTemperature',
  'T_0',
  'Temperature at which it was measured',
  [-10, 15, 30, 40],
  { origin: 'thing', demo: '20 degC', plusMinus: 1 },
);
export const rodNotchFactor = ratio(
  'rodNotchFactor',
  'K_f',
  'Fatigue notch factor of the beam',
  [1, 1.1, 2.5, 6],
  { origin: 'assumption', demo: ['1.3', '1.2'], plusMinus: 0.2 },
);
export const rodMargin = ratio('rodMargin', 'j', 'Margin asked for, both sets', [1, 1.2, 3, 10], {
  origin: 'choice',
  demo: '1.5',
  common: true,
});
export const stretchWanted = length(
  'stretchWanted',
  'δ_0',
  'Stretch of the whole rod to be held, both sets',
  [0.005, 0.03, 0.2, 2],
  { origin: 'choice', demo: '0.080 mm', common: true },
);
export const endFactor = ratio(
  'endFactor',
  'K_e',
  'Free length over length of the bar',
  [0.1, 0.5, 2, 5],
  { origin: 'assumption', demo: '1', plusMinus: 0.05 },
);
export const gyrationRadius = length(
  'gyrationRadius',
  'k',
  'Radius of gyration of the section',
  [0.5, 3, 12, 500],
  { origin: 'part', demo: ['7.18 mm', '9.14 mm'], plusMinus: 0.05 },
);
export const rankineDivisor = ratio(
  'rankineDivisor',
  'c_R',
  'Divisor in Rankine’s formula, as a textbook gives it',
  [100, 1000, 10000, 50000],
  { origin: 'assumption', demo: '7500' },
);
export { rodMaterial } from './rod-materials.choices.ts';
export { areaFrom, shankShape } from './rod-shank.choices.ts';
