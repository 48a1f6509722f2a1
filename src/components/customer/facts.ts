import type { Entry, SetId } from '../../calculators/define.ts';
import { asTyped } from '../../notebook/as-typed.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { bothSets } from '../../notebook/values.ts';
import type { WorkView } from '../../notebook/work.svelte.ts';
import { ownResult } from '../results/own-results.ts';
import { difference, isShown, present } from '../results/present.ts';
import { lines, mostLines, type Line } from './lines.ts';
import type { Fact, Facts } from './sentences.ts';

/** The calculators that the page has fetched, by id. */
export type Works = Readonly<Partial<Record<string, WorkView>>>;

/** A line with what stands in it. */
export interface Row {
  readonly line: Line;
  readonly baseline: string | undefined;
  readonly candidate: string | undefined;
  /** The candidate less the baseline; undefined where one is missing or both are alike. */
  readonly change: string | undefined;
}

/** A number with more doubt than this share of it is called "about". */
const wide = 0.03;

/** A result as the table has it. */
export function tellResult(work: WorkView, set: SetId, name: string): string | undefined {
  const output = work.calculator.outputs[name];
  const si = ownResult(work, set, name);
  if (si === undefined || output === undefined || !isShown(output)) return undefined;
  const plusMinus = work.sets[set].uncertainty?.[name]?.plusMinus;
  const about = plusMinus !== undefined && plusMinus > wide * Math.abs(si) ? 'about ' : '';
  return about + present(output, si, work.system, plusMinus);
}

function tellInput(set: SetId, entry: Entry): string | undefined {
  if (entry.type !== 'number' || !notebook.has(set, entry)) return undefined;
  return asTyped(entry, notebook.display(set, entry), false);
}

function tell(works: Works, { calculator, name }: Line, set: SetId): string | undefined {
  const work = works[calculator];
  if (work === undefined) return undefined;
  const entry = work.calculator.inputs[name];
  return entry === undefined ? tellResult(work, set, name) : tellInput(set, entry);
}

function numberOf(works: Works, { calculator, name }: Line, set: SetId): number | undefined {
  const work = works[calculator];
  if (work === undefined) return undefined;
  if (!(name in work.calculator.inputs)) return ownResult(work, set, name);
  const value = work.sets[set].input?.[name];
  return typeof value === 'number' ? value : undefined;
}

function changeOf(works: Works, line: Line): string | undefined {
  const work = works[line.calculator];
  if (work === undefined) return undefined;
  const { inputs, outputs } = work.calculator;
  const entry = inputs[line.name] ?? outputs[line.name];
  if (entry?.type !== 'number' && entry?.type !== 'maybe') return undefined;
  const [baseline, candidate] = bothSets.map((set) => numberOf(works, line, set));
  if (baseline === undefined || candidate === undefined) return undefined;
  const change = difference(entry, { baseline, candidate }, work.system);
  return change === 'none' || change === '—' ? undefined : change;
}

/** The lines that there are numbers for, at most eight. */
export function rowsOf(works: Works): readonly Row[] {
  return lines
    .map((line) => ({
      line,
      baseline: tell(works, line, 'baseline'),
      candidate: tell(works, line, 'candidate'),
      change: changeOf(works, line),
    }))
    .filter(({ baseline, candidate }) => baseline !== undefined || candidate !== undefined)
    .slice(0, mostLines);
}

/** What can be said of both sets. */
export function factsOf(works: Works, metal: string | undefined): Facts {
  const pairs = lines.flatMap((line): readonly (readonly [string, Fact])[] => {
    const [before, after] = bothSets.map((set) => tell(works, line, set));
    const [first, second] = bothSets.map((set) => numberOf(works, line, set));
    if (before === undefined || after === undefined) return [];
    if (first === undefined || second === undefined) return [];
    const step = before === after ? 0 : Math.sign(second - first);
    return [[line.id, { before, after, step: step as Fact['step'] }]];
  });
  const bearing = works['bearing-clearance'];
  const hot = bearing && tellResult(bearing, 'candidate', 'clearanceHot');
  const cold = bearing && tellResult(bearing, 'candidate', 'clearanceCold');
  return {
    ...(Object.fromEntries(pairs) as Facts),
    ...(hot === undefined ? {} : { clearanceHot: hot }),
    ...(cold === undefined ? {} : { clearanceCold: cold }),
    ...(metal === undefined ? {} : { metal }),
  };
}
