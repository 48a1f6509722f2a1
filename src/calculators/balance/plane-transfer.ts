import {
  atPlanes,
  knownUnbalances,
  movedToPlanes,
  staticAndCouple,
} from '../../core/balance/moved-planes.ts';
import { length, scaled } from '../../core/balance/vectors.ts';
import { above } from '../../core/refuse.ts';
import { defineCalculator, optional } from '../define.ts';
import { direction, maybe, unbalance } from '../output.ts';
import {
  bearingSpan,
  fourthAngle,
  fourthPlace,
  fourthUnbalance,
  newPlaneA,
  newPlaneB,
  planeA,
  planeAngleA,
  planeAngleB,
  planeB,
  planeUnbalanceA,
  planeUnbalanceB,
  thirdAngle,
  thirdPlace,
  thirdUnbalance,
} from '../quantities.ts';
import { angleOf } from './arrow-results.ts';
import { planeTransferSteps } from './plane-transfer.steps.ts';

const noSpot = 'there is no unbalance in this plane';

/** What an unbalance in two planes is in two others. */
export const planeTransfer = defineCalculator({
  id: 'plane-transfer',
  title: 'From two planes to two others',
  purpose:
    'What an unbalance that is known in two planes is in two other planes along the crank, and how much of it is static.',
  asks: [
    'planeUnbalanceA',
    'planeAngleA',
    'planeUnbalanceB',
    'planeAngleB',
    'newPlaneA',
    'newPlaneB',
  ],
  answers: ['movedA', 'movedB', 'movedAngleA', 'movedAngleB', 'staticUnbalance', 'coupleUnbalance'],
  inputs: {
    planeUnbalanceA,
    planeAngleA,
    planeUnbalanceB,
    planeAngleB,
    newPlaneA,
    newPlaneB,
    planeA,
    planeB,
    bearingSpan,
    thirdUnbalance: optional(thirdUnbalance),
    thirdAngle: optional(thirdAngle),
    thirdPlace: optional(thirdPlace),
    fourthUnbalance: optional(fourthUnbalance),
    fourthAngle: optional(fourthAngle),
    fourthPlace: optional(fourthPlace),
  },
  outputs: {
    movedA: unbalance('U_A*', 'Unbalance in new plane A', {
      phrase: 'The unbalance in new plane A',
      main: true,
    }),
    movedB: unbalance('U_B*', 'Unbalance in new plane B', {
      phrase: 'The unbalance in new plane B',
      main: true,
    }),
    movedAngleA: maybe(direction('α_A*', 'Its heavy spot in new plane A, from throw 1')),
    movedAngleB: maybe(direction('α_B*', 'Its heavy spot in new plane B, from throw 1')),
    staticUnbalance: unbalance('U_st', 'Static part, halfway between the new planes'),
    coupleUnbalance: unbalance('U_cpl', 'Couple part, in each new plane, opposite'),
    staticAngle: maybe(direction('α_st', 'Heavy spot of the static part')),
    coupleAngle: maybe(direction('α_cpl', 'Heavy spot of the couple part in new plane B')),
    bearingA: unbalance('U_bA', 'At the bearing towards the nose'),
    bearingB: unbalance('U_bB', 'At the bearing towards the flywheel'),
    lightA: maybe(direction('α_LA', 'Where mass would be added in new plane A')),
    lightB: maybe(direction('α_LB', 'Where mass would be added in new plane B')),
  },
  compute(input) {
    const known = knownUnbalances(input);
    const moved = movedToPlanes(known, input);
    const half = above(input, 'bearingSpan') / 2;
    const bearings = atPlanes(known, { planeA: -half, planeB: half });
    const { together, couple } = staticAndCouple(moved);
    return {
      movedA: length(moved.atA),
      movedB: length(moved.atB),
      movedAngleA: angleOf(moved.atA, noSpot),
      movedAngleB: angleOf(moved.atB, noSpot),
      staticUnbalance: length(together),
      staticAngle: angleOf(together, 'there is no static part'),
      coupleUnbalance: length(couple),
      coupleAngle: angleOf(couple, 'there is no couple part'),
      bearingA: length(bearings.atA),
      bearingB: length(bearings.atB),
      lightA: angleOf(scaled(moved.atA, -1), noSpot),
      lightB: angleOf(scaled(moved.atB, -1), noSpot),
    };
  },
  steps: planeTransferSteps,
  limits: [
    {
      id: 'wide-apart',
      holds: ({ planeA: zA, planeB: zB, newPlaneA: nA, newPlaneB: nB }) => nB - nA >= (zB - zA) / 4,
      say: 'The new planes stand so near each other that a couple takes large unbalances there, and an error of reading grows as much.',
    },
    {
      id: 'not-outside',
      holds: ({ planeA: zA, planeB: zB, newPlaneA: nA, newPlaneB: nB }) => nA < zB && nB > zA,
      say: 'Both new planes stand beyond the same end of the known ones. The arithmetic holds; the corrections come out large and nearly opposite.',
    },
  ],
  validity: [
    {
      id: 'apart',
      label: 'New planes apart',
      symbol: 'D',
      kind: 'length',
      of: (input) => input.newPlaneB - input.newPlaneA,
      possible: [0, 6],
    },
  ],
  assumptions: [
    'The crank is stiff. A long crank that bends at speed does not take a correction in one plane for one in another.',
    'Angles count from throw 1, clockwise as one looks at the nose, in every plane alike. They point to the heavy spot.',
    'Places count from the crank’s middle, negative towards the nose.',
    'The two bearings stand alike on both sides of the crank’s middle.',
    'Static and couple part are those of the new planes: the static one stands halfway between them. About another place the couple is another.',
  ],
  cautions: ['balancing', 'weighted'],
  sources: ['bevan-2005'],
  sweep: { input: 'newPlaneB', output: 'movedA' },
  solve: { input: 'newPlaneB', output: 'movedA' },
  exercise: {
    ask: 'movedB',
    tolerance: 0.01,
    given: {
      planeUnbalanceA: 0.4,
      planeAngleA: { by: 60 },
      planeUnbalanceB: 0.4,
      planeAngleB: { by: 60 },
    },
    beside: ['wide-apart', 'not-outside'],
    also: [{ kind: 'number', ask: 'staticUnbalance' }],
  },
});
