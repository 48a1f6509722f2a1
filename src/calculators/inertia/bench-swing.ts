import { benchSwing as inertiaOf, standardGravity } from '../../core/inertia/bench-swing.ts';
import { defineCalculator, optional } from '../define.ts';
import {
  platformMass,
  platformTime,
  swingCount,
  swingMass,
  swingSpacing,
  swingTime,
  swingWire,
} from '../quantities.ts';
import { swingRig } from './rotating-inertia.choices.ts';
import { engineInertia, length, percent, time } from '../output.ts';
import { is, length as lengthStep, mass } from '../step.ts';

const g = String(standardGravity);

/** Inertia of a crank, flywheel, clutch or rod from a timed swing. */
export const benchSwing = defineCalculator({
  id: 'bench-swing',
  title: 'Inertia from a bench swing',
  purpose:
    'The inertia of a part that was hung on wires or on a knife edge and timed while it swung.',
  asks: ['swingRig', 'swingMass', 'swingSpacing', 'swingWire', 'swingCount', 'swingTime'],
  answers: ['partInertia', 'gyration', 'swingPeriod'],
  inputs: {
    swingRig,
    swingMass,
    swingSpacing,
    swingWire,
    swingCount,
    swingTime,
    platformMass: optional(platformMass),
    platformTime: optional(platformTime),
  },
  outputs: {
    partInertia: engineInertia('I_part', 'Inertia of the part about its centre', {
      phrase: 'The inertia of the part on the swing',
      main: true,
    }),
    gyration: length('k', 'Radius of gyration'),
    swingPeriod: time('T', 'Time of one swing'),
    wholeInertia: engineInertia('I_all', 'All that swung'),
    takenOff: engineInertia('I_off', 'of it not the part’s own'),
    timeWeight: percent('w_t', 'What one per cent of the time is worth in the inertia'),
  },
  compute: (input) => {
    const { inertia: partInertia, ...rest } = inertiaOf(input);
    return {
      partInertia,
      gyration: rest.gyration,
      swingPeriod: input.swingTime / input.swingCount,
      wholeInertia: rest.whole,
      takenOff: rest.taken,
      timeWeight: rest.timeSensitivity / 100,
    };
  },
  steps: {
    swingPeriod: is('swingTime / swingCount', 'The time of one swing, to and fro.'),
    carrier: mass(
      'm_carry',
      'when(swingRig == "trifilar", platformMass, 0)',
      'What carries the part: a platform on three wires, if there is one, and else nothing.',
    ),
    lever: lengthStep(
      'h',
      'when(swingRig == "knife-edge", swingSpacing, swingSpacing^2 / swingWire)',
      'Turned a little, the part is pulled back by its weight, as if on a lever of this length.',
    ),
    wholeInertia: is(
      `${g} * (swingMass + carrier) * lever * (swingPeriod / (2 * pi))^2`,
      `All that hung there. ${g} m/s² is standard gravity.`,
      { source: 'khurmi-gupta-2009' },
    ),
    takenOff: is(
      `when(swingRig == "knife-edge", swingMass * swingSpacing^2, ${g} * carrier * lever * (platformTime / (2 * pi * swingCount))^2)`,
      'What is not the part’s own: mere distance from the knife edge, or the platform.',
    ),
    partInertia: is('wholeInertia - takenOff', 'The rest belongs to the part.'),
    gyration: is(
      'sqrt(partInertia / swingMass)',
      'The radius at which its whole mass would do the same.',
    ),
    timeWeight: is(
      '2 * wholeInertia / (100 * partInertia)',
      'The time counts by its square; the more is taken off, the more its error weighs.',
    ),
  },
  limits: [
    {
      id: 'little-left',
      holds: (_, { takenOff, wholeInertia }) => takenOff < 0.7 * wholeInertia,
      say: 'Most of what swung is not the part’s own, so that a small error of the time is a large one of the inertia. Use a lighter platform, or hang the part on wires.',
    },
    {
      id: 'long-wires',
      holds: ({ swingRig: rig, swingWire: wire, swingSpacing: spacing }) =>
        rig === 'knife-edge' || wire >= 5 * spacing,
      say: 'The wires are short beside their distance from the axis. The formula is for wires that hardly lean.',
    },
    {
      id: 'enough-swings',
      holds: ({ swingTime: time }) => time >= 15,
      say: 'The whole time is short: a reaction of a tenth of a second shows in the inertia.',
    },
  ],
  validity: [
    {
      id: 'gyration-share',
      label: 'Radius of gyration over distance from the axis',
      symbol: 'k/s',
      kind: 'ratio',
      of: ({ swingSpacing: spacing }, { gyration }) => gyration / spacing,
      possible: [0, 4],
    },
  ],
  assumptions: [
    'Small swings. Ten degrees to either side lengthen the time of a pendulum by 0.19 % and so the inertia by 0.38 %; on wires the effect is of the same order.',
    'The part hangs level with its centre of gravity on the swing’s axis, every wire upright, of one length and at one distance. Two millimetres off the axis at 120 mm are about 0.03 %.',
    'Wires weigh nothing and do not resist twisting. Thin plain wire of a metre and more keeps that below 0.1 % for parts of a kilogram and up (common practice, no source).',
    'Standard gravity. Real gravity is between 9.780 and 9.832 m/s², which is 0.3 % either way.',
    'Air is left out. It matters for a flywheel with vanes, not for a crank.',
  ],
  cautions: ['flywheel'],
  sources: ['khurmi-gupta-2009'],
  sweep: { input: 'swingTime', output: 'partInertia' },
  solve: { input: 'swingTime', output: 'partInertia' },
  exercise: {
    ask: 'partInertia',
    tolerance: 0.01,
    given: { swingMass: 0.2, swingSpacing: 0.12, swingWire: 0.12, swingTime: 0.15 },
    also: [
      {
        kind: 'choice',
        ask: 'partInertia',
        given: { swingMass: 0.2, swingSpacing: 0.15, swingTime: 0.15 },
      },
    ],
  },
});
