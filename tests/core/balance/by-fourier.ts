import type { Cylinder } from '../../../src/core/balance/cylinders.ts';
import type { OrderOfShaking } from '../../../src/core/balance/shaking-forces.ts';
import type { TurningParts } from '../../../src/core/balance/turning-parts.ts';
import { pistonMotion } from '../../../src/core/motion/piston-motion.ts';

/**
 * Forward and backward parts from the exact motion of every piston, by sums over the angles of a turn: the n-th
 * Fourier coefficients of the vector along + i across.
 */
export function byFourier(engine: readonly Cylinder[], n: number): OrderOfShaking {
  const steps = 360;
  const parts = { force: [0, 0, 0, 0], couple: [0, 0, 0, 0] };
  for (let i = 0; i < steps; i += 1) {
    const theta = (2 * Math.PI * i) / steps;
    const [cos, sin] = [Math.cos(n * theta) / steps, Math.sin(n * theta) / steps];
    for (const one of engine) {
      const { acceleration } = pistonMotion(one, theta + one.angle - one.bank, 1);
      for (const [what, arm] of [
        ['force', 1],
        ['couple', one.position],
      ] as const) {
        const pull = arm * one.reciprocatingMass * acceleration;
        const [x, y] = [pull * Math.cos(one.bank), pull * Math.sin(one.bank)];
        const [a = 0, b = 0, c = 0, d = 0] = parts[what];
        parts[what] = [
          a + x * cos + y * sin,
          b + y * cos - x * sin,
          c + x * cos - y * sin,
          d + y * cos + x * sin,
        ];
      }
    }
  }
  const of = ([a = 0, b = 0, c = 0, d = 0]: readonly number[]): TurningParts => ({
    forward: { along: a, across: b },
    backward: { along: c, across: d },
  });
  return { force: of(parts.force), couple: of(parts.couple) };
}
