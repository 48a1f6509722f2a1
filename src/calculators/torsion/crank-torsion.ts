import { crankLine, type CrankParts } from '../../core/torsion/crank-line.ts';
import {
  criticalSpeeds,
  inStep,
  phaseSum,
  type Critical,
} from '../../core/torsion/critical-speeds.ts';
import { bestTuning as bestOf, ringFrequency } from '../../core/torsion/damper.ts';
import {
  alternateFirings,
  firingsOf,
  type Firing,
  type Numbering,
} from '../../core/torsion/firing.ts';
import { placesOf, type Throw } from '../../core/balance/crank-throws.ts';
import {
  inertiaSeenAt,
  naturalModes,
  nodesOf,
  type Mode,
} from '../../core/torsion/natural-modes.ts';
import { at } from '../../core/math/at.ts';
import { throwsOf } from '../balance/crank-layout.choices.ts';
import { defineCalculator, optional, type Absent } from '../define.ts';
import { crankSpeed } from '../output.ts';
import {
  clutchInertia,
  crankLayout,
  cylinderNumbering,
  damperInertia,
  firingOrder,
  flangeStiffness,
  flywheelInertia,
  hubInertia,
  maxSpeed,
  noseStiffness,
  ringStiffness,
  throwInertia,
  throwStiffness,
} from '../quantities.ts';
import { outputs } from './crank-torsion.outputs.ts';
import { steps } from './crank-torsion.steps.ts';
import { usualOrder } from './firing-orders.choices.ts';

/** Higher modes have frequencies that no strong order reaches. */
const modesNamed = 2;

const noRing: Absent = { absent: 'no ring on a spring of its own' };
const noneInStep: Absent = { absent: 'at no order up to 12 are the cylinders in step' };

/** The critical speed nearest to the redline, by ratio, of those whose cylinders are in step. */
function nearest(all: readonly Critical[], redline: number): Critical | undefined {
  const away = ({ speed }: Critical): number => Math.abs(Math.log(speed / redline));
  const [first, ...rest] = all.filter(({ sum }) => sum >= inStep);
  return rest.reduce(
    (best, one) => (best !== undefined && away(one) < away(best) ? one : best),
    first,
  );
}

/** The first mode without the ring, and what the ring is tuned to; nothing of that without one. */
function ringOf(parts: CrankParts, halves: readonly number[]) {
  const { line } = crankLine(
    { ...parts, damperInertia: parts.hubInertia, ringStiffness: undefined },
    halves,
  );
  const bare = at(naturalModes(line), 0);
  const seenInertia = inertiaSeenAt(line, bare.shape, 0);
  const ringInertia = parts.damperInertia - parts.hubInertia;
  const found = { bareFrequency: bare.frequency, seenInertia };
  if (parts.ringStiffness === undefined || !(ringInertia > 0))
    return { ...found, ringTuning: noRing, ringRatio: noRing, bestTuning: noRing };
  const { ringStiffness: stiffness } = parts;
  const best = bestOf({ ringInertia, mainInertia: seenInertia, mainFrequency: bare.frequency });
  return {
    ...found,
    ringTuning: ringFrequency({ ringInertia, ringStiffness: stiffness }),
    ringRatio: best.ratio,
    bestTuning: best.frequency,
  };
}

/** A shape against the place along the crank: the first throw stands at 1, the hub at 0. */
function shapeCurve({ shape }: Mode, throwsFrom: number) {
  return { x: shape.map((_, i) => i + 1 - throwsFrom), y: shape };
}

/** In the reader’s own order, else in the layout’s usual one, else every other dead centre a turn later. */
function firedAs(
  throws: readonly Throw[],
  input: {
    readonly crankLayout: string;
    readonly firingOrder?: readonly number[] | undefined;
    readonly cylinderNumbering: Numbering;
  },
): readonly Firing[] {
  const { firingOrder: own = [] } = input;
  if (own.length > 0) return firingsOf(throws, { firingOrder: own }, input.cylinderNumbering);
  const firingOrder = usualOrder(input.crankLayout);
  return firingOrder === undefined ? alternateFirings(throws) : firingsOf(throws, { firingOrder });
}

/** Natural frequencies of a crank in twist, and the speeds at which firing meets them. */
export const crankTorsion = defineCalculator({
  id: 'crank-torsion',
  title: 'Natural frequencies of a crank in twist',
  purpose:
    'How fast a crank twists to and fro by itself, and at which speeds the firing of its cylinders meets that.',
  asks: [
    'crankLayout',
    'throwInertia',
    'throwStiffness',
    'damperInertia',
    'flywheelInertia',
    'maxSpeed',
  ],
  answers: [
    'firstFrequency',
    'firstCritical',
    'nearCritical',
    'nearOrder',
    'secondFrequency',
    'secondCritical',
  ],
  inputs: {
    crankLayout,
    throwInertia,
    throwStiffness,
    damperInertia,
    flywheelInertia,
    maxSpeed,
    hubInertia,
    ringStiffness: optional(ringStiffness),
    noseStiffness,
    flangeStiffness,
    clutchInertia,
    firingOrder: optional(firingOrder),
    cylinderNumbering,
  },
  outputs,
  compute: (input) => {
    const throws = throwsOf(input.crankLayout);
    const places = placesOf(throws);
    const halves = places.map(
      (place) => throws.filter(({ position }) => position === place).length,
    );
    const firings = firedAs(throws, input);
    const { line, throwsFrom } = crankLine(input, halves);
    const modes = naturalModes(line);
    const [first, second] = [at(modes, 0), at(modes, 1)];
    const locked = crankLine({ ...input, ringStiffness: undefined }, halves);
    const firingRate = firings.length / 2;
    const sumOf = ({ shape }: Mode, order: number): number =>
      phaseSum(firings, shape.slice(throwsFrom), order);
    const all = criticalSpeeds(modes.slice(0, modesNamed), firings, throwsFrom);
    const near = nearest(all, input.maxSpeed);
    const sumsOf = (mode: number) => {
      const own = all.filter((each) => each.mode === mode);
      return { x: own.map(({ order }) => order), y: own.map(({ sum }) => sum) };
    };
    return {
      firstFrequency: first.frequency,
      firstCritical: (2 * Math.PI * first.frequency) / firingRate,
      nearCritical: near?.speed ?? noneInStep,
      nearOrder: near?.order ?? noneInStep,
      nearSum: near?.sum ?? noneInStep,
      secondFrequency: second.frequency,
      secondCritical: (2 * Math.PI * second.frequency) / firingRate,
      firingRate,
      firstSum: sumOf(first, firingRate),
      secondSum: sumOf(second, firingRate),
      firstNode: at(nodesOf(first.shape), 0) + 1 - throwsFrom,
      lockedFrequency: at(naturalModes(locked.line), 0).frequency,
      ...ringOf(input, halves),
      inertias: line.lineInertias.length,
      firstShape: shapeCurve(first, throwsFrom),
      secondShape: shapeCurve(second, throwsFrom),
      firstSums: sumsOf(0),
      secondSums: sumsOf(1),
    };
  },
  comparisons: {
    moved: crankSpeed('Δn_1q', 'Critical speed of the first mode moved by', {
      phrase: 'At the order of firing the shift of the first mode’s critical speed',
    }),
  },
  compare: ({ baseline, candidate }) => ({
    moved: candidate.output.firstCritical - baseline.output.firstCritical,
  }),
  steps,
  limits: [
    {
      id: 'near-redline',
      holds: ({ maxSpeed: redline }, { nearCritical }) =>
        typeof nearCritical !== 'number' || Math.abs(nearCritical / redline - 1) > 0.1,
      say: 'A critical speed lies within 10 per cent of the redline. The stiffness is not known better than that: take it that the engine may run in it.',
    },
    {
      id: 'tuned-off',
      holds: (_, { ringTuning, bestTuning }) =>
        typeof ringTuning !== 'number' ||
        typeof bestTuning !== 'number' ||
        Math.abs(ringTuning / bestTuning - 1) < 0.2,
      say: 'The ring is tuned more than 20 per cent off what suits this crank by the formula. Ask the damper’s maker which damper belongs to it.',
    },
    {
      id: 'no-ring',
      holds: (_, { ringTuning }) => typeof ringTuning === 'number',
      say: 'No ring on a spring: hub and ring turn as one, and nothing takes the swing down at a critical speed.',
    },
  ],
  validity: [
    {
      id: 'stiffness',
      label: 'First natural frequency',
      symbol: 'f_1',
      kind: 'frequency',
      of: (_, { firstFrequency }) => firstFrequency,
      possible: [0, 3000],
    },
  ],
  assumptions: [
    'Each throw is one stiff inertia, and the shaft between is a spring without mass. All throws are alike; counterweights of unlike size are not told apart.',
    'What goes up and down counts with its mean over the turn. In truth it swings between nothing and twice that, and spreads each frequency a little.',
    'The stiffness of a throw from formulas may be off by 10 to 30 per cent, and the frequencies by half of that. Only a measurement on the running engine settles them.',
    'Damping is left out: frequencies hardly feel it, the size of the swing does. How far the crank twists, and whether it lasts, is not told.',
    'How strong the torque of one cylinder is at an order is not in it. It falls with the order; the first few that are in step do most harm.',
    'The gearbox behind the clutch is left out; it adds slow modes of its own, and hardly moves those of the crank.',
    'Without a firing order a ready layout fires in one that is usual for it. In a layout of your own every other dead centre fires a turn later.',
    'Four-stroke: every cylinder fires once in two turns. A viscous damper has no spring; leave its stiffness empty and take about half of its ring with the hub.',
  ],
  cautions: ['twist-numbers', 'damper'],
  sources: ['thomson-vibration', 'den-hartog', 'ker-wilson-rule'],
  sweep: { input: 'throwInertia', output: 'firstFrequency' },
  solve: { input: 'throwStiffness', output: 'firstFrequency' },
  exercise: {
    ask: 'ringTuning',
    tolerance: 0.01,
    given: { damperInertia: 0.1, hubInertia: 0.1, ringStiffness: 0.2 },
    beside: ['near-redline', 'tuned-off'],
    also: [
      {
        kind: 'choice',
        ask: 'firstFrequency',
        given: { throwInertia: 0.25, throwStiffness: 0.25 },
        beside: ['near-redline', 'tuned-off'],
      },
    ],
  },
});
