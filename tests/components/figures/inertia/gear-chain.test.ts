import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inertiaThroughGears } from '../../../../src/calculators/inertia/inertia-through-gears.ts';
import {
  chainCircles,
  chainReach,
  crankTurns,
  gearChain,
  pitchRadii,
  roadSegments,
  roadTotal,
  type GearChain,
} from '../../../../src/components/figures/inertia/gear-chain.ts';

const input = {
  engineInertia: 0.25,
  gearRatio: 2,
  finalDrive: 3,
  tyreRadius: 0.3,
  drivelineEfficiency: 0.9,
  carMass: 1000,
  wheelInertia: 0.9,
  netTorque: 300,
};
const given = (change: Partial<typeof input> = {}): GearChain => {
  const own = { ...input, ...change };
  const chain = gearChain({ input: own, output: inertiaThroughGears.compute(own), stale: false });
  if (chain === undefined) throw new Error('There is a chain.');
  return chain;
};

describe('the chain of a set', () => {
  it('lays engine, wheels and car end to end: 0.25 · (6/0.3)², 4 · 0.9/0.3² and 1000 kg', () => {
    const segments = roadSegments(given());
    expect(segments.map(({ value }) => Math.round(value * 1e6) / 1e6)).toEqual([100, 40, 1000]);
    expect(roadTotal(given())).toBeCloseTo(1140, 9);
    expect(segments.at(-1)?.to).toBeCloseTo(1140, 9);
    expect(crankTurns(given())).toBe(6);
  });
  it('is not drawn while a number is missing', () => {
    const output = inertiaThroughGears.compute(input);
    expect(gearChain({ input: { ...input, carMass: undefined }, output, stale: false })).toBe(
      undefined,
    );
    expect(gearChain({ input: undefined, output: undefined, stale: true })).toBe(undefined);
  });
});

it('two gears touch between their axes, and their radii are as their ratio', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.4, max: 15, noNaN: true }),
      fc.double({ min: 30, max: 120, noNaN: true }),
      (ratio, apart) => {
        const [driving, driven] = pitchRadii(ratio, apart);
        expect(driving + driven).toBeCloseTo(apart, 9);
        expect(driven / driving).toBeCloseTo(ratio, 9);
      },
    ),
  );
});

describe('a chain as it is drawn', () => {
  const chain = fc
    .record({
      engineInertia: fc.double({ min: 0.002, max: 10, noNaN: true }),
      gearRatio: fc.double({ min: 0.4, max: 8, noNaN: true }),
      finalDrive: fc.double({ min: 1, max: 15, noNaN: true }),
      tyreRadius: fc.double({ min: 0.15, max: 1, noNaN: true }),
    })
    .map(given);
  const width = fc.integer({ min: 270, max: 380 });

  it('stays inside its drawing, beside the word for the tyre', () => {
    fc.assert(
      fc.property(chain, chain, width, (one, other, wide) => {
        const drawn = [one, other].map((own) => chainCircles(own, [one, other], wide));
        const reach = chainReach(drawn);
        for (const { shafts, engine, gears, finals, tyre } of drawn) {
          const [first, second, third] = shafts;
          expect(first - Math.max(engine, gears[0])).toBeGreaterThanOrEqual(0);
          expect(third + Math.max(tyre, finals[1])).toBeLessThan(wide - 40);
          expect(gears[0] + gears[1]).toBeCloseTo(second - first, 9);
          expect(finals[0] + finals[1]).toBeCloseTo(third - second, 9);
          expect(Math.max(engine, tyre, ...gears, ...finals)).toBeLessThanOrEqual(reach);
        }
      }),
    );
  });
  it('has tyres in proportion, and engines as discs of their inertia', () => {
    fc.assert(
      fc.property(chain, chain, width, (one, other, wide) => {
        const a = chainCircles(one, [one, other], wide);
        const b = chainCircles(other, [one, other], wide);
        expect(a.tyre / b.tyre).toBeCloseTo(one.tyre / other.tyre, 9);
        expect(((a.engine / b.engine) ** 4 * other.engineInertia) / one.engineInertia).toBeCloseTo(
          1,
          9,
        );
      }),
    );
  });
});
