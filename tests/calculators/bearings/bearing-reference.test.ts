import { test } from 'vitest';
import { routes } from '../../../content/topics/bearing-clearance/routes.ts';
import { bearingClearance } from '../../../src/calculators/bearings/bearing-clearance.ts';
import { bearingCrush } from '../../../src/calculators/bearings/bearing-crush.ts';
import reference from '../../fixtures/bearing-clearance/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference, within } from '../against.ts';

// Four hundred steps of the fourth order through a wall keep ten digits; clearances are differences of lengths
// near 0.1 m, held to a thousandth of a nanometre, and a pressure that may vanish to 1 Pa.
test(proves(routes.ringsThroughWall), () => {
  const lengths = ['clearanceHot', 'clearanceCold', 'computed', 'gapHot', 'freeHot', 'opening'];
  const size = {
    ...within(1e-12, lengths),
    ...within(1, ['pressureHot', 'pressureCold']),
  };
  const near = { share: 1e-8, size };
  const { ringsThroughWall } = routes;
  expectReference(ringsThroughWall, bearingClearance, reference['bearing-clearance'], near);
  expectReference(ringsThroughWall, bearingCrush, reference['bearing-crush'], near);
});
