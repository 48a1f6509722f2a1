import { test } from 'vitest';
import { routes } from '../../../content/topics/rod-shank/routes.ts';
import { rodShank } from '../../../src/calculators/rods/rod-shank.ts';
import reference from '../../fixtures/rod-shank/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference } from '../against.ts';

// Struts followed in two thousand steps of the fourth order, differences of the eighth: nine digits of a force.
test(proves(routes.stripsAndStruts), () => {
  const near = { share: 1e-9, size: { push: 1e-4, pushStress: 1, meanStress: 0.1 } };
  expectReference(routes.stripsAndStruts, rodShank, reference['rod-shank'], near);
});
