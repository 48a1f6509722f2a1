import type { Entry, SetId } from '../calculators/define.ts';
import { neededFields, setsOf } from './values.ts';

/**
 * The fields of which it is said how many hold the example: those that a result needs. Where every number may be left
 * empty, all of them, since each that is not shows in a result.
 */
export function countedFields(
  entries: readonly Entry[],
): readonly { readonly entry: Entry; readonly set: SetId }[] {
  const needed = neededFields(entries);
  if (needed.length > 0) return needed;
  return entries
    .filter(({ type }) => type !== 'choice')
    .flatMap((entry) => setsOf(entry).map((set) => ({ entry, set })));
}
