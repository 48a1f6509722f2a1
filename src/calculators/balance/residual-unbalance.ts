import {
  balancedMass,
  bearingShares,
  correctionShares,
  gradeOf,
  permissible as permissibleOf,
  residualOf,
  type BalancedRotor,
  type Bearings,
  type CorrectionPlanes,
} from '../../core/balance/residual-unbalance.ts';
import { above, atLeast } from '../../core/refuse.ts';
import { defineCalculator, optional, type Absent } from '../define.ts';
import {
  balanceGrade,
  balanceRadius,
  bearingSpan,
  bobweightsMass,
  cgToBearingA,
  crankMass,
  maxSpeed,
  planeA,
  planeB,
  residualA,
  residualB,
  unbalanceFloor,
} from '../quantities.ts';
import { residualOutputs } from './residual-unbalance.outputs.ts';
import { residualSteps } from './residual-unbalance.steps.ts';

const unread: Absent = { absent: 'Enter what the machine reads in both planes.' };
const noFloor: Absent = { absent: 'Work the floor, or enter one.' };
/** [m] Farther off its axis no centre of mass is left by balancing. */
const farOff = 0.5e-3;

/** True for a number that is there and greater than the limit. */
function exceeds(value: number | Absent, limit: number): boolean {
  return typeof value === 'number' && value > limit;
}

/** How much unbalance may stay in a crank, and what a reading amounts to. */
export const residualUnbalance = defineCalculator({
  id: 'residual-unbalance',
  title: 'How good is good enough',
  purpose:
    'The unbalance that a balance quality grade permits in a crank, plane by plane, and the grade that a reading amounts to.',
  asks: ['balanceGrade', 'crankMass', 'bobweightsMass', 'maxSpeed', 'residualA', 'residualB'],
  answers: [
    'permissible',
    'gradeReached',
    'correctionA',
    'correctionB',
    'residualForce',
    'floorGrade',
  ],
  inputs: {
    balanceGrade,
    crankMass,
    bobweightsMass,
    maxSpeed,
    residualA: optional(residualA),
    residualB: optional(residualB),
    unbalanceFloor: optional(unbalanceFloor),
    bearingSpan,
    cgToBearingA,
    planeA,
    planeB,
    balanceRadius,
  },
  outputs: residualOutputs,
  compute(input) {
    const { eccentricity, unbalance, force } = permissibleOf(input, input);
    const bearing = bearingShares(input);
    const correction = correctionShares(input, input);
    return {
      permissible: unbalance,
      eccentricity,
      allowedForce: force,
      rotorMass: balancedMass(input),
      rimMass: unbalance / above(input, 'balanceRadius'),
      allowedA: unbalance * bearing.a,
      allowedB: unbalance * bearing.b,
      correctionA: unbalance * correction.a,
      correctionB: unbalance * correction.b,
      floorGrade:
        input.unbalanceFloor === undefined
          ? noFloor
          : gradeOf(2 * atLeast({ unbalanceFloor: input.unbalanceFloor }, 'unbalanceFloor'), input),
      ...reached(input),
    };
  },
  steps: residualSteps,
  limits: [
    {
      id: 'within-grade',
      holds: (input, { gradeReached }) => !exceeds(gradeReached, input.balanceGrade),
      say: 'The residual is above what the chosen grade permits.',
    },
    {
      id: 'above-floor',
      holds: (input, { floorGrade }) => !exceeds(floorGrade, input.balanceGrade),
      say: 'The floor is above what the chosen grade permits: the machine may read it, and the engine need not have it. A closer register, a truer mounting or a closer bobweight comes before the next hole.',
    },
    {
      id: 'a-residual',
      holds: (input, { gradeReached }) => !exceeds(gradeReached, farOff * input.maxSpeed),
      say: 'This reading stands for a centre of mass more than half a millimetre off the axis. No balancing leaves that: look for a wrong unit, a nought too many, missing bobweights, or a reading from before the correction.',
    },
    {
      id: 'near-bearings',
      holds: (input) =>
        Math.abs(input.planeA) <= input.bearingSpan / 2 &&
        Math.abs(input.planeB) <= input.bearingSpan / 2,
      say: 'A correction plane overhangs a bearing, so what is left there counts there more than once, and less is permitted.',
    },
  ],
  validity: [
    {
      id: 'grade',
      label: 'Balance quality grade',
      symbol: 'G',
      kind: 'speed',
      metric: 'mm/s',
      inch: 'mm/s',
      of: (input) => input.balanceGrade,
      possible: [0.0001, 4],
    },
    {
      id: 'speed',
      label: 'Highest speed',
      symbol: 'n_max',
      kind: 'angularSpeed',
      of: (input) => input.maxSpeed,
      possible: [50, 2618],
    },
  ],
  assumptions: [
    'The crank is stiff at its highest speed. A long crank that bends is more out of balance there than at the speed of the machine; this is not worked here.',
    'The two readings are taken at the worst angle to each other. With their angles known, a bearing gets less.',
    'The middle of the crank, from which the correction planes are measured, lies halfway between the two bearings.',
    'The crank is borne on two bearings. How more mains share the force depends on how stiff they and the block are.',
    'Grades are meant for a rotor that is balanced by itself. What the pistons shake is no part of it.',
  ],
  cautions: ['balancing', 'twisting'],
  sources: ['iso-21940-11', 'iso-1940-1'],
  sweep: { input: 'maxSpeed', output: 'permissible' },
  solve: { input: 'balanceGrade', output: 'permissible' },
  exercise: {
    ask: 'permissible',
    tolerance: 0.01,
    given: { balanceGrade: 0.5, crankMass: 0.3, bobweightsMass: 0.3, maxSpeed: 0.2 },
    beside: ['within-grade', 'above-floor', 'near-bearings'],
    also: [
      {
        kind: 'number',
        ask: 'eccentricity',
        given: { balanceGrade: 0.5, maxSpeed: 0.2 },
      },
      {
        kind: 'number',
        ask: 'allowedForce',
        given: { balanceGrade: 0.5, crankMass: 0.3, bobweightsMass: 0.3, maxSpeed: 0.2 },
      },
    ],
  },
});

/** A crank on its bearings, and what was read of it. */
interface Read extends BalancedRotor, Bearings, CorrectionPlanes {
  readonly balanceGrade: number;
  readonly residualA?: number | undefined;
  readonly residualB?: number | undefined;
}

/** What the two readings amount to; each without a result while one of them is missing. */
function reached(input: Read) {
  const { residualA: readA, residualB: readB } = input;
  if (readA === undefined || readB === undefined)
    return {
      gradeReached: unread,
      residualForce: unread,
      atBearingA: unread,
      atBearingB: unread,
      residual: unread,
      allowanceUsed: unread,
    };
  const read = residualOf({ residualA: readA, residualB: readB }, input, input);
  const gradeReached = gradeOf(read.whole, input);
  return {
    gradeReached,
    residualForce: Math.max(read.atBearings.a, read.atBearings.b) * input.maxSpeed ** 2,
    atBearingA: read.atBearings.a,
    atBearingB: read.atBearings.b,
    residual: read.whole,
    allowanceUsed: gradeReached / input.balanceGrade,
  };
}
