import { grams, is, ratio, tex } from '../step.ts';
import { layoutStepsWith } from './layout.steps.ts';

const newtons = { force: 'N' } as const;
const layoutSteps = layoutStepsWith('\\mu\\,');

/** The working of shaking forces: one cylinder, then what the layout makes of it, then what counterweights leave. */
export const steps = {
  inertiaForce: layoutSteps.inertiaForce,
  secondaryOne: is(
    'inertiaForce * stroke / (2 * rodLength)',
    'Times throw over rod length: the greatest secondary force of one cylinder.',
    { units: { force: 'N', length: 'm' }, source: 'khurmi-gupta-2009' },
  ),
  secondBank: ratio(
    'μ_2',
    '1 + partnerReciprocating / reciprocatingMass',
    'What reciprocates in a cylinder of the second bank, in that of the first: below, the μ of its cylinders. That of all others is 1.',
  ),
  forwardForce: layoutSteps.forwardForce,
  backwardForce: layoutSteps.backwardForce,
  forwardCouple: layoutSteps.forwardCouple,
  backwardCouple: layoutSteps.backwardCouple,
  secondForce: is(
    tex(
      '\\q{secondForce} = \\left|\\textstyle\\sum \\tfrac12 \\mu\\,e^{i(2\\alpha-\\beta)}\\right| + \\left|\\textstyle\\sum \\tfrac12 \\mu\\,e^{i(3\\beta-2\\alpha)}\\right|',
      'sum over parts',
    ),
    'Twice a turn: both halves of every cylinder turn at twice crank speed, and their sums meet.',
    { source: 'bosch-handbook' },
  ),
  secondCouple: is(
    tex(
      '\\q{secondCouple} = \\left|\\textstyle\\sum \\tfrac12 \\mu\\,z\\,e^{i(2\\alpha-\\beta)}\\right| + \\left|\\textstyle\\sum \\tfrac12 \\mu\\,z\\,e^{i(3\\beta-2\\alpha)}\\right|',
      'sum over parts',
    ),
    'And their couple.',
    { source: 'bosch-handbook' },
  ),
  stays: ratio(
    'j_1',
    'when(balanceShafts == "one", 0, when(balanceShafts == "both", 0, 1))',
    'A shaft against the crank takes all that rotates backward; without one all of it stays.',
  ),
  staysTwice: ratio(
    'j_2',
    'when(balanceShafts == "pair", 0, when(balanceShafts == "both", 0, 1))',
    'A pair at twice crank speed takes all that comes twice a turn; without one all of it stays.',
  ),
  primaryForce: is(
    '(abs(1 - 2 * reciprocatingFraction) * forwardForce + stays * backwardForce) * inertiaForce',
    'Counterweights with the factor f leave |1 − 2f| of the forward part. It meets the backward one twice in a turn.',
    { units: newtons },
  ),
  primaryForceLeast: is(
    'abs(abs(1 - 2 * reciprocatingFraction) * forwardForce - stays * backwardForce) * inertiaForce',
    'And stands opposite to it twice.',
    { units: newtons },
  ),
  primaryCouple: is(
    '(abs(1 - 2 * reciprocatingFraction) * forwardCouple + stays * backwardCouple) * inertiaForce * cylinderSpacing',
    'The same for the couple, about the middle of the crank.',
    { units: { force: 'N', length: 'm', torque: 'Nm' } },
  ),
  primaryCoupleLeast: is(
    'abs(abs(1 - 2 * reciprocatingFraction) * forwardCouple - stays * backwardCouple) * inertiaForce * cylinderSpacing',
    'And at its least.',
    { units: { force: 'N', length: 'm', torque: 'Nm' } },
  ),
  secondaryForce: is(
    'staysTwice * secondForce * secondaryOne',
    'No counterweight changes what comes twice a turn.',
    { units: newtons },
  ),
  secondaryCouple: is(
    'staysTwice * secondCouple * secondaryOne * cylinderSpacing',
    'And its couple, about the middle of the crank.',
    { units: { force: 'N', length: 'm', torque: 'Nm' } },
  ),
  heldForce: is(
    '2 * reciprocatingFraction * forwardForce * inertiaForce',
    'What the counterweights take of the forward part: with 50 per cent all of it.',
    { units: newtons },
  ),
  heldCouple: is(
    '2 * reciprocatingFraction * forwardCouple * inertiaForce * cylinderSpacing',
    'And of the forward couple.',
    { units: { force: 'N', length: 'm', torque: 'Nm' } },
  ),
  forceNow: is(
    tex(
      '\\q{forceNow} = \\left|\\textstyle\\sum \\left(F_1\\cos\\psi + F_2\\cos 2\\psi\\right)e^{i\\beta} - f F_1 e^{i(\\alpha+\\theta)}\\right|,\\; \\psi = \\theta+\\alpha-\\beta',
      'sum over parts',
    ),
    'Every pull along its own bore, less the counterweight opposite its throw, as arrows at this crank angle; balance shafts take their part off.',
  ),
  coupleNow: is(
    tex(
      '\\q{coupleNow} = \\left|\\textstyle\\sum z\\left[\\left(F_1\\cos\\psi + F_2\\cos 2\\psi\\right)e^{i\\beta} - f F_1 e^{i(\\alpha+\\theta)}\\right]\\right|',
      'sum over parts',
    ),
    'The same, each at its distance z from the middle of the crank.',
  ),
  shaftForce: is(
    'backwardForce * reciprocatingMass * stroke / 2',
    'Mass times radius that makes the backward part, turning against the crank.',
    { units: { unbalance: 'gmm', mass: 'g', length: 'mm' } },
  ),
  shaftCouple: is(
    'backwardCouple * reciprocatingMass * stroke / 2',
    'The same for the couple: a weight at each end of one pin spacing; further apart they are lighter.',
    { units: { unbalance: 'gmm', mass: 'g', length: 'mm' } },
  ),
  pairForce: is(
    tex(
      '\\q{pairForce} = \\tfrac14\\lambda\\,m r \\max\\left(\\left|\\textstyle\\sum \\tfrac12 \\mu\\,e^{i(2\\alpha-\\beta)}\\right|, \\left|\\textstyle\\sum \\tfrac12 \\mu\\,e^{i(3\\beta-2\\alpha)}\\right|\\right)',
      'sum over parts',
    ),
    'At twice the speed a quarter of the mass times radius does; the forward and the backward shaft each carry their sum.',
  ),
  pairCouple: is(
    tex(
      '\\q{pairCouple} = \\tfrac14\\lambda\\,m r \\max\\left(\\left|\\textstyle\\sum \\tfrac12 \\mu\\,z\\,e^{i(2\\alpha-\\beta)}\\right|, \\left|\\textstyle\\sum \\tfrac12 \\mu\\,z\\,e^{i(3\\beta-2\\alpha)}\\right|\\right)',
      'sum over parts',
    ),
    'And for the couple.',
  ),
  rods: layoutSteps.rods,
  pinBobweight: is(
    'rotatingMass + reciprocatingFraction * reciprocatingMass * (rods + min(rods - 1, 1) * (secondBank - 1))',
    'What rotates with the pin, and the factor’s share of what reciprocates on it.',
    { units: grams, source: 'bevan-2005' },
  ),
  bobweights: layoutSteps.bobweights,
};
