import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  slugByElements: {
    kind: 'second route',
    say: 'Slugs and the steel that they replace, cut into thousands of elements, each an arrow about the shaft; the same elements turning, each with its own pull.',
    legs: [
      'heavy-metal.perSlug',
      'heavy-metal.slugMass',
      'heavy-metal.massGain',
      'heavy-metal.together',
      'heavy-metal.spread',
      'heavy-metal.left',
      'heavy-metal.oppositeHole',
      'heavy-metal.pull',
      'heavy-metal.overPull',
    ],
  },
  oneAfterAnother: {
    kind: 'second route',
    say: 'Slugs added one after another as arrows until they are enough; a slug made longer and shorter by halving until nothing is left to add.',
    legs: ['heavy-metal.slugsNeeded', 'heavy-metal.lengthNeeded'],
  },
  nearestMetal: {
    kind: 'second route',
    say: 'Hundreds of points on the surface of one slug, and the distance of each from the rim and from the next slug.',
    legs: ['heavy-metal.rimWall', 'heavy-metal.besideWall'],
  },
  followedThroughWalls: {
    kind: 'second route',
    say: 'Slug and ring followed through their walls by a differential equation, cold and warm, and the pressure at which they meet.',
    legs: [
      'heavy-metal.pressure',
      'heavy-metal.boreHoop',
      'heavy-metal.warmPressure',
      'heavy-metal.warmInterference',
      'heavy-metal.lost',
      'heavy-metal.looseTemperature',
    ],
  },
  limitsOfTheRing: {
    kind: 'closed form',
    say: 'A thin ring is a hoop, pressed by t/R of its stress; in metal without end the hoop stress is the pressure; one metal throughout gives half the modulus times the strain.',
    legs: ['heavy-metal.pressure', 'heavy-metal.boreHoop'],
  },
  byHand: {
    kind: 'closed form',
    say: 'A slug of 19 mm and 18 mm by hand: 87 g, of which 47 g are gained; 77 g at 60 mm pull 3.6 kN at 8400 revolutions a minute, and what that is over two ligaments.',
    legs: [
      'heavy-metal.slugMass',
      'heavy-metal.massGain',
      'heavy-metal.pull',
      'heavy-metal.rimStress',
      'heavy-metal.besideStress',
      'heavy-metal.classSwing',
      'heavy-metal.density',
    ],
  },
  slugsScale: {
    kind: 'property',
    say: 'Everything twice as large is sixteen times the unbalance and the pull, at the same stress; the interference in proportion leaves the pressure as it is.',
  },
});
