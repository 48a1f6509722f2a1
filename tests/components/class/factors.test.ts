import { describe, expect, it } from 'vitest';
import { calculators } from '../../../src/calculators/index.ts';
import { bobweight } from '../../../src/calculators/balance/bobweight.ts';
import { demoWork } from '../../../src/components/calculator/demo-work.ts';
import { aloneWith, factorsOf } from '../../../src/components/class/factors.ts';

describe('one part changed at a time', () => {
  it('changes the bobweight by what that part counts: whole at the big end, half where it goes up and down', () => {
    const work = demoWork(bobweight);
    const before = work.sets.baseline.output?.['bobweight'];
    const share: Readonly<Record<string, number>> = {
      // Two rods on the pin of the example's V8, and half of what reciprocates.
      pistonMass: 1,
      pinMass: 1,
      ringMass: 1,
      smallEndMass: 1,
      bigEndMass: 2,
    };
    const factors = factorsOf(work);
    expect(factors.map(({ entry }) => entry.name)).toEqual(Object.keys(share));
    for (const factor of factors) {
      const { entry, before: from, after } = factor;
      const result = aloneWith(work, factor);
      expect(Number(result) - Number(before)).toBeCloseTo(
        (share[entry.name] ?? 0) * (after - from),
        12,
      );
    }
  });

  it('is not asked where a set has no numbers, and tells where a mixture cannot be', () => {
    const work = demoWork(bobweight);
    const { calculator, sets } = work;
    const none = { input: undefined, output: undefined };
    const without = { calculator, sets: { ...sets, candidate: none } };
    expect(factorsOf(without)).toEqual([]);
  });

  it.each(Object.values(calculators).map((calculator) => [calculator.id, calculator] as const))(
    '%s: each is a number that differs, and changes something or cannot be alone',
    (_, calculator) => {
      const work = demoWork(calculator);
      for (const factor of factorsOf(work)) {
        const { before, after } = factor;
        const result = aloneWith(work, factor);
        expect(before).not.toBe(after);
        if (result !== undefined) expect(Number.isFinite(result)).toBe(true);
      }
    },
  );
});
