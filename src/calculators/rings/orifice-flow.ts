import {
  blowDownTime,
  chokedTime,
  criticalRatio,
  flowFunction,
  orificeFlow as flowOf,
} from '../../core/rings/orifice-flow.ts';
import { defineCalculator } from '../define.ts';
import { orificeSteps } from './orifice-flow.steps.ts';
import {
  dischargeCoefficient,
  downstreamPressure,
  gasConstant,
  gasTemperature,
  heatRatio,
  orificeArea,
  pressureShare,
  upstreamPressure,
  vesselVolume,
} from '../quantities.ts';
import { gasDensity, mass, pressure, ratio, shortTime, speed, temperature } from '../output.ts';

/** Gas through a hole: what passes, when it chokes, how long a vessel takes to empty. */
export const orificeFlow = defineCalculator({
  id: 'orifice-flow',
  title: 'Gas through a hole',
  purpose:
    'How much gas passes a hole between two pressures, when it chokes, and how fast a vessel empties through it.',
  asks: [
    'upstreamPressure',
    'downstreamPressure',
    'orificeArea',
    'dischargeCoefficient',
    'heatRatio',
    'gasTemperature',
  ],
  answers: [
    'massFlow',
    'chokedFlow',
    'pressureRatio',
    'chokingRatio',
    'throatPressure',
    'timeConstant',
  ],
  inputs: {
    upstreamPressure,
    downstreamPressure,
    orificeArea,
    dischargeCoefficient,
    gasTemperature,
    heatRatio,
    gasConstant,
    vesselVolume,
    pressureShare,
  },
  outputs: {
    massFlow: mass('q_m', 'Mass that passes in one second', {
      phrase: 'The mass of gas that passes the hole in one second',
      main: true,
    }),
    chokedFlow: mass('q_max', 'The most it would pass, choked'),
    pressureRatio: ratio('r', 'Pressure after over pressure before'),
    chokingRatio: ratio('r*', 'The hole chokes at and below'),
    flowNumber: ratio('ψ', 'Flow function'),
    throatPressure: pressure('p_t', 'Pressure at the throat'),
    throatTemperature: temperature('T_t', 'Temperature at the throat'),
    throatDensity: gasDensity('ρ_t', 'Density at the throat'),
    throatSpeed: speed('v_t', 'Speed at the throat'),
    throatMach: ratio('M_t', 'Speed over the speed of sound there'),
    timeConstant: shortTime('τ', 'Time constant of the vessel'),
    emptyWall: shortTime('t_w', 'Time to empty to the stated share, gas as warm as the wall'),
    emptyAlone: shortTime('t_a', 'The same with no heat from the wall'),
  },
  compute: (input) => {
    const flow = flowOf(input, input);
    const ratio = input.downstreamPressure / input.upstreamPressure;
    const most = flowOf({ ...input, downstreamPressure: 0 }, input).massFlow;
    const tau = chokedTime(input, input);
    return {
      massFlow: flow.massFlow,
      chokedFlow: most,
      pressureRatio: ratio,
      chokingRatio: criticalRatio(input.heatRatio),
      flowNumber: flowFunction(ratio, input.heatRatio),
      throatPressure: flow.throatPressure,
      throatTemperature: flow.throatTemperature,
      throatDensity: flow.throatDensity,
      throatSpeed: flow.throatSpeed,
      throatMach: flow.throatMach,
      timeConstant: tau,
      emptyWall: blowDownTime(input.pressureShare, tau, input.heatRatio, true),
      emptyAlone: blowDownTime(input.pressureShare, tau, input.heatRatio, false),
    };
  },
  steps: orificeSteps,
  limits: [
    {
      id: 'vessel-choked',
      holds: ({
        pressureShare: share,
        downstreamPressure: after,
        upstreamPressure: before,
        heatRatio: γ,
      }) => after <= share * before * criticalRatio(γ),
      say: 'Before the vessel has emptied to the stated share, the hole is no longer choked: it then takes longer than the time shown.',
    },
  ],
  validity: [
    {
      id: 'pressure-ratio',
      label: 'Pressure after over pressure before',
      symbol: 'r',
      kind: 'ratio',
      of: (_, { pressureRatio }) => pressureRatio,
      possible: [0, 1],
    },
    {
      id: 'heat-ratio',
      label: 'Ratio of specific heats',
      symbol: 'γ',
      kind: 'ratio',
      of: (input) => input.heatRatio,
      possible: [1, 1.67],
    },
  ],
  assumptions: [
    'A perfect gas with one ratio of specific heats, at rest before the hole.',
    'No friction and no heat up to the throat. What friction and contraction take is the discharge coefficient.',
    'The vessel’s times hold while the hole is choked and the vessel’s temperature is the one before the hole.',
    'The coefficient is one number. In truth it changes with the pressure ratio: a sharp edge passes more when it chokes hard.',
  ],
  cautions: [],
  sources: ['cengel-boles', 'fox-mcdonald', 'moran-shapiro', 'heywood-1988'],
  sweep: { input: 'downstreamPressure', output: 'massFlow' },
  solve: { input: 'orificeArea', output: 'massFlow' },
  exercise: {
    ask: 'chokedFlow',
    tolerance: 0.02,
    given: { upstreamPressure: 0.2, orificeArea: 0.3, gasTemperature: { by: 40 } },
    also: [
      {
        kind: 'number',
        ask: 'throatPressure',
        given: { upstreamPressure: 0.2, downstreamPressure: 0.2, heatRatio: 0.03 },
      },
      { kind: 'choice', ask: 'chokedFlow', given: { upstreamPressure: 0.2, orificeArea: 0.3 } },
    ],
  },
});
