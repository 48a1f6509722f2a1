import { is, millimetres } from '../step.ts';

/** The working of one set's metal, from the duty to the three sections. */
export const materialSteps = {
  pull: is(
    'reciprocatingMass * stroke / 2 * maxSpeed^2 * (1 + stroke / (2 * rodLength))',
    'The reciprocating mass times its acceleration at TDC.',
    { source: 'khurmi-gupta-machine-design-2005' },
  ),
  push: is(
    '(peakPressure - crankcasePressure) * pi * bore^2 / 4',
    'Peak pressure less the crankcase’s, on the bore.',
  ),
  amplitudeForce: is('(pull + push) / 2', 'Half the swing between the two.'),
  fatigueArea: is(
    'rodMargin * rodNotchFactor * amplitudeForce / materialFatigue',
    'The section at which the amplitude, raised by the notch, is the fatigue strength over the margin.',
    { units: millimetres },
  ),
  yieldArea: is(
    'rodMargin * max(pull, push) / materialYield',
    'The section at which the greater force is the yield strength over the margin.',
    { units: millimetres },
  ),
  marginArea: is('max(fatigueArea, yieldArea)', 'Both must be met.', { units: millimetres }),
  stretchArea: is(
    'stretchFactor * pull * shankLength / (materialModulus * stretchWanted)',
    'The section at which the whole rod stretches by just what is wanted.',
    { units: millimetres },
  ),
  bothArea: is(
    'max(marginArea, stretchArea)',
    'The least section that has the margin and holds the stretch.',
    { units: millimetres },
  ),
  marginMass: is('materialDensity * marginArea * rodLength', 'Density times section times length.'),
  stretchMass: is(
    'materialDensity * stretchArea * rodLength',
    'The same for the stretch’s section.',
  ),
  bothMass: is('materialDensity * bothArea * rodLength', 'And for the section that meets both.'),
  marginStretch: is(
    'stretchFactor * pull * shankLength / (materialModulus * marginArea)',
    'How far the rod stretches when only the margin sets its section.',
  ),
  growth: is(
    'materialExpansion * rodLength * (rodTemperature - assemblyTemperature)',
    'Expansion times length times rise of temperature.',
  ),
  sectionMass: is('materialDensity * shankArea * rodLength', 'The beam as it was entered.'),
  sectionStretch: is(
    'stretchFactor * pull * shankLength / (materialModulus * shankArea)',
    'Its stretch.',
  ),
  sectionMargin: is(
    'rodMargin * shankArea / marginArea',
    'Its margin: the one asked for, times how much more section it has than that needs.',
    { units: millimetres },
  ),
};
