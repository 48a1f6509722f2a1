import { quantity } from './entry.ts';

// Weighing

export const scaleResolution = quantity('scaleResolution', {
  label: 'Scale division',
  symbol: 'd_s',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0.001, 20],
  usual: [0.1, 1],
  demo: { baseline: '0.1 g', candidate: '0.1 g' },
});

export const fixtureRepeat = quantity('fixtureRepeat', {
  label: 'Spread of repeated end weighings (1 s)',
  symbol: 's_rep',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0, 20],
  usual: [0.1, 1],
  demo: { baseline: '0.3 g', candidate: '0.3 g' },
});

export const supportOffset = quantity('supportOffset', {
  label: "Support off the eye's centre by",
  symbol: 'δ',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [-20, 20],
  usual: [0, 1],
  usualPlusMinus: 0.1,
  demo: { baseline: '0.2 mm', candidate: '0.2 mm' },
});

export const checkMass = quantity('checkMass', {
  label: 'Check mass, as certified',
  symbol: 'm_chk',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [1, 20000],
  usual: [100, 2000],
  usualPlusMinus: 0.025,
  demo: { baseline: '500 g', candidate: '500 g' },
});

export const checkReading = quantity('checkReading', {
  label: 'Check mass, as the scale reads it',
  symbol: 'r_chk',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0.1, 21000],
  usual: [100, 2000],
  usualPlusMinus: 0.1,
  demo: { baseline: '500.1 g', candidate: '500.1 g' },
});

export const batchMass = quantity('batchMass', {
  label: 'Small parts weighed together',
  symbol: 'M_batch',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0.01, 20000],
  usual: [1, 400],
  usualPlusMinus: 0.1,
  demo: { baseline: '6.0 g', candidate: '6.1 g' },
});

export const batchCount = quantity('batchCount', {
  label: 'How many were weighed together',
  symbol: 'N_batch',
  kind: 'count',
  metric: 'count',
  inch: 'count',
  rangeUnit: 'count',
  hard: [1, 1000],
  usual: [8, 20],
  demo: { baseline: '10', candidate: '10' },
});
