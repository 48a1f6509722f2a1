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
});
