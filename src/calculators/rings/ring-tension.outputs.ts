import type { NumberOutput } from '../define.ts';
import {
  followedWaviness,
  openingStress,
  ringInBore,
  ringLine,
  type GappedRing,
  type RingName,
} from '../../core/rings/ring-tension.ts';
import { followedFreeGap } from '../../core/rings/ring-shape.ts';
import { contactPressure, fineLength, force, length, ratio, stress } from '../output.ts';

/** What is worked out for any one-piece ring; the top and the second ring share it. */
export const ringOutputs = {
  contactPressure: contactPressure('p', 'Contact pressure from the ring’s own spring', {
    phrase: 'The contact pressure',
    main: true,
  }),
  tangentialForce: force('F_t', 'Tangential force, from the free gap', {
    phrase: 'The tangential force',
    main: true,
  }),
  closure: length('m_c', 'Gap closure: free gap less installed gap'),
  placeStress: stress('σ_b', 'Greatest bending stress in the bore', {
    phrase: 'The greatest stress in the bore',
  }),
  fittingStress: stress('σ_o', 'Greatest bending stress when opened over the piston', {
    phrase: 'Opened over the piston it',
  }),
  conformability: ratio('K', 'Conformability (ring parameter)', { phrase: 'The conformability' }),
  followedOval: fineLength('U_2', 'Oval of the bore it follows by its spring (amplitude)'),
  followedFour: fineLength('U_4', 'Four-lobed waviness it follows by its spring (amplitude)'),
  thickness: ratio('q_a', 'Bore over radial wall'),
  gapRatio: ratio('q_m', 'Free gap over radial wall'),
  openingRatio: ratio('q_o', 'Opening over radial wall'),
  followedGap: length('m_f', 'Free gap of this tension with the ends followed on their way'),
} as const satisfies Record<string, NumberOutput>;

/** All results of {@link ringOutputs} for one ring as it is entered, and the opening that it is spread to. */
export function ringResults<N extends RingName>(
  ring: GappedRing<N> & { readonly ringOpening: number },
  name: N,
): Record<keyof typeof ringOutputs, number> {
  const inBore = ringInBore(ring, name);
  const { radius } = ringLine(ring, name);
  const radial = ring[`${name}Radial`];
  return {
    ...inBore,
    fittingStress: openingStress(ring, name),
    followedOval: followedWaviness(inBore.conformability, radius, 2),
    followedFour: followedWaviness(inBore.conformability, radius, 4),
    thickness: ring.bore / radial,
    gapRatio: ring[`${name}FreeGap`] / radial,
    openingRatio: ring.ringOpening / radial,
    followedGap: followedFreeGap(radius, inBore.conformability, ring[`${name}Gap`]),
  };
}

/** Sentences on what the model leaves out, the same for both rings. */
export const ringAssumptions = [
  'The free shape is the one that presses evenly all round. Rings with more pressure at the ends, or less, have another curve, and the numbers are then a mean.',
  'A thin bar: the neutral line lies in the middle of the section and shear is left out. For a radial wall of a twenty-fifth of the bore the true stress at the back face is about 3 % greater and at the running face about 3 % smaller.',
  'A small bend: the ends are taken to move straight towards each other. Their real way is longer, so that a given tension goes with a free gap about 2 to 3 % greater than shown. The last line of the further results follows the ends.',
  'A rectangular section. Chamfers, barrel, taper, an inner bevel and a coating with another modulus change stiffness a little; a keystone ring is taken at its mean width.',
  'Force along the ring from the wall’s friction is left out. It shows on the bench: turn the ring a little and read again.',
  'No gas. In a running engine the pressure behind the ring adds to the spring and is far greater while the charge burns.',
] as const;
