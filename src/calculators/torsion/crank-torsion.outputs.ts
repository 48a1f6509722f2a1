import {
  axis,
  count,
  crankSpeed,
  curve,
  frequency,
  inertia,
  maybe,
  percent,
  ratio,
} from '../output.ts';

/** What the page of torsional vibration works out of a whole crank. */
export const outputs = {
  firstFrequency: frequency('f_1', 'First natural frequency', {
    phrase: 'The first natural frequency',
    main: true,
  }),
  firstCritical: crankSpeed('n_1q', 'Its critical speed at the order of firing', {
    phrase: 'At the order of firing its critical speed',
    main: true,
  }),
  nearCritical: maybe(
    crankSpeed('n_near', 'Critical speed nearest to the redline', {
      phrase: 'The critical speed nearest to the redline',
      main: true,
    }),
  ),
  nearOrder: maybe(count('q_near', 'of that, the order: times a turn')),
  nearSum: maybe(percent('s_near', 'of that, the cylinders in step')),
  secondFrequency: frequency('f_2', 'Second natural frequency', {
    phrase: 'The second natural frequency',
  }),
  secondCritical: crankSpeed('n_2q', 'Its critical speed at the order of firing'),
  firingRate: ratio('q_f', 'Order of firing: firings in a turn'),
  firstSum: percent('s_1', 'First mode at the order of firing, cylinders in step'),
  secondSum: percent('s_2', 'Second mode at the order of firing, cylinders in step'),
  firstNode: ratio(
    'x_1',
    'Node of the first mode nearest to the flywheel, in throws from the nose',
  ),
  lockedFrequency: frequency('f_lock', 'First natural frequency, ring held fast to its hub'),
  bareFrequency: frequency('f_bare', 'First natural frequency, ring taken off', {
    carries: 'mainFrequency',
  }),
  seenInertia: inertia('I_see', 'What swings at the hub then, inertia', { carries: 'mainInertia' }),
  ringTuning: maybe(frequency('f_ring', 'Ring on its spring, hub held still')),
  ringRatio: maybe(ratio('μ', 'Ring over what swings at the hub')),
  bestTuning: maybe(frequency('f_best', 'Best tuning of the ring')),
  inertias: count('N_J', 'Inertias in line'),
  firstShape: curve(
    axis('ratio', 'x', 'Place along the crank, in throws from the nose'),
    axis('ratio', 'Θ_1', 'Swing in the first mode'),
  ),
  secondShape: curve(
    axis('ratio', 'x', 'Place along the crank, in throws from the nose'),
    axis('ratio', 'Θ_2', 'Swing in the second mode'),
  ),
  firstSums: curve(
    axis('ratio', 'q', 'Order'),
    axis('ratio', 's_1q', 'First mode, cylinders in step'),
  ),
  secondSums: curve(
    axis('ratio', 'q', 'Order'),
    axis('ratio', 's_2q', 'Second mode, cylinders in step'),
  ),
};
