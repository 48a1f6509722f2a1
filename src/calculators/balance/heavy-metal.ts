import { axialHole } from '../../core/balance/drilled-hole.ts';
import {
  ligamentStress,
  slugGain,
  slugPull,
  slugSum,
  slugWalls,
} from '../../core/balance/heavy-metal.ts';
import {
  boreFactor,
  fitPressure,
  interferenceLost,
  looseAt,
} from '../../core/balance/press-fit.ts';
import { defineCalculator, optional, type Absent } from '../define.ts';
import {
  addedUnbalance,
  assemblyTemperature,
  counterweightModulus,
  counterweightRadius,
  counterweightTemperature,
  counterweightWidth,
  crankExpansion,
  keepOutRadius,
  maxSpeed,
  missedShiftSpeed,
  slugClass,
  slugCount,
  slugDensity,
  slugDiameter,
  slugExpansion,
  slugInterference,
  slugLength,
  slugModulus,
  slugRadius,
  slugSpacing,
  steelDensity,
} from '../quantities.ts';
import { classRange } from './heavy-metal.choices.ts';
import { heavyMetalOutputs } from './heavy-metal.outputs.ts';
import { heavyMetalSteps } from './heavy-metal.steps.ts';

const alone: Absent = { absent: 'there is one slug only' };
const never: Absent = { absent: 'no number of these slugs at this spacing adds up to as much' };
const tighter: Absent = { absent: 'the counterweight does not grow faster than the slug' };

/** Slugs of heavy metal in a counterweight that is too light. */
export const heavyMetal = defineCalculator({
  id: 'heavy-metal',
  title: 'Slugs in the counterweight',
  purpose: 'What slugs of tungsten alloy gain in a counterweight, and what pulls on their seats.',
  asks: ['addedUnbalance', 'slugClass', 'slugDiameter', 'slugLength', 'slugRadius', 'slugCount'],
  answers: ['perSlug', 'left', 'pull', 'slugMass', 'massGain', 'slugsNeeded'],
  inputs: {
    addedUnbalance,
    slugClass,
    slugDiameter,
    slugLength,
    slugRadius,
    slugCount,
    slugSpacing,
    slugDensity: optional(slugDensity),
    steelDensity,
    counterweightRadius,
    counterweightWidth,
    keepOutRadius,
    maxSpeed,
    missedShiftSpeed,
    slugInterference,
    slugModulus,
    counterweightModulus,
    slugExpansion,
    crankExpansion,
    counterweightTemperature,
    assemblyTemperature,
  },
  outputs: heavyMetalOutputs,
  compute: (input) => {
    const range = classRange(input.slugClass);
    const density = input.slugDensity ?? (range.least + range.most) / 2;
    const gain = slugGain(input, { slugDensity: density, steelDensity: input.steelDensity });
    const walls = slugWalls(input, input, input);
    const sum = slugSum(input, gain.unbalance, input);
    const overPull = slugPull(input, gain.mass, input, 'missedShiftSpeed');
    const outside = input.slugDiameter + 2 * walls.least;
    const pressure = fitPressure(input, outside, input.slugInterference);
    const lost = interferenceLost(input, input.counterweightTemperature);
    const warmInterference = input.slugInterference - lost;
    const opposite = axialHole(
      { holeDiameter: input.slugDiameter, pointAngle: Math.PI },
      { axialHoleRadius: input.slugRadius, steelDensity: input.steelDensity },
      input.slugLength,
    );
    return {
      perSlug: gain.unbalance,
      left: sum.left,
      pull: slugPull(input, gain.mass, input, 'maxSpeed'),
      slugMass: gain.mass,
      massGain: gain.massGain,
      slugsNeeded: sum.needed ?? never,
      lengthNeeded: sum.lengthShare * input.slugLength,
      together: sum.together,
      spread: sum.spread,
      oppositeHole: opposite.unbalance,
      density,
      classLeast: range.least,
      classMost: range.most,
      classSwing: (range.most - range.least) / 2 / (density - input.steelDensity),
      overPull,
      rimWall: walls.rim,
      besideWall: walls.beside ?? alone,
      rimStress: ligamentStress(input, overPull, walls.rim),
      besideStress:
        walls.beside === undefined ? alone : ligamentStress(input, overPull, walls.beside / 2),
      pressure,
      boreHoop: boreFactor(input.slugDiameter, outside) * pressure,
      lost,
      warmInterference,
      warmPressure: fitPressure(input, outside, warmInterference),
      looseTemperature: looseAt(input) ?? tighter,
    };
  },
  steps: heavyMetalSteps,
  limits: [
    {
      id: 'not-enough',
      holds: (input, { left }) => left < 1e-9 * input.addedUnbalance,
      say: 'These slugs add less than is wanted. A larger diameter, more length, a greater radius or a denser class adds more; so does one slug more, or a hole opposite.',
    },
    {
      id: 'long',
      holds: (input, { lengthNeeded }) => lengthNeeded <= input.counterweightWidth,
      say: 'To give all of it, slugs of this diameter and number would have to be longer than the counterweight is wide.',
    },
    {
      id: 'class',
      holds: ({ slugDensity: stated }, { classLeast, classMost }) =>
        stated === undefined ||
        (stated > classLeast * (1 - 1e-9) && stated < classMost * (1 + 1e-9)),
      say: 'The density of the certificate is outside what ASTM B777 states for this class. Look at class and certificate again.',
    },
    {
      id: 'fan',
      holds: (_, { spread }) => spread >= 0.85,
      say: 'The slugs fan out so far that more than 15 per cent of what they gain is lost. They pull as hard as others.',
    },
    {
      id: 'band',
      holds: (input) =>
        input.slugInterference > 0.002 * input.slugDiameter * (1 - 1e-9) &&
        input.slugInterference < 0.004 * input.slugDiameter * (1 + 1e-9),
      say: 'The interference is outside what a trade article of 1998 states for slugs of 1 in, 0.002 to 0.004 in, here taken in proportion to the diameter.',
    },
    {
      id: 'loose',
      holds: (_, { warmInterference }) => warmInterference > 0,
      say: 'At this temperature nothing is left of the interference: the hole has outgrown the slug, which is then free to turn and to walk along the shaft.',
    },
  ],
  validity: [
    {
      id: 'interference',
      label: 'Interference over diameter',
      symbol: 'δ_W/d_W',
      kind: 'ratio',
      metric: 'pct',
      inch: 'pct',
      of: (input) => input.slugInterference / input.slugDiameter,
      possible: [0, 0.01],
      by: ['pressure', 'boreHoop'],
    },
  ],
  assumptions: [
    'The slug fills its hole from end to end of its length, seat included. A seat drilled 2 mm deeper than an 18 mm slug fills, and left empty, costs the steel of 2 mm: a tenth of the gain.',
    'Slug and hole are parallel to the shaft, so that the metal outside the slug takes its pull. Nothing here is true of a slug set in from the rim.',
    'The nominal stresses are pulls over areas, to compare one seat with another. They know no notch, bending, fillet, rib or old hole, and not the pull of the ligament’s own metal, which is some 15 per cent of the slug’s where 4 mm are left outside 19 mm.',
    'For the fit, the metal around is a ring as thick as its thinnest place, which pulls its walls together less than a real counterweight does: pressure and hoop stress come out low there, and the hoop stress is uneven round the hole.',
    'Both metals stay elastic and smooth. Press-in flattens the peaks of rough surfaces, and with them part of the interference.',
    'The pull of a turning crank opens the hole on its outer side. What that takes of the fit is not told.',
    'All slugs stand in one plane across the shaft, about the direction in which mass is wanted.',
  ],
  cautions: ['balancing', 'slugs', 'drilling', 'twisting'],
  sources: ['astm-b777', 'shigley-budynas-solutions', 'boes-1998'],
  sweep: { input: 'slugDiameter', output: 'perSlug' },
  solve: { input: 'slugLength', output: 'together' },
  exercise: {
    ask: 'perSlug',
    tolerance: 0.01,
    given: { slugLength: 0.08, slugRadius: 0.03 },
    beside: ['not-enough', 'long', 'band', 'loose'],
    also: [
      { kind: 'number', ask: 'pull', given: { slugLength: 0.08, slugRadius: 0.03, maxSpeed: 0.1 } },
      { kind: 'number', ask: 'massGain', given: { slugLength: 0.08 } },
      {
        kind: 'number',
        ask: 'warmInterference',
        given: { slugInterference: 0.1, counterweightTemperature: { by: 15 } },
        beside: ['not-enough', 'long', 'band'],
      },
      { kind: 'choice', ask: 'perSlug', given: { slugLength: 0.08, slugRadius: 0.03 } },
    ],
  },
});
