import { length, planeUnbalance, primaryParts, throwSums } from '../core/crank-throws.ts';
import { wholeRods } from '../core/bobweight.ts';
import { above } from '../core/refuse.ts';
import { crankLayout, throwsOf } from './crank-layout-entry.ts';
import { defineCalculator, optional, type Absent, type NumberOutput } from './define.ts';
import {
  bobweightError as change,
  cylinderSpacing,
  planeA,
  planeB,
  reciprocatingMass,
  rodsPerPin,
  stroke,
} from './quantities.ts';

const unbalance = { kind: 'unbalance', metric: 'gmm', inch: 'gin' } as const;
const coherent = { units: { unbalance: 'gmm', mass: 'g', length: 'mm' } } as const;

/** A plain number of the layout, folded under "more results". */
function layoutNumber(label: string, symbol: string): NumberOutput & { readonly detail: true } {
  return { type: 'number', label, symbol, kind: 'ratio', detail: true };
}

const cancels: Absent = {
  absent: 'The throws of this crank cancel: any equal bobweights, or none, read the same.',
};

/** What the same change on every bobweight does at the ends of the crank. */
export const bobweightError = defineCalculator({
  id: 'bobweight-error',
  title: 'What a gram of bobweight does',
  purpose:
    'The unbalance at each end of the crank when every bobweight is wrong, or changed, by the same mass.',
  inputs: {
    crankLayout,
    bobweightError: change,
    stroke,
    cylinderSpacing,
    planeA,
    planeB,
    reciprocatingMass: optional(reciprocatingMass),
    rodsPerPin: optional(rodsPerPin),
  },
  outputs: {
    planeUnbalance: {
      type: 'number',
      label: 'Unbalance in the worse end plane',
      symbol: 'U_end',
      ...unbalance,
      phrase: 'The unbalance that this makes at an end of the crank',
      main: true,
    },
    pinUnbalance: {
      type: 'number',
      label: 'Unbalance at one pin',
      symbol: 'U_pin',
      ...unbalance,
    },
    unbalanceA: { type: 'number', label: 'In plane A', symbol: 'U_A', ...unbalance },
    unbalanceB: { type: 'number', label: 'In plane B', symbol: 'U_B', ...unbalance },
    fractionUnbalance: {
      type: 'maybe',
      label: 'In the worse end plane, for 0.01 more of the share f',
      symbol: 'U_f',
      ...unbalance,
    },
    massFor100: {
      type: 'maybe',
      label: 'Change of every bobweight that makes 100 g·mm at an end',
      symbol: 'Δm_100',
      kind: 'mass',
    },
    forceFactor: {
      type: 'number',
      label: 'Throws added up: force',
      symbol: 'k_F',
      kind: 'ratio',
    },
    coupleFactor: {
      type: 'number',
      label: 'Throws added up: couple, in pin spacings',
      symbol: 'k_M',
      kind: 'ratio',
    },
    forceAlong: layoutNumber('Force sum, along the first throw', 'k_Fx'),
    forceAcross: layoutNumber('Force sum, across it', 'k_Fy'),
    coupleAlong: layoutNumber('Couple sum, along the first throw', 'k_Mx'),
    coupleAcross: layoutNumber('Couple sum, across it', 'k_My'),
    primaryForce: layoutNumber('Greatest primary force of the layout, in F₁', 'k_1F'),
    primaryCouple: layoutNumber(
      'Greatest primary couple of the layout, in F₁ times pin spacing',
      'k_1M',
    ),
    backwardForce: layoutNumber('Part of that force that turns backward', 'k_bF'),
    backwardCouple: layoutNumber('Part of that couple that turns backward', 'k_bM'),
  },
  compute(input) {
    const throws = throwsOf(input.crankLayout);
    const { force, couple } = throwSums(throws);
    const { forward, backward } = primaryParts(throws);
    const plane = planeUnbalance(throws, input);
    const unbalanceA = length(plane.atA);
    const unbalanceB = length(plane.atB);
    const perKilogram = worstEnd(throws, { ...input, bobweightError: 1 });
    return {
      planeUnbalance: Math.max(unbalanceA, unbalanceB),
      pinUnbalance: (input.bobweightError * input.stroke) / 2,
      unbalanceA,
      unbalanceB,
      fractionUnbalance: perHundredth(perKilogram, input.reciprocatingMass, input.rodsPerPin),
      massFor100: perKilogram === 0 ? cancels : 1e-4 / perKilogram,
      forceFactor: length(force),
      coupleFactor: length(couple),
      forceAlong: force.along,
      forceAcross: force.across,
      coupleAlong: couple.along,
      coupleAcross: couple.across,
      primaryForce: forward.force + backward.force,
      primaryCouple: forward.couple + backward.couple,
      backwardForce: backward.force,
      backwardCouple: backward.couple,
    };
  },
  steps: [
    {
      of: 'pinUnbalance',
      formula: 'bobweightError * stroke / 2',
      say: 'The change times the throw, at every pin.',
      ...coherent,
    },
    {
      of: 'forceFactor',
      tex: String.raw`k_F = \bigl|\textstyle\sum e^{i\theta}\bigr|`,
      say: 'Unit throws added as arrows. None left: the crank makes no force.',
      source: 'bosch-handbook',
    },
    {
      of: 'coupleFactor',
      tex: String.raw`k_M = \bigl|\textstyle\sum z\,e^{i\theta}\bigr|`,
      say: 'The same, each arrow weighted by its place along the crank, counted in pin spacings from the middle.',
      source: 'bosch-handbook',
    },
    {
      of: 'unbalanceA',
      formula:
        'abs(pinUnbalance) * sqrt((planeB * forceAlong - cylinderSpacing * coupleAlong)^2 + (planeB * forceAcross - cylinderSpacing * coupleAcross)^2) / (planeB - planeA)',
      say: 'Moments about plane B give what plane A has to answer.',
      ...coherent,
    },
    {
      of: 'unbalanceB',
      formula:
        'abs(pinUnbalance) * sqrt((cylinderSpacing * coupleAlong - planeA * forceAlong)^2 + (cylinderSpacing * coupleAcross - planeA * forceAcross)^2) / (planeB - planeA)',
      say: 'Moments about plane A give what plane B has to answer.',
      ...coherent,
    },
    {
      of: 'planeUnbalance',
      formula: 'max(unbalanceA, unbalanceB)',
      say: 'The worse of the two.',
      ...coherent,
    },
  ],
  limits: [
    {
      id: 'needs-bobweights',
      holds: (_input, output) => output.forceFactor > 0 || output.coupleFactor > 0,
      say: 'This crank needs no bobweights on the balancer: its throws mirror or cancel one another, so any equal weights, or none, read the same.',
    },
    {
      id: 'planes-outside',
      holds: (input) => input.planeA < 0 && input.planeB > 0,
      say: 'Both correction planes stand on one side of the crank’s middle. The arithmetic holds, but check the signs.',
    },
  ],
  validity: [
    {
      id: 'couple',
      label: 'Couple of the throws, in pin spacings',
      symbol: 'k_M',
      kind: 'ratio',
      of: (_input, output) => output.coupleFactor,
      possible: [0, 6],
      tested: [Math.SQRT2, Math.SQRT2],
    },
  ],
  assumptions: [
    'Every bobweight is wrong by the same mass in the same sense. A mistake on a single pin is another case: its unbalance is that of one throw.',
    'The crank is stiff, its throws stand exactly at their angles, and the pins are evenly spaced by the cylinder spacing. On a flat engine the spacing is that from pin to neighbouring pin.',
    'The two halves of a split pin are taken in one plane; their small distance along the crank is left out.',
    'The unbalance is what the two end planes must answer together. How it is then shared among counterweights is a choice, and bends the crank differently.',
    'Angles count from the first throw, or from the middle of the first pair where pins are split.',
  ],
  cautions: ['balancing', 'twisting'],
  sources: ['bosch-handbook', 'bevan-2005', 'sarkar-2002'],
  sweep: { input: 'bobweightError', output: 'planeUnbalance' },
  solve: { input: 'bobweightError', output: 'planeUnbalance' },
  exercise: { ask: 'planeUnbalance', tolerance: 0.01 },
});

function worstEnd(...args: Parameters<typeof planeUnbalance>): number {
  const { atA, atB } = planeUnbalance(...args);
  return Math.max(length(atA), length(atB));
}

function perHundredth(
  perKilogram: number,
  mass: number | undefined,
  rods: number | undefined,
): number | Absent {
  if (mass === undefined || rods === undefined)
    return { absent: 'Enter the sliding mass of a cylinder and the rods on one pin.' };
  return perKilogram * 0.01 * wholeRods(rods, 9) * above('reciprocatingMass', mass);
}
