import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CrankLayout,
  crankLayouts,
  throwsOf,
} from '../../../src/calculators/balance/crank-layout.choices.ts';
import {
  planeUnbalance,
  primaryParts,
  type Throw,
  throwSums,
} from '../../../src/core/balance/crank-throws.ts';
import { length } from '../../../src/core/balance/vectors.ts';
import { routes } from '../../../content/topics/residual-unbalance/routes.ts';
import { proves } from '../../proves.ts';
import { evenly } from '../../evenly.ts';

/** The crank of the invented V8, lengths in metres. */
const crank = {
  bobweightError: 0.001,
  stroke: 0.073,
  cylinderSpacing: 0.1,
  planeA: -0.194,
  planeB: 0.194,
};

describe('forward and backward parts', () => {
  // Worked beside this code from crank and bank angles, by phasors; six figures.
  test.each<[CrankLayout, number, number, number, number]>([
    ['single', 0.5, 0.5, 0, 0],
    ['inline-2-360', 1, 1, 0, 0],
    ['inline-2-180', 0, 0, 0.5, 0.5],
    ['inline-2-270', 0.70711, 0.70711, 0.35355, 0.35355],
    ['inline-3', 0, 0, 0.86603, 0.86603],
    ['inline-4-flat', 0, 0, 0, 0],
    ['inline-4-cross', 0, 0, 1.58114, 1.58114],
    ['inline-5', 0, 0, 0.22451, 0.22451],
    ['inline-6', 0, 0, 0, 0],
    ['v2-45', 1, 0.70711, 0, 0],
    ['v2-60', 1, 0.5, 0, 0],
    ['v2-90', 1, 0, 0, 0],
    ['v6-90-common', 0, 0, 1.73205, 0],
    ['v6-90-split', 0, 0, 1.67303, 0.44829],
    ['v6-60-common', 0, 0, 1.73205, 0.86603],
    ['v6-60-split', 0, 0, 1.5, 0],
    ['v8-cross', 0, 0, 3.16228, 0],
    ['v8-flat', 0, 0, 0, 0],
    ['v12-60', 0, 0, 0, 0],
    ['flat-4', 0, 0, 0, 0],
  ])('%s', (id, forwardForce, backwardForce, forwardCouple, backwardCouple) => {
    const { forward, backward } = primaryParts(throwsOf(id));
    const near = (computed: number, worked: number) => {
      expect(Math.abs(computed - worked)).toBeLessThan(6e-6);
    };
    near(forward.force, forwardForce);
    near(backward.force, backwardForce);
    near(forward.couple, forwardCouple);
    near(backward.couple, backwardCouple);
  });

  test('with the pins split the other way the pistons of a V6 move in step: 3 F₁a', () => {
    const wrong = throwsOf('v6-60-split').map((one) => ({
      ...one,
      banks: one.banks.map((beta) => -beta),
    }));
    const { forward, backward } = primaryParts(wrong);
    expect(forward.couple + backward.couple).toBeCloseTo(3, 12);
  });
});

describe('closed forms', () => {
  test.each<[CrankLayout, number, number]>([
    ['v8-cross', 0, Math.sqrt(10)],
    ['v6-90-common', 0, Math.sqrt(3)],
    ['v6-90-split', 0, 2 * Math.sqrt(3) * Math.cos(Math.PI / 12)],
    ['v6-60-split', 0, 3],
    ['v4-90', 0, 1],
    ['inline-2-270', Math.SQRT2, Math.SQRT1_2],
    ['inline-6', 0, 0],
  ])(proves(routes.throwsAdd, '%s: throws add to %f and %f'), (id, force, couple) => {
    const sums = throwSums(throwsOf(id));
    expect(length(sums.force)).toBeCloseTo(force, 12);
    expect(length(sums.couple)).toBeCloseTo(couple, 12);
  });

  test('a V6 at 90° with split pins: (√3 − 1)/2 makes forward and backward alike', () => {
    const { forward, backward } = primaryParts(throwsOf('v6-90-split'));
    const f = (Math.sqrt(3) - 1) / 2;
    // Of each rod's forward half the counterweight takes the balance factor f.
    expect(forward.couple * (1 - 2 * f)).toBeCloseTo(backward.couple, 12);
  });

  test(proves(routes.commonPinsLeave), () => {
    for (const id of ['v2-90', 'v4-90', 'v6-90-common', 'v8-cross', 'v8-flat', 'v10-90'] as const) {
      expect(primaryParts(throwsOf(id)).backward).toEqual({ force: 0, couple: 0 });
    }
  });

  test('one gram on every pin of the invented V8: about 30 g·mm at each end', () => {
    const { atA, atB } = planeUnbalance(throwsOf('v8-cross'), crank);
    // By hand: 1 g × 36.5 mm × √10 × 100/388.
    const byHand = (36.5 * Math.sqrt(10) * 100) / 388;
    expect(length(atA) * 1e6).toBeCloseTo(byHand, 9);
    expect(length(atB) * 1e6).toBeCloseTo(byHand, 9);
    expect(byHand).toBeCloseTo(29.748, 3);
    // 18.43° from throw 1 towards throw 2 at one end, opposite at the other.
    expect((Math.atan2(atA.across, atA.along) * 180) / Math.PI).toBeCloseTo(18.435, 3);
    expect(atA.along).toBeCloseTo(-atB.along, 15);
  });

  test('a single throw in the middle is shared by both ends', () => {
    const { atA, atB } = planeUnbalance(throwsOf('single'), crank);
    expect(length(atA)).toBeCloseTo((0.001 * 0.0365) / 2, 15);
    expect(length(atB)).toBeCloseTo((0.001 * 0.0365) / 2, 15);
  });

  test('cranks whose throws cancel do not see equal bobweights at all', () => {
    for (const id of [
      'inline-4-flat',
      'inline-6',
      'v8-flat',
      'v12-60',
      'flat-4',
      'flat-6',
    ] as const)
      for (const vector of Object.values(planeUnbalance(throwsOf(id), crank)))
        expect(length(vector)).toBe(0);
  });
});

describe('properties', () => {
  const one: fc.Arbitrary<Throw> = fc.record({
    angle: evenly(-7, 7),
    position: evenly(-3, 3),
    banks: fc.constant([0]),
  });
  const some = fc.array(one, { minLength: 1, maxLength: 8 });

  test(proves(routes.twoPlanesTogether), () => {
    fc.assert(
      fc.property(some, (throws) => {
        const { atA, atB } = planeUnbalance(throws, crank);
        const { force, couple } = throwSums(throws);
        const u = crank.bobweightError * (crank.stroke / 2);
        expect(atA.along + atB.along).toBeCloseTo(u * force.along, 12);
        expect(atA.across + atB.across).toBeCloseTo(u * force.across, 12);
        expect(crank.planeA * atA.along + crank.planeB * atB.along).toBeCloseTo(
          u * crank.cylinderSpacing * couple.along,
          12,
        );
      }),
    );
  });

  test(proves(routes.lineForwardBackward), () => {
    fc.assert(
      fc.property(some, (throws) => {
        const { forward, backward } = primaryParts(throws);
        expect(forward.force).toBeCloseTo(backward.force, 10);
        expect(forward.couple).toBeCloseTo(backward.couple, 10);
      }),
    );
  });

  test('rods on any banks shake as the pistons, added up at two angles of the crank, say', () => {
    const turn = evenly(-7, 7);
    const banked = fc.record({
      angle: turn,
      position: evenly(-3, 3),
      banks: fc.array(turn, { minLength: 1, maxLength: 3 }),
    });
    /** Forces of all pistons along their banks, each times `arm`, with the crank turned on by φ. */
    const pistons = (throws: readonly Throw[], φ: number, arm: (one: Throw) => number) => {
      const forces = throws.flatMap((one) =>
        one.banks.map((β) => [arm(one) * Math.cos(one.angle + φ - β), β] as const),
      );
      return {
        along: forces.reduce((sum, [force, β]) => sum + force * Math.cos(β), 0),
        across: forces.reduce((sum, [force, β]) => sum + force * Math.sin(β), 0),
      };
    };
    fc.assert(
      fc.property(fc.array(banked, { minLength: 1, maxLength: 6 }), (throws) => {
        const { forward, backward } = primaryParts(throws);
        for (const [part, arm] of [
          ['force', () => 1],
          ['couple', (one: Throw) => one.position],
        ] as const) {
          // A e^{iφ} + B e^{−iφ} at no turn and at a quarter: A + B and i (A − B).
          const start = pistons(throws, 0, arm);
          const quarter = pistons(throws, Math.PI / 2, arm);
          const A = Math.hypot(start.along + quarter.across, start.across - quarter.along) / 2;
          const B = Math.hypot(start.along - quarter.across, start.across + quarter.along) / 2;
          expect(forward[part]).toBeCloseTo(A, 12);
          expect(backward[part]).toBeCloseTo(B, 12);
        }
      }),
    );
  });

  test('every layout stands about the middle of its crank', () => {
    for (const id of crankLayouts) {
      const places = throwsOf(id).map(({ position }) => position);
      expect(places.reduce((sum, place) => sum + place, 0)).toBe(0);
    }
  });
});
