import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bobweightsByPin, type ByPin } from '../../../src/calculators/balance/by-pin.ts';
import { pinBobweight } from '../../../src/core/balance/bobweight.ts';
import { pinParts as parts } from '../../core/balance/pin-parts.ts';

const how = { scaleResolution: 1e-4, partBanks: 'any' } as const;
function pins(found: ReturnType<typeof bobweightsByPin>): readonly ByPin[] {
  if ('absent' in found) throw new Error(found.absent);
  return found;
}

describe('the bobweight of each pin', () => {
  test('is what its own parts add up to', () => {
    // Four pistons and rods: sorted against each other, the heavy small end goes with the light piston, and on a pin
    // the heavy big end with the light one. By hand, in grams: 2 × 40 + 4 and half of 2 × (120 + 40 + 2) are on each.
    const found = pins(
      bobweightsByPin(parts, {
        ...how,
        rodsPerPin: 2,
        pistonMasses: [0.4, 0.401, 0.402, 0.403],
        smallEndMasses: [0.17, 0.171, 0.172, 0.173],
        bigEndMasses: [0.42, 0.421, 0.424, 0.43],
      }),
    );
    const same = 2 * 40 + 4 + (2 * (120 + 40 + 2)) / 2;
    // Every set is 573 g with its small end; the big ends are 850 and 845 g.
    expect(found.map(({ bobweight }) => Number((bobweight * 1000).toFixed(6)))).toEqual([
      850 + 573 + same,
      845 + 573 + same,
    ]);
    expect(found.map(({ rods }) => [...rods].sort())).toEqual([
      [1, 4],
      [2, 3],
    ]);
    // The rod with the small end of 170 g has the piston of 403 g.
    expect(found.map(({ pistons }) => [...pistons].sort())).toEqual([
      [1, 4],
      [2, 3],
    ]);
  });

  test('is on the mean of all pins that of the mean parts', () => {
    const list = fc.array(fc.integer({ min: 4000, max: 4400 }), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(list, list, list, list, fc.constantFrom(1, 2), (pistons, wrist, ends, big, n) => {
        const [pistonMasses, pinMasses, smallEndMasses, bigEndMasses] = [
          pistons,
          wrist,
          ends,
          big,
        ].map((tenths) => tenths.map((tenth) => tenth / 1e4)) as [
          number[],
          number[],
          number[],
          number[],
        ];
        const mean = (masses: readonly number[]): number =>
          masses.reduce((sum, mass) => sum + mass, 0) / masses.length;
        const found = pins(
          bobweightsByPin(
            { ...parts, rodsPerPin: n },
            { ...how, rodsPerPin: n, pistonMasses, pinMasses, smallEndMasses, bigEndMasses },
          ),
        );
        expect(found).toHaveLength(6 / n);
        const { bobweight } = pinBobweight({
          ...parts,
          rodsPerPin: n,
          pistonMass: mean(pistonMasses),
          pinMass: mean(pinMasses),
          smallEndMass: mean(smallEndMasses),
          bigEndMass: mean(bigEndMasses),
        });
        // Sums of a dozen numbers near 1.
        expect(mean(found.map((pin) => pin.bobweight))).toBeCloseTo(bobweight, 12);
        expect(found.flatMap(({ rods }) => rods).sort()).toEqual([1, 2, 3, 4, 5, 6]);
        expect(found.flatMap((pin) => pin.pistons).sort()).toEqual([1, 2, 3, 4, 5, 6]);
      }),
      { numRuns: 40 },
    );
  });

  test('takes rings and locks from their lot, where they were weighed so', () => {
    const given = {
      ...how,
      rodsPerPin: 2,
      pistonMasses: [0.4, 0.4],
      bigEndMasses: [0.42, 0.42],
    };
    const [plain] = pins(bobweightsByPin(parts, given));
    const [lots] = pins(bobweightsByPin(parts, { ...given, ringMasses: [0.05, 0.05] }));
    // 8 g more than 40 and 2 on each of two pistons, of which half counts.
    expect(((lots?.bobweight ?? 0) - (plain?.bobweight ?? 0)) * 1000).toBeCloseTo(8, 9);
  });

  test('is none where the rods have no pin', () => {
    expect(bobweightsByPin(parts, { ...how, rodsPerPin: 2, pistonMasses: [0.4, 0.4] })).toEqual({
      absent: 'Weigh the big ends too.',
    });
    const three = { pistonMasses: [0.4, 0.4, 0.4], bigEndMasses: [0.42, 0.42, 0.42] };
    expect(bobweightsByPin(parts, { ...how, rodsPerPin: 2, ...three })).toHaveProperty('absent');
    expect(() =>
      bobweightsByPin({ ...parts, oilMass: -1 }, { ...how, rodsPerPin: 1, ...three }),
    ).toThrow(RangeError);
  });
});
