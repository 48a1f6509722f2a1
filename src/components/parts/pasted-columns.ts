import { shortLabel } from '../../calculators/bench.ts';
import type { ListEntry, SetId } from '../../calculators/define.ts';
import { bothSets } from '../../notebook/values.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import type { Pasted } from '../../units/pasted/columns.ts';
import { lineLabel, readPlace, type Place } from '../../units/places.ts';
import { nameInText } from './part-standing.ts';

/** The list and the set that a pasted column is for. */
export interface Target {
  readonly list: ListEntry;
  readonly set: SetId;
}

/** `Wrist pins, candidate`, or what the reader calls the set. */
export function targetWords({ list, set }: Target): string {
  return `${shortLabel(list)}, ${nameInText(set)}`;
}

export function targetId({ list, set }: Target): string {
  return `${list.name}/${set}`;
}

/** Words in a heading that tell of which parts a column is, by the name of the list. */
const listHints: Readonly<Record<string, RegExp>> = {
  pistonMasses: /piston/iu,
  pinMasses: /\bpins?\b|gudgeon/iu,
  ringMasses: /\brings?\b/iu,
  smallEndMasses: /small|little/iu,
  bigEndMasses: /\bbig|large/iu,
};
/** And those that tell of which set. */
const setHints: Readonly<Record<SetId, RegExp>> = {
  baseline: /baseline|\bold\b|before|\bout\b/iu,
  candidate: /candidate|\bnew\b|after|\bin\b/iu,
};

/**
 * Where each column of numbers is likely to go: as its heading says, else to the list that was asked for, the first to
 * one set and the second to the other. One column for each place; undefined for what goes nowhere.
 */
export function likelyTargets(
  { columns }: Pasted,
  lists: readonly ListEntry[],
  wanted: ListEntry,
): readonly (Target | undefined)[] {
  const taken = new Set<string>();
  return columns.map(({ heading, holds }) => {
    if (holds !== 'numbers') return undefined;
    const list = lists.find(({ name }) => listHints[name]?.test(heading) === true) ?? wanted;
    const named =
      bothSets.find((set) => heading.toLowerCase().includes(notebook.setName(set).toLowerCase())) ??
      bothSets.find((set) => setHints[set].test(heading));
    const free = [...(named === undefined ? [] : [named]), ...bothSets]
      .map((set): Target => ({ list, set }))
      .find((target) => !taken.has(targetId(target)));
    if (free !== undefined) taken.add(targetId(free));
    return free;
  });
}

/** The cells of a column as its list would hold them. */
export function columnPlaces(
  cells: readonly string[],
  list: ListEntry,
  unit: string,
): readonly Place[] {
  const places = cells.map((cell, at) =>
    readPlace(cell, list, unit, lineLabel(shortLabel(list), at)),
  );
  const last = places.findLastIndex(({ text }) => text !== '');
  return places.slice(0, last + 1);
}
