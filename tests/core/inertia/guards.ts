import { benchSwing, standardGravity, twoEndSwing } from '../../../src/core/inertia/bench-swing.ts';
import { gearedMass, speedRipple } from '../../../src/core/inertia/geared-inertia.ts';
import { torqueOfTurn } from '../../../src/core/inertia/inertia-torque.ts';
import {
  engineInertia,
  ringInertia,
  riseTime,
  roadFactor,
} from '../../../src/core/inertia/rotating-inertia.ts';
import { guarded, type Tables } from '../guards.ts';

const swing = {
  swingRig: 'bifilar',
  swingMass: 20,
  swingCount: 50,
  swingTime: 100,
  swingSpacing: 0.1,
  swingWire: 2,
} as const;
const platform = { platformMass: 1, platformTime: 80 };
const rod = {
  rodMass: 0.6,
  edgeDistance: 0.18,
  rodSwingCount: 1,
  smallEndTime: 0.75,
  bigEndTime: 0.69,
};
/** Time of one swing of a point mass hung so far down. */
const timeOf = (length: number): number => 2 * Math.PI * Math.sqrt(length / standardGravity);
/** Length of a string on which a point mass swings in three quarters of a second. */
const string = standardGravity * (0.75 / (2 * Math.PI)) ** 2;
const same = 'the time of a point mass hung as far away as the two edges are apart';
const engine = {
  cylinders: 4,
  stroke: 0.08,
  rodLength: 0.14,
  pistonMass: 0.4,
  pinMass: 0.12,
  ringMass: 0.04,
  lockMass: 0.002,
  smallEndMass: 0.17,
  bigEndMass: 0.42,
  shellMass: 0.04,
  crankInertia: 0.03,
  damperInertia: 0.01,
  clutchInertia: 0.02,
  flywheelInertia: 0.1,
};
const gearing = { gearRatio: 2, finalDrive: 4, tyreRadius: 0.3 };
const car = {
  ...gearing,
  engineInertia: 0.2,
  wheelInertia: 1,
  carMass: 1200,
  drivelineEfficiency: 0.9,
  netTorque: 150,
};

export const inertia: Tables = {
  'inertia/bench-swing.ts': [
    guarded(swing, benchSwing, [
      ['swingMass', 'greater than', 0],
      ['swingCount', 'greater than', 0],
      ['swingTime', 'greater than', 0],
      ['swingSpacing', 'greater than', 0],
      ['swingWire', 'greater than', 0],
    ]),
    guarded({ ...swing, swingRig: 'knife-edge' }, benchSwing, [
      [
        'swingTime',
        'greater than',
        50 * timeOf(0.1),
        'the time of a point mass hung that far down',
      ],
    ]),
    guarded({ ...swing, ...platform, swingRig: 'trifilar' }, benchSwing, [
      ['platformMass', 'at least', 0],
      ['platformTime', 'greater than', 0],
      ['swingTime', 'greater than', 80 * Math.sqrt(1 / 21), 'what the platform alone explains'],
    ]),
    guarded(rod, twoEndSwing, [
      ['rodMass', 'greater than', 0],
      ['edgeDistance', 'greater than', 0],
      ['rodSwingCount', 'greater than', 0],
      ['smallEndTime', 'greater than', 0],
      ['bigEndTime', 'greater than', 0],
      ['bigEndTime', 'less than', timeOf(0.18), same],
      [
        'bigEndTime',
        'greater than',
        timeOf(0.18 - string),
        'what the small end’s time leaves for a rod of this length',
      ],
    ]),
    guarded({ ...rod, edgeDistance: string, smallEndTime: 0.7 }, twoEndSwing, [
      ['smallEndTime', 'less than', 0.75, same, 0.75],
    ]),
    guarded({ ...rod, smallEndTime: 0.9, bigEndTime: 0.95 }, twoEndSwing, [
      ['bigEndTime', 'greater than', timeOf(0.18), same],
    ]),
  ],
  'inertia/geared-inertia.ts': [
    guarded(car, gearedMass, [
      ['drivelineEfficiency', 'greater than', 0],
      ['drivelineEfficiency', 'at most', 1],
      ['carMass', 'greater than', 0],
      ['engineInertia', 'at least', 0],
      ['wheelInertia', 'at least', 0],
      ['netTorque', 'at least', 0],
    ]),
    guarded({ energySwing: 60, engineInertia: 0.25, meanSpeed: 94 }, speedRipple, [
      ['engineInertia', 'greater than', 0],
      ['meanSpeed', 'greater than', 0],
      ['energySwing', 'at least', 0],
      ['energySwing', 'at most', 2 * 0.25 * 94 ** 2, 'what would stop the engine'],
    ]),
  ],
  'inertia/inertia-torque.ts': [
    guarded(
      { ...engine, reciprocatingMass: 0.7, maxSpeed: 600 },
      (turn) => torqueOfTurn({ ...turn, mass: turn.reciprocatingMass }, turn.maxSpeed),
      [
        ['reciprocatingMass', 'at least', 0],
        ['maxSpeed', 'a number'],
      ],
    ),
  ],
  'inertia/rotating-inertia.ts': [
    guarded(engine, (parts) => engineInertia(parts, parts), [
      ['pistonMass', 'at least', 0],
      ['pinMass', 'at least', 0],
      ['ringMass', 'at least', 0],
      ['lockMass', 'at least', 0],
      ['smallEndMass', 'at least', 0],
      ['bigEndMass', 'at least', 0],
      ['shellMass', 'at least', 0],
      ['cylinders', 'greater than', 0],
      ['cylinders', 'at least', 1, 'a whole number', 2.5],
      ['crankInertia', 'at least', 0],
      ['damperInertia', 'at least', 0],
      ['clutchInertia', 'at least', 0],
      ['flywheelInertia', 'greater than', 0],
    ]),
    guarded(
      {
        flywheelDiameter: 0.3,
        flywheelInside: 0.1,
        flywheelThickness: 0.02,
        flywheelDensity: 7850,
      },
      ringInertia,
      [
        ['flywheelDiameter', 'greater than', 0],
        ['flywheelInside', 'at least', 0],
        ['flywheelInside', 'less than', 0.3, 'the outside diameter'],
        ['flywheelThickness', 'greater than', 0],
        ['flywheelDensity', 'greater than', 0],
      ],
    ),
    guarded({ netTorque: 100, speedFrom: 100, speedTo: 600 }, (rise) => riseTime(0.2, rise), [
      ['netTorque', 'greater than', 0],
      ['speedFrom', 'at least', 0],
      ['speedTo', 'greater than', 100, 'the speed at the start'],
    ]),
    guarded(gearing, roadFactor, [
      ['gearRatio', 'greater than', 0],
      ['finalDrive', 'greater than', 0],
      ['tyreRadius', 'greater than', 0],
    ]),
  ],
};
