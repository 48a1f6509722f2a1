import { ringSteps } from '../bearing-crush/steps.ts';
import type { Step } from '../define.ts';

const coherent = { units: { length: 'mm', pressure: 'MPa' } } as const;

/** The working of the clearance: the sum of the parts, then what a temperature makes of it. */
export const bearingClearanceSteps: readonly Step[] = [
  {
    of: 'computed',
    formula: 'rodHousing - 2 * rodShellWall - crankpinDiameter',
    say: 'What the housing leaves once two walls and the journal are in it.',
    ...coherent,
  },
  {
    of: 'clearance',
    tex: 'c_0 = c_\\text{rod} \\quad \\text{or else} \\quad c_\\text{calc}',
    say: 'The gauge reading is believed where there is one. The sum of the parts stands in for it, and checks it.',
  },
  {
    of: 'leastClearance',
    formula: 'clearance - (journalOutOfRound + journalTaper) / 2',
    say: 'Where the journal is largest, half its out-of-round and half its taper are gone.',
    ...coherent,
  },
  {
    of: 'greatestClearance',
    formula: 'clearance + (journalOutOfRound + journalTaper) / 2',
    say: 'Where it is smallest, they are added, and the oil leaves there.',
    ...coherent,
  },
  {
    of: 'perDiameter',
    formula: 'clearance / crankpinDiameter',
    say: 'A micrometre for each millimetre is the same as a thou for each inch.',
    ...coherent,
  },
  {
    of: 'practiceLow',
    formula: '0.00075 * crankpinDiameter',
    say: 'The lower end of the rule of thumb. Common practice, printed in trade articles.',
    source: 'clearance-rule-article',
    ...coherent,
  },
  {
    of: 'practiceHigh',
    formula: '0.001 * crankpinDiameter',
    say: 'The upper end of it.',
    source: 'clearance-rule-article',
    ...coherent,
  },
  ...ringSteps,
  {
    of: 'fitShop',
    symbol: 'δ_0',
    kind: 'length',
    formula: '2 * crushHeight / pi',
    say: 'The crush of both halves, as an interference on the diameter.',
    ...coherent,
  },
  {
    of: 'pressureShop',
    formula: 'fitShop / (rodHousing * (housingGive / youngsModulus + shellGive / shellModulus))',
    say: 'What it presses with.',
    source: 'ugural-fenster-2003',
    ...coherent,
  },
  {
    of: 'fitHot',
    symbol: 'δ_hot',
    kind: 'length',
    formula:
      'fitShop + rodHousing * (shellExpansion - rodExpansion) * (rodTemperature - assemblyTemperature)',
    say: 'The rod’s growth is taken out of the crush first.',
    ...coherent,
  },
  {
    of: 'pressureHot',
    formula:
      'max(0, fitHot) / (rodHousing * (housingGive / youngsModulus + shellGive / shellModulus))',
    say: 'What is left goes on pressing.',
    ...coherent,
  },
  {
    of: 'shellGrowth',
    symbol: 'Δ_sh',
    kind: 'length',
    formula: 'shellBore * shellExpansion * (rodTemperature - assemblyTemperature)',
    say: 'The bore between the shells grows as they warm.',
    ...coherent,
  },
  {
    of: 'springBack',
    symbol: 'Δ_p',
    kind: 'length',
    formula:
      '2 * shellBore * rodHousing^2 / (rodHousing^2 - shellBore^2) * (pressureShop - pressureHot) / shellModulus',
    say: 'It springs open by as much as it is squeezed less.',
    ...coherent,
  },
  {
    of: 'journalGrowth',
    symbol: 'Δ_j',
    kind: 'length',
    formula: 'crankpinDiameter * crankExpansion * (crankpinTemperature - assemblyTemperature)',
    say: 'The journal grows into it.',
    ...coherent,
  },
  {
    of: 'clearanceHot',
    formula: 'clearance + shellGrowth + springBack - journalGrowth',
    say: 'Together they make the clearance running.',
    ...coherent,
  },
];
