import type { OutputEntry } from '../define.ts';
import {
  acceleration,
  angle,
  angularAcceleration,
  angularSpeed,
  axis,
  curve,
  fineLength,
  length,
  maybe,
  pistonSpeed,
  ratio,
  speed,
} from '../output.ts';

/** What `piston-motion` gives, in the order it is shown. */
export const pistonMotionOutputs = {
  accelerationTop: acceleration('a_TDC', 'Acceleration at TDC', {
    phrase: 'At each set’s own highest speed the piston’s acceleration at TDC',
    main: true,
    alsoGravity: true,
  }),
  accelerationBottom: acceleration('a_BDC', 'Acceleration at BDC (− is upward)', {
    alsoGravity: true,
  }),
  meanSpeed: pistonSpeed('v_mean', 'Mean piston speed', { phrase: 'The mean piston speed' }),
  peakSpeed: pistonSpeed('v_max', 'Greatest piston speed going down', {
    phrase: 'The greatest piston speed',
  }),
  peakSpeedAngle: angle('θ_v', 'Crank angle of the greatest speed going down'),
  halfStrokeAngle: angle('θ_half', 'Crank angle at half of the travel', {
    phrase: 'The crank angle at which the piston is half way down',
  }),
  greatestUpward: acceleration('a_up', 'Greatest upward acceleration (−)', { alsoGravity: true }),
  greatestUpwardAngle: angle('θ_up', 'Crank angle of the greatest upward acceleration'),
  lambda: ratio('λ', 'Throw over rod length', { phrase: 'The throw over the rod length' }),
  rodRatio: ratio('q_rod', 'Rod ratio, rod length over stroke'),
  displacement: length('x', 'Piston below TDC'),
  pistonSpeed: pistonSpeed('v', 'Piston speed (+ is downward)'),
  acceleration: acceleration('a', 'Piston acceleration (+ is towards the crank)', {
    alsoGravity: true,
  }),
  rodAngle: angle('φ', 'Rod from the line of the bore'),
  offset: length('e', 'Both offsets together'),
  travel: length('S_t', 'Travel between the dead centres'),
  strokeGain: fineLength('ΔS', 'Travel gained by the offset'),
  topAngle: angle('ψ_TDC', 'Crank past the line of the bore at TDC'),
  bottomAngle: angle('θ_BDC', 'Crank angle from TDC to BDC'),
  greatestDownward: acceleration('a_down', 'Greatest downward acceleration', {
    alsoGravity: true,
  }),
  greatestDownwardAngle: angle('θ_down', 'Crank angle of the greatest downward acceleration'),
  peakSpeedUp: pistonSpeed('v_up', 'Greatest piston speed going up (−)'),
  peakSpeedUpAngle: angle('θ_v,up', 'Crank angle of the greatest speed going up'),
  zeroAccelerationAngle: angle('θ_0', 'Crank angle of no acceleration, going down'),
  rodSpeed: angularSpeed('ω_rod', 'Turning speed of the rod'),
  rodAcceleration: angularAcceleration('α_rod', 'Angular acceleration of the rod'),
  secondary: ratio('A_2', 'Second order in the acceleration, over rω²'),
  fourth: ratio('A_4', 'Fourth order, over rω²'),
  sixth: ratio('A_6', 'Sixth order, over rω²'),
  twoTermSpeed: pistonSpeed('v_2', 'Piston speed by two terms'),
  twoTermAcceleration: acceleration('a_2', 'Piston acceleration by two terms', {
    alsoGravity: true,
  }),
  twoTermPeakSpeed: pistonSpeed('v_max,2', 'Greatest piston speed by two terms'),
  twoTermPeakSpeedAngle: angle('θ_v,2', 'Its crank angle by two terms'),
  twoTermZeroAngle: angle('θ_0,2', 'Crank angle of no acceleration by two terms'),
  twoTermGreatestUpward: acceleration('a_up,2', 'Greatest upward acceleration by two terms (−)', {
    alsoGravity: true,
  }),
  rodPointSpeed: maybe(speed('v_X', 'Speed of the point on the rod')),
  rodPointAcceleration: maybe(
    acceleration('a_X', 'Acceleration of the point on the rod', {
      alsoGravity: true,
    }),
  ),
  displacementCurve: curve(
    axis('angle', 'θ', 'Crank angle after TDC'),
    axis('length', 'x', 'Piston below TDC'),
    'Piston position over one turn',
  ),
  speedCurve: curve(
    axis('angle', 'θ', 'Crank angle after TDC'),
    axis('speed', 'v', 'Piston speed, downward'),
    'Piston speed over one turn',
  ),
  accelerationCurve: curve(
    axis('angle', 'θ', 'Crank angle after TDC'),
    axis('acceleration', 'a', 'Piston acceleration, towards the crank'),
    'Piston acceleration over one turn',
  ),
  twoTermCurve: curve(
    axis('angle', 'θ', 'Crank angle after TDC'),
    axis('acceleration', 'a_2', 'Piston acceleration by two terms'),
    'Piston acceleration by two terms over one turn',
  ),
} as const satisfies Record<string, OutputEntry>;
