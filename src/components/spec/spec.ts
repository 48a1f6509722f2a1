import { benchGroups } from '../../calculators/bench.ts';
import type { Entry, SetId } from '../../calculators/define.ts';
import * as quantities from '../../calculators/quantities.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { typedWords } from '../../notebook/standing.ts';
import { bothSets, homeSet, setsOf } from '../../notebook/values.ts';
import type { WorkView } from '../../notebook/work.svelte.ts';
import { partStanding } from '../parts/part-standing.ts';
import { saidWords, valueWords } from '../parts/part-words.ts';
import { assumedBy, ownResult } from '../results/own-results.ts';
import { isShown, present } from '../results/present.ts';
import { isHeadline, nearly, type SpecCalculator } from './results.ts';

/** A line of the sheet: a number that was entered, or a result. */
export interface SpecRow {
  readonly name: string;
  readonly label: string;
  readonly baseline: string;
  readonly candidate: string;
  /** Where the number is from, in words; empty where nothing is said. */
  readonly from: string;
}

/** Lines under one head. */
export interface SpecPart {
  readonly title: string;
  readonly rows: readonly SpecRow[];
}

function isEntered(set: SetId, entry: Entry): boolean {
  return ['own', 'same', 'carried'].includes(partStanding(homeSet(set, entry), entry));
}

function told(set: SetId, entry: Entry): string {
  return isEntered(set, entry) ? valueWords(entry, homeSet(set, entry)) : '–';
}

/** Everything that was entered for the two sets shown, in the order of work at the bench. */
export function enteredParts(): readonly SpecPart[] {
  return benchGroups
    .map(({ title, names }) => ({
      title,
      rows: names
        .map((name): Entry => quantities[name])
        .filter((entry) => bothSets.some((set) => isEntered(set, entry)))
        .map((entry) => ({
          name: entry.name,
          label: entry.label,
          baseline: told('baseline', entry),
          candidate: told('candidate', entry),
          from: saidWords(entry),
        })),
    }))
    .filter(({ rows }) => rows.length > 0);
}

/** The quantities that a set lacks for a calculator, by name. */
export function lackedIn(set: SetId, { needs }: SpecCalculator): readonly Entry[] {
  const all: Readonly<Record<string, Entry>> = quantities;
  return needs.flatMap((name) => {
    const entry = all[name];
    return entry === undefined || notebook.has(set, entry) ? [] : [entry];
  });
}

/** The results of the calculators that are worked, of the sets that need no example for them. */
export function resultParts(
  told: readonly SpecCalculator[],
  works: ReadonlyMap<string, WorkView>,
): readonly SpecPart[] {
  return told.flatMap((calculator) => {
    const work = works.get(calculator.id);
    if (work === undefined) return [];
    const headlines = work.calculator.answers.filter((name) => isHeadline(work.calculator, name));
    const rows = headlines.flatMap((name): readonly SpecRow[] => {
      const output = work.calculator.outputs[name];
      if (output === undefined || !isShown(output)) return [];
      const words = (set: SetId): string => {
        const si = ownResult(work, set, name);
        return si === undefined
          ? '–'
          : present(output, si, work.system, work.sets[set].uncertainty?.[name]?.plusMinus, true);
      };
      const [baseline, candidate] = [words('baseline'), words('candidate')];
      if (baseline === '–' && candidate === '–') return [];
      return [{ name, label: output.label, baseline, candidate, from: '' }];
    });
    return rows.length === 0 ? [] : [{ title: calculator.title, rows }];
  });
}

/** What stands in the results and is nobody's measurement, each with its value: `Oil allowance of one crankpin 4.0 g`. */
export function assumedWords(works: readonly WorkView[]): readonly string[] {
  const words = works.flatMap((work) =>
    assumedBy(work).map((entry) => {
      const values = setsOf(entry).map((set) =>
        typedWords(entry, notebook.value(set, entry), notebook.system),
      );
      return `${entry.label} ${[...new Set(values)].join(' and ')}`;
    }),
  );
  return [...new Set(words)];
}

/** What is still missing for a result that is near: the calculator, and the labels that the nearer set lacks. */
export function nearResults(
  told: readonly SpecCalculator[],
): readonly { readonly calculator: SpecCalculator; readonly labels: readonly string[] }[] {
  return told.flatMap((calculator) => {
    const sets = bothSets.map((set) => lackedIn(set, calculator));
    const least = sets.reduce((one, other) => (other.length < one.length ? other : one));
    const isNear =
      least.length > 0 && least.length <= nearly && least.length < calculator.needs.length;
    return isNear ? [{ calculator, labels: least.map(({ label }) => label) }] : [];
  });
}
