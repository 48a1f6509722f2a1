import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  everyWay: {
    kind: 'second route',
    say: 'Twelve engines put together in every way, by a program of its own that counts in whole micrograms; the cut from the mass that is left.',
    legs: [
      'part-matching.spread',
      'part-matching.leastSpread',
      'part-matching.listedSpread',
      'part-matching.heaviest',
      'part-matching.lightest',
      'part-matching.mostOff',
      'part-matching.cutDepth',
      'part-matching.pinSpread',
    ],
  },
  everyOrder: {
    kind: 'second route',
    say: 'The search, and its proof, against every order of every list, for hundreds of small engines.',
  },
  everyPair: {
    kind: 'second route',
    say: 'Partners on a pin against every pairing of six rods.',
  },
  madeAlike: {
    kind: 'closed form',
    say: 'Sixteen sets that were made alike and then mixed: the least spread is nought, so all that is found must be called open.',
    legs: ['part-matching.unproved'],
  },
  plainCut: {
    kind: 'closed form',
    say: 'A cubic centimetre of aluminium, 2.7 g, cut from a thousand square millimetres is 1 mm deep.',
    legs: ['part-matching.cutDepth'],
  },
});
