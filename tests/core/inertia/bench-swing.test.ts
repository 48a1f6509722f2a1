import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  benchSwing,
  standardGravity as g,
  twoEndSwing,
  type Swing,
} from '../../../src/core/inertia/bench-swing.ts';
import { routes } from '../../../content/topics/inertia-by-swinging/routes.ts';
import { proves } from '../../proves.ts';

const crank: Swing = {
  swingRig: 'bifilar',
  swingMass: 20.4,
  swingCount: 20,
  swingTime: 21.46,
  swingSpacing: 0.12,
  swingWire: 1.5,
};

describe('second routes', () => {
  /** Time of one swing on wires, by following the turn of the part step by step; small angle. */
  function timeOfSwing(I: number, m: number, s: number, l: number): number {
    let [φ, ω, t] = [0.01, 0, 0];
    const dt = 1e-4;
    // Height of the part at a turn φ, wires of one length: z = √(l² − (2 s sin ½φ)²); its weight pulls it back.
    const pull = (turn: number): number => {
      const z = Math.sqrt(l * l - (2 * s * Math.sin(turn / 2)) ** 2);
      return (-m * g * s * s * Math.sin(turn)) / z;
    };
    while (φ > 0) {
      const half = ω + (pull(φ) / I) * (dt / 2);
      φ += half * dt;
      ω = half + (pull(φ) / I) * (dt / 2);
      t += dt;
    }
    // The last step overshot the middle by φ/ω.
    return 4 * (t - φ / ω);
  }

  it(proves(routes.agreesPartFollowed), () => {
    const once = timeOfSwing(0.056, 20.4, 0.12, 1.5);
    expect(once).toBeCloseTo(1.073, 3);
    expect(benchSwing({ ...crank, swingTime: 20 * once }).inertia / 0.056).toBeCloseTo(1, 4);
  });

  it('takes the platform off', () => {
    const own = 0.02;
    const per = (g * 0.12 ** 2) / 1.5;
    const period = (I: number, m: number) => 2 * Math.PI * Math.sqrt(I / (m * per));
    const swung = benchSwing({
      ...crank,
      swingRig: 'trifilar',
      swingMass: 4.6,
      swingTime: 20 * period(0.049 + own, 4.6 + 1.5),
      platformMass: 1.5,
      platformTime: 20 * period(own, 1.5),
    });
    expect(swung.inertia).toBeCloseTo(0.049, 12);
    expect(swung.taken).toBeCloseTo(own, 12);
    expect(swung.timeSensitivity).toBeCloseTo((2 * 0.069) / 0.049, 10);
  });
});

describe('properties', () => {
  it(proves(routes.swingUndoesItself), () => {
    const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        positive(0.2, 40),
        positive(0.02, 0.3),
        positive(0.02, 0.3),
        positive(0.4, 3),
        (swingMass, k, swingSpacing, swingWire) => {
          const I = swingMass * k * k;
          const wires = (2 * Math.PI * k * Math.sqrt(swingWire / g)) / swingSpacing;
          const edge = 2 * Math.PI * Math.sqrt((k * k + swingSpacing ** 2) / (g * swingSpacing));
          for (const [swingRig, swingTime] of [
            ['bifilar', wires],
            ['trifilar', wires],
            ['knife-edge', edge],
          ] as const) {
            const swung = benchSwing({
              swingRig,
              swingMass,
              swingCount: 1,
              swingTime,
              swingSpacing,
              swingWire,
            });
            // A compact part far from the edge leaves a small difference of two large numbers.
            expect(swung.inertia / I).toBeCloseTo(1, 8);
            expect(swung.gyration / k).toBeCloseTo(1, 8);
          }
        },
      ),
    );
  });

  it(proves(routes.bothEndsAny), () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 0.8, noNaN: true }),
        fc.double({ min: 0.2, max: 0.9, noNaN: true }),
        (part, compactness) => {
          const x = 0.18;
          const [h1, h2] = [part * x, (1 - part) * x];
          const square = compactness * h1 * h2;
          const period = (h: number) => 2 * Math.PI * Math.sqrt((h + square / h) / g);
          const rod = twoEndSwing({
            rodMass: 0.6,
            edgeDistance: x,
            rodSwingCount: 50,
            smallEndTime: 50 * period(h1),
            bigEndTime: 50 * period(h2),
          });
          expect(rod.fromSmallEnd / h1).toBeCloseTo(1, 9);
          expect(rod.inertia / (0.6 * square)).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});

describe('a platform', () => {
  it('given by its mass alone must have swung', () => {
    const swing = { ...crank, swingRig: 'trifilar' as const, platformMass: 1.5 };
    expect(() => benchSwing(swing)).toThrow(
      expect.objectContaining({ quantity: 'platformTime', value: 0 }),
    );
  });
  it('is not needed, and on two wires none counts', () => {
    const bare = benchSwing({ ...crank, swingRig: 'trifilar' });
    expect(bare.inertia).toBe(benchSwing(crank).inertia);
    expect(benchSwing({ ...crank, platformMass: 1.5, platformTime: 40 }).inertia).toBe(
      bare.inertia,
    );
  });
});
