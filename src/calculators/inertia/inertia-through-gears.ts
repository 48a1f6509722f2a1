import { gearedMass } from '../../core/inertia/geared-inertia.ts';
import { defineCalculator } from '../define.ts';
import {
  carMass,
  drivelineEfficiency,
  engineInertia,
  finalDrive,
  gearRatio,
  netTorque,
  tyreRadius,
  wheelInertia,
} from '../quantities.ts';
import { acceleration, heavyMass, load, rateOfSpeed, ratio } from '../output.ts';
import { is, ratio as ratioStep } from '../step.ts';

/** One gear: the engine's inertia as mass on the road in both directions of power, and what that costs. */
export const inertiaThroughGears = defineCalculator({
  id: 'inertia-through-gears',
  title: 'Inertia through the gears',
  purpose:
    'What the engine’s inertia counts for on the road in one gear, whichever way the power flows, and how the car accelerates then.',
  asks: ['engineInertia', 'gearRatio', 'finalDrive', 'tyreRadius', 'carMass', 'netTorque'],
  answers: ['acceleration', 'equivalentMass', 'drivingMass', 'massFactor', 'engineRise'],
  inputs: {
    engineInertia,
    gearRatio,
    finalDrive,
    tyreRadius,
    drivelineEfficiency,
    carMass,
    wheelInertia,
    netTorque,
  },
  outputs: {
    acceleration: acceleration(
      'a',
      'Acceleration on the level, without air and rolling resistance',
      { phrase: 'At the entered torque, in this gear, the acceleration', main: true },
    ),
    equivalentMass: heavyMass('m_eq', 'Engine as mass on the road, no loss'),
    drivingMass: heavyMass('m_drive', 'while the engine drives the car'),
    overrunMass: heavyMass('m_over', 'while the car drives the engine'),
    wheelMass: heavyMass('m_w', 'Four road wheels as mass on the road'),
    massFactor: ratio('γ_m', 'All that must be sped up, over the car’s mass', {
      phrase: 'The mass that must be sped up, over the car’s own,',
    }),
    roadForce: load('F_t', 'Force at the tyres at steady speed'),
    engineRise: rateOfSpeed('α_E', 'How fast the engine’s speed rises in this gear'),
  },
  compute: (input) => gearedMass(input),
  steps: {
    turnsPerMetre: ratioStep(
      'k_r',
      'gearRatio * finalDrive / tyreRadius',
      'Radians of the crank for each metre of road: ratio over rolling radius, in 1/m.',
    ),
    equivalentMass: is(
      'engineInertia * turnsPerMetre^2',
      'Equal energy on both sides makes the ratio count by its square.',
      { source: 'bevan-2005' },
    ),
    drivingMass: is(
      'equivalentMass * drivelineEfficiency',
      'The engine speeds itself up before the gears take their loss, so its inertia costs the road only that part.',
    ),
    overrunMass: is(
      'equivalentMass / drivelineEfficiency',
      'Pushed by the car, the engine’s inertia is met through the loss, and counts for more.',
      { source: 'bevan-2005' },
    ),
    wheelMass: is(
      '4 * wheelInertia / tyreRadius^2',
      'A wheel turns once in its own circumference.',
      { source: 'bevan-2005' },
    ),
    massFactor: is(
      '(carMass + wheelMass + equivalentMass) / carMass',
      'Car, wheels and engine together over the car.',
    ),
    roadForce: is(
      'netTorque * turnsPerMetre * drivelineEfficiency',
      'Torque times ratio over radius, less the loss.',
    ),
    acceleration: is(
      'roadForce / (carMass + wheelMass + drivingMass)',
      'Force over all that it must speed up.',
      { source: 'khurmi-gupta-2009' },
    ),
    engineRise: is('acceleration * turnsPerMetre', 'The engine’s speed rises with the car’s.', {
      source: 'khurmi-gupta-2009',
    }),
  },
  limits: [
    {
      id: 'grip',
      holds: (_, { acceleration }) => acceleration < 9.80665,
      say: 'The tyres would have to hold more than the car’s weight. They slip first, and then the engine alone speeds up.',
    },
  ],
  validity: [
    {
      id: 'ratio',
      label: 'Gear ratio times final drive',
      symbol: 'i',
      kind: 'ratio',
      of: ({ gearRatio: gear, finalDrive: final }) => gear * final,
      possible: [0, 40],
    },
  ],
  assumptions: [
    'Clutch closed, no slip of clutch or tyre, one constant torque.',
    'Four equal wheels at the same rolling radius. Gear wheels, shafts and joints after the clutch are left out; together they are usually less than one wheel (common practice, no source).',
    'Level road, no air or rolling resistance: a comparison of two sets, not a lap time.',
    'The efficiency is the same in both directions and at every load. Real boxes lose more when they carry little.',
  ],
  cautions: ['flywheel', 'running'],
  sources: ['bevan-2005', 'khurmi-gupta-2009', 'gillespie-1992'],
  sweep: { input: 'gearRatio', output: 'acceleration' },
  solve: { input: 'engineInertia', output: 'acceleration' },
  exercise: {
    ask: 'equivalentMass',
    tolerance: 0.01,
    given: { engineInertia: 0.2, gearRatio: 0.25, finalDrive: 0.15, tyreRadius: 0.1 },
    also: [
      {
        kind: 'number',
        ask: 'roadForce',
        given: { netTorque: 0.2, gearRatio: 0.25, finalDrive: 0.15, tyreRadius: 0.1 },
      },
      { kind: 'choice', ask: 'equivalentMass', given: { engineInertia: 0.25, gearRatio: 0.25 } },
    ],
  },
});
