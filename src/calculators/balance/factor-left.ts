import { crankPins, factorBy, leastFactor } from '../../core/balance/crank-pins.ts';
import { layoutParts } from '../../core/balance/crank-throws.ts';
import {
  factorLeft as leftOf,
  lineFactor as lineOf,
  type PrimaryShaking,
} from '../../core/balance/factor-left.ts';
import type { Path, TurningParts } from '../../core/balance/turning-parts.ts';
import { length as sizeOf } from '../../core/balance/vectors.ts';
import { defineCalculator, type Absent } from '../define.ts';
import { count, direction, load, mass, maybe, percent, ratio, torque } from '../output.ts';
import {
  crankLayout,
  cylinderSpacing,
  maxSpeed,
  reciprocatingFraction,
  reciprocatingMass,
  rotatingMass,
  stroke,
} from '../quantities.ts';
import { throwsOf } from './crank-layout.choices.ts';
import { steps } from './factor-left.steps.ts';
import { layoutBobweights } from './layout-bobweights.ts';
import { noBobweights, unlikePins } from './layout.words.ts';

const anyFactor: Absent = { absent: 'any: the pins cancel one another' };
const noLine: Absent = { absent: 'none: what is left never lies along one line' };
const noAxis: Absent = { absent: 'the same all round, or nothing' };

/** Which way the greatest points: an axis has no head, so 0 to 180 degrees from the vertical with the rotation. */
function axisOf({ direction, most, least }: Path): number | Absent {
  // Two parts of which one is nothing but rounding make a circle.
  if (direction === undefined || most - least <= 1e-12 * most) return noAxis;
  return ((direction % Math.PI) + Math.PI) % Math.PI;
}

/** The factor that leaves a line: of the force where any rotates forward, else of the couple. */
function lineFactorOf({ force, couple }: PrimaryShaking<TurningParts>): number | Absent {
  return lineOf(sizeOf(force.forward) > 0 ? force : couple) ?? noLine;
}

/** What counterweights with any balance factor leave of the primary shaking of a whole crank. */
export const factorLeft = defineCalculator({
  id: 'factor-left',
  title: 'The balance factor of a whole crank',
  purpose:
    'What counterweights with a chosen balance factor leave of the primary force and couple of any layout, and which factor leaves least.',
  asks: [
    'crankLayout',
    'reciprocatingFraction',
    'reciprocatingMass',
    'rotatingMass',
    'stroke',
    'maxSpeed',
  ],
  answers: ['pinBobweight', 'leastFactor', 'coupleMost', 'forceMost', 'coupleLeast', 'forceLeast'],
  inputs: {
    crankLayout,
    reciprocatingFraction,
    reciprocatingMass,
    rotatingMass,
    stroke,
    maxSpeed,
    cylinderSpacing,
  },
  outputs: {
    pinBobweight: mass('m_bob', 'Bobweight of one pin, or of half a split pin', {
      phrase: 'The bobweight',
      main: true,
    }),
    leastFactor: maybe(
      percent('f_0', 'Factor with which the greatest that is left is least', { main: true }),
    ),
    coupleMost: torque('M_max', 'Primary couple left, greatest in the turn', {
      phrase: 'The greatest primary couple left',
      main: true,
    }),
    forceMost: load('F_max', 'Primary force left, greatest in the turn', {
      phrase: 'The greatest primary force left',
    }),
    coupleLeast: torque('M_min', 'Primary couple left, least in the turn'),
    forceLeast: load('F_min', 'Primary force left, least in the turn'),
    coupleAxis: maybe(direction('α_M', 'Where the couple left is greatest, from the vertical')),
    forceAxis: maybe(direction('α_F', 'Where the force left is greatest, from the vertical')),
    lineFactor: maybe(
      percent('f_line', 'Factor that leaves it along one line (100 % less it: across)'),
    ),
    couplePerCent: torque('ΔM', 'Couple that each per cent off one half adds'),
    forcePerCent: load('ΔF', 'Force that each per cent off one half adds'),
    inertiaForce: load('F_1', 'Primary force of one cylinder, greatest'),
    forwardForce: ratio('k_F,fwd', 'Force rotating with the crank, in F₁'),
    backwardForce: ratio('k_F,bwd', 'Force rotating against the crank, in F₁'),
    forwardCouple: ratio('k_M,fwd', 'Couple rotating with the crank, in F₁ times spacing'),
    backwardCouple: ratio('k_M,bwd', 'Couple rotating against the crank, in F₁ times spacing'),
    rods: count('n_r', 'Rods on each pin or half of a pin'),
    bobweights: count('N_bob', 'Bobweights that the balancing machine needs'),
  },
  compute(input) {
    const throws = throwsOf(input.crankLayout);
    const parts = layoutParts(throws, 1);
    const { force, couple } = parts;
    const left = leftOf(throws, input);
    const inertiaForce = (input.reciprocatingMass * input.stroke * input.maxSpeed ** 2) / 2;
    const inertiaCouple = inertiaForce * input.cylinderSpacing;
    const forwardForce = sizeOf(force.forward);
    const forwardCouple = sizeOf(couple.forward);
    return {
      ...layoutBobweights(throws, input),
      leastFactor: factorBy(throws) === 'none' ? anyFactor : leastFactor,
      coupleMost: left.couple.most * inertiaCouple,
      forceMost: left.force.most * inertiaForce,
      coupleLeast: left.couple.least * inertiaCouple,
      forceLeast: left.force.least * inertiaForce,
      coupleAxis: axisOf(left.couple),
      forceAxis: axisOf(left.force),
      lineFactor: lineFactorOf(parts),
      couplePerCent: 0.02 * forwardCouple * inertiaCouple,
      forcePerCent: 0.02 * forwardForce * inertiaForce,
      inertiaForce,
      forwardForce,
      backwardForce: sizeOf(force.backward),
      forwardCouple,
      backwardCouple: sizeOf(couple.backward),
    };
  },
  steps,
  limits: [
    {
      id: 'any-factor',
      holds: ({ crankLayout: layout }) => factorBy(throwsOf(layout)) !== 'none',
      say: 'Nothing primary is left on this layout with any factor, or with none. Counterweights only relieve its main bearings.',
    },
    {
      id: 'choice',
      holds: ({ crankLayout: layout }) => factorBy(throwsOf(layout)) !== 'choice',
      say: 'Part of the primary rotates against the crank, and no factor takes it. One half makes the greatest as small as it can be; another makes it smaller one way and larger the other.',
    },
    {
      id: 'unlike-pins',
      holds: ({ crankLayout: layout }) => crankPins(throwsOf(layout)).rodsPerPin !== undefined,
      say: unlikePins,
    },
    { id: 'no-bobweights', holds: (_input, { bobweights }) => bobweights > 0, say: noBobweights },
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
    'Only what comes once a turn is counted. What comes twice a turn stands on the page of shaking forces, and no factor changes it.',
    'All cylinders are alike, and every counterweight carries the same factor, opposite its throw; what rotates with the pins is balanced whole.',
    'Least means that the greatest force and the greatest couple in the turn are as small as they can be. Which way an engine may shake depends on how it is mounted, and may be worth another factor.',
    'Rods on one pin, and the halves of a split pin, are taken in one plane.',
    'The crank is stiff, turns at a steady speed, and bores and pins have no offset. Couples are about the middle of the crank.',
  ],
  cautions: ['balancing', 'twisting'],
  sources: ['bevan-2005', 'khurmi-gupta-2009', 'bosch-handbook'],
  sweep: { input: 'reciprocatingFraction', output: 'coupleMost' },
  solve: { input: 'reciprocatingFraction', output: 'pinBobweight' },
  exercise: {
    ask: 'pinBobweight',
    tolerance: 0.005,
    given: { rotatingMass: 0.2, reciprocatingMass: 0.2, reciprocatingFraction: { by: 10 } },
    also: [
      {
        kind: 'choice',
        ask: 'pinBobweight',
        given: { rotatingMass: 0.2, reciprocatingMass: 0.2, reciprocatingFraction: { by: 10 } },
      },
    ],
  },
});
