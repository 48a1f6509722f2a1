import type { Value } from '../../calculators/define.ts';
import { formatNumber, withUnit } from '../../units/format.ts';
import type { Shown } from '../../units/settle.ts';
import { fromSI } from '../../units/units.ts';

/**
 * What a cell shows whose row stands in `unit`. A number of the reader's in another unit keeps its digits and
 * names its unit; an example is written anew in the row's unit, to four figures.
 */
export function inRowUnit(shown: Shown, value: Value, unit: string, isExample: boolean): string {
  if (shown.unit === unit || shown.text.trim() === '') return shown.text;
  if (isExample && typeof value === 'number')
    return formatNumber(fromSI(value, unit), { significant: 4 });
  // What was typed with its unit names it already; the e of a power of ten names none.
  const isNamed = /[\p{L}%°′″"]/u.test(shown.text.replace(/e[+-]?\d+/giu, ''));
  return isNamed ? shown.text : withUnit(shown.text, shown.unit);
}
