import type { NumberEntry } from '../calculators/define.ts';
import type { Shown } from '../units/settle.ts';
import { takeApart, takeApartAs } from '../units/take-apart.ts';
import { withUnit } from '../units/format.ts';

/**
 * A number with the digits and the unit it was typed in, and its ± likewise: `432.5 ± 0.5 g`. The unit stands
 * once, whether it was typed behind the number or chosen beside the field; a decimal comma becomes a point.
 * Undefined for a text that is no number. A ± that cannot be read is left out, as it is in the results.
 */
export function asTyped(entry: NumberEntry, shown: Shown, plusMinus: boolean): string | undefined {
  const typed = takeApartAs(entry, shown);
  if (typed === undefined) return undefined;
  const digits = typed.number.replace('-', '−');
  const unit = typed.unit ?? shown.unit;
  const spread = plusMinus ? takeApart(shown.plusMinus.replace(/^±\s*/, ''), unit) : undefined;
  if (spread === undefined) return withUnit(digits, unit);
  if (spread.unit === undefined || spread.unit === unit)
    return withUnit(`${digits} ± ${spread.number}`, unit);
  return `${withUnit(digits, unit)} ± ${withUnit(spread.number, spread.unit)}`;
}
