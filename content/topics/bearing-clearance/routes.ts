import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  givesWayRings: {
    kind: 'second route',
    say: 'How a ring gives way, against its displacement stepped through the wall by a differential equation, to 1 part in 10⁶.',
    legs: ['bearing-crush.housingGrowth', 'bearing-crush.opening', 'bearing-clearance.opening'],
  },
  openedHousingClosed: {
    kind: 'second route',
    say: 'At any temperature the opened housing and the closed shells meet at one diameter.',
    legs: [
      'bearing-crush.pressureHot',
      'bearing-crush.pressureCold',
      'bearing-clearance.pressureHot',
      'bearing-clearance.pressureCold',
    ],
  },
  stiffShellsOpen: {
    kind: 'closed form',
    say: 'Stiff shells open the bore by their whole interference; in a rigid eye thin shells add nothing.',
    legs: ['bearing-clearance.predicted'],
  },
  hoopRigidEye: {
    kind: 'closed form',
    say: 'A thin shell in a rigid eye is a hoop: stress by strain alone.',
  },
  balancesHalfRing: {
    kind: 'closed form',
    say: 'The hoop stress summed through the wall holds the pressure over half the ring.',
    legs: ['bearing-crush.shellHoop', 'bearing-crush.jointForce'],
  },
  halvesCountTogether: {
    kind: 'closed form',
    say: 'The interference of both halves is two crush heights over π.',
    legs: ['bearing-crush.interference'],
  },
  checkingLoadShell: {
    kind: 'closed form',
    say: 'The checking load of one shell by hand from the printed formula.',
    legs: ['bearing-crush.checkLoad'],
  },
  letsGoLoose: {
    kind: 'property',
    say: 'Pressure ends exactly at the loose temperature, for any fit.',
  },
  usedUpExactly: {
    kind: 'property',
    say: 'With the crush that just touches, nothing is left of the interference when running.',
  },
  allOneMetal: {
    kind: 'property',
    say: 'All of one metal at one temperature: the clearance grows as the metal does, and the pressure stays.',
  },
  rigidShellWas: {
    kind: 'property',
    say: 'Without crush, clearance and the gap behind the shells add up to free growth.',
  },
  clearanceGapBehind: {
    kind: 'property',
    say: 'Clearance has no step where the shells go loose.',
  },
  ringsThroughWall: {
    kind: 'second route',
    say: 'Shells and big end as two rings followed through their walls, the pressure and the temperature at which it ends searched by halving, for fourteen fits.',
    legs: [
      'bearing-clearance.clearance',
      'bearing-clearance.clearanceHot',
      'bearing-clearance.clearanceCold',
      'bearing-clearance.computed',
      'bearing-clearance.opening',
      'bearing-clearance.pressureShop',
      'bearing-clearance.pressureHot',
      'bearing-clearance.pressureCold',
      'bearing-clearance.loose',
      'bearing-clearance.gapHot',
      'bearing-clearance.freeHot',
      'bearing-crush.pressureShop',
      'bearing-crush.pressureHot',
      'bearing-crush.pressureCold',
      'bearing-crush.interference',
      'bearing-crush.loose',
      'bearing-crush.opening',
      'bearing-crush.housingGrowth',
    ],
  },
});
