import {
  halfStrokeAngle,
  harmonics,
  motionPeaks,
  zeroAccelerationAngle,
} from '../../core/motion/piston-extremes.ts';
import {
  deadCentres,
  motionCurves,
  pistonMotion as motionAt,
  rodPointMotion,
} from '../../core/motion/piston-motion.ts';
import { twoTermMotion, twoTermPeaks } from '../../core/motion/two-term-motion.ts';
import { defineCalculator, optional } from '../define.ts';
import { pistonMotionOutputs } from './piston-motion.outputs.ts';
import { pistonMotionSteps } from './piston-motion.steps.ts';
import {
  boreOffset,
  crankAcceleration,
  crankAngle,
  maxSpeed,
  pinOffset,
  rodLength,
  rodPoint,
  stroke,
} from '../quantities.ts';

/** Steps of two degrees: a curve of 181 points looks smooth at any width of the page. */
const cells = 180;

const noPoint = { absent: 'no point on the rod is given' } as const;

/** How the piston and the rod move, exactly, from true top dead centre. */
export const pistonMotion = defineCalculator({
  id: 'piston-motion',
  title: 'Piston motion',
  purpose: 'Where the piston is at each crank angle, how fast it goes, and how hard it is pulled.',
  asks: ['stroke', 'rodLength', 'maxSpeed', 'crankAngle', 'pinOffset'],
  answers: [
    'accelerationTop',
    'accelerationBottom',
    'peakSpeed',
    'peakSpeedAngle',
    'meanSpeed',
    'acceleration',
  ],
  inputs: {
    stroke,
    rodLength,
    boreOffset: optional(boreOffset),
    pinOffset: optional(pinOffset),
    maxSpeed,
    crankAngle,
    crankAcceleration: optional(crankAcceleration),
    rodPoint: optional(rodPoint),
  },
  outputs: pistonMotionOutputs,
  compute: (input) => {
    const { maxSpeed: omega, crankAngle: theta, crankAcceleration: alpha = 0 } = input;
    const now = motionAt(input, theta, omega, alpha);
    const centres = deadCentres(input);
    const peaks = motionPeaks(input, omega);
    const [second, fourth, sixth] = harmonics(input, [2, 4, 6]);
    const short = twoTermMotion(input, theta, omega, alpha);
    const shortPeaks = twoTermPeaks(input, omega);
    const point =
      input.rodPoint === undefined
        ? undefined
        : rodPointMotion(input, input.rodPoint, theta, omega, alpha);
    const curves = motionCurves(input, omega, alpha, cells);
    return {
      accelerationTop: motionAt(input, 0, omega).acceleration,
      accelerationBottom: motionAt(input, centres.bottomAngle, omega).acceleration,
      meanSpeed: (centres.travel * omega) / Math.PI,
      peakSpeed: peaks.down.value,
      peakSpeedAngle: peaks.down.angle,
      halfStrokeAngle: halfStrokeAngle(input),
      greatestUpward: peaks.greatestUpward.value,
      greatestUpwardAngle: peaks.greatestUpward.angle,
      lambda: input.stroke / 2 / input.rodLength,
      rodRatio: input.rodLength / input.stroke,
      displacement: now.displacement,
      pistonSpeed: now.speed,
      acceleration: now.acceleration,
      rodAngle: now.rodAngle,
      offset: (input.boreOffset ?? 0) - (input.pinOffset ?? 0),
      travel: centres.travel,
      strokeGain: centres.strokeGain,
      topAngle: centres.topAngle,
      bottomAngle: centres.bottomAngle,
      greatestDownward: peaks.greatestDownward.value,
      greatestDownwardAngle: peaks.greatestDownward.angle,
      peakSpeedUp: peaks.up.value,
      peakSpeedUpAngle: peaks.up.angle,
      zeroAccelerationAngle: zeroAccelerationAngle(input, omega, alpha),
      rodSpeed: now.rodSpeed,
      rodAcceleration: now.rodAcceleration,
      secondary: second?.amplitude ?? 0,
      fourth: fourth?.amplitude ?? 0,
      sixth: sixth?.amplitude ?? 0,
      twoTermSpeed: short.speed,
      twoTermAcceleration: short.acceleration,
      twoTermPeakSpeed: shortPeaks.peakSpeed,
      twoTermPeakSpeedAngle: shortPeaks.angle,
      twoTermZeroAngle: shortPeaks.angle,
      twoTermGreatestUpward: shortPeaks.greatestUpward,
      rodPointSpeed: point?.speed ?? noPoint,
      rodPointAcceleration: point?.acceleration ?? noPoint,
      displacementCurve: { x: curves.angle, y: curves.displacement },
      speedCurve: { x: curves.angle, y: curves.speed },
      accelerationCurve: { x: curves.angle, y: curves.acceleration },
      twoTermCurve: {
        x: curves.angle,
        y: curves.angle.map((at) => twoTermMotion(input, at, omega, alpha).acceleration),
      },
    };
  },
  steps: pistonMotionSteps,
  limits: [
    {
      id: 'rod-ratio',
      holds: (_, { lambda }) => lambda <= 0.5,
      say: 'The throw is more than half of the rod length. The motion is still exact, but no published case here reaches so far.',
    },
    {
      id: 'offset-small',
      holds: (input, { offset }) => Math.abs(offset) <= input.rodLength / 10,
      say: 'The offset is over a tenth of the rod length. The motion is still exact; check the drawing of the signs and the unit of the offset.',
    },
    {
      id: 'point-on-rod',
      holds: ({ rodPoint: point = 0, rodLength: l }) => point <= l,
      say: 'The point on the rod lies beyond the piston pin. It is reckoned on the rod’s centre line, carried on.',
    },
  ],
  validity: [
    {
      id: 'lambda',
      label: 'Throw over rod length',
      symbol: 'λ',
      kind: 'ratio',
      of: (_, { lambda }) => lambda,
      possible: [0, 1],
    },
  ],
  assumptions: [
    'Rigid parts: crank, rod and piston do not bend or stretch. Near TDC at speed the rod stretches and the clearances are taken up, together by 0.1 to 0.2 mm in the example engines; the piston then stands that much higher than shown.',
    'No clearances, and the piston does not rock. The pin is taken to move exactly along its line.',
    'Extremes and dead-centre values hold for a steady crank speed. The crank of a real engine swings about its mean speed within each turn; values at the chosen angle take the crank’s angular acceleration you give.',
    'The stroke entered is twice the throw. With an offset the piston travels a little further; the gain is shown.',
    'The crank angle counts from true TDC, where the piston is highest, as ignition, valve timing and pressure traces do. With an offset that is not where the crank lies along the bore.',
    'Published textbook cases here have no offset. With one, the numbers are checked by three independent routes instead: high-precision arithmetic, symbolic derivatives and loop closure.',
  ],
  cautions: ['reversal', 'running'],
  sources: [
    'beer-johnston-2009',
    'khurmi-gupta-2009',
    'bevan-2005',
    'kolchin-demidov-1984',
    'taylor-1985',
    'heywood-1988',
  ],
  sweep: { input: 'maxSpeed', output: 'accelerationTop' },
  solve: { input: 'maxSpeed', output: 'accelerationTop' },
  exercise: {
    ask: 'accelerationTop',
    tolerance: 0.005,
    given: { stroke: 0.12, rodLength: 0.12, maxSpeed: 0.15 },
    also: [
      {
        kind: 'number',
        ask: 'pistonSpeed',
        given: { stroke: 0.12, rodLength: 0.12, maxSpeed: 0.15, crankAngle: 0.5 },
      },
      { kind: 'choice', ask: 'accelerationTop' },
      { kind: 'order', ask: 'meanSpeed', given: { stroke: 0.12, maxSpeed: 0.15 } },
      { kind: 'read', ask: 'speedCurve' },
      { kind: 'read', ask: 'accelerationCurve' },
    ],
  },
});
