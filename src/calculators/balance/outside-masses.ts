import { atSpeed } from '../../core/balance/bobweight-change.ts';
import { outsideMasses as workOutside } from '../../core/balance/outside-masses.ts';
import { length } from '../../core/balance/vectors.ts';
import { defineCalculator } from '../define.ts';
import { direction, force, maybe, unbalance } from '../output.ts';
import {
  balancedWith,
  damperAngle,
  damperPlace,
  damperUnbalance,
  flywheelAngle,
  flywheelPlace,
  flywheelUnbalance,
  maxSpeed,
  planeA,
  planeB,
  swappedPart,
} from '../quantities.ts';
import { angleOf } from './arrow-results.ts';
import { outsideSteps } from './outside-masses.steps.ts';

const noSpot = 'there is no unbalance in this plane';

/** What weights outside the end mains make in the crank’s planes, and what exchanging one leaves. */
export const outsideMasses = defineCalculator({
  id: 'outside-masses',
  title: 'Weighted damper and flywheel',
  purpose:
    'What a weighted damper and flywheel make in the planes of the crank, and what is left when one is exchanged for the other kind.',
  asks: [
    'balancedWith',
    'swappedPart',
    'damperUnbalance',
    'flywheelUnbalance',
    'flywheelPlace',
    'maxSpeed',
  ],
  answers: ['swapPull', 'leftA', 'leftB', 'leftAngleB', 'madeA', 'madeB'],
  inputs: {
    balancedWith,
    swappedPart,
    damperUnbalance,
    flywheelUnbalance,
    flywheelPlace,
    maxSpeed,
    damperAngle,
    damperPlace,
    flywheelAngle,
    planeA,
    planeB,
  },
  outputs: {
    swapPull: force('F_sw', 'Rotating pull of the weight exchanged, at the redline', {
      phrase: 'The rotating pull of the weight that was exchanged, at the redline',
      main: true,
    }),
    leftA: unbalance('U_sw,A', 'Left in plane A after the exchange', {
      phrase: 'After the exchange the unbalance in plane A',
      main: true,
    }),
    leftB: unbalance('U_sw,B', 'Left in plane B after the exchange', {
      phrase: 'After the exchange the unbalance in plane B',
      main: true,
    }),
    leftAngleB: maybe(direction('α_sw,B', 'Its heavy spot in plane B, from throw 1')),
    leftAngleA: maybe(direction('α_sw,A', 'Its heavy spot in plane A, from throw 1')),
    madeA: unbalance('U_ext,A', 'Both weighted parts together, in plane A'),
    madeB: unbalance('U_ext,B', 'Both weighted parts together, in plane B'),
    madeAngleA: maybe(direction('α_ext,A', 'Where they are heavy in plane A')),
    madeAngleB: maybe(direction('α_ext,B', 'Where they are heavy in plane B')),
  },
  compute(input) {
    const { made, left, greatest } = workOutside(input, input, input);
    return {
      swapPull: atSpeed(greatest, input),
      leftA: length(left.atA),
      leftB: length(left.atB),
      leftAngleA: angleOf(left.atA, noSpot),
      leftAngleB: angleOf(left.atB, noSpot),
      madeA: length(made.atA),
      madeB: length(made.atB),
      madeAngleA: angleOf(made.atA, noSpot),
      madeAngleB: angleOf(made.atB, noSpot),
    };
  },
  steps: outsideSteps,
  limits: [
    {
      id: 'outside',
      holds: ({ damperPlace: d, flywheelPlace: f, planeA: a, planeB: b }) => d <= a && f >= b,
      say: 'A weight stands between the two planes of the crank, not outside. The arithmetic holds, but check the signs of the places.',
    },
  ],
  validity: [
    {
      id: 'lever',
      label: 'Flywheel’s lever over the distance of the planes',
      symbol: 'h',
      kind: 'ratio',
      of: (input) => (input.flywheelPlace - input.planeB) / (input.planeB - input.planeA),
      possible: [-1, 2],
    },
  ],
  assumptions: [
    'The exchanged part of the other kind is the same but for its weight: a neutral one has none, a weighted one has that which is entered.',
    'A crank that was balanced with its own weighted parts is in balance with them alone. It may be spun only with them, or with what its maker names in their place.',
    'Angles count from throw 1, clockwise as one looks at the nose. Places count from the crank’s middle, negative towards the nose.',
    'A damper’s outer ring sits on rubber and may have crept: then its mark and its weight are no longer where they were.',
    'The crank is stiff. The pull stands outside the last main, which carries it and bends the end of the crank.',
  ],
  cautions: ['balancing', 'weighted', 'twisting'],
  sources: ['bevan-2005'],
  sweep: { input: 'maxSpeed', output: 'swapPull' },
  solve: { input: 'flywheelUnbalance', output: 'leftB' },
  exercise: {
    ask: 'leftB',
    tolerance: 0.01,
    given: { flywheelUnbalance: 0.4, flywheelPlace: { by: 15 } },
    beside: ['outside'],
    also: [{ kind: 'number', ask: 'swapPull', given: { flywheelUnbalance: 0.4, maxSpeed: 0.2 } }],
  },
});
