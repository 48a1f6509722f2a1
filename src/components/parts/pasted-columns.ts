import { shortLabel } from '../../calculators/bench.ts';
import type { ListEntry, SetId } from '../../calculators/define.ts';
import { bothSets } from '../../notebook/values.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import type { Pasted, PastedColumn } from '../../units/pasted/columns.ts';
import { lineLabel, readPlace, type Place } from '../../units/places.ts';
import { nameInText, partStanding } from './part-standing.ts';

/** The list and the set that a pasted column is for, and whether it holds the weights of the parts or their marks. */
export interface Target {
  readonly list: ListEntry;
  readonly set: SetId;
  readonly of: 'weights' | 'marks';
}

/** `Wrist pins, candidate`, or what the reader calls the set. */
export function targetWords({ list, set, of }: Target): string {
  const words = `${shortLabel(list)}, ${nameInText(set)}`;
  return of === 'marks' ? `Marks of ${words}` : words;
}

export function targetId({ list, set, of }: Target): string {
  return `${list.name}/${set}/${of}`;
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

/** Over a column of what is stamped or written on the parts. */
const marksHint = /\b(?:marks?|marked|stamp(?:ed)?|serial)\b/iu;

/**
 * Where each column of numbers is likely to go: as its heading says, else to the list that was asked for, the first to
 * one set and the second to the other, one alone to a set that has none yet. One column for each place; undefined for what goes nowhere. Marks go with the
 * weights where there is one column of these: beside two it is the reader who knows which parts bear them.
 */
export function likelyTargets(
  { columns }: Pasted,
  lists: readonly ListEntry[],
  wanted: ListEntry,
): readonly (Target | undefined)[] {
  const taken = new Set<string>();
  const isOfMarks = ({ heading, holds }: PastedColumn): boolean =>
    holds !== 'places' && marksHint.test(heading);
  const isAlone =
    columns.filter((column) => column.holds === 'numbers' && !isOfMarks(column)).length === 1;
  const weights = columns.map((column) => {
    const { heading, holds } = column;
    if (holds !== 'numbers' || isOfMarks(column)) return undefined;
    const list = lists.find(({ name }) => listHints[name]?.test(heading) === true) ?? wanted;
    const named =
      bothSets.find((set) => heading.toLowerCase().includes(notebook.setName(set).toLowerCase())) ??
      bothSets.find((set) => setHints[set].test(heading));
    const free = [
      ...(named === undefined ? [] : [named]),
      ...(isAlone ? emptyFirst(list) : bothSets),
    ]
      .map((set): Target => ({ list, set, of: 'weights' }))
      .find((target) => !taken.has(targetId(target)));
    if (free !== undefined) taken.add(targetId(free));
    return free;
  });
  const [only, ...others] = weights.filter((target) => target !== undefined);
  const marks = columns.findIndex(isOfMarks);
  return only === undefined || others.length > 0
    ? weights
    : weights.map((target, at) => (at === marks ? { ...only, of: 'marks' } : target));
}

/** Both sets, those first that have no weights of the reader's: one column alone is more likely to fill than to replace. */
function emptyFirst(list: ListEntry): readonly SetId[] {
  const isFull = (set: SetId): boolean => partStanding(set, list) === 'own';
  return [...bothSets].sort((one, other) => Number(isFull(one)) - Number(isFull(other)));
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
