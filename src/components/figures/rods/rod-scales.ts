import { supportShift } from '../../../core/rods/rod-weighing.ts';
import { numberOf } from '../read.ts';
import type { FigureSet } from '../types.ts';

/** A rod on its two scales: what they show [kg], its length and where it balances [m from the big-end centre]. */
export interface RodOnScales {
  readonly rodMass: number;
  readonly rodLength: number;
  readonly bigEnd: number;
  readonly smallEnd: number;
  readonly balance: number;
}

/** The rod of a set as it was weighed; `undefined` while a number is missing. */
export function weighedRod({ input, output }: FigureSet): RodOnScales | undefined {
  const bigEndMass = numberOf(output, 'bigEndMass');
  const smallEndMass = numberOf(output, 'smallEndMass');
  const rodMass = numberOf(input, 'rodMass');
  const rodLength = numberOf(input, 'rodLength');
  const balance = numberOf(output, 'centreFromBigEnd');
  if (
    bigEndMass === undefined ||
    smallEndMass === undefined ||
    rodMass === undefined ||
    rodLength === undefined ||
    balance === undefined
  )
    return undefined;
  return { rodMass, rodLength, bigEnd: bigEndMass, smallEnd: smallEndMass, balance };
}

/** What the scales show when the rod is slid by `offset` [m] along both supports, towards the small end. */
export function slid(
  rod: RodOnScales,
  offset: number,
): { readonly bigEnd: number; readonly smallEnd: number } {
  const { both } = supportShift({
    bigEndMass: rod.bigEnd,
    smallEndMass: rod.smallEnd,
    // What lies on the scales is what they show together, not what the rod weighed elsewhere.
    rodMass: rod.bigEnd + rod.smallEnd,
    rodLength: rod.rodLength,
    supportOffset: offset,
  });
  return { bigEnd: rod.bigEnd - both, smallEnd: rod.smallEnd + both };
}
