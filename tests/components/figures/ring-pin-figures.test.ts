import { describe, expect, test } from 'vitest';
import {
  bentPath,
  drawnPin,
  ovalPath,
  seatPath,
  wallPath,
} from '../../../src/components/figures/pins/pin-section.ts';
import {
  drawnRing,
  extent,
  outline,
  roundScale,
} from '../../../src/components/figures/rings/ring-shapes.ts';
import { must } from '../../calculators/must.ts';

const ringInput = {
  bore: 0.0905,
  ring1Height: 0.0015,
  ring1Radial: 0.0035,
  ring1FreeGap: 0.0127,
  ring1Gap: 0.00038,
  ring1Modulus: 160e9,
};
const pinInput = {
  pinDiameter: 0.022,
  pinBore: 0.013,
  pinTaperBore: 0.018,
  pinTaperLength: 0.01,
  pinLength: 0.062,
  smallEndWidth: 0.026,
  bossGap: 0.0275,
  pinModulus: 205e9,
};
const set = (input: Record<string, number>, output: Record<string, number> = {}) => ({
  input,
  output,
  stale: false,
});
/** All numbers of a path, two by two. */
const points = (path: string): readonly (readonly [number, number])[] => {
  const all = (path.match(/-?\d+(?:\.\d+)?/gu) ?? []).map(Number);
  return Array.from({ length: all.length / 2 }, (_, i) => [must(all[2 * i]), must(all[2 * i + 1])]);
};

describe('the drawn ring', () => {
  const ring = must(drawnRing(set(ringInput, { contactPressure: 0.18e6, tangentialForce: 12 })));
  test('fills its bore when closed and stands open by its free gap when relaxed', () => {
    const closed = points(outline(ring.closed, ring.radial, 1e5));
    const centre = -((ring.bore - ring.radial) / 2) * 1e5;
    const far = Math.max(...closed.map(([x, y]) => Math.hypot(x, y - centre)));
    expect(far / 1e5).toBeCloseTo(ring.bore / 2, 5);
    expect(must(ring.relaxed.at(-1)).x * 2).toBeCloseTo(ring.freeGap, 7);
    expect(extent(ring).side).toBeGreaterThan(ring.bore / 2);
  });
  test('is as thick everywhere as its radial thickness', () => {
    const all = points(outline(ring.relaxed, ring.radial, 1e6));
    const half = ring.relaxed.length;
    // The back: last of the first outer half and last of the inner right half stand opposite each other.
    const outerBack = must(all[half - 1]);
    const innerBack = must(all[2 * half - 1 + half - 1]);
    expect(Math.abs(outerBack[1] - innerBack[1]) / 1e6).toBeCloseTo(ring.radial, 5);
  });
  test('is not drawn without its sizes', () => {
    expect(drawnRing(set({ bore: 0.09 }))).toBeUndefined();
  });
  test('takes scales of 1, 2 and 5', () => {
    expect([139, 20, 7, 0.3, 49.9].map(roundScale)).toEqual([100, 20, 5, 0.2, 20]);
  });
});

describe('the drawn pin', () => {
  const pin = must(drawnPin(set(pinInput, { ovalClose: 15e-6, pushLoad: 30e3 })));
  test('has its walls between bore, mouth and diameter', () => {
    const all = points(wallPath(pin, 1000).replace(/[HV]-?\d+(?:\.\d+)?/gu, ''));
    expect(all[0]).toEqual([-31, -11]);
    expect(wallPath(pin, 1000)).toContain('V9');
    expect(wallPath(pin, 1000)).toContain('6.5');
  });
  test('goes oval across the load by the amount shown', () => {
    const all = points(ovalPath(11, 1.5));
    expect(Math.max(...all.map(([x]) => x))).toBeCloseTo(11.75, 2);
    expect(Math.max(...all.map(([, y]) => y))).toBeCloseTo(10.25, 2);
  });
  test('sits in an eye and bosses above and below', () => {
    expect(seatPath(-13, 13, 11, 6)).toBe('M-13 -11H13v-6H-13zM-13 11H13v6H-13z');
  });
  test('bends its middle down against its ends, by the bend times what it is magnified', () => {
    const straight = points(bentPath(pin, 1000, 0));
    const bent = points(bentPath(pin, 1000, 500));
    const lift = 500 * 1000 * pin.bend(pin.length / 2);
    expect(must(straight[0])[1] - must(bent[0])[1]).toBeCloseTo(lift, 1);
    expect(must(bent[10])[1]).toBeCloseTo(must(straight[10])[1], 1);
  });
  test('is not drawn without a result', () => {
    expect(drawnPin(set(pinInput))).toBeUndefined();
  });
});
