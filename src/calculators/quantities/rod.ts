import { quantity } from './entry.ts';

// The rod and its material

export const shankHeight = quantity('shankHeight', {
  label: 'Shank section, height in the plane of motion',
  symbol: 'H_s',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [5, 90],
  usual: [14, 34],
  usualPlusMinus: 0.1,
  demo: { baseline: '20.0 mm', candidate: '27.0 mm' },
});

export const shankWidth = quantity('shankWidth', {
  label: 'Shank section, width across that plane',
  symbol: 'B_s',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [4, 70],
  usual: [10, 24],
  usualPlusMinus: 0.1,
  demo: { baseline: '15.5 mm', candidate: '19.0 mm' },
});

export const flangeThickness = quantity('flangeThickness', {
  label: 'Flange thickness of the shank',
  symbol: 't_f',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1, 20],
  usual: [2.4, 7],
  usualPlusMinus: 0.1,
  demo: { baseline: '4.0 mm', candidate: '6.0 mm' },
});

export const webThickness = quantity('webThickness', {
  label: 'Web thickness of the shank',
  symbol: 't_w',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1, 25],
  usual: [2.2, 8],
  usualPlusMinus: 0.1,
  demo: { baseline: '3.6 mm', candidate: '7.0 mm' },
});

export const shankArea = quantity('shankArea', {
  label: 'Least area of the shank, where it is known',
  symbol: 'A_s',
  kind: 'area',
  metric: 'mm2',
  inch: 'in2',
  rangeUnit: 'mm2',
  hard: [15, 2000],
  usual: [55, 450],
  usualPlusMinus: 5,
  demo: { baseline: '167.2 mm2', candidate: '333.0 mm2' },
});

export const shankLength = quantity('shankLength', {
  label: 'Length of the shank between the two eyes',
  symbol: 'l_s',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [15, 350],
  usual: [60, 140],
  usualPlusMinus: 2,
  demo: { baseline: '100 mm', candidate: '106 mm' },
});

export const stretchFactor = quantity('stretchFactor', {
  label: 'Stretch of the whole rod over that of the shank',
  symbol: 'k_st',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1, 5],
  usual: [1.3, 2.5],
  usualPlusMinus: 0.4,
  demo: { baseline: '1.6', candidate: '1.6' },
});

export const pistonToHead = quantity('pistonToHead', {
  label: 'Piston to head, set cold',
  symbol: 'c_ph',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [-2, 15],
  usual: [0.75, 2],
  usualPlusMinus: 0.04,
  demo: { baseline: '1.50 mm', candidate: '1.55 mm' },
});

export const peakAngle = quantity('peakAngle', {
  label: 'Crank angle of the peak pressure after TDC',
  symbol: 'θ_max',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [-10, 60],
  usual: [5, 25],
  usualPlusMinus: 1,
  demo: { baseline: '15.3 deg', candidate: '14.5 deg' },
});

export const youngsModulus = quantity('youngsModulus', {
  label: "Young's modulus of the rod",
  symbol: 'E',
  kind: 'pressure',
  metric: 'GPa',
  inch: 'GPa',
  rangeUnit: 'GPa',
  hard: [60, 220],
  usual: [70, 212],
  usualPlusMinus: 3,
  demo: { baseline: '207 GPa', candidate: '71.7 GPa' },
});

export const rodDensity = quantity('rodDensity', {
  label: 'Density of the rod',
  symbol: 'ρ_rod',
  kind: 'density',
  metric: 'g/cm3',
  inch: 'g/cm3',
  rangeUnit: 'g/cm3',
  hard: [2.6, 8.1],
  usual: [2.77, 7.87],
  usualPlusMinus: 0.05,
  demo: { baseline: '7.83 g/cm3', candidate: '2.81 g/cm3' },
});

export const yieldStrength = quantity('yieldStrength', {
  label: 'Yield strength of the rod, at its temperature',
  symbol: 'R_p',
  kind: 'pressure',
  metric: 'MPa',
  inch: 'ksi',
  rangeUnit: 'MPa',
  hard: [100, 2100],
  usual: [350, 1500],
  usualPlusMinus: 30,
  demo: { baseline: '600 MPa', candidate: '440 MPa' },
});

export const rodExpansion = quantity('rodExpansion', {
  label: 'Thermal expansion of the rod',
  symbol: 'α_rod',
  kind: 'expansion',
  metric: 'ppm/K',
  inch: 'ppm/degF',
  rangeUnit: 'ppm/K',
  hard: [7, 26],
  usual: [8.6, 23.6],
  usualPlusMinus: 0.4,
  demo: { baseline: '11.5 ppm/K', candidate: '23.4 ppm/K' },
});

export const rodTemperature = quantity('rodTemperature', {
  label: 'Rod temperature, running',
  symbol: 'T_rod',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [20, 220],
  usual: [90, 150],
  usualPlusMinus: 15,
  demo: { baseline: '105 degC', candidate: '100 degC' },
});

export const assemblyTemperature = quantity('assemblyTemperature', {
  label: 'Temperature at which it was measured',
  symbol: 'T_0',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [-10, 40],
  usual: [15, 30],
  usualPlusMinus: 1,
  demo: { baseline: '20 degC', candidate: '20 degC' },
});

export const rodNotchFactor = quantity('rodNotchFactor', {
  label: 'Fatigue notch factor of the shank',
  symbol: 'K_f',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1, 6],
  usual: [1.1, 2.5],
  usualPlusMinus: 0.2,
  demo: { baseline: '1.3', candidate: '1.2' },
});

export const rodMargin = quantity('rodMargin', {
  label: 'Margin asked for, both sets',
  symbol: 'j',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1, 10],
  usual: [1.2, 3],
  demo: { baseline: '1.5', candidate: '1.5' },
  common: true,
});

export const stretchWanted = quantity('stretchWanted', {
  label: 'Stretch of the whole rod to be held, both sets',
  symbol: 'δ_0',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.005, 2],
  usual: [0.03, 0.2],
  demo: { baseline: '0.080 mm', candidate: '0.080 mm' },
  common: true,
});

export const endFactor = quantity('endFactor', {
  label: 'Free length over length of the bar',
  symbol: 'K_e',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.1, 5],
  usual: [0.5, 2],
  usualPlusMinus: 0.05,
  demo: { baseline: '1', candidate: '1' },
});

export const gyrationRadius = quantity('gyrationRadius', {
  label: 'Radius of gyration of the section',
  symbol: 'k',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.5, 500],
  usual: [3, 12],
  usualPlusMinus: 0.05,
  demo: { baseline: '7.18 mm', candidate: '9.14 mm' },
});

export const rankineDivisor = quantity('rankineDivisor', {
  label: 'Divisor in Rankine’s formula, as a textbook gives it',
  symbol: 'c_R',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [100, 50000],
  usual: [1000, 10000],
  demo: { baseline: '7500', candidate: '7500' },
});
