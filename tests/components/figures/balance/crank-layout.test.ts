import { describe, expect, test } from 'vitest';
import {
  crankLayouts,
  throwsOf,
} from '../../../../src/calculators/balance/crank-layout.choices.ts';
import {
  drawnLayouts,
  sideView,
  spokesOf,
} from '../../../../src/components/figures/balance/crank-layout.ts';
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

describe.each(crankLayouts)('%s from the side', (id) => {
  const throws = throwsOf(id);
  const { wire, pins, end } = sideView(throws, 0.5);

  test('has every pin on its wire, in order, between both ends', () => {
    expect(pins.map(({ number }) => number)).toEqual(throws.map((_, at) => at + 1));
    for (const { spot, half } of pins)
      for (const x of [spot.x - half, spot.x + half])
        expect(wire.some((one) => one.x === x && one.y === spot.y)).toBe(true);
    expect(wire[0]).toEqual({ x: 0, y: 0 });
    expect(wire.at(-1)).toEqual({ x: end, y: 0 });
  });

  test('shows a throw that points up above the axis, and one that points down below it', () => {
    for (const [at, { angle }] of throws.entries()) {
      const up = Math.cos(angle);
      // Beside the axis the depth decides.
      if (Math.abs(up) > 0.5) expect(Math.sign(pins[at]?.spot.y ?? 0)).toBe(-Math.sign(up));
    }
  });
});
