import {
  halfStrokeAngle,
  harmonics,
  motionPeaks,
  zeroAccelerationAngle,
} from '../core/piston-extremes.ts';
import {
  deadCentres,
  motionCurves,
  pistonMotion as motionAt,
  rodPointMotion,
} from '../core/piston-motion.ts';
import { twoTermMotion, twoTermPeaks } from '../core/two-term-motion.ts';
import { defineCalculator, optional } from './define.ts';
import { pistonMotionSteps } from './piston-motion-steps.ts';
import {
  boreOffset,
  crankAcceleration,
  crankAngle,
  maxSpeed,
  pinOffset,
  rodLength,
  rodPoint,
  stroke,
} from './quantities.ts';

/** Steps of two degrees: a curve of 181 points looks smooth at any width of the page. */
const cells = 180;

const angle = { type: 'number', kind: 'angle' } as const;
const length = { type: 'number', kind: 'length' } as const;
const ratio = { type: 'number', kind: 'ratio' } as const;
/** Piston speed has its own inch unit in the trade. */
const speed = { type: 'number', kind: 'speed', metric: 'm/s', inch: 'ft/min' } as const;
const acceleration = { type: 'number', kind: 'acceleration' } as const;
const detail = { detail: true } as const;
const crankAxis = { label: 'Crank angle after TDC', symbol: 'θ', kind: 'angle' } as const;
const noPoint = { absent: 'no point on the rod is given' } as const;

/** How the piston and the rod move, exactly, from true top dead centre. */
export const pistonMotion = defineCalculator({
  id: 'piston-motion',
  title: 'Piston motion',
  purpose: 'Where the piston is at each crank angle, how fast it goes, and how hard it is pulled.',
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
  outputs: {
    accelerationTop: {
      ...acceleration,
      label: 'Acceleration at TDC',
      symbol: 'a_TDC',
      phrase: 'At each set’s own highest speed the piston’s acceleration at TDC',
      main: true,
      alsoGravity: true,
    },
    accelerationBottom: {
      ...acceleration,
      label: 'Acceleration at BDC (− is upward)',
      symbol: 'a_BDC',
      alsoGravity: true,
    },
    meanSpeed: {
      ...speed,
      label: 'Mean piston speed',
      symbol: 'v_mean',
      phrase: 'The mean piston speed',
    },
    peakSpeed: {
      ...speed,
      label: 'Greatest piston speed going down',
      symbol: 'v_max',
      phrase: 'The greatest piston speed',
    },
    peakSpeedAngle: {
      ...angle,
      label: 'It stands at this crank angle',
      symbol: 'θ_v',
    },
    halfStrokeAngle: {
      ...angle,
      label: 'Crank angle at half of the travel',
      symbol: 'θ_half',
      phrase: 'The crank angle at which the piston is half way down',
    },
    greatestUpward: {
      ...acceleration,
      label: 'Greatest upward acceleration (−)',
      symbol: 'a_up',
      alsoGravity: true,
    },
    greatestUpwardAngle: {
      ...angle,
      label: 'It stands at this crank angle',
      symbol: 'θ_up',
    },
    lambda: {
      ...ratio,
      label: 'Throw over rod length',
      symbol: 'λ',
      phrase: 'The throw over the rod length',
    },
    rodRatio: { ...ratio, label: 'Rod ratio, rod length over stroke', symbol: 'q_rod' },
    displacement: { ...length, label: 'Piston below TDC', symbol: 'x' },
    pistonSpeed: { ...speed, label: 'Piston speed (+ is downward)', symbol: 'v' },
    acceleration: {
      ...acceleration,
      label: 'Piston acceleration (+ is towards the crank)',
      symbol: 'a',
      alsoGravity: true,
    },
    rodAngle: { ...angle, label: 'Rod from the line of the bore', symbol: 'φ' },
    offset: {
      ...length,
      label: 'Both offsets together',
      symbol: 'e',
      ...detail,
    },
    travel: { ...length, label: 'Travel between the dead centres', symbol: 'S_t', ...detail },
    strokeGain: {
      ...length,
      label: 'Travel gained by the offset',
      symbol: 'ΔS',
      metric: 'um',
      inch: 'thou',
      ...detail,
    },
    topAngle: {
      ...angle,
      label: 'Crank past the line of the bore at TDC',
      symbol: 'ψ_TDC',
      ...detail,
    },
    bottomAngle: { ...angle, label: 'Crank angle from TDC to BDC', symbol: 'θ_BDC', ...detail },
    greatestDownward: {
      ...acceleration,
      label: 'Greatest downward acceleration',
      symbol: 'a_down',
      alsoGravity: true,
      ...detail,
    },
    greatestDownwardAngle: {
      ...angle,
      label: 'It stands at this crank angle',
      symbol: 'θ_down',
      ...detail,
    },
    peakSpeedUp: {
      ...speed,
      label: 'Greatest piston speed going up (−)',
      symbol: 'v_up',
      ...detail,
    },
    peakSpeedUpAngle: {
      ...angle,
      label: 'It stands at this crank angle',
      symbol: 'θ_v,up',
      ...detail,
    },
    zeroAccelerationAngle: {
      ...angle,
      label: 'Crank angle of no acceleration, going down',
      symbol: 'θ_0',
      ...detail,
    },
    rodSpeed: {
      type: 'number',
      kind: 'angularSpeed',
      metric: 'rad/s',
      inch: 'rad/s',
      label: 'Turning speed of the rod',
      symbol: 'ω_rod',
      ...detail,
    },
    rodAcceleration: {
      type: 'number',
      kind: 'angularAcceleration',
      label: 'Angular acceleration of the rod',
      symbol: 'α_rod',
      ...detail,
    },
    secondary: {
      ...ratio,
      label: 'Second order in the acceleration, over rω²',
      symbol: 'A_2',
      ...detail,
    },
    fourth: {
      ...ratio,
      label: 'Fourth order, over rω²',
      symbol: 'A_4',
      ...detail,
    },
    sixth: {
      ...ratio,
      label: 'Sixth order, over rω²',
      symbol: 'A_6',
      ...detail,
    },
    twoTermSpeed: { ...speed, label: 'Piston speed by two terms', symbol: 'v_2', ...detail },
    twoTermAcceleration: {
      ...acceleration,
      label: 'Piston acceleration by two terms',
      symbol: 'a_2',
      alsoGravity: true,
      ...detail,
    },
    twoTermPeakSpeed: {
      ...speed,
      label: 'Greatest piston speed by two terms',
      symbol: 'v_max,2',
      ...detail,
    },
    twoTermPeakSpeedAngle: {
      ...angle,
      label: 'Its crank angle by two terms',
      symbol: 'θ_v,2',
      ...detail,
    },
    twoTermZeroAngle: {
      ...angle,
      label: 'Crank angle of no acceleration by two terms',
      symbol: 'θ_0,2',
      ...detail,
    },
    twoTermGreatestUpward: {
      ...acceleration,
      label: 'Greatest upward acceleration by two terms (−)',
      symbol: 'a_up,2',
      alsoGravity: true,
      ...detail,
    },
    rodPointSpeed: {
      type: 'maybe',
      kind: 'speed',
      label: 'Speed of the point on the rod',
      symbol: 'v_X',
      ...detail,
    },
    rodPointAcceleration: {
      type: 'maybe',
      kind: 'acceleration',
      label: 'Acceleration of the point on the rod',
      symbol: 'a_X',
      alsoGravity: true,
      ...detail,
    },
    displacementCurve: {
      type: 'series',
      label: 'Piston position over one turn',
      x: crankAxis,
      y: { label: 'Piston below TDC', symbol: 'x', kind: 'length' },
    },
    speedCurve: {
      type: 'series',
      label: 'Piston speed over one turn',
      x: crankAxis,
      y: { label: 'Piston speed, downward', symbol: 'v', kind: 'speed' },
    },
    accelerationCurve: {
      type: 'series',
      label: 'Piston acceleration over one turn',
      x: crankAxis,
      y: { label: 'Piston acceleration, towards the crank', symbol: 'a', kind: 'acceleration' },
    },
    twoTermCurve: {
      type: 'series',
      label: 'Piston acceleration by two terms over one turn',
      x: crankAxis,
      y: { label: 'Piston acceleration by two terms', symbol: 'a_2', kind: 'acceleration' },
    },
  },
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
      tested: [0.2, 0.5],
    },
  ],
  assumptions: [
    'Rigid parts: crank, rod and piston do not bend or stretch. Near TDC at speed a rod stretches by a few hundredths of a millimetre; the piston then stands that much higher than shown.',
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
  exercise: { ask: 'accelerationTop', tolerance: 0.005 },
});
