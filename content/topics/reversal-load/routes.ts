import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  agreesBothDead: {
    kind: 'second route',
    say: 'Acceleration at both dead centres from the exact motion of piston and crankpin.',
    legs: ['reversal-load.accelerationTop'],
  },
  agreesRodMade: {
    kind: 'second route',
    say: 'The pull through each section against a rod made of many small masses, each with its own acceleration.',
  },
  linearEachMass: {
    kind: 'property',
    say: 'Each load is linear in each mass, with the slope of the place where that mass sits.',
  },
});
