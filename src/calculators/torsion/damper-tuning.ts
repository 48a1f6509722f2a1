import { bestTuning, ringFrequency, splitFrequencies } from '../../core/torsion/damper.ts';
import { defineCalculator } from '../define.ts';
import { frequency, ratio, torsionalStiffness } from '../output.ts';
import { mainFrequency, mainInertia, ringInertia, ringStiffness } from '../quantities.ts';
import { is } from '../step.ts';

/** A damper’s ring as a tuned pair with one mode of the crank. */
export const damperTuning = defineCalculator({
  id: 'damper-tuning',
  title: 'A ring tuned to one frequency',
  purpose:
    'What a damper’s ring is best tuned to, and into which two frequencies it splits the one that it is for.',
  asks: ['mainInertia', 'mainFrequency', 'ringInertia', 'ringStiffness'],
  answers: ['tuning', 'own', 'lower', 'upper', 'stiffness'],
  inputs: { mainInertia, mainFrequency, ringInertia, ringStiffness },
  outputs: {
    tuning: frequency('f_best', 'Best tuning of the ring', {
      phrase: 'The best tuning of the ring',
      main: true,
    }),
    own: frequency('f_ring', 'Ring on its spring, hub held still', {
      phrase: 'The frequency of the ring on its spring',
      main: true,
    }),
    stiffness: torsionalStiffness('k_best', 'Stiffness that tunes it best'),
    lower: frequency('f_low', 'With the ring: the lower frequency'),
    upper: frequency('f_up', 'With the ring: the upper frequency'),
    ratio: ratio('μ', 'Ring over what swings'),
    damping: ratio('ζ', 'Best damping, as share of critical'),
    peak: ratio('A', 'Height of both peaks, over the twist at rest'),
  },
  compute: (input) => {
    const best = bestTuning(input);
    const { lower, upper } = splitFrequencies(input);
    return {
      tuning: best.frequency,
      own: ringFrequency(input),
      stiffness: best.stiffness,
      lower,
      upper,
      ratio: best.ratio,
      damping: best.damping,
      peak: best.peak,
    };
  },
  steps: {
    ratio: is('ringInertia / mainInertia', 'How heavy the ring is beside what swings.', {
      source: 'den-hartog',
    }),
    tuning: is('mainFrequency / (1 + ratio)', 'At this tuning both peaks are equally high.', {
      source: 'den-hartog',
    }),
    stiffness: is(
      'ringInertia * (2 * pi * tuning)^2',
      'The spring that gives the ring this frequency.',
    ),
    own: is('sqrt(ringStiffness / ringInertia) / (2 * pi)', 'The ring on the spring that it has.', {
      source: 'den-hartog',
    }),
    upper: is(
      'mainFrequency * sqrt((1 + (1 + ratio) * (own / mainFrequency)^2) / 2 + sqrt(((1 - (1 + ratio) * (own / mainFrequency)^2) / 2)^2 + ratio * (own / mainFrequency)^2))',
      'Undamped, ring and crank swing together at two frequencies: this is the greater root.',
      { source: 'den-hartog' },
    ),
    lower: is(
      'mainFrequency * own / upper',
      'And the lesser: their product is that of the two alone.',
      {
        source: 'den-hartog',
      },
    ),
    damping: is(
      'sqrt(3 * ratio / (8 * (1 + ratio)^3))',
      'The damping that makes both peaks lowest.',
      {
        source: 'den-hartog',
      },
    ),
    peak: is('sqrt(1 + 2 / ratio)', 'What is left of the peaks then.', { source: 'den-hartog' }),
  },
  limits: [
    {
      id: 'tuned',
      holds: (_, { own, tuning }) => Math.abs(own / tuning - 1) < 0.2,
      say: 'The ring is tuned more than 20 per cent off its best: one of the two peaks stands much higher than the other.',
    },
  ],
  validity: [
    {
      id: 'ratio',
      label: 'Ring over what swings',
      symbol: 'μ',
      kind: 'ratio',
      of: (_, { ratio: share }) => share,
      possible: [0, 3],
    },
  ],
  assumptions: [
    'One mode of the crank alone, as one inertia on one spring. Other modes are far enough away.',
    'Damping in proportion to speed. Rubber damps otherwise, stiffens with frequency, and changes with heat and age.',
    'A steady torque acts on what swings. In an engine it comes from all throws, and from all orders.',
  ],
  cautions: ['twist-numbers', 'damper'],
  sources: ['den-hartog'],
  sweep: { input: 'ringStiffness', output: 'upper' },
  solve: { input: 'ringInertia', output: 'tuning' },
  exercise: {
    ask: 'stiffness',
    tolerance: 0.01,
    given: { mainFrequency: 0.1, ringInertia: 0.15 },
    beside: ['tuned'],
    also: [
      {
        kind: 'number',
        ask: 'own',
        given: { ringInertia: 0.15, ringStiffness: 0.15 },
        beside: ['tuned'],
      },
      {
        kind: 'choice',
        ask: 'tuning',
        given: { mainFrequency: 0.1, ringInertia: 0.2 },
        beside: ['tuned'],
      },
    ],
  },
});
