import type { NumberOutput, OutputEntry } from '../define.ts';

const stress = { type: 'number', kind: 'pressure', metric: 'MPa', inch: 'ksi' } as const;
const force = { type: 'number', kind: 'force' } as const;
const area = { type: 'number', kind: 'area' } as const;
const mass = { type: 'number', kind: 'mass' } as const;
const length = { type: 'number', kind: 'length' } as const;
const ratio = { type: 'number', kind: 'ratio' } as const;
const share = { ...ratio, metric: 'pct', inch: 'pct' } as const;

/** What each set's duty asks of each set's metal. */
export const materialOutputs = {
  marginMass: {
    ...mass,
    label: 'Shank mass at the margin',
    symbol: 'm_j',
    phrase: 'With the section that gives the margin, the shank',
    main: true,
  },
  stretchMass: {
    ...mass,
    label: 'Shank mass at the stretch',
    symbol: 'm_δ',
    phrase: 'With the section that holds the stretch it',
    main: true,
  },
  bothMass: {
    ...mass,
    label: 'Shank mass that meets both',
    symbol: 'm_both',
    main: true,
  },
  marginArea: { ...area, label: 'Section for the margin', symbol: 'A_j' },
  stretchArea: { ...area, label: 'Section for the stretch', symbol: 'A_δ' },
  bothArea: { ...area, label: 'Section that meets both', symbol: 'A_both' },
  fatigueArea: {
    ...area,
    label: 'Section for the margin against fatigue, at the stated life',
    symbol: 'A_f',
  },
  yieldArea: { ...area, label: 'Section for the margin against yield', symbol: 'A_y' },
  marginStretch: {
    ...length,
    label: 'Stretch of the rod with the margin’s section',
    symbol: 'δ_j',
    phrase: 'The stretch with the margin’s section',
  },
  growth: { ...length, label: 'Thermal growth, centre to centre', symbol: 'Δ_T' },
  pull: { ...force, label: 'Pull at overlap TDC', symbol: 'F_pull' },
  push: { ...force, label: 'Push at peak pressure, low speed', symbol: 'F_push' },
  amplitudeForce: { ...force, label: 'Amplitude', symbol: 'F_a' },
  sectionMass: { ...mass, label: 'Shank mass at the section entered', symbol: 'm_s' },
  sectionStretch: {
    ...length,
    label: 'Stretch at the section entered',
    symbol: 'δ_s',
  },
  sectionMargin: {
    ...ratio,
    type: 'maybe',
    label: 'Margin at the section entered, the lesser of fatigue and yield',
    symbol: 'j_s',
  },
  materialModulus: {
    ...stress,
    metric: 'GPa',
    inch: 'ksi',
    label: 'Young’s modulus, from the table',
    symbol: 'E',
  },
  materialDensity: {
    type: 'number',
    kind: 'density',
    label: 'Density, from the table',
    symbol: 'ρ',
  },
  materialYield: { ...stress, label: 'Yield strength, from the table', symbol: 'R_p' },
  materialHotYield: {
    ...stress,
    type: 'maybe',
    label: 'Yield strength left at the rod’s temperature',
    symbol: 'R_p,hot',
  },
  materialFatigue: { ...stress, label: 'Fatigue strength, from the table', symbol: 'σ_D' },
  materialLife: {
    ...ratio,
    label: 'Reversals for which that holds',
    symbol: 'N_D',
  },
  materialExpansion: {
    type: 'number',
    kind: 'expansion',
    label: 'Thermal expansion, from the table',
    symbol: 'α',
  },
} as const satisfies Readonly<Record<string, OutputEntry>>;

/** The candidate's metal over the baseline's, both on the baseline's duty. */
export const materialComparisons = {
  sectionMassRatio: {
    ...share,
    label: 'Equal section, the naive look: mass, candidate’s metal over baseline’s',
    symbol: 'q_m,A',
  },
  sectionStretchRatio: {
    ...ratio,
    label: 'Equal section: stretch, candidate’s metal over baseline’s',
    symbol: 'q_δ,A',
  },
  marginAreaRatio: {
    ...ratio,
    label: 'Equal margin: section, candidate’s metal over baseline’s',
    symbol: 'q_A,j',
  },
  marginMassRatio: {
    ...share,
    label: 'Equal margin: mass, candidate’s metal over baseline’s',
    symbol: 'q_m,j',
    phrase:
      'On the baseline’s duty and at equal margin the candidate’s metal weighs, as a share of the baseline’s,',
    main: true,
  },
  marginStretchRatio: {
    ...ratio,
    label: 'Equal margin: stretch, candidate’s metal over baseline’s',
    symbol: 'q_δ,j',
  },
  stretchAreaRatio: {
    ...ratio,
    label: 'Equal stretch: section, candidate’s metal over baseline’s',
    symbol: 'q_A,δ',
  },
  stretchMassRatio: {
    ...share,
    label: 'Equal stretch: mass, candidate’s metal over baseline’s',
    symbol: 'q_m,δ',
    phrase: 'On the baseline’s duty and at equal stretch it weighs, as a share of the baseline’s,',
    main: true,
  },
} as const satisfies Readonly<Record<string, NumberOutput>>;
