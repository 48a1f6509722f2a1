import type { Entry, SetId } from '../calculators/define.ts';
import { takeApart } from '../units/take-apart.ts';
import { unitOf } from '../units/units.ts';
import type { StoredValue } from './values.ts';

const examples = new WeakMap<Entry, Partial<Record<SetId, StoredValue>>>();

/**
 * The invented example that stands in a field until the reader writes there, with the ordinary shop
 * uncertainty of such a measurement as its ±. The same object each time: most fields hold it at most keys.
 */
export function exampleOf(set: SetId, entry: Entry): StoredValue {
  const known = examples.get(entry) ?? {};
  if (known[set] !== undefined) return known[set];
  const example = makeExample(set, entry);
  examples.set(entry, { ...known, [set]: example });
  return example;
}

function makeExample(set: SetId, entry: Entry): StoredValue {
  const text = entry.demo[set];
  if (entry.type === 'choice') return { text, unit: '' };
  if (entry.type === 'list') return { text, unit: entry.metric };
  const typed = takeApart(text, entry.metric);
  const value =
    typed === undefined
      ? { text, unit: entry.metric }
      : { text: typed.number, unit: typed.unit ?? entry.metric };
  // What can be left out adds no doubt of its own to a result until the reader gives it some.
  if (entry.usualPlusMinus === undefined || entry.optional === true) return value;
  const digits = String(entry.usualPlusMinus);
  const plusMinus =
    value.unit === entry.rangeUnit ? digits : `${digits} ${unitOf(entry.rangeUnit).symbol}`;
  return { ...value, plusMinus };
}
