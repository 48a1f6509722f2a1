import { gearedMass } from '../core/geared-inertia.ts';
import { defineCalculator } from './define.ts';
import {
  carMass,
  drivelineEfficiency,
  engineInertia,
  finalDrive,
  gearRatio,
  netTorque,
  tyreRadius,
  wheelInertia,
} from './quantities.ts';

const road = { type: 'number', kind: 'mass', metric: 'kg', inch: 'lb' } as const;

/** One gear: the engine's inertia as mass on the road in both directions of power, and what that costs. */
export const inertiaThroughGears = defineCalculator({
  id: 'inertia-through-gears',
  title: 'Inertia through the gears',
  purpose:
    'What the engine’s inertia counts for on the road in one gear, whichever way the power flows, and how the car accelerates then.',
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
    acceleration: {
      type: 'number',
      kind: 'acceleration',
      label: 'Acceleration on the level, without air and rolling resistance',
      symbol: 'a',
      phrase: 'At the entered torque, in this gear, the acceleration',
      main: true,
    },
    equivalentMass: { ...road, label: 'Engine as mass on the road, no loss', symbol: 'm_eq' },
    drivingMass: { ...road, label: 'while the engine drives the car', symbol: 'm_drive' },
    overrunMass: { ...road, label: 'while the car drives the engine', symbol: 'm_over' },
    wheelMass: { ...road, label: 'Four road wheels as mass on the road', symbol: 'm_w' },
    massFactor: {
      type: 'number',
      kind: 'ratio',
      label: 'All that must be sped up, over the car’s mass',
      symbol: 'γ_m',
      phrase: 'What must be sped up, measured by the car’s own mass,',
    },
    roadForce: {
      type: 'number',
      kind: 'force',
      label: 'Force at the tyres at steady speed',
      symbol: 'F_t',
    },
    engineRise: {
      type: 'number',
      kind: 'angularAcceleration',
      metric: 'rpm/s',
      inch: 'rpm/s',
      label: 'How fast the engine’s speed rises in this gear',
      symbol: 'α_E',
    },
  },
  compute: (input) => gearedMass(input),
  steps: [
    {
      of: 'turnsPerMetre',
      symbol: 'k_r',
      kind: 'ratio',
      formula: 'gearRatio * finalDrive / tyreRadius',
      say: 'Radians of the crank for each metre of road: ratio over rolling radius, in 1/m.',
    },
    {
      of: 'equivalentMass',
      formula: 'engineInertia * turnsPerMetre^2',
      say: 'Equal energy on both sides makes the ratio count by its square.',
      source: 'bevan-2005',
    },
    {
      of: 'drivingMass',
      formula: 'equivalentMass * drivelineEfficiency',
      say: 'The engine speeds itself up before the gears take their loss, so its inertia costs the road only that part.',
    },
    {
      of: 'overrunMass',
      formula: 'equivalentMass / drivelineEfficiency',
      say: 'Pushed by the car, the engine’s inertia is met through the loss, and counts for more.',
      source: 'bevan-2005',
    },
    {
      of: 'wheelMass',
      formula: '4 * wheelInertia / tyreRadius^2',
      say: 'A wheel turns once in its own circumference.',
      source: 'bevan-2005',
    },
    {
      of: 'massFactor',
      formula: '(carMass + wheelMass + equivalentMass) / carMass',
      say: 'Car, wheels and engine together over the car.',
    },
    {
      of: 'roadForce',
      formula: 'netTorque * turnsPerMetre * drivelineEfficiency',
      say: 'Torque times ratio over radius, less the loss.',
    },
    {
      of: 'acceleration',
      formula: 'roadForce / (carMass + wheelMass + drivingMass)',
      say: 'Force over all that it must speed up.',
      source: 'khurmi-gupta-2009',
    },
    {
      of: 'engineRise',
      formula: 'acceleration * turnsPerMetre',
      say: 'The engine’s speed rises with the car’s.',
      source: 'khurmi-gupta-2009',
    },
  ],
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
      tested: [4, 5],
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
  exercise: { ask: 'equivalentMass', tolerance: 0.01 },
});
