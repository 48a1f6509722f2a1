import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/heavy-metal/routes.ts';
import {
  ligamentStress,
  slugGain,
  slugPull,
  slugSum,
  slugWalls,
} from '../../../src/core/balance/heavy-metal.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';

const degrees = Math.PI / 180;
const slug = { slugDiameter: 0.019, slugLength: 0.018, slugRadius: 0.06 };
const metals = { slugDensity: 17000, steelDensity: 7850 };
const place = { counterweightRadius: 0.074, counterweightWidth: 0.019, keepOutRadius: 0.036 };
const row = { slugCount: 2, slugSpacing: 24 * degrees };
const perMinute = Math.PI / 30;

/** Slugs that fit: somewhere between the middle and the rim, side by side with metal between them. */
const slugs = fc
  .record({
    rim: evenly(0.04, 0.15),
    thick: evenly(0.05, 0.4),
    at: evenly(0.01, 0.99),
    long: evenly(0.005, 0.03),
    count: fc.integer({ min: 1, max: 5 }),
    apart: evenly(1.02, 1.4),
    density: evenly(15000, 19000),
    steel: evenly(7000, 8200),
  })
  .map(({ rim, thick, at, long, count, apart, density, steel }) => {
    const diameter = thick * rim;
    const [least, most] = [0.35 * rim + diameter / 2, rim - diameter / 2];
    const radius = least + at * (most - least);
    const meet = 2 * Math.asin(diameter / 2 / radius);
    return {
      slug: { slugDiameter: diameter, slugLength: long, slugRadius: radius },
      metals: { slugDensity: density, steelDensity: steel },
      place: { counterweightRadius: rim, counterweightWidth: 0.03, keepOutRadius: 0.2 * rim },
      // Five neighbours stay within half a turn.
      row: { slugCount: count, slugSpacing: Math.min(meet * apart, Math.PI / 4) },
    };
  })
  .filter(
    ({ slug: one, row: { slugSpacing } }) =>
      slugSpacing > 2.02 * Math.asin(one.slugDiameter / 2 / one.slugRadius),
  );

/** A slug cut into elements about the shaft, its middle at an angle: their masses, and where they are. */
function elements(
  { slugDiameter, slugLength, slugRadius }: typeof slug,
  density: number,
  angle: number,
) {
  const [rings, sectors] = [30, 48];
  const found: { mass: number; x: number; y: number }[] = [];
  for (let ring = 0; ring < rings; ring += 1) {
    const [inner, outer] = [ring, ring + 1].map((k) => (slugDiameter / 2) * (k / rings)) as [
      number,
      number,
    ];
    const mean = (inner + outer) / 2;
    for (let sector = 0; sector < sectors; sector += 1) {
      const turn = (2 * Math.PI * (sector + 0.5)) / sectors;
      found.push({
        mass: (density * slugLength * Math.PI * (outer ** 2 - inner ** 2)) / sectors,
        x: slugRadius * Math.cos(angle) + mean * Math.cos(turn),
        y: slugRadius * Math.sin(angle) + mean * Math.sin(turn),
      });
    }
  }
  return found;
}

describe('closed forms', () => {
  test(proves(routes.byHand, 'a slug of 19 mm and 18 mm weighs 87 g and gains 47 g'), () => {
    const { mass, massGain, unbalance } = slugGain(slug, metals);
    // π/4 · 1.9² · 1.8 = 5.1035 cm³, at 17 and at 9.15 g/cm³.
    expect(mass * 1e3).toBeCloseTo(86.76, 2);
    expect(massGain * 1e3).toBeCloseTo(46.7, 2);
    expect(unbalance * 1e6).toBeCloseTo(46.697 * 60, 0);
  });

  test(proves(routes.byHand, '77 g at 60 mm pull 3.6 kN at 8400 revolutions a minute'), () => {
    const pull = slugPull(slug, 0.077, { maxSpeed: 8400 * perMinute }, 'maxSpeed');
    expect(pull).toBeCloseTo(3575, 0);
    // Over two ligaments of 4.5 mm by 18 mm: 162 mm².
    expect(ligamentStress(slug, pull, 0.0045) / 1e6).toBeCloseTo(22.07, 2);
  });

  test('walls by hand: 74 − 60 − 9.5 mm outside, 2 · 60 · sin 12° − 19 mm between', () => {
    const walls = slugWalls(slug, row, place);
    expect(walls.rim * 1e3).toBeCloseTo(4.5, 10);
    expect((walls.beside ?? 0) * 1e3).toBeCloseTo(5.949, 3);
    expect(walls.least).toBe(walls.rim);
    expect(slugWalls(slug, { ...row, slugCount: 1 }, place).beside).toBeUndefined();
    const close = slugWalls(slug, { ...row, slugSpacing: 20 * degrees }, place);
    expect(close.least).toBe(close.beside);
  });

  test('slugs that add up exactly are as many as they are', () => {
    for (const count of [1, 2, 3, 4, 5]) {
      const times = Math.sin((count * row.slugSpacing) / 2) / Math.sin(row.slugSpacing / 2);
      const sum = slugSum({ ...row, slugCount: count }, 1e-3, { addedUnbalance: times * 1e-3 });
      expect(sum.needed).toBe(count);
      expect(sum.left).toBeCloseTo(0, 15);
      expect(sum.lengthShare).toBeCloseTo(1, 12);
    }
  });

  test('more than any number adds up to is answered by none', () => {
    // At 24° no number gains more than 1/sin 12° = 4.81 of one.
    expect(slugSum(row, 1e-3, { addedUnbalance: 4.82e-3 }).needed).toBeUndefined();
    // Seven and eight have 4.783 each; 7.5 of them, which nobody sets, would have 4.81.
    expect(slugSum(row, 1e-3, { addedUnbalance: 4.8e-3 }).needed).toBeUndefined();
    expect(slugSum(row, 1e-3, { addedUnbalance: 4.78e-3 }).needed).toBe(7);
    // Thirteen side by side in a narrow fan would do it, but no counterweight holds them.
    const narrow = { slugCount: 1, slugSpacing: 1 * degrees };
    expect(slugSum(narrow, 1e-3, { addedUnbalance: 12.5e-3 }).needed).toBeUndefined();
    expect(slugSum(narrow, 1e-3, { addedUnbalance: 11.5e-3 }).needed).toBe(12);
  });
});

describe('properties', () => {
  test(proves(routes.slugsScale), () => {
    fc.assert(
      fc.property(slugs, ({ slug: one, metals: of, place: at, row: beside }) => {
        const double = <T extends Record<string, number>>(of: T): T =>
          Object.fromEntries(Object.entries(of).map(([key, value]) => [key, 2 * value])) as T;
        const [small, large] = [one, double(one)];
        const [gain, grown] = [slugGain(small, of), slugGain(large, of)];
        expect(grown.unbalance / gain.unbalance).toBeCloseTo(16, 9);
        const speed = { maxSpeed: 700 };
        const pulls = [
          slugPull(small, gain.mass, speed, 'maxSpeed'),
          slugPull(large, grown.mass, speed, 'maxSpeed'),
        ] as const;
        expect(pulls[1] / pulls[0]).toBeCloseTo(16, 9);
        const [walls, wider] = [slugWalls(small, beside, at), slugWalls(large, beside, double(at))];
        // Stress grows with the square of size, as speed of the rim does.
        expect(
          ligamentStress(large, pulls[1], wider.rim) / ligamentStress(small, pulls[0], walls.rim),
        ).toBeCloseTo(4, 6);
      }),
    );
  });

  test('twice as much denser is twice the gain; the same density would gain nothing', () => {
    fc.assert(
      fc.property(slugs, ({ slug: one, metals: { slugDensity, steelDensity } }) => {
        const once = slugGain(one, { slugDensity, steelDensity });
        const twice = slugGain(one, { slugDensity: 2 * slugDensity - steelDensity, steelDensity });
        expect(twice.unbalance / once.unbalance).toBeCloseTo(2, 9);
        const hardly = slugGain(one, { slugDensity: steelDensity * (1 + 1e-12), steelDensity });
        expect(hardly.unbalance / once.unbalance).toBeLessThan(1e-11);
      }),
    );
  });
});

describe('second routes', () => {
  test(proves(routes.slugByElements), () => {
    fc.assert(
      fc.property(slugs, ({ slug: one, metals: { slugDensity, steelDensity }, row: beside }) => {
        const gain = slugGain(one, { slugDensity, steelDensity });
        const sum = slugSum(beside, gain.unbalance, { addedUnbalance: 0.01 });
        const all = { mass: 0, x: 0, y: 0 };
        for (let i = 0; i < beside.slugCount; i += 1) {
          const angle = 1 + (i - (beside.slugCount - 1) / 2) * beside.slugSpacing;
          for (const { mass, x, y } of elements(one, slugDensity - steelDensity, angle)) {
            all.mass += mass;
            all.x += mass * x;
            all.y += mass * y;
          }
        }
        expect(all.mass / (beside.slugCount * gain.massGain)).toBeCloseTo(1, 9);
        // About the middle of the fan, which stands at 1 rad; nothing of it points across.
        expect((all.x * Math.cos(1) + all.y * Math.sin(1)) / sum.together).toBeCloseTo(1, 9);
        expect((all.y * Math.cos(1) - all.x * Math.sin(1)) / sum.together).toBeCloseTo(0, 9);
        expect(sum.left).toBeCloseTo(0.01 - sum.together, 15);
        const pulled = elements(one, slugDensity, 0).reduce(
          (pull, { mass, x }) => pull + mass * x * 900 ** 2,
          0,
        );
        expect(pulled / slugPull(one, gain.mass, { maxSpeed: 900 }, 'maxSpeed')).toBeCloseTo(1, 9);
      }),
      { numRuns: 40 },
    );
  });

  test(proves(routes.oneAfterAnother), () => {
    fc.assert(
      fc.property(slugs, evenly(0.1, 8), ({ slug: one, metals: of, row: beside }, times) => {
        const { unbalance } = slugGain(one, of);
        const wanted = { addedUnbalance: times * unbalance };
        const sum = slugSum(beside, unbalance, wanted);
        let enough: number | undefined;
        for (let count = 1; count <= 12 && enough === undefined; count += 1) {
          let [x, y] = [0, 0];
          for (let i = 0; i < count; i += 1) {
            x += unbalance * Math.cos(i * beside.slugSpacing);
            y += unbalance * Math.sin(i * beside.slugSpacing);
          }
          // Past half a turn they come round to the other side, and less is had than before.
          if (
            Math.hypot(x, y) >= wanted.addedUnbalance &&
            count * beside.slugSpacing < Math.PI * 1.5
          )
            enough = count;
        }
        expect(sum.needed).toBe(enough);
        let [short, long] = [0, 1000];
        for (let i = 0; i < 100; i += 1) {
          const middle = (short + long) / 2;
          const longer = slugGain({ ...one, slugLength: middle * one.slugLength }, of).unbalance;
          if (slugSum(beside, longer, wanted).left > 0) short = middle;
          else long = middle;
        }
        expect(long / sum.lengthShare).toBeCloseTo(1, 9);
      }),
    );
  });

  test(proves(routes.nearestMetal), () => {
    fc.assert(
      fc.property(slugs, ({ slug: one, place: at, row: beside }) => {
        const walls = slugWalls(one, { ...beside, slugCount: 2 }, at);
        const half = one.slugDiameter / 2;
        let [rim, next] = [Infinity, Infinity];
        const other = {
          x: one.slugRadius * Math.cos(beside.slugSpacing),
          y: one.slugRadius * Math.sin(beside.slugSpacing),
        };
        for (let i = 0; i < 3600; i += 1) {
          const turn = (2 * Math.PI * i) / 3600;
          const [x, y] = [one.slugRadius + half * Math.cos(turn), half * Math.sin(turn)];
          rim = Math.min(rim, at.counterweightRadius - Math.hypot(x, y));
          next = Math.min(next, Math.hypot(x - other.x, y - other.y) - half);
        }
        // The nearest of the points is at most half a thousandth of the diameter's turn aside.
        expect(Math.abs(rim - walls.rim)).toBeLessThan(1e-6 * at.counterweightRadius);
        expect(Math.abs(next - (walls.beside ?? 0))).toBeLessThan(1e-6 * at.counterweightRadius);
      }),
      { numRuns: 40 },
    );
  });
});
