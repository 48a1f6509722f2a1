import { pinBobweight } from '../../core/balance/bobweight.ts';
import { defineCalculator, optional } from '../define.ts';
import {
  bigEndMass,
  crankLayout,
  lockMass,
  oilMass,
  partnerReciprocating,
  partnerRotating,
  pinMass,
  pistonMass,
  reciprocatingFraction,
  ringMass,
  rodsPerPin,
  shellMass,
  smallEndMass,
} from '../quantities.ts';
import { mass, ratio } from '../output.ts';
import { count, grams, is } from '../step.ts';
import { needsBobweights, noBobweights } from './layout.words.ts';

/** What to clamp on one crankpin so that the crank can be balanced without its rods and pistons. */
export const bobweight = defineCalculator({
  id: 'bobweight',
  title: 'Bobweight',
  purpose: 'The mass to clamp on each crankpin while the crank is balanced.',
  asks: [
    'pistonMass',
    'pinMass',
    'ringMass',
    'smallEndMass',
    'bigEndMass',
    'reciprocatingFraction',
  ],
  answers: ['bobweight', 'halfBobweight', 'rotating', 'reciprocating', 'bobweightShare'],
  inputs: {
    pistonMass,
    pinMass,
    ringMass,
    lockMass,
    smallEndMass,
    bigEndMass,
    shellMass,
    oilMass,
    rodsPerPin,
    reciprocatingFraction,
    partnerRotating: optional(partnerRotating),
    partnerReciprocating: optional(partnerReciprocating),
    crankLayout: optional(crankLayout),
  },
  outputs: {
    bobweight: mass('m_bob', 'Bobweight of one crankpin', {
      phrase: 'The bobweight',
      main: true,
      carries: 'newBobweight',
    }),
    halfBobweight: mass('m_half', 'Each half of the clamp'),
    rotatingPerRod: mass('m_rot,1', 'Rotating mass of one rod'),
    reciprocatingPerCylinder: mass('m_rec', 'Reciprocating mass of one cylinder', {
      phrase: 'The reciprocating mass of one cylinder',
      carries: 'reciprocatingMass',
    }),
    rotating: mass('m_rot', 'Rotating mass on the pin, with oil', {
      phrase: 'The rotating mass on one pin',
      carries: 'rotatingMass',
    }),
    reciprocating: mass('m_rec,pin', 'Reciprocating mass on the pin'),
    carried: mass('m_car', 'Part of the reciprocating mass that is carried'),
    bobweightShare: ratio('q_bob', 'Bobweight over everything on the pin'),
    perHundredth: mass('Δm_f', 'Bobweight change for 1 % of balance factor'),
    bigEnds: mass('m_bob,be', 'Big ends in the bobweight'),
    shells: mass('m_bob,shell', 'Bearings in the bobweight'),
    oil: mass('m_bob,oil', 'Oil in the bobweight'),
    smallEndsCarried: mass('m_bob,se', 'Small ends in the bobweight'),
    pinsCarried: mass('m_bob,pin', 'Wrist pins in the bobweight'),
    locksCarried: mass('m_bob,locks', 'Locks in the bobweight'),
    pistonsCarried: mass('m_bob,piston', 'Pistons in the bobweight'),
    ringsCarried: mass('m_bob,rings', 'Rings in the bobweight'),
  },
  compute(input) {
    const pin = pinBobweight(input);
    const { rodsPerPin: n, reciprocatingFraction: f } = input;
    const partners = Math.min(n - 1, 1);
    return {
      bobweight: pin.bobweight,
      halfBobweight: pin.bobweight / 2,
      rotatingPerRod: pin.rotatingPerRod,
      reciprocatingPerCylinder: pin.reciprocatingPerCylinder,
      rotating: pin.rotating,
      reciprocating: pin.reciprocating,
      carried: pin.carried,
      bobweightShare: pin.bobweightShare,
      perHundredth: 0.01 * pin.reciprocating,
      // A partner's difference is not known part by part; it is shown with the largest part of its kind.
      bigEnds: n * input.bigEndMass + partners * (input.partnerRotating ?? 0),
      shells: n * input.shellMass,
      oil: input.oilMass,
      smallEndsCarried: f * n * input.smallEndMass,
      pinsCarried: f * n * input.pinMass,
      locksCarried: f * n * input.lockMass,
      pistonsCarried: f * (n * input.pistonMass + partners * (input.partnerReciprocating ?? 0)),
      ringsCarried: f * n * input.ringMass,
    };
  },
  steps: {
    rotatingPerRod: is(
      'bigEndMass + shellMass',
      'What rotates with the crankpin, for one rod: its big end and its bearing pair.',
      { units: grams },
    ),
    reciprocatingPerCylinder: is(
      'smallEndMass + pinMass + lockMass + pistonMass + ringMass',
      'What reciprocates in the bore, for one cylinder: small end, pin, locks, piston and rings.',
      { units: grams },
    ),
    partners: count(
      'n_2',
      'min(rodsPerPin - 1, 1)',
      'One if a second rod shares the pin, none if not.',
    ),
    rotating: is(
      'rodsPerPin * rotatingPerRod + oilMass + partners * partnerRotating',
      'All that rotates with one pin, with the oil allowance and what the second rod has more.',
      { units: grams },
    ),
    reciprocating: is(
      'rodsPerPin * reciprocatingPerCylinder + partners * partnerReciprocating',
      'All that reciprocates on one pin.',
      { units: grams },
    ),
    carried: is(
      'reciprocatingFraction * reciprocating',
      'The part of it, by the balance factor, that the counterweight is to answer.',
      { units: grams, source: 'bevan-2005' },
    ),
    bobweight: is(
      'rotating + carried',
      'The bobweight is all of the rotating mass and that part of the reciprocating mass.',
      { units: grams, source: 'bosch-handbook' },
    ),
    halfBobweight: is(
      'bobweight / 2',
      'A clamp in two halves: each half weighs this, so that the clamp itself is in balance.',
      { units: grams },
    ),
    bobweightShare: is(
      'bobweight / (rotating + reciprocating)',
      'The bobweight over everything that hangs on the pin.',
      { units: grams },
    ),
    perHundredth: is('0.01 * reciprocating', 'One per cent more balance factor adds this much.', {
      units: grams,
    }),
    bigEnds: is(
      'rodsPerPin * bigEndMass + partners * partnerRotating',
      'Part by part, the big ends count whole; what the second rod’s rotating mass has more is shown with them.',
      { units: grams },
    ),
    shells: is('rodsPerPin * shellMass', 'So do the shells.', { units: grams }),
    oil: is('oilMass', 'And the oil, once for the pin.', { units: grams }),
    smallEndsCarried: is(
      'reciprocatingFraction * rodsPerPin * smallEndMass',
      'Of the small ends counts the share that is carried.',
      { units: grams },
    ),
    pinsCarried: is('reciprocatingFraction * rodsPerPin * pinMass', 'Of the wrist pins.', {
      units: grams,
    }),
    locksCarried: is('reciprocatingFraction * rodsPerPin * lockMass', 'Of the locks.', {
      units: grams,
    }),
    pistonsCarried: is(
      'reciprocatingFraction * (rodsPerPin * pistonMass + partners * partnerReciprocating)',
      'Of the pistons, with what the second rod’s reciprocating mass has more.',
      { units: grams },
    ),
    ringsCarried: is('reciprocatingFraction * rodsPerPin * ringMass', 'And of the rings.', {
      units: grams,
    }),
  },
  limits: [
    {
      id: 'no-bobweights',
      holds: ({ crankLayout: id }) => id === undefined || needsBobweights(id),
      say: noBobweights,
    },
    {
      id: 'partner',
      holds: (input) =>
        input.rodsPerPin > 1 ||
        ((input.partnerRotating ?? 0) === 0 && (input.partnerReciprocating ?? 0) === 0),
      say: 'With one rod on the pin there is no second rod. Its differences are left out.',
    },
    {
      id: 'usual-fraction',
      holds: (input) => input.reciprocatingFraction >= 0.3 && input.reciprocatingFraction <= 0.7,
      say: 'A balance factor outside 30 to 70 % is a choice for one special engine. Make sure the balancer expects it.',
    },
    {
      id: 'several-rods',
      holds: (input) => input.rodsPerPin <= 2,
      say: 'More than two rods on one pin, as in a radial, is outside what this page explains; the sum itself still holds.',
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
    'All cylinders of the engine are alike, except for the second rod of a pin if its differences are given. Odd and even cylinders may differ: work each pin by itself.',
    'The crank is stiff, and the rods sit on the middle of the pin. Rods side by side on a shared pin make small couples that cancel over the throws of a cross-plane V8 or a V6; a V-twin, a V4 and a flat-plane V8 keep some of them.',
    'On a split pin, enter one rod: the bobweight is then for one half of the pin, clamped at the angle of that half.',
    'The oil allowance is counted once for the pin. What oil really hangs there is not known: common practice, no source.',
    'The balance factor is chosen from the layout of the engine, not from the masses. 50 % is right for two rods on a common pin at 90°.',
    'The answer is only as good as the weighing: an error of a gram in a rotating part counts whole, in a reciprocating part by the balance factor, and both twice where two rods share the pin.',
  ],
  cautions: ['balancing', 'weighing', 'twisting'],
  sources: ['bevan-2005', 'khurmi-gupta-2009', 'sarkar-2002', 'bosch-handbook', 'liu-huston-2011'],
  sweep: { input: 'pistonMass', output: 'bobweight' },
  solve: { input: 'pistonMass', output: 'bobweight' },
  exercise: {
    ask: 'bobweight',
    tolerance: 0.001,
    given: {
      pistonMass: 0.2,
      pinMass: 0.2,
      smallEndMass: 0.2,
      bigEndMass: 0.2,
      shellMass: 0.2,
    },
    also: [
      { kind: 'number', ask: 'reciprocatingPerCylinder' },
      {
        kind: 'choice',
        ask: 'bobweight',
        given: { pistonMass: 0.2, bigEndMass: 0.2, reciprocatingFraction: 0.12 },
      },
      { kind: 'order', ask: 'bobweight', given: { pistonMass: 0.25, bigEndMass: 0.25 } },
    ],
  },
});
