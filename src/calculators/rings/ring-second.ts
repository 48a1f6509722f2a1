import { closureOf } from '../../core/rings/ring-tension.ts';
import { defineCalculator, optional } from '../define.ts';
import {
  bore,
  ring2FreeGap,
  ring2Gap,
  ring2Height,
  ring2Modulus,
  ring2Radial,
  ring2Tension,
  ringOpening,
} from '../quantities.ts';
import { ringAssumptions, ringOutputs, ringResults } from './ring-tension.outputs.ts';
import { ringSteps } from './ring-tension.steps.ts';
import { length, maybe } from '../output.ts';

/** The same for the second ring, as long as it is a plain one-piece ring. */
export const ringSecond = defineCalculator({
  id: 'ring-second',
  title: 'Second ring: tension and stress',
  purpose: 'The second ring by the same theory, as long as it is one piece of rectangular section.',
  asks: ['bore', 'ring2Height', 'ring2Radial', 'ring2Modulus', 'ring2FreeGap', 'ring2Gap'],
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
    ring2Height,
    ring2Radial,
    ring2Modulus,
    ring2FreeGap,
    ring2Gap,
    ringOpening,
    ring2Tension: optional(ring2Tension),
  },
  outputs: {
    ...ringOutputs,
    wantedFreeGap: maybe(length('m_w', 'Free gap that the measured tension calls for')),
  },
  compute: ({ ring2Tension, ...ring }) => ({
    ...ringResults(ring, 'ring2'),
    wantedFreeGap:
      ring2Tension === undefined
        ? { absent: 'enter the measured tangential force' }
        : closureOf({ ...ring, ring2Tension }, 'ring2') + ring.ring2Gap,
  }),
  steps: ringSteps('ring2'),
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
  assumptions: [
    ...ringAssumptions,
    'A hook or a step in the section of a scraper ring makes it softer than the rectangle around it. Measure its tension.',
  ],
  cautions: ['rings'],
  sources: ['piston-ring-manual-2008', 'iso-6621'],
  sweep: { input: 'ring2Radial', output: 'contactPressure' },
  solve: { input: 'ring2FreeGap', output: 'tangentialForce' },
  exercise: {
    ask: 'tangentialForce',
    tolerance: 0.02,
    given: { bore: 0.06, ring2Height: 0.15, ring2Radial: 0.08, ring2FreeGap: 0.12 },
  },
});
