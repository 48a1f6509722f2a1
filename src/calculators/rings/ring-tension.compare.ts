import type { NumberOutput } from '../define.ts';
import { type GappedRing, ringInBore } from '../../core/rings/ring-tension.ts';
import { ratio } from '../output.ts';

/** What each difference between the two rings does by itself, as factors on the baseline. */
export const thinnessComparisons = {
  tensionByHeight: ratio('f_F,h', 'Tension, by the width alone'),
  tensionByRadial: ratio('f_F,a', 'Tension, by the radial wall alone'),
  tensionByRest: ratio('f_F,E', 'Tension, by material and gap closure'),
  pressureByHeight: ratio('f_p,h', 'Contact pressure, by the width alone'),
  pressureByRadial: ratio('f_p,a', 'Contact pressure, by the radial wall alone'),
  pressureByRest: ratio('f_p,E', 'Contact pressure, by material and gap closure'),
  followByHeight: ratio('f_K,h', 'Conformability at equal contact pressure, by the width alone'),
  followByRadial: ratio(
    'f_K,a',
    'Conformability at equal contact pressure, by the radial wall alone',
  ),
  followByMaterial: ratio('f_K,E', 'Conformability at equal contact pressure, by the material'),
} as const satisfies Record<string, NumberOutput>;

/**
 * Factors of {@link thinnessComparisons}. Each is the model worked again with one size of the candidate in
 * the baseline's ring, free and installed gap held; radial wall and width multiply, and `rest` is what
 * is left (modulus, gap closure and, if it differs, the bore).
 */
export function thinness(
  baseline: GappedRing<'ring1'>,
  candidate: GappedRing<'ring1'>,
): Record<keyof typeof thinnessComparisons, number> {
  const of = (ring: GappedRing<'ring1'>) => {
    const { tangentialForce, contactPressure, conformability } = ringInBore(ring, 'ring1');
    return { tangentialForce, contactPressure, follows: conformability / contactPressure };
  };
  const before = of(baseline);
  const after = of(candidate);
  const low = of({ ...baseline, ring1Height: candidate.ring1Height });
  const thin = of({ ...baseline, ring1Radial: candidate.ring1Radial });
  const other = of({ ...baseline, ring1Modulus: candidate.ring1Modulus });
  const by = (
    one: ReturnType<typeof of>,
    what: 'tangentialForce' | 'contactPressure' | 'follows',
  ): number => one[what] / before[what];
  const rest = (what: 'tangentialForce' | 'contactPressure'): number =>
    by(after, what) / (by(low, what) * by(thin, what));
  return {
    tensionByHeight: by(low, 'tangentialForce'),
    tensionByRadial: by(thin, 'tangentialForce'),
    tensionByRest: rest('tangentialForce'),
    pressureByHeight: by(low, 'contactPressure'),
    pressureByRadial: by(thin, 'contactPressure'),
    pressureByRest: rest('contactPressure'),
    followByHeight: by(low, 'follows'),
    followByRadial: by(thin, 'follows'),
    followByMaterial: by(other, 'follows'),
  };
}
