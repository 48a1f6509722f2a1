import { test } from 'vitest';
import { routes } from '../../../content/topics/reversal-load/routes.ts';
import { reversalLoad } from '../../../src/calculators/loads/reversal-load.ts';
import reference from '../../fixtures/reversal-load/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference } from '../against.ts';

// Second differences of the eighth order keep about ten digits; an excess that vanishes has none of its own.
test(proves(routes.smallMasses), () => {
  const near = { share: 1e-9, size: { missedShiftExcess: 1e-9 } };
  expectReference(routes.smallMasses, reversalLoad, reference['reversal-load'], near);
});
