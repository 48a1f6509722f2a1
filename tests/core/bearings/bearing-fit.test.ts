import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkingLoad,
  compliance,
  crushOpening,
  hoopStress,
  interference,
  interferenceAt,
  looseTemperature,
  shellPoisson,
  shellPressure,
  touchingCrush,
  type WarmFit,
} from '../../../src/core/bearings/bearing-fit.ts';
import { must } from '../../calculators/must.ts';
import { routes } from '../../../content/topics/bearing-clearance/routes.ts';
import { proves } from '../../proves.ts';

const zero = 273.15;
const road: WarmFit = {
  rodHousing: 0.05559,
  housingOutside: 0.0706,
  youngsModulus: 207e9,
  housingPoisson: 0.3,
  rodShellWall: 0.001772,
  shellModulus: 205e9,
  crushHeight: 0.068e-3,
  rodExpansion: 11.5e-6,
  shellExpansion: 11.7e-6,
  assemblyTemperature: 20 + zero,
};
const hill: WarmFit = {
  ...road,
  rodHousing: 0.0497,
  housingOutside: 0.0747,
  youngsModulus: 71.7e9,
  housingPoisson: 0.33,
  rodShellWall: 0.001817,
  crushHeight: 0.11e-3,
  rodExpansion: 23.4e-6,
};
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyFit: fc.Arbitrary<WarmFit> = fc
  .record({
    rodHousing: double(0.03, 0.09),
    outside: double(1.1, 2),
    youngsModulus: double(60e9, 220e9),
    housingPoisson: double(0.2, 0.4),
    wall: double(0.02, 0.2),
    shellModulus: double(100e9, 220e9),
    crushHeight: double(0, 2e-4),
    rodExpansion: double(8e-6, 25e-6),
    shellExpansion: double(10e-6, 14e-6),
    assemblyTemperature: double(273, 310),
  })
  .map(({ outside, wall, ...rest }) => ({
    ...rest,
    housingOutside: outside * rest.rodHousing,
    rodShellWall: wall * rest.rodHousing,
  }));

/**
 * Radial displacement of a ring in plane stress, by stepping u″ = u/r² − u′/r from one edge to the other
 * (Runge–Kutta). Returns u and the radial stress over E at both edges for a start u, u′ at `from`.
 */
function march(from: number, to: number, ν: number, u0: number, slope0: number) {
  const steps = 400;
  const h = (to - from) / steps;
  let [r, u, v] = [from, u0, slope0];
  const f = (r: number, u: number, v: number): number => u / (r * r) - v / r;
  for (let i = 0; i < steps; i += 1) {
    const k1 = [v, f(r, u, v)] as const;
    const k2 = [
      v + (h / 2) * k1[1],
      f(r + h / 2, u + (h / 2) * k1[0], v + (h / 2) * k1[1]),
    ] as const;
    const k3 = [
      v + (h / 2) * k2[1],
      f(r + h / 2, u + (h / 2) * k2[0], v + (h / 2) * k2[1]),
    ] as const;
    const k4 = [v + h * k3[1], f(r + h, u + h * k3[0], v + h * k3[1])] as const;
    u += (h / 6) * (k1[0] + 2 * k2[0] + 2 * k3[0] + k4[0]);
    v += (h / 6) * (k1[1] + 2 * k2[1] + 2 * k3[1] + k4[1]);
    r += h;
  }
  const stress = (r: number, u: number, v: number): number => (v + (ν * u) / r) / (1 - ν * ν);
  return { u, start: stress(from, u0, slope0), end: stress(to, u, v) };
}

/** u/r at both edges for a unit pressure over E at the `loaded` edge, the other edge free. */
function give(free: number, loaded: number, ν: number): { loaded: number; free: number } {
  // At the free edge the radial stress is nothing: u′ = −ν·u/r. One march with u = 1 there is enough.
  const { u, end } = march(free, loaded, ν, 1, -ν / free);
  const pressure = -end;
  return { loaded: u / loaded / pressure, free: 1 / free / pressure };
}

describe('second routes', () => {
  it(proves(routes.givesWayRings), () => {
    fc.assert(
      fc.property(anyFit, (fit) => {
        const own = compliance(fit);
        const [R, outside] = [fit.rodHousing / 2, fit.housingOutside / 2];
        const inside = R - fit.rodShellWall;
        const housing = give(outside, R, fit.housingPoisson);
        const shell = give(inside, R, shellPoisson);
        expect((own.housing * fit.youngsModulus) / housing.loaded).toBeCloseTo(1, 6);
        expect((own.shell * fit.shellModulus) / -shell.loaded).toBeCloseTo(1, 6);
        expect((own.shellBore * fit.shellModulus) / -shell.free).toBeCloseTo(1, 6);
      }),
    );
  });

  it(proves(routes.openedHousingClosed), () => {
    fc.assert(
      fc.property(anyFit, double(230, 450), (fit, temperature) => {
        const left = interferenceAt(fit, temperature);
        fc.pre(left > 0);
        const p = shellPressure(fit, left);
        const { housing, shell } = compliance(fit);
        const D = fit.rodHousing;
        const warm = temperature - fit.assemblyTemperature;
        const opened = D * (1 + fit.rodExpansion * warm + p * housing);
        const closed = D * (1 + fit.shellExpansion * warm - p * shell) + interference(fit);
        expect((opened - closed) / D).toBeCloseTo(0, 12);
      }),
    );
  });
});

it('opens the bore as far as two rings, each stepped through from edge to edge, leave it open', () => {
  fc.assert(
    fc.property(anyFit, (fit) => {
      fc.pre(fit.crushHeight > 1e-6);
      const [R, outside] = [fit.rodHousing / 2, fit.housingOutside / 2];
      const inside = R - fit.rodShellWall;
      const housing = give(outside, R, fit.housingPoisson).loaded / fit.youngsModulus;
      const shell = give(inside, R, shellPoisson);
      const free = interference(fit);
      const p = free / (2 * R * (housing - shell.loaded / fit.shellModulus));
      const squeezed = (-2 * inside * p * shell.free) / fit.shellModulus;
      // Runge–Kutta in 400 steps keeps at least six digits.
      expect(crushOpening(fit) / free).toBeCloseTo((free - squeezed) / free, 6);
    }),
  );
});

describe('closed forms', () => {
  it(proves(routes.hoopRigidEye), () => {
    const fit = { ...road, youngsModulus: 1e18, rodShellWall: 0.01e-3 };
    const strain = interference(fit) / fit.rodHousing;
    const hoop = (fit.shellModulus * strain * 2 * fit.rodShellWall) / fit.rodHousing;
    expect(shellPressure(fit, interference(fit)) / hoop).toBeCloseTo(1, 3);
  });

  it(proves(routes.balancesHalfRing), () => {
    fc.assert(
      fc.property(anyFit, double(1e6, 1e8), (fit, p) => {
        const stress = hoopStress(fit, p);
        // Lamé's hoop stress is A + B/r² through the wall; its mean is that of its ends' A and B.
        const b = fit.rodHousing / 2;
        const a = b - fit.rodShellWall;
        const B = (stress.shellBore - stress.shellContact) / (a ** -2 - b ** -2);
        const A = stress.shellBore - B / a ** 2;
        const force = A * (b - a) + B * (1 / a - 1 / b);
        expect(force / (-p * b)).toBeCloseTo(1, 9);
        expect(stress.shell / (force / (b - a))).toBeCloseTo(1, 9);
      }),
    );
  });

  it(proves(routes.halvesCountTogether), () => {
    expect(interference({ crushHeight: Math.PI * 1e-5 })).toBeCloseTo(2e-5, 15);
  });

  it(proves(routes.checkingLoadShell), () => {
    expect(
      checkingLoad({ rodHousing: 0.056, rodShellWall: 0.002, rodShellWidth: 0.02 }),
    ).toBeCloseTo((6000 * (20 * 2)) / 56, 9);
  });
});

describe('heat', () => {
  it(proves(routes.letsGoLoose), () => {
    fc.assert(
      fc.property(anyFit, (fit) => {
        const loose = looseTemperature(fit);
        fc.pre(loose !== undefined && fit.crushHeight > 1e-6);
        const at = must(loose);
        const scale = interference(fit);
        expect(interferenceAt(fit, at) / scale).toBeCloseTo(0, 6);
        const near = (at - fit.assemblyTemperature) * 0.01;
        expect(shellPressure(fit, interferenceAt(fit, at - near))).toBeGreaterThan(0);
        expect(shellPressure(fit, interferenceAt(fit, at + near))).toBe(0);
      }),
    );
  });

  it('does not loosen a rod that grows no faster than its shells', () => {
    expect(looseTemperature(road)).toBeUndefined();
    expect(looseTemperature({ ...road, rodExpansion: road.shellExpansion })).toBeUndefined();
    expect(touchingCrush(road, 105 + zero)).toBe(0);
  });

  it(proves(routes.usedUpExactly), () => {
    const touching = touchingCrush(hill, 100 + zero);
    expect(touching).toBeCloseTo(0.0731e-3, 7);
    const fit = { ...hill, crushHeight: touching };
    expect(interferenceAt(fit, 100 + zero)).toBeCloseTo(0, 15);
  });

  // The invented engines. Cold and hot pressures as in the scenario: 8.2 to 8.4 and 13.6 to 4.6 MPa.
  it.each([
    ['road', road, 105, 8.2, 8.4],
    ['hill', hill, 100, 13.6, 4.6],
  ])('%s: the shell pressures of the invented engines', (_, fit, hot, shop, running) => {
    expect(shellPressure(fit, interference(fit)) / 1e6).toBeCloseTo(shop, 1);
    expect(shellPressure(fit, interferenceAt(fit, hot + zero)) / 1e6).toBeCloseTo(running, 1);
  });

  it('a crush of 0.075 mm leaves the aluminium rod’s shells loose at 115 °C', () => {
    const short = { ...hill, crushHeight: 0.075e-3 };
    expect(shellPressure(short, interferenceAt(short, 115 + zero))).toBe(0);
    expect(must(looseTemperature(short)) - zero).toBeCloseTo(102.1, 1);
    expect(must(looseTemperature(hill)) - zero).toBeCloseTo(140.4, 1);
  });
});

it('opens the bore by less than the interference, and by more in a softer eye', () => {
  fc.assert(
    fc.property(anyFit, (fit) => {
      fc.pre(fit.crushHeight > 1e-6);
      const opening = crushOpening(fit);
      expect(opening).toBeLessThan(interference(fit));
      expect(crushOpening({ ...fit, youngsModulus: fit.youngsModulus / 2 })).toBeGreaterThan(
        opening,
      );
    }),
  );
});
