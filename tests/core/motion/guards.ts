import {
  displacement,
  meanPistonSpeed,
  overRevRise,
} from '../../../src/core/motion/engine-size.ts';
import { rodLean } from '../../../src/core/motion/rod-angularity.ts';
import { motionPeaks, zeroAccelerationAngle } from '../../../src/core/motion/piston-extremes.ts';
import {
  motionCurves,
  pistonMotion,
  rodPointMotion,
} from '../../../src/core/motion/piston-motion.ts';
import { linkage } from '../../../src/core/motion/slider-crank.ts';
import { twoTermMotion } from '../../../src/core/motion/two-term-motion.ts';
import { guarded, type Tables } from '../guards.ts';

const crank = {
  stroke: 0.08,
  rodLength: 0.14,
  boreOffset: 0.002,
  pinOffset: 0.001,
  maxSpeed: 600,
  crankAngle: 0.5,
  crankAcceleration: 100,
  rodPoint: 0.05,
};
const otherOffset = 'what the rod length, half the stroke and the other offset leave';

export const motion: Tables = {
  'motion/engine-size.ts': [
    guarded({ bore: 0.09, stroke: 0.08, cylinders: 8 }, displacement, [
      ['bore', 'greater than', 0],
      ['stroke', 'greater than', 0],
      ['cylinders', 'at least', 1],
    ]),
    guarded({ stroke: 0.08, maxSpeed: 600 }, meanPistonSpeed, [
      ['stroke', 'greater than', 0],
      ['maxSpeed', 'at least', 0],
    ]),
    guarded({ maxSpeed: 600, missedShiftSpeed: 650 }, overRevRise, [
      ['maxSpeed', 'greater than', 0],
      ['missedShiftSpeed', 'at least', 0],
    ]),
  ],
  'motion/piston-extremes.ts': [
    guarded(crank, (given) => motionPeaks(given, given.maxSpeed), [['maxSpeed', 'at least', 0]]),
    guarded(
      crank,
      (given) => zeroAccelerationAngle(given, given.maxSpeed, given.crankAcceleration),
      [
        ['maxSpeed', 'at least', 0],
        ['crankAcceleration', 'a number'],
      ],
    ),
  ],
  'motion/piston-motion.ts': [
    guarded(
      crank,
      (given) => pistonMotion(given, given.crankAngle, given.maxSpeed, given.crankAcceleration),
      [
        ['maxSpeed', 'at least', 0],
        ['crankAcceleration', 'a number'],
        ['crankAngle', 'a number'],
      ],
    ),
    guarded(crank, (given) => rodPointMotion(given, given.rodPoint, 1, 1), [
      ['rodPoint', 'a number'],
    ]),
    guarded(crank, (given) => motionCurves(given, given.maxSpeed, given.crankAcceleration, 4), [
      ['maxSpeed', 'at least', 0],
      ['crankAcceleration', 'a number'],
    ]),
  ],
  'motion/slider-crank.ts': [
    guarded({ stroke: 0.08, rodLength: 0.14 }, linkage, [
      ['stroke', 'greater than', 0],
      ['rodLength', 'greater than', 0],
      ['rodLength', 'greater than', 0.04, 'half the stroke'],
    ]),
    guarded(crank, linkage, [
      ['rodLength', 'greater than', 0.041, 'half the stroke plus the offset'],
      ['boreOffset', 'a number'],
      ['pinOffset', 'a number'],
      ['boreOffset', 'less than', 0.101, otherOffset],
      ['boreOffset', 'greater than', -0.099, otherOffset],
      ['pinOffset', 'less than', 0.102, otherOffset],
      ['pinOffset', 'greater than', -0.098, otherOffset],
    ]),
    guarded({ stroke: 0.08, rodLength: 0.14, pinOffset: 0 }, linkage, [
      ['pinOffset', 'less than', 0.1, 'the rod length less half the stroke'],
      ['pinOffset', 'greater than', -0.1, 'minus the rod length less half the stroke'],
    ]),
  ],
  'motion/two-term-motion.ts': [
    guarded(
      crank,
      (given) => twoTermMotion(given, given.crankAngle, given.maxSpeed, given.crankAcceleration),
      [
        ['crankAngle', 'a number'],
        ['maxSpeed', 'at least', 0],
        ['crankAcceleration', 'a number'],
      ],
    ),
  ],
  'motion/rod-angularity.ts': [guarded(crank, rodLean, [['crankAngle', 'a number']])],
};
