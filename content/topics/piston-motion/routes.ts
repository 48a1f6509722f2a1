import { defineRoutes } from '../../../src/checks/route.ts';

/** Other ways to the answers of this topic; each is taken by the tests that name it. */
export const routes = defineRoutes({
  agreesSymbolicDerivatives: {
    kind: 'second route',
    say: 'Speed and acceleration of the piston against symbolic derivatives of its position, by a general mathematics library, to 1 part in 10⁹.',
    legs: ['piston-motion.accelerationTop'],
  },
  agreesLoopClosure: {
    kind: 'second route',
    say: 'Piston and rod against the closed loop of crank, rod and bore solved as a matrix, to 1 part in 10⁹.',
  },
  extremes: {
    kind: 'second route',
    say: 'Greatest speed, greatest accelerations and their angles against arithmetic with 70 digits.',
    legs: ['piston-motion.peakSpeed'],
  },
  harmonics: {
    kind: 'second route',
    say: 'The second, fourth and sixth orders against arithmetic with 70 digits.',
    legs: ['piston-motion.secondary', 'piston-motion.fourth', 'piston-motion.sixth'],
  },
  hasKnownValues: {
    kind: 'closed form',
    say: 'Acceleration and rod speed at both dead centres from their formulae.',
  },
  movesGreatestUpward: {
    kind: 'closed form',
    say: 'The greatest upward acceleration leaves BDC once λ passes 0.2638.',
  },
  hasSpeedAcceleration: {
    kind: 'property',
    say: 'Speed is the derivative of travel and acceleration that of speed, at any angle, for any rod.',
  },
  mirroredAboutTdc: {
    kind: 'property',
    say: 'The motion is mirrored about TDC without an offset, and when the offset is turned round.',
  },
  hasShortSeries: {
    kind: 'property',
    say: 'The two-term series comes nearer to the exact motion as the third power of λ.',
  },
  greatestUpwardValue: {
    kind: 'closed form',
    say: 'The greatest upward acceleration of the two-term series, by its closed form and by looking at every quarter degree.',
    legs: ['piston-motion.twoTermGreatestUpward'],
  },
  fromHeightsAlone: {
    kind: 'second route',
    say: 'Dead centres, extremes, speeds and accelerations of fourteen engines from the piston’s height alone, by differences, looking round the turn and halving.',
    legs: [
      'piston-motion.accelerationTop',
      'piston-motion.accelerationBottom',
      'piston-motion.meanSpeed',
      'piston-motion.peakSpeed',
      'piston-motion.peakSpeedAngle',
      'piston-motion.halfStrokeAngle',
      'piston-motion.greatestUpward',
      'piston-motion.greatestUpwardAngle',
      'piston-motion.lambda',
      'piston-motion.rodRatio',
      'piston-motion.displacement',
      'piston-motion.pistonSpeed',
      'piston-motion.acceleration',
      'piston-motion.rodAngle',
      'piston-motion.offset',
      'piston-motion.travel',
      'piston-motion.strokeGain',
      'piston-motion.topAngle',
      'piston-motion.bottomAngle',
      'piston-motion.greatestDownward',
      'piston-motion.greatestDownwardAngle',
      'piston-motion.peakSpeedUp',
      'piston-motion.peakSpeedUpAngle',
      'piston-motion.rodSpeed',
      'piston-motion.rodAcceleration',
    ],
  },
});
