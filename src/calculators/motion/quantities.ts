import { angle, angularAcceleration, crankSpeed, length } from '../quantity.ts';

/* The engine’s main sizes, its speeds, and what moves by them. */

export const bore = length('bore', 'B', 'Bore', [20, 46, 118, 200], {
  origin: 'thing',
  demo: '90.50 mm',
  plusMinus: 0.005,
});
export const stroke = length('stroke', 'S', 'Stroke (twice the throw)', [15, 38, 115, 200], {
  origin: 'thing',
  demo: '73.00 mm',
  plusMinus: 0.02,
});
export const rodLength = length(
  'rodLength',
  'L',
  'Rod length, centre to centre',
  [40, 80, 185, 400],
  { origin: 'part', demo: ['142.00 mm', '146.00 mm'], plusMinus: 0.02 },
);
export const pinOffset = length('pinOffset', 'e_p', 'Pin offset in the piston', [-4, 0, 1.5, 4], {
  origin: 'part',
  demo: ['0.80 mm', '0 mm'],
  plusMinus: 0.05,
});
export const boreOffset = length(
  'boreOffset',
  'e_c',
  'Bore offset from the crank axis',
  [-25, 0, 14, 30],
  { origin: 'thing', demo: '0 mm', plusMinus: 0.1 },
);
export const maxSpeed = crankSpeed(
  'maxSpeed',
  'n_max',
  'Redline (highest intended speed)',
  [500, 5000, 13500, 25000],
  { origin: 'choice', demo: ['6400 rpm', '8400 rpm'] },
);
export const missedShiftSpeed = crankSpeed(
  'missedShiftSpeed',
  'n_miss',
  'Over-rev speed (missed shift)',
  [500, 5000, 15000, 30000],
  { origin: 'choice', demo: ['6900 rpm', '8900 rpm'] },
);
export const commonSpeed = crankSpeed(
  'commonSpeed',
  'n_com',
  'One common speed for both sets',
  [500, 1000, 13500, 25000],
  { origin: 'choice', demo: '6400 rpm', common: true },
);
export const crankAngle = angle(
  'crankAngle',
  'θ',
  'Crank angle after TDC',
  [-720, -360, 360, 720],
  { origin: 'choice', demo: '40 deg', common: true },
);
export const crankAcceleration = angularAcceleration(
  'crankAcceleration',
  'α',
  'Crank angular acceleration',
  [-100000, -1000, 1000, 100000],
  { origin: 'choice', demo: '0 rad/s2' },
);
export const rodPoint = length(
  'rodPoint',
  'x_X',
  'Point on the rod, from the crankpin centre',
  [0, 0, 185, 400],
  { origin: 'part', demo: ['40.9 mm', '46.1 mm'], plusMinus: 0.1 },
);
