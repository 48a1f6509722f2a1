import { behindShafts } from '../../core/balance/balance-shafts.ts';
import { crankPins } from '../../core/balance/crank-pins.ts';
import { layoutParts, secondBank, type Throw } from '../../core/balance/crank-throws.ts';
import { carriedWeights } from '../../core/balance/crank-weights.ts';
import { cylindersOf } from '../../core/balance/cylinders.ts';
import { shakingAt, shakingForces as shakingOf } from '../../core/balance/shaking-forces.ts';
import { pathOf, type TurningParts } from '../../core/balance/turning-parts.ts';
import { length as sizeOf } from '../../core/balance/vectors.ts';
import { defineCalculator, optional, type Absent } from '../define.ts';
import {
  balanceShafts,
  crankAngle,
  crankLayout,
  cylinderSpacing,
  maxSpeed,
  partnerReciprocating,
  reciprocatingFraction,
  reciprocatingMass,
  rodLength,
  rotatingMass,
  stroke,
} from '../quantities.ts';
import { shaftsOf } from './balance-shafts.choices.ts';
import { throwsOf } from './crank-layout.choices.ts';
import { layoutBobweights } from './layout-bobweights.ts';
import { noBobweights, unlikePins } from './layout.words.ts';
import { outputs } from './shaking-forces.outputs.ts';
import { steps } from './shaking-forces.steps.ts';

/**
 * What a layout makes of one cylinder’s force, in it and in it times the pin spacing.
 *
 * @param secondBank what reciprocates in a cylinder of the second bank, in that of the first
 */
function sharesOf(throws: readonly Throw[], secondBank: number) {
  const [first, second] = [layoutParts(throws, 1, secondBank), layoutParts(throws, 2, secondBank)];
  const greater = ({ forward, backward }: TurningParts): number =>
    Math.max(sizeOf(forward), sizeOf(backward));
  return {
    forwardForce: sizeOf(first.force.forward),
    backwardForce: sizeOf(first.force.backward),
    forwardCouple: sizeOf(first.couple.forward),
    backwardCouple: sizeOf(first.couple.backward),
    secondForce: pathOf(second.force).most,
    secondCouple: pathOf(second.couple).most,
    greaterForce: greater(second.force),
    greaterCouple: greater(second.couple),
  };
}

const noShaft: Absent = { absent: 'no such shaft is chosen' };

/** What shakes an engine of any layout once and twice a turn, and what counterweights leave of it. */
export const shakingForces = defineCalculator({
  id: 'shaking-forces',
  title: 'Shaking forces of a crank',
  purpose:
    'What shakes an engine once and twice a turn, what its counterweights take, and what they leave.',
  asks: [
    'crankLayout',
    'reciprocatingMass',
    'reciprocatingFraction',
    'stroke',
    'rodLength',
    'maxSpeed',
  ],
  answers: [
    'heldCouple',
    'primaryCouple',
    'secondaryForce',
    'primaryForce',
    'secondaryCouple',
    'heldForce',
  ],
  inputs: {
    crankLayout,
    reciprocatingMass,
    reciprocatingFraction,
    stroke,
    rodLength,
    maxSpeed,
    cylinderSpacing,
    rotatingMass,
    partnerReciprocating: optional(partnerReciprocating),
    balanceShafts,
    crankAngle,
  },
  outputs,
  compute(input) {
    const { stroke: S, reciprocatingMass: m, rodLength: L, cylinderSpacing: a } = input;
    const throws = throwsOf(input.crankLayout);
    const shafts = shaftsOf(input.balanceShafts);
    const engine = cylindersOf(throws, input);
    const fitted = shakingOf(engine, input, carriedWeights(engine, input));
    const now = shakingAt(behindShafts(fitted, input, shafts), input);
    const { greaterForce, greaterCouple, ...shares } = sharesOf(
      throws,
      1 + (input.partnerReciprocating ?? 0) / m,
    );
    const inertiaForce = (m * S * input.maxSpeed ** 2) / 2;
    const secondaryOne = (inertiaForce * S) / (2 * L);
    // From the shares, and not from the sum of pulls and counterweights, in which little is left of two large numbers.
    const taken = 2 * input.reciprocatingFraction;
    const rest = Math.abs(1 - taken);
    const [forward, backward] = [rest * shares.forwardForce, shares.backwardForce];
    const [forwardM, backwardM] = [rest * shares.forwardCouple, shares.backwardCouple];
    const stays = shafts.one ? 0 : 1;
    const staysTwice = shafts.pair ? 0 : 1;
    return {
      primaryForce: (forward + stays * backward) * inertiaForce,
      primaryForceLeast: Math.abs(forward - stays * backward) * inertiaForce,
      primaryCouple: (forwardM + stays * backwardM) * inertiaForce * a,
      primaryCoupleLeast: Math.abs(forwardM - stays * backwardM) * inertiaForce * a,
      secondaryForce: staysTwice * shares.secondForce * secondaryOne,
      secondaryCouple: staysTwice * shares.secondCouple * secondaryOne * a,
      heldForce: taken * shares.forwardForce * inertiaForce,
      heldCouple: taken * shares.forwardCouple * inertiaForce * a,
      forceNow: sizeOf(now.force.together),
      coupleNow: sizeOf(now.couple.together),
      inertiaForce,
      secondaryOne,
      ...shares,
      shaftForce: shafts.one ? (shares.backwardForce * m * S) / 2 : noShaft,
      shaftCouple: shafts.one ? (shares.backwardCouple * m * S) / 2 : noShaft,
      // At twice the speed a quarter of the unbalance pulls as hard.
      pairForce: shafts.pair ? (greaterForce * m * S ** 2) / (16 * L) : noShaft,
      pairCouple: shafts.pair ? (greaterCouple * m * S ** 2) / (16 * L) : noShaft,
      ...layoutBobweights(throws, input),
    };
  },
  steps,
  limits: [
    {
      id: 'cancels',
      holds: (_input, { forwardForce, forwardCouple, backwardForce, backwardCouple }) =>
        forwardForce + forwardCouple + backwardForce + backwardCouple > 0,
      say: 'Primary forces and couples of this layout cancel one another before any counterweight. The balance factor changes nothing outside; counterweights only relieve the main bearings.',
    },
    {
      id: 'all-forward',
      holds: (_input, { forwardForce, forwardCouple, backwardForce, backwardCouple }) =>
        backwardForce + backwardCouple > 0 || forwardForce + forwardCouple <= 0,
      say: 'All of the primary rotates with the crank on this layout. Counterweights with 50 per cent take it whole.',
    },
    {
      id: 'backward',
      holds: ({ balanceShafts: choice }, { backwardForce, backwardCouple }) =>
        backwardForce + backwardCouple <= 0 || shaftsOf(choice).one,
      say: 'Part of the primary rotates against the crank. No counterweight reaches it; a factor other than 50 per cent makes it smaller one way and larger the other.',
    },
    {
      id: 'secondary',
      holds: ({ balanceShafts: choice }, { secondForce, secondCouple }) =>
        secondForce + secondCouple <= 0 || shaftsOf(choice).pair,
      say: 'What comes twice a turn stays whatever the counterweights are. Lighter parts, a longer rod or balance shafts at twice crank speed make it smaller.',
    },
    {
      id: 'one-bank',
      holds: ({ crankLayout: layout, partnerReciprocating: more = 0 }) =>
        more === 0 || secondBank(throwsOf(layout)) !== undefined,
      say: 'This layout has one bank. What a second rod weighs more is not used.',
    },
    {
      id: 'unlike-pins',
      holds: ({ crankLayout: layout }) => crankPins(throwsOf(layout)).rodsPerPin !== undefined,
      say: unlikePins,
    },
    {
      id: 'no-bobweights',
      holds: (_input, { bobweights }) => bobweights > 0,
      say: noBobweights,
    },
  ],
  validity: [
    {
      id: 'throw-ratio',
      label: 'Throw over rod length',
      symbol: 'λ',
      kind: 'ratio',
      of: (input) => input.stroke / (2 * input.rodLength),
      possible: [0, 1],
    },
  ],
  assumptions: [
    'Firing order plays no part: these forces know only throw angles, banks, places and masses. What firing does is another matter, the torque.',
    'All cylinders are alike, and what rotates with each pin is balanced whole by the counterweights.',
    'The second order is taken as λ times the first, as textbooks do. The exact motion gives λ + λ³/4 + …, 2 per cent more at λ = 0.29. Orders four and six are about a fiftieth of the second and less.',
    'Rods on one pin, and the halves of a split pin, are taken in one plane. Side by side they add small couples, which cancel on a cross-plane V8 and on a V6 with common pins.',
    'The rods of a radial are taken as alike, each on the pin itself; what a master rod with link rods on it does otherwise is left out.',
    'A balance shaft is taken to carry just what it is for, in the right place. A real one is set off to the side, and its weight is rounded.',
    'The spacing is that of neighbouring crankpins. On a flat engine that is half the spacing of the bores of one bank.',
    'The crank is stiff, turns at a steady speed, and bores and pins have no offset. Couples are about the middle of the crank.',
    'The crank angle counts from where the first throw, or the middle of the first split pin, stands in the middle of the banks.',
  ],
  cautions: ['twisting'],
  sources: ['bevan-2005', 'khurmi-gupta-2009', 'sarkar-2002', 'bosch-handbook'],
  sweep: { input: 'reciprocatingFraction', output: 'primaryCouple' },
  solve: { input: 'reciprocatingMass', output: 'heldCouple' },
  exercise: {
    ask: 'secondaryOne',
    tolerance: 0.005,
    given: { reciprocatingMass: 0.2, stroke: 0.12, rodLength: 0.12, maxSpeed: 0.15 },
    also: [
      {
        kind: 'number',
        ask: 'pinBobweight',
        given: { rotatingMass: 0.2, reciprocatingMass: 0.2 },
      },
      {
        kind: 'choice',
        ask: 'secondaryOne',
        given: { reciprocatingMass: 0.2, stroke: 0.12, rodLength: 0.12, maxSpeed: 0.15 },
      },
    ],
  },
});
