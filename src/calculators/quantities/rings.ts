import { quantity } from './entry.ts';

// Rings

export const ring1Height = quantity('ring1Height', {
  label: 'Axial height of the top ring',
  symbol: 'h_1',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.3, 6],
  usual: [0.6, 2.0],
  usualPlusMinus: 0.003,
  demo: { baseline: '1.50 mm', candidate: '0.90 mm' },
});

export const ring1Radial = quantity('ring1Radial', {
  label: 'Radial thickness of the top ring',
  symbol: 'a_1',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.8, 12],
  usual: [2.2, 4.3],
  usualPlusMinus: 0.01,
  demo: { baseline: '3.50 mm', candidate: '2.90 mm' },
});

export const ring1Modulus = quantity('ring1Modulus', {
  label: "Young's modulus of the top ring",
  symbol: 'E_1',
  kind: 'pressure',
  metric: 'GPa',
  inch: 'GPa',
  rangeUnit: 'GPa',
  hard: [70, 230],
  usual: [100, 210],
  usualPlusMinus: 8,
  demo: { baseline: '160 GPa', candidate: '206 GPa' },
});

export const ring1Tension = quantity('ring1Tension', {
  label: 'Tangential force of the top ring, measured',
  symbol: 'F_t1',
  kind: 'force',
  metric: 'N',
  inch: 'lbf',
  rangeUnit: 'N',
  hard: [0.5, 120],
  usual: [3, 22],
  usualPlusMinus: 0.5,
  demo: { baseline: '13.6 N', candidate: '5.3 N' },
});

export const ring1FreeGap = quantity('ring1FreeGap', {
  label: 'Free gap of the top ring',
  symbol: 'm_1',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1.5, 70],
  usual: [6, 15],
  usualPlusMinus: 0.2,
  demo: { baseline: '12.7 mm', candidate: '11.6 mm' },
});

export const ring1Gap = quantity('ring1Gap', {
  label: 'End gap of the top ring in the bore, cold',
  symbol: 's_1',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.03, 3],
  usual: [0.2, 0.7],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.38 mm', candidate: '0.42 mm' },
});

export const ringOpening = quantity('ringOpening', {
  label: 'Gap as opened to pass over the piston',
  symbol: 'm_o',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [5, 200],
  usual: [15, 42],
  usualPlusMinus: 1,
  demo: { baseline: '30 mm', candidate: '25 mm' },
});

export const ring2Height = quantity('ring2Height', {
  label: 'Axial height of the second ring',
  symbol: 'h_2',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.3, 6],
  usual: [0.7, 2.4],
  usualPlusMinus: 0.003,
  demo: { baseline: '1.50 mm', candidate: '1.00 mm' },
});

export const ring2Radial = quantity('ring2Radial', {
  label: 'Radial thickness of the second ring',
  symbol: 'a_2',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.8, 12],
  usual: [2.4, 4.5],
  usualPlusMinus: 0.01,
  demo: { baseline: '3.80 mm', candidate: '3.20 mm' },
});

export const ring2Modulus = quantity('ring2Modulus', {
  label: "Young's modulus of the second ring",
  symbol: 'E_2',
  kind: 'pressure',
  metric: 'GPa',
  inch: 'GPa',
  rangeUnit: 'GPa',
  hard: [70, 230],
  usual: [95, 210],
  usualPlusMinus: 6,
  demo: { baseline: '105 GPa', candidate: '150 GPa' },
});

export const ring2Tension = quantity('ring2Tension', {
  label: 'Tangential force of the second ring, measured',
  symbol: 'F_t2',
  kind: 'force',
  metric: 'N',
  inch: 'lbf',
  rangeUnit: 'N',
  hard: [0.5, 120],
  usual: [3, 20],
  usualPlusMinus: 0.5,
  demo: { baseline: '10.2 N', candidate: '5.0 N' },
});

export const ring2FreeGap = quantity('ring2FreeGap', {
  label: 'Free gap of the second ring',
  symbol: 'm_2',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [1.5, 70],
  usual: [6, 15],
  usualPlusMinus: 0.2,
  demo: { baseline: '11.3 mm', candidate: '10.1 mm' },
});

export const ring2Gap = quantity('ring2Gap', {
  label: 'End gap of the second ring in the bore, cold',
  symbol: 's_2',
  kind: 'length',
  metric: 'mm',
  inch: 'in',
  rangeUnit: 'mm',
  hard: [0.03, 3],
  usual: [0.22, 0.85],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.45 mm', candidate: '0.50 mm' },
});

export const oilRingTension = quantity('oilRingTension', {
  label: 'Tangential force of the whole oil ring, measured',
  symbol: 'F_t3',
  kind: 'force',
  metric: 'N',
  inch: 'lbf',
  rangeUnit: 'N',
  hard: [2, 300],
  usual: [8, 60],
  usualPlusMinus: 2,
  demo: { baseline: '34 N', candidate: '19 N' },
});

export const packDrag = quantity('packDrag', {
  label: 'Bench pull on the ringed piston in an oiled bore',
  symbol: 'F_drag',
  kind: 'force',
  metric: 'N',
  inch: 'lbf',
  rangeUnit: 'N',
  hard: [3, 700],
  usual: [15, 140],
  usualPlusMinus: 6,
  demo: { baseline: '47 N', candidate: '24 N' },
});

export const ringFriction = quantity('ringFriction', {
  label: 'Friction coefficient of ring on bore, running',
  symbol: 'μ_r',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.005, 0.3],
  usual: [0.02, 0.12],
  usualPlusMinus: 0.03,
  demo: { baseline: '0.06', candidate: '0.06' },
});

export const benchFriction = quantity('benchFriction', {
  label: 'Friction coefficient of ring on bore, pulled by hand',
  symbol: 'μ_b',
  kind: 'ratio',
  metric: 'ratio',
  inch: 'ratio',
  rangeUnit: 'ratio',
  hard: [0.03, 0.4],
  usual: [0.1, 0.16],
  usualPlusMinus: 0.02,
  demo: { baseline: '0.13', candidate: '0.13' },
});
