import { quantity } from './entry.ts';

// Masses

export const pistonMass = quantity('pistonMass', {
  label: 'Piston, bare',
  symbol: 'm_piston',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [15, 3000],
  usual: [90, 650],
  usualPlusMinus: 0.1,
  demo: { baseline: '428.0 g', candidate: '318.0 g' },
});

export const pinMass = quantity('pinMass', {
  label: 'Wrist pin',
  symbol: 'm_pin',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [4, 1000],
  usual: [18, 180],
  usualPlusMinus: 0.1,
  demo: { baseline: '120.2 g', candidate: '77.0 g' },
});

export const ringMass = quantity('ringMass', {
  label: 'Rings of one piston',
  symbol: 'm_rings',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [1, 300],
  usual: [8, 60],
  usualPlusMinus: 0.1,
  demo: { baseline: '38.0 g', candidate: '23.5 g' },
});

export const lockMass = quantity('lockMass', {
  label: 'Both locks of one pin',
  symbol: 'm_locks',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0, 25],
  usual: [0, 5],
  usualPlusMinus: 0.05,
  demo: { baseline: '0 g', candidate: '1.2 g' },
});

export const rodMass = quantity('rodMass', {
  label: 'Rod with bolts, without shells',
  symbol: 'm_rod',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [25, 5000],
  usual: [160, 900],
  usualPlusMinus: 0.1,
  demo: { baseline: '592.0 g', candidate: '438.0 g' },
});

export const bigEndMass = quantity('bigEndMass', {
  label: 'Big end on the scale',
  symbol: 'm_be',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [15, 4000],
  usual: [105, 660],
  usualPlusMinus: 0.5,
  demo: { baseline: '421.2 g', candidate: '300.1 g' },
});

export const smallEndMass = quantity('smallEndMass', {
  label: 'Small end on the scale',
  symbol: 'm_se',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [8, 1500],
  usual: [50, 250],
  usualPlusMinus: 0.5,
  demo: { baseline: '170.6 g', candidate: '138.2 g' },
});

export const shellMass = quantity('shellMass', {
  label: 'Both shells of one rod',
  symbol: 'm_shell',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [2, 400],
  usual: [10, 85],
  usualPlusMinus: 0.1,
  demo: { baseline: '41.0 g', candidate: '36.0 g' },
});

export const capMass = quantity('capMass', {
  label: 'Cap with its bolts and half shell',
  symbol: 'm_cap',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [10, 1500],
  usual: [45, 300],
  usualPlusMinus: 0.2,
  demo: { baseline: '182 g', candidate: '128 g' },
});

export const oilMass = quantity('oilMass', {
  label: 'Oil allowance of one crankpin',
  symbol: 'm_oil',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0, 40],
  usual: [1, 8],
  usualPlusMinus: 2,
  demo: { baseline: '4.0 g', candidate: '3.0 g' },
});

export const rodsPerPin = quantity('rodsPerPin', {
  label: 'Rods on one crankpin',
  symbol: 'n_rod',
  kind: 'count',
  metric: 'count',
  inch: 'count',
  rangeUnit: 'count',
  hard: [1, 9],
  usual: [1, 2],
  demo: { baseline: '2', candidate: '2' },
});

export const reciprocatingFraction = quantity('reciprocatingFraction', {
  label: 'Share of the reciprocating mass in the bobweight',
  symbol: 'f',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0, 1],
  usual: [0.36, 0.55],
  demo: { baseline: '0.50', candidate: '0.50' },
});

export const partnerRotating = quantity('partnerRotating', {
  label: "Second rod's turning parts, heavier by",
  symbol: 'Δm_rot',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [-500, 500],
  usual: [-10, 10],
  usualPlusMinus: 0.5,
  demo: { baseline: '0 g', candidate: '0 g' },
});

export const partnerReciprocating = quantity('partnerReciprocating', {
  label: "Second rod's sliding parts, heavier by",
  symbol: 'Δm_rec',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [-500, 500],
  usual: [-20, 20],
  usualPlusMinus: 0.5,
  demo: { baseline: '0 g', candidate: '0 g' },
});

export const bobweight = quantity('bobweight', {
  label: 'Bobweight of one crankpin',
  symbol: 'm_bob',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [30, 15000],
  usual: [200, 2700],
  usualPlusMinus: 0.5,
  demo: { baseline: '1685.2 g', candidate: '1233.1 g' },
});

export const bobweightError = quantity('bobweightError', {
  label: 'Error or change of every bobweight',
  symbol: 'Δm_bob',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [-5000, 5000],
  usual: [0.1, 500],
  demo: { baseline: '4 g', candidate: '3 g' },
});

export const rotatingMass = quantity('rotatingMass', {
  label: 'Turning mass at one crankpin',
  symbol: 'm_rot',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [0, 500000],
  usual: [100, 1400],
  usualPlusMinus: 0.5,
  demo: { baseline: '928.4 g', candidate: '675.2 g' },
});

export const reciprocatingMass = quantity('reciprocatingMass', {
  label: 'Sliding mass of one cylinder',
  symbol: 'm_rec',
  kind: 'mass',
  metric: 'g',
  inch: 'g',
  rangeUnit: 'g',
  hard: [1, 500000],
  usual: [150, 1000],
  usualPlusMinus: 0.5,
  demo: { baseline: '756.8 g', candidate: '557.9 g' },
});

export const balanceRadius = quantity('balanceRadius', {
  label: 'Radius of the balance mass',
  symbol: 'b',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [5, 1000],
  usual: [30, 95],
  usualPlusMinus: 0.5,
  demo: { baseline: '74.0 mm', candidate: '73.0 mm' },
});

export const planeA = quantity('planeA', {
  label: "Correction plane A from the crank's middle",
  symbol: 'z_A',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [-1000, 0],
  usual: [-260, -60],
  usualPlusMinus: 1,
  demo: { baseline: '-194 mm', candidate: '-194 mm' },
});

export const planeB = quantity('planeB', {
  label: "Correction plane B from the crank's middle",
  symbol: 'z_B',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 1000],
  usual: [60, 260],
  usualPlusMinus: 1,
  demo: { baseline: '194 mm', candidate: '194 mm' },
});
