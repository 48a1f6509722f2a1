import type { MaybeOutput, NumberOutput } from '../define.ts';

const stress = { type: 'number', kind: 'pressure', metric: 'MPa', inch: 'psi' } as const;
const force = { type: 'number', kind: 'force' } as const;
const ratio = { type: 'number', kind: 'ratio' } as const;
const across = { kind: 'length', metric: 'um', inch: 'thou' } as const;

/** Results of the wrist pin, in the order of the page. */
export const pinOutputs = {
  mass: {
    type: 'number',
    kind: 'mass',
    label: 'Mass from the dimensions',
    symbol: 'm_p',
    phrase: 'The mass from the dimensions',
    main: true,
    carries: 'pinMass',
  },
  pushLoad: {
    ...force,
    label: 'Push at the peak pressure, at the speed of greatest torque',
    symbol: 'P',
    phrase: 'The push at the peak pressure',
    main: true,
  },
  bending: {
    ...stress,
    label: 'Bending in the middle, boss pressure falling outward',
    symbol: 'σ_b',
    phrase: 'The bending stress under that push',
    main: true,
  },
  ovalization: {
    type: 'maybe',
    ...across,
    label: 'Ovalization, cited method',
    symbol: 'Δd',
    phrase: 'The ovalization by the cited method',
    main: true,
  },
  smallEndPressure: {
    ...stress,
    label: 'Bearing pressure in the small end',
    symbol: 'q_se',
    phrase: 'The bearing pressure in the small end',
  },
  bossPressure: {
    ...stress,
    label: 'Bearing pressure in the bosses',
    symbol: 'q_b',
    phrase: 'The bearing pressure in the bosses',
  },
  shear: { ...stress, label: 'Greatest shear between eye and boss', symbol: 'τ' },
  bendingMiddle: {
    ...stress,
    label: 'Bending, supported at the middles of the bosses',
    symbol: 'σ_m',
  },
  bendingPull: { ...stress, label: 'Bending in the pull at the highest speed', symbol: 'σ_pull' },
  gasLoad: { ...force, label: 'Push with nothing taken off: low speed', symbol: 'P_0' },
  pullLoad: { ...force, label: 'Pull at overlap TDC, at the highest speed', symbol: 'P_pull' },
  pullShare: {
    ...ratio,
    metric: 'pct',
    inch: 'pct',
    label: 'Pull over push',
    symbol: 'q_P',
  },
  boreRatio: { ...ratio, label: 'Bore over diameter', symbol: 'α' },
  sectionModulus: {
    type: 'number',
    kind: 'volume',
    metric: 'mm3',
    inch: 'in3',
    label: 'Section modulus in the middle',
    symbol: 'W',
  },
  ovalClose: {
    type: 'number',
    ...across,
    label: 'Ovalization, thick ring in a close bore',
    symbol: 'Δd_c',
  },
  ovalPoints: {
    type: 'number',
    ...across,
    label: 'Ovalization, thin ring under two point loads',
    symbol: 'Δd_p',
    detail: true,
  },
  flatPoints: {
    type: 'number',
    ...across,
    label: 'Flattening along the load, the same ring',
    symbol: 'Δd_f',
    detail: true,
  },
  gapBore: {
    type: 'number',
    kind: 'length',
    label: 'Bore of the pin at the edge of the boss',
    symbol: 'd_g',
    detail: true,
  },
  diameterRatio: {
    ...ratio,
    label: 'Pin diameter over cylinder bore',
    symbol: 'q_d',
    detail: true,
  },
} as const satisfies Record<string, NumberOutput | MaybeOutput>;

const bore = { type: 'maybe', kind: 'length' } as const;

/** What bore would make the candidate the baseline's equal. */
export const pinComparisons = {
  equalModulusBore: {
    ...bore,
    label: 'Bore that gives the candidate the baseline’s section modulus',
    symbol: 'd_W',
  },
  equalBendingBore: {
    ...bore,
    label: 'Bore that gives it the baseline’s bending stress, each under its own push',
    symbol: 'd_σ',
  },
  equalMassBore: {
    ...bore,
    label: 'Bore that gives it the baseline’s mass',
    symbol: 'd_m',
  },
} as const satisfies Record<string, MaybeOutput>;
