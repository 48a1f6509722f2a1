import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  linearEachMass: {
    kind: 'property',
    say: 'The bobweight is linear in each mass, with the slope its formula gives.',
  },
  partByPart: {
    kind: 'second route',
    say: 'The bobweight of fourteen pins from every single part laid out in a list, in exact fractions; a part’s share is what the bobweight lacks without it.',
    legs: [
      'bobweight.bobweight',
      'bobweight.halfBobweight',
      'bobweight.rotatingPerRod',
      'bobweight.reciprocatingPerCylinder',
      'bobweight.rotating',
      'bobweight.reciprocating',
      'bobweight.carried',
      'bobweight.bobweightShare',
      'bobweight.perHundredth',
      'bobweight.bigEnds',
      'bobweight.shells',
      'bobweight.oil',
      'bobweight.smallEndsCarried',
      'bobweight.pinsCarried',
      'bobweight.locksCarried',
      'bobweight.pistonsCarried',
      'bobweight.ringsCarried',
    ],
  },
});
