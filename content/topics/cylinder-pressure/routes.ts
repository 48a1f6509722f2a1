import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  enginePressuresPeak: {
    kind: 'second route',
    say: 'Pressures, peak and work of fourteen engines against the first law solved as a differential equation in the crank angle, with adaptive steps, by a general numerical library, to 1 part in 10⁷.',
    legs: [
      'cylinder-pressure.peakPressure',
      'cylinder-pressure.peakAngle',
      'cylinder-pressure.openingTemperature',
      'cylinder-pressure.grossWork',
    ],
  },
  closesIntakeClosing: {
    kind: 'property',
    say: 'From intake closing to exhaust opening the heat released is work, stored energy and heat to the walls, to 1 part in 10⁶ by an adaptive quadrature of its own, for random engines.',
  },
  addsUpOver: {
    kind: 'second route',
    say: 'The work of all four strokes against an adaptive quadrature of its own.',
    legs: ['cylinder-pressure.netMep', 'cylinder-pressure.pumpingMep'],
  },
  givesIdealOtto: {
    kind: 'closed form',
    say: 'With an instantaneous burn and valves at the dead centres the cycle is the ideal Otto cycle: efficiency, peak and greatest temperature from their formulae.',
    legs: [
      'cylinder-pressure.efficiency',
      'cylinder-pressure.hottest',
      'cylinder-pressure.startTemperature',
    ],
  },
  halfBurnsHas: {
    kind: 'closed form',
    say: 'Half of what burns has burnt at the angle of half burning.',
    legs: ['cylinder-pressure.halfBurnt'],
  },
  steppedFirstLaw: {
    kind: 'second route',
    say: 'Pressure, work and heat of fourteen engines as states of one differential equation stepped with the first law, the open strokes by quadrature, power as the cycles’ work in a second.',
    legs: [
      'cylinder-pressure.peakPressure',
      'cylinder-pressure.worstPeak',
      'cylinder-pressure.peakForce',
      'cylinder-pressure.netMep',
      'cylinder-pressure.grossMep',
      'cylinder-pressure.friction',
      'cylinder-pressure.brakeMep',
      'cylinder-pressure.torque',
      'cylinder-pressure.indicatedPower',
      'cylinder-pressure.power',
      'cylinder-pressure.efficiency',
      'cylinder-pressure.closingPressure',
      'cylinder-pressure.closingRatio',
      'cylinder-pressure.openingPressure',
      'cylinder-pressure.trappedMass',
      'cylinder-pressure.fuelMass',
      'cylinder-pressure.released',
      'cylinder-pressure.grossWork',
      'cylinder-pressure.storedEnergy',
      'cylinder-pressure.wallBurning',
      'cylinder-pressure.wallPolytropes',
    ],
  },
});
