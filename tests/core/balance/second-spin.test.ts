import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/counterweight-drilling/routes.ts';
import { secondSpin as declaration } from '../../../src/calculators/balance/second-spin.ts';
import { secondSpin } from '../../../src/core/balance/second-spin.ts';
import { withinTurn } from '../../../src/core/balance/unbalance-reading.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';

const degrees = Math.PI / 180;

describe('closed forms', () => {
  const first = { size: 4, angle: 1 };
  test('all taken: no error', () => {
    const { amountError, angleError, missed, astray, removed } = secondSpin({
      first,
      second: { size: 0, angle: 2 },
      asked: first,
    });
    expect([amountError, angleError, missed, astray, removed]).toEqual([
      expect.closeTo(0, 15),
      expect.closeTo(0, 15),
      expect.closeTo(0, 15),
      expect.closeTo(0, 15),
      expect.closeTo(4, 15),
    ]);
  });

  test('the wrong side: twice as much is read, and the drilling was half a turn off', () => {
    const { amountError, angleError, removed } = secondSpin({
      first,
      second: { size: 8, angle: 1 },
      asked: first,
    });
    expect(removed).toBeCloseTo(4, 14);
    expect(amountError).toBeCloseTo(0, 14);
    expect(Math.abs(angleError ?? 0)).toBeCloseTo(Math.PI, 14);
  });

  test('nothing taken has no direction', () => {
    const { removed, removedAngle, angleError, amountError } = secondSpin({
      first,
      second: first,
      asked: first,
    });
    expect({ removed, removedAngle, angleError, amountError }).toEqual({
      removed: 0,
      removedAngle: undefined,
      angleError: undefined,
      amountError: -1,
    });
  });
});

test(proves(routes.drilledWithErrors), () => {
  const choices = fc.record({
    readingNames: fc.constantFrom('heavy' as const, 'light' as const),
    angleSense: fc.constantFrom('with' as const, 'against' as const),
    crankTurns: fc.constantFrom('clockwise' as const, 'anticlockwise' as const),
    angleOrigin: evenly(-3, 3),
  });
  fc.assert(
    fc.property(
      choices,
      evenly(0, 6),
      evenly(0.5, 1.5),
      evenly(-80, 80),
      evenly(0.6, 1),
      evenly(-20, 20),
      (machine, heavy, amount, off, share, set) => {
        // Asked for: a share of the unbalance, set aside of the heavy spot. Drilled: more or less, and aside again.
        const size = 3e-3;
        const asked = { size: share * size, angle: heavy + set * degrees };
        const drilled = { size: amount * asked.size, angle: asked.angle + off * degrees };
        const x = size * Math.cos(heavy) - drilled.size * Math.cos(drilled.angle);
        const y = size * Math.sin(heavy) - drilled.size * Math.sin(drilled.angle);
        const now = { size: Math.hypot(x, y), angle: Math.atan2(y, x) };
        /** What the machine shows for a heavy spot. */
        const shown = (angle: number): number => {
          const named = machine.readingNames === 'heavy' ? angle : angle + Math.PI;
          const clockwise = named - machine.angleOrigin;
          const growsClockwise =
            (machine.angleSense === 'with') === (machine.crankTurns === 'clockwise');
          return growsClockwise ? clockwise : -clockwise;
        };
        const out = declaration.compute({
          ...machine,
          unbalanceRead: size,
          unbalanceAngle: shown(heavy),
          secondUnbalance: now.size,
          secondAngle: shown(now.angle),
          askedUnbalance: asked.size,
          askedAngle: asked.angle,
        });
        expect(out.amountError).toBeCloseTo(amount - 1, 9);
        expect(out.angleError).toBeCloseTo(off * degrees, 9);
        expect(out.removed).toBeCloseTo(drilled.size, 12);
        expect(out.removedAngle).toBeCloseTo(withinTurn(drilled.angle), 6);
        expect(Math.cos(out.firstHeavy - heavy)).toBeCloseTo(1, 12);
        expect(Math.cos(out.secondHeavy - now.angle)).toBeCloseTo(1, 12);
        expect(out.missed).toBeCloseTo(asked.size - drilled.size * Math.cos(off * degrees), 12);
        expect(out.astray).toBeCloseTo(drilled.size * Math.sin(off * degrees), 12);
      },
    ),
  );
});
