import { fitLimits, toleranceStep, toleranceUnit } from '../core/iso-fit.ts';
import { defineCalculator } from './define.ts';
import { gradeOf, holeGrade, shaftGrade, toleranceSteps } from './iso-fit/grades.ts';
import { fitDiameter } from './quantities.ts';

const small = { type: 'number', kind: 'length', metric: 'um', inch: 'thou' } as const;
const units = { units: { length: 'mm' } } as const;

/** Limits of H holes and h shafts by ISO 286-1, and the clearance of a pair. */
export const isoFit = defineCalculator({
  id: 'iso-fit',
  title: 'Limits by ISO 286',
  purpose:
    'The limits of a hole and a shaft of one nominal diameter, and the clearance between them.',
  inputs: { fitDiameter, holeGrade, shaftGrade },
  outputs: {
    greatestClearance: {
      ...small,
      label: 'Greatest clearance of the pair',
      symbol: 'c_max',
      phrase: 'The greatest clearance of the pair',
      main: true,
    },
    leastClearance: { ...small, label: 'Least clearance of the pair', symbol: 'c_min' },
    holeTolerance: { ...small, label: 'Tolerance of the hole', symbol: 'T_H' },
    shaftTolerance: { ...small, label: 'Tolerance of the shaft', symbol: 'T_h' },
    holeUpper: { ...small, label: 'Upper deviation of the hole', symbol: 'ES' },
    holeLower: { ...small, label: 'Lower deviation of the hole', symbol: 'EI' },
    shaftUpper: { ...small, label: 'Upper deviation of the shaft', symbol: 'es' },
    shaftLower: { ...small, label: 'Lower deviation of the shaft', symbol: 'ei' },
    sixByFormula: {
      ...small,
      label: 'Grade 6 by the formula behind the table',
      symbol: '10_i',
      detail: true,
    },
  },
  compute: ({ fitDiameter, holeGrade, shaftGrade }) => {
    const step = toleranceStep(toleranceSteps, fitDiameter);
    const holeTolerance = step[gradeOf[holeGrade]];
    const shaftTolerance = step[gradeOf[shaftGrade]];
    // The formula wants the geometric mean of the step; the first one is taken to begin at 1 mm.
    const mean = Math.sqrt(Math.max(step.above, 1e-3) * step.upTo);
    return {
      ...fitLimits(holeTolerance, shaftTolerance),
      holeTolerance,
      shaftTolerance,
      sixByFormula: 10 * toleranceUnit(mean),
    };
  },
  steps: [
    {
      of: 'holeTolerance',
      tex: 'T_\\text{H} = \\text{IT}(D_\\text{n})',
      say: 'Read from the table in the row of the nominal diameter: the upper end of a step belongs to it.',
      source: 'iso-286-1-table',
    },
    {
      of: 'shaftTolerance',
      tex: 'T_\\text{h} = \\text{IT}(D_\\text{n})',
      say: 'From the same row, in the shaft’s grade.',
      source: 'iso-286-1-table',
    },
    {
      of: 'holeUpper',
      formula: 'holeTolerance',
      say: 'An H hole begins at the nominal diameter and goes up by its tolerance.',
      ...units,
    },
    {
      of: 'shaftLower',
      formula: '-shaftTolerance',
      say: 'An h shaft ends at the nominal diameter and goes down by its own.',
      ...units,
    },
    {
      of: 'holeGreatest',
      symbol: 'D_max',
      kind: 'length',
      formula: 'fitDiameter + holeUpper',
      say: 'The greatest hole. The least is the nominal diameter itself.',
      ...units,
    },
    {
      of: 'shaftLeast',
      symbol: 'd_min',
      kind: 'length',
      formula: 'fitDiameter + shaftLower',
      say: 'The least shaft. The greatest is the nominal diameter itself.',
      ...units,
    },
    {
      of: 'leastClearance',
      formula: 'holeLower - shaftUpper',
      say: 'The smallest hole on the largest shaft: both are the nominal diameter.',
      ...units,
    },
    {
      of: 'greatestClearance',
      formula: 'holeUpper - shaftLower',
      say: 'The largest hole on the smallest shaft.',
      ...units,
    },
  ],
  limits: [
    {
      id: 'engine-bearing',
      holds: ({ fitDiameter }) => fitDiameter >= 0.01,
      say: 'Below 10 mm the steps of the table are coarse beside the diameter. Use the drawing.',
    },
  ],
  validity: [
    {
      id: 'diameter',
      label: 'Nominal diameter',
      symbol: 'D_n',
      kind: 'length',
      of: ({ fitDiameter }) => fitDiameter,
      possible: [0, 0.5],
      tested: [0.0015, 0.45],
    },
  ],
  assumptions: [
    'The table of ISO 286-1, not the formula behind it: the standard rounds by rules of its own.',
    'Sizes at 20 °C, the reference temperature of drawings. A part 10 K warmer is 6 µm larger on 50 mm of steel.',
    'This is the fit of a plain pair. The clearance of a shell bearing is not set by these grades but by housing, walls and journal together.',
  ],
  cautions: ['bearing'],
  sources: ['iso-286-1-table', 'machine-drawing-narayana'],
  sweep: { input: 'fitDiameter', output: 'greatestClearance' },
  solve: { input: 'fitDiameter', output: 'greatestClearance' },
  exercise: { ask: 'greatestClearance', tolerance: 0.01 },
});
