import type { Entry, SetId } from '../calculators/define.ts';
import { isReadersOwn } from '../calculators/readers-own.ts';
import { settle } from '../units/settle.ts';
import { means, sources } from './carried.ts';
import { exampleOf } from './example.ts';
import { nameOfSet } from './job-sets.ts';
import {
  bothSets,
  homeSet,
  isOfBoth,
  sameValue,
  type JobSets,
  type KeptSet,
  type SetValues,
  type StoredValue,
} from './values.ts';

/**
 * What stands where nothing was given:
 * - `example`: the invented example, in a job of the reader's that allows it.
 * - `nothing`: nothing for what only the reader can have, in a job that begins without numbers.
 * - `link`: the example, on a page that a link was not made on.
 * - `page`: the same on the page that it was made on; what the link leaves out, and can be left out, was empty there.
 * - `job`: nothing for what only the reader can have, since the link names all that a whole job has.
 */
export type Ground = 'example' | 'nothing' | 'link' | 'page' | 'job';

/**
 * The numbers in the two columns: which one stands, whose it is, and what it stands for. Who extends it says what was
 * written.
 */
export abstract class Columns {
  /** What other pages make of the numbers in each column, by the quantity that it fills. Worked, and so not kept. */
  #carried: Record<SetId, Record<string, StoredValue>> = $state({ baseline: {}, candidate: {} });
  #changes = 0;
  #revision = $state(0);

  /** The sets of the job, and which two are shown. */
  abstract get sets(): JobSets;
  /** What was written, by set and name. */
  protected abstract get values(): SetValues;
  protected abstract get ground(): Ground;

  /** Grows with everything that can change a value or how it is shown; for what follows later, and not at once. */
  get revision(): number {
    return this.#revision;
  }

  /**
   * The value of an entry: what the reader wrote, else what another page makes of the reader's numbers, else what
   * stands in the set that this one is the same as, else what {@link Ground} says. During a visit only the link's
   * numbers count, and never the reader's own, since numbers of two engines would make a believable wrong result.
   */
  value(set: SetId, entry: Entry): StoredValue {
    const given = this.#givenFor(set, entry);
    if (given !== undefined) return settle(given, entry);
    const example = exampleOf(this.#exampleSet(set, entry), entry);
    return this.#isLeftEmpty(entry) ? { text: '', unit: example.unit } : example;
  }

  /** True for an entry that a result needs and for which nothing stands. */
  isMissing(set: SetId, entry: Entry): boolean {
    if (entry.optional === true || entry.type === 'choice') return false;
    const given = this.#givenFor(set, entry);
    // A link of a job that lacks a number says so; a field of the reader's own that was emptied is wrong.
    if (given !== undefined) return this.#isOfLink && given.text.trim() === '';
    return this.#isLeftEmpty(entry);
  }

  /** True as long as the invented example stands there. A link's number that equals it counts as one. */
  isExample(set: SetId, entry: Entry): boolean {
    const stored = this.values[this.placeOf(set, entry)][entry.name];
    if (stored !== undefined && (this.ground === 'link' || this.ground === 'page'))
      return sameValue(settle(stored, entry), exampleOf(this.#exampleSet(set, entry), entry));
    return this.#givenFor(set, entry) === undefined && !this.#isLeftEmpty(entry);
  }

  /** What another page makes of the reader's numbers for an entry, whether it stands there or their own does. */
  carriedFor(
    set: SetId,
    entry: Entry,
  ): { readonly value: StoredValue; readonly stands: boolean } | undefined {
    const value = this.#carried[set][entry.name];
    return value && { value, stands: this.#givenFor(set, entry) === value };
  }

  /**
   * True for a number that the reader gave: for this set, for the set that it is the same as, or by what another page
   * makes of theirs. For quantities that each set has of its own.
   */
  isGiven(set: SetId, name: string): boolean {
    return this.#given(set, this.sets.shown[set], name) !== undefined;
  }

  /** True for a number that the reader gave, or the link does, and that was not emptied. */
  has(set: SetId, entry: Entry): boolean {
    return (this.#givenFor(set, entry)?.text.trim() ?? '') !== '';
  }

  /** What the set in a column is called. */
  setName(column: SetId): string {
    return nameOfSet(this.sets, this.sets.shown[column]);
  }

  /**
   * What the set is called in which the number of an entry was given, where the set of that column has none of its
   * own: both then have one and the same part.
   */
  sameAs(set: SetId, entry: Entry): string | undefined {
    const place = this.placeOf(set, entry);
    const owner = this.#ownerOf(place, entry.name);
    if (owner === place || this.#givenFor(set, entry) === undefined) return undefined;
    return nameOfSet(this.sets, owner);
  }

  /** True where both columns have one and the same part, so that an error of measuring it is one for both. */
  isOnePart(entry: Entry): boolean {
    const [one, other] = bothSets.map((set) => this.#ownerOf(this.placeOf(set, entry), entry.name));
    return one === other;
  }

  /** Fills a quantity with what another page makes of the reader's numbers; undefined takes it away. */
  carry(set: SetId, name: string, value: StoredValue | undefined): void {
    if (sameValue(this.#carried[set][name], value)) return;
    if (value === undefined) delete this.#carried[set][name];
    else this.#carried[set][name] = value;
    this.changed();
  }

  /** Other sets stand in the columns: what other pages made of their numbers is worked anew. */
  protected forgetCarried(): void {
    this.#carried = { baseline: {}, candidate: {} };
  }
  protected changed(): void {
    // Counted beside the state, so that a write inside an effect does not make the effect depend on it.
    this.#changes += 1;
    this.#revision = this.#changes;
  }
  /** The set in which the number of a column is kept. */
  protected placeOf(set: SetId, entry: Entry): KeptSet {
    return isOfBoth(entry) ? 'baseline' : this.sets.shown[set];
  }
  /** What was written for an entry, or for the set that its own is the same as; nothing that another page makes of it. */
  protected writtenFor(set: SetId, entry: Entry): StoredValue | undefined {
    const place = this.placeOf(set, entry);
    return this.values[place][entry.name] ?? this.#sameFor(place, entry.name);
  }
  /** What stands for an entry that has no number of its own: another page's, or another set's. */
  protected withoutOwn(set: SetId, entry: Entry): StoredValue | undefined {
    return this.#withoutOwn(homeSet(set, entry), this.placeOf(set, entry), entry.name);
  }

  get #isOfLink(): boolean {
    return this.ground !== 'example' && this.ground !== 'nothing';
  }
  /** True where no example stands for an entry that nobody has written. */
  #isLeftEmpty(entry: Entry): boolean {
    if (entry.type === 'choice') return false;
    const isOptional = entry.optional === true;
    switch (this.ground) {
      case 'nothing':
      case 'job':
        return isOptional || isReadersOwn(entry);
      case 'page':
        return isOptional;
      default:
        return false;
    }
  }
  /** The set of the example that stands in a column: the baseline's where the set is the same as that until it is changed. */
  #exampleSet(set: SetId, entry: Entry): SetId {
    const place = this.placeOf(set, entry);
    return place === 'candidate' && this.#baseOf(place) === undefined ? 'candidate' : 'baseline';
  }
  /** The set whose part stands in one that has none of its own; undefined where the example has one for it. */
  #baseOf(place: KeptSet): KeptSet | undefined {
    if (place === 'baseline' || this.#isOfLink) return undefined;
    return place === 'candidate' && this.ground === 'example' ? undefined : 'baseline';
  }
  /** The set whose part it is: its own where its number, or one that it is worked from, was given for it. */
  #ownerOf(place: KeptSet, name: string): KeptSet {
    const base = this.#baseOf(place);
    if (base === undefined || this.values[place][name] !== undefined) return place;
    const list = means[name];
    const needs = [...(sources[name]?.needs ?? []), ...(list === undefined ? [] : [list])];
    return needs.some((need) => this.#ownerOf(place, need) === place) ? place : base;
  }
  /** What was written for the set that another is the same as. One that was emptied says nothing of another set. */
  #sameFor(place: KeptSet, name: string): StoredValue | undefined {
    const base = this.#baseOf(place);
    const same = base === undefined ? undefined : this.values[base][name];
    return same?.text.trim() === '' ? undefined : same;
  }
  /** What was given for a quantity: for this set, worked on another page, or for the set that this one is the same as. */
  #given(set: SetId, place: KeptSet, name: string): StoredValue | undefined {
    return this.values[place][name] ?? this.#withoutOwn(set, place, name);
  }
  #givenFor(set: SetId, entry: Entry): StoredValue | undefined {
    return this.#given(homeSet(set, entry), this.placeOf(set, entry), entry.name);
  }
  #withoutOwn(set: SetId, place: KeptSet, name: string): StoredValue | undefined {
    const carried = this.#carried[set][name];
    const same = this.#sameFor(place, name);
    if (same === undefined) return carried;
    return carried !== undefined && this.#ownerOf(place, name) === place ? carried : same;
  }
}
