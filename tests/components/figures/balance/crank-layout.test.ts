import { describe, expect, test } from 'vitest';
import {
  crankLayouts,
  throwsOf,
} from '../../../../src/calculators/balance/crank-layout.choices.ts';
import {
  drawnLayouts,
  spokesOf,
  stationsOf,
} from '../../../../src/components/figures/balance/crank-layout.ts';
import { crankPins } from '../../../../src/core/balance/crank-pins.ts';
import type { FigureSet } from '../../../../src/components/figures/types.ts';

const set = (layout?: string): FigureSet => ({
  input: layout === undefined ? undefined : { crankLayout: layout },
  output: {},
  stale: false,
});

test('a layout that both sets have is drawn once, two are drawn apart, none is not', () => {
  expect(drawnLayouts({ baseline: set('v8-cross'), candidate: set('v8-cross') })).toEqual([
    { layout: 'v8-cross', sets: ['baseline', 'candidate'] },
  ]);
  expect(drawnLayouts({ baseline: set('single'), candidate: set('flat-6') })).toEqual([
    { layout: 'single', sets: ['baseline'] },
    { layout: 'flat-6', sets: ['candidate'] },
  ]);
  expect(drawnLayouts({ baseline: set(), candidate: set('no-such') })).toEqual([]);
});

test('throws behind one another are one spoke with all their numbers', () => {
  expect(spokesOf(throwsOf('inline-6')).map(({ numbers }) => numbers)).toEqual([
    [1, 6],
    [2, 5],
    [3, 4],
  ]);
  // A whole turn further is the same direction, half a turn is not.
  const throws = [0, 2 * Math.PI, Math.PI].map((angle) => ({ angle, position: 0, banks: [0] }));
  expect(spokesOf(throws).map(({ numbers }) => numbers)).toEqual([[1, 2], [3]]);
});

describe.each(crankLayouts)('the pins of %s along its length', (id) => {
  const throws = throwsOf(id);
  const stations = stationsOf(throws);

  test('are each there once, from the nose on, with every throw under its number', () => {
    const places = stations.map(({ position }) => position);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places).toHaveLength(crankPins(throws).pins);
    const drawn = stations.flatMap(({ position, spokes }) =>
      spokes.map(({ angle, numbers }) => ({ angle, position, numbers })),
    );
    expect(drawn).toEqual(
      throws.map(({ angle, position }, at) => ({ angle, position, numbers: [at + 1] })),
    );
  });
});
