import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toleranceSteps } from '../../../src/calculators/bearings/iso-fit.choices.ts';
import { fitLimits, toleranceStep, toleranceUnit } from '../../../src/core/bearings/iso-fit.ts';
import { OutOfDomain } from '../../../src/core/refuse.ts';
import { routes } from '../../../content/topics/journal-sizes/routes.ts';
import { proves } from '../../proves.ts';

describe('the table', () => {
  it('has no holes between its steps, and each grade grows', () => {
    let end = 0;
    let before = { IT5: 0, IT6: 0, IT7: 0 };
    for (const step of toleranceSteps) {
      expect(step.above).toBe(end);
      expect(step.upTo).toBeGreaterThan(end);
      for (const grade of ['IT5', 'IT6', 'IT7'] as const)
        expect(step[grade]).toBeGreaterThan(
          grade === 'IT5' && end === 0 ? 0 : before[grade] - 1e-12,
        );
      expect(step.IT5).toBeLessThan(step.IT6);
      expect(step.IT6).toBeLessThan(step.IT7);
      [end, before] = [step.upTo, step];
    }
    expect(end).toBe(0.5);
  });

  it(proves(routes.comesFormulaTolerance), () => {
    for (const step of toleranceSteps) {
      const mean = Math.sqrt(Math.max(step.above, 0.001) * step.upTo);
      const i = toleranceUnit(mean);
      for (const [grade, times] of [
        ['IT5', 7],
        ['IT6', 10],
        ['IT7', 16],
      ] as const) {
        // The standard rounds by hand: up to 1.4 µm from the formula in the first and the last step.
        expect(Math.abs(step[grade] - times * i)).toBeLessThan(1.4e-6);
      }
    }
  });
});

it(proves(routes.stepEndsOwn), () => {
  for (const step of toleranceSteps) {
    expect(toleranceStep(toleranceSteps, step.upTo)).toBe(step);
    if (step.upTo < 0.5)
      expect(toleranceStep(toleranceSteps, step.upTo * (1 + 1e-9))).not.toBe(step);
  }
});

it('H begins and h ends at the nominal diameter', () => {
  const tolerance = fc.double({ min: 1e-6, max: 1e-4, noNaN: true });
  fc.assert(
    fc.property(tolerance, tolerance, (H, h) => {
      const limits = fitLimits(H, h);
      expect(limits.holeLower - limits.shaftUpper).toBe(limits.leastClearance);
      expect(limits.holeUpper - limits.shaftLower).toBeCloseTo(limits.greatestClearance, 15);
    }),
  );
});

it.each([0, -0.01, Number.NaN, 0.5001])('refuses a nominal diameter of %s', (diameter) => {
  expect(() => toleranceStep(toleranceSteps, diameter)).toThrow(OutOfDomain);
  expect(() => toleranceStep(toleranceSteps, diameter)).toThrow('fitDiameter');
});
