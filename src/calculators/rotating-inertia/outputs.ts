import type { MaybeOutput, NumberOutput, SeriesOutput } from '../define.ts';

const inertia = { type: 'number', kind: 'inertia', metric: 'kgm2', inch: 'lbin2' } as const;
/** Shown in kg·mm²: in kg·m² their digits would not fit beside their ±. */
const small = { type: 'number', kind: 'inertia', detail: true } as const;
const road = { type: 'number', kind: 'mass', metric: 'kg', inch: 'lb' } as const;
const share = { type: 'number', kind: 'ratio', metric: 'pct', inch: 'pct' } as const;
const ofRoad = { ...road, detail: true } as const;

/** What rotating-inertia gives. */
export const inertiaOutputs = {
  totalInertia: {
    ...inertia,
    label: 'Engine, all that turns with the crank',
    symbol: 'I',
    phrase: 'The inertia of all that turns with the crank',
    main: true,
    carries: 'engineInertia',
  },
  equivalentMass: {
    ...road,
    label: 'The same as mass on the road, in this gear',
    symbol: 'm_eq',
    phrase: 'In the gear entered it counts as a mass on the road, which',
    main: true,
  },
  flywheelPart: { ...inertia, label: 'of it the flywheel', symbol: 'I_F' },
  bigEndsPart: { ...small, label: 'Rods’ big ends with their shells', symbol: 'I_be' },
  reciprocatingPart: {
    ...small,
    label: 'What goes up and down, mean of a turn',
    symbol: 'I_rec',
  },
  wheelShare: { ...share, label: 'Share of flywheel and clutch', symbol: 's_F' },
  movingShare: {
    ...share,
    label: 'Share of pistons, pins, rings and rods',
    symbol: 's_mov',
    phrase: 'Of that inertia, the share of pistons, pins, rings and rods',
  },
  riseTime: {
    type: 'number',
    kind: 'time',
    label: 'Time of the rise, engine alone',
    symbol: 't_r',
    phrase: 'With the clutch open, the time of the rise',
  },
  riseTorque: {
    type: 'number',
    kind: 'torque',
    label: 'Torque taken by the entered rate of rise',
    symbol: 'M_α',
  },
  risePower: {
    type: 'number',
    kind: 'power',
    label: 'Power taken by it at the end of the rise',
    symbol: 'P_α',
  },
  energyHeld: {
    type: 'number',
    kind: 'energy',
    label: 'Energy held at the highest intended speed',
    symbol: 'E',
    phrase: 'At each set’s highest intended speed the energy held',
  },
  energyHeight: {
    type: 'number',
    kind: 'length',
    metric: 'm',
    inch: 'ft',
    label: 'The same as height of a 1000 kg car',
    symbol: 'h_E',
  },
  meanTorque: {
    type: 'number',
    kind: 'torque',
    label: 'Mean inertia torque of a turn at steady speed',
    symbol: 'M_mean',
  },
  torqueAmplitude: {
    type: 'number',
    kind: 'torque',
    label: 'Its size, one cylinder (height of a sine of equal effect)',
    symbol: 'M_size',
  },
  reciprocatingShare: {
    type: 'number',
    kind: 'ratio',
    label: 'Share with which a mass going up and down counts at the throw',
    symbol: 'q',
    detail: true,
  },
  flywheelComputed: {
    type: 'maybe',
    kind: 'inertia',
    metric: 'kgm2',
    inch: 'lbin2',
    label: 'Flywheel from its dimensions',
    symbol: 'I_dim',
    detail: true,
  },
  flywheelMass: {
    type: 'maybe',
    kind: 'mass',
    metric: 'kg',
    inch: 'lb',
    label: 'Its mass from its dimensions',
    symbol: 'm_dim',
    detail: true,
  },
  flywheelRoad: { ...ofRoad, label: 'On the road: flywheel', symbol: 'm_F' },
  clutchRoad: { ...ofRoad, label: 'On the road: clutch', symbol: 'm_C' },
  crankRoad: { ...ofRoad, label: 'On the road: crank', symbol: 'm_K' },
  damperRoad: { ...ofRoad, label: 'On the road: damper', symbol: 'm_D' },
  movingRoad: { ...ofRoad, label: 'On the road: pistons, pins, rings, rods', symbol: 'm_M' },
  torqueCurve: {
    type: 'series',
    label: 'Inertia torque of one cylinder over a turn',
    x: { label: 'Crank angle after TDC', symbol: 'θ', kind: 'angle' },
    y: { label: 'Inertia torque', symbol: 'M_i', kind: 'torque' },
  },
} as const satisfies Readonly<Record<string, NumberOutput | MaybeOutput | SeriesOutput>>;

/** What the candidate has less than the baseline, as mass on the road, by part. */
export const savedOutputs = {
  savedRoad: {
    ...road,
    label: 'Less mass on the road',
    symbol: 'Δm',
    phrase: 'The mass on the road that the candidate saves in this gear',
    main: true,
  },
  savedFlywheel: { ...road, label: 'of it by the flywheel', symbol: 'Δm_F' },
  savedClutch: { ...road, label: 'of it by the clutch', symbol: 'Δm_C' },
  savedCrank: { ...road, label: 'of it by the bare crank', symbol: 'Δm_K' },
  savedDamper: { ...road, label: 'of it by the damper', symbol: 'Δm_D' },
  savedMoving: {
    ...road,
    label: 'of it by pistons, pins, rings and rods',
    symbol: 'Δm_M',
    phrase: 'Of that, what pistons, pins, rings and rods save',
  },
} as const satisfies Readonly<Record<string, NumberOutput>>;
