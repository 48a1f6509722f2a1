import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CrankLayout,
  crankLayouts,
  throwsOf,
} from '../../../src/calculators/balance/crank-layout.choices.ts';
import { layoutBobweights } from '../../../src/calculators/balance/layout-bobweights.ts';
import { shakingForces as page } from '../../../src/calculators/balance/shaking-forces.ts';
import { layoutParts, secondBank } from '../../../src/core/balance/crank-throws.ts';
import { carriedWeights } from '../../../src/core/balance/crank-weights.ts';
import { cylindersOf } from '../../../src/core/balance/cylinders.ts';
import { shakingForces } from '../../../src/core/balance/shaking-forces.ts';
import { pathOf } from '../../../src/core/balance/turning-parts.ts';
import { length } from '../../../src/core/balance/vectors.ts';
import { evenly } from '../../evenly.ts';
import { byFourier } from './by-fourier.ts';

/** F₁ = 1 for a cylinder of the first bank. */
const unit = { reciprocatingMass: 1, stroke: 2, rodLength: 4, cylinderSpacing: 1 };
const engine = {
  ...unit,
  reciprocatingFraction: 0.5,
  maxSpeed: 1,
  rotatingMass: 1,
  balanceShafts: 'none',
  crankAngle: 0.7,
} as const;
const layoutOf = fc.constantFrom(...crankLayouts);
const moreOf = evenly(-0.9, 3);

describe('closed forms', () => {
  test.each([
    [1, 0],
    [1.2, 0.1],
    [0.6, 0.2],
    [3, 1],
  ])('a V-twin at 90° keeps half of what one bank has more: %d leaves %d', (second, left) => {
    const { force } = layoutParts(throwsOf('v2-90'), 1, second);
    expect(length(force.forward)).toBeCloseTo((1 + second) / 2, 14);
    expect(length(force.backward)).toBeCloseTo(left, 14);
    const { primaryForce } = page.compute({
      ...engine,
      crankLayout: 'v2-90',
      partnerReciprocating: second - 1,
    });
    expect(primaryForce).toBeCloseTo(left, 14);
  });

  test('a cross-plane V8 keeps the couple of half of what one bank has more, √10 Δm/2', () => {
    const { couple } = layoutParts(throwsOf('v8-cross'), 1, 1.3);
    expect(length(couple.backward)).toBeCloseTo((Math.sqrt(10) * 0.3) / 2, 13);
  });

  test('a bobweight carries the factor’s share of it', () => {
    const masses = { ...engine, partnerReciprocating: 0.3 };
    expect(layoutBobweights(throwsOf('v8-cross'), masses).pinBobweight).toBeCloseTo(2.15, 14);
    // A split pin has one rod to each half: the first half has none of the second bank.
    expect(layoutBobweights(throwsOf('v6-90-split'), masses).pinBobweight).toBeCloseTo(1.5, 14);
  });

  test('an engine with one bank has no second', () => {
    for (const id of ['single', 'inline-4-flat', 'inline-6'] as const)
      expect(secondBank(throwsOf(id))).toBeUndefined();
    expect(secondBank(throwsOf('v2-60'))).not.toBe(throwsOf('v2-60')[0]?.banks[0]);
  });
});

describe('properties', () => {
  test('nothing more is an engine of equal cylinders', () => {
    for (const id of crankLayouts) {
      const crankLayout: CrankLayout = id;
      expect(page.compute({ ...engine, crankLayout, partnerReciprocating: 0 })).toEqual(
        page.compute({ ...engine, crankLayout }),
      );
    }
  });

  test('the second bank’s excess shakes as an engine of its own beside the equal one', () => {
    fc.assert(
      fc.property(layoutOf, moreOf, (id, more) => {
        const throws = throwsOf(id);
        const other = secondBank(throws);
        const own = throws
          .map((one) => ({ ...one, banks: one.banks.filter((bank) => bank === other) }))
          .filter(({ banks }) => banks.length > 0);
        const whole = layoutParts(throws, 1, 1 + more).couple.backward;
        const equal = layoutParts(throws, 1).couple.backward;
        const extra =
          own.length === 0 ? { along: 0, across: 0 } : layoutParts(own, 1).couple.backward;
        expect(whole.along).toBeCloseTo(equal.along + more * extra.along, 11);
        expect(whole.across).toBeCloseTo(equal.across + more * extra.across, 11);
      }),
    );
  });
});

describe('second route', () => {
  test('what the page says is what the exact pulls of unlike cylinders have once a turn', () => {
    fc.assert(
      fc.property(layoutOf, moreOf, (id, more) => {
        const throws = throwsOf(id);
        const cylinders = cylindersOf(throws, { ...unit, partnerReciprocating: more });
        const { force } = byFourier(cylinders, 1);
        const result = page.compute({ ...engine, crankLayout: id, partnerReciprocating: more });
        // Sums of up to sixteen cylinders over a turn: nine digits are left.
        expect(result.forwardForce).toBeCloseTo(length(force.forward), 9);
        expect(result.backwardForce).toBeCloseTo(length(force.backward), 9);
      }),
      { numRuns: 60 },
    );
  });

  test('and what counterweights leave is what the sum over all cylinders and weights leaves', () => {
    fc.assert(
      fc.property(layoutOf, moreOf, evenly(0, 1), (id, more, reciprocatingFraction) => {
        const given = { ...engine, reciprocatingFraction, partnerReciprocating: more };
        const cylinders = cylindersOf(throwsOf(id), given);
        const { primary, secondary } = shakingForces(
          cylinders,
          given,
          carriedWeights(cylinders, given),
        );
        const result = page.compute({ ...given, crankLayout: id });
        expect(result.primaryForce).toBeCloseTo(pathOf(primary.force).most, 11);
        expect(result.primaryCouple).toBeCloseTo(pathOf(primary.couple).most, 11);
        expect(result.secondaryForce).toBeCloseTo(pathOf(secondary.force).most, 11);
        expect(result.secondaryCouple).toBeCloseTo(pathOf(secondary.couple).most, 11);
      }),
    );
  });
});
