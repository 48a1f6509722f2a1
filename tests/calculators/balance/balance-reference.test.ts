import { describe, test } from 'vitest';
import { routes } from '../../../content/topics/bobweight/routes.ts';
import { bobweightError } from '../../../src/calculators/balance/bobweight-error.ts';
import { bobweightImplied } from '../../../src/calculators/balance/bobweight-implied.ts';
import { bobweight } from '../../../src/calculators/balance/bobweight.ts';
import { partialBalance } from '../../../src/calculators/balance/partial-balance.ts';
import reference from '../../fixtures/bobweight/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference } from '../against.ts';

describe('against the parts laid out one by one, and cranks turned with real rods', () => {
  // Exact fractions, rounded once.
  test(proves(routes.partByPart), () => {
    expectReference(routes.partByPart, bobweight, reference.bobweight, { share: 1e-12 });
  });

  // Differences of the eighth order leave 1 part in 10¹⁰ of a force; 1 µN where all of it cancels.
  test(proves(routes.turnedWithRods), () => {
    const forces = ['backward', 'forwardLeft', 'residual', 'residualGreatest', 'residualLeast'];
    const size = {
      ...Object.fromEntries(forces.map((name) => [name, 1e-6])),
      backwardShare: 1e-10,
    };
    expectReference(routes.turnedWithRods, partialBalance, reference['partial-balance'], {
      share: 1e-9,
      size,
    });
  });

  test(proves(routes.splitSearched), () => {
    const near = { share: 1e-11, size: { impliedSmallEnd: 1e-12 } };
    expectReference(routes.splitSearched, bobweightImplied, reference['bobweight-implied'], near);
  });

  // Sums of up to twelve throws that may cancel to nothing.
  test(proves(routes.stiffCrank), () => {
    const sums = ['forceAlong', 'forceAcross', 'coupleAlong', 'coupleAcross'];
    const shaking = ['primaryForce', 'primaryCouple'];
    const size = Object.fromEntries([
      ...sums.map((name) => [name, 1e-13]),
      ...shaking.map((name) => [name, 1e-10]),
      ...['unbalanceA', 'unbalanceB', 'fractionUnbalance'].map((name) => [name, 1e-14]),
    ]) as Record<string, number>;
    expectReference(routes.stiffCrank, bobweightError, reference['bobweight-error'], {
      share: 1e-9,
      size,
    });
  });
});
