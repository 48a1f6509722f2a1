import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pistonMotion, rodPointMotion } from '../../../src/core/motion/piston-motion.ts';
import {
  deadCentreAcceleration,
  equalPullSpeed,
  offsetGain,
  pullFactors,
  suctionForce,
  type HangingParts,
} from '../../../src/core/loads/reversal-load.ts';
import { must } from '../../calculators/must.ts';
import { routes } from '../../../content/topics/reversal-load/routes.ts';
import { proves } from '../../proves.ts';
import { evenly } from '../../evenly.ts';

const rpm = Math.PI / 30;
const geometry = { stroke: 0.073, rodLength: 0.142 };
const road: HangingParts = {
  pistonMass: 0.428,
  ringMass: 0.038,
  lockMass: 0,
  pinMass: 0.1202,
  smallEndMass: 0.1706,
  bigEndMass: 0.4212,
  shellMass: 0.041,
  capMass: 0.182,
  shankSection: 0.028,
  rodMassAbove: 0.134,
};

const grams = (low: number, high: number) =>
  fc.double({ min: low, max: high, noNaN: true }).map((mass) => mass / 1000);
const anyGeometry = fc
  .record({
    stroke: fc.double({ min: 0.03, max: 0.15, noNaN: true }),
    ratio: fc.double({ min: 0.6, max: 4, noNaN: true }),
  })
  .map(({ stroke, ratio }) => ({ stroke, rodLength: ratio * stroke }));
const anyParts = fc
  .record({
    pistonMass: grams(15, 3000),
    ringMass: grams(1, 300),
    lockMass: grams(0, 25),
    pinMass: grams(4, 1000),
    smallEndMass: grams(50, 1500),
    bigEndMass: grams(100, 4000),
    shellMass: grams(2, 400),
    cap: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
    above: fc.double({ min: 0.1, max: 1, noNaN: true }),
    shankSection: evenly(0, 0.018),
  })
  .map(({ cap, above, ...parts }) => ({
    ...parts,
    capMass: cap * parts.bigEndMass,
    rodMassAbove: above * parts.smallEndMass,
  }));

describe('second routes', () => {
  it(proves(routes.agreesBothDead), () => {
    fc.assert(
      fc.property(anyGeometry, (g) => {
        const { top, bottom, crankpin } = deadCentreAcceleration(g);
        expect(pistonMotion(g, 0, 1).acceleration / top).toBeCloseTo(1, 12);
        // Near rodLength = stroke/2 the two terms of the bottom value nearly cancel: judged by the throw.
        expect((pistonMotion(g, Math.PI, 1).acceleration + bottom) / crankpin).toBeCloseTo(0, 9);
        expect(rodPointMotion(g, 0, 0, 1).acceleration / crankpin).toBeCloseTo(1, 12);
      }),
    );
  });

  it('agrees with the second derivative of the piston’s place, taken by differences', () => {
    const [r, l] = [geometry.stroke / 2, geometry.rodLength];
    const height = (θ: number) => r * Math.cos(θ) + Math.sqrt(l * l - (r * Math.sin(θ)) ** 2);
    const h = 0.02;
    const second = (θ: number) =>
      (-height(θ - 2 * h) +
        16 * height(θ - h) -
        30 * height(θ) +
        16 * height(θ + h) -
        height(θ + 2 * h)) /
      (12 * h * h);
    const { top, bottom } = deadCentreAcceleration(geometry);
    // The five-point formula leaves h⁴/90 of the sixth derivative, about 1e-8 here.
    expect(-second(0) / top).toBeCloseTo(1, 6);
    expect(second(Math.PI) / bottom).toBeCloseTo(1, 6);
  });

  it(proves(routes.agreesRodMade), () => {
    const l = geometry.rodLength;
    // Places from the crankpin towards the pin; the small end reaches above the pin, the cap below the crankpin.
    const points = Array.from({ length: 200 }, (_, i) => {
      const place = -0.03 + ((l + 0.05) * i) / 199;
      return { place, mass: 0.001 + 0.004 * Math.exp(-(((place + 0.01) / 0.03) ** 2)) };
    });
    const smallEndMass = points.reduce((sum, { place, mass }) => sum + (mass * place) / l, 0);
    const rod = points.reduce((sum, { mass }) => sum + mass, 0);
    const pull = (some: typeof points) =>
      some.reduce(
        (sum, { place, mass }) => sum + mass * rodPointMotion(geometry, place, 0, 1).acceleration,
        0,
      );
    const hanging = road.pistonMass + road.ringMass + road.lockMass + road.pinMass;
    const onPin = hanging * pistonMotion(geometry, 0, 1).acceleration;
    const cap = points.filter(({ place }) => place < 0);
    const capMass = cap.reduce((sum, { mass }) => sum + mass, 0);
    const parts = { ...road, smallEndMass, bigEndMass: rod - smallEndMass, shellMass: 0, capMass };
    const factors = pullFactors(geometry, parts);
    expect(factors.crankpin / (onPin + pull(points))).toBeCloseTo(1, 12);

    // The cap at the crankpin's centre: what the parting line really carries is greater, by the cap's
    // mass times λ·d/L of the crankpin's acceleration and no more.
    const truly = onPin + pull(points.filter(({ place }) => place >= 0));
    const λ = geometry.stroke / 2 / l;
    const centre = -cap.reduce((sum, { place, mass }) => sum + mass * place, 0) / capMass;
    const missing = (capMass * (geometry.stroke / 2) * λ * centre) / l;
    expect(truly - factors.parting).toBeCloseTo(missing, 12);
    expect(missing / factors.parting).toBeLessThan(0.01);

    // The metal above a section, wherever it lies between pin and section, stays inside the stated bound.
    const section = 0.028;
    const above = points.filter(({ place }) => place > l - section && place <= l);
    const rodMassAbove = above.reduce((sum, { mass }) => sum + mass, 0);
    const shank = pullFactors(geometry, { ...parts, shankSection: section, rodMassAbove }).shank;
    const bound = (rodMassAbove * (geometry.stroke / 2) * λ * section) / (2 * l);
    expect(Math.abs(shank - (onPin + pull(above)))).toBeLessThanOrEqual(bound);
    expect(bound / shank).toBeLessThan(0.005);
  });

  it('states what an offset would add', () => {
    for (const e of [0.0008, 0.0015, -0.014, 0.014]) {
      const shifted = { ...geometry, boreOffset: e };
      const { acceleration, rodAngle } = pistonMotion(shifted, 0, 1);
      const rodForce = acceleration / Math.cos(rodAngle);
      const { top } = deadCentreAcceleration(geometry);
      expect(rodForce / top).toBeCloseTo(offsetGain(geometry, e), 12);
    }
    expect(offsetGain(geometry, 0.0008) - 1).toBeCloseTo(2.0e-5, 6);
    expect(offsetGain(geometry, 0.014) - 1).toBeCloseTo(6.2e-3, 4);
    expect(offsetGain(geometry, 0)).toBe(1);
  });
});

describe('the shank', () => {
  it('pulls with the metal above it as a mass half way from the pin to the section', () => {
    fc.assert(
      fc.property(evenly(0, geometry.rodLength), (shankSection) => {
        const { eye, shank } = pullFactors(geometry, { ...road, shankSection });
        const centre = geometry.rodLength - shankSection / 2;
        const { acceleration } = rodPointMotion(geometry, centre, 0, 1);
        expect((shank - eye) / (road.rodMassAbove * acceleration)).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('properties', () => {
  it('hangs more on each section than on the one above it', () => {
    fc.assert(
      fc.property(anyGeometry, anyParts, (g, parts) => {
        const f = pullFactors(g, parts);
        const falling = [f.crankpin, f.parting, f.reciprocating, f.eye, f.boss];
        for (let i = 1; i < falling.length; i++)
          expect(falling[i]).toBeLessThanOrEqual(must(falling[i - 1]) * (1 + 1e-12));
        expect(f.shank).toBeGreaterThan(f.eye);
        expect(f.shank).toBeLessThanOrEqual(f.reciprocating * (1 + 1e-12));
      }),
    );
  });

  it(proves(routes.linearEachMass), () => {
    const slopes = {
      pistonMass: 'top',
      ringMass: 'top',
      lockMass: 'top',
      pinMass: 'top',
      smallEndMass: 'top',
      bigEndMass: 'crankpin',
      shellMass: 'crankpin',
    } as const;
    fc.assert(
      fc.property(anyGeometry, anyParts, grams(1, 500), (g, parts, more) => {
        const before = pullFactors(g, parts).parting;
        const at = deadCentreAcceleration(g);
        for (const [name, place] of Object.entries(slopes)) {
          const key = name as keyof typeof slopes;
          const after = pullFactors(g, { ...parts, [key]: parts[key] + more }).parting;
          expect((after - before) / before).toBeCloseTo((more * at[place]) / before, 12);
        }
        const less = pullFactors(g, { ...parts, capMass: parts.capMass * 0.5 }).parting;
        expect((less - before) / before).toBeCloseTo(
          (parts.capMass * 0.5 * at.crankpin) / before,
          12,
        );
      }),
    );
  });

  it('has the mean of both dead centres at the crankpin', () => {
    const { top, bottom, crankpin } = deadCentreAcceleration(geometry);
    expect((top + bottom) / 2).toBeCloseTo(crankpin, 15);
    expect(top).toBeGreaterThan(bottom);
  });

  it('finds the speed of equal pull, and nothing else pulls as hard', () => {
    fc.assert(
      fc.property(
        grams(5, 500),
        grams(5, 500),
        // So small a speed that its square has lost its digits is none.
        fc.double({ min: 1e-3, max: 2000, noNaN: true }),
        (a, b, n) => {
          const speed = must(equalPullSpeed(a, n, b));
          expect(Math.abs(b * speed ** 2 - a * n ** 2)).toBeLessThanOrEqual(1e-12 * a * n ** 2);
        },
      ),
    );
    expect(equalPullSpeed(1, 500, 0)).toBeUndefined();
  });
});

describe('suction', () => {
  const bore = 0.0905;
  it('is the pressure difference over the bore', () => {
    const force = suctionForce({ bore, crankcasePressure: 101e3, overrunPressure: 28e3 });
    expect(force).toBeCloseTo(73e3 * Math.PI * 0.04525 ** 2, 9);
  });
  it('turns round when the cylinder has the higher pressure', () => {
    expect(suctionForce({ bore, crankcasePressure: 5e4, overrunPressure: 6e4 })).toBeLessThan(0);
    expect(suctionForce({ bore, crankcasePressure: 5e4, overrunPressure: 5e4 })).toBe(0);
  });
});

it('refuses parts of a crank that cannot turn', () => {
  expect(() => pullFactors({ stroke: 0.1, rodLength: 0.05 }, road)).toThrow(
    expect.objectContaining({ quantity: 'rodLength' }),
  );
});

it('speed is no part of the factors, so they hold at any', () => {
  expect(pullFactors(geometry, road).parting * (6400 * rpm) ** 2).toBeCloseTo(20190.86, 1);
});
