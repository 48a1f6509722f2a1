import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  ringSideClearance: {
    kind: 'second route',
    say: 'The gas round the ring, with the ring held, shut off and flying, against the same equations solved by SciPy’s Radau method: pressures and leak to 5 parts in 10⁴, moves of the ring to 0.2° of crank.',
    legs: [
      'gas-port.shortfall',
      'gas-port.shortfallUnported',
      'gas-port.shutShortfall',
      'gas-port.peakLand',
      'gas-port.leak',
      'gas-port.lag',
      'gas-port.lagUnported',
      'gas-port.liftAngle',
      'gas-port.landingAngle',
    ],
  },
  noPortsRing: {
    kind: 'second route',
    say: 'The shortfall against side clearance and against the holes’ diameter, beside a table worked earlier with a coarser model.',
    legs: ['gas-port.shutShortfallPlugged', 'gas-port.peakShare'],
  },
  massClosesOver: {
    kind: 'property',
    say: 'The gas that flows in over a cycle is the gas that flows out, to 1 part in 10⁹.',
  },
  comesPressuresSay: {
    kind: 'second route',
    say: 'What left past the second ring, summed again from the pressures by another rule.',
  },
  noAreaLeaves: {
    kind: 'closed form',
    say: 'With no area to flow through the pressures stay what they were.',
  },
  largeAreaFollows: {
    kind: 'closed form',
    say: 'With a large area the pressure behind is the cylinder’s, to 3 parts in 10⁴.',
  },
  blowDownIntegrated: {
    kind: 'closed form',
    say: 'A vessel emptying through a choked hole, integrated, against its closed forms with and without heat from the wall.',
    legs: ['orifice-flow.emptyWall', 'orifice-flow.emptyAlone', 'orifice-flow.timeConstant'],
  },
  chokedHoleFills: {
    kind: 'closed form',
    say: 'A choked hole fills a vessel along a straight line.',
  },
  slotFilmParabola: {
    kind: 'second route',
    say: 'The film in the side clearance, summed in twenty thousand pieces along its length.',
  },
  dampsFarToo: {
    kind: 'property',
    say: 'The integrator is of third order, and a component a hundred million times too fast does not disturb it.',
  },
});
