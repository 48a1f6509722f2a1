import { burntShare, halfBurntAngle } from '../../../src/core/loads/burn.ts';
import { frictionAt, frictionCorrelation } from '../../../src/core/loads/cycle-energy.ts';
import { pressureModel } from '../../../src/core/loads/cylinder-pressure.ts';
import {
  deadCentreAcceleration,
  offsetGain,
  pullFactors,
  pullsAbove,
  suctionForce,
} from '../../../src/core/loads/reversal-load.ts';
import { trappedCharge } from '../../../src/core/loads/trapped-charge.ts';
import { guarded, type Tables } from '../guards.ts';

export const cycle = {
  bore: 0.09,
  stroke: 0.08,
  rodLength: 0.14,
  compressionRatio: 11,
  volumetricEfficiency: 0.95,
  ambientPressure: 101325,
  ambientTemperature: 298,
  residualFraction: 0.05,
  airFuelLambda: 0.9,
  stoichRatio: 14.6,
  heatingValue: 44e6,
  combustionEfficiency: 0.95,
  burnStart: 0.4,
  burnDuration: 1,
  wiebeEfficiency: 5,
  wiebeForm: 2,
  chargeTemperature: 350,
  manifoldPressure: 98e3,
  exhaustPressure: 110e3,
  intakeOpen: 0.4,
  intakeClose: 1,
  exhaustOpen: 1,
  compressionExponent: 1.32,
  expansionExponent: 1.28,
  burnedGamma: 1.27,
  heatLoss: 0.15,
};
const geometry = { stroke: 0.08, rodLength: 0.14 };
const parts = {
  pistonMass: 0.4,
  ringMass: 0.04,
  lockMass: 0.002,
  pinMass: 0.12,
  smallEndMass: 0.17,
  bigEndMass: 0.42,
  shellMass: 0.04,
  capMass: 0.2,
  shankSection: 0.03,
  rodMassAbove: 0.1,
};

export const loads: Tables = {
  'loads/burn.ts': [
    guarded(cycle, (shape) => burntShare(shape, 0.5), [
      ['wiebeEfficiency', 'greater than', 0],
      ['wiebeForm', 'at least', 0],
    ]),
    guarded(cycle, halfBurntAngle, [['burnDuration', 'at least', 0]]),
  ],
  'loads/cycle-energy.ts': [
    guarded({ torqueSpeed: 300 }, ({ torqueSpeed }) => frictionCorrelation(torqueSpeed), [
      ['torqueSpeed', 'at least', 0],
    ]),
    guarded({ frictionMep: 2e5, maxSpeed: 700, torqueSpeed: 300 }, frictionAt, [
      ['maxSpeed', 'greater than', 0],
      ['frictionMep', 'at least', 0],
    ]),
  ],
  'loads/cylinder-pressure.ts': [
    guarded(cycle, pressureModel, [
      ['intakeClose', 'greater than', -Math.PI / 2],
      ['intakeClose', 'less than', Math.PI],
      ['exhaustOpen', 'at least', 0],
      ['exhaustOpen', 'less than', (3 / 4) * Math.PI],
      ['intakeOpen', 'greater than', -Math.PI / 2],
      ['intakeOpen', 'at most', Math.PI - 1, 'the end of the blow-down'],
      ['burnStart', 'at most', Math.PI - 1, 'when the intake closes'],
      ['burnStart', 'greater than', 1 - Math.PI, 'when the exhaust opens'],
      ['burnDuration', 'at least', 0],
      [
        'burnDuration',
        'at most',
        Math.PI - 1 + 0.4,
        'the angle from burn start to exhaust opening',
      ],
      ['chargeTemperature', 'greater than', 0],
      ['manifoldPressure', 'greater than', 0],
      ['exhaustPressure', 'greater than', 0],
      ['compressionExponent', 'at least', 1],
      ['expansionExponent', 'at least', 1],
      ['burnedGamma', 'greater than', 1],
      ['heatLoss', 'at least', 0],
      ['heatLoss', 'at most', 1],
    ]),
  ],
  'loads/reversal-load.ts': [
    guarded(geometry, deadCentreAcceleration, [
      ['stroke', 'greater than', 0],
      ['rodLength', 'greater than', 0.04, 'half the stroke'],
    ]),
    guarded({ boreOffset: 0.001 }, ({ boreOffset }) => offsetGain(geometry, boreOffset), [
      ['boreOffset', 'less than', 0.18, 'rod length and half the stroke together'],
      ['boreOffset', 'greater than', -0.18, 'minus rod length and half the stroke together'],
    ]),
    guarded(parts, (hanging) => pullFactors(geometry, hanging), [
      ['smallEndMass', 'at least', 0],
      ['bigEndMass', 'at least', 0],
      ['shellMass', 'at least', 0],
      ['capMass', 'at least', 0],
      ['rodMassAbove', 'at most', 0.17 + 0.42, 'both ends of the rod together'],
      ['capMass', 'at most', 0.42 + 0.04, 'big end and shells together'],
    ]),
    guarded(parts, (hanging) => pullsAbove(geometry, hanging), [
      ['pistonMass', 'at least', 0],
      ['ringMass', 'at least', 0],
      ['lockMass', 'at least', 0],
      ['pinMass', 'at least', 0],
      ['shankSection', 'at least', 0],
      ['shankSection', 'at most', 0.14, 'the rod length'],
      ['rodMassAbove', 'at least', 0],
    ]),
    guarded({ bore: 0.09, crankcasePressure: 1e5, overrunPressure: 3e4 }, suctionForce, [
      ['bore', 'greater than', 0],
      ['crankcasePressure', 'at least', 0],
      ['overrunPressure', 'at least', 0],
    ]),
  ],
  'loads/trapped-charge.ts': [
    guarded(cycle, (input) => trappedCharge(input, 5e-4), [
      ['volumetricEfficiency', 'greater than', 0],
      ['ambientPressure', 'greater than', 0],
      ['ambientTemperature', 'greater than', 0],
      ['residualFraction', 'at least', 0],
      ['residualFraction', 'less than', 1],
      ['airFuelLambda', 'greater than', 0],
      ['combustionEfficiency', 'at least', 0],
      ['combustionEfficiency', 'at most', 1],
      ['stoichRatio', 'greater than', 0],
      ['heatingValue', 'at least', 0],
    ]),
  ],
};
