import {
  counterweightDrilling as drilling,
  type DrillingPlan,
} from '../../core/balance/counterweight-drilling.ts';
import { nearestDrill } from '../../core/balance/drill-sizes.ts';
import { withinTurn } from '../../core/balance/unbalance-reading.ts';
import { defineCalculator, type Absent } from '../define.ts';
import {
  axialHoleRadius,
  counterweightAngle,
  counterweightRadius,
  counterweightWidth,
  depthLimit,
  drillList,
  heavyAngle,
  holeAngleLimit,
  holeCount,
  holeDiameter,
  holeKind,
  holeSpacing,
  holeWall,
  keepOutRadius,
  pointAngle,
  steelDensity,
  unbalanceRead,
} from '../quantities.ts';
import { drillingOutputs } from './counterweight-drilling.outputs.ts';
import { drillingSteps } from './counterweight-drilling.steps.ts';
import { drillLists } from './drill-sizes.choices.ts';

const alone: Absent = { absent: 'there is one hole only' };
const nothing: Absent = { absent: 'by this plan nothing is left' };

/** What is left, and where its heavy spot is. */
function leftOf({ leftAlong, leftAcross, middle }: DrillingPlan) {
  const left = Math.hypot(leftAlong, leftAcross);
  return {
    left,
    leftAngle: left > 0 ? withinTurn(middle + Math.atan2(leftAcross, leftAlong)) : nothing,
  };
}

/** Holes in a counterweight that take out what one plane reads. */
export const counterweightDrilling = defineCalculator({
  id: 'counterweight-drilling',
  title: 'Holes in the counterweight',
  purpose: 'How deep to drill, where, and what stays, for the unbalance that one plane reads.',
  asks: [
    'unbalanceRead',
    'heavyAngle',
    'holeKind',
    'holeDiameter',
    'holeCount',
    'counterweightRadius',
  ],
  answers: ['depth', 'middle', 'left', 'drill', 'tipDepth', 'most'],
  inputs: {
    unbalanceRead,
    heavyAngle,
    holeKind,
    holeDiameter,
    holeCount,
    counterweightRadius,
    counterweightWidth,
    counterweightAngle,
    steelDensity,
    drillList,
    pointAngle,
    holeSpacing,
    holeAngleLimit,
    depthLimit,
    keepOutRadius,
    holeWall,
    axialHoleRadius,
  },
  outputs: drillingOutputs,
  compute: (input) => {
    const drill = nearestDrill(drillLists[input.drillList], input).diameter;
    const plan = drilling({ ...input, holeDiameter: drill });
    const fan = ((input.holeCount - 1) * input.holeSpacing) / 2;
    return {
      drill,
      depth: plan.depth,
      tipDepth: plan.tipDepth,
      middle: plan.middle,
      ...leftOf(plan),
      firstHole: plan.middle - fan,
      lastHole: plan.middle + fan,
      perHole: plan.hole.unbalance,
      taken: plan.taken,
      spread: plan.spread,
      most: plan.most,
      pointShare: plan.hole.point / plan.hole.unbalance,
      rimLoss: plan.hole.rimLoss,
      holeMass: plan.hole.mass,
      allMass: input.holeCount * plan.hole.mass,
      rimMass: input.unbalanceRead / input.counterweightRadius,
      wall: plan.wall ?? alone,
    };
  },
  steps: drillingSteps,
  limits: [
    {
      id: 'not-enough',
      holds: (input, { taken, most, left }) =>
        taken < most * (1 - 1e-9) || left < 1e-6 * input.unbalanceRead,
      say: 'These holes cannot take all of it within the depth allowed. Take more holes or a thicker drill where the counterweight has room, or spin again and drill the rest elsewhere in the same plane.',
    },
    {
      id: 'aside',
      holds: (input, { middle }) =>
        Math.abs(Math.sin((middle - input.heavyAngle) / 2)) < Math.sin((0.5 * Math.PI) / 180),
      say: 'There is no room for the holes about the heavy spot. They stand aside of it, take the part that points their way and leave the rest across.',
    },
    {
      id: 'spread',
      holds: (_, { spread }) => spread >= 0.85,
      say: 'The holes fan out so far that more than 15 per cent of the metal is drilled for nothing. Fewer and deeper ones, or thicker ones, take less metal.',
    },
    {
      id: 'list',
      holds: (input, { drill }) => Math.abs(drill - input.holeDiameter) < 0.05e-3,
      say: 'The drills at hand have none of this size. The nearest of them is worked, “Drill of the list”; choose another list where you have this one.',
    },
  ],
  validity: [
    {
      id: 'radius',
      label: 'Rim radius of the counterweight',
      symbol: 'R_cw',
      kind: 'length',
      of: (input) => input.counterweightRadius,
      possible: [0.015, 0.25],
    },
  ],
  assumptions: [
    'A hole from the rim points at the shaft’s axis, one from a face is parallel to it. A drill that wanders by 1° from the rim sets the hole’s middle over by about a sixth of a millimetre at 10 mm depth.',
    'Depth is measured at the middle of the hole, from the rim. With the gauge laid along the shaft it stands there; laid round the rim it stands lower.',
    'The drill cuts its own diameter. A worn or badly ground one cuts larger: 0.2 mm on 14 mm is 3 per cent more metal.',
    'Holes are new and in whole metal. An old hole, a taper of the rim or a chamfer under the drill takes off less.',
    'All holes stand in one plane across the shaft, that of the reading. Where the counterweight stands beside it, the two planes share the hole by their distances.',
    'Where no hole may go is what the numbers say: a radius about the axis and an angle about the middle of the counterweight. An oil way that comes nearer to the rim is not known here.',
  ],
  cautions: ['balancing', 'drilling', 'twisting'],
  sources: ['asme-b94-11m', 'balancing-faq'],
  sweep: { input: 'unbalanceRead', output: 'depth' },
  solve: { input: 'unbalanceRead', output: 'depth' },
  exercise: {
    ask: 'perHole',
    tolerance: 0.01,
    given: { unbalanceRead: 0.15, counterweightRadius: 0.04 },
    // A metric drill that is stated in inches is no drill of its list.
    beside: ['list'],
    also: [
      { kind: 'number', ask: 'tipDepth', given: { unbalanceRead: 0.15 } },
      { kind: 'number', ask: 'rimMass', given: { unbalanceRead: 0.15, counterweightRadius: 0.04 } },
      { kind: 'choice', ask: 'taken', given: { unbalanceRead: 0.15 } },
    ],
  },
});
