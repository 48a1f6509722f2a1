import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  agreesAddingForces: {
    kind: 'second route',
    say: 'What a counterweight leaves of the reciprocating force, against adding the forces as arrows.',
  },
  turnedWithRods: {
    kind: 'second route',
    say: 'The primary forces of fourteen cranks from the way of the pistons on real rods, differentiated by differences and split by a Fourier sum into what rotates with and against the crank.',
    legs: [
      'partial-balance.balanceMass',
      'partial-balance.inertiaForce',
      'partial-balance.forward',
      'partial-balance.backwardShare',
      'partial-balance.backward',
      'partial-balance.forwardLeft',
      'partial-balance.residual',
      'partial-balance.residualGreatest',
      'partial-balance.residualLeast',
    ],
  },
  overATurn: {
    kind: 'second route',
    say: 'Every ready layout and an uneven one, with seven balance factors: the exact motion of its pistons over a turn, what comes once in it, and a counterweight opposite each throw, added up as arrows at 720 angles.',
    legs: [
      'factor-left.forceMost',
      'factor-left.forceLeast',
      'factor-left.forceAxis',
      'factor-left.coupleMost',
      'factor-left.coupleLeast',
      'factor-left.coupleAxis',
      'factor-left.forcePerCent',
      'factor-left.couplePerCent',
      'factor-left.inertiaForce',
      'factor-left.forwardForce',
      'factor-left.backwardForce',
      'factor-left.forwardCouple',
      'factor-left.backwardCouple',
    ],
  },
  everyFactorTried: {
    kind: 'second route',
    say: 'The factor that leaves least, and the one that leaves a line, by trying a thousand of them on every ready layout.',
    legs: ['factor-left.leastFactor', 'factor-left.lineFactor'],
  },
  pinsByHand: {
    kind: 'closed form',
    say: 'Rods and bobweight of a pin of every ready layout by hand, and the layouts that need none.',
    legs: ['factor-left.rods', 'factor-left.pinBobweight', 'factor-left.bobweights'],
  },
  singleByFactor: {
    kind: 'closed form',
    say: 'A single: 1 − f of its primary force along the bore, f across it.',
    legs: ['factor-left.forceMost', 'factor-left.forceLeast', 'factor-left.forceAxis'],
  },
  twinByAngle: {
    kind: 'closed form',
    say: 'V-twins of eight bank angles: F₁ |cos γ| backward, |1 − 2f| F₁ forward, and the line at ½(1 − |cos γ|).',
    legs: ['factor-left.forceMost', 'factor-left.forceLeast', 'factor-left.lineFactor'],
  },
  evenSix: {
    kind: 'closed form',
    say: 'The evenly firing V6 at 90°: its couple lies in one plane with (√3 − 1)/2, twice as great as the circle that one half leaves.',
    legs: ['factor-left.lineFactor', 'factor-left.coupleMost', 'factor-left.coupleLeast'],
  },
  fourHasNone: {
    kind: 'closed form',
    say: 'In-line four and six, flat four and V12 have nothing primary with any factor.',
    legs: ['factor-left.forceMost', 'factor-left.coupleMost'],
  },
});
