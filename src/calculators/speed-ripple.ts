import { speedRipple as rippleOf } from '../core/geared-inertia.ts';
import { defineCalculator } from './define.ts';
import { energySwing, engineInertia, meanSpeed } from './quantities.ts';

const speed = { type: 'number', kind: 'angularSpeed' } as const;

/** How unevenly an engine turns within a cycle. */
export const speedRipple = defineCalculator({
  id: 'speed-ripple',
  title: 'Speed ripple',
  purpose: 'How much the speed of the crank swings within a cycle: what a flywheel is for.',
  inputs: { engineInertia, energySwing, meanSpeed },
  outputs: {
    coefficient: {
      type: 'number',
      kind: 'ratio',
      metric: 'pct',
      inch: 'pct',
      label: 'Speed ripple, greatest less least over the mean',
      symbol: 'C_s',
      phrase: 'With the same swing of energy the speed ripple',
      main: true,
    },
    spread: { ...speed, label: 'Greatest less least speed', symbol: 'Δn' },
    highest: { ...speed, label: 'Greatest speed', symbol: 'n_hi' },
    lowest: { ...speed, label: 'Least speed', symbol: 'n_lo' },
  },
  compute: (input) => rippleOf(input),
  steps: [
    {
      of: 'coefficient',
      formula: 'energySwing / (engineInertia * meanSpeed^2)',
      say: 'The swing of energy over twice the energy held.',
      source: 'khurmi-gupta-2009',
    },
    {
      of: 'spread',
      formula: 'coefficient * meanSpeed',
      say: 'The same as a difference of speeds.',
      source: 'khurmi-gupta-2009',
    },
    {
      of: 'highest',
      formula: 'meanSpeed + spread / 2',
      say: 'Half of it above the mean.',
    },
    { of: 'lowest', formula: 'meanSpeed - spread / 2', say: 'And half below.' },
  ],
  limits: [
    {
      id: 'smooth',
      holds: (_, { coefficient }) => coefficient <= 0.5,
      say: 'The speed swings by more than half its mean. The torque itself changes with the speed then, and the engine will hardly keep turning.',
    },
  ],
  validity: [
    {
      id: 'ripple',
      label: 'Speed ripple',
      symbol: 'C_s',
      kind: 'ratio',
      of: (_, { coefficient }) => coefficient,
      possible: [0, 2],
      tested: [0.001013, 0.1521],
    },
  ],
  assumptions: [
    'The mean speed lies midway between the extremes; then the formula is exact for any swing.',
    'The torque over the cycle does not depend on the speed, and the load is steady.',
    'Crank, clutch and shafts are stiff. Twist of the crank adds a ripple of its own, which this does not show.',
  ],
  cautions: ['flywheel', 'twisting'],
  sources: ['khurmi-gupta-2009'],
  sweep: { input: 'engineInertia', output: 'coefficient' },
  solve: { input: 'engineInertia', output: 'coefficient' },
  exercise: { ask: 'coefficient', tolerance: 0.01 },
});
