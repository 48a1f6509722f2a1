import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/two-plane/routes.ts';
import { crankLayouts, throwsOf } from '../../../src/calculators/balance/crank-layout.choices.ts';
import {
  changeOnThrows,
  greatestBending,
  heldAtEnds,
  pullsOnMiddleMains,
} from '../../../src/core/balance/bobweight-change.ts';
import { planeUnbalance } from '../../../src/core/balance/crank-throws.ts';
import { against, type CrankWeight } from '../../../src/core/balance/crank-weights.ts';
import { atPlanes } from '../../../src/core/balance/moved-planes.ts';
import { added, direction, length, scaled, vectorAt } from '../../../src/core/balance/vectors.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';

const crank = {
  newBobweight: 1.2331,
  balancedBobweight: 1.6852,
  stroke: 0.073,
  cylinderSpacing: 0.1,
};
const planes = { planeA: -0.194, planeB: 0.194 };

describe('closed forms', () => {
  test(proves(routes.crossPlaneByHand), () => {
    const { ends } = heldAtEnds(changeOnThrows(throwsOf('v8-cross'), crank), planes);
    // 452.1 g · 36.5 mm · √10 · 100/388.
    const byHand = (452.1 * 36.5 * Math.sqrt(10) * 100) / 388;
    expect(byHand).toBeCloseTo(13449, 0);
    expect(length(ends.atA) * 1e6).toBeCloseTo(byHand, 6);
    expect(length(ends.atB) * 1e6).toBeCloseTo(byHand, 6);
    // A lighter bobweight leaves the counterweights’ side heavy: opposite the throw, at the nose.
    expect((direction(ends.atA) * 180) / Math.PI).toBeCloseTo(-180 + 18.435, 3);
    expect((direction(ends.atB) * 180) / Math.PI).toBeCloseTo(18.435, 3);
    const pulls = pullsOnMiddleMains(changeOnThrows(throwsOf('v8-cross'), crank)).map(length);
    const pin = 0.4521 * 0.0365;
    expect(pulls.map((pull) => pull / pin)).toEqual([
      expect.closeTo(Math.SQRT1_2, 12),
      0,
      expect.closeTo(Math.SQRT1_2, 12),
    ]);
  });

  test('a flat crank of four: the machine sees nothing, and the middle main gets a whole pull', () => {
    const change = changeOnThrows(throwsOf('inline-4-flat'), crank);
    const { ends, bending } = heldAtEnds(change, planes);
    expect(length(ends.atA)).toBe(0);
    expect(length(ends.atB)).toBe(0);
    const pin = 0.4521 * 0.0365;
    expect(pullsOnMiddleMains(change).map((pull) => length(pull) / pin)).toEqual([
      0,
      expect.closeTo(1, 12),
      0,
    ]);
    // Pulls of one pin up, two down, one up: P a in the middle of the crank.
    expect(bending).toBeCloseTo(pin * 0.1, 12);
  });

  test('a single throw is held by both ends, bent by a quarter of pull times distance', () => {
    const change = changeOnThrows(throwsOf('single'), crank);
    expect(heldAtEnds(change, planes).bending).toBeCloseTo((0.4521 * 0.0365 * 0.388) / 4, 12);
    expect(pullsOnMiddleMains(change)).toEqual([]);
  });

  test('the halves of a split pin pull at one place', () => {
    const change = changeOnThrows(throwsOf('v6-90-split'), crank);
    expect(change).toHaveLength(6);
    expect(pullsOnMiddleMains(change)).toHaveLength(2);
  });

  test('no change pulls nowhere', () => {
    const change = changeOnThrows(throwsOf('v8-cross'), { ...crank, newBobweight: 1.6852 });
    expect(heldAtEnds(change, planes).bending).toBe(0);
  });
});

describe('second routes', () => {
  test('the sum of the throws, as it is worked for the error of a bobweight', () => {
    for (const id of crankLayouts) {
      const throws = throwsOf(id);
      const { atA, atB } = heldAtEnds(changeOnThrows(throws, crank), planes).ends;
      const other = planeUnbalance(throws, { ...crank, ...planes, bobweightError: -0.4521 });
      expect(length(added(atA, scaled(other.atA, -1)))).toBeLessThan(1e-15);
      expect(length(added(atB, scaled(other.atB, -1)))).toBeLessThan(1e-15);
    }
  });

  const loads = fc.array(
    fc.record({
      unbalance: evenly(0, 0.02),
      angle: evenly(-Math.PI, Math.PI),
      position: evenly(-0.18, 0.18),
    }),
    { minLength: 1, maxLength: 6 },
  );

  test(proves(routes.beamBySlices), () => {
    fc.assert(
      fc.property(loads, (list) => {
        const balanced: readonly CrankWeight[] = [
          ...list,
          ...against(atPlanes(list, planes), planes),
        ];
        const steps = 10_000;
        const step = 0.388 / steps;
        const shears = [...balanced].sort((a, b) => a.position - b.position);
        let [shear, bending, most, next] = [vectorAt(0, 0), vectorAt(0, 0), 0, 0];
        for (let i = 0; i < steps; i += 1) {
          const place = -0.194 + (i + 0.5) * step;
          for (let one = shears[next]; one && one.position <= place; one = shears[next]) {
            shear = added(shear, vectorAt(one.unbalance, one.angle));
            next += 1;
          }
          bending = added(bending, scaled(shear, step));
          most = Math.max(most, length(bending));
        }
        // A load is felt half a step early or late: at most its pull times a step, six of them.
        expect(Math.abs(most - greatestBending(balanced))).toBeLessThan(6 * 0.02 * step);
      }),
      { numRuns: 30 },
    );
  });

  test('twice the change is twice of all, and turning the crank changes no size', () => {
    fc.assert(
      fc.property(loads, evenly(-3, 3), (list, by) => {
        const turned = list.map((one) => ({
          ...one,
          angle: one.angle + by,
          unbalance: 2 * one.unbalance,
        }));
        expect(heldAtEnds(turned, planes).bending).toBeCloseTo(
          2 * heldAtEnds(list, planes).bending,
          12,
        );
        const [was, is] = [list, turned].map((all) => pullsOnMiddleMains(all).map(length));
        was?.forEach((pull, i) => {
          expect(is?.[i]).toBeCloseTo(2 * pull, 12);
        });
      }),
    );
  });
});
