import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  halfInertiaHas: {
    kind: 'property',
    say: 'Half the inertia has twice the speed ripple.',
  },
});
