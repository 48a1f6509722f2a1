import { count, grams, is, millimetres } from '../step.ts';

/** The working of `rod-weighing`, line by line. */
export const steps = {
  bigEndMass: is('mean(bigEndReadings)', 'The big end is the mean of its lifts.', {
    units: grams,
    source: 'jcgm-100-2008',
  }),
  smallEndMass: is('mean(smallEndReadings)', 'The small end likewise.', { units: grams }),
  bigEndLifts: count('n_be', 'count(bigEndReadings)', 'How often the big end was lifted.', {
    units: grams,
  }),
  smallEndLifts: count('n_se', 'count(smallEndReadings)', 'How often the small end was lifted.', {
    units: grams,
  }),
  bigEndSpread: is(
    'sqrt(squares(bigEndReadings, bigEndMass) / (bigEndLifts - 1))',
    'The spread is the standard deviation of the lifts: how far each lies from their mean, combined as squares.',
    { units: grams, source: 'jcgm-100-2008' },
  ),
  smallEndSpread: is(
    'sqrt(squares(smallEndReadings, smallEndMass) / (smallEndLifts - 1))',
    'The same for the small end.',
    { units: grams, source: 'jcgm-100-2008' },
  ),
  bigEndPlusMinus: is(
    '2 * sqrt(fixtureRepeat^2 / bigEndLifts + scaleResolution^2 / 12)',
    'Lifting again makes the mean better. The rounding of the digit stays.',
    { units: grams, source: 'jcgm-100-2008' },
  ),
  smallEndPlusMinus: is(
    '2 * sqrt(fixtureRepeat^2 / smallEndLifts + scaleResolution^2 / 12)',
    'For the small end likewise.',
    { units: grams, source: 'jcgm-100-2008' },
  ),
  endSum: is('bigEndMass + smallEndMass', 'Both ends together.', { units: grams }),
  closure: is('endSum - rodMass', 'What the ends weigh together, less the whole rod.', {
    units: grams,
  }),
  closureTolerance: is(
    '2 * sqrt(fixtureRepeat^2 / bigEndLifts + fixtureRepeat^2 / smallEndLifts + 3 * scaleResolution^2 / 12)',
    'Twice the scatter of the two means and of three rounded readings, both ends and the whole rod, combined as squares.',
    { units: grams, source: 'jcgm-100-2008' },
  ),
  closureRatio: is(
    'abs(closure) / closureTolerance',
    'Above one, the difference is more than scatter.',
    { units: grams },
  ),
  centreFromBigEnd: is(
    'rodLength * smallEndMass / endSum',
    'Moments about the big-end centre: the rod balances where the ends pull alike.',
    { units: { ...millimetres, mass: 'g' }, source: 'khurmi-gupta-2009' },
  ),
  bigEndShare: is('bigEndMass / endSum', 'The big end as a part of both ends.', { units: grams }),
  supportShift: is(
    'rodMass * supportOffset / rodLength',
    'A rod that lies off along both supports moves this much from one end to the other.',
    { units: { ...millimetres, mass: 'g' } },
  ),
  bigSupportShift: is(
    'bigEndMass * supportOffset / (rodLength - supportOffset)',
    'The same with only the big-end support off towards the small end: the big end reads too heavy.',
    { units: { ...millimetres, mass: 'g' } },
  ),
  smallSupportShift: is(
    'smallEndMass * supportOffset / (rodLength - supportOffset)',
    'And with only the small-end support off towards the big end: the small end reads too heavy.',
    { units: { ...millimetres, mass: 'g' } },
  ),
  pieceMass: is('batchMass / batchCount', 'One part is the pile divided by the count.', {
    units: grams,
  }),
  scaleError: is(
    'checkReading - checkMass',
    'The check mass as read, less what its certificate says.',
    { units: grams },
  ),
};
