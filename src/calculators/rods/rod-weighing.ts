import {
  closureTolerance,
  meanPlusMinus,
  pieceMass,
  repeats,
  scaleError,
  supportShift,
  weighedEnds,
} from '../../core/rods/rod-weighing.ts';
import { defineCalculator, optional, type Absent } from '../define.ts';
import {
  batchCount,
  batchMass,
  bigEndReadings,
  checkMass,
  checkReading,
  fixtureRepeat,
  rodLength,
  rodMass,
  scaleResolution,
  smallEndReadings,
  supportOffset,
} from '../quantities.ts';
import { steps } from './rod-weighing.steps.ts';
import { length, mass, maybe, ratio } from '../output.ts';

const oneReading: Absent = {
  absent: 'One reading has no spread. Lift the rod off and weigh the end again.',
};

/** The ends of a rod on the scale: mean, scatter, whether the sum fits the rod, and what the sum cannot show. */
export const rodWeighing = defineCalculator({
  id: 'rod-weighing',
  title: 'Weighing the parts',
  purpose: 'What the two ends of a rod weigh, how far to trust it, and where the rod balances.',
  asks: ['rodMass', 'bigEndReadings', 'smallEndReadings'],
  answers: [
    'bigEndMass',
    'smallEndMass',
    'closure',
    'closureTolerance',
    'bigEndShare',
    'centreFromBigEnd',
  ],
  inputs: {
    rodMass,
    bigEndReadings,
    smallEndReadings,
    rodLength,
    scaleResolution,
    fixtureRepeat,
    supportOffset,
    batchMass: optional(batchMass),
    batchCount: optional(batchCount),
    checkMass: optional(checkMass),
    checkReading: optional(checkReading),
  },
  outputs: {
    bigEndMass: mass('m_be', 'Big end, mean', {
      phrase: 'The big end',
      main: true,
      carries: 'bigEndMass',
    }),
    smallEndMass: mass('m_se', 'Small end, mean', {
      phrase: 'The small end',
      carries: 'smallEndMass',
    }),
    bigEndSpread: maybe(mass('s_be', 'Big-end lifts: standard deviation')),
    smallEndSpread: maybe(mass('s_se', 'Small-end lifts: standard deviation')),
    bigEndPlusMinus: mass('u_be', 'Big end, ± of the mean (two standard deviations)'),
    smallEndPlusMinus: mass('u_se', 'Small end, ± of the mean (two standard deviations)'),
    endSum: mass('m_sum', 'Both ends together'),
    closure: mass('m_miss', 'Misfit: both ends less the whole rod'),
    closureTolerance: mass('m_tol', 'What the misfit may be'),
    closureRatio: ratio('q_miss', 'Misfit over what it may be'),
    centreFromBigEnd: length('x_cm', 'Centre of mass, from the big-end centre', {
      phrase: 'The balance point, from the big-end centre,',
    }),
    bigEndShare: ratio('q_be', 'Share of the rod at its big end'),
    supportShift: mass('m_off', 'Each end wrong by, if the rod lies off along both supports', {
      phrase: 'The error from a rod lying off its supports',
    }),
    bigSupportShift: mass('m_off,be', 'Each end wrong by, if only the big-end support is off'),
    smallSupportShift: mass('m_off,se', 'Each end wrong by, if only the small-end support is off'),
    pieceMass: maybe(mass('m_one', 'One small part of the batch')),
    scaleError: maybe(mass('m_err', 'Scale reads too heavy by')),
  },
  compute(input) {
    const bigEnd = repeats(input, 'bigEndReadings');
    const smallEnd = repeats(input, 'smallEndReadings');
    const rod = {
      bigEndMass: bigEnd.mean,
      smallEndMass: smallEnd.mean,
      rodMass: input.rodMass,
      rodLength: input.rodLength,
    };
    const ends = weighedEnds(rod);
    const tolerance = closureTolerance(input, {
      bigEnd: input.bigEndReadings.length,
      smallEnd: input.smallEndReadings.length,
    });
    const shift = supportShift({ ...rod, supportOffset: input.supportOffset });
    return {
      bigEndMass: bigEnd.mean,
      smallEndMass: smallEnd.mean,
      bigEndSpread: bigEnd.spread ?? oneReading,
      smallEndSpread: smallEnd.spread ?? oneReading,
      bigEndPlusMinus: meanPlusMinus(input, input.bigEndReadings.length),
      smallEndPlusMinus: meanPlusMinus(input, input.smallEndReadings.length),
      endSum: ends.endSum,
      closure: ends.closure,
      closureTolerance: tolerance,
      closureRatio: Math.abs(ends.closure) / tolerance,
      centreFromBigEnd: ends.centreFromBigEnd,
      bigEndShare: ends.bigEndShare,
      supportShift: shift.both,
      bigSupportShift: shift.bigEndOnly,
      smallSupportShift: shift.smallEndOnly,
      pieceMass: onePiece(input.batchMass, input.batchCount),
      scaleError: readingError(input.checkMass, input.checkReading),
    };
  },
  steps,
  limits: [
    {
      id: 'closes',
      holds: (_input, output) => output.closureRatio <= 1,
      say: 'The two ends miss the whole rod by more than scatter explains. Look for a dragging fixture, a side pull or a tare that moved, and weigh again.',
    },
    {
      id: 'scatter',
      holds: (input, { bigEndSpread, smallEndSpread }) =>
        [bigEndSpread, smallEndSpread].every(
          (spread) => typeof spread !== 'number' || spread <= 2 * input.fixtureRepeat,
        ),
      say: 'The lifts scatter more than twice the standard deviation entered for the fixture. Use the larger one, or find what moves.',
    },
    {
      id: 'small-offset',
      holds: (input) => Math.abs(input.supportOffset) <= 0.1 * input.rodLength,
      say: 'A support this far off is no longer a small error. Set the fixture before weighing.',
    },
  ],
  validity: [
    {
      id: 'big-end-share',
      label: 'Share of the rod at its big end',
      symbol: 'q_be',
      kind: 'ratio',
      of: (_input, output) => output.bigEndShare,
      possible: [0, 1],
    },
  ],
  assumptions: [
    'The line between the eye centres is level. Held at the eye centres, a slight tilt changes nothing; held above or below them, it moves mass from one end to the other.',
    'The rod is weighed with its bolts in and its small-end bush in, wiped dry, without bearing shells. Shells left in are counted again in the bobweight.',
    'The supports pull straight up. Friction and side pull show in the sum; supports off the centres do not.',
    'The two ends always add up to the rod, wherever the supports sit. A sum that fits the rod therefore says nothing about an off-centre support: it takes from one end what it gives to the other.',
    'Two masses at the eye centres keep the mass and the centre of mass of the rod, so forces come out right. They do not keep its moment of inertia, so moments about the rod do not.',
    'Air buoyancy is left out. Steel parts and a steel check mass lose alike; an aluminium rod reads about 0.03 % too light, a tenth of a gram on 440 g.',
  ],
  cautions: ['weighing'],
  sources: [
    'jcgm-100-2008',
    'khurmi-gupta-2009',
    'bevan-2005',
    'kolchin-demidov-1984',
    'bosch-handbook',
  ],
  sweep: { input: 'supportOffset', output: 'supportShift' },
  solve: { input: 'supportOffset', output: 'supportShift' },
  exercise: {
    ask: 'centreFromBigEnd',
    tolerance: 0.005,
    given: { rodLength: 0.12, bigEndReadings: 0.12, smallEndReadings: 0.12 },
    // The whole rod is stated in none of them, so that ends and whole need not fit.
    beside: ['closes'],
    also: [
      {
        kind: 'number',
        ask: 'bigEndShare',
        given: { bigEndReadings: 0.12, smallEndReadings: 0.12 },
      },
      {
        kind: 'number',
        ask: 'supportShift',
        given: { rodMass: 0.2, supportOffset: 0.5, rodLength: 0.12 },
      },
      {
        kind: 'choice',
        ask: 'supportShift',
        given: { rodMass: 0.2, supportOffset: 0.5, rodLength: 0.12 },
      },
      {
        kind: 'order',
        ask: 'centreFromBigEnd',
        given: { rodLength: 0.12, smallEndReadings: 0.15 },
      },
    ],
  },
});

function onePiece(batch: number | undefined, count: number | undefined): number | Absent {
  if (batch === undefined || count === undefined)
    return { absent: 'Enter what the batch weighs and how many are in it.' };
  return pieceMass({ batchMass: batch, batchCount: count });
}

function readingError(mass: number | undefined, reading: number | undefined): number | Absent {
  if (mass === undefined || reading === undefined)
    return { absent: 'Weigh a check mass and enter both its numbers.' };
  return scaleError({ checkMass: mass, checkReading: reading });
}
