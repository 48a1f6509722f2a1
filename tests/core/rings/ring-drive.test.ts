import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleAt, between, ringDrive, smoothly } from '../../../src/core/rings/ring-drive.ts';
import { evenly } from '../../evenly.ts';
import { hill } from './hill.ts';

const table = (of: (place: number) => number, count = 9): Float64Array =>
  Float64Array.from({ length: count }, (_, place) => of(place));

describe('a table read between its values', () => {
  it('is on a straight line between two of them', () => {
    fc.assert(
      fc.property(evenly(0, 8), evenly(-5, 5), (place, slope) => {
        expect(
          between(
            table((x) => 2 + slope * x),
            place,
          ),
        ).toBeCloseTo(2 + slope * place, 12);
        // A cubic through points of a line is that line, at both ends of the table as well.
        expect(
          smoothly(
            table((x) => 2 + slope * x),
            place,
          ),
        ).toBeCloseTo(2 + slope * place, 12);
      }),
    );
    expect(between(Float64Array.of(3, 7, 4), 1.25)).toBeCloseTo(6.25, 12);
  });

  it('is on a parabola where the values are: slopes at the values are half of the step over two', () => {
    fc.assert(
      fc.property(evenly(1, 7), (place) => {
        expect(
          smoothly(
            table((x) => 3 - x + 0.5 * x * x),
            place,
          ),
        ).toBeCloseTo(3 - place + 0.5 * place * place, 11);
      }),
    );
  });

  it('lies half-way at the four values weighed −1, 9, 9, −1 to 16', () => {
    const [a, b, c, d] = [2, -3, 8, 1] as const;
    const four = Float64Array.of(a, b, c, d);
    expect(smoothly(four, 1.5)).toBeCloseTo((-a + 9 * b + 9 * c - d) / 16, 12);
    // In the first and the last interval the missing value goes on straight.
    expect(smoothly(four, 0.5)).toBeCloseTo((-(2 * a - b) + 9 * a + 9 * b - c) / 16, 12);
    expect(smoothly(four, 2.5)).toBeCloseTo((-b + 9 * c + 9 * d - (2 * d - c)) / 16, 12);
    expect([0, 1, 2, 3].map((place) => smoothly(four, place))).toEqual([a, b, c, d]);
  });
});

describe('where a cycle is stepped to', () => {
  const steps = 5760;
  const each = steps / 180;
  const engine = { ...hill, crankcasePressure: 1e5 };
  const lengths = (nodes: readonly number[]): readonly number[] =>
    nodes.map((node, at) => node - (nodes[at - 1] ?? 0));

  it('is the end of every four degrees where nothing changes, from −π to 3π', () => {
    const drive = ringDrive(engine, new Float64Array(steps + 1).fill(2e5));
    expect(drive.nodes).toHaveLength(180);
    expect(new Set(lengths(drive.nodes))).toEqual(new Set([each]));
    expect(angleAt(drive, 0)).toBeCloseTo(-Math.PI, 12);
    expect(angleAt(drive, drive.nodes.at(-1) ?? 0)).toBeCloseTo(3 * Math.PI, 12);
    expect([drive.lowest, drive.highest]).toEqual([1e5, 2e5]);
  });

  it('is every two intervals round a jump, in the stretches beside it too, and nowhere closer', () => {
    const stretch = 90;
    const jump = stretch * each + 10;
    const pressure = table((place) => (place > jump ? 4e5 : 2e5), steps + 1);
    const { nodes } = ringDrive(engine, pressure);
    const inside = (node: number): boolean =>
      node > (stretch - 1) * each && node <= (stretch + 2) * each;
    nodes.forEach((node, at) => {
      expect(node - (nodes[at - 1] ?? 0)).toBe(inside(node) ? 2 : each);
    });
  });

  it('is so close that the pressure changes by 2.2 % at the most in a step', () => {
    // It rises by 0.2 % in every interval of one stretch: steps of 8 intervals change it by 1.6 %, of 16 by 3.2 %.
    const from = 40 * each;
    const pressure = table(
      (place) => 1e5 * 1.002 ** Math.min(Math.max(place - from, 0), each),
      steps + 1,
    );
    const { nodes } = ringDrive(engine, pressure);
    expect(lengths(nodes).filter((length) => length === 8)).toHaveLength((3 * each) / 8);
    expect(lengths(nodes).filter((length) => length === each)).toHaveLength(177);
  });
});
