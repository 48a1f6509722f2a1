import { grams, is, tex } from '../step.ts';

/**
 * Lines of the working that every page of a layout’s shaking has: one cylinder, its two halves summed up, bobweights.
 *
 * @param weight the factor before each cylinder’s half, in TeX: nothing where all are alike
 */
export const layoutStepsWith = (weight: string) => ({
  inertiaForce: is(
    'reciprocatingMass * stroke / 2 * maxSpeed^2',
    'Mass times throw times the square of the speed: the greatest primary force of one cylinder.',
    { units: { force: 'N', mass: 'kg', length: 'm' }, source: 'khurmi-gupta-2009' },
  ),
  forwardForce: is(
    tex(
      `\\q{forwardForce} = \\left|\\textstyle\\sum \\tfrac12 ${weight}e^{i\\alpha}\\right|`,
      'sum over parts',
    ),
    'Half of each cylinder’s pull rotates with the crank, at the angle α of its throw.',
    { source: 'bevan-2005' },
  ),
  backwardForce: is(
    tex(
      `\\q{backwardForce} = \\left|\\textstyle\\sum \\tfrac12 ${weight}e^{i(2\\beta-\\alpha)}\\right|`,
      'sum over parts',
    ),
    'The other half rotates against it, mirrored in the line of its bank β.',
    { source: 'bevan-2005' },
  ),
  forwardCouple: is(
    tex(
      `\\q{forwardCouple} = \\left|\\textstyle\\sum \\tfrac12 ${weight}z\\,e^{i\\alpha}\\right|`,
      'sum over parts',
    ),
    'The same, each weighted by its place z along the crank, in pin spacings from the middle.',
    { source: 'bosch-handbook' },
  ),
  backwardCouple: is(
    tex(
      `\\q{backwardCouple} = \\left|\\textstyle\\sum \\tfrac12 ${weight}z\\,e^{i(2\\beta-\\alpha)}\\right|`,
      'sum over parts',
    ),
    'And what rotates against the crank.',
    { source: 'bosch-handbook' },
  ),
  rods: is(tex('\\q{rods}', 'table'), 'Counted from the layout.'),
  pinBobweight: is(
    'rotatingMass + reciprocatingFraction * rods * reciprocatingMass',
    'What rotates with the pin, and the factor’s share of what reciprocates on it.',
    { units: grams, source: 'bevan-2005' },
  ),
  bobweights: is(
    tex('\\q{bobweights}', 'table'),
    'One for each pin or half of a pin, unless the throws cancel with equal ones.',
  ),
});

export const layoutSteps = layoutStepsWith('');
