import { is, length, millimetres, ratio } from '../step.ts';

/** Lamé's two rings, shared by both calculators of the page. */
export const ringSteps = {
  shellBore: length(
    'd_sh',
    'rodHousing - 2 * rodShellWall',
    'The bore between the shells, by measure.',
    { units: millimetres },
  ),
  housingGive: ratio(
    'k_h',
    '(housingOutside^2 + rodHousing^2) / (housingOutside^2 - rodHousing^2) + housingPoisson',
    'How readily the big end gives, taken as a ring: the thinner, the more.',
    { units: millimetres, source: 'ugural-fenster-1981' },
  ),
  shellGive: ratio(
    'k_sh',
    '(rodHousing^2 + shellBore^2) / (rodHousing^2 - shellBore^2) - 0.3',
    'How readily the shells give, taken as a ring pressed from outside.',
    { units: millimetres },
  ),
};

/** The working of the crush. */
export const bearingCrushSteps = {
  interference: is(
    '2 * crushHeight / pi',
    'Both halves together are two crush heights too long; round the whole circle that is the diameter times π.',
    { units: millimetres },
  ),
  ...ringSteps,
  pressureShop: is(
    'interference / (rodHousing * (housingGive / youngsModulus + shellGive / shellModulus))',
    'The big end opens and the shells close until together they have made room for the interference.',
    { units: millimetres, source: 'ugural-fenster-1981' },
  ),
  fitHot: length(
    'δ_hot',
    'interference + rodHousing * (shellExpansion - rodExpansion) * (rodTemperature - assemblyTemperature)',
    'Warming, the rod grows away from its shells; what is left of the interference goes on pressing.',
    { units: millimetres },
  ),
  pressureHot: is(
    'max(0, fitHot) / (rodHousing * (housingGive / youngsModulus + shellGive / shellModulus))',
    'The same rings with what is left; nothing left, no pressure.',
    { units: millimetres },
  ),
  fitCold: length(
    'δ_cold',
    'interference + rodHousing * (shellExpansion - rodExpansion) * (coldStartTemperature - assemblyTemperature)',
    'In frost an aluminium rod closes on its shells.',
    { units: millimetres },
  ),
  pressureCold: is(
    'max(0, fitCold) / (rodHousing * (housingGive / youngsModulus + shellGive / shellModulus))',
    'And presses harder.',
    { units: millimetres },
  ),
  shellHoop: is(
    '-pressureShop * rodHousing / (2 * rodShellWall)',
    'The pressure round half a circle is held by the two walls it ends in. Negative is compression.',
    { units: millimetres },
  ),
  jointForce: is(
    'pressureShop * rodHousing * rodShellWidth / 2',
    'The bolts close the joint against the shells’ ends first. That much of their clamp is not left for the parting faces.',
    { units: millimetres },
  ),
  touching: is(
    'max(0, crushHeight - pi / 2 * fitHot)',
    'The crush height that the warm rod would use up exactly.',
    { units: millimetres },
  ),
  opening: is(
    'interference - 2 * shellBore * rodHousing^2 / (rodHousing^2 - shellBore^2) * pressureShop / shellModulus',
    'The free shells are too large by the interference and are squeezed back by part of it. The rest opens the bore.',
    { units: millimetres },
  ),
  loose: is(
    'assemblyTemperature + interference / (rodHousing * (rodExpansion - shellExpansion))',
    'At this temperature the rod has outgrown the interference.',
  ),
  checkLoad: is(
    '6e6 * rodShellWidth * rodShellWall / rodHousing',
    'The load under which the maker’s block compares the length of a half shell: 6000 N for each millimetre of width times wall over bore.',
    { units: { length: 'm', force: 'N' }, source: 'neale-tribology-handbook' },
  ),
  housingGrowth: is(
    'pressureShop * rodHousing * housingGive / youngsModulus',
    'What the shells stretch the big end by.',
    { units: millimetres },
  ),
  shellBoreHoop: is(
    '-2 * pressureShop * rodHousing^2 / (rodHousing^2 - shellBore^2)',
    'Through a wall the hoop stress is not even. In the shell it is greatest at the bore.',
    { units: millimetres, source: 'ugural-fenster-1981' },
  ),
  shellContactHoop: is(
    '-pressureShop * (rodHousing^2 + shellBore^2) / (rodHousing^2 - shellBore^2)',
    'And least at its back.',
    { units: millimetres, source: 'ugural-fenster-1981' },
  ),
  housingHoop: is(
    'pressureShop * (housingOutside^2 + rodHousing^2) / (housingOutside^2 - rodHousing^2)',
    'The big end is pulled, hardest at its bore.',
    { units: millimetres, source: 'ugural-fenster-1981' },
  ),
  housingOutsideHoop: is(
    '2 * pressureShop * rodHousing^2 / (housingOutside^2 - rodHousing^2)',
    'And least at its outside.',
    { units: millimetres, source: 'ugural-fenster-1981' },
  ),
};
