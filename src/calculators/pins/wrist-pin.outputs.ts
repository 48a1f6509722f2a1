import type { MaybeOutput, NumberOutput } from '../define.ts';
import {
  contactPressure,
  fineLength,
  length,
  load,
  mass,
  maybe,
  percent,
  ratio,
  smallVolume,
  stress,
} from '../output.ts';

/** Results of the wrist pin, in the order of the page. */
export const pinOutputs = {
  mass: mass('m_p', 'Mass from the dimensions', {
    phrase: 'The mass from the dimensions',
    main: true,
    carries: 'pinMass',
  }),
  pushLoad: load('P', 'Push at the peak pressure, at the speed of greatest torque', {
    phrase: 'The push at the peak pressure',
  }),
  bending: stress('σ_b', 'Bending in the middle, boss pressure falling outward', {
    phrase: 'The bending stress under that push',
    main: true,
  }),
  ovalization: maybe(
    fineLength('Δd', 'Ovalization, cited method', {
      phrase: 'The ovalization by the cited method',
      main: true,
    }),
  ),
  smallEndPressure: contactPressure('q_se', 'Bearing pressure in the small end', {
    phrase: 'The bearing pressure in the small end',
  }),
  bossPressure: contactPressure('q_b', 'Bearing pressure in the bosses', {
    phrase: 'The bearing pressure in the bosses',
  }),
  shear: stress('τ', 'Greatest shear between eye and boss'),
  bendingMiddle: stress('σ_m', 'Bending, supported at the middles of the bosses'),
  bendingPull: stress('σ_pull', 'Bending in the pull at the highest speed'),
  gasLoad: load('P_0', 'Push with nothing taken off: low speed'),
  pullLoad: load('P_pull', 'Pull at overlap TDC, at the highest speed'),
  pullShare: percent('q_P', 'Pull over push'),
  boreRatio: ratio('α', 'Bore over diameter'),
  sectionModulus: smallVolume('W', 'Section modulus in the middle'),
  ovalClose: fineLength('Δd_c', 'Ovalization, thick ring in a close bore'),
  ovalPoints: fineLength('Δd_p', 'Ovalization, thin ring under two point loads'),
  flatPoints: fineLength('Δd_f', 'Flattening along the load, the same ring'),
  gapBore: length('d_g', 'Bore of the pin at the edge of the boss'),
  diameterRatio: ratio('q_d', 'Pin diameter over cylinder bore'),
} as const satisfies Record<string, NumberOutput | MaybeOutput>;

/** What bore would make the candidate the baseline's equal. */
export const pinComparisons = {
  equalModulusBore: maybe(
    length('d_W', 'Bore that gives the candidate the baseline’s section modulus'),
  ),
  equalBendingBore: maybe(
    length('d_σ', 'Bore that gives it the baseline’s bending stress, each under its own push'),
  ),
  equalMassBore: maybe(length('d_m', 'Bore that gives it the baseline’s mass')),
} as const satisfies Record<string, MaybeOutput>;
