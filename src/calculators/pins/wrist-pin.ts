import { flatByPoints, ovalByMethod, ovalByPoints, ovalInBore } from '../../core/pins/pin-oval.ts';
import { above, atLeast } from '../../core/refuse.ts';
import { deadCentreAcceleration } from '../../core/loads/reversal-load.ts';
import {
  boreAt,
  boreForModulus,
  boreForVolume,
  pinBody,
  pinLoads,
  pinStress,
} from '../../core/pins/wrist-pin.ts';
import { defineCalculator, type Absent } from '../define.ts';
import {
  bore,
  bossGap,
  crankcasePressure,
  lockMass,
  maxSpeed,
  peakPressure,
  pinBore,
  pinDensity,
  pinDiameter,
  pinLength,
  pinModulus,
  pinTaperBore,
  pinTaperLength,
  pistonMass,
  ringMass,
  rodLength,
  smallEndWidth,
  stroke,
  torqueSpeed,
} from '../quantities.ts';
import { pinComparisons, pinOutputs } from './wrist-pin.outputs.ts';
import { pinSteps } from './wrist-pin.steps.ts';

const even: Absent = { absent: 'even as a solid bar this diameter does not reach it' };

export const wristPin = defineCalculator({
  id: 'wrist-pin',
  title: 'Wrist pin',
  purpose:
    'What a wrist pin weighs, how hard it is pressed in its seats, and how far it bends, shears and goes oval.',
  asks: ['pinDiameter', 'pinBore', 'pinLength', 'peakPressure', 'maxSpeed', 'pistonMass'],
  answers: ['mass', 'bending', 'ovalization', 'smallEndPressure', 'bossPressure', 'shear'],
  inputs: {
    pinDiameter,
    pinBore,
    pinTaperBore,
    pinTaperLength,
    pinLength,
    smallEndWidth,
    bossGap,
    pinDensity,
    pinModulus,
    bore,
    peakPressure,
    crankcasePressure,
    torqueSpeed,
    maxSpeed,
    stroke,
    rodLength,
    pistonMass,
    ringMass,
    lockMass,
  },
  outputs: pinOutputs,
  compute: (input) => {
    const { volume, boreRatio, sectionModulus } = pinBody(input);
    const mass = above(input, 'pinDensity') * volume;
    above(input, 'pinModulus');
    const { top } = deadCentreAcceleration(input);
    const loads = pinLoads({
      bore: input.bore,
      peakPressure: input.peakPressure,
      crankcasePressure: input.crankcasePressure,
      bossMass:
        atLeast(input, 'pistonMass') + atLeast(input, 'ringMass') + atLeast(input, 'lockMass'),
      pinMass: mass,
      topFactor: top,
      torqueSpeed: input.torqueSpeed,
      maxSpeed: input.maxSpeed,
    });
    const { pushLoad, pullLoad } = loads;
    const stress = pinStress(input, input, pushLoad);
    return {
      mass,
      ...loads,
      ...stress,
      bendingPull: pinStress(input, input, pullLoad).bending,
      pullShare: pullLoad / pushLoad,
      boreRatio,
      sectionModulus,
      ovalization: ovalByMethod(input, pushLoad) ?? {
        absent: 'the cited method is stated for a bore ratio from 0.4 to 0.8 only',
      },
      ovalClose: ovalInBore(input, pushLoad),
      ovalPoints: ovalByPoints(input, pushLoad),
      flatPoints: flatByPoints(input, pushLoad),
      gapBore: boreAt(input, input.bossGap / 2),
      diameterRatio: input.pinDiameter / input.bore,
    };
  },
  comparisons: pinComparisons,
  compare: ({ baseline, candidate }) => {
    const { pinDiameter: d, pinLength, smallEndWidth, bossGap } = candidate.input;
    const span = pinLength + 2 * bossGap - 1.5 * smallEndWidth;
    const full = (candidate.output.pushLoad * span) / (1.2 * d ** 3 * baseline.output.bending);
    return {
      equalModulusBore: boreForModulus(d, baseline.output.sectionModulus) ?? even,
      equalBendingBore: full > 0 && full <= 1 ? d * (1 - full) ** 0.25 : even,
      equalMassBore:
        boreForVolume(candidate.input, baseline.output.mass / candidate.input.pinDensity) ?? even,
    };
  },
  steps: pinSteps,
  limits: [
    {
      id: 'method-range',
      holds: (_, { boreRatio }) => boreRatio >= 0.4 && boreRatio <= 0.8,
      say: 'The bore ratio lies outside 0.40 to 0.80, the range for which the cited ovalization method is stated. That says nothing about the pin; it says that this method is silent on it.',
    },
    {
      id: 'old-limits',
      holds: (_, { bending, smallEndPressure, bossPressure }) =>
        bending <= 250e6 && smallEndPressure <= 60e6 && bossPressure <= 50e6,
      say: 'At least one number lies above the values the cited textbook gives for engines of its day (bending to 250 MPa, small end to 60 MPa, bosses to 50 MPa). Racing pins often do, with other steels, coatings and a short service life. Outside a stated range means outside what was tried there; it is not a forecast of failure.',
    },
    {
      id: 'boss-aluminium',
      holds: (_, { bossPressure }) => bossPressure <= 69e6,
      say: 'The boss pressure is above 69 MPa, which a handbook states as the most for an aluminium boss. Ask the piston’s maker.',
    },
    {
      id: 'pushed',
      holds: (_, { pushLoad }) => pushLoad > 0,
      say: 'At this speed the parts take more than the gas gives, so that the pin is pulled even at the peak pressure. Stress signs are turned round.',
    },
    {
      id: 'pull-rules',
      holds: (_, { pushLoad, pullLoad }) => pullLoad <= Math.abs(pushLoad),
      say: 'The pull at the highest speed is greater than the push. Judge the pin by the pull.',
    },
    {
      id: 'taper-in-eye',
      holds: ({ pinTaperLength, pinLength, smallEndWidth }) =>
        pinTaperLength === 0 || pinLength / 2 - pinTaperLength >= smallEndWidth / 2,
      say: 'The tapers reach into the small end, where bending is greatest. The bending stress shown is that of the straight part in the middle and is too low near the end of the eye.',
    },
  ],
  validity: [
    {
      id: 'bore-ratio',
      label: 'Bore over diameter',
      symbol: 'α',
      kind: 'ratio',
      of: (_, { boreRatio }) => boreRatio,
      possible: [0, 1],
    },
  ],
  assumptions: [
    'The eye presses evenly along its width, and the bosses press in one of two ways that enclose what they do. A real pin bends, rides on the edges, and the truth lies between the two bending stresses.',
    'Simple bending of a bar that is only two or three diameters long. It gives the order of the stress and the right comparison of two pins, not the stress a strain gauge would read.',
    'Bending uses the bore in the middle. Tapered mouths change the mass and the shear, not the bending.',
    'Ovalization as if eye and bosses pressed on each other through the whole length of the pin. They stand side by side, so the pin twists from one shape into the other, and the true movement is smaller at most places. Good for comparing two pins.',
    'The peak pressure is taken at TDC. At 15° the parts take off about 5 % less, which adds less than 1 % to the push in the example engines.',
    'The mean cycle. Single cycles peak 4 to 12 % higher (one standard deviation): enter the mean with three of them added to see the worst.',
    'The eye gets the push less the pin’s own inertia, 4 % in the example engines, which is neglected.',
    'Press fit, oil film, heat and wear of coatings are left out. The eye of a pressed pin carries a hoop stress before any load.',
  ],
  cautions: ['pin', 'reversal'],
  sources: [
    'khurmi-gupta-machine-design-2005',
    'kolchin-demidov-1984',
    'roark-young-budynas-2002',
    'neale-tribology-handbook',
  ],
  sweep: { input: 'pinBore', output: 'bending' },
  solve: { input: 'pinBore', output: 'bending' },
  exercise: {
    ask: 'mass',
    tolerance: 0.01,
    given: { pinDiameter: 0.08, pinBore: 0.1, pinLength: 0.12 },
    also: [
      { kind: 'number', ask: 'gasLoad', given: { peakPressure: 0.2, bore: 0.12 } },
      {
        kind: 'number',
        ask: 'bossPressure',
        tolerance: 0.02,
        given: { pinDiameter: 0.08, pinLength: 0.1, peakPressure: 0.15 },
      },
      { kind: 'choice', ask: 'mass' },
      {
        kind: 'order',
        ask: 'bossPressure',
        given: { pinDiameter: 0.1, pinLength: 0.12, peakPressure: 0.15 },
      },
    ],
  },
});
