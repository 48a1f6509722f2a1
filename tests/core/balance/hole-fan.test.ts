import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/counterweight-drilling/routes.ts';
import {
  axialSpacing,
  axialWall,
  placeFan,
  radialSpacing,
  radialWall,
  spreadFactor,
} from '../../../src/core/balance/hole-fan.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';

const degrees = Math.PI / 180;

describe('closed forms', () => {
  test('two holes at right angles are worth the half of √2, three at 120° nothing, one always itself', () => {
    expect(spreadFactor({ holeCount: 2, holeSpacing: 90 * degrees })).toBeCloseTo(Math.SQRT1_2, 15);
    expect(spreadFactor({ holeCount: 3, holeSpacing: 120 * degrees })).toBeCloseTo(0, 15);
    expect(spreadFactor({ holeCount: 1, holeSpacing: 1 })).toBe(1);
  });

  test('holes stand about the heavy spot while there is room, and at the edge of it beyond', () => {
    const fan = {
      holeCount: 3,
      holeSpacing: 20 * degrees,
      counterweightAngle: 180 * degrees,
      holeAngleLimit: 45 * degrees,
    };
    const near = placeFan(fan, { heavyAngle: 195 * degrees });
    expect([near.middle / degrees, near.aside]).toEqual([
      expect.closeTo(195, 12),
      expect.closeTo(0, 15),
    ]);
    // 45° less the 20° to the outermost hole.
    const beyond = placeFan(fan, { heavyAngle: 215 * degrees });
    expect(beyond.middle / degrees).toBeCloseTo(205, 10);
    expect(beyond.aside / degrees).toBeCloseTo(-10, 10);
    const before = placeFan(fan, { heavyAngle: (145 - 720) * degrees });
    expect(before.middle / degrees).toBeCloseTo(155, 10);
    expect(before.aside / degrees).toBeCloseTo(10, 10);
  });
});

test('second route: the factor is the length of the arrows added one by one', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 12 }), evenly(0.01, 1), (holeCount, holeSpacing) => {
      let [x, y] = [0, 0];
      for (let hole = 0; hole < holeCount; hole += 1) {
        x += Math.cos(hole * holeSpacing);
        y += Math.sin(hole * holeSpacing);
      }
      const factor = spreadFactor({ holeCount, holeSpacing });
      expect(Math.abs(factor)).toBeCloseTo(Math.hypot(x, y) / holeCount, 12);
    }),
  );
});

type Point = readonly [number, number, number];

/** Distance of a point from the axis of a hole that stands at an angle about z, and its place along that axis. */
function aboutHole(
  [x, y, z]: Point,
  angle: number,
): { readonly along: number; readonly off: number } {
  const along = x * Math.cos(angle) + y * Math.sin(angle);
  const side = -x * Math.sin(angle) + y * Math.cos(angle);
  return { along, off: Math.hypot(side, z) };
}

test(proves(routes.nearestWalls), () => {
  const reach = { shoulder: 0.05, tip: 0.045, half: 0.008 };
  /** How far outside the next hole a point lies: from the line of its cone, and from that of its cylinder. */
  const outside = (point: Point, angle: number): number => {
    const { along, off } = aboutHole(point, angle);
    const [length, height] = [reach.shoulder - reach.tip, reach.half];
    const on = ((along - reach.tip) * length + off * height) / (length ** 2 + height ** 2);
    const foot = Math.max(0, Math.min(1, on));
    const fromCone = Math.hypot(along - reach.tip - foot * length, off - foot * height);
    const fromCylinder = Math.hypot(Math.min(0, along - reach.shoulder), off - height);
    return Math.min(fromCone, fromCylinder);
  };
  for (const spacing of [20, 24, 40].map((each) => each * degrees)) {
    // The midway plane parts the holes evenly, so the least distance is twice that of a surface from it.
    let least = Infinity;
    let met = Infinity;
    for (let i = 0; i <= 200; i += 1)
      for (let round = 0; round < 180; round += 1) {
        const along = reach.tip + ((0.07 - reach.tip) * i) / 200;
        const part = Math.min(1, (along - reach.tip) / (reach.shoulder - reach.tip));
        const turn = (round * Math.PI) / 90;
        const [side, up] = [reach.half * part * Math.cos(turn), reach.half * part * Math.sin(turn)];
        least = Math.min(least, along * Math.sin(spacing / 2) - side * Math.cos(spacing / 2));
        met = Math.min(met, outside([along, side, up], spacing));
      }
    const wall = radialWall(reach, spacing);
    // Points stand 0.13 mm apart along the hole.
    expect(wall).toBeGreaterThan(2 * least - 1e-4);
    expect(wall).toBeLessThan(2 * least + 1e-4);
    // No point of one hole lies nearer to the other than the wall, and for parted holes one lies about as near.
    expect(met).toBeGreaterThan(wall - 1e-9);
    expect(met).toBeLessThan(wall + 2e-3);
  }
});

test('the spacing that leaves a wall leaves it', () => {
  fc.assert(
    fc.property(
      evenly(0.02, 0.09),
      evenly(0.1, 0.9),
      evenly(0.05, 0.4),
      evenly(0, 0.99),
      (shoulder, tipShare, halfShare, wallShare) => {
        const reach = { shoulder, tip: tipShare * shoulder, half: halfShare * shoulder };
        // Between tips that stand as far from the axis as they do, no more than twice that can be left.
        const wall = wallShare * Math.min(2 * reach.tip, shoulder);
        const spacing = radialSpacing(reach, wall);
        expect(radialWall(reach, spacing)).toBeCloseTo(wall, 12);
        const flat = axialSpacing(shoulder, reach.half, wall);
        expect(axialWall(shoulder, reach.half, flat)).toBeCloseTo(wall, 12);
      },
    ),
  );
  // Where nothing leaves it, half a turn is said.
  expect(axialSpacing(0.02, 0.03, 0)).toBeCloseTo(Math.PI, 12);
  expect(radialSpacing({ shoulder: 0.001, tip: 0.0005, half: 0.001 }, 0.1)).toBeCloseTo(
    Math.PI,
    12,
  );
});

test('no wall is wanted at all: cones may touch the midway plane at their tips', () => {
  const reach = { shoulder: 0.05, tip: 0, half: 0.005 };
  expect(radialSpacing(reach, 0)).toBeCloseTo(2 * Math.atan2(0.005, 0.05), 15);
});
