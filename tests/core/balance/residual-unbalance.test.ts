import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/residual-unbalance/routes.ts';
import { residualUnbalance } from '../../../src/calculators/balance/residual-unbalance.ts';
import {
  bearingShares,
  correctionShares,
  gradeOf,
  permissible,
  reach,
  residualOf,
  type Bearings,
  type CorrectionPlanes,
} from '../../../src/core/balance/residual-unbalance.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';

const rotor = { crankMass: 8, bobweightsMass: 2, maxSpeed: 100 };
const middle: Bearings = { bearingSpan: 0.4, cgToBearingA: 0.2 };
const atBearings: CorrectionPlanes = { planeA: -0.2, planeB: 0.2 };
/** Any rotor the rule knows: the centre of mass anywhere, planes inside or overhanging. */
const anywhere = fc.record({
  bearingSpan: evenly(0.1, 2),
  place: evenly(-0.29, 1.29),
  a: evenly(-0.9, -0.05),
  b: evenly(0.05, 0.9),
  uA: evenly(0, 1e-3),
  uB: evenly(0, 1e-3),
});

/** A drawn rotor in metres. */
function laidOut({
  bearingSpan,
  place,
  a,
  b,
}: Record<'bearingSpan' | 'place' | 'a' | 'b', number>) {
  const bearings: Bearings = { bearingSpan, cgToBearingA: place * bearingSpan };
  const planes: CorrectionPlanes = { planeA: a * bearingSpan, planeB: b * bearingSpan };
  return { bearings, planes };
}

/**
 * Second route: the loads that two unbalances at an angle put on both bearings, as vectors, from the sum of all forces
 * and the sum of all moments about plane A (own derivation). Nothing of it is shared with the model.
 */
function loadsAt(
  angle: number,
  [uA, uB]: readonly [number, number],
  { bearingSpan }: Bearings,
  { planeA, planeB }: CorrectionPlanes,
): readonly [number, number] {
  const loads = [
    [uA, uB * Math.cos(angle)],
    [0, uB * Math.sin(angle)],
  ].map(([inA = 0, inB = 0]) => {
    // R_A + R_B = inA + inB, and R_A (z_RA − z_A) + R_B (z_RB − z_A) = inB (z_B − z_A).
    const [armA, armB] = [-bearingSpan / 2 - planeA, bearingSpan / 2 - planeA];
    const atB = (inB * (planeB - planeA) - (inA + inB) * armA) / (armB - armA);
    return [inA + inB - atB, atB] as const;
  });
  const [x = [0, 0], y = [0, 0]] = loads;
  return [Math.hypot(x[0], y[0]), Math.hypot(x[1], y[1])];
}

/** The greatest load on each bearing over all angles; the worst one is 0 or half a turn. */
function worstLoads(
  ...[residuals, bearings, planes]: [readonly [number, number], Bearings, CorrectionPlanes]
): readonly [number, number] {
  const all = Array.from({ length: 360 }, (_, i) =>
    loadsAt((i * Math.PI) / 180, residuals, bearings, planes),
  );
  return [Math.max(...all.map(([a]) => a)), Math.max(...all.map(([, b]) => b))];
}

describe('closed forms', () => {
  test(proves(routes.centrifugalForce), () => {
    // 10 mm/s over 100 rad/s is 0.1 mm; times 10 kg are 1000 g·mm; times ω² are 10 N, which is G m ω too.
    const { eccentricity, unbalance, force } = permissible({ balanceGrade: 0.01 }, rotor);
    expect(eccentricity).toBeCloseTo(1e-4, 15);
    expect(unbalance).toBeCloseTo(1e-3, 15);
    expect(force).toBeCloseTo(10, 11);
    const bare = { ...rotor, crankMass: 10, bobweightsMass: 0 };
    expect(permissible({ balanceGrade: 0.01 }, bare).unbalance).toBe(unbalance);
    const output = residualUnbalance.compute({
      ...rotor,
      ...middle,
      ...atBearings,
      balanceGrade: 0.01,
      balanceRadius: 0.1,
      unbalanceFloor: 5e-4,
    });
    expect(output.rotorMass).toBe(10);
    expect(output.rimMass).toBeCloseTo(0.01, 14);
    // Half of the allowance at an end, so all of it at both.
    expect(output.floorGrade).toBeCloseTo(0.01, 14);
  });

  test.each([
    [1 / 3, 2 / 3, 1 / 3],
    [1 / 2, 1 / 2, 1 / 2],
    [0.1, 0.7, 0.3],
    [0.9, 0.3, 0.7],
    [1, 0.3, 0.7],
    [1.2, 0.3, 1.2],
    [-0.2, 1.2, 0.3],
    [1.3, 0.3, 1.3],
  ])(
    proves(routes.sharedLikeTheWeight, 'centre of mass at %f of the span: %f and %f'),
    (at, a, b) => {
      const shares = bearingShares({ bearingSpan: 2, cgToBearingA: 2 * at });
      expect(shares.a).toBeCloseTo(a, 14);
      expect(shares.b).toBeCloseTo(b, 14);
    },
  );

  test('planes at the bearings are permitted what the bearings are', () => {
    for (const cgToBearingA of [0.12, 0.15, 0.2, 0.27, 0.28]) {
      const bearings = { ...middle, cgToBearingA };
      const shares = bearingShares(bearings);
      const moved = correctionShares(bearings, atBearings);
      expect(moved.a).toBeCloseTo(shares.a, 14);
      expect(moved.b).toBeCloseTo(shares.b, 14);
    }
  });

  test('planes a quarter of the span beyond each bearing: half of it in each becomes a quarter over', () => {
    // Each unit makes 1.25 at the near bearing and 0.25 at the far one: 1.5 together, so 1/1.5 of it is permitted.
    const moved = correctionShares(middle, { planeA: -0.3, planeB: 0.3 });
    expect(moved.a).toBeCloseTo(1 / 3, 14);
    expect(moved.b).toBeCloseTo(1 / 3, 14);
  });

  test('both planes beyond one bearing: much less is permitted', () => {
    // Planes at 3/4 and 5/4 of the span beyond A: arms 0.25 and 0.75 behind bearing B of span 1.
    const moved = correctionShares(
      { bearingSpan: 1, cgToBearingA: 0.5 },
      { planeA: 0.75, planeB: 1.25 },
    );
    // Parts by the centre of mass: 1.25/0.5 held to 0.7, and 0.3. At B: 0.7 × 1.25 + 0.3 × 1.75 = 1.4 for a share of 0.5.
    expect(moved.a).toBeCloseTo((0.7 * 0.5) / 1.4, 14);
    expect(moved.b).toBeCloseTo((0.3 * 0.5) / 1.4, 14);
  });
});

describe('properties', () => {
  test('planes and centre of mass between the bearings: all of the allowance, held within its limits', () => {
    fc.assert(
      fc.property(
        fc.record({ place: evenly(0.4, 0.6), a: evenly(-0.5, -0.4), b: evenly(0.4, 0.5) }),
        ({ place, a, b }) => {
          const { bearings, planes } = laidOut({ bearingSpan: 0.7, place, a, b });
          const moved = correctionShares(bearings, planes);
          expect(moved.a + moved.b).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  test('turning the rotor end for end changes the names of the planes alone', () => {
    fc.assert(
      fc.property(anywhere, ({ uA, uB, ...drawn }) => {
        const { bearings, planes } = laidOut(drawn);
        const turned = {
          bearings: { ...bearings, cgToBearingA: bearings.bearingSpan - bearings.cgToBearingA },
          planes: { planeA: -planes.planeB, planeB: -planes.planeA },
        };
        const here = correctionShares(bearings, planes);
        const there = correctionShares(turned.bearings, turned.planes);
        expect(there.a).toBeCloseTo(here.b, 10);
        expect(there.b).toBeCloseTo(here.a, 10);
        const read = residualOf({ residualA: uA, residualB: uB }, bearings, planes);
        const mirrored = residualOf(
          { residualA: uB, residualB: uA },
          turned.bearings,
          turned.planes,
        );
        expect(mirrored.whole).toBeCloseTo(read.whole, 12);
      }),
    );
  });

  test('twice the speed permits half, and makes twice the grade of the same residual', () => {
    const fast = { ...rotor, maxSpeed: 200 };
    const grade = { balanceGrade: 0.0063 };
    expect(permissible(grade, fast).unbalance * 2).toBeCloseTo(
      permissible(grade, rotor).unbalance,
      15,
    );
    expect(gradeOf(1e-3, fast)).toBe(2 * gradeOf(1e-3, rotor));
  });
});

describe('second routes', () => {
  test(proves(routes.everyAngle), () => {
    fc.assert(
      fc.property(anywhere, ({ uA, uB, ...drawn }) => {
        const { bearings, planes } = laidOut(drawn);
        const [a, b] = worstLoads([uA, uB], bearings, planes);
        const { atBearings: found, whole } = residualOf(
          { residualA: uA, residualB: uB },
          bearings,
          planes,
        );
        expect(found.a).toBeCloseTo(a, 12);
        expect(found.b).toBeCloseTo(b, 12);
        const shares = bearingShares(bearings);
        expect(whole).toBeCloseTo(Math.max(a / shares.a, b / shares.b), 12);

        // What the planes are permitted fills the share of one bearing at the worst angle, and no share more than that.
        const moved = correctionShares(bearings, planes);
        const [fullA, fullB] = worstLoads([moved.a, moved.b], bearings, planes);
        expect(Math.max(fullA / shares.a, fullB / shares.b)).toBeCloseTo(1, 9);

        const output = residualUnbalance.compute({
          ...rotor,
          ...bearings,
          ...planes,
          balanceGrade: 0.0063,
          balanceRadius: 0.07,
          residualA: uA,
          residualB: uB,
        });
        expect(output.residualForce).toBeCloseTo(Math.max(a, b) * rotor.maxSpeed ** 2, 8);
        expect(output.correctionA).toBeCloseTo(moved.a * output.permissible, 12);
        expect(output.correctionB).toBeCloseTo(moved.b * output.permissible, 12);
      }),
      { numRuns: 40 },
    );
  });

  test(proves(routes.thereAndBack), () => {
    fc.assert(
      fc.property(anywhere, evenly(0.0004, 0.04), (drawn, balanceGrade) => {
        const { bearings, planes } = laidOut(drawn);
        const given = { ...rotor, ...bearings, ...planes, balanceGrade, balanceRadius: 0.07 };
        const permitted = residualUnbalance.compute(given);
        const back = residualUnbalance.compute({
          ...given,
          residualA: permitted.correctionA,
          residualB: permitted.correctionB,
        });
        expect(back.gradeReached).toBeCloseTo(balanceGrade, 12);
        expect(back.allowanceUsed).toBeCloseTo(1, 10);
      }),
    );
  });
});

describe('refusals', () => {
  test('a centre of mass farther out than the rule knows', () => {
    expect(() => bearingShares({ bearingSpan: 0.4, cgToBearingA: 0.53 })).toThrow(OutOfDomain);
    expect(() => bearingShares({ bearingSpan: 0.4, cgToBearingA: -0.13 })).toThrow(OutOfDomain);
  });

  test('correction planes that coincide', () => {
    expect(() => reach(middle, { planeA: 0, planeB: 0 })).toThrow(OutOfDomain);
  });

  test('ten thousand g·mm in a crank of 2 kg get a grade and words, and no refusal', () => {
    const input = {
      crankMass: 2,
      bobweightsMass: 0,
      maxSpeed: 880,
      ...middle,
      ...atBearings,
      balanceGrade: 0.0063,
      balanceRadius: 0.07,
      residualA: 5e-3,
      residualB: 5e-3,
    };
    const output = residualUnbalance.compute(input);
    expect(output.gradeReached).toBeCloseTo(4.4, 12);
    const broken = residualUnbalance.limits.filter(({ holds }) => !holds(input, output));
    expect(broken.map(({ id }) => id)).toEqual(['within-grade', 'a-residual']);
  });

  test('what was not read is told so, beside what is permitted', () => {
    const output = residualUnbalance.compute({
      ...rotor,
      ...middle,
      ...atBearings,
      balanceGrade: 0.0063,
      balanceRadius: 0.07,
    });
    expect(output.permissible).toBeGreaterThan(0);
    expect(output.gradeReached).toEqual({ absent: 'Enter what the machine reads in both planes.' });
    expect(output.floorGrade).toEqual({ absent: 'Work the floor, or enter one.' });
  });
});
