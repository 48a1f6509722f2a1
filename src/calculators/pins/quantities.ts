import { length, metalDensity, metalModulus } from '../quantity.ts';

/* The wrist pin and what bears on it. */

export const pinDiameter = length('pinDiameter', 'd_p', 'Wrist pin diameter', [5, 12, 27, 60], {
  origin: 'part',
  demo: ['22.00 mm', '20.50 mm'],
  plusMinus: 0.001,
});
export const pinBore = length('pinBore', 'd_pi', 'Wrist pin bore, straight part', [0, 7, 16, 50], {
  origin: 'part',
  demo: '13.0 mm',
  plusMinus: 0.05,
});
export const pinTaperBore = length(
  'pinTaperBore',
  'd_pt',
  'Wrist pin bore at its mouth',
  [0, 7, 20, 55],
  { origin: 'part', demo: '13.0 mm', plusMinus: 0.1 },
);
export const pinTaperLength = length(
  'pinTaperLength',
  'l_pt',
  'Length of each tapered mouth',
  [0, 0, 16, 50],
  { origin: 'part', demo: '0 mm', plusMinus: 0.2 },
);
export const pinLength = length('pinLength', 'l_p', 'Wrist pin length', [12, 36, 76, 180], {
  origin: 'part',
  demo: ['62.0 mm', '50.0 mm'],
  plusMinus: 0.02,
});
export const smallEndWidth = length(
  'smallEndWidth',
  'l_se',
  'Width of the small end on the pin',
  [6, 14, 30, 80],
  { origin: 'part', demo: ['26.0 mm', '21.0 mm'], plusMinus: 0.05 },
);
export const bossGap = length(
  'bossGap',
  'b_p',
  'Distance between the piston bosses',
  [6, 15, 34, 90],
  { origin: 'part', demo: ['27.5 mm', '22.2 mm'], plusMinus: 0.1 },
);
export const pinDensity = metalDensity(
  'pinDensity',
  'ρ_p',
  'Density of the wrist pin',
  [2.5, 7.7, 7.9, 9],
  { origin: 'thing', demo: '7.85 g/cm3', plusMinus: 0.03 },
);
export const pinModulus = metalModulus(
  'pinModulus',
  'E_p',
  "Young's modulus of the wrist pin",
  [60, 195, 215, 300],
  { origin: 'thing', demo: '205 GPa', plusMinus: 5 },
);
