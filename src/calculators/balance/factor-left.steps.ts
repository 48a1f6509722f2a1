import { is, tex } from '../step.ts';
import { layoutSteps } from './layout.steps.ts';

const newtons = { force: 'N' } as const;
const newtonmetres = { force: 'N', length: 'm', torque: 'Nm' } as const;

/** The working: one cylinder, what the layout makes of it, what a factor leaves, and which factor is which. */
export const steps = {
  inertiaForce: layoutSteps.inertiaForce,
  forwardForce: layoutSteps.forwardForce,
  backwardForce: layoutSteps.backwardForce,
  forwardCouple: layoutSteps.forwardCouple,
  backwardCouple: layoutSteps.backwardCouple,
  forceMost: is(
    '(abs(1 - 2 * reciprocatingFraction) * forwardForce + backwardForce) * inertiaForce',
    'Counterweights with the factor f leave |1 − 2f| of the forward part. It meets the backward one twice in a turn.',
    { units: newtons, source: 'bevan-2005' },
  ),
  forceLeast: is(
    'abs(abs(1 - 2 * reciprocatingFraction) * forwardForce - backwardForce) * inertiaForce',
    'And stands opposite to it twice.',
    { units: newtons },
  ),
  coupleMost: is(
    '(abs(1 - 2 * reciprocatingFraction) * forwardCouple + backwardCouple) * inertiaForce * cylinderSpacing',
    'The same for the couple, about the middle of the crank.',
    { units: newtonmetres },
  ),
  coupleLeast: is(
    'abs(abs(1 - 2 * reciprocatingFraction) * forwardCouple - backwardCouple) * inertiaForce * cylinderSpacing',
    'And at its least.',
    { units: newtonmetres },
  ),
  forceAxis: is(
    tex('\\q{forceAxis}', 'sum over parts'),
    'The two parts meet midway between their angles.',
  ),
  coupleAxis: is(tex('\\q{coupleAxis}', 'sum over parts'), 'And so for the couple.'),
  leastFactor: is(
    tex('\\q{leastFactor} = \\tfrac12', 'balance'),
    'Nothing on the crank reaches the backward part, so that the greatest is least where the forward part is gone.',
    { source: 'bevan-2005' },
  ),
  lineFactor: is(
    'when(forwardForce <= 0, (1 - backwardCouple / forwardCouple) / 2, (1 - backwardForce / forwardForce) / 2)',
    'With this factor the forward part left is as large as the backward one: they add along one line and cancel across it.',
  ),
  forcePerCent: is(
    '0.02 * forwardForce * inertiaForce',
    'A factor off one half by one per cent leaves two per cent of the forward part.',
    { units: newtons },
  ),
  couplePerCent: is('0.02 * forwardCouple * inertiaForce * cylinderSpacing', 'And of its couple.', {
    units: newtonmetres,
  }),
  rods: layoutSteps.rods,
  pinBobweight: layoutSteps.pinBobweight,
  bobweights: layoutSteps.bobweights,
};
