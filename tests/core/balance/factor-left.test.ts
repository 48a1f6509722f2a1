import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/balance-factor/routes.ts';
import { throwsOf } from '../../../src/calculators/balance/crank-layout.choices.ts';
import { layoutParts, type Throw } from '../../../src/core/balance/crank-throws.ts';
import { factorLeft, lineFactor, partsLeft } from '../../../src/core/balance/factor-left.ts';
import { partsAt } from '../../../src/core/balance/turning-parts.ts';
import { length } from '../../../src/core/balance/vectors.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';

/** A pin at the middle of the crank with two rods at an angle between the banks [degrees]. */
function twin(between: number): readonly Throw[] {
  const half = (between * Math.PI) / 360;
  return [{ angle: 0, position: 0, banks: [-half, half] }];
}
const carrying = (reciprocatingFraction: number) => ({ reciprocatingFraction });
const right = Math.PI / 2;

describe('closed forms', () => {
  test(proves(routes.singleByFactor), () => {
    for (const f of [0, 0.2, 0.5, 0.66, 1]) {
      const { force, couple } = factorLeft(throwsOf('single'), carrying(f));
      // 1 − f along the bore and f across it.
      expect(force.most).toBeCloseTo(Math.max(f, 1 - f), 14);
      expect(force.least).toBeCloseTo(Math.min(f, 1 - f), 14);
      expect(couple.most).toBe(0);
      if (f === 0.5) expect(force.direction).toBeUndefined();
      else expect(Math.abs(Math.sin(force.direction ?? 0))).toBeCloseTo(f < 0.5 ? 0 : 1, 12);
    }
  });

  test(proves(routes.twinByAngle), () => {
    for (const between of [30, 45, 52, 60, 75, 90, 120, 180])
      for (const f of [0, 0.3, 0.5, 0.8]) {
        const cos = Math.abs(Math.cos((between * Math.PI) / 180));
        const { force } = factorLeft(twin(between), carrying(f));
        expect(force.most).toBeCloseTo(Math.abs(1 - 2 * f) + cos, 13);
        expect(force.least).toBeCloseTo(Math.abs(Math.abs(1 - 2 * f) - cos), 13);
        const line = lineFactor(layoutParts(twin(between), 1).force);
        if (between === 90) expect(line).toBeUndefined();
        else expect(line).toBeCloseTo((1 - cos) / 2, 13);
        // Narrow banks pull up and down most, wide ones from side to side.
        if (between !== 90 && f === 0)
          expect(Math.abs(Math.cos(force.direction ?? 0))).toBeCloseTo(between < 90 ? 1 : 0, 12);
      }
  });

  test(proves(routes.evenSix), () => {
    const throws = throwsOf('v6-90-split');
    const f = lineFactor(layoutParts(throws, 1).couple);
    expect(f).toBeCloseTo((Math.sqrt(3) - 1) / 2, 14);
    const one = ((Math.sqrt(3) - 1) / 2) * Math.sqrt(1.5);
    expect(factorLeft(throws, carrying(f ?? 0)).couple.most).toBeCloseTo(2 * one, 13);
    expect(factorLeft(throws, carrying(f ?? 0)).couple.least).toBeCloseTo(0, 13);
    expect(factorLeft(throws, carrying(0.5)).couple.most).toBeCloseTo(one, 13);
    expect(factorLeft(throws, carrying(0.5)).force.most).toBe(0);
  });

  test(proves(routes.fourHasNone), () => {
    for (const id of ['inline-4-flat', 'inline-6', 'flat-4', 'v12-60'] as const)
      for (const f of [0, 0.5, 1]) {
        const { force, couple } = factorLeft(throwsOf(id), carrying(f));
        expect([force.most, couple.most], id).toEqual([0, 0]);
      }
  });
});

/** Any crank, about no middle in particular. */
const crank: fc.Arbitrary<readonly Throw[]> = fc.array(
  fc.record({
    angle: evenly(-7, 7),
    position: evenly(-3, 3),
    banks: fc.array(evenly(-2, 2), { minLength: 1, maxLength: 3 }),
  }),
  { minLength: 1, maxLength: 6 },
);

describe('properties', () => {
  test('a factor and what it lacks of one leave as much, turned by a right angle', () => {
    fc.assert(
      fc.property(crank, evenly(0, 0.49), (throws, f) => {
        const [low, high] = [factorLeft(throws, carrying(f)), factorLeft(throws, carrying(1 - f))];
        for (const what of ['force', 'couple'] as const) {
          expect(high[what].most).toBeCloseTo(low[what].most, 12);
          expect(high[what].least).toBeCloseTo(low[what].least, 12);
          const turned = (high[what].direction ?? 0) - (low[what].direction ?? right);
          if (low[what].least < low[what].most - 1e-6)
            expect(Math.abs(Math.cos(turned))).toBeLessThan(1e-6);
        }
      }),
    );
  });

  test('with the factor of a line nothing is left across it; without one there is none', () => {
    fc.assert(
      fc.property(crank, (throws) => {
        const { force } = layoutParts(throws, 1);
        const f = lineFactor(force);
        if (f === undefined) expect(length(force.backward)).toBeGreaterThan(length(force.forward));
        else expect(factorLeft(throws, carrying(f)).force.least).toBeLessThan(1e-12);
      }),
    );
  });

  test('the greatest of the turn is met in its direction, and nowhere more', () => {
    fc.assert(
      fc.property(crank, evenly(0, 1), evenly(-4, 4), (throws, f, theta) => {
        const parts = partsLeft(throws, carrying(f)).force;
        const { most, direction = 0 } = factorLeft(throws, carrying(f)).force;
        const tip = partsAt(parts, 1, theta);
        expect(length(tip)).toBeLessThanOrEqual(most + 1e-12);
        const along = tip.along * Math.cos(direction) + tip.across * Math.sin(direction);
        expect(Math.abs(along)).toBeLessThanOrEqual(most + 1e-12);
      }),
    );
  });
});

test('a factor that is no share is refused', () => {
  for (const f of [-0.01, 1.01, Number.NaN])
    expect(() => factorLeft(throwsOf('single'), carrying(f))).toThrow(RangeError);
  expect(() => factorLeft([], carrying(0.5))).toThrow(RangeError);
});
