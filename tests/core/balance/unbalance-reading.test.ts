import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/counterweight-drilling/routes.ts';
import {
  type Reading,
  senseOf,
  settleReading,
  withinTurn,
} from '../../../src/core/balance/unbalance-reading.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';

const degrees = Math.PI / 180;
const turn = 2 * Math.PI;

const choices = {
  readingNames: fc.constantFrom('heavy' as const, 'light' as const),
  angleSense: fc.constantFrom('with' as const, 'against' as const),
  crankTurns: fc.constantFrom('clockwise' as const, 'anticlockwise' as const),
};
const readings: fc.Arbitrary<Reading> = fc.record({
  unbalanceRead: evenly(0, 0.01),
  unbalanceAngle: evenly(-turn, turn),
  angleOrigin: evenly(-turn, turn),
  ...choices,
});

/** Two angles that are one direction. */
function same(one: number, other: number): void {
  expect(Math.abs(Math.sin((one - other) / 2))).toBeLessThan(1e-9);
}

describe('closed forms', () => {
  test.each<[string, Partial<Reading>, number]>([
    ['with a clockwise crank, from throw 1', {}, 30],
    ['against it', { angleSense: 'against' }, 330],
    ['with an anticlockwise crank', { crankTurns: 'anticlockwise' }, 330],
    ['against an anticlockwise crank', { angleSense: 'against', crankTurns: 'anticlockwise' }, 30],
    ['the light spot', { readingNames: 'light' }, 210],
    ['from a mark at 90°', { angleOrigin: 90 * degrees }, 120],
    ['from a mark at 90°, against', { angleOrigin: 90 * degrees, angleSense: 'against' }, 60],
  ])('30° %s', (_, change, heavy) => {
    const reading: Reading = {
      unbalanceRead: 1,
      unbalanceAngle: 30 * degrees,
      readingNames: 'heavy',
      angleOrigin: 0,
      angleSense: 'with',
      crankTurns: 'clockwise',
      ...change,
    };
    const settled = settleReading(reading);
    expect(settled.heavy / degrees).toBeCloseTo(heavy, 10);
    expect(settled.light / degrees).toBeCloseTo((heavy + 180) % 360, 10);
    expect(settled.wrongSide).toBe(2);
    expect(settled.wrongSense).toBeCloseTo(1, 12);
  });

  test('an angle is brought into one turn', () => {
    expect(withinTurn(0)).toBe(0);
    expect(withinTurn(-turn)).toBe(0);
    expect(Object.is(withinTurn(-0), 0)).toBe(true);
    expect(withinTurn(-1e-20)).toBe(0);
    expect(withinTurn(7)).toBeCloseTo(7 - turn, 14);
    expect(withinTurn(-1)).toBeCloseTo(turn - 1, 14);
  });
});

describe('second routes', () => {
  test(proves(routes.passingTheTop), () => {
    fc.assert(
      fc.property(
        evenly(0, turn),
        evenly(0, turn),
        fc.record(choices),
        (heavy, mark, { readingNames, angleSense, crankTurns }) => {
          // The crank turns once a second. Seen from the nose, what stands `angle` clockwise of the top comes to the top
          // again after the rest of the turn where the crank turns clockwise, after the angle itself where it does not.
          const passes = (angle: number): number =>
            crankTurns === 'clockwise' ? 1 - angle / turn : angle / turn;
          const pointed = readingNames === 'heavy' ? heavy : (heavy + Math.PI) % turn;
          // What stands further on in the sense of rotation comes sooner.
          const sooner = (passes(mark) - passes(pointed)) * turn;
          const read = angleSense === 'with' ? sooner : -sooner;
          const settled = settleReading({
            unbalanceRead: 1,
            unbalanceAngle: read,
            angleOrigin: mark,
            readingNames,
            angleSense,
            crankTurns,
          });
          same(settled.heavy, heavy);
          same(settled.light, heavy + Math.PI);
        },
      ),
    );
  });

  test(proves(routes.correctedWrongly), () => {
    fc.assert(
      fc.property(readings, (reading) => {
        const settled = settleReading(reading);
        const left = (wrong: Partial<Reading>): number => {
          const { heavy } = settleReading({ ...reading, ...wrong });
          const size = reading.unbalanceRead;
          return Math.hypot(
            size * (Math.cos(settled.heavy) - Math.cos(heavy)),
            size * (Math.sin(settled.heavy) - Math.sin(heavy)),
          );
        };
        const otherSide = reading.readingNames === 'heavy' ? 'light' : 'heavy';
        const otherSense = reading.angleSense === 'with' ? 'against' : 'with';
        expect(settled.wrongSide).toBeCloseTo(left({ readingNames: otherSide }), 12);
        expect(settled.wrongSense).toBeCloseTo(left({ angleSense: otherSense }), 12);
      }),
    );
  });
});

test('two choices turned at once are one: the sense is their product', () => {
  expect(senseOf({ angleSense: 'with', crankTurns: 'clockwise' })).toBe(1);
  expect(senseOf({ angleSense: 'against', crankTurns: 'anticlockwise' })).toBe(1);
  expect(senseOf({ angleSense: 'against', crankTurns: 'clockwise' })).toBe(-1);
  expect(senseOf({ angleSense: 'with', crankTurns: 'anticlockwise' })).toBe(-1);
});
