import { shortLabel } from '../../calculators/bench.ts';
import type { ListEntry } from '../../calculators/define.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { bothSets } from '../../notebook/values.ts';
import { readPasted, type PastedAs, type PastedColumn } from '../../units/pasted/columns.ts';
import { joinedPlaces, placesOf, type Place } from '../../units/places.ts';
import { cylindersOf } from './cylinders.ts';
import { partStanding } from './part-standing.ts';
import {
  columnPlaces,
  likelyTargets,
  targetId,
  targetWords,
  type Target,
} from './pasted-columns.ts';

/** A pasted column with where it goes, in which unit it is read, and what it then gives. */
export interface GoingColumn extends PastedColumn {
  readonly target: Target | undefined;
  readonly unit: string;
  readonly places: readonly Place[];
}

/** What was pasted, how it is understood, and where each of its columns goes; nothing is written before {@link take}. */
export class Pasting {
  readonly #list: ListEntry;
  readonly #lists: readonly ListEntry[];
  readonly #given: string;
  #edited: string | undefined = $state();
  #as: PastedAs = $state.raw({});
  /** What the reader says of columns, by their places. */
  #targets: Readonly<Record<number, string>> = $state.raw({});
  #units: Readonly<Record<number, string>> = $state.raw({});

  /**
   * @param given the text; empty where it is still to be pasted
   * @param list the list that it was asked for at
   * @param lists all that a column can go to
   */
  constructor(given: string, list: ListEntry, lists: readonly ListEntry[]) {
    this.#given = given;
    this.#list = list;
    this.#lists = lists;
  }

  get text(): string {
    return this.#edited ?? this.#given;
  }
  set text(text: string) {
    this.#edited = text;
    this.understand({ separator: undefined, turned: undefined, from: undefined, to: undefined });
  }

  readonly pasted = $derived.by(() => readPasted(this.text, this.#list, this.#as));
  readonly targets = $derived.by(() =>
    (['weights', 'marks'] as const).flatMap((of) =>
      this.#lists.flatMap((list) => bothSets.map((set): Target => ({ list, set, of }))),
    ),
  );
  readonly columns: readonly GoingColumn[] = $derived.by(() => {
    const { pasted } = this;
    if ('say' in pasted) return [];
    const likely = likelyTargets(pasted, this.#lists, this.#list);
    return pasted.columns.map((column, at) => {
      const said = this.#targets[at];
      const target =
        said === undefined ? likely[at] : this.targets.find((one) => targetId(one) === said);
      const list = target?.list ?? this.#list;
      const unit = this.#units[at] ?? column.unit ?? list.metric;
      return { ...column, target, unit, places: columnPlaces(column.cells, list, unit) };
    });
  });
  readonly #aimed = $derived.by(() =>
    this.columns.flatMap(({ target, ...column }) =>
      target === undefined ? [] : [{ target, ...column }],
    ),
  );
  /** Those that give weights to somewhere, and those that give marks. */
  readonly #going = $derived.by(() => this.#aimed.filter(({ target }) => target.of === 'weights'));
  readonly #marks = $derived.by(() => this.#aimed.filter(({ target }) => target.of === 'marks'));
  readonly lines = $derived.by(() => Math.max(0, ...this.columns.map(({ cells }) => cells.length)));
  /** How many cells give a weight. */
  readonly weights = $derived.by(
    () => this.#going.flatMap(({ places }) => places.filter(({ si }) => si !== undefined)).length,
  );
  /** Cells that are no weight and go somewhere all the same. */
  readonly odd = $derived.by(() =>
    this.#going.flatMap(({ target, places }) =>
      places.flatMap(({ text, problem }, at) =>
        problem === undefined ? [] : [{ target, text, at, problem }],
      ),
    ),
  );

  /** Why it cannot be taken as it stands; undefined where it can. */
  get obstacle(): string | undefined {
    const ids = this.#aimed.map(({ target }) => targetId(target));
    if (new Set(ids).size < ids.length)
      return 'Two columns go to the same place. Choose another for one of them.';
    const long = this.#going.find(({ target, places }) => places.length > target.list.most);
    if (long !== undefined)
      return `${shortLabel(long.target.list)} take at most ${String(long.target.list.most)}; this column has ${String(long.places.length)}. Choose fewer lines.`;
    const bare = this.#marks.find(({ target }) => !this.#isWeighed(target));
    if (bare !== undefined)
      return `${targetWords(bare.target)}: marks go with weights. Paste both together, or the weights first.`;
    return this.#aimed.every(({ cells, places, target }) =>
      target.of === 'marks' ? cells.every((cell) => cell === '') : places.length === 0,
    )
      ? 'No column of numbers is chosen.'
      : undefined;
  }

  /** How many weights of the reader's are replaced where a column goes. */
  replaces({ list, set, of }: Target): number {
    if (of === 'marks' || partStanding(set, list) !== 'own') return 0;
    const places = placesOf(notebook.value(set, list), list) ?? [];
    return places.filter(({ text }) => text !== '').length;
  }

  /** True where a list has weights of the reader's, or gets them now. */
  #isWeighed({ list, set }: Target): boolean {
    return (
      partStanding(set, list) === 'own' ||
      this.#going.some(({ target }) => target.list === list && target.set === set)
    );
  }

  /** What is worth knowing before it is taken. */
  get remarks(): readonly string[] {
    return this.#going.flatMap(({ target, cells, places }) => {
      const name = targetWords(target);
      const cylinders = cylindersOf(target.set);
      const blank = this.lines - cells.filter((cell) => cell !== '').length;
      return [
        blank === 0 ? '' : `${name}: ${String(blank)} blank, kept as still to be weighed.`,
        cylinders !== undefined && places.length > cylinders
          ? `${name}: ${String(places.length)} for ${String(cylinders)} cylinders.`
          : '',
      ].filter(Boolean);
    });
  }

  /** Columns and lines that are taken nowhere. */
  get leftOut(): readonly string[] {
    const columns = this.columns.flatMap(({ target, heading, holds }, at) =>
      target === undefined && holds !== 'places'
        ? [heading === '' ? `column ${String(at + 1)}` : `column “${heading}”`]
        : [],
    );
    const rest = 'say' in this.pasted ? [] : this.pasted.rest;
    return [...columns, ...rest.map((line) => `line “${line.filter(Boolean).join(' ')}”`)];
  }

  /** Says how the text is to be understood; what was said of columns is forgotten, since they are others now. */
  understand(change: PastedAs): void {
    this.#as = { ...this.#as, ...change };
    this.#targets = {};
    this.#units = {};
  }
  lead(column: number, target: string): void {
    this.#targets = { ...this.#targets, [column]: target };
  }
  measure(column: number, unit: string): void {
    this.#units = { ...this.#units, [column]: unit };
  }

  /** Writes every column to its list, as one step back; returns what was done, and which lists were filled. */
  take(): { readonly words: string; readonly lists: readonly string[] } {
    const going = this.#going.filter(({ places }) => places.length > 0);
    // Where a column is likely to go changes with what is written.
    const marks = this.#marks;
    const told = going.map(({ target, places }) => {
      const count = places.filter(({ si }) => si !== undefined).length;
      return `${targetWords(target)}: ${String(count)} taken.`;
    });
    for (const { target, text, at } of this.odd)
      told.push(
        `“${text}” is no weight; it stands in ${targetWords(target)}, line ${String(at + 1)}, until you mend it.`,
      );
    if (this.leftOut.length > 0) told.push(`Not taken: ${this.leftOut.join(', ')}.`);
    for (const { target, cells } of marks)
      told.push(`${targetWords(target)}: ${String(cells.filter(Boolean).length)} taken.`);
    notebook.together(() => {
      for (const { target, unit, places } of going) {
        const texts = places.map(({ text }) => text);
        const text = joinedPlaces(texts, target.list, unit);
        // Other parts: what stood on those before does not stand on these.
        notebook.put(target.set, target.list.name, { text, unit, marks: undefined }, target.list);
      }
      for (const { target, cells } of marks)
        notebook.put(target.set, target.list.name, { marks: cells }, target.list);
    });
    const filled = [...going, ...marks].map(({ target }) => target.list.name);
    return { words: told.join(' '), lists: filled };
  }
}
