import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { benchSwing } from '../../../../src/calculators/inertia/bench-swing.ts';
import {
  aboveEdge,
  frame,
  letGo,
  outline,
  swingScale,
  swungPart,
  turnedBy,
  wiresOf,
  type SwungPart,
} from '../../../../src/components/figures/inertia/swing-rig.ts';

const input = {
  swingRig: 'bifilar',
  swingMass: 20,
  swingCount: 20,
  swingTime: 21,
  swingSpacing: 0.12,
  swingWire: 1.5,
} as const;

function partOf(change: Partial<Record<keyof typeof input, number | string>> = {}): SwungPart {
  const given = { ...input, ...change } as typeof input;
  const part = swungPart({ input: given, output: benchSwing.compute(given), stale: false });
  if (part === undefined) throw new Error('There is a part.');
  return part;
}

describe('a part on the swing', () => {
  it('has the radius of gyration that its time says: k = s T √(g/l) / 2π', () => {
    const { gyration, period } = partOf();
    expect(period).toBe(1.05);
    expect(gyration).toBeCloseTo((0.12 * 1.05 * Math.sqrt(9.80665 / 1.5)) / (2 * Math.PI), 12);
  });
  it('hangs on two wires, on three, or on none', () => {
    expect(wiresOf('bifilar')).toEqual([0, Math.PI]);
    expect(wiresOf('trifilar')).toHaveLength(3);
    expect(wiresOf('knife-edge')).toEqual([]);
    expect(partOf({ swingRig: 'knife-edge', swingTime: 30 }).wire).toBe(0);
  });
  it('is not drawn while a number is missing', () => {
    const output = benchSwing.compute(input);
    expect(swungPart({ input: { ...input, swingWire: undefined }, output, stale: false })).toBe(
      undefined,
    );
    expect(swungPart({ input: undefined, output: undefined, stale: true })).toBe(undefined);
  });
  it('is let go at ten degrees, stands straight after a quarter and comes back after a whole swing', () => {
    const part = partOf();
    expect(turnedBy(part, 0)).toBe(letGo);
    expect(turnedBy(part, part.period / 4)).toBeCloseTo(0, 12);
    expect(turnedBy(part, part.period / 2)).toBeCloseTo(-letGo, 12);
    expect(turnedBy(part, 20 * part.period)).toBeCloseTo(letGo, 9);
  });
});

it('both parts have room in their columns, whatever their sizes and however they hang', () => {
  const part = fc.record({
    rig: fc.constantFrom('bifilar', 'trifilar', 'knife-edge'),
    wire: fc.double({ min: 0.1, max: 6, noNaN: true }),
    spacing: fc.double({ min: 0.01, max: 0.6, noNaN: true }),
    gyration: fc.double({ min: 0.001, max: 2.4, noNaN: true }),
  });
  fc.assert(
    fc.property(part, part, fc.integer({ min: 132, max: 187 }), (one, other, column) => {
      const parts = [one, other].map((own): SwungPart => ({ ...partOf(), ...own }));
      const scale = swingScale(parts, column);
      for (const own of parts)
        if (own.rig === 'knife-edge') {
          const low = (own.spacing + aboveEdge(own) + 1.12 * own.gyration) * scale.pendulum;
          expect(own.spacing + aboveEdge(own)).toBeGreaterThanOrEqual(1.12 * own.gyration - 1e-12);
          expect(frame.top + low).toBeLessThanOrEqual(scale.height - frame.foot);
          const out = own.spacing * Math.sin(letGo) + 1.12 * own.gyration;
          expect(out * scale.pendulum).toBeLessThanOrEqual(column / 2 - 8 + 1e-9);
        } else {
          expect(own.wire * scale.side).toBeLessThanOrEqual(frame.side + 1e-9);
          expect(outline(own) * scale.above).toBeLessThanOrEqual(column / 2 - 8 + 1e-9);
          expect(outline(own) * scale.side).toBeLessThanOrEqual(column / 2 - 8 + 1e-9);
          expect(own.gyration).toBeLessThan(outline(own));
        }
    }),
  );
});
