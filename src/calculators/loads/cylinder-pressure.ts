import { halfBurntAngle } from '../../core/loads/burn.ts';
import {
  cycleEnergy,
  frictionAt,
  frictionCorrelation,
  peakTemperature,
  temperatureAt,
} from '../../core/loads/cycle-energy.ts';
import { pressureCycle } from '../../core/loads/cylinder-pressure.ts';
import { above, atLeast } from '../../core/refuse.ts';
import { pressureOutputs } from './cylinder-pressure.outputs.ts';
import { pressureSteps } from './cylinder-pressure.steps.ts';
import { defineCalculator } from '../define.ts';
import {
  airFuelLambda,
  ambientPressure,
  ambientTemperature,
  bore,
  burnDuration,
  burnedGamma,
  burnStart,
  chargeTemperature,
  combustionEfficiency,
  compressionExponent,
  compressionRatio,
  cylinders,
  exhaustOpen,
  exhaustPressure,
  expansionExponent,
  frictionMep,
  heatingValue,
  heatLoss,
  intakeClose,
  intakeOpen,
  manifoldPressure,
  maxSpeed,
  peakVariation,
  residualFraction,
  rodLength,
  stoichRatio,
  stroke,
  torqueSpeed,
  volumetricEfficiency,
  wiebeEfficiency,
  wiebeForm,
} from '../quantities.ts';

/** One point a degree over the four strokes. */
const curveSteps = 720;

export const cylinderPressure = defineCalculator({
  id: 'cylinder-pressure',
  title: 'Cylinder pressure',
  purpose:
    'What presses on the piston over the four strokes at the speed of greatest torque: the peak and its angle, the mean effective pressure, torque and power.',
  asks: ['bore', 'stroke', 'compressionRatio', 'torqueSpeed', 'volumetricEfficiency', 'burnStart'],
  answers: ['peakPressure', 'torque', 'netMep', 'peakAngle', 'worstPeak', 'closingRatio'],
  inputs: {
    bore,
    stroke,
    rodLength,
    cylinders,
    compressionRatio,
    torqueSpeed,
    maxSpeed,
    volumetricEfficiency,
    ambientPressure,
    ambientTemperature,
    chargeTemperature,
    residualFraction,
    manifoldPressure,
    exhaustPressure,
    intakeOpen,
    intakeClose,
    exhaustOpen,
    burnStart,
    burnDuration,
    wiebeEfficiency,
    wiebeForm,
    compressionExponent,
    expansionExponent,
    burnedGamma,
    heatLoss,
    airFuelLambda,
    stoichRatio,
    heatingValue,
    combustionEfficiency,
    peakVariation,
    frictionMep,
  },
  outputs: pressureOutputs,
  compute: (input) => {
    above(input, 'torqueSpeed');
    atLeast(input, 'cylinders', 1);
    const { angle, pressure, peak, model } = pressureCycle(input, curveSteps);
    const { swept } = model.volume;
    const { burnStart: start, exhaustOpen: open } = model.events;
    const energy = cycleEnergy(input, model);
    const friction = frictionAt(input);
    const displacement = swept * input.cylinders;
    const netMep = energy.net / swept;
    const brakeMep = netMep - friction;
    const torque = (brakeMep * displacement) / (4 * Math.PI);
    const worstPeak = peak.pressure * (1 + 3 * atLeast(input, 'peakVariation'));
    const closingRatio = model.closing.volume / model.volume.clearance;
    return {
      peakPressure: peak.pressure,
      peakAngle: peak.angle,
      worstPeak,
      peakForce: (Math.PI / 4) * input.bore ** 2 * worstPeak,
      netMep,
      grossMep: energy.gross / swept,
      pumpingMep: (energy.gross - energy.net) / swept,
      friction,
      frictionPublished: frictionCorrelation(input.torqueSpeed),
      brakeMep,
      torque,
      indicatedPower: (netMep * displacement * input.torqueSpeed) / (4 * Math.PI),
      power: torque * input.torqueSpeed,
      efficiency: energy.net / (model.charge.fuel * above(input, 'heatingValue')),
      closingPressure: model.closing.pressure,
      closingRatio,
      motoredPressure: model.closing.pressure * closingRatio ** input.compressionExponent,
      openingPressure: model.at(open),
      halfBurnt: halfBurntAngle(input),
      startPressure: model.compressedAt(start),
      startTemperature: temperatureAt(model, start, model.compressedAt(start)),
      hottest: peakTemperature(model),
      openingTemperature: temperatureAt(model, open),
      trappedMass: model.charge.trapped,
      fuelMass: model.charge.fuel,
      displacement,
      released: energy.released,
      grossWork: energy.closed,
      storedEnergy: energy.stored,
      wallBurning: energy.wallBurning,
      wallPolytropes: energy.wallPolytropes,
      pressureCurve: { x: angle, y: pressure },
      volumeCurve: { x: angle, y: angle.map((θ) => model.volume.at(θ)) },
    };
  },
  steps: pressureSteps,
  limits: [
    {
      id: 'friction-shape',
      holds: ({ maxSpeed: top }) => top <= (6000 * Math.PI) / 30,
      say: 'The shape of the friction over speed was fitted below 6000 rpm and is drawn out beyond that here. Set friction so that the torque agrees with a measured one.',
    },
    {
      id: 'torque-below-top',
      holds: (input) => input.torqueSpeed <= input.maxSpeed,
      say: 'The speed of greatest torque lies above the redline.',
    },
    {
      id: 'hot',
      holds: (_, { hottest }) => hottest <= 2900,
      say: 'The gas is hotter than petrol burns in air: dissociation would hold it below about 2900 K. Look at heat loss, exponents and the ratio of specific heats.',
    },
    {
      id: 'exchange',
      holds: (_, { closingPressure, openingPressure }) => openingPressure > closingPressure,
      say: 'The pressure when the exhaust opens is not above that when the intake closed: nothing burned to speak of.',
    },
  ],
  validity: [
    {
      id: 'ratio',
      label: 'Compression ratio',
      symbol: 'ε',
      kind: 'ratio',
      of: (input) => input.compressionRatio,
      possible: [1, 25],
    },
    {
      id: 'friction-speed',
      label: 'Speed at which the published friction is read',
      symbol: 'n',
      kind: 'angularSpeed',
      of: (input) => input.torqueSpeed,
      possible: [0, 2618],
      by: ['frictionPublished'],
    },
  ],
  assumptions: [
    'One zone: the gas has one temperature and one composition at a time. Burnt and unburnt gas really differ by more than 1000 K; for the pressure this matters little, for temperatures much.',
    'The charge counts as air. A rich petrol charge has a gas constant about 5 % below that of air, so that the pressure at intake closing is up to 5 % too high for the same mass.',
    'What the exponents say about heat is counted as heat to the walls, so that the energy adds up. With one ratio of specific heats for cold and hot gas this sum can show heat coming from the walls; that comes of the simple gas, not of a warm wall.',
    'After the exhaust opens, the excess over the exhaust pressure fades out by half a cosine, ending as far past BDC as the valve opened before it. Ending it at BDC instead takes 0.1 to 0.2 bar off the net mean pressure of the example engines.',
    'Exhaust and intake stroke run at the two mean pressures entered; between BDC and intake closing the pressure goes over into that of the trapped mass on a straight line of log pressure over log volume. Pressure waves are left out.',
    'The mean cycle. Single cycles scatter, and the peak at three standard deviations takes the peaks as spread like errors of measurement. Knock is not in it: a knocking cycle can go well beyond.',
    'The pin travels on a line through the crank’s axis. A pin offset of 0.8 mm moves the volume by less than 0.1 % of the swept volume.',
    'No blow-by, and no charge hidden in crevices: together a few per cent of the charge.',
    'Friction falls with speed as the published quadratic does. Between half and all of the highest speed a straight line through the same end would differ by up to 0.2 bar in the example engines.',
  ],
  cautions: ['pressure', 'running'],
  sources: ['heywood-1988', 'ferguson-kirkpatrick-2016', 'barton-1970'],
  sweep: { input: 'burnStart', output: 'peakPressure' },
  solve: { input: 'heatLoss', output: 'torque' },
  exercise: {
    ask: 'closingPressure',
    tolerance: 0.02,
    given: { bore: 0.12, stroke: 0.12, compressionRatio: 0.1, volumetricEfficiency: 0.1 },
    also: [
      {
        kind: 'number',
        ask: 'peakForce',
        tolerance: 0.01,
        given: { bore: 0.12, peakVariation: 0.3 },
      },
      {
        kind: 'number',
        ask: 'friction',
        tolerance: 0.01,
        given: { torqueSpeed: 0.15, maxSpeed: 0.1, frictionMep: 0.2 },
      },
      {
        kind: 'choice',
        ask: 'closingRatio',
        given: { compressionRatio: 0.12, intakeClose: 0.15, rodLength: 0.12 },
      },
      {
        kind: 'order',
        ask: 'closingPressure',
        given: { volumetricEfficiency: 0.15, compressionRatio: 0.1, intakeClose: 0.15 },
      },
      {
        kind: 'read',
        ask: 'pressureCurve',
        between: [-90, 90],
        given: { compressionRatio: 0.08, volumetricEfficiency: 0.08 },
      },
    ],
  },
});
