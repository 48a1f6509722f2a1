import { crankBobweights } from '../../core/balance/crank-bobweights.ts';
import { layoutParts } from '../../core/balance/crank-throws.ts';
import { carriedWeights } from '../../core/balance/crank-weights.ts';
import { cylindersOf } from '../../core/balance/cylinders.ts';
import { shakingAt, shakingForces as shakingOf } from '../../core/balance/shaking-forces.ts';
import { pathOf } from '../../core/balance/turning-parts.ts';
import { length as sizeOf } from '../../core/balance/vectors.ts';
import { defineCalculator } from '../define.ts';
import {
  crankAngle,
  crankLayout,
  cylinderSpacing,
  maxSpeed,
  reciprocatingFraction,
  reciprocatingMass,
  rodLength,
  rotatingMass,
  stroke,
} from '../quantities.ts';
import { throwsOf } from './crank-layout.choices.ts';
import { noBobweights } from './layout.words.ts';
import { outputs } from './shaking-forces.outputs.ts';
import { steps } from './shaking-forces.steps.ts';

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
    'primaryForce',
    'primaryCouple',
    'secondaryForce',
    'secondaryCouple',
    'heldForce',
    'heldCouple',
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
    crankAngle,
  },
  outputs,
  compute(input) {
    const { stroke: S, reciprocatingMass: m, rodLength: L, maxSpeed: omega } = input;
    const throws = throwsOf(input.crankLayout);
    const engine = cylindersOf(throws, input);
    const left = shakingOf(engine, input, carriedWeights(engine, input));
    const bare = shakingOf(engine, input);
    const [force, couple] = [pathOf(left.primary.force), pathOf(left.primary.couple)];
    const { force: forceNow, couple: coupleNow } = shakingAt(left, input);
    const [first, second] = [layoutParts(throws, 1), layoutParts(throws, 2)];
    const inertiaForce = (m * S * omega ** 2) / 2;
    const taken = 2 * input.reciprocatingFraction;
    const { bobweights, areNeeded } = crankBobweights(
      throws.map(({ angle, position, banks }) => ({
        angle,
        position,
        stroke: S,
        rotatingMass: input.rotatingMass,
        reciprocatingMasses: banks.map(() => m),
      })),
      input,
    );
    return {
      primaryForce: force.most,
      primaryForceLeast: force.least,
      primaryCouple: couple.most,
      primaryCoupleLeast: couple.least,
      secondaryForce: pathOf(left.secondary.force).most,
      secondaryCouple: pathOf(left.secondary.couple).most,
      heldForce: taken * sizeOf(bare.primary.force.forward),
      heldCouple: taken * sizeOf(bare.primary.couple.forward),
      forceNow: sizeOf(forceNow.together),
      coupleNow: sizeOf(coupleNow.together),
      inertiaForce,
      secondaryOne: (inertiaForce * S) / (2 * L),
      forwardForce: sizeOf(first.force.forward),
      backwardForce: sizeOf(first.force.backward),
      forwardCouple: sizeOf(first.couple.forward),
      backwardCouple: sizeOf(first.couple.backward),
      secondForce: pathOf(second.force).most,
      secondCouple: pathOf(second.couple).most,
      rods: throws[0]?.banks.length ?? 0,
      pinBobweight: bobweights[0] ?? 0,
      bobweights: areNeeded ? bobweights.length : 0,
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
      holds: (_input, { backwardForce, backwardCouple }) => backwardForce + backwardCouple <= 0,
      say: 'Part of the primary rotates against the crank. No counterweight reaches it; a factor other than 50 per cent makes it smaller one way and larger the other.',
    },
    {
      id: 'secondary',
      holds: (_input, { secondForce, secondCouple }) => secondForce + secondCouple <= 0,
      say: 'What comes twice a turn stays whatever the counterweights are. Lighter parts, a longer rod or balance shafts at twice crank speed make it smaller.',
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
    'The rods of a radial are taken as alike, each on the pin itself; a master rod with link rods departs from that by a few per cent of its force.',
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
