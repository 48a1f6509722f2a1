import rows from '../../../content/tables/iso-286.json' with { type: 'json' };
import type { ToleranceGrade, ToleranceStep } from '../../core/bearings/iso-fit.ts';
import type { ChoiceEntry } from '../define.ts';

/** The standard's steps with their tolerances, in m, in rising order. */
export const toleranceSteps: readonly (ToleranceStep & { readonly above: number })[] =
  Object.values(rows).map(({ above, upTo, IT5, IT6, IT7 }) => ({
    above: above / 1e3,
    upTo: upTo / 1e3,
    IT5: IT5 / 1e6,
    IT6: IT6 / 1e6,
    IT7: IT7 / 1e6,
  }));

export const gradeOf = { H6: 'IT6', H7: 'IT7', h5: 'IT5', h6: 'IT6' } as const satisfies Record<
  string,
  ToleranceGrade
>;

/** Grade of a hole that begins at the nominal diameter. */
export const holeGrade = {
  type: 'choice',
  name: 'holeGrade',
  label: 'Grade of the hole',
  symbol: 'H',
  options: { H6: 'H6', H7: 'H7' },
  demo: { baseline: 'H6', candidate: 'H6' },
} as const satisfies ChoiceEntry<'H6' | 'H7'>;

/** Grade of a shaft that ends at the nominal diameter. */
export const shaftGrade = {
  type: 'choice',
  name: 'shaftGrade',
  label: 'Grade of the shaft',
  symbol: 'h',
  options: { h5: 'h5', h6: 'h6' },
  demo: { baseline: 'h6', candidate: 'h5' },
} as const satisfies ChoiceEntry<'h5' | 'h6'>;
