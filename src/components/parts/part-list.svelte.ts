import { shortLabel } from '../../calculators/bench.ts';
import type { ListEntry, SetId } from '../../calculators/define.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { withUnit } from '../../units/format.ts';
import { doubleMark, withMark, type Marks } from '../../units/marks.ts';
import { joinedPlaces, placesOf, summaryOf, type Place, type Summary } from '../../units/places.ts';
import { takeApart } from '../../units/take-apart.ts';
import { RowUnit } from '../form/row-unit.svelte.ts';
import { partStanding } from './part-standing.ts';

/** A list with one weight a cylinder, place by place, in both sets. */
export class PartList {
  readonly #entry: () => ListEntry;
  readonly unit: RowUnit;
  readonly #baseline: readonly Place[] | undefined = $derived.by(() => this.#read('baseline'));
  readonly #candidate: readonly Place[] | undefined = $derived.by(() => this.#read('candidate'));
  // Derived, so that a key in a weight does not write sixteen marks anew.
  readonly #baselineMarks: Marks | undefined = $derived.by(() => this.#readMarks('baseline'));
  readonly #candidateMarks: Marks | undefined = $derived.by(() => this.#readMarks('candidate'));

  constructor(entry: () => ListEntry) {
    this.#entry = entry;
    this.unit = new RowUnit(entry);
  }

  /** What stands in each place of a set; undefined where its text can be parted in more than one way. */
  places(set: SetId): readonly Place[] | undefined {
    return set === 'baseline' ? this.#baseline : this.#candidate;
  }

  /** What stands on the parts of a set. */
  marks(set: SetId): Marks {
    return (set === 'baseline' ? this.#baselineMarks : this.#candidateMarks) ?? [];
  }
  /** Marks go with weights of the set's own: those of the example or of another set are marked there, if at all. */
  canMark(set: SetId): boolean {
    return partStanding(set, this.#entry()) === 'own';
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

  /** What those come to; undefined where none gives a number. */
  summary(set: SetId): Summary | undefined {
    return summaryOf(this.places(set) ?? []);
  }

  /** What a place shows whose row stands in the row's unit: one in another unit names it. */
  shown(set: SetId, at: number): string {
    const { unit } = notebook.display(set, this.#entry());
    return this.#named(this.places(set)?.[at]?.text ?? '', unit);
  }

  /**
   * Writes one place. The others stay as they are, but for those of the example or of another set: the first weight of
   * this set's own stands alone.
   */
  write(set: SetId, at: number, typed: string): void {
    const entry = this.#entry();
    const { unit } = notebook.display(set, entry);
    const before = partStanding(set, entry) === 'own' ? (this.places(set) ?? []) : [];
    const texts = Array.from({ length: Math.max(before.length, at + 1) }, (_, place) =>
      place === at ? typed : this.#named(before[place]?.text ?? '', unit),
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

  #readMarks(set: SetId): Marks | undefined {
    return notebook.value(set, this.#entry()).marks;
  }
  #read(set: SetId): readonly Place[] | undefined {
    const entry = this.#entry();
    return placesOf(notebook.display(set, entry), entry, shortLabel(entry));
  }

  /** A text of a list that stands in `unit`, for a row that may stand in another. */
  #named(text: string, unit: string): string {
    const plain = text.replaceAll('\u00a0', ' ');
    const typed = unit === this.unit.id ? undefined : takeApart(plain, unit);
    return typed === undefined || typed.unit !== undefined ? plain : withUnit(plain, unit);
  }
}
