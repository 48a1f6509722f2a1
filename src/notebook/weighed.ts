import {
  bigEndMasses,
  pinMasses,
  pistonMasses,
  smallEndMasses,
} from '../calculators/balance/quantities.ts';
import type { ListEntry } from '../calculators/define.ts';
import { withUnit } from '../units/format.ts';
import { placesOf, summaryDecimals, summaryOf } from '../units/places.ts';
import { fromSI } from '../units/units.ts';
import type { StoredValue } from './values.ts';

/** The lists whose mean fills a quantity, by name. Fetched once one of them is the reader's own. */
export const weighedLists: Readonly<Record<string, ListEntry>> = {
  pistonMasses,
  pinMasses,
  smallEndMasses,
  bigEndMasses,
};

/**
 * The mean of the parts that were weighed, in the list's metric unit: to a tenth of the finest digit read. A scale that
 * reads wrong does so for every part, so the mean has the ± of one. Parts still to be weighed are left out; undefined
 * where there is none.
 */
export function meanOf(list: ListEntry, stored: StoredValue): StoredValue | undefined {
  const summary = summaryOf(placesOf(stored, list) ?? []);
  if (summary === undefined) return undefined;
  const unit = list.metric;
  const mean = fromSI(summary.mean, unit).toFixed(summaryDecimals(summary, unit, 1));
  const { count } = summary;
  return {
    text: String(Number(mean)),
    unit,
    ...(stored.plusMinus === undefined ? {} : { plusMinus: spreadOf(stored, unit) }),
    note: count === 1 ? 'the one weighed' : `mean of the ${String(count)} weighed`,
  };
}

/** The ± of a value for one in `unit`: bare where both have the same, else with the unit it was typed in. */
function spreadOf({ plusMinus = '', unit: own }: StoredValue, unit: string): string {
  return own === unit || /[\p{L}%]/u.test(plusMinus) ? plusMinus : withUnit(plusMinus, own);
}
