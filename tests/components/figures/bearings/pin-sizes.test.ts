import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { journalSizes as calculator } from '../../../../src/calculators/bearings/journal-sizes.ts';
import { CrankpinSize } from '../../../../src/components/figures/bearings/crankpin-size.svelte.ts';
import {
  frame,
  pinScale,
  pinViews,
  sizedPin,
  type SizedPin,
} from '../../../../src/components/figures/bearings/pin-sizes.ts';

const input = {
  crankpinDiameter: 0.05,
  mainDiameter: 0.06,
  stroke: 0.08,
  rodShellWidth: 0.02,
  bearingLoad: 20e3,
  bigEndMass: 0.4,
  shellMass: 0.04,
  maxSpeed: 700,
  commonSpeed: 600,
};

describe('the crankpin of a set', () => {
  it('carries its load on diameter times width, and its surface moves by half its diameter', () => {
    const pin = sizedPin({ input, output: calculator.compute(input), stale: false });
    expect(pin?.area).toBeCloseTo(0.05 * 0.02, 12);
    expect(pin?.unitLoad).toBeCloseTo(20e6, 3);
    expect(pin?.ownSpeed).toBeCloseTo(0.025 * 700, 12);
    expect(pin?.commonSpeed).toBeCloseTo(0.025 * 600, 12);
  });
  it('is not drawn while a number is missing', () => {
    const output = calculator.compute(input);
    expect(sizedPin({ input: { ...input, bearingLoad: undefined }, output, stale: false })).toBe(
      undefined,
    );
    expect(sizedPin({ input, output: undefined, stale: true })).toBe(undefined);
  });
});

describe('both views of a pin', () => {
  /** The diameters and widths that the fields take [m]; loads and speeds from nothing up. */
  const pin: fc.Arbitrary<SizedPin> = fc
    .record({
      diameter: fc.double({ min: 0.012, max: 0.16, noNaN: true }),
      width: fc.double({ min: 0.004, max: 0.09, noNaN: true }),
      load: fc.double({ min: 0, max: 8e5, noNaN: true }),
      commonSpeed: fc.double({ min: 0, max: 400, noNaN: true }),
    })
    .map((own) => {
      const area = own.diameter * own.width;
      return { ...own, area, unitLoad: own.load / area, ownSpeed: own.commonSpeed };
    });
  const column = fc.integer({ min: 131, max: 186 });

  it('have room in their column, side by side and apart, whatever the sizes', () => {
    fc.assert(
      fc.property(pin, pin, column, (one, other, wide) => {
        const scale = pinScale([one, other], wide);
        for (const own of [one, other]) {
          const { radius, from, to, push, speed } = pinViews(own, scale, wide);
          expect(radius).toBeLessThanOrEqual(scale.middle - 8 + 1e-9);
          expect(from - frame.web - radius).toBeGreaterThanOrEqual(frame.gap - 1e-9);
          expect(scale.middle + to + frame.web).toBeCloseTo(wide, 9);
          expect(push).toBeLessThanOrEqual(frame.push + 1e-9);
          // The arrow on the surface ends before the web begins.
          expect(speed).toBeLessThanOrEqual(from - frame.web + 1e-9);
          expect(scale.height - scale.axis - radius).toBeGreaterThanOrEqual(frame.bottom - 1e-9);
        }
      }),
    );
  });
  it('are in proportion to the sizes, and the arrows to speed and pressure', () => {
    fc.assert(
      fc.property(pin, pin, column, (one, other, wide) => {
        const scale = pinScale([one, other], wide);
        const [a, b] = [pinViews(one, scale, wide), pinViews(other, scale, wide)];
        expect(a.radius * other.diameter).toBeCloseTo(b.radius * one.diameter, 9);
        expect((a.to - a.from) * other.width).toBeCloseTo((b.to - b.from) * one.width, 9);
        expect((a.to - a.from) * one.diameter).toBeCloseTo(2 * a.radius * one.width, 9);
        expect(a.speed * other.commonSpeed).toBeCloseTo(b.speed * one.commonSpeed, 6);
        expect(a.push * (other.unitLoad / 1e6)).toBeCloseTo(b.push * (one.unitLoad / 1e6), 6);
      }),
    );
  });
  it('carry arrows that stand on the pin', () => {
    fc.assert(
      fc.property(pin, column, (own, wide) => {
        const { from, to, pushes } = pinViews(own, pinScale([own], wide), wide);
        expect(pushes.length).toBeGreaterThan(0);
        expect(pushes.every((x) => x > from && x < to)).toBe(true);
      }),
    );
  });
});

describe('a crankpin that is moved in a figure', () => {
  const written: string[] = [];
  const sizes = (system: 'metric' | 'inch', ...diameters: readonly number[]): CrankpinSize =>
    new CrankpinSize(
      () => ({
        sets: {
          baseline: { input: undefined, output: undefined, stale: false },
          candidate: { input: undefined, output: undefined, stale: false },
        },
        system,
        put: (...what) => written.push(what.join(' ')),
      }),
      () => diameters,
    );
  it('goes by whole steps, and no farther than its range', () => {
    expect(sizes('metric', 0.05).dragged(0.0483)).toBe(48.5);
    expect(sizes('metric', 0.05).dragged(0.3)).toBe(90);
    expect(sizes('metric', 0.05).dragged(0)).toBe(20);
    expect(sizes('inch', 0.05).dragged(0.0508)).toBeCloseTo(2, 9);
  });
  it('has a range that holds every pin drawn', () => {
    expect(sizes('metric', 0.012, 0.16).range).toEqual([12, 160]);
  });
  it('is written in the unit shown, without the noise of a step', () => {
    sizes('inch').put('candidate', 0.1 + 0.2);
    expect(written).toEqual(['candidate crankpinDiameter 0.3 in']);
  });
});
