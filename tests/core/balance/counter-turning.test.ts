import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { counterTurning } from '../../../src/core/balance/counter-turning.ts';
import { length, type Vector } from '../../../src/core/balance/vectors.ts';
import { partialBalance, type PartialBalance } from '../../../src/core/balance/partial-balance.ts';

const degrees = Math.PI / 180;

/** Unit mass, throw and speed: every force comes out in F₁. */
const unit: PartialBalance = {
  reciprocatingMass: 1,
  rotatingMass: 0,
  reciprocatingFraction: 0.5,
  stroke: 2,
  maxSpeed: 1,
  crankAngle: 0,
  bankAngle: 90 * degrees,
  rodsPerPin: 2,
  balanceRadius: 1,
};

const pins = fc
  .record({
    reciprocatingFraction: fc.double({ min: 0, max: 1, noNaN: true }),
    crankAngle: fc.double({ min: -7, max: 7, noNaN: true }),
    bankAngle: fc.double({ min: 0, max: Math.PI, noNaN: true }),
    rodsPerPin: fc.constantFrom(1, 2),
  })
  .map((some): PartialBalance => ({ ...unit, ...some }));

/** Twelve digits: forces are of the order of one, and a sum of a few of them is rounded. */
function expectSame(one: Vector, other: Vector): void {
  expect(one.along).toBeCloseTo(other.along, 12);
  expect(one.across).toBeCloseTo(other.across, 12);
}

function sum(vectors: readonly Vector[]): Vector {
  return {
    along: vectors.reduce((all, { along }) => all + along, 0),
    across: vectors.reduce((all, { across }) => all + across, 0),
  };
}

function turned({ along, across }: Vector, by: number): Vector {
  return {
    along: along * Math.cos(by) - across * Math.sin(by),
    across: along * Math.sin(by) + across * Math.cos(by),
  };
}

describe('closed forms', () => {
  test('one rod, a third of a turn: half of F₁ each way, and the pull between them', () => {
    const at = { ...unit, rodsPerPin: 1, crankAngle: 120 * degrees };
    const { pulls, forward, backward } = counterTurning(at);
    expectSame(forward, { along: -0.25, across: Math.sqrt(3) / 4 });
    expectSame(sum(backward), { along: -0.25, across: -Math.sqrt(3) / 4 });
    expectSame(sum(pulls), { along: -0.5, across: 0 });
  });

  test('two rods at 90°: the backward arrows are opposite, and half in the counterweight leaves nothing', () => {
    const { backward, left, path } = counterTurning({ ...unit, crankAngle: 40 * degrees });
    expect(backward).toHaveLength(2);
    expectSame(sum(backward), { along: 0, across: 0 });
    expectSame(left, { along: 0, across: 0 });
    expect(path).toEqual({ along: 0, across: 0 });
  });

  test('one rod, half in the counterweight: what is left goes round a circle, backward', () => {
    const { left, path } = counterTurning({ ...unit, rodsPerPin: 1, crankAngle: 30 * degrees });
    expect(path).toEqual({ along: 0.5, across: 0.5 });
    expect(Math.atan2(left.across, left.along)).toBeCloseTo(-30 * degrees, 12);
  });

  test('one rod, nothing or all in the counterweight: a line along the bore, or across it', () => {
    const single = { ...unit, rodsPerPin: 1 };
    expect(counterTurning({ ...single, reciprocatingFraction: 0 }).path).toEqual({
      along: 1,
      across: 0,
    });
    expect(counterTurning({ ...single, reciprocatingFraction: 1 }).path).toEqual({
      along: 0,
      across: 1,
    });
  });
});

describe('properties', () => {
  test('the pulls are the forward and the backward arrows together', () => {
    fc.assert(
      fc.property(pins, (pin) => {
        const { pulls, forward, backward } = counterTurning(pin);
        expectSame(sum(pulls), sum([forward, ...backward]));
      }),
    );
  });

  test('each pull lies along its bore, and no arrow changes its size', () => {
    fc.assert(
      fc.property(pins, (pin) => {
        const { pulls, forward, backward, counterweight } = counterTurning(pin);
        for (const [at, pull] of pulls.entries()) {
          const bank = pin.rodsPerPin === 1 ? 0 : (at - 0.5) * pin.bankAngle;
          expect(turned(pull, -bank).across).toBeCloseTo(0, 12);
        }
        expect(length(forward)).toBeCloseTo(pin.rodsPerPin / 2, 12);
        for (const arrow of backward) expect(length(arrow)).toBeCloseTo(0.5, 12);
        expect(length(counterweight)).toBeCloseTo(pin.rodsPerPin * pin.reciprocatingFraction, 12);
      }),
    );
  });

  test('forward and counterweight turn with the crank, the others against it', () => {
    fc.assert(
      fc.property(pins, fc.double({ min: -3, max: 3, noNaN: true }), (pin, by) => {
        const before = counterTurning(pin);
        const after = counterTurning({ ...pin, crankAngle: pin.crankAngle + by });
        expectSame(after.forward, turned(before.forward, by));
        expectSame(after.counterweight, turned(before.counterweight, by));
        for (const [at, arrow] of before.backward.entries())
          expectSame(after.backward[at] ?? { along: NaN, across: NaN }, turned(arrow, -by));
      }),
    );
  });

  test('what is left has the size that partial balance gives, and stays on its path', () => {
    fc.assert(
      fc.property(pins, (pin) => {
        const { left, path } = counterTurning(pin);
        const { residual, residualGreatest, residualLeast } = partialBalance(pin);
        expect(length(left)).toBeCloseTo(residual, 12);
        expect(Math.max(path.along, path.across)).toBeCloseTo(residualGreatest, 12);
        expect(Math.min(path.along, path.across)).toBeCloseTo(residualLeast, 12);
        // (along/a)² + (across/b)² = 1, without dividing by an axis that may be nothing.
        expect((left.along * path.across) ** 2 + (left.across * path.along) ** 2).toBeCloseTo(
          (path.along * path.across) ** 2,
          12,
        );
      }),
    );
  });
});

test('refuses what partial balance refuses', () => {
  expect(() => counterTurning({ ...unit, rodsPerPin: 3 })).toThrow(
    expect.objectContaining({ quantity: 'rodsPerPin', relation: 'at most', limit: 2 }),
  );
});
