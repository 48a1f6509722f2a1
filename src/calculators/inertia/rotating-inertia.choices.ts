import type { ChoiceEntry } from '../define.ts';

/** Where the flywheel's inertia comes from. */
export const flywheelFrom: ChoiceEntry<'measured' | 'dimensions'> = {
  type: 'choice',
  name: 'flywheelFrom',
  label: 'Flywheel taken from',
  symbol: 'W',
  options: {
    measured: 'its measured or stated inertia',
    dimensions: 'disc or ring dimensions',
  },
  demo: { baseline: 'measured', candidate: 'measured' },
};

/** How the part hangs on the bench. */
export const swingRig: ChoiceEntry<'bifilar' | 'trifilar' | 'knife-edge'> = {
  type: 'choice',
  name: 'swingRig',
  label: 'Hung on',
  symbol: 'G',
  options: {
    bifilar: 'two wires',
    trifilar: 'three wires, with or without a platform',
    'knife-edge': 'a knife edge, as a pendulum',
  },
  demo: { baseline: 'bifilar', candidate: 'bifilar' },
};
