import { quantity } from './entry.ts';

// Wrist pin

export const pinDiameter = quantity('pinDiameter', {
  label: 'Wrist pin diameter',
  symbol: 'd_p',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [5, 60],
  usual: [12, 27],
  usualPlusMinus: 0.001,
  demo: { baseline: '22.00 mm', candidate: '20.50 mm' },
});

export const pinBore = quantity('pinBore', {
  label: 'Wrist pin bore, straight part',
  symbol: 'd_pi',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 50],
  usual: [7, 16],
  usualPlusMinus: 0.05,
  demo: { baseline: '13.0 mm', candidate: '13.0 mm' },
});

export const pinTaperBore = quantity('pinTaperBore', {
  label: 'Wrist pin bore at its mouth',
  symbol: 'd_pt',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 55],
  usual: [7, 20],
  usualPlusMinus: 0.1,
  demo: { baseline: '13.0 mm', candidate: '13.0 mm' },
});

export const pinTaperLength = quantity('pinTaperLength', {
  label: 'Length of each tapered mouth',
  symbol: 'l_pt',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0, 50],
  usual: [0, 16],
  usualPlusMinus: 0.2,
  demo: { baseline: '0 mm', candidate: '0 mm' },
});

export const pinLength = quantity('pinLength', {
  label: 'Wrist pin length',
  symbol: 'l_p',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [12, 180],
  usual: [36, 76],
  usualPlusMinus: 0.02,
  demo: { baseline: '62.0 mm', candidate: '50.0 mm' },
});

export const smallEndWidth = quantity('smallEndWidth', {
  label: 'Width of the small end on the pin',
  symbol: 'l_se',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [6, 80],
  usual: [14, 30],
  usualPlusMinus: 0.05,
  demo: { baseline: '26.0 mm', candidate: '21.0 mm' },
});

export const bossGap = quantity('bossGap', {
  label: 'Distance between the piston bosses',
  symbol: 'b_p',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [6, 90],
  usual: [15, 34],
  usualPlusMinus: 0.1,
  demo: { baseline: '27.5 mm', candidate: '22.2 mm' },
});

export const pinDensity = quantity('pinDensity', {
  label: 'Density of the wrist pin',
  symbol: 'ρ_p',
  kind: 'density',
  metric: 'g/cm3',
  inch: 'g/cm3',
  rangeUnit: 'g/cm3',
  hard: [2.5, 9],
  usual: [7.7, 7.9],
  usualPlusMinus: 0.03,
  demo: { baseline: '7.85 g/cm3', candidate: '7.85 g/cm3' },
});

export const pinModulus = quantity('pinModulus', {
  label: "Young's modulus of the wrist pin",
  symbol: 'E_p',
  kind: 'pressure',
  metric: 'GPa',
  inch: 'GPa',
  rangeUnit: 'GPa',
  hard: [60, 300],
  usual: [195, 215],
  usualPlusMinus: 5,
  demo: { baseline: '205 GPa', candidate: '205 GPa' },
});

export const peakPressure = quantity('peakPressure', {
  label: 'Peak cylinder pressure (absolute)',
  symbol: 'p_max',
  kind: 'pressure',
  metric: 'bar',
  inch: 'psi',
  rangeUnit: 'bar',
  hard: [5, 300],
  usual: [40, 120],
  usualPlusMinus: 5,
  demo: { baseline: '54 bar', candidate: '73 bar' },
});

export const torqueSpeed = quantity('torqueSpeed', {
  label: 'Speed of greatest torque',
  symbol: 'n_T',
  kind: 'angularSpeed',
  metric: 'rpm',
  inch: 'rpm',
  rangeUnit: 'rpm',
  hard: [300, 25000],
  usual: [2500, 10000],
  usualPlusMinus: 50,
  demo: { baseline: '4400 rpm', candidate: '6800 rpm' },
});
