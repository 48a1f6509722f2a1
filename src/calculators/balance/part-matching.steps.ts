import { grams, is, tex } from '../step.ts';

/** A set of parts, in the letters of the working. */
const set = String.raw`\left(\q{pistonMasses} + \q{pinMasses} + \q{smallEndMasses} + \q{ringMasses}\right)`;

/** The working of `part-matching`, line by line. */
export const steps = {
  listedSpread: is(
    tex(
      String.raw`\q{listedSpread} = \left(\max_{i = k} - \min_{i = k}\right)${set}`,
      'sum over parts',
    ),
    'As listed, the first goes with the first, and so on: the heaviest such set less the lightest.',
    { units: grams },
  ),
  heaviest: is(
    tex(String.raw`\q{heaviest} = \max${set}`, 'search'),
    'Of all ways to put the parts together one with the smallest spread is looked for. This is its heaviest set.',
    { units: grams },
  ),
  lightest: is(tex(String.raw`\q{lightest} = \min${set}`, 'search'), 'And this its lightest.', {
    units: grams,
  }),
  spread: is('heaviest - lightest', 'The spread is the heaviest set less the lightest.', {
    units: grams,
  }),
  leastSpread: is(
    tex(String.raw`\q{leastSpread} \le \min\left(\q{heaviest} - \q{lightest}\right)`, 'search'),
    'The spread itself, once every way to a smaller one has been tried. Where they are too many, a mass below which none can be: the heaviest parts must go somewhere, and even with the lightest partners they weigh so much.',
    { units: grams },
  ),
  unproved: is('spread - leastSpread', 'Nought where the spread is proved to be the least.', {
    units: grams,
  }),
  mostOff: is(
    'max(0, spread - targetSpread)',
    'What the heaviest set has more than the lightest and the spread wanted. No other must lose as much.',
    { units: grams },
  ),
  cutDepth: is(
    'mostOff / (cutDensity * cutArea)',
    'The depth of a cut with straight walls that takes this mass off.',
    { units: { mass: 'g', density: 'g/cm3', length: 'cm', area: 'cm2' } },
  ),
  pinSpread: is(
    tex(
      String.raw`\q{pinSpread} = \left(\max - \min\right)\left(\q{bigEndMasses} + m_{\mathrm{be},l}\right)`,
      'search',
    ),
    'Where two rods share a pin, the heaviest big end goes with the lightest, the second heaviest with the second lightest. With one rod on a pin the sum is the big end alone.',
    { units: grams },
  ),
};
