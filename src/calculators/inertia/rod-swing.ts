import { standardGravity, twoEndSwing } from '../../core/inertia/bench-swing.ts';
import { defineCalculator } from '../define.ts';
import { bigEndTime, edgeDistance, rodMass, rodSwingCount, smallEndTime } from '../quantities.ts';
import { inertia, length, ratio } from '../output.ts';
import { is } from '../step.ts';

const g = String(standardGravity);

/** Inertia and centre of gravity of a rod swung from each end. */
export const rodSwing = defineCalculator({
  id: 'rod-swing',
  title: 'A rod swung from both ends',
  purpose:
    'The inertia and the centre of gravity of a connecting rod from two swings on a knife edge.',
  asks: ['rodMass', 'edgeDistance', 'rodSwingCount', 'smallEndTime', 'bigEndTime'],
  answers: ['rodInertia', 'gyration', 'fromSmallEnd', 'fromBigEnd'],
  inputs: { rodMass, edgeDistance, rodSwingCount, smallEndTime, bigEndTime },
  outputs: {
    rodInertia: inertia('I_G', 'Inertia about the centre of gravity', {
      phrase: 'The rod’s inertia about its centre of gravity',
      main: true,
    }),
    gyration: length('k_G', 'Radius of gyration'),
    fromSmallEnd: length('h_1', 'Centre of gravity from the small end’s edge'),
    fromBigEnd: length('h_2', 'Centre of gravity from the big end’s edge'),
    smallEndString: length('L_1', 'String of a point mass with the small end’s time'),
    bigEndString: length('L_2', 'String of a point mass with the big end’s time'),
    compactness: ratio('c_k', 'Radius of gyration squared over the product of both distances'),
  },
  compute: (input) => {
    const { inertia, ...rest } = twoEndSwing(input);
    return {
      ...rest,
      rodInertia: inertia,
      compactness: rest.gyration ** 2 / (rest.fromSmallEnd * rest.fromBigEnd),
    };
  },
  steps: {
    smallEndString: is(
      `${g} * (smallEndTime / rodSwingCount / (2 * pi))^2`,
      'The string on which a point mass would swing in the small end’s time.',
      { source: 'khurmi-gupta-2009' },
    ),
    bigEndString: is(
      `${g} * (bigEndTime / rodSwingCount / (2 * pi))^2`,
      'The same for the big end.',
      { source: 'khurmi-gupta-2009' },
    ),
    fromSmallEnd: is(
      'edgeDistance * (bigEndString - edgeDistance) / (smallEndString + bigEndString - 2 * edgeDistance)',
      'One inertia must explain both times; that settles where the centre of gravity lies.',
      { source: 'khurmi-gupta-2009' },
    ),
    fromBigEnd: is('edgeDistance - fromSmallEnd', 'The rest of the distance.'),
    gyration: is(
      'sqrt(fromSmallEnd * (smallEndString - fromSmallEnd))',
      'What the string is longer than the distance, times the distance, is the radius of gyration squared.',
      { source: 'khurmi-gupta-2009' },
    ),
    rodInertia: is('rodMass * gyration^2', 'Mass times the radius of gyration squared.'),
    compactness: is(
      'gyration^2 / (fromSmallEnd * fromBigEnd)',
      'Near one, both strings are as long as the edges are apart, and the times say little.',
    ),
  },
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
  exercise: {
    ask: 'fromSmallEnd',
    tolerance: 0.01,
    given: { edgeDistance: 0.02, smallEndTime: 0.015, bigEndTime: 0.015 },
    also: [
      {
        kind: 'number',
        ask: 'rodInertia',
        tolerance: 0.02,
        given: { rodMass: 0.2, edgeDistance: 0.02, smallEndTime: 0.015, bigEndTime: 0.015 },
      },
      { kind: 'order', ask: 'rodInertia', given: { rodMass: 0.25, smallEndTime: 0.02 } },
    ],
  },
});
