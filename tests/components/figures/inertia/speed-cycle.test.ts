import { describe, expect, it } from 'vitest';
import { speedRipple } from '../../../../src/calculators/inertia/speed-ripple.ts';
import {
  discShare,
  inertiaOfDisc,
  speedAt,
  speedDecimals,
  turningMass,
  type TurningMass,
} from '../../../../src/components/figures/inertia/speed-cycle.ts';

const input = { engineInertia: 0.25, energySwing: 60, meanSpeed: 94 };

function must(own: TurningMass | undefined): TurningMass {
  if (own === undefined) throw new Error('There is a result.');
  return own;
}
const own = must(turningMass({ input, output: speedRipple.compute(input), stale: false }));

describe('the speed over one swing', () => {
  it('runs from the least speed through the greatest and back', () => {
    expect(speedAt(own, 0)).toBeCloseTo(own.lowest, 12);
    expect(speedAt(own, 0.5)).toBeCloseTo(own.highest, 12);
    expect(speedAt(own, 1)).toBeCloseTo(own.lowest, 12);
    for (const part of [0.1, 0.3, 0.77]) {
      expect(speedAt(own, part)).toBeGreaterThan(own.lowest);
      expect(speedAt(own, part)).toBeLessThan(own.highest);
      expect(speedAt(own, part)).toBeCloseTo(speedAt(own, 1 - part), 12);
    }
  });
  it('is not drawn while a number is missing', () => {
    const output = speedRipple.compute(input);
    expect(turningMass({ input: { ...input, energySwing: undefined }, output, stale: false })).toBe(
      undefined,
    );
    expect(turningMass({ input: undefined, output: undefined, stale: true })).toBe(undefined);
  });
  it('is written so that its extremes can be told apart', () => {
    for (const spread of [0.0004, 0.03, 1, 24, 900])
      expect(spread * 10 ** speedDecimals(spread)).toBeGreaterThanOrEqual(10);
    expect(speedDecimals(0)).toBe(0);
    expect(speedDecimals(24)).toBe(0);
  });
});

it('a disc has the inertia that its radius says, by the fourth power', () => {
  expect(discShare(0.25, 4)).toBe(0.5);
  expect(inertiaOfDisc(4, 0.5)).toBe(0.25);
});
