import { inertia, is, tex } from '../step.ts';

/** The working of a crank’s torsion: the line of inertias, its modes, and the speeds at which an order meets one. */
export const steps = {
  ring: inertia('I_ring', 'damperInertia - hubInertia', 'The damper without its hub is the ring.'),
  inertias: is(
    tex('\\q{inertias}', 'table'),
    'Ring where it is sprung, hub, one for each place along the crank, and flywheel with clutch.',
  ),
  firstFrequency: is(
    tex('(2\\pi\\q{firstFrequency})^2\\textstyle\\sum_i I_i\\Theta_i = 0', 'search'),
    'Holzer’s table: at a natural frequency the torques of all inertias add up to nothing. The lowest one is found by counting nodes and halving.',
    { source: 'thomson-vibration' },
  ),
  secondFrequency: is(
    tex('(2\\pi\\q{secondFrequency})^2\\textstyle\\sum_i I_i\\Theta_i = 0', 'search'),
    'And the next one.',
    { source: 'thomson-vibration' },
  ),
  firstNode: is(
    tex('\\Theta(\\q{firstNode}) = 0', 'search'),
    'Where the crank does not swing in the first mode.',
  ),
  firingRate: is(
    tex('\\q{firingRate} = N_\\text{cyl}/2', 'table'),
    'Every cylinder of a four-stroke engine fires once in two turns.',
  ),
  firstCritical: is(
    '2 * pi * firstFrequency / firingRate',
    'The speed at which the firings come as often as the crank swings in its first mode.',
    { source: 'den-hartog' },
  ),
  secondCritical: is('2 * pi * secondFrequency / firingRate', 'The same of the second mode.', {
    source: 'den-hartog',
  }),
  firstSum: is(
    tex(
      '\\q{firstSum} = \\left|\\textstyle\\sum \\Theta\\,e^{i\\q{firingRate}\\psi}\\right| \\Big/ \\textstyle\\sum|\\Theta|',
      'sum over parts',
    ),
    'Each cylinder as an arrow: as long as its throw swings, at the order times the angle at which it fires.',
    { source: 'den-hartog' },
  ),
  secondSum: is(
    tex(
      '\\q{secondSum} = \\left|\\textstyle\\sum \\Theta\\,e^{i\\q{firingRate}\\psi}\\right| \\Big/ \\textstyle\\sum|\\Theta|',
      'sum over parts',
    ),
    'The same in the second mode.',
    { source: 'den-hartog' },
  ),
  nearOrder: is(
    tex('\\q{nearOrder} \\in \\{\\tfrac12, 1, \\tfrac32, \\dots, 12\\}', 'search'),
    'Of the first two modes and all orders at which at least a quarter of the cylinders’ work is in step, the one whose speed lies nearest to the redline.',
  ),
  nearCritical: is(tex('\\q{nearCritical} = 2\\pi f / \\q{nearOrder}', 'search'), 'Its speed.'),
  nearSum: is(
    tex(
      '\\q{nearSum} = \\left|\\textstyle\\sum \\Theta\\,e^{iq\\psi}\\right| \\Big/ \\textstyle\\sum|\\Theta|',
      'sum over parts',
    ),
    'And how far the cylinders are in step at it.',
  ),
  lockedFrequency: is(
    tex('(2\\pi\\q{lockedFrequency})^2\\textstyle\\sum_i I_i\\Theta_i = 0', 'search'),
    'The same crank with ring and hub as one piece.',
  ),
  bareFrequency: is(
    tex('(2\\pi\\q{bareFrequency})^2\\textstyle\\sum_i I_i\\Theta_i = 0', 'search'),
    'And with the ring taken off: the frequency that it is tuned for.',
  ),
  seenInertia: is(
    tex(
      '\\q{seenInertia} = \\textstyle\\sum_i I_i\\Theta_i^2 / \\Theta_\\text{hub}^2',
      'sum over parts',
    ),
    'What the crank amounts to at the hub in that mode: the inertia that holds as much energy when it swings as the hub does.',
    { source: 'den-hartog' },
  ),
  ringTuning: is(
    'sqrt(ringStiffness / ring) / (2 * pi)',
    'The ring on its spring, the hub held still.',
    { source: 'den-hartog' },
  ),
  ringRatio: is('ring / seenInertia', 'How heavy the ring is beside what swings.', {
    source: 'den-hartog',
  }),
  bestTuning: is(
    'bareFrequency / (1 + ringRatio)',
    'At this tuning both peaks that the ring leaves are equally high.',
    { source: 'den-hartog' },
  ),
};
