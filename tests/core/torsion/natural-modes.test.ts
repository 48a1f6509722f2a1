import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/crank-torsion/routes.ts';
import { at } from '../../../src/core/math/at.ts';
import {
  frequenciesBelow,
  inertiaSeenAt,
  naturalModes,
  nodesOf,
} from '../../../src/core/torsion/natural-modes.ts';
import { holzerTable, reversed, type ShaftLine } from '../../../src/core/torsion/shaft-line.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';
import { jacobiModes } from './jacobi.ts';

const hertz = (line: ShaftLine): readonly number[] =>
  naturalModes(line).map(({ frequency }) => frequency);
/** In rad/s, as textbooks have them. */
const frequencies = (line: ShaftLine): readonly number[] =>
  hertz(line).map((each) => 2 * Math.PI * each);

/** Lines of two to ten inertias, whose parts differ by a hundred times. */
const lines: fc.Arbitrary<ShaftLine> = fc
  .array(fc.tuple(evenly(-2, 0), evenly(4, 6)), { minLength: 2, maxLength: 10 })
  .map((parts) => ({
    lineInertias: parts.map(([J]) => 10 ** J),
    lineStiffnesses: parts.slice(1).map(([, k]) => 10 ** k),
  }));

describe('published values', () => {
  // W. T. Thomson, Theory of Vibration with Applications, table 12.4-1, as read.
  const thomson = { lineInertias: [5, 11, 22], lineStiffnesses: [0.1e6, 0.2e6] };
  test.each([
    [20, [1, 0.98, 0.9484], [2.0e3, 6.312e3, 14.66e3]],
    [40, [1, 0.92, 0.799], [8.0e3, 24.19e3, 52.32e3]],
  ])('Thomson’s table at %d rad/s', (omega, amplitudes, torques) => {
    const trialFrequency = omega / (2 * Math.PI);
    const rows = holzerTable(thomson, { trialFrequency });
    for (const [i, { amplitude, torque }] of rows.entries()) {
      // Printed to four figures.
      expect(amplitude).toBeCloseTo(at(amplitudes, i), 4);
      expect(Math.abs(torque / at(torques, i) - 1)).toBeLessThan(3e-4);
    }
  });

  test('Thomson’s three discs: 123.666 and 202.658 rad/s, from memory', () => {
    const [first = 0, second = 0] = frequencies(thomson);
    expect(first).toBeCloseTo(123.666, 3);
    expect(second).toBeCloseTo(202.658, 3);
  });

  test('three rotors on a shaft of 70 mm: 171 and 277 Hz, nodes at 0.4356 m and 0.726 m', () => {
    // A public question page on torsionally equivalent shafts, as read.
    const GJ = (84e9 * Math.PI * 0.07 ** 4) / 32;
    const line = { lineInertias: [0.15, 0.3, 0.09], lineStiffnesses: [GJ / 1.5, GJ] };
    const [first = 0, second = 0] = hertz(line);
    expect(Math.round(first)).toBe(171);
    expect(Math.round(second)).toBe(277);
    const [before = 0, behind = 0] = nodesOf(at(naturalModes(line), 1).shape);
    // Printed from rounded values: 0.43567 is printed as 0.4356.
    expect(before * 1.5).toBeCloseTo(0.4356, 3);
    expect(2 - behind).toBeCloseTo(0.726, 3);
  });

  test('nine rotors of a ship: one frequency between 8000 and 8500 a minute', () => {
    // A public coursework sheet, as read; it states the two bounds.
    const line = {
      lineInertias: [4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 2, 4],
      lineStiffnesses: [1e7, 1.4e7, 1.4e7, 1.4e7, 1.4e7, 1.4e7, 2e7, 2e7],
    };
    const between = hertz(line).filter((each) => each * 60 > 8000 && each * 60 < 8500);
    expect(between).toHaveLength(1);
  });
});

describe('closed forms and limits', () => {
  test(proves(routes.fewRotors), () => {
    const two = { lineInertias: [0.02, 0.16], lineStiffnesses: [5e5] };
    expect(at(frequencies(two), 0)).toBeCloseTo(Math.sqrt(5e5 * (1 / 0.02 + 1 / 0.16)), 8);
    const [[a, b, c], [k, l]] = [[0.02, 0.05, 0.2] as const, [5e5, 9e5] as const];
    const sum = k / a + (k + l) / b + l / c;
    const product = k * l * ((a + b + c) / (a * b * c));
    const root = Math.sqrt(sum ** 2 - 4 * product);
    const three = frequencies({ lineInertias: [a, b, c], lineStiffnesses: [k, l] });
    expect(at(three, 0)).toBeCloseTo(Math.sqrt((sum - root) / 2), 7);
    expect(at(three, 1)).toBeCloseTo(Math.sqrt((sum + root) / 2), 7);
    for (let n = 2; n <= 10; n++) {
      const equal = {
        lineInertias: new Array<number>(n).fill(0.02),
        lineStiffnesses: new Array<number>(n - 1).fill(5e5),
      };
      for (const [i, each] of frequencies(equal).entries()) {
        const right = 2 * Math.sqrt(5e5 / 0.02) * Math.sin(((i + 1) * Math.PI) / (2 * n));
        // Rounding of a few tens of operations.
        expect(Math.abs(each / right - 1)).toBeLessThan(1e-14);
      }
    }
  });

  test('a middle inertia that stands still is a node', () => {
    const [first, second] = naturalModes({ lineInertias: [1, 2, 1], lineStiffnesses: [4, 4] });
    expect(first?.frequency).toBeCloseTo(1 / Math.PI, 15);
    const rounded = (shape: readonly number[] = []): readonly number[] =>
      shape.map((each) => Math.round(each * 1e12) / 1e12 + 0);
    expect(rounded(first?.shape)).toEqual([1, 0, -1]);
    expect(nodesOf([1, 0, -1])).toEqual([1]);
    expect(rounded(second?.shape)).toEqual([1, -1, 1]);
  });

  test('a node lies between two swings of unlike sign, and nowhere else', () => {
    expect(nodesOf([1, -1])).toEqual([0.5]);
    expect(nodesOf([1, 0.5])).toEqual([]);
    expect(nodesOf([1, -1, 1])).toEqual([0.5, 1.5]);
  });

  test('two ends that hardly know of each other: one frequency as near as doubles go, and both shapes', () => {
    const line = { lineInertias: [1, 1, 1e9, 1, 1], lineStiffnesses: [1e6, 1, 1, 1e6] };
    const [slow1 = 0, slow2 = 0, fast1 = 0, fast2 = 0] = frequencies(line);
    expect(slow2 / slow1).toBeCloseTo(1, 7);
    expect(fast2 / fast1).toBeCloseTo(1, 12);
    for (const { shape } of naturalModes(line)) expect(shape.every(Number.isFinite)).toBe(true);
  });

  test('a very soft spring keeps its figures beside stiff ones', () => {
    const line = { lineInertias: [0.01, 0.01, 0.01], lineStiffnesses: [1e9, 1e-3] };
    // 0.02 against 0.01 on the soft spring; the stiff one gives by a part in 10¹².
    expect(at(frequencies(line), 0)).toBeCloseTo(Math.sqrt(1e-3 * (1 / 0.02 + 1 / 0.01)), 9);
  });

  test('what a line amounts to at an inertia that swings most is at least that inertia', () => {
    const line = { lineInertias: [0.02, 0.16], lineStiffnesses: [5e5] };
    const { shape } = at(naturalModes(line), 0);
    expect(inertiaSeenAt(line, shape, 0)).toBeCloseTo(0.02 + 0.02 ** 2 / 0.16, 12);
  });
});

describe('properties', () => {
  test(proves(routes.linesScale), () => {
    fc.assert(
      fc.property(lines, evenly(0.2, 5), fc.nat(9), (line, by, which) => {
        const own = frequencies(line);
        const stiffer = { ...line, lineStiffnesses: line.lineStiffnesses.map((k) => k * by ** 2) };
        for (const [i, each] of frequencies(stiffer).entries())
          expect(Math.abs(each / (by * at(own, i)) - 1)).toBeLessThan(1e-12);
        for (const [i, each] of frequencies(reversed(line)).entries())
          expect(Math.abs(each / at(own, i) - 1)).toBeLessThan(1e-12);
        const here = which % line.lineInertias.length;
        const heavier = {
          ...line,
          lineInertias: line.lineInertias.map((J, i) => (i === here ? 1.3 * J : J)),
        };
        for (const [i, each] of frequencies(heavier).entries())
          expect(each).toBeLessThanOrEqual(at(own, i) * (1 + 1e-12));
        const spring = which % line.lineStiffnesses.length;
        const firmer = {
          ...line,
          lineStiffnesses: line.lineStiffnesses.map((k, i) => (i === spring ? 1.3 * k : k)),
        };
        for (const [i, each] of frequencies(firmer).entries())
          expect(each).toBeGreaterThanOrEqual(at(own, i) * (1 - 1e-12));
      }),
    );
  });

  test('below any frequency above zero the turning as one piece is counted, and all above the highest', () => {
    fc.assert(
      fc.property(lines, (line) => {
        const own = frequencies(line);
        expect(frequenciesBelow(line, 0)).toBe(0);
        expect(frequenciesBelow(line, at(own, 0) ** 2 * 1e-9)).toBe(1);
        expect(frequenciesBelow(line, at(own, own.length - 1) ** 2 * 2)).toBe(own.length + 1);
      }),
    );
  });

  test('the mth mode has m nodes, and no torque is left over', () => {
    fc.assert(
      fc.property(lines, (line) => {
        for (const [i, { shape }] of naturalModes(line).entries()) {
          expect(nodesOf(shape)).toHaveLength(i + 1);
          const moment = line.lineInertias.reduce((sum, J, j) => sum + J * at(shape, j), 0);
          const size = line.lineInertias.reduce((sum, J, j) => sum + J * Math.abs(at(shape, j)), 0);
          expect(Math.abs(moment)).toBeLessThan(1e-9 * size);
        }
        const [one, other] = naturalModes(line);
        if (one === undefined || other === undefined) return;
        const products = line.lineInertias.map((J, j) => J * at(one.shape, j) * at(other.shape, j));
        const sum = (list: readonly number[]): number => list.reduce((all, each) => all + each, 0);
        expect(Math.abs(sum(products))).toBeLessThan(1e-7 * sum(products.map(Math.abs)) + 1e-12);
      }),
    );
  });
});

describe('second route', () => {
  test(proves(routes.turnedToItsAxes), () => {
    fc.assert(
      fc.property(lines, (line) => {
        const other = jacobiModes(line);
        for (const [i, { frequency, shape }] of naturalModes(line).entries()) {
          const theirs = at(other, i);
          const omega = 2 * Math.PI * frequency;
          expect(Math.abs(omega / theirs.frequency - 1)).toBeLessThan(1e-8);
          const gap = Math.min(
            ...other
              .filter((each) => each !== theirs)
              .map((each) => Math.abs(each.frequency / omega - 1)),
          );
          // Shapes of two frequencies that lie close are hardly told from each other.
          if (gap > 1e-3)
            for (const [j, swing] of shape.entries())
              expect(swing).toBeCloseTo(at(theirs.shape, j), 6);
        }
      }),
    );
  });
});
