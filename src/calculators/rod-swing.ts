import { standardGravity, twoEndSwing } from '../core/bench-swing.ts';
import { defineCalculator } from './define.ts';
import { bigEndTime, edgeDistance, rodMass, rodSwingCount, smallEndTime } from './quantities.ts';

const length = { type: 'number', kind: 'length' } as const;

/** Inertia and centre of gravity of a rod swung from each end. */
export const rodSwing = defineCalculator({
  id: 'rod-swing',
  title: 'A rod swung from both ends',
  purpose:
    'The inertia and the centre of gravity of a connecting rod from two swings on a knife edge.',
  inputs: { rodMass, edgeDistance, rodSwingCount, smallEndTime, bigEndTime },
  outputs: {
    rodInertia: {
      type: 'number',
      kind: 'inertia',
      label: 'Inertia about the centre of gravity',
      symbol: 'I_G',
      phrase: 'The rod’s inertia about its centre of gravity',
      main: true,
    },
    gyration: { ...length, label: 'Radius of gyration', symbol: 'k_G' },
    fromSmallEnd: {
      ...length,
      label: 'Centre of gravity from the small end’s edge',
      symbol: 'h_1',
    },
    fromBigEnd: { ...length, label: 'Centre of gravity from the big end’s edge', symbol: 'h_2' },
    smallEndString: {
      ...length,
      label: 'String of a point mass with the small end’s time',
      symbol: 'L_1',
      detail: true,
    },
    bigEndString: {
      ...length,
      label: 'String of a point mass with the big end’s time',
      symbol: 'L_2',
      detail: true,
    },
    compactness: {
      type: 'number',
      kind: 'ratio',
      label: 'Radius of gyration squared over the product of both distances',
      symbol: 'c_k',
      detail: true,
    },
  },
  compute: (input) => {
    const { inertia, ...rest } = twoEndSwing(input);
    return {
      ...rest,
      rodInertia: inertia,
      compactness: rest.gyration ** 2 / (rest.fromSmallEnd * rest.fromBigEnd),
    };
  },
  steps: [
    {
      of: 'smallEndString',
      formula: `${String(standardGravity)} * (smallEndTime / rodSwingCount / (2 * pi))^2`,
      say: 'The string on which a point mass would swing in the small end’s time.',
      source: 'khurmi-gupta-2009',
    },
    {
      of: 'bigEndString',
      formula: `${String(standardGravity)} * (bigEndTime / rodSwingCount / (2 * pi))^2`,
      say: 'The same for the big end.',
      source: 'khurmi-gupta-2009',
    },
    {
      of: 'fromSmallEnd',
      formula:
        'edgeDistance * (bigEndString - edgeDistance) / (smallEndString + bigEndString - 2 * edgeDistance)',
      say: 'One inertia must explain both times; that settles where the centre of gravity lies.',
      source: 'khurmi-gupta-2009',
    },
    {
      of: 'fromBigEnd',
      formula: 'edgeDistance - fromSmallEnd',
      say: 'The rest of the distance.',
    },
    {
      of: 'gyration',
      formula: 'sqrt(fromSmallEnd * (smallEndString - fromSmallEnd))',
      say: 'What the string is longer than the distance, times the distance, is the radius of gyration squared.',
      source: 'khurmi-gupta-2009',
    },
    {
      of: 'rodInertia',
      formula: 'rodMass * gyration^2',
      say: 'Mass times the radius of gyration squared.',
    },
  ],
  limits: [
    {
      id: 'told-apart',
      holds: (_, { compactness }) => Math.abs(compactness - 1) > 0.1,
      say: 'Both strings are nearly as long as the edges are apart. Then the two times hardly say where the centre of gravity lies: balance the rod on an edge, and use the other calculator with one end.',
    },
  ],
  validity: [
    {
      id: 'compactness',
      label: 'Radius of gyration squared over the product of both distances',
      symbol: 'c_k',
      kind: 'ratio',
      of: (_, { compactness }) => compactness,
      possible: [0, 3],
      tested: [0.573, 0.573],
    },
  ],
  assumptions: [
    'The centre of gravity lies between the two edges and on their line. A rod hangs so by itself.',
    'Small swings on a sharp edge: ten degrees to either side lengthen the time by 0.19 %, and the two times by the same part.',
    'Bolts in, shells out, as it was weighed. Standard gravity; real gravity differs by up to 0.3 %, which moves the result by more than that, since both strings are compared with a measured distance.',
  ],
  cautions: ['flywheel', 'weighing'],
  sources: ['khurmi-gupta-2009'],
  sweep: { input: 'bigEndTime', output: 'rodInertia' },
  solve: { input: 'bigEndTime', output: 'rodInertia' },
  exercise: { ask: 'rodInertia', tolerance: 0.02 },
});
