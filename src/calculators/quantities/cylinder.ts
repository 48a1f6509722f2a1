import { quantity } from './entry.ts';

// Cylinder and stack

export const bore = quantity('bore', {
  label: 'Bore',
  symbol: 'B',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [20, 200],
  usual: [46, 118],
  usualPlusMinus: 0.005,
  demo: { baseline: '90.50 mm', candidate: '90.50 mm' },
});

export const stroke = quantity('stroke', {
  label: 'Stroke (twice the throw)',
  symbol: 'S',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [15, 200],
  usual: [38, 115],
  usualPlusMinus: 0.02,
  demo: { baseline: '73.00 mm', candidate: '73.00 mm' },
});

export const rodLength = quantity('rodLength', {
  label: 'Rod length, centre to centre',
  symbol: 'L',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [40, 400],
  usual: [80, 185],
  usualPlusMinus: 0.02,
  demo: { baseline: '142.00 mm', candidate: '146.00 mm' },
});

export const pinOffset = quantity('pinOffset', {
  label: 'Pin offset in the piston',
  symbol: 'e_p',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [-4, 4],
  usual: [0, 1.5],
  usualPlusMinus: 0.05,
  demo: { baseline: '0.80 mm', candidate: '0 mm' },
});

export const boreOffset = quantity('boreOffset', {
  label: 'Bore offset from the crank axis',
  symbol: 'e_c',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [-25, 30],
  usual: [0, 14],
  usualPlusMinus: 0.1,
  demo: { baseline: '0 mm', candidate: '0 mm' },
});

export const cylinderSpacing = quantity('cylinderSpacing', {
  label: 'Cylinder spacing along the crank',
  symbol: 'a_c',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [30, 200],
  usual: [70, 115],
  usualPlusMinus: 0.05,
  demo: { baseline: '100.0 mm', candidate: '100.0 mm' },
});

export const bankAngle = quantity('bankAngle', {
  label: 'Angle between the banks',
  symbol: 'γ',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [0, 180],
  usual: [0, 180],
  usualPlusMinus: 0.1,
  demo: { baseline: '90 deg', candidate: '90 deg' },
});
