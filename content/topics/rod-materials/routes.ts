import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  sectionStretchStretches: {
    kind: 'property',
    say: 'The section for the stretch stretches by just that, the section for the margin has just that margin, for every metal of the table.',
  },
  equalStretchCompares: {
    kind: 'closed form',
    say: 'At equal stretch the masses of two metals stand as density over modulus, whatever the duty.',
    legs: ['rod-materials.stretchMass'],
  },
  pageComparesOne: {
    kind: 'property',
    say: 'What the page compares at one duty is what each metal gives at that duty.',
  },
});
