import { pinBobweight } from '../core/bobweight.ts';
import { defineCalculator, optional, type NumberOutput } from './define.ts';
import {
  bigEndMass,
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
} from './quantities.ts';

/** One block of the stacked bar. */
function block(label: string, symbol: string): NumberOutput & { readonly detail: true } {
  return { type: 'number', label, symbol, kind: 'mass', detail: true };
}

const grams = { units: { mass: 'g' } } as const;

/** What to clamp on one crankpin so that the crank can be balanced without its rods and pistons. */
export const bobweight = defineCalculator({
  id: 'bobweight',
  title: 'Bobweight',
  purpose: 'The mass to clamp on each crankpin while the crank is balanced.',
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
  },
  outputs: {
    bobweight: {
      type: 'number',
      label: 'Bobweight of one crankpin',
      symbol: 'm_bob',
      kind: 'mass',
      phrase: 'The bobweight',
      main: true,
      carries: 'bobweight',
    },
    halfBobweight: {
      type: 'number',
      label: 'Each half of the clamp',
      symbol: 'm_half',
      kind: 'mass',
    },
    rotatingPerRod: {
      type: 'number',
      label: 'Turning mass of one rod',
      symbol: 'm_rot,1',
      kind: 'mass',
    },
    reciprocatingPerCylinder: {
      type: 'number',
      label: 'Sliding mass of one cylinder',
      symbol: 'm_rec',
      kind: 'mass',
      phrase: 'The sliding mass of one cylinder',
      carries: 'reciprocatingMass',
    },
    rotating: {
      type: 'number',
      label: 'Turning mass on the pin, with oil',
      symbol: 'm_rot',
      kind: 'mass',
      phrase: 'The turning mass on one pin',
      carries: 'rotatingMass',
    },
    reciprocating: {
      type: 'number',
      label: 'Sliding mass on the pin',
      symbol: 'm_rec,pin',
      kind: 'mass',
    },
    carried: {
      type: 'number',
      label: 'Part of the sliding mass that is carried',
      symbol: 'm_car',
      kind: 'mass',
    },
    bobweightShare: {
      type: 'number',
      label: 'Bobweight over everything on the pin',
      symbol: 'q_bob',
      kind: 'ratio',
    },
    perHundredth: {
      type: 'number',
      label: 'Bobweight change for 0.01 of the share f',
      symbol: 'Δm_f',
      kind: 'mass',
      detail: true,
    },
    bigEnds: block('Big ends in the bobweight', 'm_bob,be'),
    shells: block('Shells in the bobweight', 'm_bob,shell'),
    oil: block('Oil in the bobweight', 'm_bob,oil'),
    smallEndsCarried: block('Small ends in the bobweight', 'm_bob,se'),
    pinsCarried: block('Wrist pins in the bobweight', 'm_bob,pin'),
    locksCarried: block('Locks in the bobweight', 'm_bob,locks'),
    pistonsCarried: block('Pistons in the bobweight', 'm_bob,piston'),
    ringsCarried: block('Rings in the bobweight', 'm_bob,rings'),
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
  steps: [
    {
      of: 'rotatingPerRod',
      formula: 'bigEndMass + shellMass',
      say: 'What turns with the crankpin, for one rod: its big end and its shells.',
      ...grams,
    },
    {
      of: 'reciprocatingPerCylinder',
      formula: 'smallEndMass + pinMass + lockMass + pistonMass + ringMass',
      say: 'What slides in the bore, for one cylinder: small end, pin, locks, piston and rings.',
      ...grams,
    },
    {
      of: 'partners',
      symbol: 'n_2',
      kind: 'count',
      formula: 'min(rodsPerPin - 1, 1)',
      say: 'One if a second rod shares the pin, none if not.',
    },
    {
      of: 'rotating',
      formula: 'rodsPerPin * rotatingPerRod + oilMass + partners * partnerRotating',
      say: 'All that turns with one pin, with the oil allowance and what the second rod has more.',
      ...grams,
    },
    {
      of: 'reciprocating',
      formula: 'rodsPerPin * reciprocatingPerCylinder + partners * partnerReciprocating',
      say: 'All that slides on one pin.',
      ...grams,
    },
    {
      of: 'carried',
      formula: 'reciprocatingFraction * reciprocating',
      say: 'The part of it that a turning weight can answer.',
      source: 'bevan-2005',
      ...grams,
    },
    {
      of: 'bobweight',
      formula: 'rotating + carried',
      say: 'The bobweight is all of what turns and that part of what slides.',
      source: 'bosch-handbook',
      ...grams,
    },
    {
      of: 'halfBobweight',
      formula: 'bobweight / 2',
      say: 'A clamp in two halves: each half weighs this, so that the clamp itself is in balance.',
      ...grams,
    },
    {
      of: 'bobweightShare',
      formula: 'bobweight / (rotating + reciprocating)',
      say: 'The bobweight over everything that hangs on the pin.',
      ...grams,
    },
    {
      of: 'perHundredth',
      formula: '0.01 * reciprocating',
      say: 'One hundredth more of the share f adds this much.',
      ...grams,
    },
  ],
  limits: [
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
      say: 'A share f outside 0.30 to 0.70 is a choice for one special engine. Make sure the balancer expects it.',
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
      label: 'Share of the sliding mass that is carried',
      symbol: 'f',
      kind: 'ratio',
      of: (input) => input.reciprocatingFraction,
      possible: [0, 1],
      tested: [0.5, 0.6666666667],
    },
  ],
  assumptions: [
    'All cylinders of the engine are alike, except for the second rod of a pin if its differences are given. Odd and even cylinders may differ: work each pin by itself.',
    'The crank is stiff, and the rods sit on the middle of the pin. Rods side by side on a shared pin make small couples that cancel over the throws of a cross-plane V8 or a V6; a V2, a V4 and a flat-plane V8 keep some of them.',
    'On a split pin, enter one rod: the bobweight is then for one half of the pin, clamped at the angle of that half.',
    'The oil allowance is counted once for the pin. What oil really hangs there is not known: common practice, no source.',
    'The share f is chosen from the layout of the engine, not from the masses. One half is right for two rods on a common pin at 90°.',
    'The answer is only as good as the weighing: an error of a gram in a turning part counts whole, in a sliding part f times, and twice where two rods share the pin.',
  ],
  cautions: ['balancing', 'weighing', 'twisting'],
  sources: ['bevan-2005', 'khurmi-gupta-2009', 'sarkar-2002', 'bosch-handbook', 'liu-huston-2011'],
  sweep: { input: 'pistonMass', output: 'bobweight' },
  solve: { input: 'pistonMass', output: 'bobweight' },
  exercise: { ask: 'bobweight', tolerance: 0.001 },
});
