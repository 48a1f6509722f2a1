import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airViscosity, flowFunction, slotFlow } from '../../../src/core/rings/orifice-flow.ts';
import { flankConductance, holeConductance } from '../../../src/core/rings/ring-flows.ts';
import { ringGas } from '../../../src/core/rings/ring-pack.ts';
import { packOf } from './hill.ts';
import { evenly } from '../../evenly.ts';

const pack = packOf();
const { rt, girth, overlapAbove } = pack;
const pressure = fc.double({ min: 2e4, max: 2e7, noNaN: true });
const near = (value: number, wanted: number, share: number): void =>
  expect(Math.abs(value - wanted)).toBeLessThanOrEqual(share * Math.abs(wanted));

describe('the conductance of a hole', () => {
  it('times the difference is the flow function’s flow, but for the last 0.02 %', () => {
    fc.assert(
      fc.property(pressure, evenly(0, 1 - 2.1e-4), (p, ratio) => {
        const flow = ((1e-6 * p) / Math.sqrt(rt)) * flowFunction(ratio, ringGas.heatRatio);
        near(holeConductance(1e-6, p, ratio * p, rt) * p * (1 - ratio), flow, 1e-9);
      }),
    );
  });
  it('is the same both ways, and constant within 0.02 % of equal pressures', () => {
    fc.assert(
      fc.property(pressure, pressure, (a, b) => {
        expect(holeConductance(1e-6, a, b, rt)).toBe(holeConductance(1e-6, b, a, rt));
      }),
    );
    const level = holeConductance(1e-6, 1e6, 1e6, rt);
    near(holeConductance(1e-6, 1e6, 1e6 * (1 - 1e-4), rt), level, 1e-12);
    // The straight piece lies under the root: the difference is overstated, never understated.
    for (const gap of [1e-7, 1e-5, 1e-4, 1.9e-4])
      expect(level * 1e6 * gap).toBeLessThan(
        ((1e-6 * 1e6) / Math.sqrt(rt)) * flowFunction(1 - gap, ringGas.heatRatio),
      );
    expect(holeConductance(1e-6, 1e6, 1e6 * (1 - 1e-3), rt)).toBeLessThan(0.5 * level);
  });
});

describe('the conductance of a flank', () => {
  const slot = (gap: number, first: number, second: number): number =>
    slotFlow(
      { slotWidth: girth, slotHeight: gap, slotLength: overlapAbove },
      first,
      second,
      airViscosity(488.15),
      { ...ringGas, gasTemperature: 488.15 },
    );
  it('times the difference is the slot’s flow, up to that of the choked hole of its area', () => {
    const ratio = fc.double({ min: 0.01, max: 0.999, noNaN: true });
    const height = fc.double({ min: 1e-6, max: 4e-4, noNaN: true });
    fc.assert(
      fc.property(pressure, ratio, height, (p, r, gap) => {
        const choked = (girth * gap * p * flowFunction(0, ringGas.heatRatio)) / Math.sqrt(rt);
        const flow = Math.min(slot(gap, p, r * p), choked);
        near(flankConductance(pack, overlapAbove, gap, p, r * p) * p * (1 - r), flow, 1e-9);
        near(flankConductance(pack, overlapAbove, gap, r * p, p) * p * (1 - r), flow, 1e-9);
      }),
    );
  });
  it('is none where the flank is closed', () => {
    expect(flankConductance(pack, overlapAbove, 0, 1e6, 1e5)).toBe(0);
  });
});
