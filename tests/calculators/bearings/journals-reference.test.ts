import { test } from 'vitest';
import { routes as overlapRoutes } from '../../../content/topics/crank-overlap/routes.ts';
import { routes as sizeRoutes } from '../../../content/topics/journal-sizes/routes.ts';
import { crankOverlap } from '../../../src/calculators/bearings/crank-overlap.ts';
import { journalSizes } from '../../../src/calculators/bearings/journal-sizes.ts';
import overlaps from '../../fixtures/crank-overlap/reference.json' with { type: 'json' };
import sizes from '../../fixtures/journal-sizes/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference, within } from '../against.ts';

// Rounding of lengths near 0.1 m, of which an overlap may be a small difference.
test(proves(overlapRoutes.spansOnLine), () => {
  const size = {
    ...within(1e-16, ['overlap', 'byMain', 'byPin', 'byStroke']),
    share: 1e-14,
  };
  const near = { share: 1e-12, size };
  expectReference(overlapRoutes.spansOnLine, crankOverlap, overlaps['crank-overlap'], near);
});

// Ten thousand pieces added in double numbers.
test(proves(sizeRoutes.smallPieces), () => {
  const near = { share: 1e-11 };
  expectReference(sizeRoutes.smallPieces, journalSizes, sizes['journal-sizes'], near);
});
