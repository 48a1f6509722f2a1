import { expect, test } from 'vitest';
import { planeTransfer } from '../../../../src/calculators/balance/plane-transfer.ts';
import {
  drawnPlanes,
  largestOf,
  planesOf,
  stretchOf,
} from '../../../../src/components/figures/balance/plane-arrows.ts';
import type { FigureSet } from '../../../../src/components/figures/types.ts';

const reading = {
  planeUnbalanceA: 4.2e-3,
  planeAngleA: 3,
  planeA: -0.194,
  planeUnbalanceB: 3.1e-3,
  planeAngleB: 0.5,
  planeB: 0.194,
  bearingSpan: 0.4,
  newPlaneA: -0.12,
  newPlaneB: 0.232,
};

function set(change: Partial<Parameters<typeof planeTransfer.compute>[0]> = {}): FigureSet {
  const input = { ...reading, ...change };
  return { input, output: planeTransfer.compute(input), stale: false };
}
const none: FigureSet = { input: undefined, output: undefined, stale: false };

test('known planes and new ones are drawn with what they hold, a third one where there is one', () => {
  const drawn = drawnPlanes(set());
  expect(drawn?.known.map(({ id }) => id)).toEqual(['A', 'B']);
  expect(drawn?.moved.map(({ id, place }) => [id, place])).toEqual([
    ['A*', -0.12],
    ['B*', 0.232],
  ]);
  const third = set({ thirdUnbalance: 0.01, thirdAngle: 1, thirdPlace: 0.25 });
  expect(drawnPlanes(third)?.known[2]).toMatchObject({ id: '3', place: 0.25, size: 0.01 });
  expect(drawnPlanes(none)).toBeUndefined();
});

test('a plane that both sets have at one place is drawn once', () => {
  const sets = { baseline: drawnPlanes(set()), candidate: drawnPlanes(set({ newPlaneB: 0.1 })) };
  expect(planesOf(sets).map(({ id, sets: of }) => [id, of.length])).toEqual([
    ['A', 2],
    ['B', 2],
    ['A*', 2],
    ['B*', 1],
    ['B*', 1],
  ]);
});

test('the drawing reaches beyond the outermost of planes and bearings', () => {
  const sets = { baseline: drawnPlanes(set()), candidate: undefined };
  const [from, to] = stretchOf(planesOf(sets), [0.4]);
  expect(from).toBeCloseTo(-0.2 - 0.06 * 0.432, 12);
  expect(to).toBeCloseTo(0.232 + 0.06 * 0.432, 12);
});

test('all arrows are drawn to the largest of both sets; none is as long as nothing', () => {
  const baseline = drawnPlanes(set());
  const most = Math.max(4.2e-3, ...(baseline?.moved ?? []).map(({ size }) => size));
  expect(largestOf({ baseline, candidate: undefined })).toBe(most);
  expect(largestOf({ baseline: undefined, candidate: undefined })).toBe(0);
  const empty = set({ planeUnbalanceA: 0, planeUnbalanceB: 0 });
  expect(largestOf({ baseline: drawnPlanes(empty), candidate: undefined })).toBe(0);
});
