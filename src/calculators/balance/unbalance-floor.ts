import { unbalanceFloor as floorOf } from '../../core/balance/unbalance-floor.ts';
import { defineCalculator } from '../define.ts';
import {
  bobweightUnbalance,
  bobweightsMass,
  crankMass,
  flywheelMass,
  mountingOffset,
  flywheelClearance,
} from '../quantities.ts';
import { unbalance } from '../output.ts';
import { is, millimetres } from '../step.ts';

const small = { units: { ...millimetres, mass: 'g', unbalance: 'gmm' } } as const;

/** What stays unknown however well a crank is balanced. */
export const unbalanceFloor = defineCalculator({
  id: 'unbalance-floor',
  title: 'The floor',
  purpose:
    'The unbalance that mounting, register and bobweights may bring in, which no reading of the machine shows.',
  asks: [
    'mountingOffset',
    'crankMass',
    'bobweightsMass',
    'flywheelMass',
    'flywheelClearance',
    'bobweightUnbalance',
  ],
  answers: ['floor', 'mountingEnd', 'register', 'worst', 'mounting'],
  inputs: {
    mountingOffset,
    crankMass,
    bobweightsMass,
    flywheelMass,
    flywheelClearance,
    bobweightUnbalance,
  },
  outputs: {
    floor: unbalance('U_floor', 'Floor at the flywheel’s end', {
      phrase: 'The unbalance that may stand at the flywheel’s end with the machine at zero',
      main: true,
      carries: 'unbalanceFloor',
    }),
    mounting: unbalance('U_m', 'From the mounting, whole crank'),
    mountingEnd: unbalance('U_m,B', 'From the mounting, at this end'),
    register: unbalance('U_reg', 'From the flywheel’s register'),
    worst: unbalance('U_max', 'All three pointing alike'),
  },
  compute(input) {
    const { mounting, register, floor, worst } = floorOf(input);
    return { floor, mounting, mountingEnd: mounting / 2, register, worst };
  },
  steps: {
    mounting: is(
      '(crankMass + bobweightsMass) * mountingOffset',
      'A crank that turns about another axis than its own is out by its mass times the distance of the two.',
      small,
    ),
    mountingEnd: is('mounting / 2', 'Half of it at each end.', small),
    register: is(
      'flywheelMass * flywheelClearance / 2',
      'A flywheel can sit off the middle by half of its clearance.',
      small,
    ),
    floor: is(
      'sqrt(mountingEnd^2 + register^2 + bobweightUnbalance^2)',
      'Their angles are not known: squares are added.',
      small,
    ),
    worst: is('mountingEnd + register + bobweightUnbalance', 'The worst angles: sizes are added.', {
      units: small.units,
    }),
  },
  limits: [],
  validity: [
    {
      id: 'offset',
      label: 'Crank’s axis off the machine’s',
      symbol: 'e_m',
      kind: 'length',
      metric: 'mm',
      inch: 'in',
      of: (input) => input.mountingOffset,
      possible: [0, 0.0005],
    },
  ],
  assumptions: [
    'The centre of mass lies in the middle, so that half of the mounting’s unbalance stands at each end.',
    'The flywheel’s overhang over the last bearing is left out; it makes its part a little larger.',
    'Run-out of the flywheel’s own balancing, keys, bolts of unlike mass, the clutch and oil in the drillings are left out.',
  ],
  cautions: ['balancing'],
  sources: ['iso-21940-14', 'mancuso-couplings'],
  sweep: { input: 'flywheelClearance', output: 'floor' },
  solve: { input: 'flywheelClearance', output: 'floor' },
  exercise: {
    ask: 'floor',
    tolerance: 0.01,
    given: { mountingOffset: 0.4, flywheelMass: 0.4, flywheelClearance: 0.4 },
    also: [
      {
        kind: 'number',
        ask: 'mounting',
        given: { mountingOffset: 0.4, crankMass: 0.3, bobweightsMass: 0.3 },
      },
      { kind: 'number', ask: 'register', given: { flywheelMass: 0.4, flywheelClearance: 0.4 } },
    ],
  },
});
