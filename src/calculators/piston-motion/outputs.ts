import type { OutputEntry } from '../define.ts';

const angle = { type: 'number', kind: 'angle' } as const;
const length = { type: 'number', kind: 'length' } as const;
const ratio = { type: 'number', kind: 'ratio' } as const;
/** Piston speed has its own inch unit in the trade. */
const speed = { type: 'number', kind: 'speed', metric: 'm/s', inch: 'ft/min' } as const;
const acceleration = { type: 'number', kind: 'acceleration' } as const;
const detail = { detail: true } as const;
const crankAxis = { label: 'Crank angle after TDC', symbol: 'θ', kind: 'angle' } as const;

/** What `piston-motion` gives, in the order it is shown. */
export const pistonMotionOutputs = {
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
    label: 'Crank angle of the greatest speed going down',
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
    label: 'Crank angle of the greatest upward acceleration',
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
    label: 'Crank angle of the greatest downward acceleration',
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
    label: 'Crank angle of the greatest speed going up',
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
} as const satisfies Record<string, OutputEntry>;
