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
  smallMasses: {
    kind: 'second route',
    say: 'Every load of fourteen engines from accelerations that are differences of positions, with the rod metal as a thousand small masses; speeds of equal load searched by halving.',
    legs: [
      'reversal-load.bossPull',
      'reversal-load.eyePull',
      'reversal-load.shankPull',
      'reversal-load.reciprocatingPull',
      'reversal-load.partingPull',
      'reversal-load.crankpinPull',
      'reversal-load.commonPull',
      'reversal-load.missedShiftPull',
      'reversal-load.missedShiftExcess',
      'reversal-load.suction',
      'reversal-load.suctionShare',
      'reversal-load.eyePullClosed',
      'reversal-load.partingPullClosed',
      'reversal-load.bottomPush',
      'reversal-load.reciprocating',
      'reversal-load.accelerationTop',
      'reversal-load.accelerationBottom',
      'reversal-load.equalLoadSpeed',
      'reversal-load.equalEyeSpeed',
      'reversal-load.equalReciprocatingSpeed',
    ],
  },
});
