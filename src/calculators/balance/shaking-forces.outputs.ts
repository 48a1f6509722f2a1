import { count, load, mass, maybe, ratio, torque, unbalance } from '../output.ts';

/** What the page of shaking forces works out: first what is left, then what is held, then what both are made of. */
export const outputs = {
  primaryForce: load('F_1L', 'Primary force left, greatest in the turn', {
    phrase: 'The greatest primary force left',
  }),
  primaryForceLeast: load('F_1l', 'Primary force left, least in the turn'),
  primaryCouple: torque('M_1L', 'Primary couple left, greatest in the turn', {
    phrase: 'The greatest primary couple left',
    main: true,
  }),
  primaryCoupleLeast: torque('M_1l', 'Primary couple left, least in the turn'),
  secondaryForce: load('F_2L', 'Secondary force, greatest', {
    phrase: 'The greatest secondary force',
    main: true,
  }),
  secondaryCouple: torque('M_2L', 'Secondary couple, greatest', {
    phrase: 'The greatest secondary couple',
  }),
  heldForce: load('F_H', 'Primary force that the counterweights hold'),
  heldCouple: torque('M_H', 'Primary couple that the counterweights hold', {
    phrase: 'The primary couple that the counterweights hold',
    main: true,
  }),
  forceNow: load('F_θ', 'Force left at this crank angle, both orders'),
  coupleNow: torque('M_θ', 'Couple left at this crank angle, both orders'),
  inertiaForce: load('F_1', 'Primary force of one cylinder, greatest'),
  secondaryOne: load('F_2', 'Secondary force of one cylinder, greatest', {
    phrase: 'The secondary force of one cylinder',
  }),
  forwardForce: ratio('k_F,fwd', 'Force rotating with the crank, in F₁'),
  backwardForce: ratio('k_F,bwd', 'Force rotating against the crank, in F₁'),
  forwardCouple: ratio('k_M,fwd', 'Couple rotating with the crank, in F₁ times spacing'),
  backwardCouple: ratio('k_M,bwd', 'Couple rotating against the crank, in F₁ times spacing'),
  secondForce: ratio('k_2F', 'Greatest secondary force, in F₂'),
  secondCouple: ratio('k_2M', 'Greatest secondary couple, in F₂ times spacing'),
  shaftForce: maybe(unbalance('U_1', 'Shaft against the crank: its unbalance')),
  shaftCouple: maybe(
    unbalance('U_1M', 'Shaft against the crank: two weights opposite, one pin spacing apart, each'),
  ),
  pairForce: maybe(unbalance('U_2', 'Pair at twice crank speed: unbalance of the greater shaft')),
  pairCouple: maybe(
    unbalance(
      'U_2M',
      'Pair at twice crank speed: two weights opposite, one pin spacing apart, each',
    ),
  ),
  rods: count('n_r', 'Rods on each pin or half of a pin'),
  pinBobweight: mass('m_bob', 'Bobweight of one pin, or of half a split pin'),
  bobweights: count('N_bob', 'Bobweights that the balancing machine needs'),
};
