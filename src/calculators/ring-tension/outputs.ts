import type { NumberOutput } from '../define.ts';
import {
  followedWaviness,
  openingStress,
  ringInBore,
  ringLine,
  type Ring,
  type RingName,
} from '../../core/ring-tension.ts';
import { followedFreeGap } from '../../core/ring-shape.ts';

const length = { type: 'number', kind: 'length' } as const;
const stress = { type: 'number', kind: 'pressure', metric: 'MPa', inch: 'psi' } as const;
const ratio = { type: 'number', kind: 'ratio' } as const;

/** What is worked out for any one-piece ring; the top and the second ring share it. */
export const ringOutputs = {
  contactPressure: {
    ...stress,
    label: 'Contact pressure from the ring’s own spring',
    symbol: 'p',
    phrase: 'The contact pressure',
    main: true,
  },
  tangentialForce: {
    type: 'number',
    kind: 'force',
    metric: 'N',
    inch: 'lbf',
    label: 'Tangential force, from the free gap',
    symbol: 'F_t',
    phrase: 'The tangential force',
    main: true,
  },
  closure: { ...length, label: 'Gap closure: free gap less installed gap', symbol: 'm_c' },
  placeStress: {
    ...stress,
    label: 'Greatest bending stress in the bore',
    symbol: 'σ_b',
    phrase: 'The greatest stress in the bore',
  },
  fittingStress: {
    ...stress,
    label: 'Greatest bending stress when opened over the piston',
    symbol: 'σ_o',
    phrase: 'Opened over the piston it',
  },
  conformability: {
    ...ratio,
    label: 'Conformability (ring parameter)',
    symbol: 'K',
    phrase: 'The conformability',
  },
  followedOval: {
    ...length,
    metric: 'um',
    inch: 'thou',
    label: 'Oval of the bore it follows by its spring (amplitude)',
    symbol: 'U_2',
  },
  followedFour: {
    ...length,
    metric: 'um',
    inch: 'thou',
    label: 'Four-lobed waviness it follows by its spring (amplitude)',
    symbol: 'U_4',
  },
  thickness: {
    ...ratio,
    label: 'Bore over radial thickness',
    symbol: 'q_a',
    detail: true,
  },
  gapRatio: {
    ...ratio,
    label: 'Free gap over radial thickness',
    symbol: 'q_m',
    detail: true,
  },
  openingRatio: {
    ...ratio,
    label: 'Opening over radial thickness',
    symbol: 'q_o',
    detail: true,
  },
  followedGap: {
    ...length,
    label: 'Free gap of this tension with the ends followed on their way',
    symbol: 'm_f',
    detail: true,
  },
} as const satisfies Record<string, NumberOutput>;

/** A ring as it is entered, SI units. */
export interface EnteredRing extends Ring {
  readonly freeGap: number;
  readonly gap: number;
  readonly opening: number;
}

/** All results of {@link ringOutputs} for one ring; refusals name the quantities of `name`. */
export function ringResults(
  entered: EnteredRing,
  name: RingName,
): Record<keyof typeof ringOutputs, number> {
  const inBore = ringInBore(entered, entered, name);
  const { radius } = ringLine(entered, name);
  const { bore, radial, freeGap, gap, opening } = entered;
  return {
    ...inBore,
    fittingStress: openingStress(entered, { freeGap, opening }, name),
    followedOval: followedWaviness(inBore.conformability, radius, 2),
    followedFour: followedWaviness(inBore.conformability, radius, 4),
    thickness: bore / radial,
    gapRatio: freeGap / radial,
    openingRatio: opening / radial,
    followedGap: followedFreeGap(radius, inBore.conformability, gap),
  };
}

/** Sentences on what the model leaves out, the same for both rings. */
export const ringAssumptions = [
  'The free shape is the one that presses evenly all round. Rings with more pressure at the ends, or less, have another curve, and the numbers are then a mean.',
  'A thin bar: the neutral line lies in the middle of the section and shear is left out. For a radial thickness of a twenty-fifth of the bore the true stress at the back face is about 3 % greater and at the running face about 3 % smaller.',
  'A small bend: the ends are taken to move straight towards each other. Their real way is longer, so that a given tension goes with a free gap about 2 to 3 % greater than shown. The last line of the further results follows the ends.',
  'A rectangular section. Chamfers, barrel, taper, an inner bevel and a coating with another modulus change stiffness a little; a keystone ring is taken at its mean height.',
  'Force along the ring from the wall’s friction is left out. It shows on the bench: turn the ring a little and read again.',
  'No gas. In a running engine the pressure behind the ring adds to the spring and is far greater while the charge burns.',
] as const;
