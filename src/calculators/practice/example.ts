import { readAs } from '../../units/field.ts';
import { takeApart } from '../../units/take-apart.ts';
import type { AnyCalculator, Entry, SetId, Value } from '../define.ts';
import type { InputValues } from '../evaluate.ts';

/** The example's value of one quantity [SI]; undefined where the example leaves it out. */
export function exampleValue(entry: Entry, set: SetId): Value {
  const text = entry.demo[set];
  if (entry.type === 'choice') return text;
  if (text.trim() === '') return undefined;
  if (entry.type === 'list') {
    const read = readAs(entry, text, entry.metric);
    return read.ok ? read.si : undefined;
  }
  const read = readAs(entry, text, entry.metric);
  return read.ok ? read.si : undefined;
}

/** The unit that the example states a quantity in. */
export function exampleUnit(
  entry: Exclude<Entry, { readonly type: 'choice' }>,
  set: SetId,
): string {
  return takeApart(entry.demo[set], entry.metric)?.unit ?? entry.metric;
}

/** All that the example has of a calculator's inputs [SI]. */
export function exampleInput(calculator: AnyCalculator, set: SetId): InputValues {
  const values = Object.entries(calculator.inputs).map(
    ([name, entry]) => [name, exampleValue(entry, set)] as const,
  );
  return Object.fromEntries(values.filter(([, value]) => value !== undefined));
}
