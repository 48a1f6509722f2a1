import { quantity } from './entry.ts';

// A hole between two spaces

export const upstreamPressure = quantity('upstreamPressure', {
  label: 'Pressure before the hole (absolute, at rest)',
  symbol: 'p_0',
  kind: 'pressure',
  metric: 'bar',
  inch: 'psi',
  rangeUnit: 'bar',
  hard: [0.01, 500],
  usual: [1, 100],
  demo: { baseline: '15 bar', candidate: '15 bar' },
});

export const downstreamPressure = quantity('downstreamPressure', {
  label: 'Pressure after the hole (absolute)',
  symbol: 'p_d',
  kind: 'pressure',
  metric: 'bar',
  inch: 'psi',
  rangeUnit: 'bar',
  hard: [0, 500],
  usual: [0, 100],
  demo: { baseline: '14 bar', candidate: '5 bar' },
});

export const gasTemperature = quantity('gasTemperature', {
  label: 'Temperature of the gas at rest',
  symbol: 'T_0',
  kind: 'temperature',
  metric: 'degC',
  inch: 'degF',
  rangeUnit: 'degC',
  hard: [-200, 3000],
  usual: [20, 300],
  demo: { baseline: '200 °C', candidate: '200 °C' },
});

export const heatRatio = quantity('heatRatio', {
  label: 'Ratio of the gas’s heats',
  symbol: 'γ',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [1.01, 1.7],
  usual: [1.25, 1.4],
  demo: { baseline: '1.35', candidate: '1.35' },
});

export const gasConstant = quantity('gasConstant', {
  label: 'Gas constant, in J/(kg·K)',
  symbol: 'R',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [50, 5000],
  usual: [180, 300],
  demo: { baseline: '287', candidate: '287' },
});

export const orificeArea = quantity('orificeArea', {
  label: 'Area of the hole',
  symbol: 'A',
  kind: 'area',
  metric: 'mm2',
  inch: 'in2',
  rangeUnit: 'mm2',
  hard: [0.001, 100000],
  usual: [0.1, 20],
  demo: { baseline: '0.95 mm²', candidate: '0.95 mm²' },
});

export const vesselVolume = quantity('vesselVolume', {
  label: 'Volume of the vessel that empties',
  symbol: 'V',
  kind: 'volume',
  metric: 'mm3',
  inch: 'in3',
  rangeUnit: 'mm3',
  hard: [0.1, 1000000000.0],
  usual: [50, 500],
  demo: { baseline: '100 mm³', candidate: '100 mm³' },
});

export const targetPressure = quantity('targetPressure', {
  label: 'Share of the first pressure to empty to',
  symbol: 'q_p',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.001, 1],
  usual: [0.05, 1],
  demo: { baseline: '0.5', candidate: '0.5' },
});
