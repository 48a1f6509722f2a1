import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { metalBars } from '../../../../src/components/figures/rods/material-bars.ts';
import {
  arrow,
  corners,
  eyes,
  shankOf,
  spreadPath,
  whipPath,
  type DrawnShank,
} from '../../../../src/components/figures/rods/rod-section.ts';
import { rodMaterials } from '../../../../src/calculators/rods/rod-materials.ts';
import { shankSection } from '../../../../src/core/rods/shank-section.ts';

const shank: DrawnShank = {
  shape: 'i',
  height: 0.02,
  width: 0.0155,
  flange: 0.004,
  web: 0.0036,
  rodLength: 0.142,
  shankLength: 0.1,
  whipPlace: 0.082,
};

describe('the drawn section', () => {
  test('its outline encloses the area that the calculator says', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('i' as const, 'h' as const),
        fc.double({ min: 0.1, max: 0.45, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (shape, flange, web) => {
          const [d, b] = shape === 'i' ? [0.02, 0.0155] : [0.0155, 0.02];
          const drawn = { ...shank, shape, flange: flange * d, web: web * b };
          const points = corners(drawn);
          let twice = 0;
          for (const [i, [x, y]] of points.entries()) {
            const [nx, ny] = points[(i + 1) % points.length] ?? [0, 0];
            twice += x * ny - nx * y;
          }
          const { area } = shankSection({
            shankShape: shape,
            shankHeight: drawn.height,
            shankWidth: drawn.width,
            flangeThickness: drawn.flange,
            webThickness: drawn.web,
          });
          expect(Math.abs(twice) / 2 / area).toBeCloseTo(1, 12);
          expect(Math.max(...points.map(([, y]) => y))).toBeCloseTo(0.01, 15);
          expect(Math.max(...points.map(([x]) => x))).toBeCloseTo(0.00775, 15);
        },
      ),
    );
  });

  test('its eyes fill what the shank leaves', () => {
    const { small, big } = eyes(shank);
    expect(small + big).toBeCloseTo(0.042, 12);
  });

  test('is not drawn while a number is missing', () => {
    expect(shankOf({ input: { shankHeight: 0.02 }, output: {} })).toBeUndefined();
  });
});

describe('the metals on one duty', () => {
  const input = {
    rodMaterial: 'c70s6' as const,
    maxSpeed: 670,
    stroke: 0.073,
    rodLength: 0.142,
    reciprocatingMass: 0.7568,
    bore: 0.0905,
    peakPressure: 54e5,
    crankcasePressure: 101e3,
    rodMargin: 1.5,
    rodNotchFactor: 1.3,
    stretchWanted: 80e-6,
    stretchFactor: 1.6,
    shankLength: 0.1,
    shankArea: 167.2e-6,
    rodTemperature: 378,
    assemblyTemperature: 293,
  };

  test('are what the calculator gives for each', () => {
    const bars = metalBars(input);
    expect(bars.length).toBeGreaterThan(10);
    for (const bar of bars) {
      const output = rodMaterials.compute({ ...input, rodMaterial: bar.id });
      expect(bar.margin).toBeCloseTo(output.marginMass, 12);
      expect(bar.stretch).toBeCloseTo(output.stretchMass, 12);
      expect(bar.section).toBeCloseTo(output.sectionMass, 12);
    }
  });

  test('are none while a number is missing or has no meaning', () => {
    expect(metalBars(undefined)).toEqual([]);
    expect(metalBars({ ...input, bore: undefined })).toEqual([]);
    expect(metalBars({ ...input, bore: 0 })).toEqual([]);
  });
});

describe('what the beam carries', () => {
  test('a pull spreads evenly to the right, a push to the left, a whip to both sides', () => {
    expect(spreadPath('pull', 20, 40)).toBe('M0 -40H20V40H0Z');
    expect(spreadPath('push', 20, 40)).toBe('M0 -40H-20V40H0Z');
    expect(spreadPath('whip', 20, 40)).toBe('M0 -40H-20L20 40H0Z');
  });

  test('the bent line stays at both ends and bends by what it is told to', () => {
    const heights = [...whipPath(240, 12).matchAll(/[ML][\d.]+ (-?[\d.]+)/gu)].map(([, y]) =>
      Number(y),
    );
    expect([heights[0], heights.at(-1)]).toEqual([0, 0]);
    expect(Math.max(...heights)).toBeCloseTo(12, 1);
  });

  test('an arrow ends with its head where it points, and is none where it would not be seen', () => {
    expect(arrow([0, 0], [20, 0])).toBe('M0.0 0.0L20.0 0.0M12.0 4.0L20.0 0.0L12.0 -4.0');
    expect(arrow([5, 5], [5, 6])).toBe('');
  });
});
