import { impliedEnds } from '../../core/balance/bobweight.ts';
import { defineCalculator } from '../define.ts';
import {
  bobweight,
  lockMass,
  oilMass,
  pinMass,
  pistonMass,
  reciprocatingFraction,
  ringMass,
  rodMass,
  rodsPerPin,
  shellMass,
} from '../quantities.ts';
import { mass, ratio } from '../output.ts';
import { grams, is, mass as massStep } from '../step.ts';

/** The share of its mass that a rod commonly carries at its big end, least and most (common practice, no source). */
export const commonShares = [0.6, 0.8] as const;

/** How a rod would have to be split for a bobweight that somebody quotes. */
export const bobweightImplied = defineCalculator({
  id: 'bobweight-implied',
  title: 'Checking a quoted bobweight',
  purpose: 'Whether a bobweight that somebody quotes can belong to the parts they name.',
  asks: ['bobweight', 'pistonMass', 'pinMass', 'rodMass', 'ringMass', 'reciprocatingFraction'],
  answers: ['impliedBigEnd', 'impliedSmallEnd', 'impliedShare', 'unsaidSwing'],
  inputs: {
    bobweight,
    pistonMass,
    pinMass,
    rodMass,
    ringMass,
    lockMass,
    shellMass,
    oilMass,
    rodsPerPin,
    reciprocatingFraction,
  },
  outputs: {
    impliedBigEnd: mass('m_be,imp', 'Big end that this bobweight implies', {
      phrase: 'The implied big end',
      main: true,
    }),
    impliedSmallEnd: mass('m_se,imp', 'Small end that goes with it'),
    impliedShare: ratio('q_imp', 'Implied share of the rod at its big end', {
      phrase: 'The implied big-end share',
    }),
    unsaidSwing: ratio(
      'Δq_imp',
      'That share moves by, if rings, locks, bearings and oil are all a third out',
    ),
    perShellGram: ratio('q_shell', 'Implied big end moves, for each gram of bearings'),
    perRingGram: ratio('q_ring', 'Implied big end moves, for each gram of rings or locks'),
  },
  compute(input) {
    const { bigEndMass, smallEndMass, bigEndShare } = impliedEnds(input);
    const f = input.reciprocatingFraction;
    const unsaid =
      input.shellMass + input.oilMass / input.rodsPerPin + f * (input.ringMass + input.lockMass);
    return {
      impliedBigEnd: bigEndMass,
      impliedSmallEnd: smallEndMass,
      impliedShare: bigEndShare,
      unsaidSwing: unsaid / (3 * (1 - f) * input.rodMass),
      perShellGram: -1 / (1 - f),
      perRingGram: -f / (1 - f),
    };
  },
  steps: {
    perRod: massStep(
      'm_bob,1',
      '(bobweight - oilMass) / rodsPerPin',
      'The bobweight without its oil, shared among the rods of the pin.',
      { units: grams },
    ),
    reciprocating: massStep(
      'm_x',
      'pistonMass + pinMass + ringMass + lockMass',
      'What reciprocates, without the small end.',
      { units: grams },
    ),
    impliedBigEnd: is(
      '(perRod - shellMass - reciprocatingFraction * (rodMass + reciprocating)) / (1 - reciprocatingFraction)',
      'The bobweight formula solved for the big end, with the small end as the rest of the rod.',
      { units: grams },
    ),
    impliedSmallEnd: is('rodMass - impliedBigEnd', 'The rest of the rod.', { units: grams }),
    impliedShare: is('impliedBigEnd / rodMass', 'The big end as a part of the whole rod.', {
      units: grams,
    }),
    unsaidSwing: is(
      '(shellMass + oilMass / rodsPerPin + reciprocatingFraction * (ringMass + lockMass)) / (3 * (1 - reciprocatingFraction) * rodMass)',
      'A third of every mass that was not stated, all wrong the same way.',
      { units: grams },
    ),
    perShellGram: is(
      '-1 / (1 - reciprocatingFraction)',
      'Grams of big end lost for each gram that the shells weigh more than assumed.',
    ),
    perRingGram: is(
      '-reciprocatingFraction / (1 - reciprocatingFraction)',
      'The same for a gram of rings or locks.',
    ),
  },
  limits: [
    {
      id: 'possible',
      holds: (_input, output) => output.impliedShare > 0 && output.impliedShare < 1,
      say: 'No split of this rod gives this bobweight. A mass, the balance factor or the number of rods must be another.',
    },
    {
      id: 'common',
      holds: (_input, output) =>
        output.impliedShare >= commonShares[0] && output.impliedShare <= commonShares[1],
      say: 'Rods commonly carry 0.60 to 0.80 of their mass at the big end (common practice, no source). Outside that, doubt a number, but look first at how far the masses that were not stated can move the share.',
    },
    {
      id: 'power',
      holds: (_input, output) => output.unsaidSwing <= 0.1,
      say: 'The masses that were not stated can move the share by more than 0.10, so this comparison can hardly contradict anything.',
    },
  ],
  validity: [
    {
      id: 'implied-share',
      label: 'Implied share of the rod at its big end',
      symbol: 'q_imp',
      kind: 'ratio',
      of: (_input, output) => output.impliedShare,
      possible: [0, 1],
    },
  ],
  assumptions: [
    'The bobweight was made with the formula of the page on it, and with the balance factor and the number of rods entered here.',
    'The rings, locks, bearings and oil were not stated and are assumed. Give each the ± that you would bet on: the ± of the share then says whether the answer means anything.',
    'All rods and pistons of the pin are alike.',
    'A share inside the common band does not show that the figure is true. It shows that it is not contradicted.',
  ],
  cautions: ['weighing', 'balancing'],
  sources: ['khurmi-gupta-2009', 'bevan-2005', 'kolchin-demidov-1984', 'bosch-handbook'],
  sweep: { input: 'bobweight', output: 'impliedShare' },
  solve: { input: 'bobweight', output: 'impliedShare' },
  exercise: {
    ask: 'impliedShare',
    tolerance: 0.005,
    given: { bobweight: 0.03, pistonMass: 0.05, pinMass: 0.1, rodMass: 0.05, ringMass: 0.15 },
    also: [
      {
        kind: 'choice',
        ask: 'impliedBigEnd',
        given: { bobweight: 0.05, pistonMass: 0.1, shellMass: 0.2 },
      },
      { kind: 'order', ask: 'impliedBigEnd', given: { bobweight: 0.06, pistonMass: 0.12 } },
    ],
  },
});
