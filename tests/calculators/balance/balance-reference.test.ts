import { describe, test } from 'vitest';
import { routes as factorRoutes } from '../../../content/topics/balance-factor/routes.ts';
import { routes } from '../../../content/topics/bobweight/routes.ts';
import { routes as quotedRoutes } from '../../../content/topics/quoted-bobweight/routes.ts';
import { routes as residualRoutes } from '../../../content/topics/residual-unbalance/routes.ts';
import { bobweightError } from '../../../src/calculators/balance/bobweight-error.ts';
import { bobweightImplied } from '../../../src/calculators/balance/bobweight-implied.ts';
import { bobweight } from '../../../src/calculators/balance/bobweight.ts';
import { partialBalance } from '../../../src/calculators/balance/partial-balance.ts';
import reference from '../../fixtures/bobweight/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference, within } from '../against.ts';

describe('against the parts laid out one by one, and cranks turned with real rods', () => {
  // Exact fractions, rounded once.
  test(proves(routes.partByPart), () => {
    expectReference(routes.partByPart, bobweight, reference.bobweight, { share: 1e-12 });
  });

  // Differences of the eighth order leave 1 part in 10¹⁰ of a force; 1 µN where all of it cancels.
  test(proves(factorRoutes.turnedWithRods), () => {
    const forces = ['backward', 'forwardLeft', 'residual', 'residualGreatest', 'residualLeast'];
    const size = { ...within(1e-6, forces), backwardShare: 1e-10 };
    const near = { share: 1e-9, size };
    expectReference(
      factorRoutes.turnedWithRods,
      partialBalance,
      reference['partial-balance'],
      near,
    );
  });

  test(proves(quotedRoutes.splitSearched), () => {
    const near = { share: 1e-11, size: { impliedSmallEnd: 1e-12 } };
    expectReference(
      quotedRoutes.splitSearched,
      bobweightImplied,
      reference['bobweight-implied'],
      near,
    );
  });

  // Sums of up to twelve throws may cancel to nothing: to the rounding of 1, or of 1 kg·m.
  test(proves(residualRoutes.stiffCrank), () => {
    const sums = ['forceAlong', 'forceAcross', 'coupleAlong', 'coupleAcross'];
    const unbalances = ['planeUnbalance', 'unbalanceA', 'unbalanceB', 'fractionUnbalance'];
    const size = {
      ...within(1e-13, sums),
      ...within(1e-14, unbalances),
      ...within(1e-10, ['primaryForce', 'primaryCouple']),
    };
    const near = { share: 1e-9, size };
    expectReference(residualRoutes.stiffCrank, bobweightError, reference['bobweight-error'], near);
  });
});
