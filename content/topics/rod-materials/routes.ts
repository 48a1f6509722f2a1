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
  sectionSearched: {
    kind: 'second route',
    say: 'Each section searched by halving until amplitude, yield or stretch is met, in a thousand slices, for fourteen duties; two metals at one duty by working both.',
    legs: [
      'rod-materials.marginMass',
      'rod-materials.stretchMass',
      'rod-materials.bothMass',
      'rod-materials.marginArea',
      'rod-materials.stretchArea',
      'rod-materials.bothArea',
      'rod-materials.fatigueArea',
      'rod-materials.yieldArea',
      'rod-materials.marginStretch',
      'rod-materials.growth',
      'rod-materials.pull',
      'rod-materials.push',
      'rod-materials.amplitudeForce',
      'rod-materials.sectionMass',
      'rod-materials.sectionStretch',
      'rod-materials.sectionMargin',
      'rod-materials.sectionMassRatio',
      'rod-materials.sectionStretchRatio',
      'rod-materials.marginAreaRatio',
      'rod-materials.marginMassRatio',
      'rod-materials.marginStretchRatio',
      'rod-materials.stretchAreaRatio',
      'rod-materials.stretchMassRatio',
    ],
  },
});
