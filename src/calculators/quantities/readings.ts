import { readings } from './entry.ts';

// Repeated readings, typed in one field

export const bigEndReadings = readings('bigEndReadings', {
  label: 'Big end on the scale, each lift',
  symbol: 'm_be,i',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [15, 4000],
  usual: [105, 660],
  most: 20,
  demo: {
    baseline: '421.0; 421.5; 421.1; 420.9; 421.5',
    candidate: '300.0; 300.4; 299.8; 300.3; 300.0',
  },
});
export const smallEndReadings = readings('smallEndReadings', {
  label: 'Small end on the scale, each lift',
  symbol: 'm_se,i',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [8, 1500],
  usual: [50, 250],
  most: 20,
  demo: {
    baseline: '170.9; 170.4; 170.3; 170.8; 170.6',
    candidate: '138.0; 138.5; 138.4; 137.9; 138.2',
  },
});
