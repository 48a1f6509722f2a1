import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bucklingStresses,
  mildSteelDivisor,
  slendernessOf,
} from '../../../src/core/rods/column.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import {
  shankForces,
  whipMoment,
  whipPlace,
  whipShape,
  type ShankDuty,
} from '../../../src/core/rods/rod-shank.ts';
import { shankSection, type ShankSection } from '../../../src/core/rods/shank-section.ts';
import { routes } from '../../../content/topics/rod-shank/routes.ts';
import { proves } from '../../proves.ts';

const rpm = Math.PI / 30;
const mm = 1e-3;
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** The example engine's two shanks, and the print-out's metal above the cut (84.2 g and 62.9 g). */
const road: ShankDuty & ShankSection = {
  shankShape: 'i',
  shankHeight: 20 * mm,
  shankWidth: 15.5 * mm,
  flangeThickness: 4 * mm,
  webThickness: 3.6 * mm,
  stroke: 0.073,
  rodLength: 0.142,
  bore: 0.0905,
  maxSpeed: 6400 * rpm,
  pistonMass: 0.428,
  ringMass: 0.038,
  lockMass: 0,
  pinMass: 0.1202,
  shankSection: 0.028,
  rodMassAbove: 0.0842,
  peakPressure: 54e5,
  crankcasePressure: 101e3,
  peakAngle: (15.3 * Math.PI) / 180,
};
const hill: ShankDuty & ShankSection = {
  ...road,
  shankHeight: 27 * mm,
  shankWidth: 19 * mm,
  flangeThickness: 6 * mm,
  webThickness: 7 * mm,
  rodLength: 0.146,
  maxSpeed: 8400 * rpm,
  pistonMass: 0.318,
  ringMass: 0.0235,
  lockMass: 0.0012,
  pinMass: 0.077,
  rodMassAbove: 0.0629,
  peakPressure: 73e5,
  crankcasePressure: 98e3,
  peakAngle: (14.5 * Math.PI) / 180,
};

const anySection = fc
  .record({
    shankShape: fc.constantFrom('i' as const, 'h' as const),
    shankHeight: real(10, 40),
    shankWidth: real(8, 30),
    flange: real(0.05, 0.49),
    web: real(0.05, 0.99),
  })
  .map(({ flange, web, ...rest }): ShankSection => {
    const [d, b] =
      rest.shankShape === 'i'
        ? [rest.shankHeight, rest.shankWidth]
        : [rest.shankWidth, rest.shankHeight];
    return {
      shankShape: rest.shankShape,
      shankHeight: rest.shankHeight * mm,
      shankWidth: rest.shankWidth * mm,
      flangeThickness: flange * d * mm,
      webThickness: web * b * mm,
    };
  });

describe('the example engine, as printed before', () => {
  it.each([
    ['road', road, 167.2, 3.41, 82.4, 203.9, 32.2, 7830, 19.8, 600e6, 207e9, 583],
    ['hill', hill, 333.0, 3.81, 51.0, 139.1, 17.6, 2810, 16.0, 440e6, 71.7e9, 423],
  ] as const)('%s set', (_, duty, area, moments, pull, low, whip, rodDensity, s, σ, E, johnson) => {
    const cut = shankSection(duty);
    expect(cut.area * 1e6).toBeCloseTo(area, 1);
    expect(cut.secondMomentX / cut.secondMomentY).toBeCloseTo(moments, 2);
    const forces = shankForces(duty);
    expect(forces.pull / cut.area / 1e6).toBeCloseTo(pull, 1);
    expect(forces.lowSpeedPush / cut.area / 1e6).toBeCloseTo(low, 1);
    const bending = whipMoment({ ...duty, rodDensity, area: cut.area }) / cut.modulusX;
    expect(bending / 1e6).toBeCloseTo(whip, 1);
    const slenderness = duty.rodLength / Math.sqrt(cut.secondMomentX / cut.area);
    expect(slenderness).toBeCloseTo(s, 1);
    const stresses = bucklingStresses({ youngsModulus: E, yieldStrength: σ, slenderness });
    expect(stresses.johnson / 1e6).toBeCloseTo(johnson, 0);
  });

  // The print-out took 0.93 of the eye's pull off the gas and counted no rod metal.
  it.each([
    ['road', road, 136.7],
    ['hill', hill, 97.7],
  ] as const)(
    '%s set’s push at the highest speed, without rod metal, within 1 %%',
    (_, duty, push) => {
      const { area } = shankSection(duty);
      const forces = shankForces({ ...duty, rodMassAbove: 0 });
      expect(Math.abs(forces.push / area / 1e6 / push - 1)).toBeLessThan(0.01);
    },
  );

  it.each([
    ['road', road, 100, 207e9, 0.04, 0.064],
    ['hill', hill, 106, 71.7e9, 0.075, 0.121],
  ] as const)('%s set’s stretch', (_, duty, length, E, shank, rod) => {
    const stretch = (shankForces(duty).pull * length) / (E * shankSection(duty).area);
    expect(stretch).toBeCloseTo(shank, 3);
    expect(1.6 * stretch).toBeCloseTo(rod, 3);
  });
});

describe('closed forms', () => {
  it('flanges that meet make a full rectangle', () => {
    const cut = shankSection({
      shankShape: 'i',
      shankHeight: 0.02,
      shankWidth: 0.012,
      flangeThickness: 0.01,
      webThickness: 0.003,
    });
    expect(cut.area).toBeCloseTo(0.02 * 0.012, 15);
    expect(cut.secondMomentX).toBeCloseTo((0.012 * 0.02 ** 3) / 12, 20);
    expect(cut.secondMomentY).toBeCloseTo((0.02 * 0.012 ** 3) / 12, 20);
  });

  it('an H is an I turned by a quarter', () => {
    const i = shankSection({ ...road, shankShape: 'i' });
    const h = shankSection({
      ...road,
      shankShape: 'h',
      shankHeight: road.shankWidth,
      shankWidth: road.shankHeight,
    });
    expect(h.secondMomentX).toBe(i.secondMomentY);
    expect(h.secondMomentY).toBe(i.secondMomentX);
    expect(h.area).toBe(i.area);
  });

  it(proves(routes.johnsonParabolaTouches), () => {
    const metal = { youngsModulus: 205e9, yieldStrength: 900e6 };
    const { transition } = bucklingStresses({ ...metal, slenderness: 1 });
    const at = (s: number) => bucklingStresses({ ...metal, slenderness: s }).johnson;
    expect(at(transition) / 450e6).toBeCloseTo(1, 12);
    const step = 1e-4 * transition;
    const before = (at(transition) - at(transition - step)) / step;
    const after = (at(transition + step) - at(transition)) / step;
    expect(before / after).toBeCloseTo(1, 3);
  });

  it('the example of a strong steel: 821 and 588 MPa fit, 1015 and 907 flatter', () => {
    const metal = { youngsModulus: 205e9, yieldStrength: 1100e6 };
    for (const [slenderness, fit, textbook] of [
      [25, 821, 1015],
      [40, 588, 907],
    ] as const) {
      const stresses = bucklingStresses({ ...metal, slenderness });
      expect(stresses.rankine / 1e6).toBeCloseTo(fit, 0);
      expect(stresses.rankineGiven / 1e6).toBeCloseTo(textbook, 0);
    }
    expect(bucklingStresses({ ...metal, slenderness: 25 }).divisor).toBeCloseTo(1839, 0);
  });

  it(proves(routes.anglePushGas), () => {
    const forces = shankForces({ ...road, peakAngle: 0 });
    expect(forces.push / (forces.gas - forces.pull)).toBeCloseTo(1, 12);
  });
});

describe('second routes', () => {
  it(proves(routes.agreesAreaSecond), () => {
    fc.assert(
      fc.property(anySection, (section) => {
        const cut = shankSection(section);
        const upright = section.shankShape === 'i';
        const { shankHeight: H, shankWidth: B, flangeThickness: t, webThickness: w } = section;
        const strips = 10_000;
        let area = 0;
        let second = 0;
        for (let n = 0; n < strips; n += 1) {
          const y = (-0.5 + (n + 0.5) / strips) * H;
          const inFlange = Math.abs(y) > H / 2 - t;
          const wide = upright ? (inFlange ? B : w) : Math.abs(y) < w / 2 ? B : 2 * t;
          area += (wide * H) / strips;
          second += (wide * y * y * H) / strips;
        }
        expect(Math.abs(area / cut.area - 1)).toBeLessThan(1e-3);
        expect(Math.abs(second / cut.secondMomentX - 1)).toBeLessThan(5e-3);
      }),
      { numRuns: 40 },
    );
  });

  it(proves(routes.agreesBendingMoment), () => {
    const [ρ, area, count] = [7830, 167.2e-6, 4000];
    const { rodLength: L, stroke, maxSpeed } = road;
    const loads = Array.from({ length: count }, (_, n) => {
      const x = ((n + 0.5) / count) * L;
      return { x, force: ((ρ * area * L) / count) * (x / L) * (stroke / 2) * maxSpeed ** 2 };
    });
    const pinReaction = loads.reduce((sum, { x, force }) => sum + (force * (L - x)) / L, 0);
    let most = 0;
    let place = 0;
    for (let n = 1; n < count; n += 1) {
      const x = (n / count) * L;
      const moment = loads.reduce(
        (sum, load) => (load.x < x ? sum - load.force * (x - load.x) : sum),
        pinReaction * x,
      );
      if (moment > most) [most, place] = [moment, x];
    }
    const closed = whipMoment({ rodDensity: ρ, area, stroke, rodLength: L, maxSpeed });
    expect(Math.abs(closed / most - 1)).toBeLessThan(1e-5);
    expect(Math.abs(place / L - whipPlace)).toBeLessThan(5e-4);
  });

  it(proves(routes.agreesStrutBent), () => {
    // Work of the push on the shortening against the energy of bending, for a bow of any height.
    const [E, I, A, L] = [205e9, 8.6e-9, 167e-6, 0.9];
    const cells = 2000;
    let bending = 0;
    let shortening = 0;
    for (let n = 0; n < cells; n += 1) {
      const x = (n + 0.5) / cells;
      bending += (E * I * (Math.PI / L) ** 4 * Math.sin(Math.PI * x) ** 2 * L) / cells / 2;
      shortening += (((Math.PI / L) * Math.cos(Math.PI * x)) ** 2 * L) / cells / 2;
    }
    const slenderness = slendernessOf({
      rodLength: L,
      gyrationRadius: Math.sqrt(I / A),
      endFactor: 1,
    });
    const { euler } = bucklingStresses({ youngsModulus: E, yieldStrength: 900e6, slenderness });
    expect((euler * A) / (bending / shortening)).toBeCloseTo(1, 10);
  });
});

describe('properties', () => {
  it(proves(routes.neitherJohnsonNor), () => {
    fc.assert(
      fc.property(real(60e9, 220e9), real(100e6, 2000e6), real(0.5, 300), (E, σ, slenderness) => {
        const stresses = bucklingStresses({ youngsModulus: E, yieldStrength: σ, slenderness });
        const least = Math.min(σ, stresses.euler) * (1 + 1e-12);
        expect(stresses.johnson).toBeLessThanOrEqual(least);
        expect(stresses.rankine).toBeLessThanOrEqual(least);
        expect(stresses.rankine).toBeLessThanOrEqual(stresses.johnson * (1 + 1e-12));
      }),
    );
  });

  it('pull and whip grow with the square of the speed', () => {
    fc.assert(
      fc.property(real(0.1, 3), (factor) => {
        const faster = { ...road, maxSpeed: factor * road.maxSpeed };
        expect(shankForces(faster).pull / shankForces(road).pull).toBeCloseTo(factor ** 2, 10);
        const bar = { rodDensity: 7830, area: 1e-4 };
        expect(whipMoment({ ...faster, ...bar }) / whipMoment({ ...road, ...bar })).toBeCloseTo(
          factor ** 2,
          10,
        );
      }),
    );
  });
});

describe('refusals', () => {
  it('a bar of no length by its length; of next to none it bears what the metal does', () => {
    const bar = { rodLength: 0, gyrationRadius: 0.006, endFactor: 1 };
    expect(() => slendernessOf(bar)).toThrow(expect.objectContaining({ quantity: 'rodLength' }));
    const stout = bucklingStresses({ youngsModulus: 205e9, yieldStrength: 900e6, slenderness: 0 });
    expect(stout).toMatchObject({ euler: Infinity, johnson: 900e6, rankine: 900e6 });
  });

  it.each([-1e-9, Number.NaN])(
    'a slenderness of %d: worked out, so that no quantity is named',
    (s) => {
      const column = { youngsModulus: 205e9, yieldStrength: 900e6, slenderness: s };
      expect(() => bucklingStresses(column)).toThrow(RangeError);
      expect(() => bucklingStresses(column)).not.toThrow(OutOfDomain);
    },
  );

  it.each([
    ['shankSection', { shankSection: 0.2 }],
    ['rodLength', { rodLength: 0.03 }],
    ['maxSpeed', { maxSpeed: -1 }],
  ])('a shank as its parts refuse it: %s', (quantity, change) => {
    expect(() => shankForces({ ...road, ...change })).toThrow(
      expect.objectContaining({ quantity }),
    );
  });

  it('the textbook divisor is the one for mild steel', () => {
    expect(mildSteelDivisor).toBe(7500);
  });
});

describe('the shape of a rod that whips', () => {
  it('has the moment x(1 − x²) for its second derivative, by differences', () => {
    const step = 1e-3;
    // −d²/dx² of x(7 − 10x² + 3x⁴) is 60 x(1 − x²); its scale is one number along the whole rod.
    const bend = (x: number): number =>
      -(whipShape(x + step) - 2 * whipShape(x) + whipShape(x - step)) / step ** 2;
    const factor = bend(0.5) / (0.5 * (1 - 0.25));
    // Central differences of a polynomial of the fifth degree err by step² times its fourth derivative.
    for (const x of [0.1, 0.3, 1 / Math.sqrt(3), 0.8, 0.95])
      expect(bend(x) / (x * (1 - x * x)) / factor).toBeCloseTo(1, 4);
  });

  it('rests on both ends, is greatest at 0.5193, and is refused off the rod', () => {
    expect(whipShape(0)).toBe(0);
    expect(whipShape(1)).toBeCloseTo(0, 12);
    const places = Array.from({ length: 10_001 }, (_, i) => i / 10_000);
    const most = Math.max(...places.map(whipShape));
    expect(most).toBeCloseTo(1, 8);
    expect(places.find((x) => whipShape(x) === most)).toBeCloseTo(0.5193, 4);
    for (const off of [-0.01, 1.01, Number.NaN]) expect(() => whipShape(off)).toThrow(RangeError);
  });
});
