import { describe, expect, test } from 'vitest';
import {
  campbellOf,
  crossingsOf,
  drawnOrders,
} from '../../../../src/components/figures/torsion/campbell-diagram.ts';
import {
  drawnMode,
  modeOf,
  nodeWords,
  placeName,
} from '../../../../src/components/figures/torsion/crank-modes.ts';
import type { FigureSet } from '../../../../src/components/figures/types.ts';

const set: FigureSet = {
  input: { maxSpeed: 600 },
  output: {
    firstFrequency: 300,
    secondFrequency: 450,
    firingRate: 4,
    nearOrder: 3,
    firstShape: { x: [-1, 0, 1, 2, 3], y: [1, 0.2, 0.1, -0.1, -0.2] },
    secondShape: { x: [0, 1, 2], y: [-0.5, 0, 1] },
    firstSums: { x: [3, 4, 8], y: [0.4, 0.9, 0.1] },
    secondSums: { x: [3, 4, 8], y: [0.2, 1, 1] },
  },
  stale: false,
};
const empty: FigureSet = { input: undefined, output: undefined, stale: true };

describe('a mode as it is drawn', () => {
  test('is beside what swings most of the crank, the ring too, and its nose is upwards', () => {
    const first = drawnMode(set, 'first');
    expect(first?.crank.map(({ swing }) => swing)).toEqual([1, 0.5, -0.5, -1]);
    expect(first?.ring).toBe(5);
    expect(first?.nodes).toEqual([1.5]);
    const second = drawnMode(set, 'second');
    expect(second?.crank[0]?.swing).toBe(0.5);
    expect(second?.ring).toBeUndefined();
    expect(second?.nodes).toEqual([1]);
  });

  test('is none without a result', () => {
    expect(drawnMode(empty, 'first')).toBeUndefined();
    expect(modeOf('second').frequency).toBe('secondFrequency');
  });

  test('names its places', () => {
    expect([0, 2, 5].map((place) => placeName(place, 5))).toEqual(['hub', 'throw 2', 'flywheel']);
    expect(nodeWords(3.6, 5)).toBe('between throw 3 and throw 4');
    expect(nodeWords(4.5, 5)).toBe('between throw 4 and flywheel');
    expect(nodeWords(3, 5)).toBe('at throw 3');
  });
});

describe('a Campbell diagram', () => {
  test('draws the orders of firing, twice that, and those nearest to a redline', () => {
    const own = campbellOf(set);
    if (own === undefined) throw new Error('the set has a result');
    expect(drawnOrders([own, { ...own, nearOrder: 2.5 }])).toEqual([2.5, 3, 4, 8]);
    const crossings = crossingsOf(own, [3, 4, 8], 800);
    expect(crossings.map(({ mode, order }) => [mode, order])).toEqual([
      [1, 4],
      [0, 3],
      [0, 4],
      [1, 8],
    ]);
    for (const { speed, order, frequency } of crossings)
      expect((speed * order) / (2 * Math.PI)).toBeCloseTo(frequency, 9);
    expect(crossingsOf(own, [3, 4, 8], 500).map(({ order }) => order)).toEqual([4, 8]);
  });

  test('is none without a result', () => {
    expect(campbellOf(empty)).toBeUndefined();
  });
});
