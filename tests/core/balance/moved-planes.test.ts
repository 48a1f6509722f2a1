import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/two-plane/routes.ts';
import { against, type CrankWeight } from '../../../src/core/balance/crank-weights.ts';
import {
  atPlanes,
  movedToPlanes,
  resultant,
  staticAndCouple,
} from '../../../src/core/balance/moved-planes.ts';
import { added, length, scaled, turned, type Vector } from '../../../src/core/balance/vectors.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';

const degrees = Math.PI / 180;
const planes = { planeA: -0.19, planeB: 0.19 };

const weight = fc.record({
  unbalance: evenly(0, 0.02),
  angle: evenly(-Math.PI, Math.PI),
  position: evenly(-0.3, 0.3),
});
const weights = fc.array(weight, { minLength: 1, maxLength: 5 });
const twoPlanes = fc
  .record({ planeA: evenly(-0.4, 0.2), apart: evenly(0.05, 0.6) })
  .map(({ planeA, apart }) => ({ planeA, planeB: planeA + apart }));

function near(vector: Vector, other: Vector, size = 1e-12): void {
  expect(Math.abs(vector.along - other.along)).toBeLessThan(size);
  expect(Math.abs(vector.across - other.across)).toBeLessThan(size);
}

describe('closed forms', () => {
  test('an unbalance halfway is shared; in a plane it stays there', () => {
    const half = atPlanes([{ unbalance: 0.01, angle: 0.3, position: 0 }], planes);
    expect(length(half.atA)).toBeCloseTo(0.005, 15);
    expect(length(half.atB)).toBeCloseTo(0.005, 15);
    const stays = atPlanes([{ unbalance: 0.01, angle: 0.3, position: 0.19 }], planes);
    expect(stays.atA).toEqual({ along: 0, across: 0 });
    expect(length(stays.atB)).toBeCloseTo(0.01, 15);
  });

  test('an overhang is a lever: 1.5 times in the near plane, half opposite in the far one', () => {
    const { atA, atB } = atPlanes(
      [{ unbalance: 0.01, angle: 40 * degrees, position: 0.19 + 0.19 }],
      planes,
    );
    expect(length(atB)).toBeCloseTo(0.015, 14);
    expect(length(atA)).toBeCloseTo(0.005, 14);
    near(atA, scaled(atB, -1 / 3), 1e-15);
  });

  test('a couple is the same wherever it stands, in planes as far apart', () => {
    const pair = (place: number): readonly CrankWeight[] => [
      { unbalance: 0.004, angle: 0.7, position: place + 0.1 },
      { unbalance: 0.004, angle: 0.7 + Math.PI, position: place - 0.1 },
    ];
    const [here, there] = [atPlanes(pair(0), planes), atPlanes(pair(0.4), planes)];
    near(here.atA, there.atA, 1e-15);
    expect(length(here.atB)).toBeCloseTo((0.004 * 0.2) / 0.38, 15);
    expect(length(resultant(pair(0.1)).force)).toBe(0);
  });

  test('unbalances that cancel leave nothing, and no angle of a rounding', () => {
    const three = [0, 120, 240].map((angle) => ({
      unbalance: 0.01,
      angle: angle * degrees,
      position: 0.07,
    }));
    expect(atPlanes(three, planes)).toEqual({
      atA: { along: 0, across: 0 },
      atB: { along: 0, across: 0 },
    });
  });
});

describe('properties', () => {
  test(proves(routes.turnAndMirror), () => {
    fc.assert(
      fc.property(weights, twoPlanes, evenly(-3, 3), (list, at, by) => {
        const was = atPlanes(list, at);
        const is = atPlanes(
          list.map((one) => ({ ...one, angle: one.angle + by })),
          at,
        );
        near(is.atA, turned(was.atA, by));
        near(is.atB, turned(was.atB, by));
        const mirrored = atPlanes(
          list.map((one) => ({ ...one, angle: -one.angle })),
          at,
        );
        near(mirrored.atA, { along: was.atA.along, across: -was.atA.across });
        near(mirrored.atB, { along: was.atB.along, across: -was.atB.across });
        // Turned end for end the planes change places.
        const ends = atPlanes(
          list.map((one) => ({ ...one, position: -one.position })),
          { planeA: -at.planeB, planeB: -at.planeA },
        );
        near(ends.atA, was.atB);
        near(ends.atB, was.atA);
      }),
    );
  });

  test(proves(routes.superposition), () => {
    fc.assert(
      fc.property(weights, weights, twoPlanes, (one, other, at) => {
        const [a, b] = [atPlanes(one, at), atPlanes(other, at)];
        const both = atPlanes([...one, ...other], at);
        near(both.atA, added(a.atA, b.atA));
        near(both.atB, added(a.atB, b.atB));
      }),
    );
  });

  test(proves(routes.movedReference), () => {
    fc.assert(
      fc.property(weights, evenly(-0.5, 0.5), evenly(-0.5, 0.5), (list, from, to) => {
        const [here, there] = [resultant(list, from), resultant(list, to)];
        near(here.force, there.force, 1e-15);
        near(there.couple, added(here.couple, scaled(here.force, from - to)));
      }),
    );
  });

  test(proves(routes.perfectlyCorrected), () => {
    fc.assert(
      fc.property(weights, twoPlanes, twoPlanes, (list, at, other) => {
        const corrected = [...list, ...against(atPlanes(list, at), at)];
        const rest = atPlanes(corrected, other);
        // Both planes may stand 0.4 m away from planes 0.05 m apart: a lever of 8 twice over.
        expect(length(rest.atA)).toBeLessThan(1e-14);
        expect(length(rest.atB)).toBeLessThan(1e-14);
      }),
    );
  });

  test('there and back again is where it was', () => {
    fc.assert(
      fc.property(weights, twoPlanes, twoPlanes, (list, at, other) => {
        const was = atPlanes(list, at);
        const moved = against(atPlanes(against(was, at), other), other);
        const back = atPlanes(moved, at);
        near(back.atA, was.atA);
        near(back.atB, was.atB);
      }),
    );
  });
});

/** Four equations with four unknowns, by elimination with the greatest pivot. */
function solve(rows: readonly (readonly number[])[]): readonly number[] {
  const system = rows.map((row) => [...row]);
  const n = system.length;
  for (let column = 0; column < n; column += 1) {
    const pivot = system
      .map((row, i) => ({ i, size: i < column ? -1 : Math.abs(row[column] ?? 0) }))
      .reduce((best, one) => (one.size > best.size ? one : best)).i;
    const [a, b] = [system[column], system[pivot]];
    if (a === undefined || b === undefined) throw new Error('no such row');
    [system[column], system[pivot]] = [b, a];
    for (const [i, row] of system.entries()) {
      const own = system[column] ?? [];
      const factor = (row[column] ?? 0) / (own[column] ?? 0);
      if (i !== column) own.forEach((value, j) => (row[j] = (row[j] ?? 0) - factor * value));
    }
  }
  return system.map((row, i) => (row[n] ?? 0) / (row[i] ?? 0));
}

describe('second routes', () => {
  test(proves(routes.solvedAsEquations), () => {
    fc.assert(
      fc.property(weights, twoPlanes, (list, at) => {
        // Moments about a bearing at −0.7 m; unknown: along A, across A, along B, across B.
        const end = -0.7;
        const sum = (of: (one: CrankWeight) => number): number =>
          list.reduce((total, one) => total + of(one), 0);
        const x = (one: CrankWeight): number => one.unbalance * Math.cos(one.angle);
        const y = (one: CrankWeight): number => one.unbalance * Math.sin(one.angle);
        const [a, b] = [at.planeA - end, at.planeB - end];
        const [ax = 0, ay = 0, bx = 0, by = 0] = solve([
          [1, 0, 1, 0, sum(x)],
          [0, 1, 0, 1, sum(y)],
          [a, 0, b, 0, sum((one) => x(one) * (one.position - end))],
          [0, a, 0, b, sum((one) => y(one) * (one.position - end))],
        ]);
        const { atA, atB } = movedToPlanes(list, { newPlaneA: at.planeA, newPlaneB: at.planeB });
        near(atA, { along: ax, across: ay });
        near(atB, { along: bx, across: by });
      }),
    );
  });

  test(proves(routes.partsAdded), () => {
    fc.assert(
      fc.property(weights, twoPlanes, (list, at) => {
        const was = atPlanes(list, at);
        const { together, couple } = staticAndCouple(was);
        near(added(scaled(together, 0.5), scaled(couple, -1)), was.atA);
        near(added(scaled(together, 0.5), couple), was.atB);
        // The static part, halfway, makes no couple about there; the pair makes all of it.
        const middle = (at.planeA + at.planeB) / 2;
        near(resultant(list, middle).couple, scaled(couple, at.planeB - at.planeA));
      }),
    );
  });

  test(proves(routes.shaftInSlices), () => {
    fc.assert(
      fc.property(weights, twoPlanes, (list, at) => {
        const loads = [...list, ...against(atPlanes(list, at), at)];
        const [from, to, slices] = [-0.5, 0.9, 1000];
        const step = (to - from) / slices;
        let shear = { along: 0, across: 0 };
        let bending = { along: 0, across: 0 };
        for (let i = 0; i < slices; i += 1) {
          const [left, right] = [from + i * step, from + (i + 1) * step];
          const held = loads.filter(({ position }) => left <= position && position < right);
          bending = added(bending, scaled(shear, step));
          for (const { unbalance, angle, position } of held) {
            const pull = {
              along: unbalance * Math.cos(angle),
              across: unbalance * Math.sin(angle),
            };
            bending = added(bending, scaled(pull, right - position));
            shear = added(shear, pull);
          }
        }
        expect(length(shear)).toBeLessThan(1e-13);
        expect(length(bending)).toBeLessThan(1e-12);
      }),
    );
  });
});
