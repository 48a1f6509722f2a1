import { test } from 'vitest';
import { routes } from '../../../content/topics/cylinder-pressure/routes.ts';
import { cylinderPressure } from '../../../src/calculators/loads/cylinder-pressure.ts';
import reference from '../../fixtures/cylinder-pressure/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference } from '../against.ts';

// A burn that begins with a broken power of the angle leaves the reference's fixed steps a part in 10⁹; the heat
// that the polytropes imply may vanish and is held to 1 mJ.
test(proves(routes.steppedFirstLaw), () => {
  const near = { share: 1e-7, size: { wallPolytropes: 1e-3 } };
  const cases = reference['cylinder-pressure'];
  expectReference(routes.steppedFirstLaw, cylinderPressure, cases, near);
});
