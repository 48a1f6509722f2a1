import { OutOfDomain } from '../../core/refuse.ts';
import { type GappedRing, ringInBore } from '../../core/rings/ring-tension.ts';
import type { Absent, MaybeOutput, NumberOutput } from '../define.ts';
import { maybe, ratio } from '../output.ts';

/** What each difference between the two rings does by itself, as factors on the baseline. */
export const thinnessComparisons = {
  tensionByHeight: ratio('f_F,h', 'Tension, by the width alone'),
  tensionByRadial: maybe(ratio('f_F,a', 'Tension, by the radial wall alone')),
  tensionByRest: maybe(ratio('f_F,E', 'Tension, by material and gap closure')),
  pressureByHeight: ratio('f_p,h', 'Contact pressure, by the width alone'),
  pressureByRadial: maybe(ratio('f_p,a', 'Contact pressure, by the radial wall alone')),
  pressureByRest: maybe(ratio('f_p,E', 'Contact pressure, by material and gap closure')),
  followByHeight: ratio('f_K,h', 'Conformability at equal contact pressure, by the width alone'),
  followByRadial: maybe(
    ratio('f_K,a', 'Conformability at equal contact pressure, by the radial wall alone'),
  ),
  followByMaterial: ratio('f_K,E', 'Conformability at equal contact pressure, by the material'),
} as const satisfies Record<string, NumberOutput | MaybeOutput>;

/** What one ring does, and how it follows the bore at equal contact pressure. */
interface Deed {
  readonly tangentialForce: number;
  readonly contactPressure: number;
  readonly follows: number;
}

type Factors = {
  readonly [
    K in keyof typeof thinnessComparisons
  ]: (typeof thinnessComparisons)[K] extends MaybeOutput ? number | Absent : number;
};

const unfit: Absent = { absent: 'a ring so thick does not go into the baseline’s bore' };

function deedOf(ring: GappedRing<'ring1'>): Deed {
  const { tangentialForce, contactPressure, conformability } = ringInBore(ring, 'ring1');
  return { tangentialForce, contactPressure, follows: conformability / contactPressure };
}

/** The baseline's ring with the candidate's radial thickness; undefined where no such ring can be. */
function thinDeed(baseline: GappedRing<'ring1'>, candidate: GappedRing<'ring1'>): Deed | undefined {
  try {
    return deedOf({ ...baseline, ring1Radial: candidate.ring1Radial });
  } catch (error) {
    if (error instanceof OutOfDomain) return undefined;
    throw error;
  }
}

/**
 * Factors of {@link thinnessComparisons}. Each is the model worked again with one size of the candidate in
 * the baseline's ring, free and installed gap held; radial wall and width multiply, and `rest` is what is left
 * (modulus, gap closure and, if it differs, the bore). Absent what takes a radial wall that does not go into the
 * baseline's bore. Throws OutOfDomain for a ring that is none.
 */
export function thinness(baseline: GappedRing<'ring1'>, candidate: GappedRing<'ring1'>): Factors {
  const before = deedOf(baseline);
  const after = deedOf(candidate);
  const low = deedOf({ ...baseline, ring1Height: candidate.ring1Height });
  const thin = thinDeed(baseline, candidate);
  const other = deedOf({ ...baseline, ring1Modulus: candidate.ring1Modulus });
  const by = (one: Deed, what: keyof Deed): number => one[what] / before[what];
  const byRadial = (what: keyof Deed): number | Absent =>
    thin === undefined ? unfit : by(thin, what);
  const rest = (what: keyof Deed): number | Absent =>
    thin === undefined ? unfit : by(after, what) / (by(low, what) * by(thin, what));
  return {
    tensionByHeight: by(low, 'tangentialForce'),
    tensionByRadial: byRadial('tangentialForce'),
    tensionByRest: rest('tangentialForce'),
    pressureByHeight: by(low, 'contactPressure'),
    pressureByRadial: byRadial('contactPressure'),
    pressureByRest: rest('contactPressure'),
    followByHeight: by(low, 'follows'),
    followByRadial: byRadial('follows'),
    followByMaterial: by(other, 'follows'),
  };
}
