import {
  bearingState,
  computedClearance,
  journalTemperature,
  predictedClearance,
} from '../../core/bearings/bearing-clearance.ts';
import { crushOpening, looseTemperature } from '../../core/bearings/bearing-fit.ts';
import { difference } from '../../core/math/difference.ts';
import { atLeast } from '../../core/refuse.ts';
import { looseOrAbsent } from './bearing-clearance.shared.ts';
import { bearingClearanceSteps } from './bearing-clearance.steps.ts';
import { defineCalculator, optional } from '../define.ts';
import {
  assemblyTemperature,
  coldStartTemperature,
  crankExpansion,
  crankpinDiameter,
  crankpinTemperature,
  crushHeight,
  housingOutside,
  housingPoisson,
  journalOutOfRound,
  journalTaper,
  rodClearance,
  rodExpansion,
  rodHousing,
  rodShellWall,
  rodTemperature,
  shellExpansion,
  shellModulus,
  youngsModulus,
} from '../quantities.ts';
import {
  axis,
  clearanceRatio,
  contactPressure,
  curve,
  fineLength,
  length,
  maybe,
  temperature,
} from '../output.ts';

/** [m] More than this between the gauge and what the parts predict is asked about. */
const apart = 0.008e-3;
/** Common practice: least and greatest clearance over the journal's diameter (thou per inch). */
const practice = { low: 0.75e-3, high: 1e-3 } as const;
/** Points of the curves, and how far past running they go [K]. */
const sampled = { points: 61, beyond: 40 } as const;

/** Rod bearing clearance cold, in the shop and running, with the crush that heat takes first. */
export const bearingClearance = defineCalculator({
  id: 'bearing-clearance',
  title: 'Bearing clearance',
  purpose:
    'The clearance of a rod bearing from its parts and as gauged, and what cold and heat make of it.',
  asks: [
    'rodHousing',
    'rodShellWall',
    'crankpinDiameter',
    'rodClearance',
    'rodTemperature',
    'crankpinTemperature',
  ],
  answers: [
    'clearance',
    'clearanceHot',
    'clearanceCold',
    'gaugeDifference',
    'leastClearance',
    'greatestClearance',
  ],
  inputs: {
    rodHousing,
    rodShellWall,
    crankpinDiameter,
    rodClearance: optional(rodClearance),
    journalOutOfRound,
    journalTaper,
    crushHeight,
    housingOutside,
    youngsModulus,
    housingPoisson,
    shellModulus,
    rodExpansion,
    shellExpansion,
    crankExpansion,
    assemblyTemperature,
    coldStartTemperature,
    rodTemperature,
    crankpinTemperature,
  },
  outputs: {
    clearance: length('c_0', 'Measured oil clearance in the shop, or predicted from the parts', {
      phrase: 'The clearance in the shop',
      main: true,
    }),
    clearanceHot: length('c_hot', 'Clearance running', { phrase: 'Running, it' }),
    clearanceCold: length('c_cold', 'Clearance at the coldest start', {
      phrase: 'At the coldest start it',
    }),
    computed: length('c_calc', 'Housing bore less two shells less journal'),
    opening: length('Δ_cr', 'What the crush opens the bore by'),
    predicted: length('c_pred', 'Both together: what a gauge should read'),
    gaugeDifference: maybe(length('Δ_g', 'Gauged, above what was predicted')),
    leastClearance: length('c_min', 'Least clearance round and along the journal'),
    greatestClearance: length('c_max', 'Greatest clearance round and along the journal'),
    perDiameter: clearanceRatio('ψ', 'Clearance over diameter', {
      phrase: 'The clearance over the diameter',
    }),
    practiceLow: fineLength('c_0.75', 'Rule of 0.75 thou per inch (common practice)'),
    practiceHigh: fineLength('c_1', 'Rule of 1 thou per inch (common practice)'),
    pressureShop: contactPressure('p_0', 'Pressure behind the shells, in the shop'),
    pressureHot: contactPressure('p_hot', 'Pressure behind the shells, running', {
      phrase: 'The pressure behind the shells, running,',
    }),
    pressureCold: contactPressure('p_cold', 'Pressure behind the shells, at the coldest start'),
    loose: maybe(temperature('T_loose', 'Rod temperature at which the shells go loose')),
    gapHot: length('g_hot', 'Gap behind loose shells, running'),
    freeHot: length('c_free', 'What free growth alone would say, running'),
    clearanceCurve: curve(
      axis('temperature', 'T', 'Rod temperature'),
      axis('length', 'c', 'Clearance'),
      'Clearance against rod temperature',
    ),
    pressureCurve: curve(
      axis('temperature', 'T', 'Rod temperature'),
      axis('pressure', 'p', 'Pressure behind the shells'),
      'Pressure behind the shells against rod temperature',
    ),
  },
  compute: (input) => {
    const computed = computedClearance(input);
    const predicted = predictedClearance(input);
    const clearance = input.rodClearance ?? predicted;
    const shape = (atLeast(input, 'journalOutOfRound') + atLeast(input, 'journalTaper')) / 2;
    const shop = input.assemblyTemperature;
    const running = { rod: input.rodTemperature, journal: input.crankpinTemperature };
    const hot = bearingState(input, clearance, running);
    const cold = bearingState(input, clearance, {
      rod: input.coldStartTemperature,
      journal: input.coldStartTemperature,
    });
    const first = Math.min(input.coldStartTemperature, shop);
    const last = Math.max(running.rod, shop) + sampled.beyond;
    const x = Array.from(
      { length: sampled.points },
      (_, i) => first + ((last - first) * i) / (sampled.points - 1),
    );
    const states = x.map((rod) =>
      bearingState(input, clearance, { rod, journal: journalTemperature(rod, shop, running) }),
    );
    return {
      clearance,
      clearanceHot: hot.clearance,
      clearanceCold: cold.clearance,
      computed,
      gaugeDifference:
        input.rodClearance === undefined
          ? { absent: 'No gauge reading is entered.' }
          : difference(input.rodClearance, predicted, input.rodHousing),
      opening: crushOpening(input),
      predicted,
      leastClearance: clearance - shape,
      greatestClearance: clearance + shape,
      perDiameter: clearance / input.crankpinDiameter,
      practiceLow: practice.low * input.crankpinDiameter,
      practiceHigh: practice.high * input.crankpinDiameter,
      pressureShop: bearingState(input, clearance, { rod: shop, journal: shop }).pressure,
      pressureHot: hot.pressure,
      pressureCold: cold.pressure,
      loose: looseOrAbsent(looseTemperature(input)),
      gapHot: hot.gap,
      freeHot: hot.free,
      clearanceCurve: { x, y: states.map((state) => state.clearance) },
      pressureCurve: { x, y: states.map((state) => state.pressure) },
    };
  },
  steps: bearingClearanceSteps,
  limits: [
    {
      id: 'gauge-apart',
      holds: (_, { gaugeDifference }) =>
        typeof gaugeDifference !== 'number' || Math.abs(gaugeDifference) <= apart,
      say: 'The gauge reads more than 0.008 mm (0.0003 in) away from what the parts and their crush predict. One of the readings is wrong, the crush is not what was entered, or a shell is in the wrong place. Measure again before choosing shells.',
    },
    {
      id: 'no-clearance',
      holds: (_, { clearanceHot, clearanceCold, leastClearance }) =>
        Math.min(clearanceHot, clearanceCold, leastClearance) > 0,
      say: 'Somewhere between the coldest start and running nothing is left between journal and shell. It would seize.',
    },
    {
      id: 'loose',
      holds: (_, { pressureHot }) => pressureHot > 0,
      say: 'At its running temperature the rod has outgrown the crush. The shells are loose; the gap behind them comes on top of the clearance shown.',
    },
    {
      id: 'low-pressure',
      holds: (_, { pressureHot }) => pressureHot === 0 || pressureHot >= 8e6,
      say: 'Running, the shells press with less than about 8 MPa (1200 psi), which an article on crush gives as the least for a road engine of middling load.',
    },
  ],
  validity: [
    {
      id: 'diameter',
      label: 'Crankpin diameter',
      symbol: 'D_p',
      kind: 'length',
      of: ({ crankpinDiameter }) => crankpinDiameter,
      possible: [0.005, 0.4],
    },
  ],
  assumptions: [
    'The clearance is the diametral one in line with the rod. Shells are thinner towards the parting line, so that a gauge at 45° or across reads 0.01 to 0.03 mm more by design (common practice, no source).',
    'The journal’s diameter is the mean of its readings. Half the out-of-round and half the taper then come off on one side and go on at the other.',
    'The measured oil clearance is believed where there is one. Otherwise the sum of the parts stands in for it, with what the crush opens the bore by; that part is good to 30 %.',
    'The big end counts as a closed ring, good to 30 % at best. That ± falls on the opening by the crush and on what heat takes from it; a measured oil clearance is free of the first.',
    'Housing and shells have one temperature, the journal its own. A journal 10 K warmer than assumed takes about 6 µm from 50 mm.',
    'Parts at rest. At speed a big end closes in by tens of µm under its own inertia, as much as the clearance, and none of that is here.',
    'Loose shells are taken to keep their round shape and to grow by themselves alone.',
  ],
  cautions: ['bearing', 'journal'],
  sources: ['clearance-rule-article', 'ugural-fenster-1981', 'kopeliovich-crush-height'],
  sweep: { input: 'rodTemperature', output: 'clearanceHot' },
  solve: { input: 'rodShellWall', output: 'predicted' },
  exercise: {
    ask: 'computed',
    tolerance: 0.01,
    given: {
      rodHousing: { by: 0.012 },
      rodShellWall: { by: 0.004 },
      crankpinDiameter: { by: 0.012 },
    },
    also: [
      { kind: 'number', ask: 'practiceHigh', given: { crankpinDiameter: 0.12 } },
      {
        kind: 'choice',
        ask: 'clearanceHot',
        given: {
          rodHousing: { by: 0.008 },
          rodTemperature: { by: 20 },
          crankpinTemperature: { by: 20 },
        },
      },
      { kind: 'read', ask: 'clearanceCurve', given: { rodHousing: { by: 0.01 } } },
    ],
  },
});
