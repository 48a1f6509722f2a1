import { equivalentLengths, shaftStiffness } from '../../core/torsion/throw-stiffness.ts';
import { defineCalculator } from '../define.ts';
import { length, torsionalStiffness } from '../output.ts';
import {
  crankpinBore,
  crankpinDiameter,
  crankpinLength,
  crankShearModulus,
  crankWebThickness,
  crankWebWidth,
  mainBore,
  mainDiameter,
  mainLength,
  stroke,
} from '../quantities.ts';
import { is, length as lengthOnTheWay, ratio } from '../step.ts';

/** How hard one throw is to twist, by two formulas. */
export const throwStiffness = defineCalculator({
  id: 'throw-stiffness',
  title: 'Stiffness of a throw from its dimensions',
  purpose: 'How hard one throw of a crank is to twist, by two formulas, and how far they differ.',
  asks: [
    'mainDiameter',
    'crankpinDiameter',
    'crankWebThickness',
    'crankWebWidth',
    'mainLength',
    'crankpinLength',
  ],
  answers: ['mean', 'kerWilson', 'carter', 'apart'],
  inputs: {
    mainDiameter,
    crankpinDiameter,
    crankWebThickness,
    crankWebWidth,
    mainLength,
    crankpinLength,
    mainBore,
    crankpinBore,
    stroke,
    crankShearModulus,
  },
  outputs: {
    mean: torsionalStiffness('k_thr', 'Stiffness of a throw, mean of both formulas', {
      phrase: 'The stiffness of a throw',
      main: true,
      carries: 'throwStiffness',
    }),
    kerWilson: torsionalStiffness('k_KW', 'By Ker Wilson’s formula'),
    carter: torsionalStiffness('k_C', 'By Carter’s formula'),
    apart: torsionalStiffness('δ_k', 'Difference of the two, taken as ± of the mean'),
    kerWilsonLength: length('L_KW', 'Plain shaft that twists as much, by Ker Wilson'),
    carterLength: length('L_C', 'Plain shaft that twists as much, by Carter'),
  },
  compute: (input) => {
    const { kerWilson, carter } = equivalentLengths(input);
    const one = shaftStiffness(input, kerWilson);
    const other = shaftStiffness(input, carter);
    return {
      mean: (one + other) / 2,
      kerWilson: one,
      carter: other,
      apart: Math.abs(one - other),
      kerWilsonLength: kerWilson,
      carterLength: carter,
    };
  },
  steps: {
    throwRadius: lengthOnTheWay('r', 'stroke / 2', 'The throw is half the stroke.'),
    mainSolid: ratio(
      'c_m',
      '1 - (mainBore / mainDiameter)^4',
      'What a bore leaves of the main journal’s stiffness.',
    ),
    pinSolid: ratio(
      'c_p',
      '(crankpinDiameter / mainDiameter)^4 - (crankpinBore / mainDiameter)^4',
      'How stiff the crankpin is beside a solid main journal.',
    ),
    webSolid: ratio(
      'c_w',
      'crankWebThickness * crankWebWidth^3 / mainDiameter^4',
      'How stiff a web is beside it.',
    ),
    kerWilsonLength: is(
      '(mainLength + 0.4 * mainDiameter) / mainSolid + (crankpinLength + 0.4 * crankpinDiameter) / pinSolid + (throwRadius - 0.2 * (mainDiameter + crankpinDiameter)) / webSolid',
      'Ker Wilson: both journals reach into their webs, and the web is shorter by as much.',
      { units: { length: 'mm' }, source: 'ker-wilson-throw' },
    ),
    carterLength: is(
      '(mainLength + 0.8 * crankWebThickness) / mainSolid + 0.75 * crankpinLength / pinSolid + 1.5 * throwRadius / webSolid',
      'Carter: fitted to other cranks.',
      { units: { length: 'mm' }, source: 'ker-wilson-throw' },
    ),
    kerWilson: is(
      'crankShearModulus * pi * mainDiameter^4 / (32 * kerWilsonLength)',
      'A plain shaft of that length.',
    ),
    carter: is(
      'crankShearModulus * pi * mainDiameter^4 / (32 * carterLength)',
      'And of the other.',
    ),
    mean: is('(kerWilson + carter) / 2', 'Neither is known to be the better one.'),
    apart: is('abs(kerWilson - carter)', 'Their difference says how little is known.'),
  },
  limits: [
    {
      id: 'apart',
      holds: (_, { mean, apart }) => apart < 0.35 * mean,
      say: 'The two formulas differ by more than a third here: this throw is unlike the cranks that they were made from. Measure it, or ask the maker.',
    },
  ],
  validity: [
    {
      id: 'overlap',
      label: 'Throw over the sum of both journals’ radii',
      symbol: 'r/ΣR',
      kind: 'ratio',
      of: (input) => input.stroke / (input.mainDiameter + input.crankpinDiameter),
      possible: [0.4, 3],
    },
  ],
  assumptions: [
    'Both formulas were fitted to twisted cranks of their day, with plain webs and little overlap. On a modern crank either may be off by 10 to 30 per cent; overlap makes the real one stiffer.',
    'From memory, not read again: no worked example stands behind them here.',
    'Counterweights, fillets, drillings and keyways are left out, and so are the bearings, which hold a twisted throw.',
    'The crankpin is one piece between its webs. A split pin has a web between its halves, which these formulas do not know.',
  ],
  cautions: ['twist-numbers'],
  sources: ['ker-wilson-throw'],
  sweep: { input: 'crankpinDiameter', output: 'mean' },
  solve: { input: 'mainDiameter', output: 'mean' },
  exercise: {
    ask: 'carterLength',
    tolerance: 0.01,
    given: { crankWebThickness: 0.1, crankWebWidth: 0.1, crankpinLength: 0.1 },
    also: [
      { kind: 'number', ask: 'carter', tolerance: 0.02, given: { crankWebThickness: 0.1 } },
      { kind: 'choice', ask: 'mean', given: { crankpinDiameter: 0.08, crankWebThickness: 0.1 } },
    ],
  },
});
