import { bucklingStresses } from '../../core/rods/column.ts';
import { shankForces, whipMoment as whipMomentOf, whipPlace } from '../../core/rods/rod-shank.ts';
import { above, atLeast } from '../../core/refuse.ts';
import { shankSection as cutOf } from '../../core/rods/shank-section.ts';
import { defineCalculator } from '../define.ts';
import {
  assemblyTemperature,
  bore,
  crankcasePressure,
  flangeThickness,
  lockMass,
  maxSpeed,
  peakAngle,
  peakPressure,
  pinMass,
  pistonMass,
  pistonToHead,
  ringMass,
  rodDensity,
  rodExpansion,
  rodLength,
  rodMassAbove,
  rodTemperature,
  shankHeight,
  shankWidth,
  shankArea,
  shankLength,
  shankSection,
  stretchFactor,
  stroke,
  webThickness,
  yieldStrength,
  youngsModulus,
} from '../quantities.ts';
import { areaFrom, shankShape } from './rod-shank.choices.ts';
import { shankOutputs } from './rod-shank.outputs.ts';
import { shankSteps } from './rod-shank.steps.ts';

export const rodShank = defineCalculator({
  id: 'rod-shank',
  title: 'Rod beam',
  purpose:
    'What the beam of a rod carries in pull, push and whip, how near it is to buckling, and how much longer it gets.',
  asks: [
    'shankHeight',
    'shankWidth',
    'flangeThickness',
    'webThickness',
    'maxSpeed',
    'peakPressure',
  ],
  answers: [
    'pullStress',
    'lowSpeedStress',
    'clearanceLeft',
    'bucklingMargin',
    'amplitude',
    'whipStress',
  ],
  inputs: {
    shankShape,
    shankHeight,
    shankWidth,
    flangeThickness,
    webThickness,
    areaFrom,
    shankArea,
    maxSpeed,
    stroke,
    rodLength,
    shankLength,
    pistonMass,
    ringMass,
    lockMass,
    pinMass,
    shankSection,
    rodMassAbove,
    bore,
    peakPressure,
    peakAngle,
    crankcasePressure,
    youngsModulus,
    rodDensity,
    yieldStrength,
    stretchFactor,
    rodExpansion,
    rodTemperature,
    assemblyTemperature,
    pistonToHead,
  },
  outputs: shankOutputs,
  compute: (input) => {
    const cut = cutOf(input);
    const area = input.areaFrom === 'given' ? above(input, 'shankArea') : cut.area;
    const { pull, push, lowSpeedPush } = shankForces(input);
    const radiusX = Math.sqrt(cut.secondMomentX / area);
    const radiusY = Math.sqrt(cut.secondMomentY / area);
    const slendernessX = input.rodLength / radiusX;
    const slendernessY = input.rodLength / 2 / radiusY;
    const buckling = bucklingStresses({
      ...input,
      slenderness: Math.max(slendernessX, slendernessY),
    });
    const whipMoment = whipMomentOf({ ...input, area });
    above(input, 'shankLength');
    const shankStretch = (pull * input.shankLength) / (input.youngsModulus * area);
    const rodStretch = atLeast(input, 'stretchFactor', 1) * shankStretch;
    const growth =
      input.rodExpansion * input.rodLength * (input.rodTemperature - input.assemblyTemperature);
    const pullStress = pull / area;
    const lowSpeedStress = lowSpeedPush / area;
    return {
      pullStress,
      lowSpeedStress,
      pushStress: push / area,
      whipStress: whipMoment / cut.modulusX,
      amplitude: (pullStress + lowSpeedStress) / 2,
      meanStress: (pullStress - lowSpeedStress) / 2,
      clearanceLeft: input.pistonToHead - rodStretch - growth,
      rodStretch,
      shankStretch,
      growth,
      bucklingShare: buckling.johnson / input.yieldStrength,
      johnsonStress: buckling.johnson,
      rankineStress: buckling.rankine,
      rankineTextbook: buckling.rankineGiven,
      bucklingMargin:
        lowSpeedPush > 0
          ? (buckling.johnson * area) / lowSpeedPush
          : { absent: 'nothing pushes: the peak pressure is not above the crankcase’s' },
      slendernessX,
      slendernessY,
      pull,
      push,
      lowSpeedPush,
      area,
      secondMomentX: cut.secondMomentX,
      secondMomentY: cut.secondMomentY,
      momentRatio: cut.secondMomentX / cut.secondMomentY,
      radiusX,
      radiusY,
      modulusX: cut.modulusX,
      whipMoment,
      whipPlace: whipPlace * input.rodLength,
      shankMass: input.rodDensity * area * input.rodLength,
      eulerStress: buckling.euler,
      transition: buckling.transition,
      divisor: buckling.divisor,
      flangeSpan: cut.flangeSpan,
      flangeWidth: cut.flangeWidth,
      sectionArea: cut.area,
      alongFlanges: cut.alongFlanges,
      alongWeb: cut.alongWeb,
    };
  },
  steps: shankSteps,
  limits: [
    {
      id: 'shank-within-rod',
      holds: ({ shankLength, rodLength }) => shankLength < rodLength,
      say: 'The beam between the eyes is as long as the rod from centre to centre, or longer. Measure between the rings of the two eyes.',
    },
    {
      id: 'area-fits-section',
      holds: (_, { area, sectionArea }) => area < 1.25 * sectionArea && area > 0.8 * sectionArea,
      say: 'The area given and the one from the four dimensions differ by more than a fifth. Fillets explain 3 to 8 %.',
    },
    {
      id: 'push-below-yield',
      holds: ({ yieldStrength }, { lowSpeedStress, pullStress }) =>
        Math.max(lowSpeedStress, pullStress) < yieldStrength,
      say: 'A stress is above the yield strength entered: the formulas for an elastic rod end here.',
    },
    {
      id: 'runs-hot',
      holds: ({ rodTemperature, assemblyTemperature }) => rodTemperature >= assemblyTemperature,
      say: 'The rod is colder than when it was measured, so it shrinks.',
    },
  ],
  validity: [
    {
      id: 'slenderness',
      label: 'Slenderness in the plane of motion',
      symbol: 's_x',
      kind: 'ratio',
      of: (_, { slendernessX }) => slendernessX,
      possible: [0, 200],
    },
  ],
  assumptions: [
    'One section from eye to eye, with sharp corners. Fillets add 3 to 8 % of area (common practice, no source); the beam of most rods grows towards the big end, so the least section is the one to enter.',
    'The stresses are means over the section. At the run-out of a fillet, at an oil drilling, at a forging mark or at the bolt seat the metal carries 1.1 to 2.5 times as much (common practice, no source), and that is where rods crack.',
    'Push at low speed: peak pressure straight down the rod, with no inertia. That is the most it can be: the peak follows the filling, which is poorer at the bottom of the speed range, so the hardest push comes somewhere from there to the speed of greatest torque.',
    'Amplitude: greatest pull at the highest speed against greatest push at low speed. The two do not follow each other in one turn of the crank, so this is the widest swing, not the commonest.',
    'Mean of one cycle’s peak pressure. Single cycles reach a fifth more.',
    'Whip: a uniform bar held at both ends. The two eyes lie at the supports and hardly bend it.',
    'Stretch: the beam between the eyes, times a factor for eyes, cap, pin and bore. The factor runs from 1.3 to 2.5 (common practice, no source); a maker’s pull figure is better.',
    'The clearance left counts this rod alone. The piston’s rock and growth, the bearing clearances, the crank’s own give, the gasket’s crush and the block’s growth are not in it. The block’s growth opens the gap, all the others close it.',
  ],
  cautions: ['rod', 'reversal', 'running'],
  sources: ['khurmi-gupta-machine-design-2005', 'budynas-nisbett-2011', 'beer-johnston-2009'],
  sweep: { input: 'maxSpeed', output: 'pullStress' },
  solve: { input: 'shankWidth', output: 'pullStress' },
  exercise: {
    ask: 'pullStress',
    tolerance: 0.01,
    given: { shankHeight: 0.1, shankWidth: 0.1, flangeThickness: 0.12, maxSpeed: 0.12 },
    also: [
      {
        kind: 'number',
        ask: 'sectionArea',
        given: { shankHeight: 0.1, shankWidth: 0.1, flangeThickness: 0.12, webThickness: 0.12 },
      },
      {
        kind: 'number',
        ask: 'growth',
        given: { rodLength: 0.12, rodTemperature: { by: 20 }, assemblyTemperature: { by: 5 } },
      },
      {
        kind: 'choice',
        ask: 'pullStress',
        given: { shankWidth: 0.12, flangeThickness: 0.12, maxSpeed: 0.12 },
      },
      { kind: 'order', ask: 'growth', given: { rodLength: 0.12, rodTemperature: { by: 20 } } },
    ],
  },
});
