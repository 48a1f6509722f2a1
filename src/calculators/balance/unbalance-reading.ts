import { settleReading } from '../../core/balance/unbalance-reading.ts';
import { defineCalculator } from '../define.ts';
import {
  angleOrigin,
  angleSense,
  crankTurns,
  readingNames,
  unbalanceAngle,
  unbalanceRead,
} from '../quantities.ts';
import { direction, unbalance } from '../output.ts';
import { angle as onTheWay, is } from '../step.ts';

const gramMillimetres = { unbalance: 'gmm' } as const;

/** Where on the crank the heavy spot of a reading is, and what a wrong choice would cost. */
export const unbalanceReading = defineCalculator({
  id: 'unbalance-reading',
  title: 'What the reading says',
  purpose: 'Where on the crank the heavy spot is that one plane of a reading speaks of.',
  asks: [
    'unbalanceRead',
    'unbalanceAngle',
    'readingNames',
    'angleSense',
    'crankTurns',
    'angleOrigin',
  ],
  answers: ['heavySpot', 'lightSpot', 'wrongSide', 'wrongSense'],
  inputs: { unbalanceRead, unbalanceAngle, readingNames, angleSense, crankTurns, angleOrigin },
  outputs: {
    heavySpot: direction('α_H', 'Heavy spot from throw 1, clockwise seen from the nose', {
      phrase: 'Clockwise from throw 1, seen from the nose, the heavy spot',
      main: true,
      carries: 'heavyAngle',
    }),
    lightSpot: direction('α_L', 'Light spot, opposite: where mass would be added'),
    wrongSide: unbalance('U_side', 'Left if the wrong side were drilled'),
    wrongSense: unbalance('U_sense', 'Left if the angle were counted the wrong way round'),
  },
  compute: (input) => {
    const { heavy, light, wrongSide, wrongSense } = settleReading(input);
    return { heavySpot: heavy, lightSpot: light, wrongSide, wrongSense };
  },
  steps: {
    turned: onTheWay(
      'α_T',
      'when(crankTurns == "clockwise", unbalanceAngle, -unbalanceAngle)',
      'An angle that grows with the rotation grows clockwise where the crank turns clockwise, seen from the nose.',
    ),
    counted: onTheWay(
      'α_C',
      'when(angleSense == "with", angleOrigin + turned, angleOrigin - turned)',
      'Counted on from the machine’s zero, with the rotation or against it.',
    ),
    pointed: onTheWay(
      'α_P',
      'when(readingNames == "heavy", counted, counted + pi)',
      'A reading that says where to add points to the light spot, half a turn from the heavy one.',
    ),
    heavySpot: is(
      'pointed - 2 * pi * floor(pointed / (2 * pi))',
      'Brought between 0 and 360°: whole turns are taken off or added.',
    ),
    lightSpot: is(
      'heavySpot + pi - 2 * pi * floor((heavySpot + pi) / (2 * pi))',
      'Half a turn further, brought there too.',
    ),
    wrongSide: is(
      '2 * unbalanceRead',
      'What should have been taken off stays, and as much is missing opposite.',
      { units: gramMillimetres },
    ),
    wrongSense: is(
      '2 * unbalanceRead * abs(sin(unbalanceAngle))',
      'Two arrows of this size, one at the angle and one at its mirror image, differ by this.',
      { units: gramMillimetres },
    ),
  },
  limits: [
    {
      id: 'mirror',
      holds: ({ unbalanceAngle: read }) => Math.abs(Math.sin(read)) > 0.02,
      say: 'This angle reads the same counted either way round, so this reading does not show a wrong sense. The next one will.',
    },
  ],
  validity: [
    {
      id: 'angle',
      label: 'Angle read',
      symbol: 'α_U',
      kind: 'angle',
      of: ({ unbalanceAngle: read }) => read,
      possible: [-2 * Math.PI, 2 * Math.PI],
    },
  ],
  assumptions: [
    'Angles on the crank count from throw 1, clockwise as one looks at the nose. In an engine that turns clockwise from there, that is with its rotation.',
    'The rotation that counts is that of the crank on the balancing machine, which may turn it the other way than the engine does.',
    'One plane is looked at. The machine has already told its two planes apart; what is drilled in one of them shows a little in the other.',
  ],
  cautions: ['balancing', 'drilling'],
  sources: [],
  sweep: { input: 'unbalanceAngle', output: 'wrongSense' },
  solve: { input: 'unbalanceAngle', output: 'wrongSense' },
  exercise: {
    ask: 'heavySpot',
    tolerance: 0.005,
    given: { unbalanceAngle: { by: 80 }, readingNames: 1, angleSense: 1, crankTurns: 1 },
    also: [
      {
        kind: 'number',
        ask: 'wrongSense',
        given: { unbalanceAngle: { by: 80 }, unbalanceRead: 0.4 },
      },
      {
        kind: 'choice',
        ask: 'wrongSense',
        given: { unbalanceAngle: { by: 80 }, unbalanceRead: 0.4 },
      },
      {
        kind: 'order',
        ask: 'wrongSense',
        given: { unbalanceAngle: { by: 80 }, unbalanceRead: 0.4 },
      },
    ],
  },
});
