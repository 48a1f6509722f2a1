import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import orders from '../../../content/tables/firing-orders.json' with { type: 'json' };
import { routes } from '../../../content/topics/crank-torsion/routes.ts';
import {
  crankLayouts,
  throwsOf,
  type CrankLayout,
} from '../../../src/calculators/balance/crank-layout.choices.ts';
import { at } from '../../../src/core/math/at.ts';
import { criticalSpeeds, phaseSum } from '../../../src/core/torsion/critical-speeds.ts';
import { placesOf } from '../../../src/core/balance/crank-throws.ts';
import { alternateFirings, firingsOf } from '../../../src/core/torsion/firing.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';

const usual: Readonly<Record<CrankLayout, readonly number[]>> = orders;
const firings = (id: CrankLayout, firingOrder = usual[id]): ReturnType<typeof firingsOf> =>
  firingsOf(throwsOf(id), { firingOrder });
const degrees = (id: CrankLayout, order?: readonly number[]): readonly number[] =>
  firings(id, order).map(({ angle }) => Math.round((angle * 180) / Math.PI));
/** From one firing to the next, and from the last to the first [degrees]. */
const intervals = (id: CrankLayout, order?: readonly number[]): readonly number[] => {
  const angles = degrees(id, order);
  return angles.map((angle, i) => (angles[i + 1] ?? 720) - angle);
};

describe('closed forms and limits', () => {
  test.each([
    ['inline-4-flat', 180],
    ['inline-5', 144],
    ['inline-6', 120],
    ['v8-cross', 90],
    ['v8-flat', 90],
    ['v10-72', 72],
    ['v12-60', 60],
    ['v6-60-split', 120],
    ['v6-90-split', 120],
    ['flat-4', 180],
    ['flat-6', 120],
    ['radial-9', 80],
  ] as const)('the usual order of %s fires every %d degrees', (id, each) => {
    expect(new Set(intervals(id))).toEqual(new Set([each]));
  });

  test.each([
    ['v2-45', [405, 315]],
    ['inline-2-360', [360, 360]],
    ['inline-2-180', [180, 540]],
    ['inline-2-270', [270, 450]],
    ['v6-90-common', [150, 90, 150, 90, 150, 90]],
  ] as const)('%s fires unevenly', (id, own) => {
    expect(intervals(id)).toEqual(own);
  });

  test('the same V8 counted along its banks, and with two cylinders changed over', () => {
    // Cylinders 1 to 4 along one bank are 1, 3, 5, 7 counted throw by throw; 5 to 8 are 2, 4, 6, 8.
    const along = firingsOf(
      throwsOf('v8-cross'),
      { firingOrder: [1, 3, 7, 2, 6, 5, 4, 8] },
      'banks',
    );
    expect(along).toEqual(firings('v8-cross', [1, 5, 6, 3, 4, 2, 7, 8]));
    expect(along.map(({ place }) => place)).toEqual([0, 2, 2, 1, 1, 0, 3, 3]);
    // Fourth and seventh changed over fire as evenly.
    expect(new Set(intervals('v8-cross', [1, 8, 7, 3, 6, 5, 4, 2]))).toEqual(new Set([90]));
  });

  test('where no order is told every other dead centre fires a turn later: even on an even crank', () => {
    for (const [id, each] of [
      ['inline-3', 240],
      ['inline-4-flat', 180],
      ['inline-5', 144],
      ['inline-6', 120],
      ['v8-cross', 90],
      ['v12-60', 60],
      ['radial-9', 80],
    ] as const) {
      const angles = alternateFirings(throwsOf(id)).map(({ angle }) => (angle * 180) / Math.PI);
      expect(angles[0]).toBe(0);
      for (const [i, angle] of angles.entries()) expect(angle).toBeCloseTo(i * each, 9);
    }
    const twin = alternateFirings(throwsOf('v2-45')).map(({ angle }) => (angle * 180) / Math.PI);
    expect(twin[1]).toBeCloseTo(405, 9);
  });

  test('places stand from the nose, a split pin as one', () => {
    expect(placesOf(throwsOf('v6-60-split'))).toEqual([-1, 0, 1]);
    expect(placesOf(throwsOf('inline-4-flat'))).toEqual([-1.5, -0.5, 0.5, 1.5]);
  });

  test('every layout has a usual order, and it can be fired', () => {
    expect(Object.keys(usual)).toEqual([...crankLayouts]);
    for (const id of crankLayouts) {
      const angles = firings(id).map(({ angle }) => angle);
      expect(angles[0]).toBe(0);
      expect(at(angles, angles.length - 1)).toBeLessThan(4 * Math.PI);
      expect([...angles].sort((a, b) => a - b)).toEqual(angles);
    }
  });

  test('a mode that swings alike at all throws is driven by whole firing orders alone', () => {
    const even = firings('v8-cross');
    for (let order = 0.5; order <= 12; order += 0.5)
      expect(phaseSum(even, [1, 1, 1, 1], order)).toBeCloseTo(order % 4 === 0 ? 1 : 0, 9);
  });
});

describe('properties', () => {
  test('a sum lies between nothing and all, whichever way the shape is counted', () => {
    fc.assert(
      fc.property(
        fc.array(evenly(-1, 1), { minLength: 4, maxLength: 4 }),
        fc.integer({ min: 1, max: 24 }),
        (swings, halves) => {
          const order = halves / 2;
          const sum = phaseSum(firings('v8-cross'), swings, order);
          expect(sum).toBeGreaterThanOrEqual(0);
          expect(sum).toBeLessThanOrEqual(1 + 1e-12);
          const opposite = swings.map((each) => -each);
          expect(phaseSum(firings('v8-cross'), opposite, order)).toBeCloseTo(sum, 12);
        },
      ),
    );
  });

  test('no order, no sum', () => {
    for (const order of [0, -1, Number.NaN])
      expect(() => phaseSum(firings('inline-4-flat'), [1, 1, 1, 1], order)).toThrow(RangeError);
  });

  test('nothing swings: nothing is driven', () => {
    expect(phaseSum(firings('inline-4-flat'), [0, 0, 0, 0], 2)).toBe(0);
  });
});

describe('second route', () => {
  test(proves(routes.arrowsByHand), () => {
    // Firing angles of 1-3-4-2, and of 1-8-4-3-6-5-7-2 with cylinders 1 and 2 on the first throw, by hand.
    const four = [0, 540, 180, 360];
    const eight = [0, 630, 270, 180, 450, 360, 540, 90];
    const swings = [0.9, 0.6, 0.3, -0.1];
    const sum = (angles: readonly number[], at_: readonly number[], order: number): number => {
      let [x, y, all] = [0, 0, 0];
      for (const [i, angle] of angles.entries()) {
        const size = at(at_, i);
        x += size * Math.cos((order * angle * Math.PI) / 180);
        y += size * Math.sin((order * angle * Math.PI) / 180);
        all += Math.abs(size);
      }
      return Math.sqrt(x * x + y * y) / all;
    };
    const twice = swings.flatMap((each) => [each, each]);
    for (let order = 0.5; order <= 12; order += 0.5) {
      expect(phaseSum(firings('inline-4-flat'), swings, order)).toBeCloseTo(
        sum(four, swings, order),
        9,
      );
      expect(phaseSum(firings('v8-cross'), swings, order)).toBeCloseTo(sum(eight, twice, order), 9);
    }
  });

  test('a critical speed is the frequency over the order, of every mode', () => {
    const modes = [
      { frequency: 400, shape: [1, 0.5, 0.2, 0.1, -0.2, -0.3] },
      { frequency: 1000, shape: [1, -0.5, 0.2, 0.1, -0.2, -0.3] },
    ];
    const all = criticalSpeeds(modes, firings('inline-4-flat'), 1);
    expect(all).toHaveLength(48);
    for (const { mode, order, speed } of all)
      expect((speed * order) / (2 * Math.PI)).toBeCloseTo(at(modes, mode).frequency, 9);
    const second = all.find(({ mode, order }) => mode === 0 && order === 2);
    expect(second?.sum).toBeCloseTo(
      phaseSum(firings('inline-4-flat'), [0.5, 0.2, 0.1, -0.2], 2),
      12,
    );
  });
});
