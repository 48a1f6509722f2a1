import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crankOverlap } from '../../../src/core/bearings/crank-overlap.ts';

const length = fc.double({ min: 0.01, max: 0.3, noNaN: true });

describe('crank overlap', () => {
  test('circles whose centres lie one radius apart overlap by that radius', () => {
    const { overlap } = crankOverlap({ mainDiameter: 0.06, crankpinDiameter: 0.06, stroke: 0.06 });
    expect(overlap).toBeCloseTo(0.03, 15);
  });

  test('is a quarter of the pin where pin and main journal are equal and their axes ¾ of one apart', () => {
    const { share } = crankOverlap({ mainDiameter: 0.06, crankpinDiameter: 0.06, stroke: 0.09 });
    expect(share).toBeCloseTo(0.25, 15);
  });

  test('equals the common chord found by walking the line of centres point by point', () => {
    fc.assert(
      fc.property(length, length, length, (mainDiameter, crankpinDiameter, stroke) => {
        // Second route: interval of each circle on the line of centres, intersected.
        const main = [-mainDiameter / 2, mainDiameter / 2] as const;
        const pin = [stroke / 2 - crankpinDiameter / 2, stroke / 2 + crankpinDiameter / 2] as const;
        const nested = pin[0] < main[0] || pin[1] < main[1];
        fc.pre(!nested);
        const { overlap } = crankOverlap({ mainDiameter, crankpinDiameter, stroke });
        expect(overlap).toBeCloseTo(main[1] - pin[0], 12);
      }),
    );
  });

  test('pin, main journal and stroke each count by half', () => {
    fc.assert(
      fc.property(
        length,
        length,
        length,
        length,
        (mainDiameter, crankpinDiameter, stroke, more) => {
          const { overlap } = crankOverlap({ mainDiameter, crankpinDiameter, stroke });
          const pin = crankOverlap({
            mainDiameter,
            crankpinDiameter: crankpinDiameter + more,
            stroke,
          });
          const main = crankOverlap({
            mainDiameter: mainDiameter + more,
            crankpinDiameter,
            stroke,
          });
          const longer = crankOverlap({ mainDiameter, crankpinDiameter, stroke: stroke + more });
          expect(pin.overlap - overlap).toBeCloseTo(more / 2, 12);
          expect(main.overlap - overlap).toBeCloseTo(more / 2, 12);
          expect(longer.overlap - overlap).toBeCloseTo(-more / 2, 12);
        },
      ),
    );
  });

  test('no overlap at the touching stroke, and a gap beyond it', () => {
    const { touchingStroke } = crankOverlap({
      mainDiameter: 0.05,
      crankpinDiameter: 0.04,
      stroke: 0.07,
    });
    expect(
      crankOverlap({ mainDiameter: 0.05, crankpinDiameter: 0.04, stroke: touchingStroke }).overlap,
    ).toBe(0);
    expect(
      crankOverlap({ mainDiameter: 0.05, crankpinDiameter: 0.04, stroke: 0.1 }).overlap,
    ).toBeLessThan(0);
  });
});
