import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { partialBalance, type PartialBalance } from '../../../src/core/balance/partial-balance.ts';
import { routes } from '../../../content/topics/balance-factor/routes.ts';
import { proves } from '../../proves.ts';
import { evenly } from '../../evenly.ts';

const degrees = Math.PI / 180;

/** Unit mass, throw and speed: every force comes out in F₁. */
const unit: PartialBalance = {
  reciprocatingMass: 1,
  rotatingMass: 0,
  reciprocatingFraction: 0,
  stroke: 2,
  maxSpeed: 1,
  crankAngle: 0,
  bankAngle: 90 * degrees,
  rodsPerPin: 2,
  balanceRadius: 1,
};

const share = evenly(0, 1);
const angle = evenly(-7, 7);
const bank = evenly(0, Math.PI);

/** Second route: the pistons' own forces along their banks, and the balance mass opposite the pin. */
function byVectors(pin: PartialBalance): number {
  const banks = pin.rodsPerPin === 1 ? [0] : [-pin.bankAngle / 2, pin.bankAngle / 2];
  const r = pin.stroke / 2;
  const F1 = pin.reciprocatingMass * r * pin.maxSpeed ** 2;
  const taken = pin.rodsPerPin * pin.reciprocatingFraction * F1;
  let along = -taken * Math.cos(pin.crankAngle);
  let across = -taken * Math.sin(pin.crankAngle);
  for (const beta of banks) {
    const force = F1 * Math.cos(pin.crankAngle - beta);
    along += force * Math.cos(beta);
    across += force * Math.sin(beta);
  }
  return Math.hypot(along, across);
}

describe('closed forms', () => {
  test.each([45, 60, 72, 90, 120, 180])(
    'a V of %i° leaves the size of its cosine, in F₁, turning backward',
    (bankDegrees) => {
      const result = partialBalance({ ...unit, bankAngle: bankDegrees * degrees });
      expect(result.forward).toBe(1);
      expect(result.backward).toBeCloseTo(Math.abs(Math.cos(bankDegrees * degrees)), 12);
    },
  );

  test('a right angle between the banks leaves exactly nothing backward', () => {
    const result = partialBalance({ ...unit, reciprocatingFraction: 0.5 });
    expect(result.backward).toBe(0);
    expect(result.residualGreatest).toBe(0);
  });

  test('one rod: F₁ √[(1 − f)² cos²θ + f² sin²θ]', () => {
    fc.assert(
      fc.property(share, angle, (f, theta) => {
        const { residual } = partialBalance({
          ...unit,
          rodsPerPin: 1,
          reciprocatingFraction: f,
          crankAngle: theta,
        });
        const form = Math.hypot((1 - f) * Math.cos(theta), f * Math.sin(theta));
        expect(residual).toBeCloseTo(form, 12);
      }),
    );
  });

  test('one rod and one half: the same size all round', () => {
    fc.assert(
      fc.property(angle, (theta) => {
        const half = { ...unit, rodsPerPin: 1, reciprocatingFraction: 0.5, crankAngle: theta };
        expect(partialBalance(half).residual).toBeCloseTo(0.5, 12);
      }),
    );
  });

  test('one rod and one half: what is left turns backward', () => {
    // At a quarter turn the piston pulls nothing and the counterweight pulls away from the pin.
    const theta = 30 * degrees;
    const along = Math.cos(theta) - 0.5 * Math.cos(theta);
    const across = -0.5 * Math.sin(theta);
    expect(Math.atan2(across, along)).toBeCloseTo(-theta, 12);
    const half = { ...unit, rodsPerPin: 1, reciprocatingFraction: 0.5, crankAngle: theta };
    expect(partialBalance(half).residual).toBeCloseTo(Math.hypot(along, across), 12);
  });
});

describe('properties', () => {
  const pin = fc.record({
    f: share,
    theta: angle,
    gamma: bank,
    rods: fc.constantFrom(1, 2),
  });

  test(proves(routes.agreesAddingForces), () => {
    fc.assert(
      fc.property(pin, ({ f, theta, gamma, rods }) => {
        const input = {
          ...unit,
          reciprocatingFraction: f,
          crankAngle: theta,
          bankAngle: gamma,
          rodsPerPin: rods,
        };
        expect(partialBalance(input).residual).toBeCloseTo(byVectors(input), 12);
      }),
    );
  });

  test('stays between its least and its greatest', () => {
    fc.assert(
      fc.property(pin, ({ f, theta, gamma, rods }) => {
        const result = partialBalance({
          ...unit,
          reciprocatingFraction: f,
          crankAngle: theta,
          bankAngle: gamma,
          rodsPerPin: rods,
        });
        expect(result.residual).toBeLessThanOrEqual(result.residualGreatest + 1e-12);
        expect(result.residual).toBeGreaterThanOrEqual(result.residualLeast - 1e-12);
      }),
    );
  });

  test('forces grow with the square of the speed', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (times) => {
        const once = partialBalance({ ...unit, maxSpeed: 100 });
        const faster = partialBalance({ ...unit, maxSpeed: 100 * times });
        expect(faster.inertiaForce / once.inertiaForce).toBeCloseTo(times ** 2, 9);
        expect(faster.forward / once.forward).toBeCloseTo(times ** 2, 9);
      }),
    );
  });
});

test('refuses a third rod on the pin', () => {
  expect(() => partialBalance({ ...unit, rodsPerPin: 3 })).toThrow(
    expect.objectContaining({ quantity: 'rodsPerPin', relation: 'at most', limit: 2 }),
  );
});
