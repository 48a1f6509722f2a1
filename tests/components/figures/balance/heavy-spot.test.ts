import { describe, expect, test } from 'vitest';
import { unbalanceReading } from '../../../../src/calculators/balance/unbalance-reading.ts';
import {
  arcHead,
  arcPath,
  drawnReadings,
  seenFrom,
  wordsRound,
} from '../../../../src/components/figures/balance/heavy-spot.ts';
import type { FigureSet } from '../../../../src/components/figures/types.ts';

const degrees = Math.PI / 180;
const reading = {
  unbalanceRead: 4.2e-3,
  unbalanceAngle: 172 * degrees,
  readingNames: 'heavy',
  angleOrigin: 0,
  angleSense: 'against',
  crankTurns: 'clockwise',
} as const;

function set(change: Partial<Parameters<typeof unbalanceReading.compute>[0]> = {}): FigureSet {
  const input = { ...reading, ...change };
  return { input, output: unbalanceReading.compute(input), stale: false };
}

test('one reading of both sets is drawn once, two are drawn apart, none is not', () => {
  expect(drawnReadings({ baseline: set(), candidate: set() })).toMatchObject([
    { sets: ['baseline', 'candidate'], sweep: -172 * degrees },
  ]);
  const apart = drawnReadings({ baseline: set(), candidate: set({ angleSense: 'with' }) });
  expect(apart.map(({ sets }) => sets)).toEqual([['baseline'], ['candidate']]);
  const none: FigureSet = { input: undefined, output: undefined, stale: false };
  expect(drawnReadings({ baseline: none, candidate: none })).toEqual([]);
});

describe('what is counted from the zero', () => {
  test.each([
    ['with', 'clockwise'],
    ['against', 'clockwise'],
    ['with', 'anticlockwise'],
    ['against', 'anticlockwise'],
  ] as const)(
    '%s a crank that turns %s ends at the spot that it names',
    (angleSense, crankTurns) => {
      for (const readingNames of ['heavy', 'light'] as const) {
        const one = set({ angleSense, crankTurns, readingNames, angleOrigin: 0.4 });
        const [drawn] = drawnReadings({ baseline: one, candidate: one });
        const end = (drawn?.zero ?? 0) + (drawn?.sweep ?? 0);
        expect(Math.cos(end - (drawn?.[readingNames] ?? 0))).toBeCloseTo(1, 12);
      }
    },
  );
});

test('from the flywheel everything runs the other way round', () => {
  expect([seenFrom('nose', 1), seenFrom('flywheel', 1)]).toEqual([1, -1]);
});

test('words that would stand on one another stand apart, on their own side', () => {
  const [zero, light] = wordsRound([0, 8 * degrees], 90);
  expect(zero?.anchor).toBe('end');
  expect(light?.anchor).toBe('start');
  expect(
    Math.hypot((zero?.x ?? 0) - (light?.x ?? 0), (zero?.y ?? 0) - (light?.y ?? 0)),
  ).toBeGreaterThan(60);
});

test('an arc begins and ends where it is said, and a short one has no head', () => {
  expect(arcPath(10, 0, Math.PI / 2)).toMatch(/^M0 -10A10 10 0 0 1 .*A10 10 0 0 1 10 0$/u);
  expect(arcPath(10, 0, -Math.PI)).toMatch(/^M0 -10A10 10 0 0 0 -10 0A10 10 0 0 0 0 10$/u);
  expect(arcHead(10, 0, 1)).toMatch(/^M.*L.*L/u);
  expect(arcHead(10, 0, 0.1)).toBe('');
});
