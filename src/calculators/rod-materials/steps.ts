import type { Step } from '../define.ts';

const mm = { length: 'mm', area: 'mm2', pressure: 'MPa', force: 'N' } as const;

/** The working of one set's metal, from the duty to the three sections. */
export const materialSteps: readonly Step[] = [
  {
    of: 'pull',
    formula: 'reciprocatingMass * stroke / 2 * maxSpeed^2 * (1 + stroke / (2 * rodLength))',
    say: 'The sliding mass times its acceleration at TDC.',
    source: 'khurmi-gupta-machine-design-2005',
  },
  {
    of: 'push',
    formula: '(peakPressure - crankcasePressure) * pi * bore^2 / 4',
    say: 'Peak pressure less the crankcase’s, on the bore.',
  },
  {
    of: 'amplitudeForce',
    formula: '(pull + push) / 2',
    say: 'Half the swing between the two.',
  },
  {
    of: 'fatigueArea',
    formula: 'rodMargin * rodNotchFactor * amplitudeForce / materialFatigue',
    say: 'The section at which the amplitude, raised by the notch, is the fatigue strength over the margin.',
    units: mm,
  },
  {
    of: 'yieldArea',
    tex: 'A_\\mathrm{y} = \\frac{j\\,F}{R_\\mathrm{p}},\\quad F\\ \\text{the greater of pull and push}',
    say: 'The section at which the greater force is the yield strength over the margin.',
  },
  {
    of: 'marginArea',
    tex: 'A_j = \\text{the greater of } A_\\mathrm{f} \\text{ and } A_\\mathrm{y}',
    say: 'Both must be met.',
  },
  {
    of: 'stretchArea',
    formula: 'stretchFactor * pull * shankLength / (materialModulus * stretchWanted)',
    say: 'The section at which the whole rod stretches by just what is wanted.',
    units: mm,
  },
  {
    of: 'bothArea',
    tex: 'A_\\mathrm{both} = \\text{the greater of } A_j \\text{ and } A_\\delta',
    say: 'The least section that has the margin and holds the stretch.',
  },
  {
    of: 'marginMass',
    formula: 'materialDensity * marginArea * rodLength',
    say: 'Density times section times length.',
  },
  {
    of: 'stretchMass',
    formula: 'materialDensity * stretchArea * rodLength',
    say: 'The same for the stretch’s section.',
  },
  {
    of: 'bothMass',
    formula: 'materialDensity * bothArea * rodLength',
    say: 'And for the section that meets both.',
  },
  {
    of: 'marginStretch',
    formula: 'stretchFactor * pull * shankLength / (materialModulus * marginArea)',
    say: 'How far the rod stretches when only the margin sets its section.',
  },
  {
    of: 'growth',
    formula: 'materialExpansion * rodLength * (rodTemperature - assemblyTemperature)',
    say: 'Expansion times length times rise of temperature.',
  },
  {
    of: 'sectionMass',
    formula: 'materialDensity * shankArea * rodLength',
    say: 'The shank as it was entered.',
  },
  {
    of: 'sectionStretch',
    formula: 'stretchFactor * pull * shankLength / (materialModulus * shankArea)',
    say: 'Its stretch.',
  },
  {
    of: 'sectionMargin',
    formula: 'rodMargin * shankArea / marginArea',
    say: 'Its margin: the one asked for, times how much more section it has than that needs.',
    units: mm,
  },
];
