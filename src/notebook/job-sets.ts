import type { SetId } from '../calculators/define.ts';
import { bothSets, keptSets, setWords, type JobSets, type KeptSet } from './values.ts';

/** A longer name is cut: it heads a column. */
const longestName = 40;

/** What a job has whose reader has said nothing of its sets. */
export const plainSets: JobSets = {
  kept: bothSets,
  names: {},
  shown: { baseline: 'baseline', candidate: 'candidate' },
};

/** What a set is called at the head of a column. */
export function nameOfSet({ names }: JobSets, set: KeptSet): string {
  return names[set] ?? setWords[set];
}

/** Calls a set by a name; an empty one gives it back the name that it had. */
export function named(sets: JobSets, set: KeptSet, name: string): JobSets {
  const cut = name.slice(0, longestName);
  const others = Object.entries(sets.names).filter(([one]) => one !== set);
  const own = cut.trim() === '' ? [] : [[set, cut]];
  return { ...sets, names: Object.fromEntries([...others, ...own]) as JobSets['names'] };
}

/** Lays a set into one of the two columns. The one that stood there goes to the other where both would be the same. */
export function shownAs(sets: JobSets, column: SetId, set: KeptSet): JobSets {
  const { shown } = sets;
  const other = column === 'baseline' ? 'candidate' : 'baseline';
  const beside = shown[other] === set ? shown[column] : shown[other];
  return {
    ...sets,
    shown:
      column === 'baseline'
        ? { baseline: set, candidate: beside }
        : { baseline: beside, candidate: set },
  };
}

/** With one set more, which stands as candidate; undefined where there are four. */
export function withAnother(sets: JobSets): JobSets | undefined {
  const next = keptSets.find((set) => !sets.kept.includes(set));
  if (next === undefined) return undefined;
  const kept = keptSets.filter((set) => set === next || sets.kept.includes(set));
  return shownAs({ ...sets, kept }, 'candidate', next);
}

/** Without a set that was added; one that the job always has stays. */
export function without(sets: JobSets, set: KeptSet): JobSets {
  if (bothSets.some((one) => one === set)) return sets;
  const kept = sets.kept.filter((one) => one !== set);
  const bare = { ...named(sets, set, ''), kept };
  const column = bothSets.find((one) => sets.shown[one] === set);
  const free = kept.find((one) => !Object.values(sets.shown).includes(one));
  return column === undefined || free === undefined ? bare : shownAs(bare, column, free);
}

function isKept(something: unknown): something is KeptSet {
  return keptSets.some((set) => set === something);
}

/** Reads what is kept of a job's sets; what is damaged or missing is as in a job of which nothing was said. */
export function asJobSets(something: unknown): JobSets {
  if (typeof something !== 'object' || something === null) return plainSets;
  const { kept, names, shown } = something as Readonly<Record<string, unknown>>;
  const listed: readonly unknown[] = Array.isArray(kept) ? kept : [];
  let sets: JobSets = {
    ...plainSets,
    kept: keptSets.filter((set) => bothSets.some((one) => one === set) || listed.includes(set)),
  };
  if (typeof names === 'object' && names !== null)
    for (const [set, name] of Object.entries(names))
      if (isKept(set) && typeof name === 'string') sets = named(sets, set, name);
  if (typeof shown === 'object' && shown !== null) {
    const { baseline, candidate } = shown as Readonly<Record<string, unknown>>;
    for (const [column, set] of [
      ['baseline', baseline],
      ['candidate', candidate],
    ] as const)
      if (isKept(set) && sets.kept.includes(set)) sets = shownAs(sets, column, set);
  }
  return sets;
}
