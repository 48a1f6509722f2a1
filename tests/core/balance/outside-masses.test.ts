import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/two-plane/routes.ts';
import { atPlanes } from '../../../src/core/balance/moved-planes.ts';
import { outsideMasses, weightedParts } from '../../../src/core/balance/outside-masses.ts';
import { added, direction, length, scaled } from '../../../src/core/balance/vectors.ts';
import { proves } from '../../proves.ts';

const degrees = Math.PI / 180;
const planes = { planeA: -0.2, planeB: 0.2 };
const parts = {
  damperUnbalance: 0.008,
  damperAngle: 198 * degrees,
  damperPlace: -0.25,
  flywheelUnbalance: 0.01,
  flywheelAngle: 18 * degrees,
  flywheelPlace: 0.24,
};

describe('closed forms', () => {
  test(proves(routes.swappedByHand), () => {
    const { left, greatest } = outsideMasses(parts, planes, {
      balancedWith: 'own',
      swappedPart: 'flywheel',
    });
    // 40 mm outside planes 400 mm apart: 1.1 times in the near plane, a tenth in the far one.
    expect(length(left.atB)).toBeCloseTo(0.011, 14);
    expect(length(left.atA)).toBeCloseTo(0.001, 14);
    // What the weight held is missing: heavy opposite of it in the near plane, and with it in the far one.
    expect(direction(left.atB) / degrees).toBeCloseTo(18 - 180, 10);
    expect(direction(left.atA) / degrees).toBeCloseTo(18, 10);
    expect(greatest).toBe(0.01);
  });

  test('a weighted part on a crank that was balanced alone leaves its own weight', () => {
    const swap = { swappedPart: 'damper' } as const;
    const own = outsideMasses(parts, planes, { ...swap, balancedWith: 'own' });
    const neutral = outsideMasses(parts, planes, { ...swap, balancedWith: 'neutral' });
    expect(length(added(own.left.atA, neutral.left.atA))).toBeLessThan(1e-15);
    expect(direction(neutral.left.atA) / degrees).toBeCloseTo(198 - 360, 10);
    expect(neutral.greatest).toBe(0.008);
  });

  test('both parts exchanged leave all that they make', () => {
    const both = outsideMasses(parts, planes, { balancedWith: 'neutral', swappedPart: 'both' });
    expect(both.left).toEqual(both.made);
    expect(both.greatest).toBe(0.01);
  });

  test('the crank’s own weights against them and the parts together read nothing', () => {
    const { made } = outsideMasses(parts, planes, { balancedWith: 'own', swappedPart: 'both' });
    const { damper, flywheel } = weightedParts(parts);
    const crank = [
      { unbalance: length(made.atA), angle: direction(made.atA) + Math.PI, position: -0.2 },
      { unbalance: length(made.atB), angle: direction(made.atB) + Math.PI, position: 0.2 },
    ];
    const read = atPlanes([damper, flywheel, ...crank], { planeA: -0.1, planeB: 0.15 });
    expect(length(read.atA)).toBeLessThan(1e-15);
    expect(length(read.atB)).toBeLessThan(1e-15);
    // Their static part is that of both weights.
    expect(length(added(made.atA, made.atB))).toBeCloseTo(0.002, 14);
    expect(length(added(scaled(made.atA, -1), made.atB))).toBeGreaterThan(0.018);
  });
});
