import { torqueOfTurn } from '../../core/inertia/inertia-torque.ts';
import { atLeast } from '../../core/refuse.ts';
import {
  engineInertia,
  kineticEnergy,
  reciprocatingMass,
  ringInertia,
  riseTime as timeOfRise,
  roadFactor,
} from '../../core/inertia/rotating-inertia.ts';
import { defineCalculator, optional, type Absent } from '../define.ts';
import {
  bigEndMass,
  clutchInertia,
  crankInertia,
  cylinders,
  damperInertia,
  finalDrive,
  flywheelDensity,
  flywheelDiameter,
  flywheelInertia,
  flywheelInside,
  flywheelThickness,
  gearRatio,
  lockMass,
  maxSpeed,
  netTorque,
  pinMass,
  pistonMass,
  ringMass,
  rodLength,
  rodsPerPin,
  shellMass,
  smallEndMass,
  speedFrom,
  speedRise,
  speedTo,
  stroke,
  tyreRadius,
} from '../quantities.ts';
import { flywheelFrom } from './rotating-inertia.choices.ts';
import { inertiaOutputs, savedOutputs } from './rotating-inertia.outputs.ts';
import { inertiaSteps } from './rotating-inertia.steps.ts';

/** [kg] and [m/s²] behind the energy told as a height. */
const liftedMass = 1000;
const gravity = 9.80665;

const measured: Absent = { absent: 'the measured inertia counts here' };

/** The mean as a part of the torque's size, with what rounding leaves of it taken off: a part in 10¹². */
function withoutRounding(mean: number, size: number): number {
  return size > 0 ? (Math.round((mean / size) * 1e12) / 1e12) * size + 0 : 0;
}

const noThrows: Absent = { absent: 'enter how many rods share a crankpin' };

/** What crank, rods and pistons come to on one throw; nothing where the rods on a pin are not told. */
function throwInertiaOf(
  inertia: number,
  {
    rodsPerPin: rods,
    cylinders: n,
  }: { readonly rodsPerPin?: number | undefined; readonly cylinders: number },
): number | Absent {
  return rods === undefined
    ? noThrows
    : (inertia * atLeast({ rodsPerPin: rods }, 'rodsPerPin', 1)) / n;
}

export const rotatingInertia = defineCalculator({
  id: 'rotating-inertia',
  title: 'Rotating inertia',
  purpose:
    'What all that turns with the crank holds back when the speed must rise, part by part, and what it counts for on the road.',
  asks: [
    'crankInertia',
    'flywheelInertia',
    'clutchInertia',
    'damperInertia',
    'gearRatio',
    'netTorque',
  ],
  answers: [
    'totalInertia',
    'equivalentMass',
    'flywheelPart',
    'riseTime',
    'wheelShare',
    'energyHeld',
  ],
  inputs: {
    crankInertia,
    flywheelFrom,
    flywheelInertia,
    flywheelDiameter,
    flywheelInside,
    flywheelThickness,
    flywheelDensity,
    clutchInertia,
    damperInertia,
    cylinders,
    rodsPerPin: optional(rodsPerPin),
    stroke,
    rodLength,
    pistonMass,
    pinMass,
    ringMass,
    lockMass,
    smallEndMass,
    bigEndMass,
    shellMass,
    gearRatio,
    finalDrive,
    tyreRadius,
    netTorque,
    speedFrom,
    speedTo,
    speedRise,
    maxSpeed,
  },
  outputs: inertiaOutputs,
  compute: (input) => {
    const ring = input.flywheelFrom === 'dimensions' ? ringInertia(input) : undefined;
    const inertia = engineInertia(input, {
      ...input,
      flywheelInertia: ring?.inertia ?? input.flywheelInertia,
    });
    const moving = inertia.bigEnds + inertia.reciprocating;
    const perInertia = roadFactor(input);
    const riseTorque = inertia.total * atLeast(input, 'speedRise');
    const energyHeld = kineticEnergy(inertia.total, atLeast(input, 'maxSpeed'));
    const turn = torqueOfTurn({ ...input, mass: reciprocatingMass(input) }, input.maxSpeed);
    return {
      totalInertia: inertia.total,
      equivalentMass: inertia.total * perInertia,
      flywheelPart: inertia.flywheel,
      bigEndsPart: inertia.bigEnds,
      reciprocatingPart: inertia.reciprocating,
      throwInertia: throwInertiaOf(inertia.crank + moving, input),
      wheelShare: (inertia.flywheel + inertia.clutch) / inertia.total,
      movingShare: moving / inertia.total,
      riseTime: timeOfRise(inertia.total, input),
      riseTorque,
      risePower: riseTorque * input.speedTo,
      energyHeld,
      energyHeight: energyHeld / (liftedMass * gravity),
      meanTorque: withoutRounding(turn.mean, turn.amplitude),
      torqueAmplitude: turn.amplitude,
      reciprocatingShare: inertia.share,
      flywheelComputed: ring?.inertia ?? measured,
      flywheelMass: ring?.mass ?? measured,
      flywheelRoad: inertia.flywheel * perInertia,
      clutchRoad: inertia.clutch * perInertia,
      crankRoad: inertia.crank * perInertia,
      damperRoad: inertia.damper * perInertia,
      movingRoad: moving * perInertia,
      torqueCurve: { x: turn.angles, y: turn.torques },
    };
  },
  comparisons: savedOutputs,
  compare: ({ baseline: { output: before }, candidate: { output: after } }) => ({
    savedRoad: before.equivalentMass - after.equivalentMass,
    savedFlywheel: before.flywheelRoad - after.flywheelRoad,
    savedClutch: before.clutchRoad - after.clutchRoad,
    savedCrank: before.crankRoad - after.crankRoad,
    savedDamper: before.damperRoad - after.damperRoad,
    savedMoving: before.movingRoad - after.movingRoad,
  }),
  steps: inertiaSteps,
  limits: [
    {
      id: 'plain-disc',
      holds: ({ flywheelFrom: from }) => from !== 'dimensions',
      say: 'A plain disc or ring stands in for the flywheel. A starter ring, a step at the rim or holes are not in it; the wheel on the bench may have a fifth more, or twice as much.',
    },
    {
      id: 'rise-below-highest',
      holds: ({ speedTo, maxSpeed }) => speedTo <= maxSpeed,
      say: 'The rise ends above the redline.',
    },
    {
      id: 'rate-fits-torque',
      holds: ({ netTorque }, { riseTorque }) => riseTorque <= netTorque,
      say: 'The entered rate of rise takes more torque than the engine gives: with this inertia it cannot be reached.',
    },
  ],
  validity: [
    {
      id: 'moving-share',
      label: 'Share of pistons, pins, rings and rods in the inertia',
      symbol: 's_mov',
      kind: 'ratio',
      of: (_, { movingShare }) => movingShare,
      possible: [0, 1],
      // Published cases hold a flywheel alone; the moving parts rest on the rule from memory and a second route.
    },
  ],
  assumptions: [
    'Everything bolted to the crank turns with it as one stiff piece. Twist between the parts is not in it, and a damper’s ring is taken as turning with its hub.',
    'Cylinders are alike, and the mean over a turn of what goes up and down stands for it. In one cylinder it swings between nothing and twice that. In an in-line four these swings add up, to a per cent or two of the whole engine; in a cross-plane V8 they nearly cancel.',
    'The rod counts as its two weighed ends. Its true inertia about its own centre is about a fifth less than that model’s: 0.05 and 0.1 % of the two example engines.',
    'Camshafts, chains, belts, pumps and the generator are left out; a generator turning three times as fast counts nine times. Gear wheels and shafts after the clutch are left out too.',
    'The net torque is one constant number over the rise. A real curve and throttle make the time longer.',
    'Mass on the road is for equal energy, without loss. While the engine drives, it counts by the efficiency; on the overrun, over the efficiency.',
    'Steady speed, no gas force: the inertia torque is that of the moving mass alone. Its effect on friction is not computed.',
  ],
  cautions: ['flywheel', 'twisting', 'running'],
  sources: ['khurmi-gupta-2009', 'bevan-2005'],
  sweep: { input: 'gearRatio', output: 'equivalentMass' },
  solve: { input: 'flywheelInertia', output: 'equivalentMass' },
  exercise: {
    ask: 'totalInertia',
    tolerance: 0.01,
    given: {
      crankInertia: 0.2,
      flywheelInertia: 0.2,
      clutchInertia: 0.2,
      stroke: 0.12,
      pistonMass: 0.2,
    },
    also: [
      {
        kind: 'number',
        ask: 'bigEndsPart',
        given: { bigEndMass: 0.2, shellMass: 0.2, stroke: 0.12 },
      },
      { kind: 'choice', ask: 'equivalentMass', given: { flywheelInertia: 0.25, gearRatio: 0.2 } },
      {
        kind: 'order',
        ask: 'energyHeld',
        given: { flywheelInertia: 0.25, clutchInertia: 0.2, maxSpeed: 0.12 },
      },
      { kind: 'read', ask: 'torqueCurve', given: { pistonMass: 0.2 } },
    ],
  },
});
