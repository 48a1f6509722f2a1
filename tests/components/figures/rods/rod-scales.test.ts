import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rodWeighing } from '../../../../src/calculators/rods/rod-weighing.ts';
import { demoWork } from '../../../../src/components/calculator/demo-work.ts';
import { slid, weighedRod } from '../../../../src/components/figures/rods/rod-scales.ts';

const set = demoWork(rodWeighing).sets.baseline;

describe('a rod on two scales', () => {
  it('shows what was weighed, and balances where the moments say', () => {
    const rod = weighedRod(set);
    if (rod === undefined) throw new Error('The example has all numbers.');
    expect(rod.bigEnd).toBe(set.output?.['bigEndMass']);
    expect(slid(rod, 0)).toEqual({ bigEnd: rod.bigEnd, smallEnd: rod.smallEnd });
    // About the balance point both readings turn equally.
    expect(rod.bigEnd * rod.balance).toBeCloseTo(rod.smallEnd * (rod.rodLength - rod.balance), 12);
  });

  it('is not drawn while a number is missing', () => {
    expect(weighedRod({ input: undefined, output: undefined, stale: false })).toBeUndefined();
    const input = { ...set.input, rodLength: 'none' };
    expect(weighedRod({ input, output: set.output, stale: false })).toBeUndefined();
  });

  it('keeps its sum however far it is slid, and its moments about the balance point', () => {
    const rods = fc.record({
      rodMass: fc.double({ min: 0.2, max: 2, noNaN: true }),
      rodLength: fc.double({ min: 0.1, max: 0.3, noNaN: true }),
      share: fc.double({ min: 0.5, max: 0.9, noNaN: true }),
      offset: fc.double({ min: -0.005, max: 0.005, noNaN: true }),
    });
    fc.assert(
      fc.property(rods, ({ rodMass, rodLength, share, offset }) => {
        const [bigEnd, smallEnd] = [share * rodMass, (1 - share) * rodMass];
        const balance = (1 - share) * rodLength;
        const after = slid({ rodMass, rodLength, bigEnd, smallEnd, balance }, offset);
        expect(after.bigEnd + after.smallEnd).toBeCloseTo(rodMass, 12);
        // The supports stay where they are, the balance point has moved with the rod.
        expect(after.smallEnd * rodLength).toBeCloseTo(rodMass * (balance + offset), 12);
      }),
    );
  });
});
