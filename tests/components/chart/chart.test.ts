import { ticks as reference } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  curvePath,
  heightAt,
  labelPlace,
  markPlaces,
  pointPlace,
} from '../../../src/components/chart/curve.ts';
import { csvText } from '../../../src/components/chart/download.ts';
import { chartRows, gapsOf, thinned } from '../../../src/components/chart/rows.ts';
import { ticks } from '../../../src/components/chart/ticks.ts';
import { affine, niceDomain, tickDecimals } from '../../../src/components/chart/scale.ts';

/** A value that must be there for the test to mean anything. */
function must<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('expected a value');
  return value;
}

const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });

test('ticks are those of d3-array', () => {
  expect(ticks(0, 1, 5)).toEqual([0, 0.2, 0.4, 0.6, 0.8, 1]);
  expect(ticks(5, 5, 4)).toEqual([]);
  fc.assert(
    fc.property(
      number,
      fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
      fc.integer({ min: 3, max: 12 }),
      (from, wide, count) => {
        // Ends that are themselves round but for rounding may count as reached here and not there.
        fc.pre(wide > 1e-6 * Math.abs(from));
        const ours = ticks(from, from + wide, count);
        const theirs = reference(from, from + wide, count);
        const inner = (list: readonly number[]): number[] =>
          list.filter((t) => t > from + 1e-6 * wide && t < from + (1 - 1e-6) * wide);
        expect(inner(ours)).toEqual(inner(theirs));
      },
    ),
  );
});

describe('affine', () => {
  test('maps the ends of the domain onto the ends of the range', () => {
    const scale = affine([0, 360], [40, 400], 4);
    expect(scale.at(0)).toBe(40);
    expect(scale.at(360)).toBe(400);
    expect(scale.at(90)).toBe(130);
  });

  test('is undone by invert', () => {
    fc.assert(
      fc.property(number, number, number, (from, to, value) => {
        fc.pre(Math.abs(to - from) > 1e-3);
        const scale = affine([from, to], [0, 500], 5);
        // A position of 500 units holds the value to about 1e-13 of the domain's size and the value's.
        const slack = 1e-9 * (1 + Math.abs(from) + Math.abs(to) + Math.abs(value));
        expect(Math.abs(scale.invert(scale.at(value)) - value)).toBeLessThan(slack);
      }),
    );
  });

  test('never divides by a domain of no width', () => {
    expect(affine([5, 5], [0, 100], 3).at(5)).toBe(50);
  });
});

describe('niceDomain', () => {
  test('widens to the next tick and holds what must be shown', () => {
    expect(niceDomain([[3, 97]], 5)).toEqual([0, 100]);
    expect(niceDomain([[20_609, -12_182]], 3)).toEqual([-20_000, 30_000]);
    expect(niceDomain([[12, 18]], 3, [0])[0]).toBe(0);
  });

  test('passes over gaps, and knows what to do without a number', () => {
    expect(niceDomain([[undefined, Number.NaN, 3, 97]], 5)).toEqual([0, 100]);
    expect(niceDomain([[undefined]], 5)).toEqual([0, 1]);
    expect(niceDomain([[0, 0]], 5)).toEqual([0, 1]);
    expect(niceDomain([[7, 7]], 5)).toEqual([0, 7]);
  });

  test('contains every finite number', () => {
    fc.assert(
      fc.property(fc.array(number, { minLength: 1 }), (list) => {
        const [low, high] = niceDomain([list], 5);
        // The ends are rounded to twelve figures so that ticks read well; below 1e-200 all is zero.
        const slack = 1e-200 + 1e-11 * Math.max(...list.map(Math.abs));
        expect(low).toBeLessThanOrEqual(Math.min(...list) + slack);
        expect(high).toBeGreaterThanOrEqual(Math.max(...list) - slack);
        expect(high).toBeGreaterThan(low);
      }),
    );
  });
});

test('ticks get the decimals that keep them apart, and no more', () => {
  expect(tickDecimals([0, 20, 40])).toBe(0);
  expect(tickDecimals([0, 0.5, 1])).toBe(1);
  expect(tickDecimals([0, 0.02, 0.04])).toBe(2);
  expect(tickDecimals([0.1, 0.2, 0.30000000000000004])).toBe(1);
  expect(tickDecimals([4])).toBe(0);
});

describe('curvePath', () => {
  const x = affine([0, 10], [0, 100], 5);
  const y = affine([0, 10], [100, 0], 5);

  test('draws from point to point', () => {
    expect(curvePath({ x: [0, 5, 10], y: [0, 5, 10] }, x, y)).toBe('M0 100L50 50L100 0');
  });

  test('opens a gap where there is no height', () => {
    const path = curvePath({ x: [0, 1, 2, 3, 4], y: [1, 2, undefined, 4, Number.NaN] }, x, y);
    expect(path).toBe('M0 90L10 80M30 60');
  });

  test('thins a long list but keeps its ends', () => {
    const many = Array.from({ length: 1441 }, (_, i) => i / 144);
    const path = curvePath({ x: many, y: many }, x, y);
    expect(path.split('L').length).toBeLessThanOrEqual(362);
    expect(path.startsWith('M0 100')).toBe(true);
    expect(path.endsWith('L100.1 -0.1') || path.endsWith('L100 0')).toBe(true);
  });

  test('an empty curve has an empty path', () => {
    expect(curvePath({ x: [], y: [] }, x, y)).toBe('');
  });
});

describe('heightAt', () => {
  const points = { x: [0, 1, 2, 4], y: [0, 10, undefined, 30] };

  test('reads points exactly and lies on the line between them', () => {
    expect(heightAt(points, 1)).toBe(10);
    expect(heightAt(points, 0.25)).toBe(2.5);
    expect(heightAt(points, 4)).toBe(30);
  });

  test('says nothing in a gap and outside', () => {
    expect(heightAt(points, 1.5)).toBeUndefined();
    expect(heightAt(points, 3)).toBeUndefined();
    expect(heightAt(points, -0.1)).toBeUndefined();
    expect(heightAt(points, 4.1)).toBeUndefined();
    expect(heightAt({ x: [], y: [] }, 0)).toBeUndefined();
  });
});

describe('places of marks and words', () => {
  const x = affine([0, 100], [0, 400], 5);
  const y = affine([0, 100], [200, 0], 5);
  const low = { x: [0, 100], y: [20, 20] };
  const high = { x: [0, 100], y: [70, 70] };

  test('marks of two curves never fall together', () => {
    const first = markPlaces([0, 360], 6, 0.3);
    const second = markPlaces([0, 360], 6, 0.7);
    expect(first).toHaveLength(6);
    for (const place of first)
      expect(second.every((other) => Math.abs(other - place) > 20)).toBe(true);
  });

  test('a word stays inside the plot and clear of the other curve', () => {
    const place = must(labelPlace(high, [low], x, y, 30));
    expect(place.x).toBeGreaterThanOrEqual(30);
    expect(place.x).toBeLessThanOrEqual(370);
    expect(Math.abs(place.y - y.at(20))).toBeGreaterThan(20);
  });

  test('two words of curves that coincide are not written over each other', () => {
    const first = must(labelPlace(high, [high], x, y, 30));
    const second = must(labelPlace(high, [high], x, y, 30, [first]));
    const apart = Math.abs(first.x - second.x) > 60 || Math.abs(first.y - second.y) > 10;
    expect(apart).toBe(true);
  });

  test('an empty curve gets no word', () => {
    expect(labelPlace({ x: [], y: [] }, [], x, y, 30)).toBeUndefined();
  });

  test('the word of a point at the right edge goes to its left', () => {
    expect(pointPlace([395, 100], 60, [low], x, y).anchor).toBe('end');
    expect(pointPlace([5, 100], 60, [low], x, y).anchor).toBe('start');
  });
});

describe('the table of a chart', () => {
  test('has a row for every place that any curve knows', () => {
    const rows = chartRows([
      { x: [0, 2], y: [0, 20] },
      { x: [0, 1, 3], y: [5, 6, 8] },
    ]);
    expect(rows.map((row) => row.x)).toEqual([0, 1, 2, 3]);
    expect(rows[1]?.heights).toEqual([10, 6]);
    expect(rows[3]?.heights).toEqual([undefined, 8]);
  });

  test('is thinned evenly, first and last kept', () => {
    const rows = Array.from({ length: 101 }, (_, i) => i);
    const few = thinned(rows, 25);
    expect(few[0]).toBe(0);
    expect(few.at(-1)).toBe(100);
    expect(few.length).toBeLessThanOrEqual(26);
    expect(thinned([1, 2, 3], 25)).toEqual([1, 2, 3]);
  });
});

test('a cell with a comma, a quote or a line break is quoted as RFC 4180 asks', () => {
  expect(csvText([['a', 'speed, m/s', 'say "TDC"', 'two\nlines']])).toBe(
    'a,"speed, m/s","say ""TDC""","two\nlines"\r\n',
  );
});

test('the gaps of a curve, from the first to the last place of each', () => {
  const x = [0, 1, 2, 3, 4, 5];
  expect(gapsOf({ x, y: [undefined, undefined, 5, undefined, 6, undefined] })).toEqual([
    [0, 1],
    [3, 3],
    [5, 5],
  ]);
  expect(gapsOf({ x, y: [1, 2, 3, 4, 5, 6] })).toEqual([]);
});
