import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { routes } from '../../../content/topics/crank-torsion/routes.ts';
import { at } from '../../../src/core/math/at.ts';
import { bestTuning, ringFrequency, splitFrequencies } from '../../../src/core/torsion/damper.ts';
import { naturalModes } from '../../../src/core/torsion/natural-modes.ts';
import { evenly } from '../../evenly.ts';
import { proves } from '../../proves.ts';

/** Swing of the main inertia over its twist at rest, ring tuned to f and damped by a share of critical. */
function swing(ratio: number, f: number, damping: number, g: number): number {
  const c = (2 * damping * g) ** 2;
  const up = c + (g * g - f * f) ** 2;
  const down =
    c * (g * g - 1 + ratio * g * g) ** 2 +
    (ratio * f * f * g * g - (g * g - 1) * (g * g - f * f)) ** 2;
  return Math.sqrt(up / down);
}

/** The greatest swing to either side of the main frequency over 1 + μ/2, by looking at thousands. */
function peaks(ratio: number, f: number, damping: number): readonly [number, number] {
  let [low, high] = [0, 0];
  const between = Math.sqrt(1 / (1 + ratio / 2)) * Math.sqrt(f);
  for (let i = 1; i <= 40000; i++) {
    const g = (2 * i) / 40000;
    const here = swing(ratio, f, damping, g);
    if (g < between) low = Math.max(low, here);
    else high = Math.max(high, here);
  }
  return [low, high];
}

const turn = 2 * Math.PI;
const pair = { mainInertia: 0.04, mainFrequency: 400, ringInertia: 0.006 };

describe('published values', () => {
  test('Den Hartog: a ring of a fifth, tuned to the main frequency, splits it into 0.80 and 1.25', () => {
    // Mechanical Vibrations, 3.2, from memory.
    const split = splitFrequencies({
      mainInertia: 5,
      mainFrequency: 1,
      ringInertia: 1,
      ringStiffness: turn ** 2,
    });
    expect(split.lower).toBeCloseTo(0.8, 2);
    expect(split.upper).toBeCloseTo(1.25, 2);
  });

  test('Den Hartog: a twentieth, tuned best, has peaks of 6.4', () => {
    const { peak, frequency } = bestTuning({ mainInertia: 20, mainFrequency: 1, ringInertia: 1 });
    expect(peak).toBeCloseTo(6.4, 1);
    expect(frequency).toBeCloseTo(20 / 21, 12);
  });
});

describe('closed forms and limits', () => {
  test(proves(routes.ringOnItsSpring), () => {
    // 0.006 kg·m² on 30 kN·m/rad: √5 000 000 rad/s.
    expect(ringFrequency({ ringInertia: 0.006, ringStiffness: 30000 })).toBeCloseTo(355.8813, 4);
    const best = bestTuning(pair);
    expect(best.ratio).toBeCloseTo(0.15, 12);
    expect(best.frequency).toBeCloseTo(400 / 1.15, 9);
    expect(best.stiffness).toBeCloseTo(0.006 * ((turn * 400) / 1.15) ** 2, 6);
    expect(ringFrequency({ ringInertia: 0.006, ringStiffness: best.stiffness })).toBeCloseTo(
      best.frequency,
      9,
    );
  });

  test('a ring of next to nothing leaves the main frequency and has its own', () => {
    const split = splitFrequencies({
      ...pair,
      ringInertia: 1e-12,
      ringStiffness: 1e-12 * (turn * 100) ** 2,
    });
    expect(split.lower).toBeCloseTo(100, 6);
    expect(split.upper).toBeCloseTo(400, 6);
  });
});

describe('properties', () => {
  test('one of the two lies below both frequencies and one above, and their products are equal', () => {
    fc.assert(
      fc.property(evenly(0.01, 2), evenly(0.2, 3), (ratio, f) => {
        const split = splitFrequencies({
          mainInertia: 1,
          mainFrequency: 1,
          ringInertia: ratio,
          ringStiffness: ratio * (turn * f) ** 2,
        });
        expect(split.lower).toBeLessThan(Math.min(1, f));
        expect(split.upper).toBeGreaterThan(Math.max(1, f));
        expect(split.lower * split.upper).toBeCloseTo(f, 12);
      }),
    );
  });
});

describe('second route', () => {
  test(proves(routes.peaksSearched), () => {
    for (const ratio of [0.05, 0.15, 0.4]) {
      const best = bestTuning({ mainInertia: 1, mainFrequency: 1, ringInertia: ratio });
      const [low, high] = peaks(ratio, best.frequency, best.damping);
      // Brock’s damping is a mean of the two that level each peak: within a per cent of both for rings this light.
      expect(Math.abs(low / best.peak - 1)).toBeLessThan(0.012);
      expect(Math.abs(high / best.peak - 1)).toBeLessThan(0.012);
      for (const other of [0.6, 1.6])
        expect(Math.max(...peaks(ratio, best.frequency, other * best.damping))).toBeGreaterThan(
          1.04 * best.peak,
        );
      for (const other of [0.9, 1.1])
        expect(Math.max(...peaks(ratio, other * best.frequency, best.damping))).toBeGreaterThan(
          1.04 * best.peak,
        );
    }
  });

  test(proves(routes.pairAsLine), () => {
    fc.assert(
      fc.property(evenly(0.02, 1), evenly(0.3, 2), (ratio, f) => {
        const split = splitFrequencies({
          mainInertia: 1,
          mainFrequency: 1,
          ringInertia: ratio,
          ringStiffness: ratio * (turn * f) ** 2,
        });
        const line = {
          lineInertias: [ratio, 1, 1e9],
          lineStiffnesses: [ratio * (turn * f) ** 2, turn ** 2],
        };
        const modes = naturalModes(line);
        // The far end gives by a part in 10⁹.
        expect(at(modes, 0).frequency).toBeCloseTo(split.lower, 7);
        expect(at(modes, 1).frequency).toBeCloseTo(split.upper, 7);
      }),
    );
  });
});
