import {
  count,
  direction,
  force,
  length,
  mass,
  maybe,
  ratio,
  torque,
  unbalance,
} from '../output.ts';

/** What a change of bobweight makes at the ends, and what a choice of counterweights costs inside. */
export const changeOutputs = {
  endUnbalance: unbalance('U_end', 'Unbalance in the worse end plane', {
    phrase: 'The unbalance that the change makes in an end plane',
    main: true,
  }),
  perWeight: unbalance('U_cw', 'To be taken at each counterweight, at most', {
    phrase: 'What is to be taken at a counterweight',
    main: true,
  }),
  mainPull: maybe(
    force('F_mid', 'Most that a middle main gets of it at the redline', {
      phrase: 'The pull that a middle main gets of it at the redline',
      main: true,
    }),
  ),
  change: mass('Δm', 'Change of every bobweight'),
  bending: torque('M_in', 'Bending that stays inside the crank at the redline'),
  endAngleA: maybe(direction('α_A', 'Heavy spot in end plane A, from throw 1')),
  endAngleB: maybe(direction('α_B', 'Heavy spot in end plane B, from throw 1')),
  unbalanceA: unbalance('U_A', 'In end plane A'),
  unbalanceB: unbalance('U_B', 'In end plane B'),
  pinPull: force('F_pin', 'Pull of the change at one pin at the redline'),
  pinUnbalance: unbalance('U_pin', 'Unbalance of the change at one pin'),
  weights: count('N_cw', 'Counterweights that take it'),
  mainShare: maybe(ratio('k_mid', 'Most on a middle main, in pulls of one pin')),
  bendingArm: length('l_M', 'Greatest bending, in pulls of one pin'),
  forceAlong: ratio('k_Fx', 'Throws added up, along throw 1'),
  forceAcross: ratio('k_Fy', 'Throws added up, across it'),
  coupleAlong: ratio('k_Mx', 'Their couple in pin spacings, along throw 1'),
  coupleAcross: ratio('k_My', 'Their couple, across it'),
} as const;
