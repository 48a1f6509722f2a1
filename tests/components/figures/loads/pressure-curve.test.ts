import { describe, expect, test } from 'vitest';
import { cylinderPressure } from '../../../../src/calculators/loads/cylinder-pressure.ts';
import {
  curveOf,
  eventsOf,
  indicator,
  logarithms,
  slice,
} from '../../../../src/components/figures/loads/pressure-curve.ts';
import { pointsOf } from '../../../../src/components/figures/read.ts';
import {
  keepTrace,
  resultsIn,
  storedTrace,
} from '../../../../src/components/figures/loads/trace-panel.ts';
import type { FigureSet } from '../../../../src/components/figures/types.ts';
import { evaluate } from '../../../../src/notebook/evaluation.ts';
import { toSI } from '../../../../src/units/units.ts';

const { input, output } = evaluate(cylinderPressure, (entry) => ({
  text: entry.demo.baseline,
  unit: entry.type === 'choice' ? '' : entry.metric,
}));
if (input === undefined || output === undefined) throw new Error('the example must compute');
const road: FigureSet = { input, output, stale: false };
const empty: FigureSet = { input: undefined, output: undefined, stale: false };

/** Slope of the straight line between the first and the last point. */
function slope({ x, y }: { x: readonly number[]; y: readonly number[] }): number {
  return ((y.at(-1) ?? 0) - (y[0] ?? 0)) / ((x.at(-1) ?? 0) - (x[0] ?? 0));
}

describe('the pressure figure', () => {
  test('marks the events where the valves and the burn stand', () => {
    const events = eventsOf(road, 'baseline').map(({ at, label }) => [label, Math.round(at)]);
    expect(events).toEqual([
      ['intake closes', -118],
      ['burn starts', -21],
      ['exhaust opens', 116],
      ['intake opens', 338],
    ]);
    expect(eventsOf(empty, 'baseline')).toEqual([]);
  });

  test('shows the part of the curve that was asked for', () => {
    const part = slice(curveOf(road, 'bar'), -90, 150);
    expect(part.x).toHaveLength(241);
    expect([part.x[0], part.x.at(-1)].map((at) => Math.round(at ?? 0))).toEqual([-90, 150]);
    expect(Math.max(...part.y)).toBeCloseTo(53.4, 1);
    expect(curveOf(empty, 'bar').x).toHaveLength(0);
  });

  test('on logarithms the slopes are the exponents', () => {
    const pressure = curveOf(road, 'bar');
    const volume = pointsOf(road.output, 'volumeCurve', 'deg', 'cm3');
    expect(slope(logarithms(pressure, volume, -117, -22))).toBeCloseTo(-1.32, 9);
    expect(slope(logarithms(pressure, volume, 34, 115))).toBeCloseTo(-1.27, 9);
  });
});

describe('the trace beside it', () => {
  test('in the cylinder of the set gives what the model gives', () => {
    const curve = pointsOf(road.output, 'pressureCurve', 'rad', 'Pa');
    const trace = {
      angle: Float64Array.from(curve.x),
      pressure: Float64Array.from({ length: curve.x.length }, (_, i) => curve.y[i] ?? 0),
    };
    const results = resultsIn(road, trace);
    expect((results?.netMep ?? 0) / 1e5).toBeCloseTo(11.35, 1);
    expect(results?.peak.angle ?? 0).toBeCloseTo(toSI(15.3, 'deg'), 2);
    expect(resultsIn(empty, trace)).toBeUndefined();
    expect(resultsIn({ ...road, input: { ...input, rodLength: 0.001 } }, trace)).toBeUndefined();
  });

  test('without a browser’s storage nothing is kept and nothing breaks', () => {
    expect(storedTrace()).toBe('');
    expect(keepTrace('0;1')).toBe(false);
  });
});

describe('pressure over volume', () => {
  const angles = Array.from({ length: 25 }, (_, i) => -180 + 30 * i);
  const volume = { x: angles, y: angles.map((at) => 300 - 250 * Math.cos((at * Math.PI) / 180)) };
  const pressure = {
    x: angles,
    y: angles.map((at) => 1 + Math.abs(at) / 100 + (at === 30 ? 50 : 0)),
  };

  test('has one line for each stroke, each rising in volume, the power stroke first', () => {
    const parts = indicator(pressure, volume, -180, 540);
    expect(parts).toHaveLength(4);
    for (const { x } of parts) expect(x).toEqual([...x].sort((a, b) => a - b));
    expect(Math.max(...(parts[0]?.y ?? []))).toBeCloseTo(51.3, 12);
  });

  test('keeps to the part of the cycle that is shown', () => {
    expect(indicator(pressure, volume, 200, 540)).toHaveLength(2);
    expect(indicator(pressure, volume, -90, 150).map(({ x }) => x.length)).toEqual([6, 4]);
  });
});
