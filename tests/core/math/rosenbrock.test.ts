import { describe, expect, it } from 'vitest';
import { parabolaTop } from '../../../src/core/math/parabola.ts';
import { integrateStiff, type StiffSystem } from '../../../src/core/math/rosenbrock.ts';
import { steadySearch } from '../../../src/core/math/steady.ts';
import { routes } from '../../../content/topics/gas-port/routes.ts';
import { proves } from '../../proves.ts';

/** y' = −k(y − cos t) − sin t: cos t is a solution, and a stiff one for great k. */
function prothero(k: number): StiffSystem {
  return {
    size: 1,
    slope: (t, y, out) => (out[0] = -k * ((y[0] ?? 0) - Math.cos(t)) - Math.sin(t)),
    jacobian: (t, _, byY, byT) => {
      byY[0] = -k;
      byT[0] = -k * Math.sin(t) - Math.cos(t);
    },
  };
}

const swing: StiffSystem = {
  size: 2,
  slope: (_, y, out) => {
    out[0] = y[1] ?? 0;
    out[1] = -Math.sin(y[0] ?? 0);
  },
  jacobian: (_, y, byY, byT) => {
    byY.set([0, 1, -Math.cos(y[0] ?? 0), 0]);
    byT.fill(0);
  },
};

const evenly = (n: number, to: number): number[] =>
  Array.from({ length: n }, (_, i) => (to * (i + 1)) / n);

describe('the stiff integrator', () => {
  const control = { relative: 1e-6, absolute: [1e-9, 1e-9], firstStep: 0.01, longestStep: 1 };

  it('is of third order', () => {
    const end = (n: number): number =>
      integrateStiff(swing, 0, [1, 0], 2, { ...control, mesh: evenly(n, 2) }).y[0] ?? 0;
    const exact = end(4000);
    const order = Math.log2((end(40) - exact) / (end(80) - exact));
    expect(order).toBeGreaterThan(2.8);
    expect(order).toBeLessThan(3.3);
  });

  it(proves(routes.dampsFarToo), () => {
    const k = 1e8;
    const { y } = integrateStiff(prothero(k), 0, [5], 1, { ...control, mesh: evenly(20, 1) });
    expect((y[0] ?? 0) - Math.cos(1)).toBeLessThan(1e-6);
    expect(Math.abs((y[0] ?? 0) - Math.cos(1))).toBeLessThan(1e-6);
  });

  it('takes few steps where the fast part is over, and keeps the error asked for', () => {
    for (const k of [1, 1e3, 1e6]) {
      const { y, steps } = integrateStiff(prothero(k), 0, [1], 5, control);
      expect(Math.abs((y[0] ?? 0) - Math.cos(5))).toBeLessThan(2e-5);
      expect(steps).toBeLessThan(1500);
    }
  });

  it('keeps a sum that the equations keep, to rounding', () => {
    const exchange: StiffSystem = {
      size: 2,
      slope: (_, y, out) => {
        const flow = 1e5 * ((y[0] ?? 0) ** 2 - (y[1] ?? 0) ** 2);
        out[0] = -flow;
        out[1] = flow;
      },
      jacobian: (_, y, byY, byT) => {
        const [a, b] = [2e5 * (y[0] ?? 0), 2e5 * (y[1] ?? 0)];
        byY.set([-a, b, a, -b]);
        byT.fill(0);
      },
    };
    const { y } = integrateStiff(exchange, 0, [3, 1], 1, control);
    expect((y[0] ?? 0) + (y[1] ?? 0)).toBeCloseTo(4, 12);
    expect(y[0]).toBeCloseTo(2, 5);
  });

  it('finds where a condition ends', () => {
    const end = integrateStiff(swing, 0, [1, 0], 10, {
      ...control,
      relative: 1e-9,
      inside: (_, y) => y[0] ?? 0,
    });
    // A quarter of the pendulum's period, K(sin ½), by the arithmetic-geometric mean.
    let [a, b] = [1, Math.cos(0.5)];
    for (let turn = 0; turn < 6; turn++) [a, b] = [(a + b) / 2, Math.sqrt(a * b)];
    expect(end.stopped).toBe(true);
    expect(end.t).toBeCloseTo(Math.PI / (2 * a), 6);
    expect(Math.abs(end.y[0] ?? 1)).toBeLessThan(1e-7);
  });

  it('says so when a slope has no value', () => {
    const broken: StiffSystem = {
      size: 1,
      slope: (t, _, out) => (out[0] = t > 0.5 ? Number.NaN : 1),
      jacobian: (_, __, byY, byT) => {
        byY[0] = 0;
        byT[0] = 0;
      },
    };
    expect(() => integrateStiff(broken, 0, [0], 1, control)).toThrow(RangeError);
  });
});

describe('the steady search', () => {
  it('settles a slow linear process where plain repetition would need thousands of passes', () => {
    const search = steadySearch();
    let at = Float64Array.of(1, 1);
    const process = ([x = 0, y = 0]: Float64Array): Float64Array =>
      Float64Array.of(0.995 * x + 0.01 * y + 0.02, 0.1 * x + 0.3 * y + 0.5);
    let passes = 0;
    for (; passes < 30; passes++) {
      const next = process(at);
      if (Math.abs((next[0] ?? 0) - (at[0] ?? 0)) + Math.abs((next[1] ?? 0) - (at[1] ?? 0)) < 1e-10)
        break;
      const out = next.slice();
      search.next(at, next, out);
      at = out;
    }
    expect(passes).toBeLessThan(25);
    const [x = 0, y = 0] = at;
    expect(0.995 * x + 0.01 * y + 0.02).toBeCloseTo(x, 8);
    expect(0.1 * x + 0.3 * y + 0.5).toBeCloseTo(y, 8);
  });
});

describe('the parabola', () => {
  it('finds the top of one through uneven places', () => {
    const f = (x: number): number => 3 - 2 * (x - 0.3) ** 2;
    const top = parabolaTop([0, 0.2, 0.7], [f(0), f(0.2), f(0.7)]);
    expect(top.at).toBeCloseTo(0.3, 12);
    expect(top.value).toBeCloseTo(3, 12);
  });
  it('leaves three level points alone', () => {
    expect(parabolaTop([0, 1, 2], [5, 5, 5])).toEqual({ at: 1, value: 5 });
  });
});
