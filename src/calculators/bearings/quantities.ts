import { expansion, length, load, modulus, ratio, temperature } from '../quantity.ts';

/* Journals, shells and housings, and their temperatures. */

export const mainDiameter = length(
  'mainDiameter',
  'D_m',
  'Main journal diameter',
  [12, 38, 72, 200],
  { origin: 'thing', demo: ['60.000 mm', '59.994 mm'], plusMinus: 0.002 },
);
export const crankpinDiameter = length(
  'crankpinDiameter',
  'D_p',
  'Crankpin diameter',
  [12, 30, 58, 160],
  { origin: 'thing', demo: ['52.000 mm', '46.000 mm'], plusMinus: 0.002 },
);
export const rodHousing = length(
  'rodHousing',
  'D_h',
  'Rod housing bore, without shells',
  [15, 32, 62, 160],
  { origin: 'part', demo: ['55.590 mm', '49.700 mm'], plusMinus: 0.003 },
);
export const housingOutside = length(
  'housingOutside',
  'D_ho',
  'Outside diameter of the big end, as a ring',
  [20, 42, 84, 230],
  { origin: 'part', demo: ['70.6 mm', '74.7 mm'], plusMinus: 1 },
);
export const rodShellWall = length(
  'rodShellWall',
  't_rs',
  'Bearing shell thickness at the crown',
  [0.6, 1.2, 2.5, 8],
  { origin: 'part', demo: ['1.7767 mm', '1.8303 mm'], plusMinus: 0.0015 },
);
export const rodShellWidth = length(
  'rodShellWidth',
  'b_rs',
  'Bearing shell width',
  [4, 12, 24, 90],
  {
    origin: 'part',
    demo: ['19.6 mm', '18.8 mm'],
    plusMinus: 0.05,
  },
);
export const crushHeight = length(
  'crushHeight',
  's_N',
  'Crush height of one half shell',
  [0, 0.02, 0.12, 0.5],
  { origin: 'part', demo: ['0.068 mm', '0.110 mm'], plusMinus: 0.008 },
);
export const rodClearance = length(
  'rodClearance',
  'c_rod',
  'Measured oil clearance of the rod bearing',
  [0.005, 0.022, 0.085, 0.4],
  { origin: 'part', demo: '', plusMinus: 0.006 },
);
export const journalOutOfRound = length(
  'journalOutOfRound',
  'ΔD_o',
  'Out-of-round of the crankpin',
  [0, 0, 0.008, 0.1],
  { origin: 'part', demo: ['0.003 mm', '0.002 mm'], plusMinus: 0.002 },
);
export const journalTaper = length(
  'journalTaper',
  'ΔD_t',
  'Taper of the crankpin',
  [0, 0, 0.006, 0.1],
  { origin: 'part', demo: ['0.003 mm', '0.002 mm'], plusMinus: 0.002 },
);
export const bearingLoad = load('bearingLoad', 'F_b', 'Load on the crankpin', [0.01, 1, 60, 800], {
  origin: 'part',
  demo: ['23.2 kN', '29.2 kN'],
  plusMinus: 2,
});
export const housingPoisson = ratio(
  'housingPoisson',
  'ν_rod',
  'Poisson’s ratio of the rod',
  [0, 0.27, 0.34, 0.49],
  { origin: 'thing', demo: ['0.30', '0.33'], plusMinus: 0.02 },
);
export const shellModulus = modulus(
  'shellModulus',
  'E_sh',
  'Young’s modulus of the shell’s back',
  [60, 195, 212, 300],
  { origin: 'thing', demo: '205 GPa', plusMinus: 3 },
);
export const shellExpansion = expansion(
  'shellExpansion',
  'α_sh',
  'Thermal expansion of the shell’s back',
  [5, 11, 13, 26],
  { origin: 'thing', demo: '11.7 ppm/K', plusMinus: 0.3 },
);
export const crankExpansion = expansion(
  'crankExpansion',
  'α_cr',
  'Thermal expansion of the crank',
  [9, 10.5, 12.8, 14],
  { origin: 'thing', demo: ['12.0 ppm/K', '12.3 ppm/K'], plusMinus: 0.3 },
);
export const coldStartTemperature = temperature(
  'coldStartTemperature',
  'T_cold',
  'Coldest start',
  [-60, -25, 20, 40],
  { origin: 'choice', demo: '−5 °C' },
);
export const crankpinTemperature = temperature(
  'crankpinTemperature',
  'T_pin',
  'Crankpin temperature, running',
  [20, 90, 160, 250],
  { origin: 'assumption', demo: ['110 °C', '105 °C'], plusMinus: 10 },
);
export const fitDiameter = length(
  'fitDiameter',
  'D_n',
  'Nominal diameter of the fit',
  [1, 20, 100, 500],
  { origin: 'choice', demo: ['56 mm', '50 mm'] },
);
export { holeGrade, shaftGrade } from './iso-fit.choices.ts';
