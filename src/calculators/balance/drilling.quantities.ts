import {
  angle,
  count,
  expansion,
  length,
  metalDensity,
  metalModulus,
  temperature,
  unbalance,
} from '../quantity.ts';

/* One plane's reading, and the holes that answer it. */

export const unbalanceRead = unbalance(
  'unbalanceRead',
  'U',
  'Unbalance read',
  [0, 10, 15000, 200000],
  { origin: 'part', demo: '4200 g·mm', plusMinus: 20 },
);
export const unbalanceAngle = angle('unbalanceAngle', 'α_U', 'Angle read', [-360, 0, 360, 360], {
  origin: 'part',
  demo: '172 deg',
  plusMinus: 2,
});
export const angleOrigin = angle(
  'angleOrigin',
  'α_0',
  'Machine’s zero from throw 1, clockwise seen from the nose',
  [-360, 0, 360, 360],
  { origin: 'choice', demo: '0 deg' },
);
export const heavyAngle = angle(
  'heavyAngle',
  'α_H',
  'Heavy spot from throw 1, clockwise seen from the nose',
  [-360, 0, 360, 720],
  { origin: 'part', demo: '188 deg', plusMinus: 2 },
);
export const secondUnbalance = unbalance(
  'secondUnbalance',
  'U_2',
  'Unbalance read after drilling',
  [0, 0, 3000, 200000],
  { origin: 'part', demo: ['310 g·mm', '640 g·mm'], plusMinus: 20 },
);
export const secondAngle = angle(
  'secondAngle',
  'α_2',
  'Angle read after drilling',
  [-360, 0, 360, 360],
  { origin: 'part', demo: ['131 deg', '355 deg'], plusMinus: 2 },
);
export const askedUnbalance = unbalance(
  'askedUnbalance',
  'U_ask',
  'What the holes were to take, if not all of the first reading',
  [0.01, 10, 15000, 200000],
  { origin: 'part', demo: '', optional: true },
);
export const askedAngle = angle(
  'askedAngle',
  'α_ask',
  'Middle of those holes from throw 1, clockwise seen from the nose',
  [-360, 0, 360, 720],
  { origin: 'part', demo: '', optional: true },
);
export const counterweightRadius = length(
  'counterweightRadius',
  'R_cw',
  'Rim radius of the counterweight',
  [15, 45, 95, 250],
  { origin: 'part', demo: ['74.0 mm', '73.0 mm'], plusMinus: 0.5 },
);
export const counterweightWidth = length(
  'counterweightWidth',
  'w_cw',
  'Width of the counterweight along the shaft',
  [4, 13, 30, 90],
  { origin: 'part', demo: ['19.0 mm', '17.0 mm'], plusMinus: 0.1 },
);
export const counterweightAngle = angle(
  'counterweightAngle',
  'β_cw',
  'Middle of the counterweight from throw 1, clockwise seen from the nose',
  [-360, 0, 360, 720],
  { origin: 'part', demo: '180 deg', plusMinus: 2 },
);
export const holeDiameter = length('holeDiameter', 'd_h', 'Drill', [2, 8, 25, 60], {
  origin: 'choice',
  demo: ['14 mm', '12 mm'],
});
export const holeCount = count('holeCount', 'n_h', 'Holes', [1, 1, 4, 12], {
  origin: 'choice',
  demo: ['3', '4'],
});
export const holeSpacing = angle(
  'holeSpacing',
  'β_h',
  'Angle between neighbouring holes',
  [1, 18, 40, 180],
  { origin: 'choice', demo: '24 deg' },
);
export const holeAngleLimit = angle(
  'holeAngleLimit',
  'β_lim',
  'Holes allowed to either side of the counterweight’s middle',
  [0, 25, 60, 110],
  { origin: 'choice', demo: '50 deg' },
);
export const depthLimit = length(
  'depthLimit',
  'h_lim',
  'Deepest hole allowed, to the full diameter',
  [0.5, 12, 30, 150],
  { origin: 'choice', demo: '25 mm' },
);
export const keepOutRadius = length(
  'keepOutRadius',
  'R_keep',
  'Radius that no hole may reach',
  [0, 22, 40, 200],
  { origin: 'choice', demo: '36 mm' },
);
export const holeWall = length(
  'holeWall',
  't_h',
  'Metal to be left between holes and towards the faces',
  [0, 1, 4, 30],
  { origin: 'choice', demo: '2 mm' },
);
export const pointAngle = angle(
  'pointAngle',
  'κ_h',
  'Angle of the drill’s point (180° is flat)',
  [60, 118, 140, 180],
  { origin: 'choice', demo: '118 deg' },
);
export const axialHoleRadius = length(
  'axialHoleRadius',
  'R_ax',
  'Radius of a hole parallel to the shaft',
  [5, 40, 80, 220],
  { origin: 'choice', demo: '62 mm' },
);
export const steelDensity = metalDensity(
  'steelDensity',
  'ρ_cw',
  'Density of the counterweight’s metal',
  [6.8, 7.1, 7.87, 8.2],
  { origin: 'thing', demo: '7.85', plusMinus: 0.02 },
);
export { angleSense, crankTurns, readingNames } from './unbalance-reading.choices.ts';
export { drillList } from './drill-sizes.choices.ts';
export { holeKind } from './counterweight-drilling.choices.ts';

/* Slugs of heavy metal in a counterweight. */

export const addedUnbalance = unbalance(
  'addedUnbalance',
  'U_add',
  'Unbalance to add',
  [0.01, 100, 20000, 200000],
  { origin: 'part', demo: '5600 g·mm', plusMinus: 20 },
);
export const slugDensity = metalDensity(
  'slugDensity',
  'ρ_cert',
  'Density of the alloy by its certificate, if there is one',
  [15, 16.85, 18.85, 19.3],
  { origin: 'part', demo: '', optional: true },
);
export const slugDiameter = length('slugDiameter', 'd_W', 'Slug diameter', [4, 12, 32, 60], {
  origin: 'choice',
  demo: '19.000 mm',
});
export const slugLength = length('slugLength', 'l_W', 'Slug length', [3, 10, 30, 150], {
  origin: 'choice',
  demo: ['18.0 mm', '16.0 mm'],
});
export const slugRadius = length(
  'slugRadius',
  'R_W',
  'Radius of the slug’s centre',
  [5, 45, 82, 230],
  { origin: 'choice', demo: '60.0 mm' },
);
export const slugCount = count('slugCount', 'n_W', 'Slugs', [1, 1, 4, 12], {
  origin: 'choice',
  demo: '2',
});
export const slugSpacing = angle(
  'slugSpacing',
  'β_W',
  'Angle between neighbouring slugs',
  [1, 20, 40, 180],
  { origin: 'choice', demo: '24 deg' },
);
export const slugInterference = length(
  'slugInterference',
  'δ_W',
  'Interference of slug and hole, on the diameter',
  [0, 0.03, 0.1, 0.3],
  { origin: 'part', demo: ['0.045 mm', '0.050 mm'], plusMinus: 0.003 },
);
export const slugModulus = metalModulus(
  'slugModulus',
  'E_W',
  'Young’s modulus of the alloy',
  [150, 270, 370, 420],
  { origin: 'thing', demo: ['280 GPa', '340 GPa'], plusMinus: 30 },
);
export const slugExpansion = expansion(
  'slugExpansion',
  'α_W',
  'Thermal expansion of the alloy',
  [3, 4.5, 5.6, 14],
  { origin: 'thing', demo: '5.0 ppm/K', plusMinus: 0.4 },
);
export const counterweightModulus = metalModulus(
  'counterweightModulus',
  'E_cw',
  'Young’s modulus of the counterweight’s metal',
  [80, 165, 212, 250],
  { origin: 'thing', demo: '207 GPa', plusMinus: 3 },
);
export const counterweightTemperature = temperature(
  'counterweightTemperature',
  'T_cw',
  'Counterweight and slug, running',
  [-50, 80, 140, 250],
  { origin: 'assumption', demo: '110 °C', plusMinus: 15 },
);
export { slugClass } from './heavy-metal.choices.ts';
