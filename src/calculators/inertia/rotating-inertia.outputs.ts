import type { MaybeOutput, NumberOutput, SeriesOutput } from '../define.ts';
import {
  axis,
  curve,
  distance,
  energy,
  engineInertia,
  heavyMass,
  inertia,
  maybe,
  percent,
  power,
  ratio,
  time,
  torque,
} from '../output.ts';

/** What rotating-inertia gives. */
export const inertiaOutputs = {
  totalInertia: engineInertia('I', 'Engine, all that turns with the crank', {
    phrase: 'The inertia of all that turns with the crank',
    main: true,
    carries: 'engineInertia',
  }),
  equivalentMass: heavyMass('m_eq', 'Mass on the road that it counts for, in this gear', {
    phrase: 'The mass on the road that it counts for in the gear entered',
    main: true,
  }),
  flywheelPart: engineInertia('I_F', 'of it the flywheel'),
  bigEndsPart: inertia('I_be', 'Rods’ big ends with their shells'),
  reciprocatingPart: inertia('I_rec', 'What goes up and down, mean of a turn'),
  throwInertia: maybe(
    inertia('I_t', 'Crank, rods and pistons, of one throw', { carries: 'throwInertia' }),
  ),
  wheelShare: percent('s_F', 'Share of flywheel and clutch'),
  movingShare: percent('s_mov', 'Share of pistons, pins, rings and rods', {
    phrase: 'The share of pistons, pins, rings and rods in that inertia',
  }),
  riseTime: time('t_r', 'Time of the rise, engine alone', {
    phrase: 'With the clutch open, the time of the rise',
  }),
  riseTorque: torque('M_α', 'Torque taken by the entered rate of rise'),
  risePower: power('P_α', 'Power taken by it at the end of the rise'),
  energyHeld: energy('E', 'Energy held at the redline', {
    phrase: 'At each set’s redline the energy held',
  }),
  energyHeight: distance('h_E', 'Energy held, as height of a 1000 kg car'),
  meanTorque: torque('M_mean', 'Mean inertia torque of a turn at steady speed'),
  torqueAmplitude: torque('M_size', 'Its size, one cylinder (height of a sine of equal effect)'),
  reciprocatingShare: ratio('q', 'Share with which a mass going up and down counts at the throw'),
  flywheelComputed: maybe(engineInertia('I_dim', 'Flywheel from its dimensions')),
  flywheelMass: maybe(heavyMass('m_dim', 'Its mass from its dimensions')),
  flywheelRoad: heavyMass('m_F', 'On the road: flywheel'),
  clutchRoad: heavyMass('m_C', 'On the road: clutch'),
  crankRoad: heavyMass('m_K', 'On the road: crank'),
  damperRoad: heavyMass('m_D', 'On the road: damper'),
  movingRoad: heavyMass('m_M', 'On the road: pistons, pins, rings, rods'),
  torqueCurve: curve(
    axis('angle', 'θ', 'Crank angle after TDC'),
    axis('torque', 'M_i', 'Inertia torque'),
    'Inertia torque of one cylinder over a turn',
  ),
} as const satisfies Readonly<Record<string, NumberOutput | MaybeOutput | SeriesOutput>>;

/** What the candidate has less than the baseline, as mass on the road, by part. */
export const savedOutputs = {
  savedRoad: heavyMass('Δm', 'Less mass on the road', {
    phrase: 'The mass on the road that the candidate saves in this gear',
    main: true,
  }),
  savedFlywheel: heavyMass('Δm_F', 'of it by the flywheel'),
  savedClutch: heavyMass('Δm_C', 'of it by the clutch'),
  savedCrank: heavyMass('Δm_K', 'of it by the bare crank'),
  savedDamper: heavyMass('Δm_D', 'of it by the damper'),
  savedMoving: heavyMass('Δm_M', 'of it by pistons, pins, rings and rods', {
    phrase: 'The part of it that pistons, pins, rings and rods save',
  }),
} as const satisfies Readonly<Record<string, NumberOutput>>;
