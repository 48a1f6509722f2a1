import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  energyPutEnergy: {
    kind: 'second route',
    say: 'Without loss, the work put in at the crank is the energy held by car, wheels and engine.',
    legs: ['inertia-through-gears.massFactor'],
  },
  agreesTorqueLeft: {
    kind: 'second route',
    say: 'With loss, the force at the tyres from the torque that is left after the engine has sped itself up.',
    legs: ['inertia-through-gears.drivingMass'],
  },
});
