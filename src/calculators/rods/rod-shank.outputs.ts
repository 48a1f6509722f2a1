import type { OutputEntry } from '../define.ts';
import {
  area,
  detail,
  length,
  load,
  mass,
  maybe,
  percent,
  ratio,
  secondMoment,
  smallVolume,
  stress,
  torque,
} from '../output.ts';

/** Everything the shank of a rod answers with. */
export const shankOutputs = {
  pullStress: stress('σ_pull', 'Pull stress at overlap TDC', {
    phrase: 'At overlap TDC, each set at its own highest speed, the pull stress in the beam',
    main: true,
  }),
  lowSpeedStress: stress('σ_low', 'Push stress at peak pressure, low speed', {
    phrase: 'At peak pressure and low speed the push stress',
    main: true,
  }),
  pushStress: stress('σ_push', 'Push stress at peak pressure, highest speed'),
  whipStress: stress('σ_whip', 'Whip stress at the highest speed', {
    phrase: 'The whip of the rod’s own mass bends it with a stress that',
  }),
  amplitude: stress('σ_a', 'Stress amplitude, pull to low-speed push'),
  meanStress: stress('σ_m', 'Mean of the two, pull positive'),
  clearanceLeft: length(
    'c_left',
    'Left of the set clearance after this rod’s stretch and growth alone',
    {
      phrase:
        'Of the clearance set to the head, this rod’s stretch and growth alone leave an amount that',
      main: true,
    },
  ),
  rodStretch: length('δ_rod', 'Stretch of the whole rod', {
    phrase: 'The stretch of the whole rod',
  }),
  shankStretch: length('δ_s', 'Stretch of the beam alone'),
  growth: length('Δ_T', 'Thermal growth, centre to centre', { phrase: 'Its thermal growth' }),
  bucklingShare: percent('q_J', 'Johnson’s buckling stress over yield', {
    phrase: 'Johnson’s buckling stress as a share of yield',
  }),
  johnsonStress: stress('σ_J', 'Johnson’s buckling stress'),
  rankineStress: stress('σ_R', 'Rankine’s, with the divisor that fits the material'),
  rankineTextbook: stress('σ_7500', 'Rankine’s, with mild steel’s 7500'),
  bucklingMargin: maybe(ratio('j_J', 'Johnson’s load over the low-speed push')),
  slendernessX: ratio('s_x', 'Slenderness in the plane of motion'),
  slendernessY: ratio('s_y', 'Slenderness across it, ends held'),
  pull: load('F_pull', 'Pull through the beam at overlap TDC'),
  push: load('F_push', 'Push at peak pressure, highest speed'),
  lowSpeedPush: load('F_low', 'Push at peak pressure, low speed'),
  area: area('A', 'Area of the section'),
  secondMomentX: secondMoment('I_x', 'Second moment for bending in the plane of motion'),
  secondMomentY: secondMoment('I_y', 'Second moment for bending across it'),
  momentRatio: ratio('q_I', 'The one over the other'),
  radiusX: length('k_x', 'Radius of gyration, plane of motion'),
  radiusY: length('k_y', 'Radius of gyration, across it'),
  modulusX: smallVolume('Z_x', 'Section modulus, plane of motion', detail),
  whipMoment: torque('M_whip', 'Bending moment of the whip', detail),
  whipPlace: length('x_whip', 'Where the whip bends most, from the pin', detail),
  shankMass: mass('m_bar', 'A bar of this section, centre to centre', detail),
  eulerStress: stress('σ_E', 'Euler’s stress', detail),
  transition: ratio('s_t', 'Slenderness where Johnson runs into Euler', detail),
  divisor: ratio('c_fit', 'Rankine’s divisor that fits the material', detail),
  flangeSpan: length('d', 'Over both flanges', detail),
  flangeWidth: length('b', 'Long side of a flange', detail),
  sectionArea: area('A_4', 'Area from the four dimensions', detail),
  alongFlanges: secondMoment('I_f', 'Second moment about the axis along the flanges', detail),
  alongWeb: secondMoment('I_w', 'Second moment about the axis along the web', detail),
} as const satisfies Readonly<Record<string, OutputEntry>>;
