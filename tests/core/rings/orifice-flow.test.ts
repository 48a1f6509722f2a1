import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airViscosity,
  blowDown,
  blowDownTime,
  chokedTime,
  criticalRatio,
  flowFunction,
  orificeFlow,
  slotFlow,
} from '../../../src/core/rings/orifice-flow.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { routes } from '../../../content/topics/gas-port/routes.ts';
import { proves } from '../../proves.ts';
import { evenly } from '../../evenly.ts';

const air = { gasConstant: 287, heatRatio: 1.4, gasTemperature: 300 };
const gammas = fc.double({ min: 1.05, max: 1.66, noNaN: true });

describe('the flow function', () => {
  it.each([
    [1.4, 0.528282, 0.684731, 0.307641, 0.638317],
    [1.35, 0.536851, 0.676145, 0.307328, 0.633792],
    [1.3, 0.545728, 0.667262, 0.306991, 0.628956],
    [1.25, 0.554929, 0.658065, 0.306628, 0.623779],
  ])('γ %d', (γ, critical, most, at95, at70) => {
    expect(criticalRatio(γ)).toBeCloseTo(critical, 6);
    expect(flowFunction(0, γ)).toBeCloseTo(most, 6);
    expect(flowFunction(0.95, γ)).toBeCloseTo(at95, 6);
    expect(flowFunction(0.7, γ)).toBeCloseTo(at70, 6);
  });

  it('falls from choked to nothing, without a jump where choking ends', () => {
    fc.assert(
      fc.property(gammas, (γ) => {
        const critical = criticalRatio(γ);
        expect(flowFunction(critical * (1 + 1e-9), γ)).toBeCloseTo(flowFunction(0, γ), 9);
        expect(flowFunction(1, γ)).toBe(0);
        let last = flowFunction(critical, γ);
        for (let i = 1; i <= 20; i++) {
          const now = flowFunction(critical + ((1 - critical) * i) / 20, γ);
          expect(now).toBeLessThan(last);
          last = now;
        }
      }),
    );
  });

  it('is choked, and sonic at the throat, from the critical ratio itself down', () => {
    const flow = (ratio: number) =>
      orificeFlow(
        {
          orificeArea: 1e-6,
          dischargeCoefficient: 1,
          // A power of two, so that the ratio comes back as it was.
          upstreamPressure: 2 ** 20,
          downstreamPressure: ratio * 2 ** 20,
        },
        air,
      );
    const critical = criticalRatio(air.heatRatio);
    for (const [ratio, choked] of [
      [critical * (1 + 1e-9), false],
      [critical, true],
      [0, true],
    ] as const) {
      expect(flow(ratio).choked).toBe(choked);
      expect(flow(ratio).throatMach).toBeCloseTo(1, 8);
    }
  });

  it('mass flow is density times speed times area at the throat', () => {
    fc.assert(
      fc.property(gammas, evenly(0, 0.999), (γ, ratio) => {
        const flow = orificeFlow(
          {
            orificeArea: 1e-6,
            dischargeCoefficient: 0.7,
            upstreamPressure: 1e6,
            downstreamPressure: 1e6 * ratio,
          },
          { ...air, heatRatio: γ },
        );
        expect(flow.massFlow / (0.7e-6 * flow.throatDensity * flow.throatSpeed)).toBeCloseTo(1, 9);
        expect(flow.choked).toBe(ratio <= criticalRatio(γ));
        expect(flow.throatMach).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });
});

describe('vessels', () => {
  // A litre of air at 300 K behind one square millimetre: worked independently.
  const tau = chokedTime({ vesselVolume: 1e-3, orificeArea: 1e-6, dischargeCoefficient: 1 }, air);
  it('has the time constant of the worked case', () => {
    expect(tau).toBeCloseTo(4.97712, 5);
    expect(1e6 / tau / 1e5 / (1 / 1.4)).toBeCloseTo(2.81287, 4);
  });

  /** The share of the first pressure left at `end`, by the classical Runge-Kutta rule in 400 steps. */
  function integrated(wall: boolean, end: number): number {
    const γ = air.heatRatio;
    const n = wall ? 1 : γ;
    const exponent = wall ? 1 : (3 * γ - 1) / (2 * γ);
    const slope = (y: number): number => (-n / tau) * y ** exponent;
    const h = end / 400;
    let y = 1;
    for (let i = 0; i < 400; i++) {
      const a = slope(y);
      const b = slope(y + (h / 2) * a);
      const c = slope(y + (h / 2) * b);
      y += (h / 6) * (a + 2 * b + 2 * c + slope(y + h * c));
    }
    return y;
  }
  it.each([true, false])(
    proves(routes.blowDownIntegrated, 'blow-down integrated is the closed form (wall %s)'),
    (wall) => {
      for (const t of [0.5, 2, 5]) {
        expect(integrated(wall, t)).toBeCloseTo(blowDown(t, tau, 1.4, wall), 7);
        expect(blowDownTime(blowDown(t, tau, 1.4, wall), tau, 1.4, wall)).toBeCloseTo(t, 9);
      }
    },
  );
});

describe('the film in a slot', () => {
  it(proves(routes.slotFilmParabola), () => {
    // dp/dx from the mean speed of a film, density from the pressure: summed in a thousand pieces.
    const [w, h, l, µ, T] = [0.2, 20e-6, 3e-3, 2.6e-5, 480];
    const flow = slotFlow({ slotWidth: w, slotHeight: h, slotLength: l }, 10e5, 2e5, µ, {
      ...air,
      gasTemperature: T,
    });
    let p = 10e5;
    const pieces = 20000;
    for (let i = 0; i < pieces; i++) {
      const slope = (q: number): number => (-12 * µ * flow * 287 * T) / (w * h ** 3 * q);
      const half = p + (slope(p) * l) / pieces / 2;
      p += (slope(half) * l) / pieces;
    }
    expect(p / 2e5).toBeCloseTo(1, 6);
  });

  it('air is as viscous as a table says', () => {
    // 1.716e-5 Pa·s at 273 K is the law's own point; 2.29e-5 at 400 K and 2.67e-5 at 500 K, air tables.
    expect(airViscosity(273)).toBeCloseTo(1.716e-5, 8);
    expect(Math.abs(airViscosity(400) / 2.29e-5 - 1)).toBeLessThan(0.02);
    expect(Math.abs(airViscosity(500) / 2.67e-5 - 1)).toBeLessThan(0.02);
  });
});

describe('refusals', () => {
  it('a slot that cannot be: worked out, so that no quantity is named', () => {
    const good = { slotWidth: 0.2, slotHeight: 2e-5, slotLength: 3e-3 };
    const flow = (change: Partial<typeof good>) => () =>
      slotFlow({ ...good, ...change }, 10e5, 2e5, 2.6e-5, air);
    expect(flow({ slotWidth: 0, slotHeight: 0 })()).toBe(0);
    for (const change of [{ slotWidth: -1e-9 }, { slotHeight: -1e-9 }, { slotLength: 0 }]) {
      expect(flow(change)).toThrow(RangeError);
      expect(flow(change)).not.toThrow(OutOfDomain);
    }
  });
});
