import { ringSteps } from './bearing-crush.steps.ts';
import { is, length, millimetres } from '../step.ts';

/** The working of the clearance: the sum of the parts, then what a temperature makes of it. */
export const bearingClearanceSteps = {
  computed: is(
    'rodHousing - 2 * rodShellWall - crankpinDiameter',
    'What the housing leaves once two walls and the journal are in it.',
    { units: millimetres },
  ),
  ...ringSteps,
  fitShop: length(
    'δ_0',
    '2 * crushHeight / pi',
    'The crush of both halves, as an interference on the diameter.',
    { units: millimetres },
  ),
  pressureShop: is(
    'fitShop / (rodHousing * (housingGive / youngsModulus + shellGive / shellModulus))',
    'What it presses with.',
    { units: millimetres, source: 'ugural-fenster-1981' },
  ),
  opening: is(
    'fitShop - 2 * shellBore * rodHousing^2 / (rodHousing^2 - shellBore^2) * pressureShop / shellModulus',
    'The free shells are too large by the crush and are squeezed back by part of it. The rest opens the bore.',
    { units: millimetres },
  ),
  predicted: is('computed + opening', 'So much a gauge should read.', { units: millimetres }),
  clearance: is(
    'when(given(rodClearance), rodClearance, predicted)',
    'The measured oil clearance is believed where there is one. The prediction stands in for it, and checks it.',
    { units: millimetres },
  ),
  gaugeDifference: is('rodClearance - predicted', 'The reading less the prediction.', {
    units: millimetres,
  }),
  leastClearance: is(
    'clearance - (journalOutOfRound + journalTaper) / 2',
    'Where the journal is largest, half its out-of-round and half its taper are gone.',
    { units: millimetres },
  ),
  greatestClearance: is(
    'clearance + (journalOutOfRound + journalTaper) / 2',
    'Where it is smallest, they are added, and the oil leaves there.',
    { units: millimetres },
  ),
  perDiameter: is(
    'clearance / crankpinDiameter',
    'A micrometre for each millimetre is the same as a thou for each inch.',
    { units: millimetres },
  ),
  practiceLow: is(
    '0.00075 * crankpinDiameter',
    'The lower end of the rule of thumb. Common practice, printed in trade articles.',
    { units: millimetres, source: 'clearance-rule-article' },
  ),
  practiceHigh: is('0.001 * crankpinDiameter', 'The upper end of it.', {
    units: millimetres,
    source: 'clearance-rule-article',
  }),
  fitHot: length(
    'δ_hot',
    'fitShop + rodHousing * (shellExpansion - rodExpansion) * (rodTemperature - assemblyTemperature)',
    'The rod’s growth is taken out of the crush first.',
    { units: millimetres },
  ),
  pressureHot: is(
    'max(0, fitHot) / (rodHousing * (housingGive / youngsModulus + shellGive / shellModulus))',
    'What is left goes on pressing.',
    { units: millimetres },
  ),
  shellGrowth: length(
    'Δ_sh',
    'shellBore * shellExpansion * (rodTemperature - assemblyTemperature)',
    'The bore between the shells grows as they warm.',
    { units: millimetres },
  ),
  springBack: length(
    'Δ_p',
    '2 * shellBore * rodHousing^2 / (rodHousing^2 - shellBore^2) * (pressureShop - pressureHot) / shellModulus',
    'It springs open by as much as it is squeezed less.',
    { units: millimetres },
  ),
  journalGrowth: length(
    'Δ_j',
    'crankpinDiameter * crankExpansion * (crankpinTemperature - assemblyTemperature)',
    'The journal grows into it.',
    { units: millimetres },
  ),
  clearanceHot: is(
    'clearance + shellGrowth + springBack - journalGrowth',
    'Together they make the clearance running.',
    { units: millimetres },
  ),
  loose: is(
    'assemblyTemperature + fitShop / (rodHousing * (rodExpansion - shellExpansion))',
    'At this temperature the rod has outgrown the crush.',
  ),
  gapHot: is('max(0, -fitHot)', 'Beyond it a gap opens behind the shells.', {
    units: millimetres,
  }),
  freeHot: is(
    'clearance + (rodHousing * rodExpansion - 2 * rodShellWall * shellExpansion) * (rodTemperature - assemblyTemperature) - journalGrowth',
    'The clearance running if housing, shells and journal each grew freely, without any crush.',
    { units: millimetres },
  ),
  fitCold: length(
    'δ_cold',
    'fitShop + rodHousing * (shellExpansion - rodExpansion) * (coldStartTemperature - assemblyTemperature)',
    'The crush at the coldest start.',
    { units: millimetres },
  ),
  pressureCold: is(
    'max(0, fitCold) / (rodHousing * (housingGive / youngsModulus + shellGive / shellModulus))',
    'What the shells press with then.',
    { units: millimetres },
  ),
  springCold: length(
    'Δ_p,cold',
    '2 * shellBore * rodHousing^2 / (rodHousing^2 - shellBore^2) * (pressureShop - pressureCold) / shellModulus',
    'By how much the shells are squeezed less: negative where they are squeezed more.',
    { units: millimetres },
  ),
  clearanceCold: is(
    'clearance + (shellBore * shellExpansion - crankpinDiameter * crankExpansion) * (coldStartTemperature - assemblyTemperature) + springCold',
    'Shells and journal shrink as well; together they make the clearance at the coldest start.',
    { units: millimetres },
  ),
};
