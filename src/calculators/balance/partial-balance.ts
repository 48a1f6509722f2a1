import { partialBalance as balance } from '../../core/balance/partial-balance.ts';
import { defineCalculator } from '../define.ts';
import {
  balanceRadius,
  bankAngle,
  crankAngle,
  maxSpeed,
  reciprocatingFraction,
  reciprocatingMass,
  rodsPerPin,
  rotatingMass,
  stroke,
} from '../quantities.ts';
import { load, mass, ratio } from '../output.ts';
import { is, millimetres } from '../step.ts';

/** Where the balance factor comes from: what a counterweight can take of a straight-line force, and what it leaves. */
export const partialBalance = defineCalculator({
  id: 'partial-balance',
  title: 'Where the balance factor comes from',
  purpose:
    'What a counterweight can take of the reciprocating force on one crankpin, and what it leaves.',
  asks: [
    'reciprocatingMass',
    'rotatingMass',
    'reciprocatingFraction',
    'rodsPerPin',
    'bankAngle',
    'stroke',
  ],
  answers: [
    'balanceMass',
    'inertiaForce',
    'forward',
    'backward',
    'forwardLeft',
    'residualGreatest',
  ],
  inputs: {
    reciprocatingMass,
    rotatingMass,
    reciprocatingFraction,
    rodsPerPin,
    bankAngle,
    stroke,
    maxSpeed,
    crankAngle,
    balanceRadius,
  },
  outputs: {
    balanceMass: mass('m_bal', 'Balance mass opposite the pin', {
      phrase: 'The balance mass',
      main: true,
    }),
    inertiaForce: load('F_1', 'Reciprocating force of one cylinder, greatest primary'),
    forward: load('F_fwd', 'Part rotating with the crank'),
    backwardShare: ratio('q_bwd', 'Part rotating against the crank, in F₁'),
    backward: load('F_bwd', 'Part rotating against the crank', {
      phrase: 'The part that rotates backward, which no counterweight reaches,',
    }),
    forwardLeft: load('F_left', 'Left of the forward part (negative: overbalanced)'),
    residual: load('F_res', 'Primary force left at this crank angle'),
    residualGreatest: load('F_max', 'Greatest in the turn', {
      phrase: 'The greatest primary force left over',
    }),
    residualLeast: load('F_min', 'Least in the turn'),
  },
  compute: (input) => balance(input),
  steps: {
    inertiaForce: is(
      'reciprocatingMass * stroke / 2 * maxSpeed^2',
      'Mass times throw times the square of the speed: the greatest primary force of one cylinder.',
      { units: { force: 'N', mass: 'kg', length: 'm' }, source: 'khurmi-gupta-2009' },
    ),
    forward: is(
      'rodsPerPin / 2 * inertiaForce',
      'Half of each cylinder rotates with the crank, at any angle between the banks.',
      { units: { force: 'N' }, source: 'bevan-2005' },
    ),
    backwardShare: is(
      '(2 - rodsPerPin) / 2 + (rodsPerPin - 1) * cos(bankAngle)',
      'The other halves rotate backward: a half for one rod, the cosine of the bank angle for two.',
      { source: 'bevan-2005' },
    ),
    backward: is(
      'abs(backwardShare) * inertiaForce',
      'The part that rotates backward, in newtons.',
      {
        units: { force: 'N' },
      },
    ),
    forwardLeft: is(
      'rodsPerPin * (0.5 - reciprocatingFraction) * inertiaForce',
      'The counterweight takes the balance factor’s share of each cylinder out of the forward part.',
      { units: { force: 'N' } },
    ),
    residual: is(
      'sqrt(((forwardLeft + backwardShare * inertiaForce) * cos(crankAngle))^2 + ((forwardLeft - backwardShare * inertiaForce) * sin(crankAngle))^2)',
      'What is left along the middle of the banks and across it, at this crank angle.',
      { units: { force: 'N' }, source: 'khurmi-gupta-2009' },
    ),
    residualGreatest: is(
      'abs(forwardLeft) + backward',
      'The two rotating parts meet twice in a turn.',
      { units: { force: 'N' } },
    ),
    residualLeast: is('abs(abs(forwardLeft) - backward)', 'And stand against each other twice.', {
      units: { force: 'N' },
    }),
    balanceMass: is(
      '(rotatingMass + reciprocatingFraction * rodsPerPin * reciprocatingMass) * stroke / (2 * balanceRadius)',
      'The bobweight, moved from the throw to the radius where the balance mass sits.',
      { units: { ...millimetres, mass: 'g' }, source: 'khurmi-gupta-2009' },
    ),
  },
  limits: [
    {
      id: 'right-angle',
      holds: (input) => input.rodsPerPin === 1 || Math.abs(Math.cos(input.bankAngle)) < 0.01,
      say: 'The banks do not stand at 90°, so part of the force rotates backward. On one pin no balance factor removes it; whether other pins cancel it depends on the layout.',
    },
    {
      id: 'single',
      holds: (input) => input.rodsPerPin > 1,
      say: 'With one rod on the pin the balance factor is a choice: it only moves the force from along the bore to across it.',
    },
  ],
  validity: [
    {
      id: 'fraction',
      label: 'Balance factor',
      symbol: 'f',
      kind: 'ratio',
      of: (input) => input.reciprocatingFraction,
      possible: [0, 1],
    },
  ],
  assumptions: [
    'Only the force that repeats once a turn is counted. A second-order force, about a quarter to a third as large, comes on top and cannot be taken by anything that rotates at crank speed.',
    'With one rod the crank angle counts from top dead centre. With two rods it counts from the pin standing midway between the banks.',
    'Both rods are taken in one plane. Side by side they also make a couple, half the forces times their distance, which is left out.',
    'The rotating mass is all that goes round with the pin: big ends, bearings and oil. The crank’s own pin and webs are not in it; the balancer finds them.',
    'The crank is stiff, turns at a steady speed, and the pin offset is zero.',
  ],
  cautions: ['balancing', 'twisting'],
  sources: ['khurmi-gupta-2009', 'bevan-2005', 'sarkar-2002', 'bosch-handbook'],
  sweep: { input: 'bankAngle', output: 'residualGreatest' },
  solve: { input: 'reciprocatingFraction', output: 'residualGreatest' },
  exercise: {
    ask: 'balanceMass',
    tolerance: 0.005,
    given: { reciprocatingMass: 0.2, rotatingMass: 0.2, stroke: 0.12, balanceRadius: 0.12 },
    also: [
      {
        kind: 'number',
        ask: 'inertiaForce',
        given: { reciprocatingMass: 0.2, stroke: 0.12, maxSpeed: 0.15 },
      },
      {
        kind: 'choice',
        ask: 'inertiaForce',
        given: { reciprocatingMass: 0.2, stroke: 0.12, maxSpeed: 0.15 },
      },
    ],
  },
});
