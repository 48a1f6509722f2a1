import { quantity } from './entry.ts';

// Gas round the top ring

export const ringSideClearance = quantity('ringSideClearance', {
  label: 'Side clearance of the top ring (groove less ring)',
  symbol: 'c_ax',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.002, 0.4],
  usual: [0.015, 0.08],
  usualPlusMinus: 0.005,
  demo: { baseline: '0.045 mm', candidate: '0.022 mm' },
});

export const ringBackClearance = quantity('ringBackClearance', {
  label: 'Back clearance of the top ring, radial',
  symbol: 'c_r',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.01, 3],
  usual: [0.15, 0.8],
  usualPlusMinus: 0.05,
  demo: { baseline: '0.55 mm', candidate: '0.35 mm' },
});

export const topLandHeight = quantity('topLandHeight', {
  label: 'Top land height',
  symbol: 'h_TL',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1, 20],
  usual: [2.5, 9],
  usualPlusMinus: 0.05,
  demo: { baseline: '6.0 mm', candidate: '4.0 mm' },
});

export const topLandClearance = quantity('topLandClearance', {
  label: 'Top land clearance (bore less land)',
  symbol: 'c_TL',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.05, 3],
  usual: [0.3, 0.9],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.56 mm', candidate: '0.62 mm' },
});

export const secondLandHeight = quantity('secondLandHeight', {
  label: 'Second land height',
  symbol: 'h_L2',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1, 15],
  usual: [2.2, 6],
  usualPlusMinus: 0.05,
  demo: { baseline: '4.2 mm', candidate: '3.2 mm' },
});

export const secondLandClearance = quantity('secondLandClearance', {
  label: 'Second land clearance (bore less land)',
  symbol: 'c_L2',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.05, 3],
  usual: [0.3, 0.9],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.50 mm', candidate: '0.52 mm' },
});

export const ringDensity = quantity('ringDensity', {
  label: 'Density of the top ring',
  symbol: 'ρ_r',
  kind: 'density',
  metric: 'g/cm3',
  inch: 'lb/in3',
  rangeUnit: 'g/cm3',
  hard: [6.8, 8.5],
  usual: [7.1, 7.9],
  demo: { baseline: '7.3 g/cm³', candidate: '7.85 g/cm³' },
});

export const portCount = quantity('portCount', {
  label: 'Gas ports',
  symbol: 'n_po',
  kind: 'count',
  metric: 'count',
  inch: 'count',
  rangeUnit: 'count',
  hard: [0, 60],
  usual: [0, 24],
  demo: { baseline: '0', candidate: '10' },
});

export const portDiameter = quantity('portDiameter', {
  label: 'Gas port diameter',
  symbol: 'd_po',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.1, 4],
  usual: [0.8, 1.6],
  usualPlusMinus: 0.02,
  demo: { baseline: '1.0 mm', candidate: '1.10 mm' },
});

export const portPlugged = quantity('portPlugged', {
  label: 'Share of the ports’ area that is plugged',
  symbol: 'q_po',
  kind: 'ratio',
  metric: 'pct',
  inch: 'pct',
  rangeUnit: 'pct',
  hard: [0, 100],
  usual: [0, 95],
  demo: { baseline: '50 %', candidate: '50 %' },
});

export const dischargeCoefficient = quantity('dischargeCoefficient', {
  label: 'Discharge coefficient of holes and gaps',
  symbol: 'C_d',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.3, 1],
  usual: [0.6, 0.9],
  usualPlusMinus: 0.08,
  demo: { baseline: '0.7', candidate: '0.7' },
});

export const faceFactor = quantity('faceFactor', {
  label: 'Share of the pressure difference that loads the face',
  symbol: 'κ_f',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0, 1],
  usual: [0.3, 0.7],
  usualPlusMinus: 0.2,
  demo: { baseline: '0.5', candidate: '0.5' },
});

export const flankFactor = quantity('flankFactor', {
  label: 'Share of the pressure difference that holds a closed flank',
  symbol: 'κ_a',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0, 1],
  usual: [0.5, 1],
  usualPlusMinus: 0.2,
  demo: { baseline: '0.5', candidate: '0.5' },
});

export const ringTemperature = quantity('ringTemperature', {
  label: 'Top ring temperature',
  symbol: 'T_ring',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [60, 350],
  usual: [150, 260],
  usualPlusMinus: 20,
  demo: { baseline: '195 °C', candidate: '215 °C' },
});

export const ringExpansion = quantity('ringExpansion', {
  label: 'Expansion of the rings',
  symbol: 'α_r',
  kind: 'expansion',
  metric: 'ppm/K',
  inch: 'ppm/degF',
  rangeUnit: 'ppm/K',
  hard: [8, 20],
  usual: [10.5, 12.5],
  demo: { baseline: '11.5 ppm/K', candidate: '11.5 ppm/K' },
});

export const boreExpansion = quantity('boreExpansion', {
  label: 'Expansion of the bore',
  symbol: 'α_b',
  kind: 'expansion',
  metric: 'ppm/K',
  inch: 'ppm/degF',
  rangeUnit: 'ppm/K',
  hard: [8, 25],
  usual: [10.5, 23],
  demo: { baseline: '12.0 ppm/K', candidate: '12.0 ppm/K' },
});

export const boreTemperature = quantity('boreTemperature', {
  label: 'Bore temperature at the top ring',
  symbol: 'T_wall',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [40, 280],
  usual: [105, 170],
  usualPlusMinus: 10,
  demo: { baseline: '120 °C', candidate: '125 °C' },
});
