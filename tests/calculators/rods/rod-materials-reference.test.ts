import { test } from 'vitest';
import { routes } from '../../../content/topics/rod-materials/routes.ts';
import { rodMaterials } from '../../../src/calculators/rods/rod-materials.ts';
import reference from '../../fixtures/rod-materials/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference } from '../against.ts';

// Second differences of the eighth order keep about ten digits; growth is a small difference of two lengths.
test(proves(routes.sectionSearched), () => {
  const near = { share: 1e-9, size: { growth: 1e-16 } };
  expectReference(routes.sectionSearched, rodMaterials, reference['rod-materials'], near);
});
