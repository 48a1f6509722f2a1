import { quantity } from './entry.ts';

// Rod bearing

export const rodHousing = quantity('rodHousing', {
  label: 'Rod big-end bore without shells',
  symbol: 'D_h',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [15, 160],
  usual: [32, 62],
  usualPlusMinus: 0.003,
  demo: { baseline: '55.590 mm', candidate: '49.700 mm' },
});

export const housingOutside = quantity('housingOutside', {
  label: 'Outside diameter of the big end, as a ring',
  symbol: 'D_ho',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [20, 230],
  usual: [42, 84],
  usualPlusMinus: 1,
  demo: { baseline: '70.6 mm', candidate: '74.7 mm' },
});

export const rodShellWall = quantity('rodShellWall', {
  label: 'Rod shell wall at the crown',
  symbol: 't_rs',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.6, 8],
  usual: [1.2, 2.5],
  usualPlusMinus: 0.0015,
  demo: { baseline: '1.7720 mm', candidate: '1.8170 mm' },
});

export const rodShellWidth = quantity('rodShellWidth', {
  label: 'Rod shell width',
  symbol: 'b_rs',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [4, 90],
  usual: [12, 24],
  usualPlusMinus: 0.05,
  demo: { baseline: '19.6 mm', candidate: '18.8 mm' },
});

export const crushHeight = quantity('crushHeight', {
  label: 'Crush height of one half shell',
  symbol: 's_N',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 0.5],
  usual: [0.02, 0.12],
  usualPlusMinus: 0.008,
  demo: { baseline: '0.068 mm', candidate: '0.110 mm' },
});

export const rodClearance = quantity('rodClearance', {
  label: 'Rod bearing clearance as gauged',
  symbol: 'c_rod',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.005, 0.4],
  usual: [0.022, 0.085],
  usualPlusMinus: 0.006,
  demo: { baseline: '', candidate: '' },
});

export const journalOutOfRound = quantity('journalOutOfRound', {
  label: 'Out-of-round of the crankpin',
  symbol: 'ΔD_o',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 0.1],
  usual: [0, 0.008],
  usualPlusMinus: 0.002,
  demo: { baseline: '0.003 mm', candidate: '0.002 mm' },
});

export const journalTaper = quantity('journalTaper', {
  label: 'Taper of the crankpin',
  symbol: 'ΔD_t',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 0.1],
  usual: [0, 0.006],
  usualPlusMinus: 0.002,
  demo: { baseline: '0.003 mm', candidate: '0.002 mm' },
});

export const bearingLoad = quantity('bearingLoad', {
  label: 'Load on the crankpin',
  symbol: 'F_b',
  kind: 'force',
  metric: 'kN',
  inch: 'lbf',
  rangeUnit: 'kN',
  hard: [0.01, 800],
  usual: [1, 60],
  usualPlusMinus: 2,
  demo: { baseline: '23.2 kN', candidate: '29.2 kN' },
});

export const housingPoisson = quantity('housingPoisson', {
  label: 'Poisson’s ratio of the rod',
  symbol: 'ν_rod',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0, 0.49],
  usual: [0.27, 0.34],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.30', candidate: '0.33' },
});

export const shellModulus = quantity('shellModulus', {
  label: 'Young’s modulus of the shell’s back',
  symbol: 'E_sh',
  kind: 'pressure',
  metric: 'GPa',
  inch: 'ksi',
  rangeUnit: 'GPa',
  hard: [60, 300],
  usual: [195, 212],
  usualPlusMinus: 3,
  demo: { baseline: '205 GPa', candidate: '205 GPa' },
});

export const shellExpansion = quantity('shellExpansion', {
  label: 'Thermal expansion of the shell’s back',
  symbol: 'α_sh',
  kind: 'expansion',
  metric: 'ppm/K',
  inch: 'ppm/degF',
  rangeUnit: 'ppm/K',
  hard: [5, 26],
  usual: [11, 13],
  usualPlusMinus: 0.3,
  demo: { baseline: '11.7 ppm/K', candidate: '11.7 ppm/K' },
});

export const crankExpansion = quantity('crankExpansion', {
  label: 'Thermal expansion of the crank',
  symbol: 'α_cr',
  kind: 'expansion',
  metric: 'ppm/K',
  inch: 'ppm/degF',
  rangeUnit: 'ppm/K',
  hard: [9, 14],
  usual: [10.5, 12.8],
  usualPlusMinus: 0.3,
  demo: { baseline: '12.0 ppm/K', candidate: '12.3 ppm/K' },
});

export const ambientTemperature = quantity('ambientTemperature', {
  label: 'Air temperature',
  symbol: 'T_a',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [-40, 55],
  usual: [5, 38],
  usualPlusMinus: 0.5,
  demo: { baseline: '20 °C', candidate: '20 °C' },
});

export const coldStartTemperature = quantity('coldStartTemperature', {
  label: 'Coldest start',
  symbol: 'T_cold',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [-60, 40],
  usual: [-25, 20],
  usualPlusMinus: 2,
  demo: { baseline: '−5 °C', candidate: '−5 °C' },
});

export const crankpinTemperature = quantity('crankpinTemperature', {
  label: 'Crankpin temperature, running',
  symbol: 'T_pin',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [20, 250],
  usual: [90, 160],
  usualPlusMinus: 10,
  demo: { baseline: '110 °C', candidate: '105 °C' },
});

export const fitDiameter = quantity('fitDiameter', {
  label: 'Nominal diameter of the fit',
  symbol: 'D_n',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1, 500],
  usual: [20, 100],
  demo: { baseline: '56 mm', candidate: '50 mm' },
});
