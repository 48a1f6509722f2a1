import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bobweight as declaration } from '../../../src/calculators/balance/bobweight.ts';
import { impliedEnds, pinBobweight, type PinParts } from '../../../src/core/balance/bobweight.ts';
import { routes } from '../../../content/topics/bobweight/routes.ts';
import { routes as quotedRoutes } from '../../../content/topics/quoted-bobweight/routes.ts';
import { proves } from '../../proves.ts';
import { evenly } from '../../evenly.ts';

/** The invented V8 for the road. */
const road: PinParts = {
  pistonMass: 0.428,
  pinMass: 0.1202,
  ringMass: 0.038,
  lockMass: 0,
  bigEndMass: 0.4212,
  smallEndMass: 0.1706,
  shellMass: 0.041,
  oilMass: 0.004,
  rodsPerPin: 2,
  reciprocatingFraction: 0.5,
};

const grams = fc.double({ min: 0.001, max: 1, noNaN: true });
const difference = evenly(-0.0005, 0.01);
const parts: fc.Arbitrary<PinParts> = fc.record({
  pistonMass: grams,
  pinMass: grams,
  ringMass: grams,
  lockMass: grams,
  bigEndMass: grams,
  smallEndMass: grams,
  shellMass: grams,
  oilMass: grams,
  rodsPerPin: fc.integer({ min: 1, max: 9 }),
  reciprocatingFraction: evenly(0, 1),
  partnerRotating: difference,
  partnerReciprocating: difference,
});

describe('closed forms', () => {
  test('the invented road set, added by hand', () => {
    const pin = pinBobweight(road);
    // 2 × 462.2 + 4 and ½ × 2 × 756.8 grams.
    expect(pin.rotating).toBeCloseTo(0.9284, 12);
    expect(pin.reciprocating).toBeCloseTo(1.5136, 12);
    expect(pin.bobweight).toBeCloseTo(1.6852, 12);
    expect(pin.bobweightShare).toBeCloseTo(1.6852 / 2.442, 12);
  });

  test('nothing carried leaves what turns; all carried leaves everything', () => {
    const none = pinBobweight({ ...road, reciprocatingFraction: 0 });
    expect(none.bobweight).toBe(none.rotating);
    const all = pinBobweight({ ...road, reciprocatingFraction: 1 });
    expect(all.bobweightShare).toBeCloseTo(1, 14);
  });

  test('two halves of a split pin, one rod each, add to a common pin of two', () => {
    const half = pinBobweight({ ...road, rodsPerPin: 1, oilMass: road.oilMass / 2 });
    expect(2 * half.bobweight).toBeCloseTo(pinBobweight(road).bobweight, 12);
  });

  test('a second rod heavier by 6 g and 8 g adds 6 g and half of 8 g', () => {
    const heavier = { ...road, partnerRotating: 0.006, partnerReciprocating: 0.008 };
    const more = pinBobweight(heavier).bobweight - pinBobweight(road).bobweight;
    expect(more).toBeCloseTo(0.01, 12);
    const alone = { ...road, rodsPerPin: 1 };
    expect(pinBobweight({ ...heavier, rodsPerPin: 1 })).toEqual(pinBobweight(alone));
  });
});

describe('properties', () => {
  test('the blocks of the bar add up to the bobweight', () => {
    fc.assert(
      fc.property(parts, (input) => {
        const out = declaration.compute(input);
        const blocks = [
          out.bigEnds,
          out.shells,
          out.oil,
          out.smallEndsCarried,
          out.pinsCarried,
          out.locksCarried,
          out.pistonsCarried,
          out.ringsCarried,
        ];
        const sum = blocks.reduce((total, block) => total + block, 0);
        expect(sum).toBeCloseTo(out.bobweight, 10);
        expect(out.bobweight).toBeCloseTo(pinBobweight(input).bobweight, 12);
      }),
    );
  });

  test(proves(routes.linearEachMass), () => {
    const slopes = {
      bigEndMass: (n: number) => n,
      shellMass: (n: number) => n,
      oilMass: () => 1,
      smallEndMass: (n: number, f: number) => f * n,
      pinMass: (n: number, f: number) => f * n,
      lockMass: (n: number, f: number) => f * n,
      pistonMass: (n: number, f: number) => f * n,
      ringMass: (n: number, f: number) => f * n,
    };
    for (const [name, slope] of Object.entries(slopes))
      fc.assert(
        fc.property(parts, grams, (input, more) => {
          const before = pinBobweight(input).bobweight;
          const value = input[name as keyof typeof slopes];
          const after = pinBobweight({ ...input, [name]: value + more }).bobweight;
          const expected = slope(input.rodsPerPin, input.reciprocatingFraction) * more;
          expect(after - before).toBeCloseTo(expected, 9);
        }),
      );
  });

  test(proves(quotedRoutes.impliedSplitUndoes), () => {
    fc.assert(
      fc.property(parts, (input) => {
        const f = Math.min(input.reciprocatingFraction, 0.9);
        const alike = {
          ...input,
          reciprocatingFraction: f,
          partnerRotating: 0,
          partnerReciprocating: 0,
        };
        const { bobweight } = pinBobweight(alike);
        const rodMass = alike.bigEndMass + alike.smallEndMass;
        const implied = impliedEnds({ ...alike, bobweight, rodMass });
        expect(implied.bigEndMass).toBeCloseTo(alike.bigEndMass, 9);
        expect(implied.smallEndMass).toBeCloseTo(alike.smallEndMass, 9);
        expect(implied.bigEndShare).toBeCloseTo(alike.bigEndMass / rodMass, 7);
      }),
    );
  });
});
