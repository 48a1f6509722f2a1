import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/counterweight-drilling/routes.ts';
import {
  drillLists,
  type DrillList,
} from '../../../src/calculators/balance/drill-sizes.choices.ts';
import { nearestDrill } from '../../../src/core/balance/drill-sizes.ts';
import { pointLength } from '../../../src/core/balance/drilled-hole.ts';
import { proves } from '../../proves.ts';

const inch = 0.0254;

describe('closed forms', () => {
  test.each<[DrillList, number, string, number]>([
    ['metric', 0.0138, '14 mm', 0.014],
    ['metric', 0.01374, '13.5 mm', 0.0135],
    ['metric', 0.0002, '1 mm', 0.001],
    ['fraction', 0.014, '35/64 in', (35 / 64) * inch],
    ['fraction', 0.0127, '1/2 in', 0.5 * inch],
    ['fraction', 0.035, '1 3/8 in', 1.375 * inch],
    ['fraction', 0.0254, '1 in', inch],
    ['index', 0.0084, 'letter Q', 0.332 * inch],
    ['index', 0.0052, 'No. 6', 0.204 * inch],
    ['index', 0.00635, '1/4 in', 0.25 * inch],
    ['index', 0.0105, 'letter Z', 0.413 * inch],
    ['index', 0.016, '5/8 in', 0.625 * inch],
    ['both', 0.0161, '16 mm', 0.016],
    ['both', 0.0158, '5/8 in', 0.625 * inch],
  ])(
    proves(routes.drillsOfTheDrawer, 'of %s drills, %d m is nearest to %s'),
    (list, wanted, name, size) => {
      const found = nearestDrill(drillLists[list], { holeDiameter: wanted });
      expect(found.name.replaceAll('\u00a0', ' ')).toBe(name);
      expect(found.diameter).toBeCloseTo(size, 12);
    },
  );

  test('of two as near the thinner one, which takes less', () => {
    expect(nearestDrill(drillLists.metric, { holeDiameter: 0.01325 }).diameter).toBeCloseTo(
      0.013,
      12,
    );
  });

  test(proves(routes.drillsOfTheDrawer, 'a 118° point is 0.3004 of its diameter long'), () => {
    const point = pointLength({ holeDiameter: 1, pointAngle: (118 / 180) * Math.PI });
    expect(point).toBeCloseTo(0.3004, 4);
  });
});

test.each(Object.entries(drillLists))('%s drills rise, each once', (_, list) => {
  for (const [i, { diameter }] of list.entries())
    if (i > 0) expect(diameter - (list[i - 1]?.diameter ?? 0)).toBeGreaterThan(1e-6);
});

test('an empty list is refused', () => {
  expect(() => nearestDrill([], { holeDiameter: 0.01 })).toThrow(RangeError);
});
