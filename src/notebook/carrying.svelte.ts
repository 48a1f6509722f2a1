import { SvelteMap } from 'svelte/reactivity';
import type { Entry, NumberEntry, SetId } from '../calculators/define.ts';
import { numberIn } from '../calculators/evaluate.ts';
import { differenceFromSI, fromSI } from '../units/units.ts';
import { means, sources, type Source } from './carried.ts';
import { notebook } from './notebook.svelte.ts';
import { bothSets, type StoredValue } from './values.ts';
import type * as Weighed from './weighed.ts';
import type { Work } from './work.svelte.ts';

/** More digits than a balance or a micrometer has, and few enough to be read. */
const mostDigits = 6;

/**
 * A result as the text of the quantity that it fills, in that quantity's metric unit: to six digits, and to no more
 * than a tenth of its ±.
 *
 * @param si the result [SI]
 * @param plusMinus its ± [SI]; undefined where it has none
 */
export function carriedText(
  entry: NumberEntry,
  si: number,
  plusMinus: number | undefined,
): StoredValue {
  const unit = entry.metric;
  const value = Number(fromSI(si, unit).toPrecision(mostDigits));
  if (plusMinus === undefined || plusMinus === 0) return { text: String(value), unit };
  const spread = Number(differenceFromSI(plusMinus, unit).toPrecision(2));
  const decimals = Math.min(20, Math.max(0, Math.ceil(1 - Math.log10(spread))));
  return { text: String(Number(value.toFixed(decimals))), unit, plusMinus: String(spread) };
}

const followed = new Set<string>();
/** The means that fill a quantity now, by set and name: what a page works gives way to them. */
const filled = new SvelteMap<string, StoredValue>();

/**
 * Lets the inputs of a calculator be filled by what other calculators make of the reader's own numbers, and by the
 * means of the parts that were weighed. What that takes is fetched only once there are such numbers. Call inside an
 * effect root.
 *
 * @param workOf fetches a calculator and works it with the notebook
 */
export function carryInto(
  { inputs }: { readonly inputs: Readonly<Record<string, Entry>> },
  workOf: (id: string) => Promise<Work>,
): void {
  // A mean may be what the number of another page turns on, so all are followed on all pages.
  for (const [name, list] of Object.entries(means)) {
    if (followed.has(list)) continue;
    followed.add(list);
    for (const set of bothSets) carryMean(name, list, set);
  }
  for (const entry of Object.values(inputs)) {
    const source = sources[entry.name];
    if (source === undefined || entry.type !== 'number' || followed.has(entry.name)) continue;
    followed.add(entry.name);
    for (const set of bothSets) carry(entry, set, source, workOf);
  }
}

function carryMean(name: string, list: string, set: SetId): void {
  const key = `${set}/${name}`;
  let code: typeof Weighed | undefined = $state.raw(undefined);
  let asked = false;
  async function fetch(): Promise<void> {
    try {
      code = await import('./weighed.ts');
    } catch {
      // The connection is lost: asked for again at the next number.
      asked = false;
    }
  }
  $effect(() => {
    const isGiven = notebook.isGiven(set, list);
    if (isGiven && code === undefined) {
      if (!asked) void fetch();
      asked = true;
      return;
    }
    const entry = isGiven ? code?.weighedLists[list] : undefined;
    const mean = entry && code?.meanOf(entry, notebook.value(set, entry));
    if (mean !== undefined) {
      filled.set(key, mean);
      notebook.carry(set, name, mean);
    } else if (filled.delete(key)) notebook.carry(set, name, undefined);
  });
}

function carry(
  entry: NumberEntry,
  set: SetId,
  source: Source,
  workOf: (id: string) => Promise<Work>,
): void {
  let work: Work | undefined = $state.raw(undefined);
  let asked = false;
  async function fetch(): Promise<void> {
    try {
      work = await workOf(source.calculator);
    } catch {
      // The connection is lost: asked for again at the next number.
      asked = false;
    }
  }
  $effect(() => {
    if (filled.has(`${set}/${entry.name}`)) return;
    if (!source.needs.every((name) => notebook.isGiven(set, name))) {
      notebook.carry(set, entry.name, undefined);
      return;
    }
    if (work === undefined) {
      if (!asked) void fetch();
      asked = true;
      return;
    }
    const { output, stale, uncertainty } = work.sets[set];
    // A last good result is none of these numbers: its own page marks it, and no other could.
    const si = stale ? undefined : numberIn(output?.[source.output]);
    const own = source.plusMinus === undefined ? undefined : output?.[source.plusMinus];
    const plusMinus = numberIn(own) ?? uncertainty?.[source.output]?.plusMinus;
    const value = si === undefined ? undefined : carriedText(entry, si, plusMinus);
    notebook.carry(set, entry.name, value);
  });
}
