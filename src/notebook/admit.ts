import type { Entry } from '../calculators/define.ts';
import { readAs } from '../units/field.ts';
import { settle } from '../units/settle.ts';
import { few, fewNames } from './few.ts';
import { emptySets, isOfBoth, keptSets, type SetValues, type StoredValue } from './values.ts';

/** Values let in from outside, and a sentence for each that this dictionary cannot use. */
export interface Admitted {
  readonly values: SetValues;
  readonly problems: readonly string[];
}

/**
 * Judges values from a link or a file by the dictionary. Unknown names are named and kept, so that passing
 * the numbers on loses nothing. What cannot be read is named, and left out unless `keepUnreadable`.
 */
export function admit(
  values: SetValues,
  dictionary: ReadonlyMap<string, Entry>,
  keepUnreadable: boolean,
): Admitted {
  const kept = emptySets();
  const problems: string[] = [];
  const unknown = new Set<string>();
  for (const set of keptSets) {
    for (const [name, value] of Object.entries(values[set])) {
      const entry = dictionary.get(name);
      const fault = entry === undefined ? undefined : faultOf(value, entry);
      if (entry === undefined) unknown.add(name);
      else if (set !== 'baseline' && isOfBoth(entry)) {
        problems.push(`${entry.label} serves both sets at once; its second value is not used.`);
        continue;
      }
      if (fault !== undefined) problems.push(`${entry?.label ?? name} (${set}): ${fault}`);
      if (fault === undefined || keepUnreadable) kept[set][name] = value;
    }
  }
  return { values: kept, problems: [...few(problems), ...strangers([...unknown])] };
}

/** The sentence for names that this dictionary does not know. */
function strangers(names: readonly string[]): readonly string[] {
  if (names.length === 0) return [];
  return names.length === 1
    ? [`${fewNames(names)} is no quantity known here. It is kept, but nothing uses it.`]
    : [`${fewNames(names)} are no quantities known here. They are kept, but nothing uses them.`];
}

/** Why a value cannot be used; undefined when it can, or when its field is merely empty. */
function faultOf(value: StoredValue, entry: Entry): string | undefined {
  if (entry.type === 'choice') {
    const isWritten = entry.written?.isOne(value.text) === true;
    if (isWritten) return entry.written?.problemOf(value.text);
    return Object.hasOwn(entry.options, value.text)
      ? undefined
      : `“${value.text}” is not one of ${Object.values(entry.options).join(', ')}.`;
  }
  if (value.text.trim() === '') return undefined;
  const { text, unit } = settle(value, entry);
  const reading = readAs(entry, text, unit);
  return reading.ok ? undefined : reading.say;
}
