import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  alwaysEqualsRod: {
    kind: 'property',
    say: 'The ends always add up to the rod, wherever the supports sit: the sum cannot find a misplaced support.',
  },
  rodLyingMm: {
    kind: 'closed form',
    say: 'What a rod lying off both supports moves, for the invented road rod.',
  },
  weighedInFractions: {
    kind: 'second route',
    say: 'Means, spreads, the ± of a mean and what a misplaced support moves, by statistics and statics in exact fractions, for fourteen rods.',
    legs: [
      'rod-weighing.closureTolerance',
      'rod-weighing.closureRatio',
      'rod-weighing.bigEndMass',
      'rod-weighing.smallEndMass',
      'rod-weighing.bigEndSpread',
      'rod-weighing.smallEndSpread',
      'rod-weighing.bigEndPlusMinus',
      'rod-weighing.smallEndPlusMinus',
      'rod-weighing.endSum',
      'rod-weighing.closure',
      'rod-weighing.centreFromBigEnd',
      'rod-weighing.bigEndShare',
      'rod-weighing.supportShift',
      'rod-weighing.bigSupportShift',
      'rod-weighing.smallSupportShift',
      'rod-weighing.pieceMass',
      'rod-weighing.scaleError',
    ],
  },
});
