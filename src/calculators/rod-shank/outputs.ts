import type { OutputEntry } from '../define.ts';

const stress = { type: 'number', kind: 'pressure', metric: 'MPa', inch: 'ksi' } as const;
const force = { type: 'number', kind: 'force' } as const;
const second = { type: 'number', kind: 'secondMoment' } as const;
const length = { type: 'number', kind: 'length' } as const;
const ratio = { type: 'number', kind: 'ratio' } as const;

/** Everything the shank of a rod answers with. */
export const shankOutputs = {
  pullStress: {
    ...stress,
    label: 'Pull stress at overlap TDC',
    symbol: 'σ_pull',
    phrase: 'At overlap TDC, each set at its own highest speed, the pull stress in the shank',
    main: true,
  },
  lowSpeedStress: {
    ...stress,
    label: 'Push stress at peak pressure, low speed',
    symbol: 'σ_low',
    phrase: 'At peak pressure and low speed the push stress',
    main: true,
  },
  pushStress: {
    ...stress,
    label: 'Push stress at peak pressure, highest speed',
    symbol: 'σ_push',
  },
  whipStress: {
    ...stress,
    label: 'Whip stress at the highest speed',
    symbol: 'σ_whip',
    phrase: 'The whip of the rod’s own mass bends it with a stress that',
  },
  amplitude: { ...stress, label: 'Stress amplitude, pull to low-speed push', symbol: 'σ_a' },
  meanStress: { ...stress, label: 'Mean of the two, pull positive', symbol: 'σ_m' },
  clearanceLeft: {
    ...length,
    label: 'Left of the set clearance after this rod’s stretch and growth alone',
    symbol: 'c_left',
    phrase:
      'Of the clearance set to the head, this rod’s stretch and growth alone leave an amount that',
    main: true,
  },
  rodStretch: {
    ...length,
    label: 'Stretch of the whole rod',
    symbol: 'δ_rod',
    phrase: 'The stretch of the whole rod',
  },
  shankStretch: { ...length, label: 'Stretch of the shank alone', symbol: 'δ_s' },
  growth: {
    ...length,
    label: 'Thermal growth, centre to centre',
    symbol: 'Δ_T',
    phrase: 'Its thermal growth',
  },
  bucklingShare: {
    ...ratio,
    metric: 'pct',
    inch: 'pct',
    label: 'Johnson’s buckling stress over yield',
    symbol: 'q_J',
    phrase: 'Johnson’s buckling stress as a share of yield',
  },
  johnsonStress: { ...stress, label: 'Johnson’s buckling stress', symbol: 'σ_J' },
  rankineStress: {
    ...stress,
    label: 'Rankine’s, with the divisor that fits the material',
    symbol: 'σ_R',
  },
  rankineTextbook: {
    ...stress,
    label: 'Rankine’s, with mild steel’s 7500',
    symbol: 'σ_7500',
  },
  bucklingMargin: {
    ...ratio,
    type: 'maybe',
    label: 'Johnson’s load over the low-speed push',
    symbol: 'j_J',
  },
  slendernessX: { ...ratio, label: 'Slenderness in the plane of motion', symbol: 's_x' },
  slendernessY: {
    ...ratio,
    label: 'Slenderness across it, ends held',
    symbol: 's_y',
  },
  pull: { ...force, label: 'Pull through the shank at overlap TDC', symbol: 'F_pull' },
  push: { ...force, label: 'Push at peak pressure, highest speed', symbol: 'F_push' },
  lowSpeedPush: { ...force, label: 'Push at peak pressure, low speed', symbol: 'F_low' },
  area: { type: 'number', kind: 'area', label: 'Area of the section', symbol: 'A' },
  secondMomentX: {
    ...second,
    label: 'Second moment for bending in the plane of motion',
    symbol: 'I_x',
  },
  secondMomentY: { ...second, label: 'Second moment for bending across it', symbol: 'I_y' },
  momentRatio: { ...ratio, label: 'The one over the other', symbol: 'q_I' },
  radiusX: { ...length, label: 'Radius of gyration, plane of motion', symbol: 'k_x' },
  radiusY: { ...length, label: 'Radius of gyration, across it', symbol: 'k_y' },
  modulusX: {
    type: 'number',
    kind: 'volume',
    metric: 'mm3',
    label: 'Section modulus, plane of motion',
    symbol: 'Z_x',
    detail: true,
  },
  whipMoment: {
    type: 'number',
    kind: 'torque',
    label: 'Bending moment of the whip',
    symbol: 'M_whip',
    detail: true,
  },
  whipPlace: {
    ...length,
    label: 'Where the whip bends most, from the pin',
    symbol: 'x_whip',
    detail: true,
  },
  shankMass: {
    type: 'number',
    kind: 'mass',
    label: 'A bar of this section, centre to centre',
    symbol: 'm_bar',
    detail: true,
  },
  eulerStress: { ...stress, label: 'Euler’s stress', symbol: 'σ_E', detail: true },
  transition: {
    ...ratio,
    label: 'Slenderness where Johnson runs into Euler',
    symbol: 's_t',
    detail: true,
  },
  divisor: {
    ...ratio,
    label: 'Rankine’s divisor that fits the material',
    symbol: 'c_fit',
    detail: true,
  },
  flangeSpan: { ...length, label: 'Over both flanges', symbol: 'd', detail: true },
  flangeWidth: { ...length, label: 'Long side of a flange', symbol: 'b', detail: true },
  sectionArea: {
    type: 'number',
    kind: 'area',
    label: 'Area from the four dimensions',
    symbol: 'A_4',
    detail: true,
  },
  alongFlanges: {
    ...second,
    label: 'Second moment about the axis along the flanges',
    symbol: 'I_f',
    detail: true,
  },
  alongWeb: {
    ...second,
    label: 'Second moment about the axis along the web',
    symbol: 'I_w',
    detail: true,
  },
} as const satisfies Readonly<Record<string, OutputEntry>>;
