import { quantity } from './entry.ts';

// Speed and pressure

export const maxSpeed = quantity('maxSpeed', {
  label: 'Highest intended speed',
  symbol: 'n_max',
  kind: 'angularSpeed',
  metric: 'rpm',
  inch: 'rpm',
  rangeUnit: 'rpm',
  hard: [500, 25000],
  usual: [5000, 13500],
  usualPlusMinus: 50,
  demo: { baseline: '6400 rpm', candidate: '8400 rpm' },
});

export const missedShiftSpeed = quantity('missedShiftSpeed', {
  label: 'Missed-shift speed',
  symbol: 'n_miss',
  kind: 'angularSpeed',
  metric: 'rpm',
  inch: 'rpm',
  rangeUnit: 'rpm',
  hard: [500, 30000],
  usual: [5000, 15000],
  demo: { baseline: '6900 rpm', candidate: '8900 rpm' },
});

export const commonSpeed = quantity('commonSpeed', {
  label: 'One common speed for both sets',
  symbol: 'n_com',
  kind: 'angularSpeed',
  metric: 'rpm',
  inch: 'rpm',
  rangeUnit: 'rpm',
  hard: [500, 25000],
  usual: [1000, 13500],
  demo: { baseline: '6400 rpm', candidate: '6400 rpm' },
  common: true,
});

export const crankAngle = quantity('crankAngle', {
  label: 'Crank angle after TDC',
  symbol: 'θ',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [-720, 720],
  usual: [-360, 360],
  demo: { baseline: '40 deg', candidate: '40 deg' },
  common: true,
});

export const crankAcceleration = quantity('crankAcceleration', {
  label: 'Crank angular acceleration',
  symbol: 'α',
  kind: 'angularAcceleration',
  metric: 'rad/s2',
  inch: 'rad/s2',
  rangeUnit: 'rad/s2',
  hard: [-100000, 100000],
  usual: [-1000, 1000],
  demo: { baseline: '0 rad/s2', candidate: '0 rad/s2' },
});

export const rodPoint = quantity('rodPoint', {
  label: 'Point on the rod, from the crankpin centre',
  symbol: 'x_X',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 400],
  usual: [0, 185],
  usualPlusMinus: 0.1,
  demo: { baseline: '40.9 mm', candidate: '46.1 mm' },
});

export const crankcasePressure = quantity('crankcasePressure', {
  label: 'Crankcase pressure (absolute)',
  symbol: 'p_cc',
  kind: 'pressure',
  metric: 'kPa',
  inch: 'psi',
  rangeUnit: 'kPa',
  hard: [20, 150],
  usual: [50, 103],
  usualPlusMinus: 1,
  demo: { baseline: '101 kPa', candidate: '98 kPa' },
});

export const overrunPressure = quantity('overrunPressure', {
  label: 'Closed-throttle pressure above the piston (absolute)',
  symbol: 'p_ov',
  kind: 'pressure',
  metric: 'kPa',
  inch: 'psi',
  rangeUnit: 'kPa',
  hard: [5, 100],
  usual: [20, 45],
  usualPlusMinus: 2,
  demo: { baseline: '28 kPa', candidate: '25 kPa' },
});

export const shankSection = quantity('shankSection', {
  label: 'Shank section, from the pin centre',
  symbol: 'y_s',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [5, 300],
  usual: [15, 80],
  usualPlusMinus: 0.5,
  demo: { baseline: '28 mm', candidate: '28 mm' },
});

export const rodMassAbove = quantity('rodMassAbove', {
  label: "Rod mass between that section and the small end's top",
  symbol: 'm_above',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [3, 1500],
  usual: [40, 250],
  usualPlusMinus: 3,
  demo: { baseline: '134 g', candidate: '105 g' },
});
