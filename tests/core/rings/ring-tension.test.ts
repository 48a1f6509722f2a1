import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  endAngle,
  followedFreeGap,
  freeShape,
  ringHalf,
} from '../../../src/core/rings/ring-shape.ts';
import {
  closureOf,
  followedWaviness,
  openingStress,
  packLoad,
  ringInBore,
  ringLine,
  type Ring,
} from '../../../src/core/rings/ring-tension.ts';
import { must } from '../../calculators/must.ts';
import { routes } from '../../../content/topics/ring-tension/routes.ts';
import { proves } from '../../proves.ts';

const mm = 1e-3;
const MPa = 1e6;
type TopRing = Ring<'ring1'>;
const ring = (d: number, h: number, a: number, E: number): TopRing => ({
  bore: d * mm,
  ring1Height: h * mm,
  ring1Radial: a * mm,
  ring1Modulus: E * 1e9,
});

const anyRing = fc
  .record({
    bore: fc.double({ min: 0.03, max: 0.2, noNaN: true }),
    slender: fc.double({ min: 15, max: 40, noNaN: true }),
    height: fc.double({ min: 0.0005, max: 0.005, noNaN: true }),
    modulus: fc.double({ min: 7e10, max: 2.2e11, noNaN: true }),
    closure: fc.double({ min: 0.02, max: 0.2, noNaN: true }),
    gap: fc.double({ min: 0.001, max: 0.01, noNaN: true }),
  })
  .map(({ bore, slender, height, modulus, closure, gap }) => ({
    bore,
    ring1Height: height,
    ring1Radial: bore / slender,
    ring1Modulus: modulus,
    ring1FreeGap: bore * (closure + gap),
    ring1Gap: bore * gap,
  }));

describe('the invented sets', () => {
  // Worked once by hand from the tensions: contact pressure, closure, stress in place, stress at an opening
  // of 8.5 radial thicknesses, conformability.
  it.each([
    ['top, road', ring(90.5, 1.5, 3.5, 160), 13.6, 0.38, 0.2004, 12.3, 386, 536, 0.03],
    ['top, hill', ring(90.5, 0.9, 2.9, 206), 5.3, 0.42, 0.1301, 11.14, 368, 433, 0.027],
    ['second, road', ring(90.5, 1.5, 3.8, 105), 10.2, 0.45, 0.1503, 10.87, 245, 473, 0.0266],
    ['second, hill', ring(90.5, 1, 3.2, 150), 5, 0.5, 0.1105, 9.57, 256, 458, 0.0233],
  ] as const)('%s', (_, own, tension, gap, pressure, closure, place, fitting, follows) => {
    const closed = closureOf({ ...own, ring1Tension: tension }, 'ring1');
    const gapped = { ...own, ring1FreeGap: closed + gap * mm, ring1Gap: gap * mm };
    const inBore = ringInBore(gapped, 'ring1');
    expect(inBore.tangentialForce).toBeCloseTo(tension, 12);
    expect(closed / mm).toBeCloseTo(closure, 2);
    expect(inBore.contactPressure / MPa).toBeCloseTo(pressure, 4);
    expect(inBore.placeStress / MPa).toBeCloseTo(place, -0.3);
    expect(inBore.conformability).toBeCloseTo(follows, 4);
    const opened = openingStress({ ...gapped, ringOpening: 8.5 * own.ring1Radial }, 'ring1');
    expect(opened / MPa).toBeCloseTo(fitting, -0.3);
  });

  it('packs of 57.8 and 29.3 N that need 47 and 24 N on the bench drag with 0.129 and 0.130', () => {
    const road = packLoad({ ring1Tension: 13.6, ring2Tension: 10.2, oilRingTension: 34 }, 0.13);
    const hill = packLoad({ ring1Tension: 5.3, ring2Tension: 5, oilRingTension: 19 }, 0.13);
    expect(road.tensionSum).toBeCloseTo(57.8, 12);
    expect(hill.tensionSum).toBeCloseTo(29.3, 12);
    expect(47 / road.wallForce).toBeCloseTo(0.129, 3);
    expect(24 / hill.wallForce).toBeCloseTo(0.13, 3);
    expect(road.oilShare).toBeCloseTo(34 / 57.8, 12);
  });
});

describe('the constants of ISO 6621-4 and of the makers', () => {
  // Remembered: m = 14.14 F_t/(E h) ((d − a)/a)³, σ = 6 F_t (d − a)/(h a²), k = 3 F_t (d − a)²/(E h a³).
  it.each([
    [ring(86, 1.2, 3.1, 100), 9, 20.281, 388.2, 0.0519],
    [ring(100, 1.5, 3.9, 100), 15, 21.156, 379.1, 0.04671],
    [ring(70, 1, 2.7, 206), 6, 6.378, 332.4, 0.02011],
  ])('give the same closure, stress and parameter', (own, tension, closure, stress, parameter) => {
    const closed = closureOf({ ...own, ring1Tension: tension }, 'ring1');
    const { placeStress, conformability } = ringInBore(
      { ...own, ring1FreeGap: closed + 0.3 * mm, ring1Gap: 0.3 * mm },
      'ring1',
    );
    expect(closed / mm / closure).toBeCloseTo(1, 3);
    expect(placeStress / MPa / stress).toBeCloseTo(1, 3);
    expect(conformability / parameter).toBeCloseTo(1, 3);
  });

  it(proves(routes.dragPackD), () => {
    const [D, t, n, p, μ] = [0.1, 0.003, 3, 0.035 * MPa, 0.1];
    const tension = (p * D * t) / 2;
    const pack = { ring1Tension: tension, ring2Tension: tension, oilRingTension: tension };
    expect(packLoad(pack, μ).pull).toBeCloseTo(Math.PI * D * t * n * p * μ, 12);
  });
});

describe('second routes', () => {
  it(proves(routes.closureVirtualWork), () => {
    fc.assert(
      fc.property(anyRing, (own) => {
        const { tangentialForce: F, closure } = ringInBore(own, 'ring1');
        const { radius: r, secondMoment: I } = ringLine(own, 'ring1');
        const pieces = 2000;
        let work = 0;
        for (let i = 0; i < pieces; i++) {
          const φ = -Math.PI + ((i + 0.5) * 2 * Math.PI) / pieces;
          // Moment of an even pressure beyond φ, itself summed; a unit pull at the ends has the lever r(1 + cos φ).
          const moment = F * r * (1 + Math.cos(φ));
          work +=
            (moment * r * (1 + Math.cos(φ)) * r * 2 * Math.PI) / pieces / (own.ring1Modulus * I);
        }
        expect(work / closure).toBeCloseTo(1, 9);
      }),
      { numRuns: 40 },
    );
  });

  it(proves(routes.momentEvenPressure), () => {
    const [p, h, R, r] = [0.2e6, 0.0015, 0.04525, 0.0435];
    for (const φ of [0, 0.7, 1.9, 3]) {
      const pieces = 20_000;
      let moment = 0;
      for (let i = 0; i < pieces; i++) {
        const ψ = φ + ((i + 0.5) * (Math.PI - φ)) / pieces;
        moment += p * h * R * r * Math.sin(ψ - φ) * ((Math.PI - φ) / pieces);
      }
      expect(moment).toBeCloseTo(p * h * R * r * (1 + Math.cos(φ)), 7);
    }
  });

  it('bends a half ring as far as its moment says, piece by piece, and none without a moment', () => {
    const [radius, half, points] = [0.0435, 3.1, 61];
    const width = half / (points - 1);
    for (const K of [0, 0.03, 0.06]) {
      const line = ringHalf(radius, K, half, points);
      for (let i = 1; i < points; i++) {
        const [from, to] = [must(line[i - 1]), must(line[i])];
        const φ = (i - 0.5) * width;
        // ∫(1 − K (1 + cos φ)) dφ; a chord lies along its arc's middle, and is shorter by width²/24.
        const direction = φ - K * (φ + Math.sin(φ));
        const [along, up] = [to.x - from.x, to.y - from.y];
        expect(along / (radius * width)).toBeCloseTo(Math.cos(direction), 3);
        expect(up / (radius * width)).toBeCloseTo(Math.sin(direction), 3);
      }
    }
    for (const [i, { x, y }] of ringHalf(radius, 0, half, points).entries()) {
      expect(x / radius).toBeCloseTo(Math.sin(i * width), 7);
      expect(y / radius).toBeCloseTo(1 - Math.cos(i * width), 7);
    }
  });

  it(proves(routes.freeGapEnds), () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 0.06, noNaN: true }),
        fc.double({ min: 0.02, max: 0.1, noNaN: true }),
        (k, r) => {
          const linear = 3 * Math.PI * k * r;
          const followed = followedFreeGap(r, k, 0);
          expect(followed / linear).toBeCloseTo(1 + (2.5 / 3) * k, 2);
          expect(followed).toBeGreaterThan(linear);
        },
      ),
    );
  });

  it(proves(routes.thickCurvedBar), () => {
    // σ = M (r_n − r)/(A e r), r_n = a/ln(r_o/r_i), for a radial thickness of 1/25 of the diameter.
    const [a, r] = [1, 12];
    const [inner, outer] = [r - a / 2, r + a / 2];
    const neutral = a / Math.log(outer / inner);
    const e = r - neutral;
    expect((neutral - inner) / (e * inner) / (6 / a)).toBeCloseTo(1.0285, 3);
    expect((outer - neutral) / (e * outer) / (6 / a)).toBeCloseTo(0.9729, 3);
  });
});

describe('the drawn shape', () => {
  it('keeps its length, ends at half the free gap and starts round', () => {
    fc.assert(
      fc.property(anyRing, (own) => {
        const half = freeShape(own, 'ring1');
        expect(must(half.at(-1)).x * 2).toBeCloseTo(own.ring1FreeGap, 7);
        const { radius } = ringLine(own, 'ring1');
        let length = 0;
        for (let i = 1; i < half.length; i++)
          length += Math.hypot(
            must(half[i]).x - must(half[i - 1]).x,
            must(half[i]).y - must(half[i - 1]).y,
          );
        expect(length / (radius * endAngle(radius, own.ring1Gap))).toBeCloseTo(1, 3);
      }),
      { numRuns: 30 },
    );
  });
  it('is a circle without tension', () => {
    for (const { x, y } of ringHalf(1, 0, Math.PI, 41))
      expect(Math.hypot(x, y - 1)).toBeCloseTo(1, 5);
  });
});

describe('thin across and thin along', () => {
  it(proves(routes.heightCancelsPressure), () => {
    fc.assert(
      fc.property(anyRing, fc.double({ min: 0.2, max: 3, noNaN: true }), (any, factor) => {
        const one = ringInBore(any, 'ring1');
        const other = ringInBore({ ...any, ring1Height: any.ring1Height * factor }, 'ring1');
        expect(other.tangentialForce / one.tangentialForce).toBeCloseTo(factor, 10);
        for (const name of ['contactPressure', 'placeStress', 'conformability'] as const)
          expect(other[name] / one[name]).toBeCloseTo(1, 10);
      }),
    );
  });

  it('at equal pressure conformability goes with 1/(E a³)', () => {
    fc.assert(
      fc.property(anyRing, fc.double({ min: 0.7, max: 1.2, noNaN: true }), (any, factor) => {
        const thin = { ...any, ring1Radial: any.ring1Radial * factor };
        const [one, other] = [ringInBore(any, 'ring1'), ringInBore(thin, 'ring1')];
        const follow = ({ conformability, contactPressure }: typeof one) =>
          conformability / contactPressure;
        const r = (own: TopRing) => ringLine(own, 'ring1').radius;
        expect(follow(other) / follow(one)).toBeCloseTo((r(thin) / r(any)) ** 2 / factor ** 3, 9);
      }),
    );
  });

  it(proves(routes.placeFittingStress), () => {
    fc.assert(
      fc.property(anyRing, fc.double({ min: 1.1, max: 3, noNaN: true }), (any, wide) => {
        const ringOpening = any.ring1FreeGap * wide;
        const both = (ring1FreeGap: number) =>
          ringInBore({ ...any, ring1FreeGap }, 'ring1').placeStress +
          openingStress({ ...any, ring1FreeGap, ringOpening }, 'ring1');
        const { bore: d, ring1Radial: a, ring1Modulus: E } = any;
        const sum = ((4 / (3 * Math.PI)) * E * a * (ringOpening - any.ring1Gap)) / (d - a) ** 2;
        expect(both(any.ring1FreeGap) / sum).toBeCloseTo(1, 9);
        expect(both(1.3 * any.ring1FreeGap) / sum).toBeCloseTo(1, 9);
      }),
    );
  });

  it(proves(routes.lobeFollowedUntil), () => {
    // E I (n² − 1)² U/r⁴ is the pressure a ring needs to take up U cos nφ.
    const own = ring(86, 1.2, 3.1, 100);
    const { radius: r, secondMoment: I } = ringLine(own, 'ring1');
    const { tangentialForce: F, conformability } = ringInBore(
      { ...own, ring1FreeGap: 0.0206, ring1Gap: 0.0003 },
      'ring1',
    );
    for (const n of [2, 3, 4, 6]) {
      const U = followedWaviness(conformability, r, n);
      expect((own.ring1Modulus * I * (n * n - 1) ** 2 * U) / r ** 4 / (F / r)).toBeCloseTo(1, 10);
    }
  });
});

describe('refusals', () => {
  it('an order below two, at which a ring moves with its bore', () => {
    expect(() => followedWaviness(0.03, 0.04, 1.9)).toThrow(RangeError);
    expect(() => followedWaviness(0.03, 0.04, Number.NaN)).toThrow(RangeError);
    expect(followedWaviness(0.03, 0.04, 2)).toBeGreaterThan(0);
  });
});
