import { describe, expect, it } from 'vitest';
import { sweep, sweepInSlices, sweepRange } from '../../src/calculators/sweep.ts';
import { beam, beamInput, entry } from './tiny.ts';
import { must } from './must.ts';

const request = { variable: 'span', output: 'stress', from: -0.5, to: 1.5, points: 5 };

describe('sweep', () => {
  it('follows the output and leaves a gap where the calculator refuses', () => {
    const { x, y } = sweep(beam, beamInput, request);
    expect(x).toEqual([-0.5, 0, 0.5, 1, 1.5]);
    expect(y.slice(0, 2)).toEqual([undefined, undefined]);
    expect(y.slice(2).map((value) => Number((must(value) / 1e7).toFixed(12)))).toEqual([
      0.5, 1, 1.5,
    ]);
  });

  it('leaves a gap where the output has no value', () => {
    const over = { ...request, variable: 'load', output: 'perLoad', from: -1, to: 1, points: 3 };
    expect(sweep(beam, beamInput, over).y).toEqual([-1, undefined, 1]);
  });

  it('ends exactly where it was asked to', () => {
    const { x } = sweep(beam, beamInput, { ...request, from: 0.1, to: 0.7, points: 7 });
    expect(x.at(-1)).toBe(0.7);
  });

  it('comes to the same in slices', () => {
    const slices = sweepInSlices(beam, beamInput, request);
    expect(slices.result().y).toEqual(Array(5).fill(undefined));
    [4, 2, 0, 3, 1].forEach((index) => slices.step(index));
    expect(slices.result()).toEqual(sweep(beam, beamInput, request));
  });

  it.each([
    ['a list', { ...request, variable: 'readings' }],
    ['a count', { ...request, variable: 'beams' }],
    ['one point', { ...request, points: 1 }],
  ])('refuses %s', (_, bad) => {
    expect(() => sweep(beam, beamInput, bad)).toThrow(RangeError);
  });
});

describe('the range a sweep opens with', () => {
  const span = entry('span', 'length', 'mm', [0, 5000], [100, 2000]);
  it('is the usual range', () => expect(sweepRange(span, 0.5)).toEqual([0.1, 2]));
  it('widens to the present values', () =>
    expect(sweepRange(span, 0.05, 3, Number.NaN)).toEqual([0.05, 3]));
  it('is never empty', () => {
    const [from, to] = sweepRange(entry('span', 'length', 'mm', [0, 0], [0, 0]), 0);
    expect(to).toBeGreaterThan(from);
  });
});
