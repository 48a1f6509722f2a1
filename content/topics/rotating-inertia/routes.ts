import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  agreesChangeKinetic: {
    kind: 'second route',
    say: 'The inertia torque as a force times a lever against the change of kinetic energy, T = −½ ω² dI/dθ, at any angle and for any rod.',
    legs: ['rotating-inertia.torqueAmplitude'],
  },
  takesMeanShare: {
    kind: 'second route',
    say: 'The share with which a mass going up and down counts, from 7200 energies of a turn, each from a drawn triangle of crank and rod.',
    legs: ['rotating-inertia.reciprocatingShare', 'rotating-inertia.reciprocatingPart'],
  },
  shareAgreesSeries: {
    kind: 'closed form',
    say: 'That share against its series in λ, to the sixth power.',
    legs: ['rotating-inertia.reciprocatingShare'],
  },
  discThinRing: {
    kind: 'closed form',
    say: 'A ring is one disc less another.',
    legs: ['rotating-inertia.flywheelComputed'],
  },
  hasNoMean: {
    kind: 'property',
    say: 'No mean inertia torque at steady speed, for random masses, rods and speeds: less than a part in 10¹² of its size.',
  },
  growsEachMass: {
    kind: 'property',
    say: 'The inertia is linear in each mass, with the slope of the place where that mass sits.',
  },
  byEnergy: {
    kind: 'second route',
    say: 'Inertia, power and mass on the road from kinetic energy, averaged over 720 places of a turn with the pistons’ speeds as differences of positions, for fourteen engines.',
    legs: [
      'rotating-inertia.totalInertia',
      'rotating-inertia.equivalentMass',
      'rotating-inertia.flywheelPart',
      'rotating-inertia.bigEndsPart',
      'rotating-inertia.reciprocatingPart',
      'rotating-inertia.wheelShare',
      'rotating-inertia.movingShare',
      'rotating-inertia.risePower',
      'rotating-inertia.energyHeld',
      'rotating-inertia.energyHeight',
      'rotating-inertia.flywheelRoad',
      'rotating-inertia.clutchRoad',
      'rotating-inertia.crankRoad',
      'rotating-inertia.damperRoad',
      'rotating-inertia.movingRoad',
      'rotating-inertia.savedRoad',
      'rotating-inertia.savedFlywheel',
      'rotating-inertia.savedClutch',
      'rotating-inertia.savedCrank',
      'rotating-inertia.savedDamper',
      'rotating-inertia.savedMoving',
    ],
  },
});
