import type { Entry, SetId } from '../calculators/define.ts';
import { fromWords, tidyValue, type From, type TypedValue } from '../units/field.ts';
import type { Marks } from '../units/marks.ts';
import { units } from '../units/units.ts';

/** One entry of the notebook, as typed. */
export type StoredValue = TypedValue;

/** The sets of parts that a job can keep. Two of them are laid side by side at a time, as baseline and candidate. */
export type KeptSet = SetId | 'third' | 'fourth';

/** The values of all sets by dictionary name. What the sets share stands with the baseline. */
export type SetValues = Readonly<Record<KeptSet, Readonly<Record<string, StoredValue>>>>;
/** The same, to be filled. */
export type WritableSets = Record<KeptSet, Record<string, StoredValue>>;

/** Which sets a job has, what they are called, and which two of them are laid side by side. */
export interface JobSets {
  /** Two to four; baseline and candidate are always among them. */
  readonly kept: readonly KeptSet[];
  /** What the reader calls them. */
  readonly names: Readonly<Partial<Record<KeptSet, string>>>;
  readonly shown: Readonly<Record<SetId, KeptSet>>;
}

/** What a link can say in words beside its numbers, each under this name. */
export const letterNames = ['job', 'by', 'on', 'note', 'say', 'sets', 'units', 'was'] as const;
/**
 * The words of a link: the job, whom it is from, the date, a message, which sentences are said, what the two sets are
 * called, the system of units that it was made in, and what the results were then.
 */
export type Letter = Readonly<Partial<Record<(typeof letterNames)[number], string>>>;

/**
 * True for a link of a whole job, which says which sentences are told of it: it names all that the job has, where any
 * other names all that its page asks for.
 */
export function isOfJob(letter: Letter | undefined): boolean {
  return letter?.say !== undefined;
}

/** Everything the reader has written: a notebook, a visit by link, or the content of a file. */
export interface Contents {
  readonly job: string;
  readonly values: SetValues;
  /** A link says nothing of them. */
  readonly sets?: JobSets;
  /** What the results were when it was saved, as `then.ts` writes it. */
  readonly was?: string;
}

/** The sets in the order they are laid side by side. */
export const bothSets: readonly SetId[] = ['baseline', 'candidate'];

/** All that a job can keep. */
export const keptSets: readonly KeptSet[] = [...bothSets, 'third', 'fourth'];

/** Their names at the head of a column, where the reader has given none. */
export const setWords = {
  baseline: 'Baseline',
  candidate: 'Candidate',
  third: 'Third set',
  fourth: 'Fourth set',
} as const;

/** No values in any set. */
export function emptySets(): WritableSets {
  return { baseline: {}, candidate: {}, third: {}, fourth: {} };
}

/** What `valuesOf` gives of each set, in records of its own. */
export function mapSets(
  valuesOf: (set: KeptSet) => Readonly<Record<string, StoredValue>>,
): WritableSets {
  const sets = emptySets();
  for (const set of keptSets) sets[set] = { ...valuesOf(set) };
  return sets;
}

/** A notebook in which nothing has been written. */
export function emptyContents(): Contents {
  return { job: '', values: emptySets() };
}

const kept: ReadonlySet<string> = new Set(['v', 'view', ...letterNames]);

/**
 * True for a word that can name a quantity: it begins with a small letter and has letters and digits only.
 * Words that every JavaScript object answers to are refused, and so are those that links keep for themselves.
 */
export function isName(name: string): boolean {
  return /^[a-z][A-Za-z0-9]{0,59}$/.test(name) && !(name in {}) && !kept.has(name);
}

/** True where one value serves all sets. */
export function isOfBoth(entry: Entry): boolean {
  return entry.type !== 'list' && entry.common === true;
}

/** The set that an entry is stored with: what the sets share stands with the baseline. */
export function homeSet(set: SetId, entry: Entry): SetId {
  return isOfBoth(entry) ? 'baseline' : set;
}

/** The sets in which an entry has a value of its own. */
export function setsOf(entry: Entry): readonly SetId[] {
  return isOfBoth(entry) ? ['baseline'] : bothSets;
}

/** The fields that a calculator cannot do without: numbers and lists of both sets, each once. */
export function neededFields(
  entries: readonly Entry[],
): readonly { readonly entry: Entry; readonly set: SetId }[] {
  return entries
    .filter((entry) => entry.type !== 'choice' && entry.optional !== true)
    .flatMap((entry) => setsOf(entry).map((set) => ({ entry, set })));
}

/** True when two values read the same: same text, unit and ±, and the same said of them. */
export function sameValue(one: StoredValue | undefined, other: StoredValue | undefined): boolean {
  if (one === other) return true;
  if (one === undefined || other === undefined) return false;
  return (
    one.text === other.text &&
    one.unit === other.unit &&
    (one.plusMinus ?? '') === (other.plusMinus ?? '') &&
    one.from === other.from &&
    (one.note ?? '') === (other.note ?? '') &&
    (one.marks ?? []).join('\n') === (other.marks ?? []).join('\n')
  );
}

/** The value written as the JSON text of one storage key. */
export function writeValue(value: StoredValue): string {
  return JSON.stringify(tidyValue(value));
}

/** What a JSON text says; undefined when it is damaged or there is none. */
export function parsed(json: string | undefined): unknown {
  try {
    return JSON.parse(json ?? '');
  } catch {
    return undefined;
  }
}

/** The value read from the JSON text of one storage key; undefined when it is damaged. */
export function parseValue(json: string): StoredValue | undefined {
  return asValue(parsed(json));
}

/**
 * The value in something parsed from JSON; undefined when it has not the shape of one or its unit is unknown. What is
 * said of the number is left out where it is damaged, since the number is good without it.
 */
export function asValue(something: unknown): StoredValue | undefined {
  if (typeof something !== 'object' || something === null) return undefined;
  const { text, unit, plusMinus, from, note, marks } = something as Record<
    keyof StoredValue,
    unknown
  >;
  if (typeof text !== 'string' || typeof unit !== 'string') return undefined;
  if (unit !== '' && !Object.hasOwn(units, unit)) return undefined;
  if (plusMinus !== undefined && typeof plusMinus !== 'string') return undefined;
  return tidyValue({
    text,
    unit,
    ...(plusMinus === undefined ? {} : { plusMinus }),
    ...(isFrom(from) ? { from } : {}),
    ...(typeof note === 'string' ? { note } : {}),
    ...(isMarks(marks) ? { marks } : {}),
  });
}

function isMarks(something: unknown): something is Marks {
  return Array.isArray(something) && something.every((mark) => typeof mark === 'string');
}

function isFrom(something: unknown): something is From {
  return typeof something === 'string' && Object.hasOwn(fromWords, something);
}

/** How many values the sets hold. */
export function countValues(values: SetValues): number {
  return keptSets.reduce((sum, set) => sum + Object.keys(values[set]).length, 0);
}
