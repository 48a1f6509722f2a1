import { isWeighedEach } from '../../calculators/bench.ts';
import { csvText } from '../../calculators/csv.ts';
import type { Entry, ListEntry, SetId } from '../../calculators/define.ts';
import { readField } from '../../notebook/evaluation.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { typedWords } from '../../notebook/standing.ts';
import { bothSets, homeSet } from '../../notebook/values.ts';
import { fromWords } from '../../units/field.ts';
import { placesOf } from '../../units/places.ts';
import { differenceFromSI, fromSI, unitOf } from '../../units/units.ts';
import { partStanding } from './part-standing.ts';

type Cell = number | string | undefined;

/** Whose number it is, for whoever reads the file without the page. */
const standingWords = {
  own: '',
  same: 'the same part as in the other set',
  carried: 'worked from other numbers',
  example: 'invented example',
  missing: 'missing',
  empty: '',
} as const;

/**
 * The table as a file of separated values: a quantity a line and a part a line where each was weighed; of each set the
 * number in the unit of the line, its ±, where it is from, and the note. What is no number stands there as it was
 * written; text that a spreadsheet would take for a formula is made harmless.
 */
export function partsCsv(
  groups: readonly {
    readonly group: { readonly title: string };
    readonly entries: readonly Entry[];
  }[],
): string {
  const head: Cell[] = [
    'Group',
    'Quantity',
    'Number',
    'Unit',
    ...bothSets.flatMap((set) => [
      notebook.setName(set),
      `${notebook.setName(set)}, ±`,
      `${notebook.setName(set)}, where from`,
      `${notebook.setName(set)}, note`,
      `${notebook.setName(set)}, mark`,
    ]),
  ];
  const rows = groups.flatMap(({ group, entries }) =>
    entries.flatMap((entry) => rowsOf(entry).map((row): Cell[] => [group.title, ...row])),
  );
  return csvText([head, ...rows]);
}

function rowsOf(entry: Entry): readonly (readonly Cell[])[] {
  const unit =
    entry.type === 'choice' ? '' : notebook.system === 'metric' ? entry.metric : entry.inch;
  const symbol = unit === '' ? '' : unitOf(unit).symbol;
  if (isWeighedEach(entry)) return placeRows(entry, unit, symbol);
  const cells = bothSets.flatMap((set) => {
    const value = notebook.value(homeSet(set, entry), entry);
    const field = readField(entry, value);
    const number = typeof field.value === 'number' ? fromSI(field.value, unit) : undefined;
    const text = value.text.trim() === '' ? undefined : typedWords(entry, value, notebook.system);
    const spread =
      field.plusMinus === undefined ? undefined : differenceFromSI(field.plusMinus, unit);
    return [number ?? text, spread, ...said(entry, set), undefined];
  });
  return [[entry.label, undefined, symbol, ...cells]];
}

/** A line for each part of a list; what is said of the list stands in its first. */
function placeRows(entry: ListEntry, unit: string, symbol: string): readonly (readonly Cell[])[] {
  const places = bothSets.map((set) => placesOf(notebook.value(set, entry), entry) ?? []);
  const count = Math.max(1, ...places.map(({ length }) => length));
  return Array.from({ length: count }, (_, at) => [
    entry.label,
    at + 1,
    symbol,
    ...bothSets.flatMap((set, column) => {
      const place = places[column]?.[at];
      const number = place?.si === undefined ? undefined : fromSI(place.si, unit);
      const spread = at === 0 ? notebook.display(set, entry).plusMinus : '';
      return [
        number ?? (place?.text === '' ? undefined : place?.text),
        spread === '' ? undefined : spread,
        ...(at === 0 ? said(entry, set) : [undefined, undefined]),
        notebook.value(set, entry).marks?.[at],
      ];
    }),
  ]);
}

/** Where a number is from, and its note. */
function said(entry: Entry, set: SetId): readonly Cell[] {
  const home = homeSet(set, entry);
  const standing = partStanding(home, entry);
  const { from, note } = notebook.value(home, entry);
  const own = standing === 'own' && from !== undefined ? fromWords[from] : standingWords[standing];
  return [own === '' ? undefined : own, standing === 'example' ? undefined : note];
}
