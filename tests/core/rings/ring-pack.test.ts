import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { portArea, ringPack } from '../../../src/core/rings/ring-pack.ts';
import { evenly } from '../../evenly.ts';
import { hill, packOf } from './hill.ts';

/** Area between two circles by their diameters. */
function annulus(outer: number, inner: number): number {
  return (Math.PI / 4) * (outer ** 2 - inner ** 2);
}

describe('sizes', () => {
  const { bore, ring1Height: height, ring1Radial: radial } = hill;
  const drawn = fc.record({
    ringSideClearance: evenly(0, 0.4e-3),
    ringBackClearance: evenly(0.1e-3, 1e-3),
    topLandClearance: evenly(0, 2e-3),
    secondLandClearance: evenly(0.1e-3, 2e-3),
    secondLandHeight: evenly(1e-3, 8e-3),
    ring1Gap: evenly(0, 1e-3),
    ring2Gap: evenly(0, 1e-3),
    portPlugged: evenly(0, 1),
    dischargeCoefficient: evenly(0.3, 1),
  });

  it('are those of the spaces between circles', () => {
    fc.assert(
      fc.property(drawn, (change) => {
        const pack = packOf(change);
        const ring = bore - 2 * radial;
        const side = annulus(bore, ring);
        expect(pack.sideArea / side).toBeCloseTo(1, 12);
        const groove = annulus(ring, ring - 2 * change.ringBackClearance);
        const deep = height + change.ringSideClearance;
        expect(pack.behindVolume / (groove * deep)).toBeCloseTo(1, 12);
        const land = annulus(bore, bore - change.secondLandClearance);
        expect(pack.landVolume / (land * change.secondLandHeight)).toBeCloseTo(1, 12);
        // A flank lies on the land from the land's edge to the ring's inner face.
        expect(pack.overlapAbove).toBeCloseTo(radial - change.topLandClearance / 2, 15);
        expect(pack.overlapBelow).toBeCloseTo(radial - change.secondLandClearance / 2, 15);
        expect(pack.girth / (Math.PI * (bore - radial))).toBeCloseTo(1, 12);
        expect(pack.rt / (287 * hill.ringTemperature)).toBeCloseTo(1, 12);
        expect(pack.mass / (hill.ringDensity * side * height)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('of the holes are what is open of them, less what the stream contracts', () => {
    fc.assert(
      fc.property(drawn, (change) => {
        const pack = packOf(change);
        const c = change.dischargeCoefficient;
        const ports = hill.portCount * annulus(hill.portDiameter, 0);
        expect(pack.portArea).toBeCloseTo(c * (ports - change.portPlugged * ports), 18);
        // The gap is as deep as the narrower of the lands above and below leaves it.
        const [top, second] = [change.topLandClearance / 2, change.secondLandClearance / 2];
        expect(pack.gapArea).toBeCloseTo(c * change.ring1Gap * (top < second ? top : second), 18);
        expect(pack.exitArea).toBeCloseTo(c * change.ring2Gap * second, 18);
        expect(pack.gapDoor).toBeCloseTo(c * change.ring1Gap, 18);
      }),
    );
  });

  it('ten holes of two millimetres are 31.4 mm², ten half round slots half of it', () => {
    expect(portArea(10, 2e-3, 'crown') * 1e6).toBeCloseTo(10 * Math.PI, 12);
    expect(portArea(10, 2e-3, 'lateral') * 1e6).toBeCloseTo(5 * Math.PI, 12);
  });
});

describe('holes round the groove', () => {
  /** The refusal of so many holes of so great a diameter [m], if they are refused. */
  function refused(portCount: number, portDiameter: number): OutOfDomain | undefined {
    try {
      ringPack({ ...hill, portCount, portDiameter });
    } catch (error) {
      if (error instanceof OutOfDomain) return error;
      throw error;
    }
    return undefined;
  }
  it('are refused from as many on as touch each other there, and the limit says how many', () => {
    // A hole of 2 mm goes 133.04 times into the groove's bottom of 84.7 mm.
    expect(refused(133, 2e-3)).toBeUndefined();
    const error = refused(134, 2e-3);
    expect(error).toMatchObject({ quantity: 'portCount', relation: 'less than' });
    expect(error?.limit).toBeCloseTo((Math.PI * (0.0905 - 2 * 2.9e-3)) / 2e-3, 9);
  });
  it('of no size are no holes, and none may be of any size', () => {
    expect(refused(1000, 0)).toBeUndefined();
    expect(refused(0, 5e-3)).toBeUndefined();
    expect(refused(1, 5e-3)?.quantity).toBe('portDiameter');
  });
});
