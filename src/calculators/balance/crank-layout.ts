import { crankPins, factorBy, leastFactor, primaryLeft } from '../../core/balance/crank-pins.ts';
import { throwSums } from '../../core/balance/crank-throws.ts';
import { length as sizeOf } from '../../core/balance/vectors.ts';
import {
  displacement as displacementOf,
  meanPistonSpeed,
  overRevRise,
} from '../../core/motion/engine-size.ts';
import { defineCalculator, optional, type Absent } from '../define.ts';
import { angle, count, maybe, percent, pistonSpeed, ratio, volume } from '../output.ts';
import {
  bore,
  crankLayout as layout,
  maxSpeed,
  missedShiftSpeed,
  rodLength,
  stroke,
} from '../quantities.ts';
import { is, tex } from '../step.ts';
import { throwsOf } from './crank-layout.choices.ts';
import { noBobweights } from './layout.words.ts';

const anyFactor: Absent = { absent: 'none to choose: the pins cancel one another' };
const banksAllRound: Absent = { absent: 'more than two banks stand all round the crank' };
const unlikePins: Absent = { absent: 'pins carry different numbers of rods' };
const without = (what: string): Absent => ({ absent: `enter ${what}` });

/** What the layout of an engine and its main sizes settle before anything is weighed. */
export const crankLayout = defineCalculator({
  id: 'crank-layout',
  title: 'Crank layout',
  purpose:
    'What the layout of an engine settles before anything is weighed: rods on a pin, bobweights, balance factor.',
  asks: ['crankLayout', 'bore', 'stroke', 'rodLength', 'maxSpeed', 'missedShiftSpeed'],
  answers: [
    'bobweights',
    'rodsPerPin',
    'reciprocatingFraction',
    'displacement',
    'meanSpeed',
    'overRevRise',
  ],
  inputs: {
    crankLayout: layout,
    bore: optional(bore),
    stroke: optional(stroke),
    rodLength: optional(rodLength),
    maxSpeed: optional(maxSpeed),
    missedShiftSpeed: optional(missedShiftSpeed),
  },
  outputs: {
    bobweights: count('N_bob', 'Bobweights that the balancing machine needs', { main: true }),
    rodsPerPin: maybe(
      count('n_rod', 'Rods on one crankpin, or on each half of a split pin', {
        main: true,
        carries: 'rodsPerPin',
      }),
    ),
    reciprocatingFraction: maybe(
      percent('f', 'Balance factor of this layout', {
        main: true,
        carries: 'reciprocatingFraction',
      }),
    ),
    displacement: maybe(
      volume('V_D', 'Displacement of the engine', { phrase: 'The displacement' }),
    ),
    meanSpeed: maybe(
      pistonSpeed('v_m', 'Mean piston speed at the redline', {
        phrase: 'The mean piston speed at the redline',
      }),
    ),
    overRevRise: maybe(
      percent('q_over', 'Inertia forces at the over-rev, above those at the redline'),
    ),
    rodRatio: maybe(ratio('L/S', 'Rod length over stroke')),
    cylinders: count('N_cyl', 'Cylinders', { carries: 'cylinders' }),
    pins: count('N_pin', 'Crankpins (a split one counts once)'),
    places: count('N_pl', 'Pins, or halves of split pins'),
    bankAngle: maybe(angle('γ', 'Angle between the banks', { carries: 'bankAngle' })),
    forceFactor: ratio('k_F', 'Throws added up: force'),
    coupleFactor: ratio('k_M', 'Throws added up: couple, in pin spacings'),
    forceLeft: ratio('k_1F', 'Greatest primary force left with this factor, in F₁'),
    coupleLeft: ratio('k_1M', 'Greatest primary couple left, in F₁ times pin spacing'),
  },
  compute(input) {
    const throws = throwsOf(input.crankLayout);
    const crank = crankPins(throws);
    const { force, couple } = throwSums(throws);
    const left = primaryLeft(throws, { reciprocatingFraction: leastFactor });
    const { bore: B, stroke: S, rodLength: L, maxSpeed: red, missedShiftSpeed: over } = input;
    return {
      ...crank,
      rodsPerPin: crank.rodsPerPin ?? unlikePins,
      bankAngle: crank.bankAngle ?? banksAllRound,
      reciprocatingFraction: factorBy(throws) === 'none' ? anyFactor : leastFactor,
      displacement:
        B === undefined || S === undefined
          ? without('bore and stroke')
          : displacementOf({ bore: B, stroke: S, cylinders: crank.cylinders }),
      meanSpeed:
        S === undefined || red === undefined
          ? without('stroke and redline')
          : meanPistonSpeed({ stroke: S, maxSpeed: red }),
      overRevRise:
        red === undefined || over === undefined
          ? without('redline and over-rev speed')
          : overRevRise({ maxSpeed: red, missedShiftSpeed: over }),
      rodRatio: S === undefined || L === undefined ? without('stroke and rod length') : L / S,
      forceFactor: sizeOf(force),
      coupleFactor: sizeOf(couple),
      forceLeft: left.force,
      coupleLeft: left.couple,
    };
  },
  steps: {
    places: is(
      tex('\\q{places}', 'table'),
      'Counted from the layout: crankpins, or halves where a pin is split.',
    ),
    pins: is(tex('\\q{pins}', 'table'), 'The same with both halves of a split pin as one.'),
    rodsPerPin: is(tex('\\q{rodsPerPin}', 'table'), 'Rods on each of those places.'),
    cylinders: is(
      tex('\\q{cylinders} = \\textstyle\\sum \\q{rodsPerPin}', 'sum over parts'),
      'Every place with its rods.',
    ),
    bankAngle: is(
      tex('\\q{bankAngle}', 'table'),
      'From the first bank to the second; none with more than two.',
    ),
    forceFactor: is(
      tex('\\q{forceFactor} = \\left|\\textstyle\\sum e^{i\\theta}\\right|', 'sum over parts'),
      'Unit throws added as arrows, each at its own angle.',
      { source: 'bosch-handbook' },
    ),
    coupleFactor: is(
      tex('\\q{coupleFactor} = \\left|\\textstyle\\sum z\\,e^{i\\theta}\\right|', 'sum over parts'),
      'The same, each arrow weighted by its place z along the crank, in pin spacings from the middle.',
      { source: 'bosch-handbook' },
    ),
    bobweights: is(
      tex('\\q{bobweights}', 'sum over parts'),
      'Where neither is left, also with every throw as often as it has rods, bobweights cancel and none is needed; else one for every place.',
    ),
    forceLeft: is(
      tex(
        '\\q{forceLeft} = \\left|\\textstyle\\sum \\tfrac12 e^{i(2\\beta-\\theta)}\\right|',
        'sum over parts',
      ),
      'With a balance factor of one half the forward part is gone. What is left is the half of every rod that rotates backward, from its bank β.',
      { source: 'bevan-2005' },
    ),
    coupleLeft: is(
      tex(
        '\\q{coupleLeft} = \\left|\\textstyle\\sum \\tfrac12 z\\,e^{i(2\\beta-\\theta)}\\right|',
        'sum over parts',
      ),
      'And its couple.',
      { source: 'bevan-2005' },
    ),
    reciprocatingFraction: is(
      tex('\\q{reciprocatingFraction} = \\tfrac12', 'balance'),
      'Any other factor leaves |1 − 2f| of the forward part beside the backward one, so that one half leaves the least.',
      { source: 'bevan-2005' },
    ),
    displacement: is(
      'pi / 4 * bore^2 * stroke * cylinders',
      'Area of the bore times stroke times the number of cylinders.',
      { units: { length: 'cm', volume: 'cm3' } },
    ),
    meanSpeed: is('stroke * maxSpeed / pi', 'Two strokes in every turn.'),
    overRevRise: is(
      '(missedShiftSpeed / maxSpeed)^2 - 1',
      'Inertia forces go with the square of the speed.',
    ),
    rodRatio: is('rodLength / stroke', 'Rod length over stroke.'),
  },
  limits: [
    {
      id: 'no-bobweights',
      holds: (_input, output) => output.bobweights > 0,
      say: noBobweights,
    },
    {
      id: 'over-rev-above',
      holds: ({ maxSpeed: red = 0, missedShiftSpeed: over = red }) => over >= red,
      say: 'The over-rev speed lies below the redline. Check which is which.',
    },
  ],
  validity: [
    {
      id: 'couple',
      label: 'Couple of the throws, in pin spacings',
      symbol: 'k_M',
      kind: 'ratio',
      of: (_input, output) => output.coupleFactor,
      possible: [0, 6],
    },
  ],
  assumptions: [
    'All cylinders are alike, throws stand exactly at their angles, and pins are evenly spaced. Where pins carry different masses, their differences are an unbalance of their own, on every layout.',
    'A throw with two halves is a split pin: each half carries one rod, and takes a bobweight of its own.',
    'Rods side by side on one pin are taken in one plane, and so are the halves of a split pin.',
    'The rods of a radial are taken as alike, each on the pin itself. What a master rod with link rods on it does otherwise is left out.',
    'Only what repeats once a turn is counted. Second-order forces stay on most layouts, and no counterweight reaches them.',
    'Counterweights of a crank that needs no bobweights are not idle: they relieve its main bearings.',
    'The stroke is twice the throw. An offset of bore or pin, which lengthens it a little, is left out.',
  ],
  cautions: [],
  sources: ['bosch-handbook', 'bevan-2005'],
  sweep: { input: 'stroke', output: 'displacement' },
  solve: { input: 'bore', output: 'displacement' },
  exercise: {
    ask: 'displacement',
    tolerance: 0.005,
    given: { crankLayout: 0, bore: 0.12, stroke: 0.12 },
    also: [
      { kind: 'number', ask: 'meanSpeed', given: { stroke: 0.12, maxSpeed: 0.15 } },
      { kind: 'choice', ask: 'displacement' },
      { kind: 'order', ask: 'displacement' },
    ],
  },
});
