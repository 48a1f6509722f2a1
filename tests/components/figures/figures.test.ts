import { withinTurn } from '../../../src/components/figures/parts/crank-turn.svelte.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barRows } from '../../../src/components/figures/parts/stacked-bars.ts';
import {
  halves,
  parts,
  segmentsOf,
} from '../../../src/components/figures/balance/bobweight-bar.ts';
import { pullOf, squareLaw } from '../../../src/components/figures/loads/load-speed.ts';
import { geometryOf, poseAt } from '../../../src/components/figures/motion/mechanism.ts';
import { numberOf, pointsOf, staleNote } from '../../../src/components/figures/read.ts';
import type { FigureSet, FigureWork } from '../../../src/components/figures/types.ts';
import { pistonMotion } from '../../../src/core/motion/piston-motion.ts';

function set(
  input: FigureSet['input'],
  output: FigureSet['output'] = {},
  stale = false,
): FigureSet {
  return { input, output, stale };
}

/** A value that must be there for the test to mean anything. */
function must<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('expected a value');
  return value;
}

const linkage = fc.record({
  stroke: fc.double({ min: 0.02, max: 0.15, noNaN: true }),
  rodLength: fc.double({ min: 0.15, max: 0.3, noNaN: true }),
  boreOffset: fc.double({ min: -0.02, max: 0.02, noNaN: true }),
  pinOffset: fc.double({ min: -0.004, max: 0.004, noNaN: true }),
});
const angle = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });

describe('the drawn mechanism', () => {
  test('its rod has the rod’s length and its throw half the stroke, at any angle', () => {
    fc.assert(
      fc.property(linkage, angle, (geometry, theta) => {
        const { pin, crankpin } = poseAt(geometry, theta);
        expect(Math.hypot(pin.x - crankpin.x, pin.y - crankpin.y)).toBeCloseTo(
          geometry.rodLength,
          12,
        );
        expect(Math.hypot(crankpin.x, crankpin.y)).toBeCloseTo(geometry.stroke / 2, 12);
      }),
    );
  });

  test('its pin stands below TDC by what the calculator says', () => {
    fc.assert(
      fc.property(linkage, angle, (geometry, theta) => {
        const pose = poseAt(geometry, theta);
        const { displacement } = pistonMotion(geometry, theta, 1);
        expect(pose.topDead - pose.pin.y).toBeCloseTo(displacement, 12);
      }),
    );
  });

  test('its pin runs on a line beside the crank axis by bore offset less pin offset', () => {
    const pose = poseAt({ stroke: 0.08, rodLength: 0.14, boreOffset: 0.01, pinOffset: 0.001 }, 1);
    expect(pose.pin.x).toBeCloseTo(0.009, 15);
    expect(pose.boreAxis).toBe(0.01);
  });

  test('clockwise: a quarter turn after TDC the crankpin is on the right', () => {
    expect(poseAt({ stroke: 0.08, rodLength: 0.14 }, Math.PI / 2).crankpin.x).toBeCloseTo(0.04, 15);
  });

  test('without lengths there is nothing to draw', () => {
    expect(geometryOf(set(undefined, undefined))).toBeUndefined();
    expect(geometryOf(set({ stroke: 0.08 }))).toBeUndefined();
    expect(geometryOf(set({ stroke: 0.08, rodLength: 0.14 }))).toMatchObject({ stroke: 0.08 });
  });

  test('angles are brought into one turn, 360 kept', () => {
    expect([0, 360, 400, -90, 720].map(withinTurn)).toEqual([0, 360, 40, 270, 0]);
  });
});

describe('the bar of a bobweight', () => {
  const output = Object.fromEntries(parts.map(({ output: name }, i) => [name, (i + 1) / 100]));

  test('its segments lie end to end and add up', () => {
    const segments = segmentsOf(set({}, output));
    expect(segments[0]?.from).toBe(0);
    for (const [i, segment] of segments.entries())
      if (i > 0) expect(segment.from).toBe(segments[i - 1]?.to);
    const { rotating, reciprocating } = halves(segments);
    expect(rotating).toBeCloseTo(0.06, 12);
    expect(reciprocating).toBeCloseTo(0.3, 12);
    expect(segments.at(-1)?.to ?? 0).toBeCloseTo(0.36, 12);
  });

  test('a part of no mass, or of less, takes no room', () => {
    const segments = segmentsOf(set({}, { ...output, locksCarried: 0, shells: -0.01 }));
    const shells = must(segments[1]);
    expect(shells.to - shells.from).toBe(0);
    expect(shells.value).toBe(-0.01);
  });

  test('its lines are its parts under their heads, and the whole; a part that no bar has is left out', () => {
    const bars = [segmentsOf(set({}, output)), segmentsOf(set({}, { ...output, oil: 0 }))].map(
      (segments) => ({ segments }),
    );
    const { rows, end } = barRows(bars, [{ before: 3, text: 'reciprocating' }], 20);
    expect(rows.filter(({ kind }) => kind === 'part')).toHaveLength(8);
    expect(rows.findIndex(({ kind }) => kind === 'head')).toBe(3);
    expect(rows.at(-1)?.kind).toBe('total');
    for (const [i, { y }] of rows.entries())
      expect(y).toBeGreaterThan(i === 0 ? 19 : must(rows[i - 1]).y + 20);
    expect(end).toBeGreaterThan(must(rows.at(-1)).y);
    const none = [{ segments: segmentsOf(set({}, { ...output, oil: 0 })) }];
    expect(barRows(none, [], 20).rows.filter(({ kind }) => kind === 'part')).toHaveLength(7);
  });
});

describe('load against speed', () => {
  const input = {
    stroke: 0.08,
    rodLength: 0.16,
    pistonMass: 0.3,
    ringMass: 0.03,
    lockMass: 0.002,
    pinMass: 0.1,
    smallEndMass: 0.15,
    bigEndMass: 0.4,
    shellMass: 0.04,
    capMass: 0.15,
    shankSection: 0.03,
    rodMassAbove: 0.05,
    maxSpeed: 700,
    missedShiftSpeed: 750,
  };

  test('the parting line carries m_rec r (1 + λ) + (m_be + m_shell − m_cap) r for each unit of ω²', () => {
    // r = 0.04 m, λ = 0.25: 0.582 kg · 0.05 m + 0.29 kg · 0.04 m.
    expect(pullOf(set(input), 'parting')?.factor).toBeCloseTo(0.582 * 0.05 + 0.29 * 0.04, 12);
  });

  test('a missing number gives no curve instead of a wrong one', () => {
    expect(pullOf(set({ ...input, pistonMass: undefined }), 'boss')).toBeUndefined();
    expect(pullOf(set(undefined, undefined), 'boss')).toBeUndefined();
  });

  test('the curve follows the square of speed', () => {
    const { x, y } = squareLaw(0.041, 800);
    expect(x[0]).toBe(0);
    expect(x.at(-1)).toBe(800);
    expect(must(y.at(-1)) / must(y[(y.length - 1) / 2])).toBeCloseTo(4, 12);
  });
});

test('results that are no numbers are not drawn as numbers', () => {
  expect(numberOf({ a: { absent: 'why' } }, 'a')).toBeUndefined();
  expect(numberOf({ a: Number.NaN }, 'a')).toBeUndefined();
  expect(numberOf(undefined, 'a')).toBeUndefined();
  expect(numberOf({ a: 3 }, 'a')).toBe(3);
  expect(pointsOf({ c: { x: [0, Math.PI], y: [0, 0.073] } }, 'c', 'deg', 'mm')).toEqual({
    x: [0, 180],
    y: [0, 73],
  });
  expect(pointsOf({ c: 4 }, 'c', 'deg', 'mm')).toEqual({ x: [], y: [] });
});

test('a figure drawn from older numbers says whose', () => {
  const work = (baseline: boolean, candidate: boolean): FigureWork => ({
    sets: { baseline: set({}, {}, baseline), candidate: set({}, {}, candidate) },
    system: 'metric',
    put: () => undefined,
  });
  expect(staleNote(work(false, false))).toBe('');
  expect(staleNote(work(false, true))).toContain('candidate');
  expect(staleNote(work(true, true))).toContain('baseline and the candidate');
});
