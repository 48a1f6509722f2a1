import { expect, test } from 'vitest';
import { routes } from '../../../content/topics/part-matching/routes.ts';
import { partMatching } from '../../../src/calculators/balance/part-matching.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import reference from '../../fixtures/part-matching/reference.json' with { type: 'json' };
import { proves } from '../../proves.ts';
import { expectReference, within } from '../against.ts';

// Rounding of double numbers near 1 kg, and of the depth that comes of it, over the smallest area.
const rounding = 1e-14;

test(proves(routes.everyWay), () => {
  expectReference(routes.everyWay, partMatching, reference['part-matching'], {
    share: 1e-9,
    size: {
      ...within(rounding, ['spread', 'leastSpread', 'listedSpread', 'mostOff', 'pinSpread']),
      cutDepth: rounding / (50e-6 * 2700),
    },
  });
});

test(proves(routes.madeAlike), () => {
  const random = seededRandom(7);
  const draw = (middle: number) => Array.from({ length: 16 }, () => middle + 0.002 * random());
  const pistonMasses = draw(0.428);
  const pinMasses = draw(0.12);
  const smallEndMasses = pistonMasses.map((mass, set) => 0.72 - mass - (pinMasses[set] ?? 0));
  const mixed = smallEndMasses.map((_, set) => smallEndMasses[(5 * set + 3) % 16] ?? 0);
  const { spread, unproved, leastSpread } = partMatching.compute({
    pistonMasses,
    pinMasses,
    smallEndMasses: mixed,
    targetSpread: 1e-4,
    scaleResolution: 1e-4,
    cutArea: 1e-4,
    cutDensity: 2700,
    rodsPerPin: 2,
    partBanks: 'any',
  });
  expect(spread).toBeGreaterThan(1e-6);
  expect(leastSpread).toBe(0);
  expect(unproved).toBe(spread);
});
