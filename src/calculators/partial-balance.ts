import { partialBalance as balance } from '../core/partial-balance.ts';
import { defineCalculator } from './define.ts';
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
} from './quantities.ts';

const inNewtons = { units: { force: 'N', mass: 'kg', length: 'm' } } as const;

/** Where the share f comes from: what a counterweight can take of a straight-line force, and what it leaves. */
export const partialBalance = defineCalculator({
  id: 'partial-balance',
  title: 'Where the half comes from',
  purpose:
    'What a counterweight can take of the sliding force on one crankpin, and what it leaves.',
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
    balanceMass: {
      type: 'number',
      label: 'Balance mass opposite the pin',
      symbol: 'm_bal',
      kind: 'mass',
      phrase: 'The balance mass',
      main: true,
    },
    inertiaForce: {
      type: 'number',
      label: 'Sliding force of one cylinder, greatest primary',
      symbol: 'F_1',
      kind: 'force',
    },
    forward: {
      type: 'number',
      label: 'Part turning with the crank',
      symbol: 'F_fwd',
      kind: 'force',
    },
    backwardShare: {
      type: 'number',
      label: 'Part turning against the crank, in F₁',
      symbol: 'q_bwd',
      kind: 'ratio',
      detail: true,
    },
    backward: {
      type: 'number',
      label: 'Part turning against the crank',
      symbol: 'F_bwd',
      kind: 'force',
      phrase: 'The part that turns backward, which no counterweight reaches,',
    },
    forwardLeft: {
      type: 'number',
      label: 'Left of the forward part (negative: overbalanced)',
      symbol: 'F_left',
      kind: 'force',
    },
    residual: {
      type: 'number',
      label: 'Primary force left at this crank angle',
      symbol: 'F_res',
      kind: 'force',
    },
    residualGreatest: {
      type: 'number',
      label: 'Greatest in the turn',
      symbol: 'F_max',
      kind: 'force',
      phrase: 'The greatest primary force left over',
    },
    residualLeast: {
      type: 'number',
      label: 'Least in the turn',
      symbol: 'F_min',
      kind: 'force',
    },
  },
  compute: (input) => balance(input),
  steps: [
    {
      of: 'inertiaForce',
      formula: 'reciprocatingMass * stroke / 2 * maxSpeed^2',
      say: 'Mass times throw times the square of the speed: the greatest primary force of one cylinder.',
      source: 'khurmi-gupta-2009',
      ...inNewtons,
    },
    {
      of: 'forward',
      formula: 'rodsPerPin / 2 * inertiaForce',
      say: 'Half of each cylinder turns with the crank, at any angle between the banks.',
      source: 'bevan-2005',
      units: { force: 'N' },
    },
    {
      of: 'backwardShare',
      formula: '(2 - rodsPerPin) / 2 + (rodsPerPin - 1) * cos(bankAngle)',
      say: 'The other halves turn backward: a half for one rod, the cosine of the bank angle for two.',
      source: 'bevan-2005',
    },
    {
      of: 'backward',
      formula: 'abs(backwardShare) * inertiaForce',
      say: 'The part that turns backward, in newtons.',
      units: { force: 'N' },
    },
    {
      of: 'forwardLeft',
      formula: 'rodsPerPin * (0.5 - reciprocatingFraction) * inertiaForce',
      say: 'A counterweight for the share f takes that share of each cylinder out of the forward part.',
      units: { force: 'N' },
    },
    {
      of: 'residual',
      formula:
        'sqrt(((forwardLeft + backwardShare * inertiaForce) * cos(crankAngle))^2 + ((forwardLeft - backwardShare * inertiaForce) * sin(crankAngle))^2)',
      say: 'What is left along the middle of the banks and across it, at this crank angle.',
      source: 'khurmi-gupta-2009',
      units: { force: 'N' },
    },
    {
      of: 'residualGreatest',
      formula: 'abs(forwardLeft) + backward',
      say: 'The two turning parts meet twice in a turn.',
      units: { force: 'N' },
    },
    {
      of: 'residualLeast',
      formula: 'abs(abs(forwardLeft) - backward)',
      say: 'And stand against each other twice.',
      units: { force: 'N' },
    },
    {
      of: 'balanceMass',
      formula:
        '(rotatingMass + reciprocatingFraction * rodsPerPin * reciprocatingMass) * stroke / (2 * balanceRadius)',
      say: 'The bobweight, moved from the throw to the radius where the balance mass sits.',
      source: 'khurmi-gupta-2009',
      units: { mass: 'g', length: 'mm' },
    },
  ],
  limits: [
    {
      id: 'right-angle',
      holds: (input) => input.rodsPerPin === 1 || Math.abs(Math.cos(input.bankAngle)) < 0.01,
      say: 'The banks do not stand at 90°, so part of the force turns backward. On one pin no choice of f removes it; whether other pins cancel it depends on the layout.',
    },
    {
      id: 'single',
      holds: (input) => input.rodsPerPin > 1,
      say: 'With one rod on the pin f is a choice: it only moves the force from along the bore to across it.',
    },
  ],
  validity: [
    {
      id: 'fraction',
      label: 'Share of the sliding mass that is carried',
      symbol: 'f',
      kind: 'ratio',
      of: (input) => input.reciprocatingFraction,
      possible: [0, 1],
      tested: [0.5, 0.6666666667],
    },
  ],
  assumptions: [
    'Only the force that repeats once a turn is counted. A second-order force, about a quarter to a third as large, comes on top and cannot be taken by anything that turns at crank speed.',
    'With one rod the crank angle counts from top dead centre. With two rods it counts from the pin standing midway between the banks.',
    'Both rods are taken in one plane. Side by side they also make a couple, half the forces times their distance, which is left out.',
    'The turning mass is all that turns with the pin: big ends, shells and oil. The crank’s own pin and webs are not in it; the balancer finds them.',
    'The crank is stiff, turns at a steady speed, and the pin offset is zero.',
  ],
  cautions: ['balancing', 'twisting'],
  sources: ['khurmi-gupta-2009', 'bevan-2005', 'sarkar-2002', 'bosch-handbook'],
  sweep: { input: 'bankAngle', output: 'residualGreatest' },
  solve: { input: 'reciprocatingFraction', output: 'residualGreatest' },
  exercise: { ask: 'balanceMass', tolerance: 0.005 },
});
