import { closureOf } from '../../core/rings/ring-tension.ts';
import { defineCalculator, optional } from '../define.ts';
import {
  bore,
  ring1FreeGap,
  ring1Gap,
  ring1Height,
  ring1Modulus,
  ring1Radial,
  ring1Tension,
  ringOpening,
} from '../quantities.ts';
import { thinness, thinnessComparisons } from './ring-tension.compare.ts';
import { ringAssumptions, ringOutputs, ringResults } from './ring-tension.outputs.ts';
import { ringSteps } from './ring-tension.steps.ts';
import { length, maybe } from '../output.ts';

/** The spring of the top ring: what it presses, how it follows a bore, what it bears when it is fitted. */
export const ringTension = defineCalculator({
  id: 'ring-tension',
  title: 'Top ring: tension and stress',
  purpose:
    'What a ring presses on the bore by its own spring, how far it follows a bore that is not round, and what it bears when it is fitted.',
  asks: ['bore', 'ring1Height', 'ring1Radial', 'ring1Modulus', 'ring1FreeGap', 'ring1Gap'],
  answers: [
    'contactPressure',
    'tangentialForce',
    'placeStress',
    'fittingStress',
    'conformability',
    'followedOval',
  ],
  inputs: {
    bore,
    ring1Height,
    ring1Radial,
    ring1Modulus,
    ring1FreeGap,
    ring1Gap,
    ringOpening,
    ring1Tension: optional(ring1Tension),
  },
  outputs: {
    ...ringOutputs,
    wantedFreeGap: maybe(length('m_w', 'Free gap that the measured tension calls for')),
  },
  compute: ({ ring1Tension, ...ring }) => ({
    ...ringResults(ring, 'ring1'),
    wantedFreeGap:
      ring1Tension === undefined
        ? { absent: 'enter the measured tangential force' }
        : closureOf({ ...ring, ring1Tension }, 'ring1') + ring.ring1Gap,
  }),
  comparisons: thinnessComparisons,
  compare: ({ baseline, candidate }) => thinness(baseline.input, candidate.input),
  steps: ringSteps('ring1'),
  limits: [
    {
      id: 'thin',
      holds: (_, { thickness }) => thickness >= 20,
      say: 'The radial wall is more than a twentieth of the bore. A thin bar is a rough picture of such a ring: stress at its back is more than 3.5 % greater than shown.',
    },
    {
      id: 'opened',
      holds: (_, { fittingStress }) => fittingStress >= 0,
      say: 'The opening entered is smaller than the free gap: so far the ring is not stretched at all.',
    },
    {
      id: 'passes',
      holds: ({ ringOpening, ring1Radial }) => ringOpening >= 6 * ring1Radial,
      say: 'To pass over the piston a ring’s gap is opened by about six radial walls at the very least. Check the opening.',
    },
    {
      id: 'measured',
      holds: ({ ring1Tension }, { tangentialForce }) =>
        ring1Tension === undefined || Math.abs(ring1Tension / tangentialForce - 1) <= 0.15,
      say: 'The measured tension is more than 15 % away from what free gap, sizes and modulus give. One of them is not what it seems: a ring that was spread too far, a modulus of another material, or a band of the wrong size.',
    },
  ],
  validity: [
    {
      id: 'thickness',
      label: 'Bore over radial wall',
      symbol: 'q_a',
      kind: 'ratio',
      of: (_, { thickness }) => thickness,
      possible: [10, 60],
    },
  ],
  assumptions: [...ringAssumptions],
  cautions: ['rings'],
  sources: [
    'piston-ring-manual-2008',
    'khurmi-gupta-machine-design-2005',
    'zeynetdinov-2004',
    'iso-6621',
    'tomanik-1996',
  ],
  sweep: { input: 'ring1Radial', output: 'contactPressure' },
  solve: { input: 'ring1FreeGap', output: 'tangentialForce' },
  exercise: {
    ask: 'tangentialForce',
    tolerance: 0.02,
    given: { bore: 0.06, ring1Height: 0.15, ring1Radial: 0.08, ring1FreeGap: 0.12 },
    also: [
      {
        kind: 'number',
        ask: 'contactPressure',
        given: { bore: 0.06, ring1Radial: 0.08, ring1FreeGap: 0.12 },
      },
      { kind: 'choice', ask: 'contactPressure', given: { ring1Radial: 0.1, ring1FreeGap: 0.12 } },
      { kind: 'order', ask: 'tangentialForce', given: { ring1Height: 0.2, ring1Radial: 0.1 } },
    ],
  },
});
