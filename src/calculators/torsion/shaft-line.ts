import { at } from '../../core/math/at.ts';
import { naturalModes, nodesOf } from '../../core/torsion/natural-modes.ts';
import { holzerTable } from '../../core/torsion/shaft-line.ts';
import { defineCalculator, type Absent } from '../define.ts';
import { axis, count, curve, frequency, maybe, ratio, torque } from '../output.ts';
import { lineInertias, lineStiffnesses, trialFrequency } from '../quantities.ts';
import { is, tex } from '../step.ts';

const fewer: Absent = { absent: 'there are too few inertias for it' };

/** Natural frequencies of up to ten inertias in line. */
export const shaftLine = defineCalculator({
  id: 'shaft-line',
  title: 'Up to ten inertias in line',
  purpose:
    'Natural frequencies of any inertias in line with springs between them, by Holzer’s table.',
  asks: ['lineInertias', 'lineStiffnesses', 'trialFrequency'],
  answers: ['firstFrequency', 'secondFrequency', 'thirdFrequency', 'firstNode', 'leftTorque'],
  inputs: { lineInertias, lineStiffnesses, trialFrequency },
  outputs: {
    firstFrequency: frequency('f_1', 'First natural frequency', {
      phrase: 'The first natural frequency',
      main: true,
    }),
    secondFrequency: maybe(frequency('f_2', 'Second natural frequency')),
    thirdFrequency: maybe(frequency('f_3', 'Third natural frequency')),
    firstNode: ratio('x_1', 'Node of the first mode, counted in inertias from the first'),
    firstLast: ratio('Θ_n', 'First mode: swing of the last over that of the first'),
    secondNode: maybe(ratio('x_2', 'First node of the second mode, counted likewise')),
    lastSwing: ratio('Θ_try', 'At the frequency tried: swing of the last, the first by one'),
    leftTorque: torque('M_try', 'At the frequency tried: torque left behind the last, for 1 rad'),
    inertias: count('N_J', 'Inertias in line'),
    firstShape: curve(
      axis('ratio', 'x', 'Inertia'),
      axis('ratio', 'Θ_1', 'Swing in the first mode'),
    ),
  },
  compute: (input) => {
    const modes = naturalModes(input);
    const [first, second, third] = modes;
    const { frequency: firstFrequency, shape } = at(modes, 0);
    const last = at(holzerTable(input, input), input.lineInertias.length - 1);
    return {
      firstFrequency,
      secondFrequency: second?.frequency ?? fewer,
      thirdFrequency: third?.frequency ?? fewer,
      firstNode: at(nodesOf(shape), 0) + 1,
      firstLast: at(shape, shape.length - 1) / at(shape, 0),
      secondNode: second === undefined ? fewer : at(nodesOf(second.shape), 0) + 1,
      lastSwing: last.amplitude,
      leftTorque: last.torque,
      inertias: input.lineInertias.length,
      firstShape: { x: (first?.shape ?? []).map((_, i) => i + 1), y: shape },
    };
  },
  steps: {
    inertias: is(tex('\\q{inertias}', 'table'), 'As many as are listed.'),
    lastSwing: is(
      tex(
        '\\q{lastSwing}:\\quad \\Theta_1 = 1,\\; \\Theta_{i+1} = \\Theta_i - \\frac{1}{k_i}\\textstyle\\sum_{j\\le i}\\omega^2 I_j\\Theta_j,\\; \\omega = 2\\pi\\q{trialFrequency}',
        'sum over parts',
      ),
      'Holzer’s table: the first swings by one. The torque of all so far twists the next spring.',
      { source: 'thomson-vibration' },
    ),
    leftTorque: is(
      tex('\\q{leftTorque} = \\omega^2\\textstyle\\sum_i I_i\\Theta_i', 'sum over parts'),
      'What is left behind the last one would have to be applied there.',
      { source: 'thomson-vibration' },
    ),
    firstFrequency: is(
      tex(
        '\\omega^2\\textstyle\\sum_i I_i\\Theta_i = 0 \\;\\Rightarrow\\; \\q{firstFrequency}',
        'search',
      ),
      'At a natural frequency nothing is left. Every node that Holzer’s table shows is one frequency passed; so they are counted, and the interval halved.',
      { source: 'thomson-vibration' },
    ),
    secondFrequency: is(
      tex(
        '\\omega^2\\textstyle\\sum_i I_i\\Theta_i = 0 \\;\\Rightarrow\\; \\q{secondFrequency}',
        'search',
      ),
      'The next one.',
      { source: 'thomson-vibration' },
    ),
    thirdFrequency: is(
      tex(
        '\\omega^2\\textstyle\\sum_i I_i\\Theta_i = 0 \\;\\Rightarrow\\; \\q{thirdFrequency}',
        'search',
      ),
      'And the third.',
      { source: 'thomson-vibration' },
    ),
    firstLast: is(
      tex('\\q{firstLast} = \\Theta_n/\\Theta_1', 'search'),
      'How the last swings beside the first, in the first mode.',
    ),
    firstNode: is(
      tex('\\Theta(\\q{firstNode}) = 0', 'search'),
      'Where the shaft stands still in the first mode: 1.5 is midway between the first two.',
    ),
    secondNode: is(
      tex('\\Theta(\\q{secondNode}) = 0', 'search'),
      'The first of the two places where it stands still in the second mode.',
    ),
  },
  limits: [
    {
      id: 'apart',
      holds: (_, { firstFrequency, secondFrequency }) =>
        typeof secondFrequency !== 'number' || secondFrequency / firstFrequency > 1.000001,
      say: 'Two frequencies are the same within a millionth. A line in one row has no two equal ones; these parts hardly know of each other, and either shape may be mixed with the other.',
    },
  ],
  validity: [
    {
      id: 'inertias',
      label: 'Inertias in line',
      symbol: 'N_J',
      kind: 'count',
      of: (_, { inertias }) => inertias,
      possible: [2, 10],
    },
  ],
  assumptions: [
    'Both ends are free. Inertias are stiff, springs have no mass, nothing damps.',
    'No branches and no gears: what turns faster must first be brought to one speed, inertias and stiffnesses by the square of the ratio.',
  ],
  cautions: ['twist-numbers'],
  sources: ['thomson-vibration', 'barth-martin-wilkinson-1967'],
  sweep: { input: 'trialFrequency', output: 'leftTorque' },
  solve: { input: 'trialFrequency', output: 'leftTorque' },
  exercise: {
    ask: 'lastSwing',
    tolerance: 0.01,
    given: { trialFrequency: 0.1 },
    beside: ['apart'],
    also: [
      {
        kind: 'choice',
        ask: 'firstFrequency',
        given: { lineInertias: 0.15, lineStiffnesses: 0.15 },
      },
      {
        kind: 'order',
        ask: 'firstFrequency',
        given: { lineInertias: 0.15, lineStiffnesses: 0.15 },
      },
    ],
  },
});
