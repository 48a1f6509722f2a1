import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  linearEachMass: {
    kind: 'property',
    say: 'The bobweight is linear in each mass, with the slope its formula gives.',
  },
  commonPinsLeave: {
    kind: 'closed form',
    say: 'Common pins at 90° leave nothing that rotates backward.',
    legs: ['bobweight-error.backwardForce', 'bobweight-error.backwardCouple'],
  },
  throwsAdd: {
    kind: 'closed form',
    say: 'The throws of seven layouts add up to sums known in closed form, such as √10 for a cross-plane V8.',
    legs: ['bobweight-error.coupleFactor'],
  },
  twoPlanesTogether: {
    kind: 'property',
    say: 'The unbalances of the two end planes together answer the force and the couple of all throws.',
  },
  lineForwardBackward: {
    kind: 'property',
    say: 'On an in-line engine the parts that turn forward and backward are equally large.',
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
  stiffCrank: {
    kind: 'second route',
    say: 'Plane unbalances from the reactions of a stiff crank in two bearings; the greatest primary force and couple of every layout by looking at a whole turn, each piston on a real rod.',
    legs: [
      'bobweight-error.planeUnbalance',
      'bobweight-error.pinUnbalance',
      'bobweight-error.unbalanceA',
      'bobweight-error.unbalanceB',
      'bobweight-error.fractionUnbalance',
      'bobweight-error.massFor100',
      'bobweight-error.forceAlong',
      'bobweight-error.forceAcross',
      'bobweight-error.coupleAlong',
      'bobweight-error.coupleAcross',
      'bobweight-error.primaryForce',
      'bobweight-error.primaryCouple',
    ],
  },
});
