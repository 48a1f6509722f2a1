import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  agreesPartFollowed: {
    kind: 'second route',
    say: 'A part on two wires followed through its swing step by step.',
    legs: ['bench-swing.partInertia'],
  },
  swingUndoesItself: {
    kind: 'property',
    say: 'From inertia to time and back, on every rig.',
  },
  bothEndsAny: {
    kind: 'property',
    say: 'Both ends of any rod give back its centre of gravity and its inertia.',
  },
  swingEnergy: {
    kind: 'second route',
    say: 'Inertias from swings, the stiffness of each rig being the curvature of its potential energy on exact wires or edge, and the inertia searched until the period is the measured one.',
    legs: [
      'bench-swing.partInertia',
      'bench-swing.gyration',
      'bench-swing.swingPeriod',
      'bench-swing.wholeInertia',
      'bench-swing.takenOff',
      'bench-swing.timeWeight',
      'rod-swing.rodInertia',
      'rod-swing.gyration',
      'rod-swing.fromSmallEnd',
      'rod-swing.fromBigEnd',
      'rod-swing.smallEndString',
      'rod-swing.bigEndString',
      'rod-swing.compactness',
    ],
  },
});
