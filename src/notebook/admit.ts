import type { Entry } from '../calculators/define.ts';
import { readAs } from '../units/field.ts';
import { settle } from '../units/settle.ts';
import { bothSets, setsOf, type SetValues, type StoredValue } from './values.ts';

/** Values let in from outside, and a sentence for each that this dictionary cannot use. */
export interface Admitted {
  readonly values: SetValues;
  readonly problems: readonly string[];
}

/** Unknown names up to so many are told one by one. */
const mostNamed = 5;

/**
 * Judges values from a link or a file by the dictionary. Unknown names are named and kept, so that passing
 * the numbers on loses nothing. What cannot be read is named, and left out unless `keepUnreadable`.
 */
export function admit(
  values: SetValues,
  dictionary: ReadonlyMap<string, Entry>,
  keepUnreadable: boolean,
): Admitted {
  const kept: Record<'baseline' | 'candidate', Record<string, StoredValue>> = {
    baseline: {},
    candidate: {},
  };
  const problems: string[] = [];
  const unknown = new Set<string>();
  for (const set of bothSets) {
    for (const [name, value] of Object.entries(values[set])) {
      const entry = dictionary.get(name);
      const fault = entry === undefined ? undefined : faultOf(value, entry);
      if (entry === undefined) unknown.add(name);
      else if (!setsOf(entry).includes(set)) {
        problems.push(`${entry.label} serves both sets at once; its second value is not used.`);
        continue;
      }
      if (fault !== undefined) problems.push(`${entry?.label ?? name} (${set}): ${fault}`);
      if (fault === undefined || keepUnreadable) kept[set][name] = value;
    }
  }
  return { values: kept, problems: [...problems, ...strangers([...unknown])] };
}

/** One sentence for each unknown name, or one for all of them where there are many. */
function strangers(names: readonly string[]): readonly string[] {
  if (names.length <= mostNamed)
    return names.map(
      (name) => `“${name}” is no quantity known here. It is kept, but nothing uses it.`,
    );
  const some = names.slice(0, mostNamed).map((name) => `“${name}”`);
  return [
    `${String(names.length)} names are no quantities known here, ${some.join(', ')} among them. They are kept, but nothing uses them.`,
  ];
}

/** Why a value cannot be used; undefined when it can, or when its field is merely empty. */
function faultOf(value: StoredValue, entry: Entry): string | undefined {
  if (entry.type === 'choice') {
    return Object.hasOwn(entry.options, value.text)
      ? undefined
      : `“${value.text}” is not one of ${Object.values(entry.options).join(', ')}.`;
  }
  if (value.text.trim() === '') return undefined;
  const { text, unit } = settle(value, entry);
  const reading = readAs(entry, text, unit);
  return reading.ok ? undefined : reading.say;
}
