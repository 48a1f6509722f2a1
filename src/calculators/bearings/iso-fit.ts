import { fitLimits, toleranceStep, toleranceUnit } from '../../core/bearings/iso-fit.ts';
import { defineCalculator } from '../define.ts';
import { gradeOf, holeGrade, shaftGrade, toleranceSteps } from './iso-fit.choices.ts';
import { fitDiameter } from '../quantities.ts';
import { fineLength } from '../output.ts';
import { is, millimetres, tex } from '../step.ts';

/** Limits of H holes and h shafts by ISO 286-1, and the clearance of a pair. */
export const isoFit = defineCalculator({
  id: 'iso-fit',
  title: 'Limits by ISO 286',
  purpose:
    'The limits of a hole and a shaft of one nominal diameter, and the clearance between them.',
  asks: ['fitDiameter', 'holeGrade', 'shaftGrade'],
  answers: ['greatestClearance', 'leastClearance', 'holeTolerance', 'shaftTolerance'],
  inputs: { fitDiameter, holeGrade, shaftGrade },
  outputs: {
    greatestClearance: fineLength('c_max', 'Greatest clearance of the pair', {
      phrase: 'The greatest clearance of the pair',
      main: true,
    }),
    leastClearance: fineLength('c_min', 'Least clearance of the pair'),
    holeTolerance: fineLength('T_H', 'Tolerance of the hole'),
    shaftTolerance: fineLength('T_h', 'Tolerance of the shaft'),
    holeUpper: fineLength('ES', 'Upper deviation of the hole'),
    holeLower: fineLength('EI', 'Lower deviation of the hole'),
    shaftUpper: fineLength('es', 'Upper deviation of the shaft'),
    shaftLower: fineLength('ei', 'Lower deviation of the shaft'),
    sixByFormula: fineLength('10_i', 'Grade 6 by the formula behind the table'),
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
  steps: {
    holeTolerance: is(
      tex('\\q{holeTolerance} = \\text{IT}(\\q{fitDiameter})', 'table'),
      'Read from the table in the row of the nominal diameter: the upper end of a step belongs to it.',
      { source: 'iso-286-1-table' },
    ),
    shaftTolerance: is(
      tex('\\q{shaftTolerance} = \\text{IT}(\\q{fitDiameter})', 'table'),
      'From the same row, in the shaft’s grade.',
      { source: 'iso-286-1-table' },
    ),
    holeLower: is('0', 'An H hole begins at the nominal diameter.', { units: millimetres }),
    holeUpper: is('holeLower + holeTolerance', 'From there it goes up by its tolerance.', {
      units: millimetres,
    }),
    shaftUpper: is('0', 'An h shaft ends at the nominal diameter.', { units: millimetres }),
    shaftLower: is('shaftUpper - shaftTolerance', 'From there it goes down by its own.', {
      units: millimetres,
    }),
    leastClearance: is(
      'holeLower - shaftUpper',
      'The smallest hole on the largest shaft: both are the nominal diameter.',
      { units: millimetres },
    ),
    greatestClearance: is('holeUpper - shaftLower', 'The largest hole on the smallest shaft.', {
      units: millimetres,
    }),
  },
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
  exercise: {
    ask: 'greatestClearance',
    tolerance: 0.01,
    given: { fitDiameter: 0.4, holeGrade: 0, shaftGrade: 0 },
  },
});
