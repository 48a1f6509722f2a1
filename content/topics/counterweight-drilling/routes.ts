import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  passingTheTop: {
    kind: 'second route',
    say: 'A heavy spot and the machine’s mark on a turning crank, timed as each passes the top: the angle between them with and against the rotation, for every choice, leads back to the spot.',
    legs: ['unbalance-reading.heavySpot', 'unbalance-reading.lightSpot'],
  },
  correctedWrongly: {
    kind: 'second route',
    say: 'The unbalance as an arrow, corrected on the wrong side and at the mirrored angle: the length of the arrow that is left.',
    legs: ['unbalance-reading.wrongSide', 'unbalance-reading.wrongSense'],
  },
  metalByElements: {
    kind: 'second route',
    say: 'All metal that the holes remove, added element by element as arrows about the shaft, rim’s curve and drill’s point included.',
    legs: [
      'counterweight-drilling.depth',
      'counterweight-drilling.middle',
      'counterweight-drilling.left',
      'counterweight-drilling.leftAngle',
      'counterweight-drilling.firstHole',
      'counterweight-drilling.lastHole',
      'counterweight-drilling.perHole',
      'counterweight-drilling.taken',
      'counterweight-drilling.spread',
      'counterweight-drilling.most',
      'counterweight-drilling.pointShare',
      'counterweight-drilling.rimLoss',
      'counterweight-drilling.holeMass',
      'counterweight-drilling.allMass',
    ],
  },
  solvedBySearch: {
    kind: 'second route',
    say: 'The depth found by searching for where the hole takes what is asked, against the solved quadratic.',
    legs: ['counterweight-drilling.depth'],
  },
  twoCylinders: {
    kind: 'closed form',
    say: 'A flat drill as thick as the rim, sunk to the axis: the half of two crossing cylinders, whose moment is 3πR⁴/8. A cone alone, at a quarter of its height from its base.',
    legs: ['counterweight-drilling.perHole', 'counterweight-drilling.rimLoss'],
  },
  nearestWalls: {
    kind: 'second route',
    say: 'Thousands of points on the surface of one hole, and the distance of each from the next hole.',
    legs: ['counterweight-drilling.wall'],
  },
  drillsOfTheDrawer: {
    kind: 'closed form',
    say: 'Drills looked up by hand in three lists; a 118° point is 0.3004 of its diameter long.',
    legs: ['counterweight-drilling.drill', 'counterweight-drilling.tipDepth'],
  },
  drilledWithErrors: {
    kind: 'second route',
    say: 'Holes drilled too deep and aside by known amounts: the second reading is made from them, and the page has to find the errors again.',
    legs: [
      'second-spin.removed',
      'second-spin.removedAngle',
      'second-spin.amountError',
      'second-spin.angleError',
      'second-spin.firstHeavy',
      'second-spin.secondHeavy',
      'second-spin.missed',
      'second-spin.astray',
    ],
  },
  holesScale: {
    kind: 'property',
    say: 'Everything twice as large is sixteen times the unbalance; twice the density is twice as much; the whole crank turned turns the holes and changes no size.',
  },
});
