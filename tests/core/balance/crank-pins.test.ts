import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/crank-layout/routes.ts';
import {
  type CrankLayout,
  crankLayouts,
  throwsOf,
} from '../../../src/calculators/balance/crank-layout.choices.ts';
import {
  crankPins,
  factorBy,
  type FactorBy,
  leastFactor,
  primaryLeft,
} from '../../../src/core/balance/crank-pins.ts';
import { throwSums, type Throw } from '../../../src/core/balance/crank-throws.ts';
import { length } from '../../../src/core/balance/vectors.ts';
import {
  displacement,
  meanPistonSpeed,
  overRevRise,
} from '../../../src/core/motion/engine-size.ts';
import { crankLayout } from '../../../src/calculators/balance/crank-layout.ts';
import { proves } from '../../proves.ts';
import { evenly } from '../../evenly.ts';
import { must } from '../../calculators/must.ts';

const half = { reciprocatingFraction: leastFactor };

/** Pins, places for a bobweight, rods on each, bobweights needed, bank angle [degrees]; and what settles the factor. */
const byHand: Readonly<
  Record<CrankLayout, readonly [number, number, number, number, number | undefined, FactorBy]>
> = {
  single: [1, 1, 1, 1, 0, 'choice'],
  'inline-2-360': [2, 2, 1, 2, 0, 'choice'],
  'inline-2-180': [2, 2, 1, 2, 0, 'choice'],
  'inline-2-270': [2, 2, 1, 2, 0, 'choice'],
  'inline-3': [3, 3, 1, 3, 0, 'choice'],
  'inline-4-flat': [4, 4, 1, 0, 0, 'none'],
  'inline-4-cross': [4, 4, 1, 4, 0, 'choice'],
  'inline-4-cross-1423': [4, 4, 1, 4, 0, 'choice'],
  'inline-5': [5, 5, 1, 5, 0, 'choice'],
  'inline-6': [6, 6, 1, 0, 0, 'none'],
  'v2-45': [1, 1, 2, 1, 45, 'choice'],
  'v2-52': [1, 1, 2, 1, 52, 'choice'],
  'v2-60': [1, 1, 2, 1, 60, 'choice'],
  'v2-75': [1, 1, 2, 1, 75, 'choice'],
  'v2-90': [1, 1, 2, 1, 90, 'result'],
  'v2-45-split': [1, 2, 1, 2, 45, 'result'],
  'v2-52-split': [1, 2, 1, 2, 52, 'result'],
  'v2-60-split': [1, 2, 1, 2, 60, 'result'],
  'v2-75-split': [1, 2, 1, 2, 75, 'result'],
  'v4-90': [2, 2, 2, 2, 90, 'result'],
  'v6-90-common': [3, 3, 2, 3, 90, 'result'],
  'v6-90-split': [3, 6, 1, 6, 90, 'choice'],
  'v6-60-common': [3, 3, 2, 3, 60, 'choice'],
  'v6-60-split': [3, 6, 1, 6, 60, 'result'],
  'v8-cross': [4, 4, 2, 4, 90, 'result'],
  'v8-flat': [4, 4, 2, 0, 90, 'none'],
  'v10-72': [5, 5, 2, 5, 72, 'choice'],
  'v10-90': [5, 5, 2, 5, 90, 'result'],
  'v12-60': [6, 6, 2, 0, 60, 'none'],
  'flat-2': [2, 2, 1, 2, 180, 'choice'],
  'flat-4': [4, 4, 1, 0, 180, 'none'],
  'flat-6': [6, 6, 1, 0, 180, 'none'],
  // More than two banks have no angle between them.
  'radial-3': [1, 1, 3, 1, undefined, 'result'],
  'radial-5': [1, 1, 5, 1, undefined, 'result'],
  'radial-7': [1, 1, 7, 1, undefined, 'result'],
  'radial-9': [1, 1, 9, 1, undefined, 'result'],
};

describe('closed forms', () => {
  test.each(crankLayouts)(proves(routes.countedByHand, '%s is counted as by hand'), (id) => {
    const [pins, places, rodsPerPin, bobweights, bank, by] = byHand[id];
    const found = crankPins(throwsOf(id));
    expect(found).toMatchObject({ pins, places, rodsPerPin, bobweights });
    expect(found.cylinders).toBe(places * rodsPerPin);
    // Its name says how many: V8 is eight, an in-line three three.
    const named = /^(?:inline|v|flat|radial)-?(\d+)/.exec(id)?.[1] ?? '1';
    expect(found.cylinders).toBe(Number(named));
    if (bank === undefined) expect(found.bankAngle).toBeUndefined();
    else expect((must(found.bankAngle) * 180) / Math.PI).toBeCloseTo(bank, 12);
    expect(factorBy(throwsOf(id))).toBe(by);
  });

  test.each<[CrankLayout, number, number]>([
    ['single', 0.5, 0],
    ['v2-45', Math.SQRT1_2, 0],
    ['v2-60', 0.5, 0],
    ['v2-90', 0, 0],
    ['inline-3', 0, Math.sqrt(3) / 2],
    ['v6-60-common', 0, Math.sqrt(3) / 2],
    ['v6-90-split', 0, ((Math.sqrt(3) - 1) / 2) * Math.sqrt(3 / 2)],
    ['inline-6', 0, 0],
  ])(
    proves(routes.leftInClosedForm, '%s: one half leaves %f F₁ and %f F₁a'),
    (id, force, couple) => {
      const left = primaryLeft(throwsOf(id), half);
      expect(left.force).toBeCloseTo(force, 13);
      expect(left.couple).toBeCloseTo(couple, 13);
    },
  );

  test('the other factor of an evenly firing V6 at 90° leaves twice its backward couple in one plane', () => {
    const throws = throwsOf('v6-90-split');
    const factor = { reciprocatingFraction: (Math.sqrt(3) - 1) / 2 };
    expect(primaryLeft(throws, factor).couple).toBeCloseTo(
      2 * primaryLeft(throws, half).couple,
      12,
    );
  });

  test(proves(routes.twentiethOver), () => {
    expect(overRevRise({ maxSpeed: 600, missedShiftSpeed: 630 })).toBeCloseTo(0.1025, 14);
    expect(overRevRise({ maxSpeed: 600, missedShiftSpeed: 600 })).toBe(0);
    const { rodRatio } = crankLayout.compute({
      crankLayout: 'single',
      stroke: 0.08,
      rodLength: 0.12,
    });
    expect(rodRatio).toBeCloseTo(1.5, 14);
  });

  test('a bore of two over √π sweeps its stroke, and a stroke of π at 1 rad/s goes at 1 m/s', () => {
    const bore = 2 / Math.sqrt(Math.PI);
    expect(displacement({ bore, stroke: 3, cylinders: 5 })).toBeCloseTo(15, 12);
    expect(meanPistonSpeed({ stroke: Math.PI, maxSpeed: 1 })).toBe(1);
  });
});

describe('pins with different numbers of rods', () => {
  const flat = (...rods: readonly number[]): readonly Throw[] =>
    throwsOf('inline-4-flat').map((one, at) => ({
      ...one,
      banks: Array.from({ length: rods[at] ?? 1 }, (_, bank) => bank / 2),
    }));

  test('cancel only where the throws do so with any mass of a throw and of a rod', () => {
    expect(crankPins(flat(2, 2, 2, 2))).toMatchObject({ rodsPerPin: 2, bobweights: 0 });
    // Four equal masses cancel on these throws; two rods outside against one inside do not.
    expect(crankPins(flat(2, 1, 1, 2))).toMatchObject({
      rodsPerPin: undefined,
      cylinders: 6,
      bobweights: 4,
    });
  });

  test('banks are counted the shorter way round', () => {
    const across = (one: number, other: number) =>
      crankPins([{ angle: 0, position: 0, banks: [one, other] }]).bankAngle;
    expect(across(-3, 3)).toBeCloseTo(2 * Math.PI - 6, 12);
    expect(across(-Math.PI / 2, Math.PI / 2)).toBe(Math.PI);
    expect(across(0.2, 0.2 + 2 * Math.PI)).toBeCloseTo(0, 12);
  });
});

/** Throws with one to three rods each, about no middle in particular. */
const crank: fc.Arbitrary<readonly Throw[]> = fc.integer({ min: 1, max: 3 }).chain((rods) =>
  fc.array(
    fc.record({
      angle: evenly(-7, 7),
      position: evenly(-3, 3),
      banks: fc.array(evenly(-2, 2), { minLength: rods, maxLength: rods }),
    }),
    { minLength: 1, maxLength: 6 },
  ),
);

describe('properties', () => {
  test('no factor leaves less than one half, and that leaves what rotates backward', () => {
    fc.assert(
      fc.property(crank, evenly(0, 1), (throws, reciprocatingFraction) => {
        const least = primaryLeft(throws, half);
        const other = primaryLeft(throws, { reciprocatingFraction });
        expect(other.force).toBeGreaterThanOrEqual(least.force);
        expect(other.couple).toBeGreaterThanOrEqual(least.couple);
      }),
    );
  });

  test('turning a crank, or its numbering from the other end, changes no count', () => {
    fc.assert(
      fc.property(fc.constantFrom(...crankLayouts), evenly(-7, 7), (id, turn) => {
        const turned = throwsOf(id).map(({ angle, position, banks }) => ({
          angle: angle + turn,
          position: -position,
          banks: banks.map((bank) => bank + turn),
        }));
        const { bankAngle, ...counts } = crankPins(throwsOf(id));
        expect(crankPins(turned)).toMatchObject(counts);
        if (bankAngle === undefined) expect(crankPins(turned).bankAngle).toBeUndefined();
        else expect(crankPins(turned).bankAngle).toBeCloseTo(bankAngle, 12);
      }),
    );
  });

  test('two like cranks end to end, one of them turned by half a turn, have no force left', () => {
    fc.assert(
      fc.property(crank, (throws) => {
        const both = [
          ...throws,
          ...throws.map((one) => ({
            ...one,
            angle: one.angle + Math.PI,
            position: one.position + 9,
          })),
        ];
        expect(length(throwSums(both).force)).toBeLessThan(1e-12);
        expect(primaryLeft(both, half).force).toBeLessThan(1e-12);
        expect(crankPins(both).cylinders).toBe(2 * crankPins(throws).cylinders);
      }),
    );
  });
});

describe('second route', () => {
  test(proves(routes.inTwoBearings), () => {
    for (const id of crankLayouts) {
      /** Loads of two bearings at ∓4 pin spacings: one kilogram at one metre on every throw, turned at 1 rad/s. */
      const loads = (turn: number): readonly [number, number] => {
        let [first, second] = [0, 0];
        for (const { angle, position } of throwsOf(id)) {
          const pull = Math.cos(angle + turn);
          first += (pull * (4 - position)) / 8;
          second += (pull * (4 + position)) / 8;
        }
        return [first, second];
      };
      const now = loads(0);
      const quarter = loads(Math.PI / 2);
      const { bobweights, forceFactor, coupleFactor } = crankLayout.compute({ crankLayout: id });
      expect(bobweights === 0, id).toBe(
        [...now, ...quarter].every((load) => Math.abs(load) < 1e-12),
      );
      expect(Math.hypot(now[0] + now[1], quarter[0] + quarter[1])).toBeCloseTo(forceFactor, 12);
      expect(4 * Math.hypot(now[1] - now[0], quarter[1] - quarter[0])).toBeCloseTo(
        coupleFactor,
        12,
      );
    }
  });

  test(proves(routes.lookedAtAllRound), () => {
    const steps = 720;
    for (const id of crankLayouts) {
      const throws = throwsOf(id);
      /** Greatest force or couple in a turn with this factor: each pull along its bore, less what is opposite the throw. */
      const greatest = (f: number, arm: (one: Throw) => number): number => {
        let most = 0;
        for (let i = 0; i < steps; i += 1) {
          const turn = (2 * Math.PI * i) / steps;
          let x = 0;
          let y = 0;
          for (const one of throws)
            for (const bank of one.banks) {
              const pull = arm(one) * Math.cos(one.angle + turn - bank);
              x += pull * Math.cos(bank) - arm(one) * f * Math.cos(one.angle + turn);
              y += pull * Math.sin(bank) - arm(one) * f * Math.sin(one.angle + turn);
            }
          most = Math.max(most, Math.hypot(x, y));
        }
        return most;
      };
      const { forceLeft, coupleLeft, reciprocatingFraction } = crankLayout.compute({
        crankLayout: id,
      });
      // Half a degree beside the greatest lacks at most 4 in 10⁵ of it.
      const near = (one: number, other: number): void => {
        expect(Math.abs(one - other), id).toBeLessThan(1e-4 * (1 + other));
      };
      near(
        greatest(0.5, () => 1),
        forceLeft,
      );
      near(
        greatest(0.5, ({ position }) => position),
        coupleLeft,
      );
      const factors = Array.from({ length: 21 }, (_, i) => i / 20);
      const sums = factors.map(
        (f) => greatest(f, () => 1) + greatest(f, ({ position }) => position),
      );
      const least = Math.min(...sums);
      const most = Math.max(...sums);
      if (typeof reciprocatingFraction !== 'number') expect(most).toBeLessThan(1e-12);
      else expect(factors[sums.indexOf(least)]).toBe(reciprocatingFraction);
      // What other factors leave goes up by the same rule on both sides.
      for (const f of [0, 0.25, 0.366, 0.8, 1]) {
        const left = primaryLeft(throws, { reciprocatingFraction: f });
        near(
          greatest(f, () => 1),
          left.force,
        );
        near(
          greatest(f, ({ position }) => position),
          left.couple,
        );
      }
    }
  });
});

describe('refusals', () => {
  test('throws without a rod are no layout', () => {
    const one = { angle: 0, position: 0, banks: [0] };
    expect(() => crankPins([{ ...one, banks: [] }])).toThrow(RangeError);
  });
});
