import {
  atSpeed,
  changeOnPin,
  heldAtEnds,
  onEveryThrow,
  pullsOnMiddleMains,
} from '../../core/balance/bobweight-change.ts';
import { throwSums } from '../../core/balance/crank-throws.ts';
import { length, scaled } from '../../core/balance/vectors.ts';
import { defineCalculator, type Absent } from '../define.ts';
import {
  balancedBobweight,
  newBobweight,
  crankLayout,
  cylinderSpacing,
  maxSpeed,
  planeA,
  planeB,
  stroke,
  takenAt,
} from '../quantities.ts';
import { angleOf } from './arrow-results.ts';
import { changeOutputs } from './bobweight-change.outputs.ts';
import { changeSteps } from './bobweight-change.steps.ts';
import { throwsOf } from './crank-layout.choices.ts';

const noMiddle: Absent = { absent: 'there is no main between two pins' };
const noSpot = 'the change makes no unbalance in this plane';

/** What a change of bobweight makes at the ends of a crank, and what taking it there costs the middle. */
export const bobweightChange = defineCalculator({
  id: 'bobweight-change',
  title: 'A change of bobweight',
  purpose:
    'The unbalance at both ends when a crank gets another bobweight than it is balanced for, and what a choice of counterweights leaves inside.',
  asks: ['crankLayout', 'newBobweight', 'balancedBobweight', 'stroke', 'maxSpeed', 'takenAt'],
  answers: ['endUnbalance', 'perWeight', 'mainPull', 'change', 'bending', 'endAngleB'],
  inputs: {
    crankLayout,
    newBobweight,
    balancedBobweight,
    stroke,
    maxSpeed,
    takenAt,
    cylinderSpacing,
    planeA,
    planeB,
  },
  outputs: changeOutputs,
  compute(input) {
    const throws = throwsOf(input.crankLayout);
    const { force, couple } = throwSums(throws);
    const unit = onEveryThrow(throws, 1, input);
    const held = heldAtEnds(unit, input);
    const pin = changeOnPin(input);
    const atA = scaled(held.ends.atA, pin);
    const atB = scaled(held.ends.atB, pin);
    const endUnbalance = Math.max(length(atA), length(atB));
    const pinPull = atSpeed(Math.abs(pin), input);
    const middle = pullsOnMiddleMains(unit).map(length);
    const mainShare = middle.length > 0 ? Math.max(...middle) : noMiddle;
    const isAtWebs = input.takenAt === 'webs';
    const share = isAtWebs ? 0 : 1;
    return {
      change: input.newBobweight - input.balancedBobweight,
      pinUnbalance: pin,
      endUnbalance,
      unbalanceA: length(atA),
      unbalanceB: length(atB),
      endAngleA: angleOf(atA, noSpot),
      endAngleB: angleOf(atB, noSpot),
      perWeight: isAtWebs ? Math.abs(pin) / 2 : endUnbalance,
      weights: isAtWebs ? 2 * throws.length : 2,
      pinPull,
      mainShare,
      mainPull: typeof mainShare === 'number' ? share * mainShare * pinPull : noMiddle,
      bendingArm: held.bending,
      bending: share * held.bending * pinPull,
      forceAlong: force.along,
      forceAcross: force.across,
      coupleAlong: couple.along,
      coupleAcross: couple.across,
    };
  },
  steps: changeSteps,
  limits: [
    {
      id: 'seen-by-machine',
      holds: ({ newBobweight: is, balancedBobweight: was }, { endUnbalance }) =>
        endUnbalance > 0 || is === was,
      say: 'The throws of this crank cancel: the balancing machine does not see the change at all. The pull of every pin is there all the same, and stays inside the crank until its own webs take it.',
    },
    {
      id: 'planes-outside',
      holds: (input) => input.planeA < 0 && input.planeB > 0,
      say: 'Both correction planes stand on one side of the crank’s middle. The arithmetic holds, but check the signs.',
    },
  ],
  validity: [
    {
      id: 'change',
      label: 'Change of every bobweight',
      symbol: 'Δm',
      kind: 'mass',
      metric: 'g',
      inch: 'g',
      of: (_input, { change }) => change,
      possible: [-5, 5],
    },
  ],
  assumptions: [
    'Every pin gets the same change. What two end planes must hold together is then one answer and no choice; how counterweights share it is a choice.',
    'The crank is stiff, its throws stand exactly at their angles, the pins are evenly spaced. Webs are taken in the plane of their pin, and so are the halves of a split pin.',
    'Middle mains: a main halfway between two neighbouring pins, the crank cut at each. Bending: the free crank, no main helping. The true crank bends and its block gives; neither number is a bearing load.',
    'The pull is that of the change alone. What the mains carried before comes on top of it, at its own angle.',
    'A lighter bobweight leaves the counterweights too heavy: the heavy spot is where metal comes off. A heavier one leaves them too light: the heavy spot is on the pins’ side, and mass is to be added opposite.',
    'Angles count from throw 1 with the rotation: clockwise from the nose where the engine turns so. Split pins: from the middle of the first pair.',
  ],
  cautions: ['balancing', 'drilling', 'twisting'],
  sources: ['bosch-handbook', 'bevan-2005', 'sarkar-2002'],
  sweep: { input: 'newBobweight', output: 'endUnbalance' },
  solve: { input: 'newBobweight', output: 'endUnbalance' },
  exercise: {
    ask: 'endUnbalance',
    tolerance: 0.01,
    given: { newBobweight: 0.1, balancedBobweight: 0.02, stroke: 0.12 },
    also: [
      {
        kind: 'number',
        ask: 'pinPull',
        given: { newBobweight: 0.1, balancedBobweight: 0.02, stroke: 0.12, maxSpeed: 0.2 },
      },
    ],
  },
});
