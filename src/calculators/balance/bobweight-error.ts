import { planeUnbalance, primaryParts, throwSums } from '../../core/balance/crank-throws.ts';
import { length } from '../../core/balance/vectors.ts';
import { wholeRods } from '../../core/balance/bobweight.ts';
import { above } from '../../core/refuse.ts';
import { crankLayout, throwsOf } from './crank-layout.choices.ts';
import { defineCalculator, optional, type Absent } from '../define.ts';
import {
  bobweightError as change,
  cylinderSpacing,
  planeA,
  planeB,
  reciprocatingMass,
  rodsPerPin,
  stroke,
} from '../quantities.ts';
import { mass, maybe, ratio, unbalance } from '../output.ts';
import { is, millimetres, ratio as ratioStep, tex } from '../step.ts';

const cancels: Absent = {
  absent: 'The throws of this crank cancel: any equal bobweights, or none, read the same.',
};

/** What the same change on every bobweight does at the ends of the crank. */
export const bobweightError = defineCalculator({
  id: 'bobweight-error',
  title: 'What a gram of bobweight does',
  purpose:
    'The unbalance at each end of the crank when every bobweight is wrong, or changed, by the same mass.',
  asks: ['crankLayout', 'bobweightError', 'stroke', 'cylinderSpacing'],
  answers: ['planeUnbalance', 'pinUnbalance', 'unbalanceA', 'unbalanceB', 'massFor100'],
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
    planeUnbalance: unbalance('U_end', 'Unbalance in the worse end plane', {
      phrase: 'The unbalance that this makes at an end of the crank',
      main: true,
      carries: 'bobweightUnbalance',
    }),
    pinUnbalance: unbalance('U_pin', 'Unbalance at one pin'),
    unbalanceA: unbalance('U_A', 'In plane A'),
    unbalanceB: unbalance('U_B', 'In plane B'),
    fractionUnbalance: maybe(
      unbalance('U_f', 'In the worse end plane, for 1 % more balance factor'),
    ),
    massFor100: maybe(mass('Δm_100', 'Change of every bobweight that makes 100 g·mm at an end')),
    forceFactor: ratio('k_F', 'Throws added up: force'),
    coupleFactor: ratio('k_M', 'Throws added up: couple, in pin spacings'),
    forceAlong: ratio('k_Fx', 'Force sum, along the first throw'),
    forceAcross: ratio('k_Fy', 'Force sum, across it'),
    coupleAlong: ratio('k_Mx', 'Couple sum, along the first throw'),
    coupleAcross: ratio('k_My', 'Couple sum, across it'),
    primaryForce: ratio('k_1F', 'Greatest primary force of the layout, in F₁'),
    primaryCouple: ratio('k_1M', 'Greatest primary couple of the layout, in F₁ times pin spacing'),
    backwardForce: ratio('k_bF', 'Part of that force that turns backward'),
    backwardCouple: ratio('k_bM', 'Part of that couple that turns backward'),
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
  steps: {
    pinUnbalance: is('bobweightError * stroke / 2', 'The change times the throw, at every pin.', {
      units: { ...millimetres, unbalance: 'gmm', mass: 'g' },
    }),
    forceAlong: is(
      tex('\\q{forceAlong} = \\textstyle\\sum \\cos\\theta', 'sum over parts'),
      'Unit throws added as arrows, each at the angle of its throw: what they come to along the first one.',
      { source: 'bosch-handbook' },
    ),
    forceAcross: is(
      tex('\\q{forceAcross} = \\textstyle\\sum \\sin\\theta', 'sum over parts'),
      'And across it.',
      { source: 'bosch-handbook' },
    ),
    forceFactor: is(
      'sqrt(forceAlong^2 + forceAcross^2)',
      'Both together. None left: the crank makes no force.',
    ),
    coupleAlong: is(
      tex('\\q{coupleAlong} = \\textstyle\\sum z\\cos\\theta', 'sum over parts'),
      'The same, each arrow weighted by its place z along the crank, counted in pin spacings from the middle.',
      { source: 'bosch-handbook' },
    ),
    coupleAcross: is(
      tex('\\q{coupleAcross} = \\textstyle\\sum z\\sin\\theta', 'sum over parts'),
      'And across the first throw.',
      { source: 'bosch-handbook' },
    ),
    coupleFactor: is('sqrt(coupleAlong^2 + coupleAcross^2)', 'Both together.'),
    shareA: ratioStep(
      'k_A',
      'sqrt((planeB * forceAlong - cylinderSpacing * coupleAlong)^2 + (planeB * forceAcross - cylinderSpacing * coupleAcross)^2) / (planeB - planeA)',
      'Moments about plane B give what plane A has to answer, as a multiple of one pin’s unbalance.',
      { units: millimetres },
    ),
    shareB: ratioStep(
      'k_B',
      'sqrt((cylinderSpacing * coupleAlong - planeA * forceAlong)^2 + (cylinderSpacing * coupleAcross - planeA * forceAcross)^2) / (planeB - planeA)',
      'Moments about plane A give what plane B has to answer.',
      { units: millimetres },
    ),
    unbalanceA: is('abs(pinUnbalance) * shareA', 'In plane A, as an unbalance.', {
      units: { unbalance: 'gmm' },
    }),
    unbalanceB: is('abs(pinUnbalance) * shareB', 'In plane B.', { units: { unbalance: 'gmm' } }),
    planeUnbalance: is('max(unbalanceA, unbalanceB)', 'The worse of the two.', {
      units: { ...millimetres, unbalance: 'gmm', mass: 'g' },
    }),
    fractionUnbalance: is(
      '0.01 * rodsPerPin * reciprocatingMass * stroke / 2 * max(shareA, shareB)',
      'One per cent more balance factor adds a hundredth of the reciprocating mass to every bobweight.',
      { units: { ...millimetres, unbalance: 'gmm', mass: 'g' } },
    ),
    massFor100: is(
      '2 * 0.0001 / (stroke * max(shareA, shareB))',
      'And read backwards: 100 g·mm, which are 0.0001 kg·m, over what one kilogram on every bobweight makes.',
    ),
  },
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
  exercise: {
    ask: 'planeUnbalance',
    tolerance: 0.01,
    given: { bobweightError: 0.5, stroke: 0.12, cylinderSpacing: 0.12 },
    also: [{ kind: 'number', ask: 'pinUnbalance', given: { bobweightError: 0.5, stroke: 0.12 } }],
  },
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
    return { absent: 'Enter the reciprocating mass of a cylinder and the rods on one pin.' };
  const n = wholeRods({ rodsPerPin: rods }, 9);
  return perKilogram * 0.01 * n * above({ reciprocatingMass: mass }, 'reciprocatingMass');
}
