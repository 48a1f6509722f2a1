import { quantity } from './entry.ts';

// Gas exchange and burning

export const ambientPressure = quantity('ambientPressure', {
  label: 'Air pressure (absolute)',
  symbol: 'p_a',
  kind: 'pressure',
  metric: 'kPa',
  inch: 'inHg',
  rangeUnit: 'kPa',
  hard: [50, 110],
  usual: [80, 104],
  usualPlusMinus: 0.1,
  demo: { baseline: '98.0 kPa', candidate: '98.0 kPa' },
});

export const compressionRatio = quantity('compressionRatio', {
  label: 'Compression ratio, geometric',
  symbol: 'ε',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [3, 25],
  usual: [8, 14.5],
  usualPlusMinus: 0.1,
  demo: { baseline: '9.58', candidate: '12.13' },
});

export const volumetricEfficiency = quantity('volumetricEfficiency', {
  label: 'Volumetric efficiency',
  symbol: 'η_v',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.1, 4],
  usual: [0.75, 1.2],
  usualPlusMinus: 0.05,
  demo: { baseline: '0.92', candidate: '1.05' },
});

export const manifoldPressure = quantity('manifoldPressure', {
  label: 'Intake pressure at full throttle (absolute)',
  symbol: 'p_in',
  kind: 'pressure',
  metric: 'kPa',
  inch: 'inHg',
  rangeUnit: 'kPa',
  hard: [10, 500],
  usual: [80, 105],
  usualPlusMinus: 1,
  demo: { baseline: '93 kPa', candidate: '95 kPa' },
});

export const exhaustPressure = quantity('exhaustPressure', {
  label: 'Exhaust pressure (absolute)',
  symbol: 'p_ex',
  kind: 'pressure',
  metric: 'kPa',
  inch: 'inHg',
  rangeUnit: 'kPa',
  hard: [50, 500],
  usual: [100, 140],
  usualPlusMinus: 2,
  demo: { baseline: '110 kPa', candidate: '110 kPa' },
});

export const intakeOpen = quantity('intakeOpen', {
  label: 'Intake opens before TDC',
  symbol: 'IVO',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [-40, 110],
  usual: [0, 55],
  usualPlusMinus: 1,
  demo: { baseline: '22 deg', candidate: '40 deg' },
});

export const intakeClose = quantity('intakeClose', {
  label: 'Intake closes after BDC',
  symbol: 'IVC',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [-30, 130],
  usual: [35, 85],
  usualPlusMinus: 1,
  demo: { baseline: '62 deg', candidate: '76 deg' },
});

export const exhaustOpen = quantity('exhaustOpen', {
  label: 'Exhaust opens before BDC',
  symbol: 'EVO',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [0, 130],
  usual: [45, 90],
  usualPlusMinus: 1,
  demo: { baseline: '64 deg', candidate: '80 deg' },
});

export const burnStart = quantity('burnStart', {
  label: 'Burning starts before TDC',
  symbol: 'θ_s',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [-20, 60],
  usual: [5, 35],
  usualPlusMinus: 5,
  demo: { baseline: '21 deg', candidate: '19 deg' },
});

export const burnDuration = quantity('burnDuration', {
  label: 'Whole burn lasts',
  symbol: 'Δθ_b',
  kind: 'angle',
  metric: 'deg',
  inch: 'deg',
  rangeUnit: 'deg',
  hard: [0, 150],
  usual: [40, 75],
  usualPlusMinus: 8,
  demo: { baseline: '54 deg', candidate: '52 deg' },
});

export const wiebeEfficiency = quantity('wiebeEfficiency', {
  label: 'Wiebe a',
  symbol: 'a_W',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [2, 10],
  usual: [5, 6.91],
  demo: { baseline: '5', candidate: '5' },
});

export const wiebeForm = quantity('wiebeForm', {
  label: 'Wiebe m',
  symbol: 'm_W',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.3, 6],
  usual: [1.5, 3],
  usualPlusMinus: 0.5,
  demo: { baseline: '2', candidate: '2' },
});

export const compressionExponent = quantity('compressionExponent', {
  label: 'Compression exponent',
  symbol: 'n_c',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1, 1.4],
  usual: [1.28, 1.36],
  usualPlusMinus: 0.02,
  demo: { baseline: '1.32', candidate: '1.32' },
});

export const expansionExponent = quantity('expansionExponent', {
  label: 'Expansion exponent',
  symbol: 'n_e',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1, 1.45],
  usual: [1.22, 1.32],
  usualPlusMinus: 0.03,
  demo: { baseline: '1.27', candidate: '1.27' },
});

export const burnedGamma = quantity('burnedGamma', {
  label: 'Ratio of specific heats while burning',
  symbol: 'γ_b',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1.1, 1.4],
  usual: [1.24, 1.32],
  usualPlusMinus: 0.02,
  demo: { baseline: '1.28', candidate: '1.28' },
});

export const heatLoss = quantity('heatLoss', {
  label: 'Share of the heat lost to the walls while burning',
  symbol: 'q_w',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0, 0.7],
  usual: [0.06, 0.25],
  usualPlusMinus: 0.05,
  demo: { baseline: '0.08', candidate: '0.10' },
});

export const airFuelLambda = quantity('airFuelLambda', {
  label: 'Air-fuel equivalence',
  symbol: 'λ_a',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.5, 2],
  usual: [0.8, 1.02],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.88', candidate: '0.88' },
});

export const stoichRatio = quantity('stoichRatio', {
  label: 'Air that the fuel needs, by mass',
  symbol: 'AFR',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [3, 35],
  usual: [6.4, 14.7],
  usualPlusMinus: 0.1,
  demo: { baseline: '14.6', candidate: '14.6' },
});

export const heatingValue = quantity('heatingValue', {
  label: 'Lower heating value of the fuel',
  symbol: 'H_u',
  kind: 'specificEnergy',
  metric: 'MJ/kg',
  inch: 'Btu/lb',
  rangeUnit: 'MJ/kg',
  hard: [15, 50],
  usual: [26.8, 44],
  usualPlusMinus: 0.5,
  demo: { baseline: '43.0 MJ/kg', candidate: '43.0 MJ/kg' },
});

export const combustionEfficiency = quantity('combustionEfficiency', {
  label: 'Share of the burnable fuel that burns',
  symbol: 'η_c',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.3, 1],
  usual: [0.92, 0.98],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.95', candidate: '0.95' },
});

export const residualFraction = quantity('residualFraction', {
  label: 'Old gas in the charge',
  symbol: 'x_r',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0, 0.6],
  usual: [0.02, 0.1],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.04', candidate: '0.04' },
});

export const chargeTemperature = quantity('chargeTemperature', {
  label: 'Charge temperature when the intake closes',
  symbol: 'T_IVC',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [0, 250],
  usual: [55, 95],
  usualPlusMinus: 10,
  demo: { baseline: '72 °C', candidate: '72 °C' },
});

export const peakVariation = quantity('peakVariation', {
  label: 'Spread of the peak from cycle to cycle (1 s)',
  symbol: 'CoV_p',
  kind: 'ratio',
  metric: 'pct',
  inch: 'pct',
  rangeUnit: 'pct',
  hard: [0, 50],
  usual: [4, 12],
  demo: { baseline: '6 %', candidate: '7 %' },
});

export const frictionMep = quantity('frictionMep', {
  label: 'Friction mean effective pressure at the highest speed',
  symbol: 'p_fr',
  kind: 'pressure',
  metric: 'bar',
  inch: 'psi',
  rangeUnit: 'bar',
  hard: [0.2, 10],
  usual: [1.2, 3.6],
  usualPlusMinus: 0.3,
  demo: { baseline: '2.2 bar', candidate: '2.8 bar' },
});
