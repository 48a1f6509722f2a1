import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { integrateStiff } from '../../../src/core/math/rosenbrock.ts';
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
import { flankFlow, holeFlow, still } from '../../../src/core/rings/ring-flows.ts';
import { ringGas, type RingPack } from '../../../src/core/rings/ring-pack.ts';
import { routes } from '../../../content/topics/gas-port/routes.ts';
import { proves } from '../../proves.ts';

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

  it('mass flow is density times speed times area at the throat', () => {
    fc.assert(
      fc.property(gammas, fc.double({ min: 0, max: 0.999, noNaN: true }), (γ, ratio) => {
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
  const tau = chokedTime(1e-3, 1e-6, 1, air);
  it('has the time constant of the worked case', () => {
    expect(tau).toBeCloseTo(4.97712, 5);
    expect(1e6 / tau / 1e5 / (1 / 1.4)).toBeCloseTo(2.81287, 4);
  });

  function integrated(wall: boolean, end: number): number {
    const γ = air.heatRatio;
    const n = wall ? 1 : γ;
    const exponent = wall ? 1 : (3 * γ - 1) / (2 * γ);
    return (
      integrateStiff(
        {
          size: 1,
          slope: (_, y, out) => (out[0] = (-n / tau) * (y[0] ?? 0) ** exponent),
          jacobian: (_, y, byY, byT) => {
            byY[0] = (-n / tau) * exponent * (y[0] ?? 0) ** (exponent - 1);
            byT[0] = 0;
          },
        },
        0,
        [1],
        end,
        { relative: 1e-9, absolute: [1e-12], firstStep: 1e-3, longestStep: 1 },
      ).y[0] ?? 0
    );
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

  it(proves(routes.chokedHoleFills), () => {
    const γ = ringGas.heatRatio;
    const [area, volume, p1] = [2e-6, 1e-7, 30e5];
    const rt = ringGas.gasConstant * 480;
    const flow = still();
    const filled = integrateStiff(
      {
        size: 1,
        slope: (_, y, out) => {
          holeFlow(area, p1, y[0] ?? 0, rt, flow);
          out[0] = (flow.flow * rt) / volume;
        },
        jacobian: (_, y, byY, byT) => {
          holeFlow(area, p1, y[0] ?? 0, rt, flow);
          byY[0] = (flow.bySecond * rt) / volume;
          byT[0] = 0;
        },
      },
      0,
      [1e5],
      3e-5,
      { relative: 1e-8, absolute: [1], firstStep: 1e-7, longestStep: 1e-5 },
    );
    const constant = chokedTime(volume, area, 1, { ...ringGas, gasTemperature: 480 });
    expect((filled.y[0] ?? 0) / (1e5 + (p1 * 3e-5) / constant)).toBeCloseTo(1, 9);
    expect((filled.y[0] ?? 0) / p1).toBeLessThan(criticalRatio(γ));
  });
});

describe('the flows of the ring, with their slopes', () => {
  const rt = 287 * 488;
  const pack = { girth: 0.275, viscosity: 2.6e-5, rt } as RingPack;
  const pressures = fc.double({ min: 0.5e5, max: 90e5, noNaN: true });

  it('agree with the hole’s own formula both ways', () => {
    fc.assert(
      fc.property(pressures, pressures, (p, q) => {
        fc.pre(Math.abs(p / q - 1) > 3e-4);
        const out = still();
        holeFlow(3e-6, p, q, rt, out);
        const [high, low] = [Math.max(p, q), Math.min(p, q)];
        const wanted =
          ((3e-6 * high) / Math.sqrt(rt)) * flowFunction(low / high, ringGas.heatRatio);
        expect(out.flow / (Math.sign(p - q) * wanted)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('overstate the difference near equal pressures by at most 0.02 %', () => {
    for (const gap of [1e-7, 1e-5, 1e-4, 1.9e-4]) {
      const out = still();
      holeFlow(1e-6, 1e6, 1e6 * (1 - gap), rt, out);
      const exact = (1e-6 * 1e6 * flowFunction(1 - gap, ringGas.heatRatio)) / Math.sqrt(rt);
      expect(out.flow).toBeLessThanOrEqual(exact);
      // The gap that passes this flow exactly is smaller, and so by less than the piece's length.
      expect(out.flow).toBeGreaterThan(0);
    }
  });

  it('have the slopes of their differences', () => {
    fc.assert(
      fc.property(
        pressures,
        pressures,
        fc.double({ min: 5e-6, max: 1e-4, noNaN: true }),
        (p, q, gap) => {
          fc.pre(Math.abs(p / q - 1) > 1e-2);
          const [out, more, less] = [still(), still(), still()];
          for (const flow of ['hole', 'flank'] as const) {
            const work = (a: number, b: number, c: number, to: typeof out): void =>
              flow === 'hole' ? holeFlow(3e-6, a, b, rt, to) : flankFlow(pack, 2.6e-3, c, a, b, to);
            work(p, q, gap, out);
            const size = Math.abs(out.flow);
            const slopes = [
              [out.byFirst, p, (x: number, to: typeof out) => work(x, q, gap, to)],
              [out.bySecond, q, (x: number, to: typeof out) => work(p, x, gap, to)],
              ...(flow === 'flank'
                ? ([[out.byHeight, gap, (x: number, to: typeof out) => work(p, q, x, to)]] as const)
                : []),
            ] as const;
            for (const [slope, at, way] of slopes) {
              way(at * (1 + 1e-6), more);
              way(at * (1 - 1e-6), less);
              const wanted = (more.flow - less.flow) / (2e-6 * at);
              // Across the kink to choked flow a difference sees both sides.
              const ahead = (more.flow - out.flow) / (1e-6 * at);
              const behind = (out.flow - less.flow) / (1e-6 * at);
              if (Math.abs(ahead - behind) * at < 1e-3 * size)
                expect(Math.abs(slope - wanted) * at).toBeLessThan(1e-4 * size + 1e-12);
            }
          }
        },
      ),
    );
  });

  it('the flank is the laminar slot until the choked hole of its area is less', () => {
    const out = still();
    flankFlow(pack, 2.6e-3, 10e-6, 15e5, 14e5, out);
    const slot = { slotWidth: 0.275, slotHeight: 10e-6, slotLength: 2.6e-3 };
    const gas = { ...ringGas, gasTemperature: 488 };
    expect(out.flow / slotFlow(slot, 15e5, 14e5, 2.6e-5, gas)).toBeCloseTo(1, 12);
    flankFlow(pack, 2.6e-3, 100e-6, 70e5, 1e5, out);
    const choked = orificeFlow(
      {
        orificeArea: 0.275 * 100e-6,
        dischargeCoefficient: 1,
        upstreamPressure: 70e5,
        downstreamPressure: 1e5,
      },
      gas,
    );
    expect(out.flow / choked.massFlow).toBeCloseTo(1, 12);
    expect(out.flow).toBeLessThan(
      slotFlow({ ...slot, slotHeight: 100e-6 }, 70e5, 1e5, 2.6e-5, gas),
    );
  });

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

describe('refusals name the quantity', () => {
  const good = {
    orificeArea: 1e-6,
    dischargeCoefficient: 0.7,
    upstreamPressure: 1e6,
    downstreamPressure: 1e5,
  };
  it.each([
    ['orificeArea', { orificeArea: -1 }, {}],
    ['dischargeCoefficient', { dischargeCoefficient: 1.1 }, {}],
    ['upstreamPressure', { upstreamPressure: 0 }, {}],
    ['downstreamPressure', { downstreamPressure: 2e6 }, {}],
    ['heatRatio', {}, { heatRatio: 1 }],
    ['gasTemperature', {}, { gasTemperature: 0 }],
    ['gasConstant', {}, { gasConstant: Number.NaN }],
  ])('%s', (name, hole, gas) => {
    let quantity = 'nothing';
    try {
      orificeFlow({ ...good, ...hole }, { ...air, ...gas });
    } catch (error) {
      if (error instanceof OutOfDomain) quantity = error.quantity;
    }
    expect(quantity).toBe(name);
  });
  it('vesselVolume and targetPressure', () => {
    expect(() => chokedTime(0, 1e-6, 1, air)).toThrow(/vesselVolume/u);
    expect(() => blowDownTime(1.1, 1, 1.4, true)).toThrow(/targetPressure/u);
  });
});
