import fc from 'fast-check';
import { expect, test } from 'vitest';
import { calculators } from '../../../src/calculators/index.ts';
import type { AnyCalculator } from '../../../src/calculators/define.ts';
import { twoTermMotion } from '../../../src/core/motion/two-term-motion.ts';
import { routes } from '../../../content/topics/piston-motion/routes.ts';
import { proves } from '../../proves.ts';

const calculator: AnyCalculator = calculators['piston-motion'];

test(proves(routes.greatestUpwardValue), () => {
  fc.assert(
    fc.property(fc.double({ min: 0.15, max: 0.45, noNaN: true }), (lambda) => {
      const geometry = { stroke: 0.08, rodLength: 0.04 / lambda };
      const maxSpeed = 700;
      const { twoTermGreatestUpward: value } = calculator.compute({
        ...geometry,
        maxSpeed,
        crankAngle: 0,
        pinOffset: 0,
        boreOffset: 0,
        rodPoint: 0,
        crankAcceleration: 0,
      });
      // cos θ + λ cos 2θ has its least value at BDC up to λ = 1/4, beyond at cos θ = −1/(4λ).
      const least = lambda <= 0.25 ? -(1 - lambda) : -(lambda + 1 / (8 * lambda));
      const size = 0.04 * maxSpeed ** 2;
      expect(Number(value)).toBeCloseTo(least * size, 6);
      for (let quarter = 0; quarter <= 720; quarter += 1) {
        const angle = (quarter * Math.PI) / 720;
        const { acceleration } = twoTermMotion(geometry, angle, maxSpeed);
        expect(acceleration).toBeGreaterThanOrEqual(least * size * (1 + 1e-12));
      }
    }),
    { numRuns: 40 },
  );
});
