import type { Step } from '../define.ts';

const coherent = { units: { length: 'mm', pressure: 'MPa', force: 'N' } } as const;

/** Lamé's two rings, shared by both calculators of the page. */
export const ringSteps: readonly Step[] = [
  {
    of: 'shellBore',
    symbol: 'd_sh',
    kind: 'length',
    formula: 'rodHousing - 2 * rodShellWall',
    say: 'The bore between the shells, by measure.',
    ...coherent,
  },
  {
    of: 'housingGive',
    symbol: 'k_h',
    kind: 'ratio',
    formula:
      '(housingOutside^2 + rodHousing^2) / (housingOutside^2 - rodHousing^2) + housingPoisson',
    say: 'How readily the big end gives, taken as a ring: the thinner, the more.',
    source: 'ugural-fenster-2003',
    ...coherent,
  },
  {
    of: 'shellGive',
    symbol: 'k_sh',
    kind: 'ratio',
    formula: '(rodHousing^2 + shellBore^2) / (rodHousing^2 - shellBore^2) - 0.3',
    say: 'How readily the shells give, taken as a ring pressed from outside.',
    ...coherent,
  },
];

/** The working of the crush. */
export const bearingCrushSteps: readonly Step[] = [
  {
    of: 'interference',
    formula: '2 * crushHeight / pi',
    say: 'Both halves together are two crush heights too long; round the whole circle that is the diameter times π.',
    ...coherent,
  },
  ...ringSteps,
  {
    of: 'pressureShop',
    formula:
      'interference / (rodHousing * (housingGive / youngsModulus + shellGive / shellModulus))',
    say: 'The big end opens and the shells close until together they have made room for the interference.',
    source: 'ugural-fenster-2003',
    ...coherent,
  },
  {
    of: 'fitHot',
    symbol: 'δ_hot',
    kind: 'length',
    formula:
      'interference + rodHousing * (shellExpansion - rodExpansion) * (rodTemperature - assemblyTemperature)',
    say: 'Warming, the rod grows away from its shells; what is left of the interference goes on pressing.',
    ...coherent,
  },
  {
    of: 'pressureHot',
    formula:
      'max(0, fitHot) / (rodHousing * (housingGive / youngsModulus + shellGive / shellModulus))',
    say: 'The same rings with what is left; nothing left, no pressure.',
    ...coherent,
  },
  {
    of: 'fitCold',
    symbol: 'δ_cold',
    kind: 'length',
    formula:
      'interference + rodHousing * (shellExpansion - rodExpansion) * (coldStartTemperature - assemblyTemperature)',
    say: 'In frost an aluminium rod closes on its shells.',
    ...coherent,
  },
  {
    of: 'pressureCold',
    formula:
      'max(0, fitCold) / (rodHousing * (housingGive / youngsModulus + shellGive / shellModulus))',
    say: 'And presses harder.',
    ...coherent,
  },
  {
    of: 'shellHoop',
    formula: '-pressureShop * rodHousing / (2 * rodShellWall)',
    say: 'The pressure round half a circle is held by the two walls it ends in. Negative is compression.',
    ...coherent,
  },
  {
    of: 'jointForce',
    formula: 'pressureShop * rodHousing * rodShellWidth / 2',
    say: 'The bolts close the joint against the shells’ ends first. That much of their clamp is not left for the parting faces.',
    ...coherent,
  },
  {
    of: 'touching',
    formula: 'max(0, crushHeight - pi / 2 * fitHot)',
    say: 'The crush height that the warm rod would use up exactly.',
    ...coherent,
  },
  {
    of: 'opening',
    formula:
      'interference - 2 * shellBore * rodHousing^2 / (rodHousing^2 - shellBore^2) * pressureShop / shellModulus',
    say: 'The free shells are too large by the interference and are squeezed back by part of it. The rest opens the bore.',
    ...coherent,
  },
  {
    of: 'checkLoad',
    formula: '6e6 * rodShellWidth * rodShellWall / rodHousing',
    say: 'The load under which the maker’s block compares the length of a half shell: 6000 N for each millimetre of width times wall over bore.',
    source: 'neale-tribology-handbook',
    units: { length: 'm', force: 'N' },
  },
  {
    of: 'housingGrowth',
    formula: 'pressureShop * rodHousing * housingGive / youngsModulus',
    say: 'What the shells stretch the big end by.',
    ...coherent,
  },
];
