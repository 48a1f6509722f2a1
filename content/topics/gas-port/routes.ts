import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  ringSideClearance: {
    kind: 'second route',
    say: 'The gas round the ring, with the ring held, shut off and flying, against the same equations solved by SciPy’s Radau method: pressures and leak to 1 part in 10³, moves of the ring to 0.2° of crank.',
    legs: [
      'gas-port.shortfall',
      'gas-port.shortfallUnported',
      'gas-port.shutShortfall',
      'gas-port.peakLand',
      'gas-port.leak',
      'gas-port.lag',
      'gas-port.lagUnported',
      'gas-port.shutLag',
      'gas-port.liftAngle',
      'gas-port.landingAngle',
    ],
  },
  noPortsRing: {
    kind: 'second route',
    say: 'The shortfall against side clearance and against the holes’ diameter, beside a table worked earlier with a coarser model.',
    legs: ['gas-port.shutShortfallPlugged', 'gas-port.peakShare'],
  },
  cycleRepeats: {
    kind: 'property',
    say: 'The cycle repeats to 5 parts in 10⁴, and the gas that flows in less what flows out is what is held more, to 1 part in 10¹¹.',
  },
  drawnAnywhere: {
    kind: 'property',
    say: 'Four hundred sets drawn from the whole of the possible ranges and beyond are refused by the name of a field, or worked with every pressure between those that drive it and the ring between its flanks.',
  },
  shorterSteps: {
    kind: 'property',
    say: 'Forty sets drawn from the usual ranges, worked again in steps ten times as short, agree to 1 part in 100.',
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
    say: 'The space behind the ring, filled through a choked hole, along a straight line.',
  },
  chokedHoleEmpties: {
    kind: 'closed form',
    say: 'The same space emptied through a choked hole, along e^(−t/τ).',
  },
  seriesDiesAway: {
    kind: 'closed form',
    say: 'Both spaces in series behind laminar films, with a little difference of pressure, die away by the two rates of a matrix.',
  },
  freeFlight: {
    kind: 'closed form',
    say: 'A ring that nothing holds goes on straight while the piston slows under it, and meets the upper flank where the piston’s exact motion says.',
    legs: ['gas-port.liftAngle'],
  },
  loadsByHand: {
    kind: 'closed form',
    say: 'Mean gas pressure and friction work over each stroke under constant pressures, by hand.',
    legs: [
      'gas-port.gasCompression',
      'gas-port.gasPower',
      'gas-port.gasExhaust',
      'gas-port.gasIntake',
      'gas-port.greatestGas',
      'gas-port.leastGas',
      'gas-port.frictionCompressionLow',
      'gas-port.frictionCompressionHigh',
      'gas-port.frictionPowerLow',
      'gas-port.frictionPowerHigh',
      'gas-port.frictionExhaustLow',
      'gas-port.frictionExhaustHigh',
      'gas-port.frictionIntakeLow',
      'gas-port.frictionIntakeHigh',
      'gas-port.frictionLow',
      'gas-port.frictionHigh',
    ],
  },
  hotGaps: {
    kind: 'closed form',
    say: 'The end gaps as they run, by the growth of two circles worked by hand.',
    legs: ['gas-port.hotGap1', 'gas-port.hotGap2'],
  },
  slotFilmParabola: {
    kind: 'second route',
    say: 'The film in the side clearance, summed in twenty thousand pieces along its length.',
  },
  secondOrder: {
    kind: 'property',
    say: 'The steps are of second order where the pressure behind lags.',
  },
});
