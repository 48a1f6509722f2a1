import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  linearEachMass: {
    kind: 'property',
    say: 'The bobweight is linear in each mass, with the slope its formula gives.',
  },
  impliedSplitUndoes: {
    kind: 'property',
    say: 'The implied big end, put back, gives the stated bobweight.',
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
  agreesAddingForces: {
    kind: 'second route',
    say: 'What a counterweight leaves of the reciprocating force, against adding the forces as arrows.',
  },
});
