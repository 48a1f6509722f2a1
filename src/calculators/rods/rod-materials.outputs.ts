import type { MaybeOutput, NumberOutput, OutputEntry } from '../define.ts';
import {
  area,
  density,
  expansion,
  length,
  load,
  mass,
  maybe,
  modulus,
  percent,
  ratio,
  stress,
} from '../output.ts';

/** What each set's duty asks of each set's metal. */
export const materialOutputs = {
  marginMass: mass('m_j', 'Beam mass at the margin', {
    phrase: 'The mass of the beam with the section that gives the margin',
    main: true,
  }),
  stretchMass: mass('m_δ', 'Beam mass at the stretch', {
    phrase: 'With the section that holds the stretch it',
    main: true,
  }),
  bothMass: mass('m_both', 'Beam mass that meets both', { main: true }),
  marginArea: area('A_j', 'Section for the margin'),
  stretchArea: area('A_δ', 'Section for the stretch'),
  bothArea: area('A_both', 'Section that meets both'),
  fatigueArea: area('A_f', 'Section for the margin against fatigue, at the stated life'),
  yieldArea: area('A_y', 'Section for the margin against yield'),
  marginStretch: length('δ_j', 'Stretch of the rod with the margin’s section', {
    phrase: 'The stretch with the margin’s section',
  }),
  growth: length('Δ_T', 'Thermal growth, centre to centre'),
  pull: load('F_pull', 'Pull at overlap TDC'),
  push: load('F_push', 'Push at peak pressure, low speed'),
  amplitudeForce: load('F_a', 'Amplitude'),
  sectionMass: mass('m_s', 'Beam mass at the section entered'),
  sectionStretch: length('δ_s', 'Stretch at the section entered'),
  sectionMargin: maybe(
    ratio('j_s', 'Margin at the section entered, the lesser of fatigue and yield'),
  ),
  materialModulus: modulus('E', 'Young’s modulus, from the table'),
  materialDensity: density('ρ', 'Density, from the table'),
  materialYield: stress('R_p', 'Yield strength, from the table'),
  materialHotYield: maybe(stress('R_p,hot', 'Yield strength left at the rod’s temperature')),
  materialFatigue: stress('σ_D', 'Fatigue strength, from the table'),
  materialLife: ratio('N_D', 'Reversals for which that holds'),
  materialExpansion: expansion('α', 'Thermal expansion, from the table'),
} as const satisfies Readonly<Record<string, OutputEntry>>;

/** The candidate's metal over the baseline's, both on the baseline's duty. */
export const materialComparisons = {
  sectionMassRatio: percent(
    'q_m,A',
    'Equal section, a first look: mass, candidate’s metal over baseline’s',
  ),
  sectionStretchRatio: ratio('q_δ,A', 'Equal section: stretch, candidate’s metal over baseline’s'),
  marginAreaRatio: maybe(
    ratio('q_A,j', 'Equal margin: section, candidate’s metal over baseline’s'),
  ),
  marginMassRatio: maybe(
    percent('q_m,j', 'Equal margin: mass, candidate’s metal over baseline’s', {
      phrase:
        'On the baseline’s duty and at equal margin the mass of the candidate’s metal, as a share of the baseline’s,',
      main: true,
    }),
  ),
  marginStretchRatio: maybe(
    ratio('q_δ,j', 'Equal margin: stretch, candidate’s metal over baseline’s'),
  ),
  stretchAreaRatio: ratio('q_A,δ', 'Equal stretch: section, candidate’s metal over baseline’s'),
  stretchMassRatio: percent('q_m,δ', 'Equal stretch: mass, candidate’s metal over baseline’s', {
    phrase: 'On the baseline’s duty and at equal stretch that share',
    main: true,
  }),
} as const satisfies Readonly<Record<string, NumberOutput | MaybeOutput>>;
