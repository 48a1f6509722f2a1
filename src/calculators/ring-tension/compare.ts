import type { NumberOutput } from '../define.ts';
import { ringInBore, type Ring, type RingName } from '../../core/ring-tension.ts';

const factor = { type: 'number', kind: 'ratio' } as const;

/** What each difference between the two rings does by itself, as factors on the baseline. */
export const thinnessComparisons = {
  tensionByHeight: { ...factor, label: 'Tension, by the height alone', symbol: 'f_F,h' },
  tensionByRadial: { ...factor, label: 'Tension, by the radial thickness alone', symbol: 'f_F,a' },
  tensionByRest: { ...factor, label: 'Tension, by material and closure', symbol: 'f_F,E' },
  pressureByHeight: { ...factor, label: 'Contact pressure, by the height alone', symbol: 'f_p,h' },
  pressureByRadial: {
    ...factor,
    label: 'Contact pressure, by the radial thickness alone',
    symbol: 'f_p,a',
  },
  pressureByRest: {
    ...factor,
    label: 'Contact pressure, by material and closure',
    symbol: 'f_p,E',
  },
  followByHeight: {
    ...factor,
    label: 'Conformability at equal contact pressure, by the height alone',
    symbol: 'f_K,h',
  },
  followByRadial: {
    ...factor,
    label: 'Conformability at equal contact pressure, by the radial thickness alone',
    symbol: 'f_K,a',
  },
  followByMaterial: {
    ...factor,
    label: 'Conformability at equal contact pressure, by the material',
    symbol: 'f_K,E',
  },
} as const satisfies Record<string, NumberOutput>;

/** A ring and the two gaps. */
export interface GappedRing extends Ring {
  readonly freeGap: number;
  readonly gap: number;
}

/**
 * Factors of {@link thinnessComparisons}. Each is the model worked again with one size of the candidate in
 * the baseline's ring, free and installed gap held; radial thickness and height multiply, and `rest` is what
 * is left (modulus, closure and, if it differs, the bore).
 */
export function thinness(
  baseline: GappedRing,
  candidate: GappedRing,
  name: RingName,
): Record<keyof typeof thinnessComparisons, number> {
  const of = (ring: GappedRing) => {
    const { tangentialForce, contactPressure, conformability } = ringInBore(ring, ring, name);
    return { tangentialForce, contactPressure, follows: conformability / contactPressure };
  };
  const before = of(baseline);
  const after = of(candidate);
  const low = of({ ...baseline, height: candidate.height });
  const thin = of({ ...baseline, radial: candidate.radial });
  const other = of({ ...baseline, modulus: candidate.modulus });
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
