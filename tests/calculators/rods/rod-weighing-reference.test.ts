import { test } from 'vitest';
import { routes } from '../../../content/topics/rod-weighing/routes.ts';
import { rodWeighing } from '../../../src/calculators/rods/rod-weighing.ts';
import reference from '../../fixtures/rod-weighing/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference } from '../against.ts';

// Rounding of double numbers: a tenth of a nanogram where a result is a small difference of masses near 1 kg.
test(proves(routes.weighedInFractions), () => {
  const rounding = 1e-13;
  expectReference(routes.weighedInFractions, rodWeighing, reference['rod-weighing'], {
    share: 1e-9,
    size: {
      closure: rounding,
      scaleError: rounding,
      bigEndSpread: rounding,
      smallEndSpread: rounding,
    },
  });
});
