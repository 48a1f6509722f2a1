import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  countedByHand: {
    kind: 'closed form',
    say: 'Pins, halves, rods, cylinders, bobweights and bank angle of every ready layout, counted by hand from what it is called.',
    legs: [
      'crank-layout.pins',
      'crank-layout.places',
      'crank-layout.rodsPerPin',
      'crank-layout.cylinders',
      'crank-layout.bobweights',
      'crank-layout.bankAngle',
    ],
  },
  inTwoBearings: {
    kind: 'second route',
    say: 'A crank with the same mass on every throw, turned in two bearings: both stay without a load exactly where no bobweights are called for.',
    legs: ['crank-layout.bobweights', 'crank-layout.forceFactor', 'crank-layout.coupleFactor'],
  },
  lookedAtAllRound: {
    kind: 'second route',
    say: 'Every piston’s pull along its bore, and a counterweight opposite each throw, added up all round a turn for every factor from 0 to 100 per cent: the greatest that is left, and that 50 per cent leaves the least.',
    legs: [
      'crank-layout.forceLeft',
      'crank-layout.coupleLeft',
      'crank-layout.reciprocatingFraction',
    ],
  },
  leftInClosedForm: {
    kind: 'closed form',
    say: 'What one half leaves: cos γ of F₁ on the pin of a V-twin, ½ of a single, √3/2 on an in-line three, (√3 − 1)/2 times √(3/2) on an evenly firing V6 at 90°.',
    legs: ['crank-layout.forceLeft', 'crank-layout.coupleLeft'],
  },
  twentiethOver: {
    kind: 'closed form',
    say: 'Five per cent more speed pulls by 1.05² − 1, which is 10.25 per cent, more; a rod of one and a half strokes has the ratio 1.5.',
    legs: ['crank-layout.overRevRise', 'crank-layout.rodRatio'],
  },
});
