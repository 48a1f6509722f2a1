import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/residual-unbalance/routes.ts';
import { unbalanceFloor as declared } from '../../../src/calculators/balance/unbalance-floor.ts';
import { unbalanceFloor, type FloorInput } from '../../../src/core/balance/unbalance-floor.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';

const parts: FloorInput = {
  crankMass: 8,
  bobweightsMass: 2,
  mountingOffset: 12e-6,
  flywheelMass: 4,
  flywheelClearance: 20e-6,
  bobweightUnbalance: 120e-6,
};

describe('closed forms', () => {
  test(proves(routes.threeParts), () => {
    const output = declared.compute(parts);
    expect(output.mounting).toBeCloseTo(120e-6, 15);
    expect(output.mountingEnd).toBeCloseTo(60e-6, 15);
    expect(output.register).toBeCloseTo(40e-6, 15);
    // 60² + 40² + 120² = 140².
    expect(output.floor).toBeCloseTo(140e-6, 15);
    expect(output.worst).toBeCloseTo(220e-6, 15);
  });

  test('one part alone is the floor', () => {
    const { floor, worst } = unbalanceFloor({ ...parts, mountingOffset: 0, bobweightUnbalance: 0 });
    expect(floor).toBeCloseTo(40e-6, 15);
    expect(worst).toBe(floor);
  });
});

describe('properties', () => {
  test('the floor lies between the greatest of its parts and their sum', () => {
    fc.assert(
      fc.property(evenly(0, 1e-4), evenly(0, 1e-3), evenly(0, 1e-3), (e, c, u) => {
        const { mounting, register, floor, worst } = unbalanceFloor({
          ...parts,
          mountingOffset: e,
          flywheelClearance: c,
          bobweightUnbalance: u,
        });
        expect(floor).toBeGreaterThanOrEqual(Math.max(mounting / 2, register, u) * (1 - 1e-12));
        expect(floor).toBeLessThanOrEqual(worst * (1 + 1e-12));
      }),
    );
  });
});

describe('second routes', () => {
  test('over all angles of the three parts the mean square of their sum is the floor’s square', () => {
    const { mounting, register, floor } = unbalanceFloor(parts);
    const sizes = [mounting / 2, register, parts.bobweightUnbalance] as const;
    const steps = 24;
    let sum = 0;
    for (let i = 0; i < steps; i++)
      for (let j = 0; j < steps; j++) {
        const angles = [0, (2 * Math.PI * i) / steps, (2 * Math.PI * j) / steps];
        const x = sizes.reduce((all, size, k) => all + size * Math.cos(angles[k] ?? 0), 0);
        const y = sizes.reduce((all, size, k) => all + size * Math.sin(angles[k] ?? 0), 0);
        sum += x * x + y * y;
      }
    expect(Math.sqrt(sum / steps ** 2)).toBeCloseTo(floor, 15);
  });
});
