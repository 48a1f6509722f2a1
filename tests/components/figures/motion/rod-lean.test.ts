import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  frame,
  leanArc,
  leaningRod,
  leanScale,
  piston,
  type LeaningRod,
} from '../../../../src/components/figures/motion/rod-lean.ts';

/** A rod that turns: longer than the throw and both offsets together. */
const geometry = fc
  .record({
    stroke: fc.double({ min: 0.015, max: 0.2, noNaN: true }),
    spare: fc.double({ min: 0.002, max: 0.3, noNaN: true }),
    boreOffset: fc.double({ min: -0.025, max: 0.03, noNaN: true }),
    pinOffset: fc.double({ min: -0.004, max: 0.004, noNaN: true }),
  })
  .map(({ spare, ...rest }) => ({
    ...rest,
    rodLength: rest.stroke / 2 + Math.abs(rest.boreOffset - rest.pinOffset) + spare,
  }));
const angle = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });

function must(rod: LeaningRod | undefined): LeaningRod {
  if (rod === undefined) throw new Error('There is a rod.');
  return rod;
}
const rodOf = (input: Record<string, number>, theta: number): LeaningRod =>
  must(leaningRod({ input, output: {}, stale: false }, theta));

describe('a leaning rod', () => {
  it('leans as it is drawn, from the pin to the crankpin', () => {
    fc.assert(
      fc.property(geometry, angle, (input, theta) => {
        const { pose, lean, thrust } = rodOf(input, theta);
        const [across, along] = [pose.crankpin.x - pose.pin.x, pose.pin.y - pose.crankpin.y];
        expect(Math.atan2(across, along)).toBeCloseTo(lean, 9);
        // Steep where the rod is hardly longer than the throw.
        expect(Math.abs(thrust * along - across)).toBeLessThan(1e-9);
      }),
    );
  });
  it('is drawn dashed with its crank square to the bore, where it leans most', () => {
    fc.assert(
      fc.property(geometry, angle, (input, theta) => {
        const { lean, down, up, mostDown, mostUp } = rodOf(input, theta);
        expect(mostDown.crankpin.y).toBeCloseTo(0, 12);
        expect(mostDown.crankpin.x).toBeCloseTo(input.stroke / 2, 12);
        expect(mostUp.crankpin.x).toBeCloseTo(-input.stroke / 2, 12);
        expect(lean).toBeLessThanOrEqual(down.lean + 1e-12);
        expect(lean).toBeGreaterThanOrEqual(-up.lean - 1e-12);
      }),
    );
  });
  it('is not drawn while a length is missing', () => {
    expect(leaningRod({ input: { stroke: 0.08 }, output: {}, stale: false }, 1)).toBe(undefined);
    expect(leaningRod({ input: undefined, output: undefined, stale: true }, 1)).toBe(undefined);
  });
});

it('both sets have room in their columns, with arrows no longer than theirs', () => {
  fc.assert(
    fc.property(
      geometry,
      geometry,
      angle,
      fc.integer({ min: 135, max: 190 }),
      (a, b, theta, column) => {
        const rods = [rodOf(a, theta), rodOf(b, theta)];
        const scale = leanScale(rods, column, 1.96 * column);
        expect(scale.height).toBeLessThanOrEqual(1.96 * column + 1e-9);
        for (const { pose, thrust } of rods) {
          const { stroke } = pose.geometry;
          const top = (pose.topDead + piston.crown * stroke) * scale.length;
          expect(scale.axis - top).toBeGreaterThanOrEqual(frame.top + frame.force);
          expect(
            (Math.abs(pose.boreAxis) + piston.half * stroke) * scale.length,
          ).toBeLessThanOrEqual(column / 2 - frame.side + 1e-9);
          expect(Math.abs(thrust) * scale.force).toBeLessThanOrEqual(frame.thrust + 1e-6);
        }
      },
    ),
  );
});

it('the arc of a lean begins under the pin and ends on the rod', () => {
  const [, y, , , , , , x1 = 0, y1 = 0] = (leanArc(0.3, 50).match(/-?\d+(\.\d+)?/gu) ?? []).map(
    Number,
  );
  expect(y).toBe(50);
  expect(Math.atan2(x1, y1)).toBeCloseTo(0.3, 3);
  expect(leanArc(-0.3, 50)).toContain(' 0 0 1 -');
});
