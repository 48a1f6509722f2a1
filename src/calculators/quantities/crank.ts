import { quantity } from './entry.ts';

// Crank

export const mainDiameter = quantity('mainDiameter', {
  label: 'Main journal diameter',
  symbol: 'D_m',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [12, 200],
  usual: [38, 72],
  usualPlusMinus: 0.002,
  demo: { baseline: '60.000 mm', candidate: '59.994 mm' },
});

export const crankpinDiameter = quantity('crankpinDiameter', {
  label: 'Crankpin diameter',
  symbol: 'D_p',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [12, 160],
  usual: [30, 58],
  usualPlusMinus: 0.002,
  demo: { baseline: '52.000 mm', candidate: '46.000 mm' },
});
