import type { Entry, SetId } from '../calculators/define.ts';
import { tidyValue, type TypedValue } from '../units/field.ts';
import { units } from '../units/units.ts';

/** One entry of the notebook, as typed. */
export type StoredValue = TypedValue;

/** The values of both sets by dictionary name. What both sets share stands with the baseline. */
export type SetValues = Readonly<Record<SetId, Readonly<Record<string, StoredValue>>>>;

/** Everything the reader has written: a notebook, a visit by link, or the content of a file. */
export interface Contents {
  readonly job: string;
  readonly values: SetValues;
}

/** The sets in the order they are laid side by side. */
export const bothSets: readonly SetId[] = ['baseline', 'candidate'];

/** Their names at the head of a column. */
export const setWords = { baseline: 'Baseline', candidate: 'Candidate' } as const;

/** A notebook in which nothing has been written. */
export function emptyContents(): Contents {
  return { job: '', values: { baseline: {}, candidate: {} } };
}

/**
 * True for a word that can name a quantity: it begins with a small letter and has letters and digits only.
 * Words that every JavaScript object answers to are refused, and so are the two that links keep for themselves.
 */
export function isName(name: string): boolean {
  return /^[a-z][A-Za-z0-9]{0,59}$/.test(name) && !(name in {}) && name !== 'v' && name !== 'job';
}

/** The set that an entry is stored with: what both sets share stands with the baseline. */
export function homeSet(set: SetId, entry: Entry): SetId {
  return entry.type !== 'list' && entry.common === true ? 'baseline' : set;
}

/** The sets in which an entry has a value of its own. */
export function setsOf(entry: Entry): readonly SetId[] {
  return homeSet('candidate', entry) === 'baseline' ? ['baseline'] : bothSets;
}

/** The fields that a calculator cannot do without: numbers and lists of both sets, each once. */
export function neededFields(
  entries: readonly Entry[],
): readonly { readonly entry: Entry; readonly set: SetId }[] {
  return entries
    .filter((entry) => entry.type !== 'choice' && entry.optional !== true)
    .flatMap((entry) => setsOf(entry).map((set) => ({ entry, set })));
}

/** True when two values read the same: same text, unit and ±. */
export function sameValue(one: StoredValue | undefined, other: StoredValue | undefined): boolean {
  if (one === other) return true;
  if (one === undefined || other === undefined) return false;
  return (
    one.text === other.text &&
    one.unit === other.unit &&
    (one.plusMinus ?? '') === (other.plusMinus ?? '')
  );
}

/** The value written as the JSON text of one storage key. */
export function writeValue(value: StoredValue): string {
  return JSON.stringify(tidyValue(value));
}

/** The value read from the JSON text of one storage key; undefined when it is damaged. */
export function parseValue(json: string): StoredValue | undefined {
  try {
    return asValue(JSON.parse(json));
  } catch {
    return undefined;
  }
}

/** The value in something parsed from JSON; undefined when it has not the shape of one or its unit is unknown. */
export function asValue(something: unknown): StoredValue | undefined {
  if (typeof something !== 'object' || something === null) return undefined;
  const { text, unit, plusMinus } = something as Record<keyof StoredValue, unknown>;
  if (typeof text !== 'string' || typeof unit !== 'string') return undefined;
  if (unit !== '' && !Object.hasOwn(units, unit)) return undefined;
  if (plusMinus !== undefined && typeof plusMinus !== 'string') return undefined;
  return tidyValue({ text, unit, ...(plusMinus === undefined ? {} : { plusMinus }) });
}

/** How many values the two sets hold. */
export function countValues(values: SetValues): number {
  return bothSets.reduce((sum, set) => sum + Object.keys(values[set]).length, 0);
}
