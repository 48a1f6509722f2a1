import type { OutputEntry } from '../define.ts';
import {
  acceleration,
  angle,
  angularAcceleration,
  angularSpeed,
  axis,
  curve,
  detail,
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
  offset: length('e', 'Both offsets together', detail),
  travel: length('S_t', 'Travel between the dead centres', detail),
  strokeGain: fineLength('ΔS', 'Travel gained by the offset', detail),
  topAngle: angle('ψ_TDC', 'Crank past the line of the bore at TDC', detail),
  bottomAngle: angle('θ_BDC', 'Crank angle from TDC to BDC', detail),
  greatestDownward: acceleration('a_down', 'Greatest downward acceleration', {
    alsoGravity: true,
    detail: true,
  }),
  greatestDownwardAngle: angle(
    'θ_down',
    'Crank angle of the greatest downward acceleration',
    detail,
  ),
  peakSpeedUp: pistonSpeed('v_up', 'Greatest piston speed going up (−)', detail),
  peakSpeedUpAngle: angle('θ_v,up', 'Crank angle of the greatest speed going up', detail),
  zeroAccelerationAngle: angle('θ_0', 'Crank angle of no acceleration, going down', detail),
  rodSpeed: angularSpeed('ω_rod', 'Turning speed of the rod', detail),
  rodAcceleration: angularAcceleration('α_rod', 'Angular acceleration of the rod', detail),
  secondary: ratio('A_2', 'Second order in the acceleration, over rω²', detail),
  fourth: ratio('A_4', 'Fourth order, over rω²', detail),
  sixth: ratio('A_6', 'Sixth order, over rω²', detail),
  twoTermSpeed: pistonSpeed('v_2', 'Piston speed by two terms', detail),
  twoTermAcceleration: acceleration('a_2', 'Piston acceleration by two terms', {
    alsoGravity: true,
    detail: true,
  }),
  twoTermPeakSpeed: pistonSpeed('v_max,2', 'Greatest piston speed by two terms', detail),
  twoTermPeakSpeedAngle: angle('θ_v,2', 'Its crank angle by two terms', detail),
  twoTermZeroAngle: angle('θ_0,2', 'Crank angle of no acceleration by two terms', detail),
  twoTermGreatestUpward: acceleration('a_up,2', 'Greatest upward acceleration by two terms (−)', {
    alsoGravity: true,
    detail: true,
  }),
  rodPointSpeed: maybe(speed('v_X', 'Speed of the point on the rod', detail)),
  rodPointAcceleration: maybe(
    acceleration('a_X', 'Acceleration of the point on the rod', {
      alsoGravity: true,
      detail: true,
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
