import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pinBend } from '../../../src/core/pins/pin-bend.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';

const pin = {
  pinDiameter: 0.022,
  pinBore: 0.013,
  pinTaperBore: 0.013,
  pinTaperLength: 0,
  pinLength: 0.062,
  pinModulus: 205e9,
};
const seat = { smallEndWidth: 0.026, bossGap: 0.0275 };
const load = 30e3;
const stiffness = (pin.pinModulus * Math.PI * (pin.pinDiameter ** 4 - pin.pinBore ** 4)) / 64;

describe('how far a pin bends', () => {
  it('is P L³/(48 E I) for a load in one place between supports at the ends', () => {
    // Eye and bosses a thousandth of the pin: what they differ from points by is of that order.
    const narrow = { smallEndWidth: pin.pinLength / 1000, bossGap: pin.pinLength * 0.999 };
    const ends = pinBend(pin, narrow, load, pin.pinLength / 2);
    const textbook = (load * pin.pinLength ** 3) / (48 * stiffness);
    expect(ends / textbook).toBeCloseTo(1, 2);
  });

  it('bends in the middle by the moment of the stress: P (l + 2b − 1.5 w)/12', () => {
    const step = 1e-4;
    const bend = (x: number): number => pinBend(pin, seat, load, x);
    const moment = (stiffness * 2 * bend(step)) / step ** 2;
    const wanted = (load * (pin.pinLength + 2 * seat.bossGap - 1.5 * seat.smallEndWidth)) / 12;
    // The load under the eye takes q x⁴/24 from it: a few millionths here.
    expect(moment / wanted).toBeCloseTo(1, 4);
  });

  it('has the loads of eye and bosses for its fourth derivative, by differences', () => {
    const step = 5e-4;
    const load4 = (x: number): number =>
      (stiffness *
        [1, -4, 6, -4, 1].reduce(
          (sum, weight, i) => sum + weight * pinBend(pin, seat, load, x + (i - 2) * step),
          0,
        )) /
      step ** 4;
    // Downward and even under the eye; upward and falling outward in the boss, to half of it half way.
    expect(load4(0.006) / -(load / seat.smallEndWidth)).toBeCloseTo(1, 4);
    const boss = (pin.pinLength - seat.bossGap) / 2;
    const half = (seat.bossGap + boss) / 2;
    expect(load4(half) / (load / boss / 2)).toBeCloseTo(1, 4);
  });

  it('is even about the middle, nothing there, smooth, and grows with the load', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.031, noNaN: true }), (x) => {
        expect(pinBend(pin, seat, load, -x)).toBe(pinBend(pin, seat, load, x));
        expect(pinBend(pin, seat, 2 * load, x)).toBeCloseTo(2 * pinBend(pin, seat, load, x), 15);
      }),
    );
    expect(pinBend(pin, seat, load, 0)).toBe(0);
    for (const edge of [seat.smallEndWidth / 2, seat.bossGap / 2]) {
      const [before, at, after] = [-1e-6, 0, 1e-6].map((d) => pinBend(pin, seat, load, edge + d));
      // Second differences of a micrometre: a corner would show as the change of slope, a million times as much.
      expect(Math.abs((before ?? 0) - 2 * (at ?? 0) + (after ?? 0))).toBeLessThan(1e-13);
    }
    expect(pinBend(pin, seat, load, 1)).toBe(pinBend(pin, seat, load, 0.031));
  });

  it('refuses a modulus of nothing, and a seat that the pin does not bridge', () => {
    expect(() => pinBend({ ...pin, pinModulus: 0 }, seat, load, 0)).toThrow(OutOfDomain);
    expect(() => pinBend(pin, { ...seat, bossGap: 0.07 }, load, 0)).toThrow(OutOfDomain);
  });
});
