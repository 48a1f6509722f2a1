import { rodAreas, rodForces, stretchOf } from '../../core/rods/rod-materials.ts';
import { above } from '../../core/refuse.ts';
import { defineCalculator, type Absent } from '../define.ts';
import {
  assemblyTemperature,
  bore,
  crankcasePressure,
  maxSpeed,
  rodNotchFactor,
  peakPressure,
  reciprocatingMass,
  rodLength,
  rodMargin,
  rodTemperature,
  shankArea,
  shankLength,
  stretchFactor,
  stretchWanted,
  stroke,
} from '../quantities.ts';
import { hotYieldShare, metalOf, rodMaterial } from './rod-materials.choices.ts';
import { materialComparisons, materialOutputs } from './rod-materials.outputs.ts';
import { materialSteps } from './rod-materials.steps.ts';

const unloaded: Absent = { absent: 'nothing pulls or pushes' };

export const rodMaterials = defineCalculator({
  id: 'rod-materials',
  title: 'Rod materials',
  purpose:
    'How thick and how heavy the beam has to be in one metal or another, for the same margin or the same stretch.',
  asks: ['rodMaterial', 'maxSpeed', 'stroke', 'rodLength', 'reciprocatingMass', 'peakPressure'],
  answers: [
    'marginMass',
    'stretchMass',
    'bothMass',
    'materialModulus',
    'materialDensity',
    'materialHotYield',
  ],
  inputs: {
    rodMaterial,
    maxSpeed,
    stroke,
    rodLength,
    reciprocatingMass,
    bore,
    peakPressure,
    crankcasePressure,
    rodMargin,
    rodNotchFactor,
    stretchWanted,
    stretchFactor,
    shankLength,
    shankArea,
    rodTemperature,
    assemblyTemperature,
  },
  outputs: materialOutputs,
  compute: (input) => {
    const metal = metalOf(input.rodMaterial);
    const forces = rodForces(input);
    const areas = rodAreas(forces, metal, input);
    const own = above(input, 'shankArea');
    const massOf = (area: number) => metal.density * area * input.rodLength;
    const share = hotYieldShare(input.rodMaterial, input.rodTemperature);
    return {
      marginMass: massOf(areas.marginArea),
      stretchMass: massOf(areas.stretchArea),
      bothMass: massOf(areas.bothArea),
      ...areas,
      marginStretch: areas.marginArea > 0 ? stretchOf(areas.marginArea, forces, metal, input) : 0,
      growth:
        metal.expansion * input.rodLength * (input.rodTemperature - input.assemblyTemperature),
      pull: forces.pull,
      push: forces.push,
      amplitudeForce: forces.amplitude,
      sectionMass: massOf(own),
      sectionStretch: stretchOf(own, forces, metal, input),
      sectionMargin: areas.marginArea > 0 ? (input.rodMargin * own) / areas.marginArea : unloaded,
      materialModulus: metal.youngsModulus,
      materialDensity: metal.density,
      materialYield: metal.yieldStrength,
      materialHotYield:
        share === undefined
          ? { absent: 'the table has no strength for this metal at this temperature' }
          : share * metal.yieldStrength,
      materialFatigue: metal.fatigueStrength,
      materialLife: metal.fatigueLife,
      materialExpansion: metal.expansion,
    };
  },
  comparisons: materialComparisons,
  compare: ({ baseline, candidate }) => {
    const forces = rodForces(baseline.input);
    const before = metalOf(baseline.input.rodMaterial);
    const after = metalOf(candidate.input.rodMaterial);
    const from = rodAreas(forces, before, baseline.input);
    const to = rodAreas(forces, after, baseline.input);
    const density = after.density / before.density;
    const softness = before.youngsModulus / after.youngsModulus;
    const loaded = from.marginArea > 0 && to.marginArea > 0;
    const marginAreaRatio = to.marginArea / from.marginArea;
    return {
      sectionMassRatio: density,
      sectionStretchRatio: softness,
      marginAreaRatio: loaded ? marginAreaRatio : unloaded,
      marginMassRatio: loaded ? density * marginAreaRatio : unloaded,
      marginStretchRatio: loaded ? softness / marginAreaRatio : unloaded,
      stretchAreaRatio: softness,
      stretchMassRatio: density * softness,
    };
  },
  steps: materialSteps,
  limits: [
    {
      id: 'hot-yield-does-not-decide',
      holds: ({ rodMargin }, { materialHotYield, marginArea, pull, push }) =>
        typeof materialHotYield !== 'number' ||
        rodMargin * Math.max(pull, push) <= materialHotYield * marginArea * (1 + 1e-9),
      say: 'At the rod’s temperature this metal has lost so much yield strength that the section for the margin no longer has it there. The sections above use the strength of the cold metal.',
    },
    {
      id: 'shank-within-rod',
      holds: ({ shankLength, rodLength }) => shankLength < rodLength,
      say: 'The beam between the eyes is as long as the rod from centre to centre, or longer. Measure between the rings of the two eyes.',
    },
    {
      id: 'margin-above-one',
      holds: ({ rodMargin }) => rodMargin >= 1,
      say: 'A margin below one asks for a section that is expected to crack within the stated life.',
    },
  ],
  validity: [
    {
      id: 'modulus',
      label: 'Young’s modulus of the metal',
      symbol: 'E',
      kind: 'pressure',
      metric: 'GPa',
      inch: 'Mpsi',
      of: (_, { materialModulus }) => materialModulus,
      possible: [40e9, 220e9],
    },
  ],
  assumptions: [
    'A beam of one section from centre to centre stands for the rod: eyes, cap and bolts follow other rules and often make up more than half of the mass. The ratios are those of the beam.',
    'The duty is held while the metal changes. A lighter small end would lower the pull a little further; a heavier one would raise it.',
    'The amplitude, half the swing from the pull at the highest speed to the push at low speed, is set against the fatigue strength for complete reversal at the life stated in the table. The push is the greater of the two, and its mean is given no credit.',
    'Table strengths are of smooth small specimens, most of them bent while turning. The notch factor stands for the beam’s own notches and finish; size, forging skin, fretting and corrosion are not in it.',
    'Typical values are what half of the bars exceed. Minimum values are what nearly all do. One set against the other flatters the typical one; the table says which is which.',
    'Fatigue strength is that of the cold metal. Aluminium loses some of it at the rod’s temperature; the table has no sourced number for that.',
    'Fatigue strengths of most steels here come from a rule, half of the tensile strength times 0.85 for a straight pull. It is good to perhaps a quarter. Those of aluminium were measured in rotating bending and count times 0.85 as well.',
  ],
  cautions: ['rod', 'reversal', 'running'],
  sources: [
    'kutz-2002',
    'sheet-7075',
    'asm-titanium-data',
    'budynas-nisbett-2011',
    'khurmi-gupta-machine-design-2005',
  ],
  sweep: { input: 'maxSpeed', output: 'marginMass' },
  solve: { input: 'maxSpeed', output: 'sectionMargin' },
  exercise: {
    ask: 'stretchMass',
    tolerance: 0.01,
    given: { maxSpeed: 0.12, stroke: 0.12, rodLength: 0.12, reciprocatingMass: 0.2 },
    also: [
      {
        kind: 'number',
        ask: 'pull',
        given: { maxSpeed: 0.12, stroke: 0.12, rodLength: 0.12, reciprocatingMass: 0.2 },
      },
      {
        kind: 'choice',
        ask: 'stretchMass',
        given: { maxSpeed: 0.12, rodLength: 0.12, reciprocatingMass: 0.2 },
      },
      {
        kind: 'order',
        ask: 'pull',
        given: { maxSpeed: 0.12, stroke: 0.12, reciprocatingMass: 0.2 },
      },
    ],
  },
});
