import { checkSpins, secondSpin as spin } from '../../core/balance/second-spin.ts';
import { settleReading } from '../../core/balance/unbalance-reading.ts';
import { defineCalculator, type Absent } from '../define.ts';
import {
  angleOrigin,
  angleSense,
  askedAngle,
  askedUnbalance,
  crankTurns,
  readingNames,
  secondAngle,
  secondUnbalance,
  unbalanceAngle,
  unbalanceRead,
} from '../quantities.ts';
import { angle, direction, maybe, percent, unbalance } from '../output.ts';
import { angle as onTheWay, is, ratio, unbalance as unbalanceOnTheWay } from '../step.ts';

const nothing: Absent = { absent: 'both readings are the same: nothing was taken off' };
const gramMillimetres = { unbalance: 'gmm' } as const;

/** What drilling took off between two spins, against what it was to take. */
export const secondSpin = defineCalculator({
  id: 'second-spin',
  title: 'The second spin',
  purpose:
    'What was taken off between two spins against what was asked, and which error of amount and angle that is.',
  asks: ['unbalanceRead', 'unbalanceAngle', 'secondUnbalance', 'secondAngle'],
  answers: ['amountError', 'angleError', 'removed', 'secondHeavy', 'missed', 'astray'],
  inputs: {
    unbalanceRead,
    unbalanceAngle,
    secondUnbalance,
    secondAngle,
    readingNames,
    angleSense,
    crankTurns,
    angleOrigin,
    askedUnbalance,
    askedAngle,
  },
  outputs: {
    amountError: percent('ε_U', 'Taken off, against what was asked', {
      phrase: 'Against what was asked the amount taken off',
      main: true,
    }),
    angleError: maybe(
      angle('ε_α', 'Drilled aside, clockwise seen from the nose', {
        phrase: 'Clockwise from where it was asked, what was taken off',
        main: true,
      }),
    ),
    removed: unbalance('U_off', 'Taken off', { phrase: 'What was taken off' }),
    removedAngle: maybe(direction('α_off', 'Where it was taken, from throw 1')),
    firstHeavy: direction('α_H1', 'Heavy spot before, from throw 1'),
    secondHeavy: direction('α_H2', 'Heavy spot now, from throw 1'),
    missed: unbalance('U_miss', 'Not taken in the direction asked (negative: too much)'),
    astray: unbalance('U_astray', 'Taken across it, clockwise'),
  },
  compute: (input) => {
    checkSpins(input);
    const first = { size: input.unbalanceRead, angle: settleReading(input).heavy };
    const again = {
      ...input,
      unbalanceRead: input.secondUnbalance,
      unbalanceAngle: input.secondAngle,
    };
    const second = { size: input.secondUnbalance, angle: settleReading(again).heavy };
    const asked = {
      size: input.askedUnbalance ?? first.size,
      angle: input.askedAngle ?? first.angle,
    };
    const { removedAngle, angleError, ...result } = spin({ first, second, asked });
    return {
      ...result,
      removedAngle: removedAngle ?? nothing,
      angleError: angleError ?? nothing,
      firstHeavy: first.angle,
      secondHeavy: second.angle,
    };
  },
  steps: {
    turns: ratio(
      's_rot',
      'when(crankTurns == "clockwise", 1, -1)',
      'One where the crank turns clockwise on the machine, seen from the nose; else minus one.',
    ),
    sense: ratio(
      's',
      'when(angleSense == "with", turns, -turns)',
      'The machine’s angle grows with the rotation or against it.',
    ),
    half: onTheWay(
      'α_K',
      'when(readingNames == "heavy", 0, pi)',
      'A reading that says where to add points half a turn from the heavy spot.',
    ),
    spotBefore: onTheWay(
      'α_B',
      'angleOrigin + sense * unbalanceAngle + half',
      'The heavy spot before, counted on from the machine’s zero.',
    ),
    firstHeavy: is(
      'spotBefore - 2 * pi * floor(spotBefore / (2 * pi))',
      'Brought between 0 and 360°: whole turns are taken off or added.',
    ),
    spotAfter: onTheWay(
      'α_N',
      'angleOrigin + sense * secondAngle + half',
      'And after, by the same choices.',
    ),
    secondHeavy: is('spotAfter - 2 * pi * floor(spotAfter / (2 * pi))', 'Brought there too.'),
    asked: unbalanceOnTheWay(
      'U_A',
      'when(given(askedUnbalance), askedUnbalance, unbalanceRead)',
      'What the holes were to take: all of the first reading, unless less was asked.',
      { units: gramMillimetres },
    ),
    askedTo: onTheWay(
      'α_A',
      'when(given(askedAngle), askedAngle, firstHeavy)',
      'And where: at the heavy spot, unless the holes were set aside of it.',
    ),
    removed: is(
      'sqrt(unbalanceRead^2 + secondUnbalance^2 - 2 * unbalanceRead * secondUnbalance * cos(firstHeavy - secondHeavy))',
      'What was taken off is the first arrow less the second.',
      { units: gramMillimetres, source: 'vector-balancing-article' },
    ),
    missed: is(
      'asked - (unbalanceRead * cos(firstHeavy - askedTo) - secondUnbalance * cos(secondHeavy - askedTo))',
      'Its part in the direction asked, against what was asked.',
      { units: gramMillimetres },
    ),
    astray: is(
      'unbalanceRead * sin(firstHeavy - askedTo) - secondUnbalance * sin(secondHeavy - askedTo)',
      'And its part across.',
      { units: gramMillimetres },
    ),
    amountError: is('removed / asked - 1', 'Length against length.', { units: gramMillimetres }),
    angleError: is(
      '2 * atan(astray / (removed + asked - missed))',
      'Direction against direction: the half of it has this tangent.',
      { units: gramMillimetres },
    ),
    removedAngle: is(
      'askedTo + angleError - 2 * pi * floor((askedTo + angleError) / (2 * pi))',
      'So it was taken here, from 0 to 360°.',
    ),
  },
  limits: [
    {
      id: 'more-than-before',
      holds: (input) => input.secondUnbalance <= input.unbalanceRead,
      say: 'The crank reads more than before. Where it reads about twice as much, the wrong side was drilled; where it is neither, look at how the angle was counted. Settle the three choices again before any further hole.',
    },
  ],
  validity: [
    {
      id: 'rest',
      label: 'What is left over what was read first',
      symbol: 'U_2/U',
      kind: 'ratio',
      of: (input) => input.secondUnbalance / input.unbalanceRead,
      possible: [0, 3],
    },
  ],
  assumptions: [
    'Both spins have the same bobweights on the same pins, the same machine and the same choices. A clamp that moved, an oil film or chips in a drilling read as an error of the drill.',
    'A reading repeats to some ± of its own. What is left cannot be told more finely than that.',
    'What was drilled in the other plane between the spins shows here too, by how well the machine tells its planes apart.',
  ],
  cautions: ['balancing', 'drilling'],
  sources: ['vector-balancing-article'],
  sweep: { input: 'secondUnbalance', output: 'amountError' },
  solve: { input: 'secondUnbalance', output: 'amountError' },
  exercise: {
    ask: 'removed',
    tolerance: 0.01,
    given: {
      unbalanceRead: 0.2,
      unbalanceAngle: { by: 60 },
      secondUnbalance: 0.5,
      secondAngle: { by: 60 },
    },
    also: [{ kind: 'number', ask: 'amountError' }],
  },
});
