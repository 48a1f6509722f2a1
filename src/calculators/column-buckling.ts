import { bucklingStresses, slendernessOf } from '../core/column.ts';
import { above } from '../core/refuse.ts';
import { defineCalculator } from './define.ts';
import {
  endFactor,
  gyrationRadius,
  rankineDivisor,
  rodLength,
  shankArea,
  yieldStrength,
  youngsModulus,
} from './quantities.ts';

const stress = { type: 'number', kind: 'pressure', metric: 'MPa', inch: 'ksi' } as const;
const force = { type: 'number', kind: 'force' } as const;
const ratio = { type: 'number', kind: 'ratio' } as const;

/** Buckling of a bar of any section, by three schools, to lay textbook cases and rods on one scale. */
export const columnBuckling = defineCalculator({
  id: 'column-buckling',
  title: 'Buckling of any bar',
  purpose: 'At what push a straight bar of any section gives way: Euler, Johnson, Rankine.',
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
    johnsonLoad: {
      ...force,
      label: 'Johnson’s load, Euler’s where the bar is slender',
      symbol: 'F_J',
      phrase: 'Johnson’s buckling load',
      main: true,
    },
    johnsonStress: { ...stress, label: 'Johnson’s stress', symbol: 'σ_J' },
    eulerLoad: { ...force, label: 'Euler’s load', symbol: 'F_E' },
    eulerStress: { ...stress, label: 'Euler’s stress', symbol: 'σ_E' },
    rankineLoad: {
      ...force,
      label: 'Rankine’s load, with the divisor that fits the material',
      symbol: 'F_R',
    },
    rankineGivenLoad: {
      ...force,
      label: 'Rankine’s load, with the textbook’s divisor',
      symbol: 'F_R,tb',
    },
    overstatement: {
      ...ratio,
      metric: 'pct',
      inch: 'pct',
      label: 'What the textbook’s divisor promises too much',
      symbol: 'e_R',
    },
    crushLoad: { ...force, label: 'Load at yield, no length at all', symbol: 'F_y' },
    slenderness: { ...ratio, label: 'Slenderness', symbol: 's' },
    transition: {
      ...ratio,
      label: 'Slenderness where Johnson runs into Euler',
      symbol: 's_t',
    },
    divisor: { ...ratio, label: 'Divisor that fits the material', symbol: 'c_fit' },
  },
  compute: (input) => {
    const slenderness = slendernessOf(input);
    const area = above('shankArea', input.shankArea);
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
  steps: [
    {
      of: 'slenderness',
      formula: 'endFactor * rodLength / gyrationRadius',
      say: 'Free length over the radius of gyration.',
    },
    {
      of: 'transition',
      formula: 'pi * sqrt(2 * youngsModulus / yieldStrength)',
      say: 'Where Johnson’s parabola touches Euler’s curve, at half of yield.',
    },
    {
      of: 'eulerStress',
      formula: 'pi^2 * youngsModulus / slenderness^2',
      say: 'A perfectly straight elastic bar bows out at this mean stress.',
    },
    { of: 'eulerLoad', formula: 'eulerStress * shankArea', say: 'Times the area.' },
    {
      of: 'johnsonStress',
      tex: '\\sigma_\\mathrm{J} = R_\\mathrm{p}\\,\\Bigl(1 - \\frac{R_\\mathrm{p}}{4\\,\\sigma_\\mathrm{E}}\\Bigr)\\ \\text{below } s_\\mathrm{t},\\quad \\sigma_\\mathrm{E}\\ \\text{above}',
      say: 'The parabola below the transition, Euler’s curve above it.',
      source: 'shigley-mischke-2001',
    },
    { of: 'johnsonLoad', formula: 'johnsonStress * shankArea', say: 'Times the area.' },
    { of: 'crushLoad', formula: 'yieldStrength * shankArea', say: 'A bar too short to bow.' },
    {
      of: 'divisor',
      formula: 'pi^2 * youngsModulus / yieldStrength',
      say: 'The divisor with which Rankine’s formula runs into Euler’s curve.',
    },
    {
      of: 'rankineLoad',
      formula: 'crushLoad / (1 + slenderness^2 / divisor)',
      say: 'Rankine’s formula with that divisor.',
    },
    {
      of: 'rankineGivenLoad',
      formula: 'crushLoad / (1 + slenderness^2 / rankineDivisor)',
      say: 'The same with the divisor as a textbook gives it.',
      source: 'khurmi-gupta-machine-design-2005',
    },
    {
      of: 'overstatement',
      formula: 'rankineGivenLoad / rankineLoad - 1',
      say: 'The one over the other.',
    },
  ],
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
      tested: [78.48, 192],
    },
  ],
  assumptions: [
    'A straight bar, a push through its middle, one section. A push a tenth of the height off the middle can cost half of the load of a stout bar.',
    'Yield in compression is taken as that in tension.',
    'The area is that of the shank field, which here stands for any section.',
  ],
  cautions: [],
  sources: ['shigley-mischke-2001', 'khurmi-gupta-machine-design-2005', 'hibbeler-columns'],
  sweep: { input: 'rodLength', output: 'johnsonLoad' },
  solve: { input: 'rodLength', output: 'johnsonLoad' },
  exercise: { ask: 'johnsonLoad', tolerance: 0.01 },
});
