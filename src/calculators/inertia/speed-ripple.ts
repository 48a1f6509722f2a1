import { speedRipple as rippleOf } from '../../core/inertia/geared-inertia.ts';
import { defineCalculator } from '../define.ts';
import { energySwing, engineInertia, meanSpeed } from '../quantities.ts';
import { crankSpeed, percent } from '../output.ts';
import { is } from '../step.ts';

/** How unevenly an engine turns within a cycle. */
export const speedRipple = defineCalculator({
  id: 'speed-ripple',
  title: 'Coefficient of fluctuation of speed',
  purpose: 'How much the speed of the crank swings within a cycle: what a flywheel is for.',
  asks: ['engineInertia', 'energySwing', 'meanSpeed'],
  answers: ['coefficient', 'spread', 'highest', 'lowest'],
  inputs: { engineInertia, energySwing, meanSpeed },
  outputs: {
    coefficient: percent(
      'C_s',
      'Coefficient of fluctuation: greatest less least speed, over the mean',
      {
        phrase: 'With the same swing of energy the coefficient of fluctuation',
        main: true,
      },
    ),
    spread: crankSpeed('Δn', 'Greatest less least speed'),
    highest: crankSpeed('n_hi', 'Greatest speed'),
    lowest: crankSpeed('n_lo', 'Least speed'),
  },
  compute: (input) => rippleOf(input),
  steps: {
    coefficient: is(
      'energySwing / (engineInertia * meanSpeed^2)',
      'The swing of energy over twice the energy held.',
      { source: 'khurmi-gupta-2009' },
    ),
    spread: is('coefficient * meanSpeed', 'The same as a difference of speeds.', {
      source: 'khurmi-gupta-2009',
    }),
    highest: is('meanSpeed + spread / 2', 'Half of it above the mean.'),
    lowest: is('meanSpeed - spread / 2', 'And half below.'),
  },
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
  exercise: {
    ask: 'coefficient',
    tolerance: 0.01,
    given: { engineInertia: 0.2, energySwing: 0.3, meanSpeed: 0.2 },
    also: [{ kind: 'number', ask: 'spread' }],
  },
});
