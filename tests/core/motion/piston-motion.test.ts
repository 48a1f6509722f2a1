import fc from 'fast-check';
import { derivative, parse } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { bracketedRoot } from '../../../src/core/math/roots.ts';
import {
  halfStrokeAngle,
  harmonics,
  motionPeaks,
  zeroAccelerationAngle,
} from '../../../src/core/motion/piston-extremes.ts';
import {
  deadCentres,
  motionCurves,
  pistonMotion,
  rodPointMotion,
} from '../../../src/core/motion/piston-motion.ts';
import type { SliderCrank } from '../../../src/core/motion/piston-motion.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { twoTermMotion } from '../../../src/core/motion/two-term-motion.ts';
import extremesFixture from '../../fixtures/piston-motion/extremes.json' with { type: 'json' };
import harmonicsFixture from '../../fixtures/piston-motion/harmonics.json' with { type: 'json' };
import motionFixture from '../../fixtures/piston-motion/motion.json' with { type: 'json' };
import { routes } from '../../../content/topics/piston-motion/routes.ts';
import { proves } from '../../proves.ts';
import { evenly } from '../../evenly.ts';

const degree = Math.PI / 180;
const rpm = Math.PI / 30;

/** Fails unless `value` is within `tolerance` of `expected`, relative to `scale` (its own size by default). */
function near(
  value: number | undefined,
  expected: number,
  tolerance: number,
  scale = Math.abs(expected),
): void {
  expect(
    Math.abs((value ?? Number.NaN) - expected) <= tolerance * scale,
    `${value} against ${expected}, off by ${Math.abs((value ?? Number.NaN) - expected) / scale}`,
  ).toBe(true);
}

describe('values from loop closure', () => {
  // Eight geometries of textbooks, worked in full precision by another route: nine figures.
  it.each([
    [
      0.25,
      2 / 3,
      2000,
      40,
      0.078146321,
      43.6183511,
      9289.79969,
      13.9482462,
      61.9929223,
      -9940.16267,
    ],
    [
      Math.sqrt(8),
      Math.sqrt(40),
      200,
      45,
      1.15298245,
      55.8505361,
      909.790694,
      18.4349488,
      6.98131701,
      -129.970099,
    ],
    [0.3, 1.5, 180, 40, 0.0826335863, 4.19643372, 85.5988563, 7.38624498, 2.91208383, -44.9601067],
    [0.75, 3, 240, 40, 0.214455261, 14.467213, 385.610119, 9.24734923, 4.87657614, -98.9696477],
    [
      0.06, 0.25, 2000, 20, 0.00446210629, 5.27053489, 2962.48233, 4.70841219, 47.3940414,
      -3427.83294,
    ],
    [
      0.225, 1.2, 200, 125, 0.368293291, 3.44003455, -62.8661271, 8.8350885, -2.27947651,
      -67.3739191,
    ],
    [0.15, 0.6, 300, 45, 0.0533833923, 3.9306362, 105.289467, 10.1820674, 5.64246697, -171.545156],
  ])('r %f, L %f', (r, l, n, theta, x, v, a, phi, turn, spin) => {
    const at = pistonMotion({ stroke: 2 * r, rodLength: l }, theta * degree, n * rpm);
    const printed = 6e-9; // nine figures
    near(at.displacement, x, printed);
    near(at.speed, v, printed);
    near(at.acceleration, a, printed);
    near(at.rodAngle, phi * degree, printed);
    near(at.rodSpeed, turn, printed);
    near(at.rodAcceleration, spin, printed);
  });
});

describe('values of 70-digit arithmetic', () => {
  it.each(Object.keys(motionFixture) as (keyof typeof motionFixture)[])('motion, %s', (region) => {
    for (const { crankAngle, maxSpeed, crankAcceleration, ...rest } of motionFixture[region]) {
      const at = pistonMotion(rest, crankAngle, maxSpeed, crankAcceleration);
      const r = rest.stroke / 2;
      const square = maxSpeed ** 2 + Math.abs(crankAcceleration);
      // Near TDC the digits of the displacement itself count; a short rod magnifies rounding in 1 − sin²φ.
      near(at.displacement, rest.displacement, region === 'short_rod' ? 2e-14 : 3e-15);
      near(at.speed, rest.speed, 2e-13);
      near(at.acceleration, rest.acceleration, 2e-13, r * square);
      near(at.rodAngle, rest.rodAngle, 1e-14, 1);
      near(at.rodSpeed, rest.rodSpeed, 2e-14, maxSpeed);
      near(at.rodAcceleration, rest.rodAcceleration, 2e-13, square);
    }
  });
  it(proves(routes.extremes), () => {
    for (const expected of extremesFixture) {
      const centres = deadCentres(expected);
      const peaks = motionPeaks(expected, 1);
      near(centres.topAngle, expected.topAngle, 1e-15, 1);
      near(centres.bottomAngle, expected.bottomAngle, 1e-15, 4);
      near(centres.travel, expected.travel, 1e-15);
      near(centres.strokeGain, expected.strokeGain, 1e-14);
      near(halfStrokeAngle(expected), expected.halfStrokeAngle, 1e-14);
      near(peaks.down.angle, expected.downAngle, 1e-14);
      near(peaks.down.value, expected.downSlope, 1e-14);
      near(peaks.up.angle, expected.upAngle, 1e-14);
      near(peaks.up.value, expected.upSlope, 1e-14);
      near(peaks.greatestDownward.angle, expected.greatestDownwardAngle, 1e-13, 1);
      near(peaks.greatestDownward.value, expected.greatestDownward, 1e-14);
      near(peaks.greatestUpward.value, expected.greatestUpward, 1e-14);
    }
  });
  it('names the angle of the greatest upward acceleration, the earlier one where both sides are alike', () => {
    for (const expected of extremesFixture) {
      const { angle } = motionPeaks(expected, 1).greatestUpward;
      const { bottomAngle } = deadCentres(expected);
      const other = 2 * bottomAngle - expected.greatestUpwardAngle;
      if (expected.pinOffset === 0.00005)
        near(angle, Math.min(expected.greatestUpwardAngle, other), 0.01);
      else near(angle, expected.greatestUpwardAngle, 1e-12);
    }
  });
  it(proves(routes.harmonics), () => {
    for (const { orders, ...geometry } of harmonicsFixture) {
      const found = harmonics(
        geometry,
        orders.map(({ order }) => order),
      );
      orders.forEach(({ cosine, sine }, i) => {
        near(found[i]?.cosine, cosine, 1e-14, 1);
        near(found[i]?.sine, sine, 1e-14, 1);
        near(found[i]?.amplitude, Math.hypot(cosine, sine), 1e-14, 1);
      });
    }
  });
});

describe('closed forms and limits', () => {
  const geometry = { stroke: 0.073, rodLength: 0.142 };
  const [r, l, omega] = [0.0365, 0.142, 670];
  const lambda = r / l;

  it(proves(routes.hasKnownValues), () => {
    const top = pistonMotion(geometry, 0, omega);
    expect(top).toEqual({ ...top, displacement: 0, speed: 0, rodAngle: 0, rodAcceleration: 0 });
    near(top.acceleration, r * omega ** 2 * (1 + lambda), 1e-15);
    near(top.rodSpeed, lambda * omega, 1e-15);
    const bottom = pistonMotion(geometry, Math.PI, omega);
    near(bottom.displacement, 2 * r, 1e-15);
    near(bottom.acceleration, -r * omega ** 2 * (1 - lambda), 1e-14);
    near(bottom.speed, 0, 1e-15, r * omega);
  });
  it('becomes a cosine as the rod grows', () => {
    for (const theta of [0.3, 1.5, 2.5]) {
      const at = pistonMotion({ stroke: 2, rodLength: 1e9 }, theta, 1);
      near(at.displacement, 1 - Math.cos(theta), 1e-8);
      near(at.speed, Math.sin(theta), 1e-8);
      near(at.acceleration, Math.cos(theta), 1e-8, 1);
    }
    near(halfStrokeAngle({ stroke: 2, rodLength: 1e9 }), Math.PI / 2, 1e-8);
  });
  it('is half way down where cos θ = λ/2, from the cosine rule', () => {
    near(halfStrokeAngle(geometry), Math.acos(lambda / 2), 1e-15);
  });
  it('mirrors travel and stroke gain in the sign of the offset', () => {
    const right = deadCentres({ ...geometry, boreOffset: 0.01 });
    const left = deadCentres({ ...geometry, pinOffset: 0.01 });
    expect(left.travel).toBe(right.travel);
    expect(left.topAngle).toBe(-right.topAngle);
    near(left.bottomAngle + right.bottomAngle, 2 * Math.PI, 1e-15);
    near(right.strokeGain, (r * 0.01 ** 2) / (l * l - r * r), 0.01); // first term in e²
  });
  it(proves(routes.movesGreatestUpward), () => {
    const upward = (lambda: number) =>
      motionPeaks({ stroke: 2, rodLength: 1 / lambda }, 1).greatestUpward;
    expect(upward(0.2637).angle).toBe(Math.PI);
    near(upward(0.2637).value, -(1 - 0.2637), 1e-15);
    expect(upward(0.2639).angle).toBeLessThan(Math.PI - 0.02);
    near(upward(0.3).value, -0.7 * 1.013, 1e-3); // 1.3 % above the value at BDC
    near(upward(0.3).angle, 148 * degree, 5e-3);
  });
  it('has its extremes of acceleration exactly at the dead centres while the rod is long and in line', () => {
    // Both are extremes by symmetry: no rounding of a search may show in the angle.
    for (let rods = 4; rods < 8; rods += 0.05) {
      const peaks = motionPeaks({ stroke: 0.0731, rodLength: 0.03655 * rods }, 1);
      expect(peaks.greatestDownward.angle).toBe(0);
      expect(peaks.greatestUpward.angle).toBe(Math.PI);
    }
  });
  it('brakes hardest at the side of the turn as the rod is hardly longer than throw and offset', () => {
    // There the rod all but lies down; both sides are alike without offset, and the first is named.
    for (const [boreOffset, side] of [
      [0, 1 / 2],
      [0.05, 3 / 2],
      [-0.05, 1 / 2],
    ] as const) {
      const crank = { stroke: 2, rodLength: 1.0001 * (1 + Math.abs(boreOffset)), boreOffset };
      const { topAngle } = deadCentres(crank);
      // The distance goes with the 3/2 power of the ten-thousandth that is left.
      near(motionPeaks(crank, 1).greatestUpward.angle, side * Math.PI - topAngle, 1e-5, 1);
    }
  });
  it('has the tabled second, fourth and sixth orders', () => {
    // The classical series stops early: what it leaves out is of the order λ² of its last term.
    const [two, four, six] = harmonics({ stroke: 2, rodLength: 5 }, [2, 4, 6]);
    near(two?.cosine, 0.2 + 0.2 ** 3 / 4 + (15 * 0.2 ** 5) / 128, 1e-5);
    near(four?.cosine, -(0.2 ** 3 / 4 + (3 * 0.2 ** 5) / 16), 3e-3);
    near(six?.cosine, (9 * 0.2 ** 5) / 128, 0.06);
  });
  it('takes speed zero', () => {
    const still = pistonMotion(geometry, 1, 0);
    expect(still.speed).toBe(0);
    expect(still.acceleration).toBe(0);
    const peaks = motionPeaks(geometry, 0);
    expect(peaks.down.value).toBe(0);
    expect(peaks.down.angle).toBe(motionPeaks(geometry, 600).down.angle);
    expect(zeroAccelerationAngle(geometry, 0)).toBe(peaks.down.angle);
  });
  it('nears a dead centre as a gain of speed outweighs the speed, and is there at speed zero', () => {
    const crank = { ...geometry, pinOffset: 0.0008 };
    const { bottomAngle } = deadCentres(crank);
    for (const speed of [1e-9, 1e-12, 1e-160, 1e-200, 0]) {
      near(zeroAccelerationAngle(crank, speed, 500), bottomAngle, 1e-9);
      expect(Math.abs(zeroAccelerationAngle(crank, speed, -500))).toBeLessThan(1e-9);
    }
  });
  it('gives the ends of the rod for the points at its ends', () => {
    const e = { ...geometry, boreOffset: 0.004, pinOffset: 0.001 };
    const at = pistonMotion(e, 2, omega, 900);
    const crankpin = rodPointMotion(e, 0, 2, omega, 900);
    near(crankpin.speed, r * omega, 1e-14);
    near(crankpin.acceleration, r * Math.hypot(omega ** 2, 900), 1e-14);
    const piston = rodPointMotion(e, l, 2, omega, 900);
    near(piston.speed, Math.abs(at.speed), 1e-13);
    near(piston.acceleration, Math.abs(at.acceleration), 1e-13);
  });
});

const geometries = fc
  .record({
    stroke: fc.double({ min: 0.03, max: 0.2, noNaN: true }),
    ratio: fc.double({ min: 1.2, max: 8, noNaN: true }),
    bore: evenly(-0.3, 0.3),
    pin: evenly(-0.05, 0.05),
  })
  .map(({ stroke, ratio, bore, pin }): SliderCrank => {
    const r = stroke / 2;
    const boreOffset = bore * r;
    const pinOffset = pin * r;
    return {
      stroke,
      rodLength: (r + Math.abs(boreOffset - pinOffset)) * ratio,
      boreOffset,
      pinOffset,
    };
  });
const angles = evenly(-7, 13);
const speeds = fc.double({ min: 1, max: 1500, noNaN: true });
const alphas = evenly(-20000, 20000);

describe('properties', () => {
  it(proves(routes.hasSpeedAcceleration), () => {
    fc.assert(
      fc.property(geometries, angles, speeds, (geometry, theta, omega) => {
        const h = 1e-5;
        const at = pistonMotion(geometry, theta, omega);
        const before = pistonMotion(geometry, theta - h, omega);
        const after = pistonMotion(geometry, theta + h, omega);
        const perTurn = omega / (2 * h);
        const size = geometry.stroke * omega;
        near((after.displacement - before.displacement) * perTurn, at.speed, 1e-7, size);
        near((after.speed - before.speed) * perTurn, at.acceleration, 1e-7, size * omega);
        near((after.rodAngle - before.rodAngle) * perTurn, at.rodSpeed, 1e-7, omega);
        near((after.rodSpeed - before.rodSpeed) * perTurn, at.rodAcceleration, 1e-7, omega ** 2);
      }),
    );
  });
  it('closes the loop: pin on its line, rod of its length', () => {
    fc.assert(
      fc.property(geometries, angles, (geometry, theta) => {
        const { topAngle } = deadCentres(geometry);
        const { rodAngle, displacement } = pistonMotion(geometry, theta, 0);
        const { stroke, rodLength, boreOffset = 0, pinOffset = 0 } = geometry;
        const psi = topAngle + theta;
        const across = (stroke / 2) * Math.sin(psi) - rodLength * Math.sin(rodAngle);
        near(across, boreOffset - pinOffset, 1e-14, rodLength);
        const up = (stroke / 2) * Math.cos(psi) + rodLength * Math.cos(rodAngle);
        const top = (stroke / 2) * Math.cos(topAngle) + rodLength * Math.cos(-topAngle);
        near(displacement, top - up, 1e-14, rodLength);
      }),
    );
  });
  it('repeats every turn', () => {
    fc.assert(
      fc.property(geometries, angles, speeds, alphas, (geometry, theta, omega, alpha) => {
        const once = pistonMotion(geometry, theta, omega, alpha);
        const again = pistonMotion(geometry, theta + 2 * Math.PI, omega, alpha);
        near(again.displacement, once.displacement, 1e-13, geometry.stroke);
        near(again.acceleration, once.acceleration, 1e-13, geometry.stroke * (omega ** 2 + 2e4));
      }),
    );
  });
  it(proves(routes.mirroredAboutTdc), () => {
    fc.assert(
      fc.property(geometries, angles, speeds, (geometry, theta, omega) => {
        const { boreOffset = 0, pinOffset = 0 } = geometry;
        const turned = { ...geometry, boreOffset: -boreOffset, pinOffset: -pinOffset };
        const at = pistonMotion(geometry, theta, omega);
        const mirror = pistonMotion(turned, -theta, omega);
        const size = geometry.stroke * omega;
        near(mirror.displacement, at.displacement, 1e-14, geometry.stroke);
        near(mirror.speed, -at.speed, 1e-14, size);
        near(mirror.acceleration, at.acceleration, 1e-13, size * omega);
        near(mirror.rodAngle, -at.rodAngle, 1e-15, 1);
      }),
    );
  });
  it('balances work: a steady force on the piston turns the crank by r times its tangential part', () => {
    // Virtual work: speed ÷ ω is the arm, and the rod's geometry gives the arm r sin(ψ + φ)/cos φ.
    fc.assert(
      fc.property(geometries, angles, (geometry, theta) => {
        const { speed, rodAngle } = pistonMotion(geometry, theta, 1);
        const psi = theta + deadCentres(geometry).topAngle;
        const arm = ((geometry.stroke / 2) * Math.sin(psi + rodAngle)) / Math.cos(rodAngle);
        near(speed, arm, 1e-13, geometry.stroke);
      }),
    );
  });
  it(proves(routes.hasShortSeries), () => {
    const worst = (lambda: number): number => {
      const geometry = { stroke: 2, rodLength: 1 / lambda };
      return Math.max(
        ...Array.from({ length: 60 }, (_, i) => {
          const theta = (i * Math.PI) / 30;
          return Math.abs(
            twoTermMotion(geometry, theta, 1).acceleration -
              pistonMotion(geometry, theta, 1).acceleration,
          );
        }),
      );
    };
    for (const lambda of [0.2, 0.1, 0.05]) near(worst(lambda) / worst(lambda / 2), 8, 0.06);
  });
  it('never passes its extremes, and reaches each', () => {
    fc.assert(
      fc.property(geometries, speeds, (geometry, omega) => {
        const peaks = motionPeaks(geometry, omega);
        const { angle, speed, acceleration } = motionCurves(geometry, omega, 0, 720);
        const size = geometry.stroke * omega;
        const edge = 1e-12 * size;
        for (let i = 0; i < angle.length; i++) {
          expect(speed[i]).toBeLessThanOrEqual(peaks.down.value + edge);
          expect(speed[i]).toBeGreaterThanOrEqual(peaks.up.value - edge);
          expect(acceleration[i]).toBeLessThanOrEqual(peaks.greatestDownward.value + edge * omega);
          expect(acceleration[i]).toBeGreaterThanOrEqual(peaks.greatestUpward.value - edge * omega);
        }
        const reached = (theta: number) => pistonMotion(geometry, theta, omega);
        near(reached(peaks.down.angle).speed, peaks.down.value, 1e-12);
        near(reached(peaks.up.angle).speed, peaks.up.value, 1e-12);
        near(
          reached(peaks.greatestDownward.angle).acceleration,
          peaks.greatestDownward.value,
          1e-12,
        );
        near(reached(peaks.greatestUpward.angle).acceleration, peaks.greatestUpward.value, 1.1e-3);
      }),
      { numRuns: 60 },
    );
  });
  it('is fastest where acceleration is zero, and half way down at the angle of half stroke', () => {
    fc.assert(
      fc.property(geometries, speeds, alphas, (geometry, omega, alpha) => {
        near(
          zeroAccelerationAngle(geometry, omega),
          motionPeaks(geometry, omega).down.angle,
          1e-13,
        );
        const still = zeroAccelerationAngle(geometry, omega, alpha);
        near(
          pistonMotion(geometry, still, omega, alpha).acceleration,
          0,
          1e-11,
          geometry.stroke * omega ** 2 + geometry.stroke * Math.abs(alpha),
        );
        const half = pistonMotion(geometry, halfStrokeAngle(geometry), 0).displacement;
        near(half, deadCentres(geometry).travel / 2, 1e-13);
      }),
    );
  });
  it('draws the same numbers as curves', () => {
    const geometry = { stroke: 0.073, rodLength: 0.142, pinOffset: 0.0008 };
    const curves = motionCurves(geometry, 600, 50, 12);
    curves.angle.forEach((theta, i) => {
      const at = pistonMotion(geometry, theta, 600, 50);
      expect(curves.displacement[i]).toBe(at.displacement);
      expect(curves.speed[i]).toBe(at.speed);
      expect(curves.acceleration[i]).toBe(at.acceleration);
    });
    expect(curves.angle).toHaveLength(13);
    curves.angle.forEach((theta, i) => near(theta, i * 30 * degree, 1e-15, 6));
  });
});

describe('a second route', () => {
  it(proves(routes.agreesSymbolicDerivatives), () => {
    const position = parse('r cos(t) + sqrt(L^2 - (r sin(t) - e)^2)');
    const rod = parse('asin((r sin(t) - e) / L)');
    const [v, phi] = [derivative(position, 't'), derivative(rod, 't')];
    const [a, turn] = [derivative(v, 't'), derivative(phi, 't')];
    const compiled = { v: v.compile(), a: a.compile(), phi: phi.compile(), turn: turn.compile() };
    fc.assert(
      fc.property(geometries, angles, speeds, alphas, (geometry, theta, omega, alpha) => {
        const { stroke, rodLength, boreOffset = 0, pinOffset = 0 } = geometry;
        const scope = {
          r: stroke / 2,
          L: rodLength,
          e: boreOffset - pinOffset,
          t: theta + deadCentres(geometry).topAngle,
        };
        const value = (name: keyof typeof compiled): number =>
          Number(compiled[name].evaluate({ ...scope }));
        const at = pistonMotion(geometry, theta, omega, alpha);
        const square = omega ** 2 + Math.abs(alpha);
        near(at.speed, -value('v') * omega, 1e-9, stroke * omega);
        near(
          at.acceleration,
          -(value('a') * omega ** 2 + value('v') * alpha),
          1e-9,
          stroke * square,
        );
        near(at.rodSpeed, value('phi') * omega, 1e-9, omega);
        near(at.rodAcceleration, value('turn') * omega ** 2 + value('phi') * alpha, 1e-9, square);
      }),
    );
  });
  it(proves(routes.agreesLoopClosure), () => {
    // Unknowns: rod speed and piston speed, then their rates. Rows: across and along the bore.
    fc.assert(
      fc.property(geometries, angles, speeds, alphas, (geometry, theta, omega, alpha) => {
        const { stroke, rodLength: l, boreOffset = 0, pinOffset = 0 } = geometry;
        const r = stroke / 2;
        const psi = theta + deadCentres(geometry).topAngle;
        const phi = bracketedRoot(
          (x) => r * Math.sin(psi) - l * Math.sin(x) - boreOffset + pinOffset,
          -Math.PI / 2,
          Math.PI / 2,
        );
        const solve = (m: number[][], [p, q]: [number, number]): [number, number] => {
          const [[a, b], [c, d]] = m as [[number, number], [number, number]];
          const det = a * d - b * c;
          return [(p * d - b * q) / det, (a * q - p * c) / det];
        };
        const matrix = [
          [l * Math.cos(phi), 0],
          [-l * Math.sin(phi), 1],
        ];
        const [turn, v] = solve(matrix, [r * omega * Math.cos(psi), r * omega * Math.sin(psi)]);
        const [spin, a] = solve(matrix, [
          r * (alpha * Math.cos(psi) - omega ** 2 * Math.sin(psi)) + l * turn ** 2 * Math.sin(phi),
          r * (alpha * Math.sin(psi) + omega ** 2 * Math.cos(psi)) + l * turn ** 2 * Math.cos(phi),
        ]);
        const at = pistonMotion(geometry, theta, omega, alpha);
        const square = omega ** 2 + Math.abs(alpha);
        near(at.speed, v, 1e-9, stroke * omega);
        near(at.acceleration, a, 1e-9, stroke * square);
        near(at.rodSpeed, turn, 1e-9, omega);
        near(at.rodAcceleration, spin, 1e-9, square);
      }),
    );
  });
});

describe('refusals', () => {
  const good = { stroke: 0.073, rodLength: 0.142 };
  function refused(geometry: SliderCrank): OutOfDomain {
    try {
      pistonMotion(geometry, 1, 1);
    } catch (error) {
      if (error instanceof OutOfDomain) return error;
    }
    throw new Error('nothing was refused');
  }
  it('a rod too short to turn, with or without offset', () => {
    const short = refused({ stroke: 0.073, rodLength: 0.0365 });
    expect(short).toMatchObject({ quantity: 'rodLength', relation: 'greater than', limit: 0.0365 });
    expect(short.limitName).toBe('half the stroke');
    const offset = refused({
      stroke: 0.073,
      rodLength: 0.048,
      boreOffset: -0.01,
      pinOffset: 0.002,
    });
    expect(offset.quantity).toBe('rodLength');
    expect(offset.limit).toBeCloseTo(0.0365 + 0.012, 15);
    expect(offset.limitName).toBe('half the stroke plus the offset');
    expect(() => deadCentres({ ...good, pinOffset: 0.2 })).toThrow(OutOfDomain);
    expect(() => motionPeaks({ ...good, pinOffset: 0.2 }, 1)).toThrow(OutOfDomain);
    expect(() => harmonics({ ...good, pinOffset: 0.2 }, [2])).toThrow(OutOfDomain);
  });
  it('the rod, not the offset, where no offset would help or the offset does not pass the throw', () => {
    // Numbers that doubles hold exactly, so that each stands at its limit.
    expect(refused({ stroke: 0.125, rodLength: 0.0625, boreOffset: 0.125 }).quantity).toBe(
      'rodLength',
    );
    expect(refused({ stroke: 0.125, rodLength: 0.09375, boreOffset: 0.0625 }).quantity).toBe(
      'rodLength',
    );
  });
  it('the greater offset where it passes the throw, not the rod', () => {
    const room = 0.142 - 0.0365;
    const cases = [
      [{ pinOffset: 0.12 }, 'pinOffset', 'less than', room],
      [{ pinOffset: -0.12 }, 'pinOffset', 'greater than', -room],
      [{ boreOffset: 0.2, pinOffset: 0.001 }, 'boreOffset', 'less than', 0.001 + room],
      [{ boreOffset: -0.11, pinOffset: 0.002 }, 'boreOffset', 'greater than', 0.002 - room],
    ] as const;
    for (const [offsets, quantity, relation, limit] of cases) {
      const error = refused({ ...good, ...offsets });
      expect(error).toMatchObject({ quantity, relation });
      expect(error.limit).toBeCloseTo(limit, 15);
      // The limit is where it begins to turn.
      const inside = { ...good, ...offsets, [quantity]: error.limit * (1 - 1e-9) };
      expect(() => pistonMotion(inside, 1, 1)).not.toThrow();
    }
  });
});
