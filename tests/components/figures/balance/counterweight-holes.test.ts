import { expect, test } from 'vitest';
import { counterweightDrilling } from '../../../../src/calculators/balance/counterweight-drilling.ts';
import {
  drawnHoles,
  halfAngle,
  holePath,
  outlinePath,
  reachOf,
  type DrawnHoles,
} from '../../../../src/components/figures/balance/counterweight-holes.ts';
import type { FigureSet } from '../../../../src/components/figures/types.ts';

const degrees = Math.PI / 180;
const input = {
  unbalanceRead: 4.2e-3,
  heavyAngle: 188 * degrees,
  holeKind: 'radial',
  holeDiameter: 0.0141,
  holeCount: 3,
  counterweightRadius: 0.074,
  counterweightWidth: 0.019,
  counterweightAngle: 180 * degrees,
  steelDensity: 7850,
  drillList: 'metric',
  pointAngle: 118 * degrees,
  holeSpacing: 24 * degrees,
  holeAngleLimit: 50 * degrees,
  depthLimit: 0.025,
  keepOutRadius: 0.04,
  holeWall: 0.002,
  axialHoleRadius: 0.062,
} as const;
const set: FigureSet = { input, output: counterweightDrilling.compute(input), stale: false };

/** The holes of the example; fails where there are none. */
function holes(): DrawnHoles {
  return drawnHoles(set) ?? expect.fail('no holes');
}

test('holes are drawn as they are worked, under the name of their drill', () => {
  expect(holes()).toMatchObject({
    isRadial: true,
    drill: '14\u00a0mm',
    diameter: 0.014,
    radius: 0.074,
  });
  const angles = holes().angles.map((angle) => Math.round(angle / degrees));
  expect(angles).toEqual([164, 188, 212]);
  expect(drawnHoles({ ...set, output: undefined })).toBeUndefined();
  expect(drawnHoles({ ...set, input: { ...input, drillList: 'no-such' } })).toBeUndefined();
});

test('a hole is to scale: rim, shoulder and tip stand where they are worked', () => {
  const { depth, tipDepth } = holes();
  const numbers =
    holePath(holes(), 1000)
      .match(/-?[\d.]+/gu)
      ?.map(Number) ?? [];
  const [left, rim, shoulder, , tip, right] = numbers;
  expect([left, right]).toEqual([-7, 7]);
  expect(rim).toBeCloseTo(-Math.sqrt(74 ** 2 - 7 ** 2), 2);
  expect(shoulder).toBeCloseTo(-(74 - 1000 * depth), 2);
  expect(tip).toBeCloseTo(-(74 - 1000 * tipDepth), 2);
});

test('the counterweight is wide enough for the holes that are allowed, and stands within its reach', () => {
  expect(halfAngle(holes())).toBeGreaterThan(50 * degrees + Math.asin(7 / 74));
  expect(outlinePath(holes(), 1000)).toMatch(/^M[-\d. ]+A74 74 0 0 1 /u);
  const { up, down } = reachOf(holes(), 1000, 20);
  // Its middle is down: there the words stand below the rim, up there is only throw 1.
  expect(down).toBeCloseTo(94, 1);
  expect(up).toBeCloseTo(74, 1);
});
