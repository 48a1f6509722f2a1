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
});
