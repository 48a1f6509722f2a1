import { crankOverlap as overlapOf } from '../../core/bearings/crank-overlap.ts';
import { defineCalculator } from '../define.ts';
import { crankpinDiameter, mainDiameter, stroke } from '../quantities.ts';
import { length, ratio } from '../output.ts';
import { is, millimetres } from '../step.ts';

/** How far a crankpin reaches over the main journal, and what a smaller pin or a longer stroke costs. */
export const crankOverlap = defineCalculator({
  id: 'crank-overlap',
  title: 'Crank overlap',
  purpose: 'How far the crankpin and the main journal beside it overlap, seen along the shaft.',
  asks: ['mainDiameter', 'crankpinDiameter', 'stroke'],
  answers: ['overlap', 'share', 'touchingStroke'],
  inputs: { mainDiameter, crankpinDiameter, stroke },
  outputs: {
    overlap: length('o', 'Overlap of crankpin and main journal', {
      phrase: 'The overlap',
      main: true,
    }),
    share: ratio('q_o', 'Overlap over crankpin diameter'),
    touchingStroke: length('S_0', 'Stroke at which the two would just touch'),
  },
  compute: ({ mainDiameter, crankpinDiameter, stroke }) =>
    overlapOf({ mainDiameter, crankpinDiameter, stroke }),
  comparisons: {
    byMain: length('Δo_m', 'Overlap gained or lost by the main journal'),
    byPin: length('Δo_p', 'Overlap gained or lost by the crankpin'),
    byStroke: length('Δo_S', 'Overlap gained or lost by the stroke'),
  },
  compare: ({ baseline, candidate }) => ({
    byMain: (candidate.input.mainDiameter - baseline.input.mainDiameter) / 2,
    byPin: (candidate.input.crankpinDiameter - baseline.input.crankpinDiameter) / 2,
    byStroke: (baseline.input.stroke - candidate.input.stroke) / 2,
  }),
  steps: {
    touchingStroke: is(
      'mainDiameter + crankpinDiameter',
      'The two circles would just touch if their centres lay half the sum of the diameters apart, which is a stroke of the whole sum.',
      { units: millimetres },
    ),
    overlap: is(
      '(touchingStroke - stroke) / 2',
      'The centres lie half a stroke apart. What the stroke falls short of touching is shared by both sides.',
      { units: millimetres, source: 'iacs-m53' },
    ),
    share: is('overlap / crankpinDiameter', 'Set against the size of the pin.', {
      units: millimetres,
    }),
  },
  limits: [
    {
      id: 'gap',
      holds: (_, { overlap }) => overlap >= 0,
      say: 'The two circles do not reach each other: the web alone joins pin and main journal. That is legal and common in long-stroke engines; thickness, width and fillets of the web must carry it.',
    },
  ],
  validity: [
    {
      id: 'share',
      label: 'Overlap over crankpin diameter',
      symbol: 'q_o',
      kind: 'ratio',
      of: (_, { share }) => share,
      possible: [-2, 2],
    },
  ],
  assumptions: [
    'Both journals are round and parallel, and the stroke is twice the distance of their axes: exact geometry.',
    'It is no strength. The fillet radius, the thickness and width of the web, hardened skin and oil drillings share the job, and none of them is in the number.',
    'The bore of a hollow journal does not change the overlap, though it changes what stands behind it.',
  ],
  cautions: ['journal'],
  sources: ['iacs-m53', 'journal-overlap-article'],
  sweep: { input: 'crankpinDiameter', output: 'overlap' },
  solve: { input: 'stroke', output: 'overlap' },
  exercise: {
    ask: 'overlap',
    tolerance: 0.01,
    given: { mainDiameter: 0.06, crankpinDiameter: 0.06, stroke: 0.06 },
    also: [{ kind: 'number', ask: 'share' }],
  },
});
