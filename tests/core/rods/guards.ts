import { bucklingStresses, slendernessOf } from '../../../src/core/rods/column.ts';
import { rodAreas, rodForces, stretchOf } from '../../../src/core/rods/rod-materials.ts';
import { shankForces, whipMoment } from '../../../src/core/rods/rod-shank.ts';
import {
  closureTolerance,
  meanPlusMinus,
  pieceMass,
  repeats,
  scaleError,
  supportShift,
  weighedEnds,
} from '../../../src/core/rods/rod-weighing.ts';
import { shankSection } from '../../../src/core/rods/shank-section.ts';
import { guarded, type Tables } from '../guards.ts';

const duty = {
  stroke: 0.08,
  rodLength: 0.14,
  bore: 0.09,
  maxSpeed: 700,
  reciprocatingMass: 0.7,
  pistonMass: 0.4,
  ringMass: 0.04,
  lockMass: 0.002,
  pinMass: 0.12,
  shankSection: 0.03,
  rodMassAbove: 0.1,
  peakPressure: 70e5,
  crankcasePressure: 1e5,
  peakAngle: 0.2,
  rodDensity: 7850,
  area: 1.5e-4,
};
const metal = {
  density: 7850,
  youngsModulus: 205e9,
  expansion: 12e-6,
  yieldStrength: 900e6,
  fatigueStrength: 400e6,
};
const targets = {
  rodMargin: 2,
  rodNotchFactor: 1.3,
  stretchWanted: 1e-4,
  stretchFactor: 1.2,
  shankLength: 0.1,
  shankArea: 1.5e-4,
};
const section = {
  shankShape: 'i',
  shankHeight: 0.02,
  shankWidth: 0.016,
  flangeThickness: 0.004,
  webThickness: 0.003,
} as const;
const weighed = {
  bigEndMass: 0.42,
  smallEndMass: 0.17,
  rodMass: 0.59,
  rodLength: 0.14,
  supportOffset: 0.001,
};
const scale = { fixtureRepeat: 3e-4, scaleResolution: 1e-4 };

export const rods: Tables = {
  'rods/column.ts': [
    guarded(
      { youngsModulus: 205e9, yieldStrength: 900e6, slenderness: 30, rankineDivisor: 7500 },
      (column) => bucklingStresses(column, column.rankineDivisor),
      [
        ['youngsModulus', 'greater than', 0],
        ['yieldStrength', 'greater than', 0],
        ['rankineDivisor', 'greater than', 0],
      ],
    ),
    guarded({ rodLength: 0.14, gyrationRadius: 0.006, endFactor: 1 }, slendernessOf, [
      ['endFactor', 'greater than', 0],
      ['rodLength', 'greater than', 0],
      ['gyrationRadius', 'greater than', 0],
    ]),
  ],
  'rods/rod-materials.ts': [
    guarded(duty, rodForces, [
      ['reciprocatingMass', 'at least', 0],
      ['maxSpeed', 'at least', 0],
      ['peakPressure', 'at least', 0],
      ['crankcasePressure', 'at least', 0],
      ['bore', 'greater than', 0],
    ]),
    guarded(targets, (wanted) => rodAreas(rodForces(duty), metal, wanted), [
      ['rodMargin', 'greater than', 0],
      ['rodNotchFactor', 'at least', 1],
      ['stretchFactor', 'at least', 1],
      ['shankLength', 'greater than', 0],
      ['stretchWanted', 'greater than', 0],
    ]),
    guarded(targets, ({ shankArea }) => stretchOf(shankArea, rodForces(duty), metal, targets), [
      ['shankArea', 'greater than', 0],
    ]),
  ],
  'rods/rod-shank.ts': [
    guarded(duty, shankForces, [
      ['peakAngle', 'a number'],
      ['peakPressure', 'at least', 0],
      ['crankcasePressure', 'at least', 0],
      ['bore', 'greater than', 0],
    ]),
    guarded(duty, whipMoment, [['rodDensity', 'greater than', 0]]),
  ],
  'rods/rod-weighing.ts': [
    guarded({ bigEndReadings: [0.42, 0.421] }, (rod) => repeats(rod, 'bigEndReadings'), [
      ['bigEndReadings', 'at least', 1, 'one reading', []],
      ['bigEndReadings', 'greater than', 0],
    ]),
    guarded({ smallEndReadings: [0.17] }, (rod) => repeats(rod, 'smallEndReadings'), [
      ['smallEndReadings', 'at least', 1, 'one reading', []],
      ['smallEndReadings', 'greater than', 0],
    ]),
    guarded(weighed, weighedEnds, [
      ['bigEndMass', 'greater than', 0],
      ['smallEndMass', 'greater than', 0],
      ['rodMass', 'greater than', 0],
      ['rodLength', 'greater than', 0],
    ]),
    guarded(scale, (own) => closureTolerance(own, { bigEnd: 1, smallEnd: 1 }), [
      ['fixtureRepeat', 'at least', 0],
      ['scaleResolution', 'greater than', 0],
    ]),
    guarded(weighed, supportShift, [
      ['rodLength', 'greater than', 0],
      ['supportOffset', 'less than', 0.14, 'the rod length'],
      ['bigEndMass', 'greater than', 0],
      ['smallEndMass', 'greater than', 0],
      ['rodMass', 'greater than', 0],
    ]),
    guarded({ batchMass: 0.006, batchCount: 10 }, pieceMass, [
      ['batchMass', 'greater than', 0],
      ['batchCount', 'at least', 1],
    ]),
    guarded({ checkMass: 0.5, checkReading: 0.5001 }, scaleError, [
      ['checkReading', 'a number'],
      ['checkMass', 'greater than', 0],
    ]),
    guarded(scale, (own) => meanPlusMinus(own, 3), [
      ['fixtureRepeat', 'at least', 0],
      ['scaleResolution', 'greater than', 0],
    ]),
  ],
  'rods/shank-section.ts': [
    guarded(section, shankSection, [
      ['shankHeight', 'greater than', 0],
      ['shankWidth', 'greater than', 0],
      ['flangeThickness', 'greater than', 0],
      ['webThickness', 'greater than', 0],
      ['flangeThickness', 'at most', 0.01, 'half the height of the section'],
      ['webThickness', 'at most', 0.016, 'the width of the section'],
    ]),
    guarded({ ...section, shankShape: 'h' }, shankSection, [
      ['flangeThickness', 'at most', 0.008, 'half the width of the section'],
      ['webThickness', 'at most', 0.02, 'the height of the section'],
    ]),
  ],
};
