import { bucklingStresses, slendernessOf } from '../../core/rods/column.ts';
import { above } from '../../core/refuse.ts';
import { defineCalculator } from '../define.ts';
import {
  endFactor,
  gyrationRadius,
  rankineDivisor,
  rodLength,
  shankArea,
  yieldStrength,
  youngsModulus,
} from '../quantities.ts';
import { load, percent, ratio, stress } from '../output.ts';
import { is } from '../step.ts';

/** Buckling of a bar of any section, by three schools, to lay textbook cases and rods on one scale. */
export const columnBuckling = defineCalculator({
  id: 'column-buckling',
  title: 'Buckling of any bar',
  purpose: 'At what push a straight bar of any section gives way: Euler, Johnson, Rankine.',
  asks: ['rodLength', 'shankArea', 'gyrationRadius', 'youngsModulus', 'yieldStrength', 'endFactor'],
  answers: ['johnsonLoad', 'eulerLoad', 'rankineLoad', 'crushLoad', 'slenderness', 'transition'],
  inputs: {
    rodLength,
    endFactor,
    shankArea,
    gyrationRadius,
    youngsModulus,
    yieldStrength,
    rankineDivisor,
  },
  outputs: {
    johnsonLoad: load('F_J', 'Johnson’s load, Euler’s where the bar is slender', {
      phrase: 'Johnson’s buckling load',
      main: true,
    }),
    johnsonStress: stress('σ_J', 'Johnson’s stress'),
    eulerLoad: load('F_E', 'Euler’s load'),
    eulerStress: stress('σ_E', 'Euler’s stress'),
    rankineLoad: load('F_R', 'Rankine’s load, with the divisor that fits the material'),
    rankineGivenLoad: load('F_R,tb', 'Rankine’s load, with the textbook’s divisor'),
    overstatement: percent('e_R', 'What the textbook’s divisor promises too much'),
    crushLoad: load('F_y', 'Load at yield, no length at all'),
    slenderness: ratio('s', 'Slenderness'),
    transition: ratio('s_t', 'Slenderness where Johnson runs into Euler'),
    divisor: ratio('c_fit', 'Divisor that fits the material'),
  },
  compute: (input) => {
    const slenderness = slendernessOf(input);
    const area = above(input, 'shankArea');
    const stresses = bucklingStresses({ ...input, slenderness }, input.rankineDivisor);
    return {
      johnsonLoad: stresses.johnson * area,
      johnsonStress: stresses.johnson,
      eulerLoad: stresses.euler * area,
      eulerStress: stresses.euler,
      rankineLoad: stresses.rankine * area,
      rankineGivenLoad: stresses.rankineGiven * area,
      overstatement: stresses.rankineGiven / stresses.rankine - 1,
      crushLoad: input.yieldStrength * area,
      slenderness,
      transition: stresses.transition,
      divisor: stresses.divisor,
    };
  },
  steps: {
    slenderness: is(
      'endFactor * rodLength / gyrationRadius',
      'Free length over the radius of gyration.',
    ),
    transition: is(
      'pi * sqrt(2 * youngsModulus / yieldStrength)',
      'Where Johnson’s parabola touches Euler’s curve, at half of yield.',
    ),
    eulerStress: is(
      'pi^2 * youngsModulus / slenderness^2',
      'A perfectly straight elastic bar bows out at this mean stress.',
    ),
    eulerLoad: is('eulerStress * shankArea', 'Times the area.'),
    johnsonStress: is(
      'when(slenderness < transition, yieldStrength * (1 - yieldStrength / (4 * eulerStress)), eulerStress)',
      'The parabola below the transition, Euler’s curve above it.',
      { units: { pressure: 'MPa' }, source: 'budynas-nisbett-2011' },
    ),
    johnsonLoad: is('johnsonStress * shankArea', 'Times the area.'),
    crushLoad: is('yieldStrength * shankArea', 'A bar too short to bow.'),
    divisor: is(
      'pi^2 * youngsModulus / yieldStrength',
      'The divisor with which Rankine’s formula runs into Euler’s curve.',
    ),
    rankineLoad: is(
      'crushLoad / (1 + slenderness^2 / divisor)',
      'Rankine’s formula with that divisor.',
    ),
    rankineGivenLoad: is(
      'crushLoad / (1 + slenderness^2 / rankineDivisor)',
      'The same with the divisor as a textbook gives it.',
      { source: 'khurmi-gupta-machine-design-2005' },
    ),
    overstatement: is('rankineGivenLoad / rankineLoad - 1', 'The one over the other.'),
  },
  limits: [
    {
      id: 'johnson-ends',
      holds: (_, { slenderness, transition }) => slenderness < transition,
      say: 'The bar is slender: Euler’s curve decides, and more yield strength would not help.',
    },
  ],
  validity: [
    {
      id: 'slenderness',
      label: 'Slenderness',
      symbol: 's',
      kind: 'ratio',
      of: (_, { slenderness }) => slenderness,
      possible: [0, 300],
    },
  ],
  assumptions: [
    'A straight bar, a push through its middle, one section. A push a tenth of the height off the middle can cost half of the load of a stout bar.',
    'Yield in compression is taken as that in tension.',
    'The area is that of the beam field, which here stands for any section.',
  ],
  cautions: [],
  sources: ['budynas-nisbett-2011', 'khurmi-gupta-machine-design-2005', 'hibbeler-columns'],
  sweep: { input: 'rodLength', output: 'johnsonLoad' },
  solve: { input: 'rodLength', output: 'johnsonLoad' },
  exercise: {
    ask: 'johnsonLoad',
    tolerance: 0.01,
    given: { rodLength: 0.12, shankArea: 0.2, gyrationRadius: 0.15, yieldStrength: 0.2 },
    also: [
      { kind: 'number', ask: 'slenderness', given: { rodLength: 0.12, gyrationRadius: 0.15 } },
      {
        kind: 'choice',
        ask: 'eulerLoad',
        given: { rodLength: 0.12, gyrationRadius: 0.12, shankArea: 0.15 },
      },
      {
        kind: 'order',
        ask: 'eulerLoad',
        given: { rodLength: 0.12, gyrationRadius: 0.12, shankArea: 0.15 },
      },
    ],
  },
});
