import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  equivalentInertia,
  inertiaTorque,
  reciprocatingShare,
  torqueOfTurn,
} from '../../../src/core/inertia/inertia-torque.ts';
import { fourier } from '../../../src/core/math/fourier.ts';
import {
  engineInertia,
  kineticEnergy,
  reciprocatingMass,
  ringInertia,
  riseTime,
  roadFactor,
  type MovingParts,
} from '../../../src/core/inertia/rotating-inertia.ts';
import { routes } from '../../../content/topics/rotating-inertia/routes.ts';
import { proves } from '../../proves.ts';
import { evenly } from '../../evenly.ts';

const rpm = Math.PI / 30;
const road: MovingParts = {
  cylinders: 8,
  stroke: 0.073,
  rodLength: 0.142,
  pistonMass: 0.428,
  pinMass: 0.1202,
  ringMass: 0.038,
  lockMass: 0,
  smallEndMass: 0.1706,
  bigEndMass: 0.4212,
  shellMass: 0.041,
};
const hill: MovingParts = {
  cylinders: 8,
  stroke: 0.073,
  rodLength: 0.146,
  pistonMass: 0.318,
  pinMass: 0.077,
  ringMass: 0.0235,
  lockMass: 0.0012,
  smallEndMass: 0.1382,
  bigEndMass: 0.3001,
  shellMass: 0.036,
};
const roadTurning = {
  crankInertia: 0.056,
  damperInertia: 0.0095,
  clutchInertia: 0.062,
  flywheelInertia: 0.118,
};
const hillTurning = {
  crankInertia: 0.0462,
  damperInertia: 0.0068,
  clutchInertia: 0.016,
  flywheelInertia: 0.049,
};

const anySliding = fc
  .record({
    mass: fc.double({ min: 0.01, max: 5, noNaN: true }),
    stroke: fc.double({ min: 0.02, max: 0.2, noNaN: true }),
    ratio: fc.double({ min: 1, max: 4, noNaN: true }),
  })
  .map(({ mass, stroke, ratio }) => ({ mass, stroke, rodLength: ratio * stroke }));

describe('the moving parts, worked another way', () => {
  // The mean of (v/rω)² recomputed to nine figures with an independent quadrature.
  it.each([
    [0.2, 0.505102572],
    [0.25, 0.508066615],
    [0.285, 0.510587669],
    [0.3, 0.511786651],
    [1 / 3, 0.514718626],
  ])('at λ = %f the mean share is %f', (λ, mean) => {
    expect(reciprocatingShare({ stroke: 2 * λ, rodLength: 1 })).toBeCloseTo(mean, 9);
  });

  // Exact harmonics of the inertia torque over m r²ω², recomputed; the classical leading terms λ/4, −1/2,
  // −3λ/4, −λ²/4 (J. P. Den Hartog, Mechanical Vibrations; R. L. Norton, Design of Machinery; from memory)
  // are low by up to 5.6 % at λ = 1/3.
  it.each([
    [1 / 3, [0.0857771, -0.5004333, -0.2611186, -0.0294117]],
    [0.25, [0.0635063, -0.5001301, -0.1920556, -0.016129]],
    [0.2, [0.0505096, -0.5000521, -0.152302, -0.0102041]],
  ])('at λ = %f the torque has the harmonics of the classical series', (λ, exact) => {
    const parts = { mass: 1, stroke: 2, rodLength: 1 / λ };
    const { sine, cosine } = fourier((angle) => inertiaTorque(parts, angle, 1), [1, 2, 3, 4], 96);
    exact.forEach((value, i) => expect(sine[i]).toBeCloseTo(value, 6));
    cosine.forEach((value) => expect(value).toBeCloseTo(0, 12));
    const leading = [λ / 4, -1 / 2, (-3 * λ) / 4, (-λ * λ) / 4];
    leading.forEach((value, i) => expect(Math.abs((sine[i] ?? 0) / value - 1)).toBeLessThan(0.06));
  });
});

describe('the invented engines', () => {
  it('engine inertia, energy, torque, time and mass on the road of both sets', () => {
    const own = engineInertia(road, roadTurning);
    const light = engineInertia(hill, hillTurning);
    expect(own.total).toBeCloseTo(0.2545, 4);
    expect(light.total).toBeCloseTo(0.1246, 4);
    expect(own.bigEnds).toBeCloseTo(0.00493, 5);
    expect(light.bigEnds).toBeCloseTo(0.00358, 5);
    expect(own.reciprocating).toBeCloseTo(0.0041, 5);
    expect(light.reciprocating).toBeCloseTo(0.00302, 5);
    expect(kineticEnergy(own.total, 6400 * rpm) / 1e3).toBeCloseTo(57.2, 1);
    expect(kineticEnergy(light.total, 8400 * rpm) / 1e3).toBeCloseTo(48.2, 1);
    expect(own.total * 700 * rpm).toBeCloseTo(18.7, 1);
    expect(light.total * 1100 * rpm).toBeCloseTo(14.4, 1);
    const time = (I: number, netTorque: number, from: number, to: number) =>
      riseTime(I, { netTorque, speedFrom: from * rpm, speedTo: to * rpm });
    expect(time(own.total, 300, 4000, 6200)).toBeCloseTo(0.195, 3);
    expect(time(light.total, 350, 5200, 8300)).toBeCloseTo(0.116, 3);
    const perInertia = roadFactor({ gearRatio: 2.52, finalDrive: 4.1, tyreRadius: 0.288 });
    expect(own.total * perInertia).toBeCloseTo(327.6, 1);
    expect(light.total * perInertia).toBeCloseTo(160.4, 1);
    expect((own.flywheel - light.flywheel) * perInertia).toBeCloseTo(88.8, 1);
    expect((own.clutch - light.clutch) * perInertia).toBeCloseTo(59.2, 1);
    expect((own.crank - light.crank) * perInertia).toBeCloseTo(12.6, 1);
    expect((own.damper - light.damper) * perInertia).toBeCloseTo(3.5, 1);
    const moving = (e: typeof own) => e.bigEnds + e.reciprocating;
    expect((moving(own) - moving(light)) * perInertia).toBeCloseTo(3.1, 1);
  });
});

describe('closed forms and limits', () => {
  it('half the mass, where the rod is endless', () => {
    expect(reciprocatingShare({ stroke: 0.08, rodLength: 1e6 })).toBeCloseTo(0.5, 12);
  });

  it(proves(routes.shareAgreesSeries), () => {
    // ½(1 + λ²/4 + λ⁴/8 + …), by expanding the exact law: what is left shrinks as the sixth power.
    for (const λ of [0.05, 0.1, 0.2, 0.3]) {
      const series = 0.5 * (1 + λ ** 2 / 4 + λ ** 4 / 8);
      const share = reciprocatingShare({ stroke: 2 * λ, rodLength: 1 });
      expect(Math.abs(share - series)).toBeLessThan(0.06 * λ ** 6 + 1e-12);
    }
  });

  it(proves(routes.discThinRing), () => {
    const steel = { flywheelThickness: 0.02, flywheelDensity: 7850 };
    const disc = ringInertia({ flywheelDiameter: 0.3, flywheelInside: 0, ...steel });
    expect(disc.inertia / (disc.mass * 0.15 ** 2)).toBeCloseTo(0.5, 14);
    expect(disc.mass).toBeCloseTo(7850 * 0.02 * Math.PI * 0.15 ** 2, 12);
    const thin = ringInertia({ flywheelDiameter: 0.3, flywheelInside: 0.2999999, ...steel });
    expect(thin.inertia / (thin.mass * 0.15 ** 2)).toBeCloseTo(1, 6);
    const hole = ringInertia({ flywheelDiameter: 0.1, flywheelInside: 0, ...steel });
    const ring = ringInertia({ flywheelDiameter: 0.3, flywheelInside: 0.1, ...steel });
    expect(ring.mass).toBeCloseTo(disc.mass - hole.mass, 12);
    expect(ring.inertia).toBeCloseTo(disc.inertia - hole.inertia, 14);
  });

  it('the torque at the dead centres is zero, and the first quarter takes from the crank', () => {
    const parts = { mass: 0.7568, stroke: 0.073, rodLength: 0.142 };
    expect(inertiaTorque(parts, 0, 600)).toBeCloseTo(0, 9);
    expect(inertiaTorque(parts, Math.PI, 600)).toBeCloseTo(0, 9);
    expect(inertiaTorque(parts, Math.PI / 4, 600)).toBeLessThan(0);
    expect(inertiaTorque(parts, (5 * Math.PI) / 8, 600)).toBeGreaterThan(0);
  });
});

describe('second routes', () => {
  it(proves(routes.agreesChangeKinetic), () => {
    fc.assert(
      fc.property(anySliding, evenly(0, 6.2), (parts, angle) => {
        const h = 1e-3;
        const I = (shift: number) => equivalentInertia(parts, angle + shift);
        // Seven-point difference: what it leaves is below 1e-12 of the greatest slope.
        const slope =
          (45 * (I(h) - I(-h)) - 9 * (I(2 * h) - I(-2 * h)) + (I(3 * h) - I(-3 * h))) / (60 * h);
        const size = parts.mass * (parts.stroke / 2) ** 2;
        expect(Math.abs(inertiaTorque(parts, angle, 1) + slope / 2) / size).toBeLessThan(1e-9);
      }),
    );
  });

  it(proves(routes.takesMeanShare), () => {
    const parts = { mass: 2, stroke: 0.1, rodLength: 0.15 };
    let sum = 0;
    const steps = 7200;
    for (let i = 0; i < steps; i++) {
      // Piston height from the triangle of crank and rod, its speed by a difference: no formula is shared.
      const y = (a: number) =>
        0.05 * Math.cos(a) + Math.sqrt(0.15 ** 2 - (0.05 * Math.sin(a)) ** 2);
      const a = (2 * Math.PI * (i + 0.5)) / steps;
      const v = (y(a + 1e-5) - y(a - 1e-5)) / 2e-5;
      sum += 2 * v * v;
    }
    const expected = 2 * 0.05 ** 2 * reciprocatingShare(parts);
    expect(sum / steps / expected).toBeCloseTo(1, 8);
  });
});

describe('properties', () => {
  it(proves(routes.hasNoMean), () => {
    fc.assert(
      fc.property(anySliding, fc.double({ min: 1, max: 2600, noNaN: true }), (parts, speed) => {
        const { mean, amplitude, torques } = torqueOfTurn(parts, speed);
        expect(amplitude).toBeGreaterThan(0);
        expect(Math.abs(mean)).toBeLessThan(1e-12 * amplitude);
        expect(Math.max(...torques)).toBeGreaterThan(0);
        expect(Math.min(...torques)).toBeLessThan(0);
      }),
    );
  });

  it(proves(routes.growsEachMass), () => {
    const more = 0.1;
    const share = reciprocatingShare(road);
    const before = engineInertia(road, roadTurning).total;
    const square = 8 * 0.0365 ** 2;
    for (const [name, weight] of [
      ['bigEndMass', 1],
      ['shellMass', 1],
      ['pistonMass', share],
      ['pinMass', share],
      ['ringMass', share],
      ['lockMass', share],
      ['smallEndMass', share],
    ] as const) {
      const after = engineInertia({ ...road, [name]: road[name] + more }, roadTurning).total;
      expect(after - before).toBeCloseTo(more * weight * square, 14);
    }
    for (const name of [
      'crankInertia',
      'damperInertia',
      'clutchInertia',
      'flywheelInertia',
    ] as const) {
      const after = engineInertia(road, { ...roadTurning, [name]: roadTurning[name] + more }).total;
      expect(after - before).toBeCloseTo(more, 14);
    }
  });

  it('gives twice the mass on the road for twice the inertia, four times for twice the ratio', () => {
    const gearing = { gearRatio: 2, finalDrive: 4, tyreRadius: 0.3 };
    const once = roadFactor(gearing);
    expect(roadFactor({ ...gearing, gearRatio: 4 }) / once).toBeCloseTo(4, 14);
    expect(roadFactor({ ...gearing, finalDrive: 8 }) / once).toBeCloseTo(4, 14);
    expect(roadFactor({ ...gearing, tyreRadius: 0.6 }) / once).toBeCloseTo(0.25, 14);
  });

  it('counts the whole reciprocating mass once', () => {
    expect(reciprocatingMass(road)).toBeCloseTo(0.7568, 12);
  });
});

it('refuses a geometry that cannot turn', () => {
  expect(() => engineInertia({ ...road, rodLength: 0.0365 }, roadTurning)).toThrow(
    expect.objectContaining({ quantity: 'rodLength' }),
  );
});
