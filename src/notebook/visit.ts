import type { Entry } from '../calculators/define.ts';
import { admit } from './admit.ts';
import { asJobSets } from './job-sets.ts';
import { decodeLink } from './link.ts';
import { nameToday } from './renamed.ts';
import {
  asValue,
  countValues,
  emptySets,
  isName,
  isOfJob,
  keptSets,
  letterNames,
  mapSets,
  parsed,
  sameValue,
  type Contents,
  type Letter,
  type SetValues,
  type StoredValue,
} from './values.ts';

/** The numbers of a link, held apart from the reader's own. */
export interface Visit extends Contents {
  /** The fragment they came from: a reload of the same one keeps what was changed since. */
  readonly from: string;
  /** The page that it opened on: its link names all that this page asks for, and nothing of other pages. */
  readonly at?: string;
  /** The words that it brought beside the job's name. */
  readonly letter?: Letter;
  /** True once one of its numbers was changed. */
  readonly isChanged?: boolean;
  /** What the link set the figures of its page to; empty for none. */
  readonly view?: string;
  readonly problems: readonly string[];
}

/** What came of an address: a visit, a sentence that says why there is none, or nothing at all. */
export type Arrival = { readonly visit: Visit } | { readonly say: string } | undefined;

/** Reads the fragment of an address by the dictionary. Undefined when it is an in-page anchor or empty. */
export function arrive(hash: string, dictionary: ReadonlyMap<string, Entry>): Arrival {
  const link = decodeLink(hash, (name) => dictionary.get(name)?.label ?? name);
  if (link === undefined) return undefined;
  if (!link.ok) return { say: link.say };
  const values = emptySets();
  // In a link of a whole job an empty place is one that nothing was given for: what other numbers give stands there.
  const isJob = isOfJob(link.letter);
  const isGiven = (value: StoredValue | undefined): value is StoredValue =>
    value !== undefined && !(isJob && value.text.trim() === '');
  for (const { name, baseline, candidate } of link.values) {
    if (isGiven(baseline)) values.baseline[name] = baseline;
    if (isGiven(candidate)) values.candidate[name] = candidate;
  }
  const admitted = admit(values, dictionary, false);
  const problems = [...link.problems, ...admitted.problems];
  if (countValues(admitted.values) === 0) {
    return { say: ['This link holds no number that could be used.', ...problems].join(' ') };
  }
  const { job = '', ...letter } = link.letter;
  const view = link.view === '' ? {} : { view: link.view };
  return { visit: { from: hash, job, letter, ...view, values: admitted.values, problems } };
}

/** A visit as text for the tab's storage. */
export function writeVisit(visit: Visit): string {
  return JSON.stringify(visit);
}

/** A visit or a notebook from stored text; undefined when it is damaged. */
export function parseVisit(json: string | undefined): Visit | undefined {
  return asVisit(parsed(json));
}

/** A visit or a notebook in something parsed from JSON; undefined when it has not the shape of one. */
export function asVisit(something: unknown): Visit | undefined {
  if (typeof something !== 'object' || something === null) return undefined;
  const { from, at, job, letter, isChanged, view, values, sets, problems } = something as Record<
    keyof Visit,
    unknown
  >;
  if (typeof values !== 'object' || values === null) return undefined;
  return {
    from: typeof from === 'string' ? from : '',
    ...(typeof at === 'string' ? { at } : {}),
    letter: asLetter(letter),
    ...(isChanged === true ? { isChanged } : {}),
    ...(typeof view === 'string' ? { view } : {}),
    job: typeof job === 'string' ? job : '',
    values: parseSets(values),
    ...(sets === undefined ? {} : { sets: asJobSets(sets) }),
    problems: Array.isArray(problems) ? problems.filter((one) => typeof one === 'string') : [],
  };
}

function asLetter(something: unknown): Letter {
  if (typeof something !== 'object' || something === null) return {};
  const found = something as Readonly<Record<string, unknown>>;
  return Object.fromEntries(
    letterNames.flatMap((name) => (typeof found[name] === 'string' ? [[name, found[name]]] : [])),
  );
}

function parseSets(sets: object): SetValues {
  const values = emptySets();
  for (const set of keptSets) {
    const found: unknown = (sets as Partial<Record<typeof set, unknown>>)[set];
    if (typeof found !== 'object' || found === null) continue;
    for (const [name, something] of Object.entries(found)) {
      const value = isName(name) ? asValue(something) : undefined;
      if (value !== undefined) values[set][nameToday(name)] = value;
    }
  }
  return values;
}

/** How many values of `own` would change if those of `others` were written over them. */
export function countReplaced(own: SetValues, others: SetValues): number {
  return keptSets.reduce(
    (sum, set) =>
      sum +
      Object.entries(others[set]).filter(([name, value]) => {
        const mine = own[set][name];
        return mine !== undefined && !sameValue(mine, value);
      }).length,
    0,
  );
}

/** `own` with the values of `others` written over it, name by name. */
export function overlaid(own: Contents, others: Contents): Contents {
  return {
    ...own,
    job: others.job === '' ? own.job : others.job,
    values: mapSets((set) => ({ ...own.values[set], ...others.values[set] })),
  };
}
