import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  impliedSplitUndoes: {
    kind: 'property',
    say: 'The implied big end, put back, gives the stated bobweight.',
  },
  splitSearched: {
    kind: 'second route',
    say: 'The big end that gives the bobweight said, found from the list of all parts in exact fractions; and found again with a part a gram or a third heavier.',
    legs: [
      'bobweight-implied.impliedBigEnd',
      'bobweight-implied.impliedSmallEnd',
      'bobweight-implied.impliedShare',
      'bobweight-implied.unsaidSwing',
      'bobweight-implied.perShellGram',
      'bobweight-implied.perRingGram',
    ],
  },
});
