import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  spansOnLine: {
    kind: 'second route',
    say: 'Both journals as spans on one line, in exact fractions, with one size changed at a time.',
    legs: [
      'crank-overlap.overlap',
      'crank-overlap.share',
      'crank-overlap.touchingStroke',
      'crank-overlap.byMain',
      'crank-overlap.byPin',
      'crank-overlap.byStroke',
    ],
  },
});
