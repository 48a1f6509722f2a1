import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { partialBalance, type PartialBalance } from '../../../src/core/balance/partial-balance.ts';
import { routes } from '../../../content/topics/bobweight/routes.ts';
import { proves } from '../../proves.ts';

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

const share = fc.double({ min: 0, max: 1, noNaN: true });
const angle = fc.double({ min: -7, max: 7, noNaN: true });
const bank = fc.double({ min: 0, max: Math.PI, noNaN: true });

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

describe('published', () => {
  test('single cylinder, two thirds', () => {
    // Khurmi and Gupta, Theory of Machines, 14th ed. 2009, Example 22.1: 26.38 kg (read), 2849 N (memory).
    const result = partialBalance({
      ...unit,
      reciprocatingMass: 50,
      rotatingMass: 37,
      reciprocatingFraction: 2 / 3,
      rodsPerPin: 1,
      stroke: 0.3,
      // The book rounds the speed.
      maxSpeed: 25.14,
      crankAngle: 60 * degrees,
      balanceRadius: 0.4,
    });
    expect(Math.abs(result.balanceMass - 26.38)).toBeLessThan(0.0051);
    expect(Math.abs(result.residual / 2849 - 1)).toBeLessThan(2.5e-4);
  });

  test('single cylinder, one half, in pounds', () => {
    // Bevan, The Theory of Machines, 3rd ed., ch. 14, Example 5 (transcribed), with its 32.2 ft/s².
    const result = partialBalance({
      ...unit,
      reciprocatingMass: 150 / 32.2,
      rotatingMass: 180 / 32.2,
      reciprocatingFraction: 0.5,
      rodsPerPin: 1,
      stroke: 15 / 12,
      maxSpeed: 10 * Math.PI,
      balanceRadius: 0.5,
    });
    expect(result.balanceMass * 32.2).toBeCloseTo(318.75, 9);
    // The book drops the fraction.
    expect(Math.floor(result.residual)).toBe(1436);
  });

  test.each([
    [45, 0.707107],
    [60, 0.5],
    [72, 0.309017],
    [90, 0],
    [120, 0.5],
    [180, 1],
  ])('a V of %i° leaves %f of F₁ turning backward', (bankDegrees, backward) => {
    // Recomputed beside the table of free forces (memory) for a V pair on one pin; six figures.
    const result = partialBalance({ ...unit, bankAngle: bankDegrees * degrees });
    expect(result.forward).toBe(1);
    expect(Math.abs(result.backward - backward)).toBeLessThan(5e-7);
  });
});

describe('closed forms', () => {
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
