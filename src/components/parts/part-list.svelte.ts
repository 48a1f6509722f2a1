import { shortLabel } from '../../calculators/bench.ts';
import type { ListEntry, SetId } from '../../calculators/define.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { withUnit } from '../../units/format.ts';
import { doubleMark, withMark, type Marks } from '../../units/marks.ts';
import { joinedPlaces, placesOf, summaryOf, type Place, type Summary } from '../../units/places.ts';
import type { Shown } from '../../units/settle.ts';
import { takeApart } from '../../units/take-apart.ts';
import { RowUnit } from '../form/row-unit.svelte.ts';
import { partStanding, type PartStanding } from './part-standing.ts';

const noMarks: Marks = [];

/** What is derived of a list in one set: by itself, so that a key in a weight writes anew only what it changes. */
class PartColumn {
  readonly #set: SetId;
  readonly #entry: () => ListEntry;
  readonly display: Shown = $derived.by(() => notebook.display(this.#set, this.#entry()));
  readonly places: readonly Place[] | undefined = $derived.by(() =>
    placesOf(this.display, this.#entry(), shortLabel(this.#entry())),
  );
  readonly marks: Marks = $derived.by(
    () => notebook.value(this.#set, this.#entry()).marks ?? noMarks,
  );
  readonly summary: Summary | undefined = $derived.by(() => summaryOf(this.places ?? []));
  readonly standing: PartStanding = $derived.by(() => partStanding(this.#set, this.#entry()));

  constructor(set: SetId, entry: () => ListEntry) {
    this.#set = set;
    this.#entry = entry;
  }
}

/** A list with one weight a cylinder, place by place, in both sets. */
export class PartList {
  readonly #entry: () => ListEntry;
  readonly unit: RowUnit;
  readonly #columns: Readonly<Record<SetId, PartColumn>>;

  constructor(entry: () => ListEntry) {
    this.#entry = entry;
    this.unit = new RowUnit(entry);
    this.#columns = {
      baseline: new PartColumn('baseline', entry),
      candidate: new PartColumn('candidate', entry),
    };
  }

  /** What stands in each place of a set; undefined where its text can be parted in more than one way. */
  places(set: SetId): readonly Place[] | undefined {
    return this.#columns[set].places;
  }
  /** Whose weights stand in a set. */
  standing(set: SetId): PartStanding {
    return this.#columns[set].standing;
  }
  /** What the weights of a set come to; undefined where none gives a number. */
  summary(set: SetId): Summary | undefined {
    return this.#columns[set].summary;
  }

  /** What stands on the parts of a set. */
  marks(set: SetId): Marks {
    return this.#columns[set].marks;
  }
  /** Marks go with weights of the set's own: those of the example or of another set are marked there, if at all. */
  canMark(set: SetId): boolean {
    return this.standing(set) === 'own';
  }
  mark(set: SetId, at: number, mark: string): void {
    const entry = this.#entry();
    notebook.put(set, entry.name, { marks: withMark(this.marks(set), at, mark) }, entry);
  }
  /** True for a part whose mark another part of the set has as well. */
  isDouble(set: SetId, at: number): boolean {
    const marks = this.marks(set);
    const double = doubleMark(marks);
    return double !== undefined && marks[at] === double;
  }

  /** What a place shows whose row stands in the row's unit: one in another unit names it. */
  shown(set: SetId, at: number): string {
    const { places, display } = this.#columns[set];
    return this.#named(places?.[at]?.text ?? '', display.unit);
  }

  /**
   * Writes one place. The others stay as they are, but for those of the example or of another set: the first weight of
   * this set's own stands alone.
   */
  write(set: SetId, at: number, typed: string): void {
    const { places = [], standing, display } = this.#columns[set];
    const before = standing === 'own' ? places : [];
    const texts = Array.from({ length: Math.max(before.length, at + 1) }, (_, place) =>
      place === at ? typed : this.#named(before[place]?.text ?? '', display.unit),
    );
    this.put(set, texts, this.unit.id);
  }

  /** Writes all places, in a unit of their own; with nothing in any of them nothing is written. */
  put(set: SetId, texts: readonly string[], unit: string): void {
    const entry = this.#entry();
    const text = joinedPlaces(texts, entry, unit);
    if (text === '') notebook.clear(set, entry.name);
    else notebook.put(set, entry.name, { text, unit }, entry);
  }

  /** A text of a list that stands in `unit`, for a row that may stand in another. */
  #named(text: string, unit: string): string {
    const plain = text.replaceAll('\u00a0', ' ');
    const typed = unit === this.unit.id ? undefined : takeApart(plain, unit);
    return typed === undefined || typed.unit !== undefined ? plain : withUnit(plain, unit);
  }
}
