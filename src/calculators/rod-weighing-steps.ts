import type { Step } from './define.ts';

/** The working of `rod-weighing`, line by line. */
export const steps: readonly Step[] = [
  {
    of: 'bigEndMass',
    formula: 'mean(bigEndReadings)',
    say: 'The big end is the mean of its lifts.',
    units: { mass: 'g' },
    source: 'jcgm-100-2008',
  },
  {
    of: 'smallEndMass',
    formula: 'mean(smallEndReadings)',
    say: 'The small end likewise.',
    units: { mass: 'g' },
  },
  {
    of: 'bigEndSpread',
    tex: String.raw`s_{\text{be}} = \sqrt{\frac{1}{n-1}\sum_{i=1}^{n} (m_{\text{be},i} - m_{\text{be}})^2}`,
    say: 'The spread is the standard deviation of the lifts. The small end is treated the same way.',
    source: 'jcgm-100-2008',
  },
  {
    of: 'endSum',
    formula: 'bigEndMass + smallEndMass',
    say: 'Both ends together.',
    units: { mass: 'g' },
  },
  {
    of: 'closure',
    formula: 'endSum - rodMass',
    say: 'What the ends weigh together, less the whole rod.',
    units: { mass: 'g' },
  },
  {
    of: 'closureTolerance',
    formula: '2 * sqrt(2 * fixtureRepeat^2 + scaleResolution^2 / 12)',
    say: 'Twice the scatter of two lifts and one rounded digit, combined as squares.',
    units: { mass: 'g' },
    source: 'jcgm-100-2008',
  },
  {
    of: 'closureRatio',
    formula: 'abs(closure) / closureTolerance',
    say: 'Above one, the difference is more than scatter.',
    units: { mass: 'g' },
  },
  {
    of: 'centreFromBigEnd',
    formula: 'rodLength * smallEndMass / endSum',
    say: 'Moments about the big-end centre: the rod balances where the ends pull alike.',
    units: { mass: 'g', length: 'mm' },
    source: 'khurmi-gupta-2009',
  },
  {
    of: 'bigEndShare',
    formula: 'bigEndMass / endSum',
    say: 'The big end as a part of both ends.',
    units: { mass: 'g' },
  },
  {
    of: 'supportShift',
    formula: 'rodMass * supportOffset / rodLength',
    say: 'A rod that lies off along both supports moves this much from one end to the other.',
    units: { mass: 'g', length: 'mm' },
  },
  {
    of: 'bigSupportShift',
    formula: 'bigEndMass * supportOffset / (rodLength - supportOffset)',
    say: 'The same with only the big-end support off towards the small end: the big end reads too heavy.',
    units: { mass: 'g', length: 'mm' },
  },
  {
    of: 'smallSupportShift',
    formula: 'smallEndMass * supportOffset / (rodLength - supportOffset)',
    say: 'And with only the small-end support off towards the big end: the small end reads too heavy.',
    units: { mass: 'g', length: 'mm' },
  },
  {
    of: 'pieceMass',
    formula: 'batchMass / batchCount',
    say: 'One part is the pile divided by the count.',
    units: { mass: 'g' },
  },
  {
    of: 'scaleError',
    formula: 'checkReading - checkMass',
    say: 'The check mass as read, less what its certificate says.',
    units: { mass: 'g' },
  },
];
