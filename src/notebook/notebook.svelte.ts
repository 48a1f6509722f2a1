import type { Entry, SetId } from '../calculators/define.ts';
import { dictionary, links, loadDictionary } from './dictionary.ts';
import { settle, shownIn, written, type Shown } from '../units/settle.ts';
import { isReadersOwn } from '../calculators/readers-own.ts';
import { OwnNumbers, type Moved } from './own-numbers.svelte.ts';
import { openJobKey, openShelf, visitKey, type Shelf } from './storage.ts';
import { shownViews } from './shown-views.svelte.ts';
import type { Was } from './then.ts';
import type { Shared } from './sharing.ts';
import { exampleOf } from './example.ts';
import { isLink } from './is-link.ts';
import { bringsNumbersFor } from './moved.ts';
import { named, nameOfSet, plainSets } from './job-sets.ts';
import { sources } from './carried.ts';
import {
  bothSets,
  countValues,
  emptySets,
  homeSet,
  isOfBoth,
  mapSets,
  sameValue,
  type Contents,
  type JobSets,
  type KeptSet,
  type Letter,
  type SetValues,
  type StoredValue,
  type WritableSets,
} from './values.ts';
import type { Visit } from './visit.ts';
import { browserWorld, isShared, type World } from './world.ts';

/** What a file would change, to be shown before it is opened. */
export interface Offer {
  readonly contents: Contents;
  /** How many values it holds. */
  readonly numbers: number;
  /** How many of the reader's own values it would put away. */
  readonly putAway: number;
  readonly problems: readonly string[];
}

/**
 * The reader's numbers, shared by all parts of a page and kept in the browser. Without a world, on the
 * server, it shows the examples and ignores every write: one process renders all pages for all readers.
 */
export class Notebook {
  readonly #world: World | undefined;
  /** What the device keeps, of all jobs. */
  readonly device: Shelf;
  readonly #tab: Shelf;
  readonly #own: OwnNumbers;
  #visit:
    | (Omit<Visit, 'job' | 'values' | 'isChanged'> & {
        job: string;
        values: WritableSets;
        isChanged?: boolean;
      })
    | undefined = $state();
  /** What other pages make of the numbers in each column, by the quantity that it fills. Worked, and so not kept. */
  #carried: Record<SetId, Record<string, StoredValue>> = $state({ baseline: {}, candidate: {} });
  #refusal: string | undefined = $state();
  #wasInFile: string | undefined = $state();
  #changes = 0;
  #revision = $state(0);

  constructor(world?: World) {
    this.#world = world;
    this.device = openShelf(() => world?.local());
    this.#tab = openShelf(() => world?.session());
    this.#own = new OwnNumbers(this.device, this.#tab);
    if (world !== undefined)
      this.#enter(this.#tab.get(openJobKey) ?? this.device.get(openJobKey) ?? '');
  }

  /**
   * Shows the numbers of the link in the address, or of the visit that goes on in this tab, if there are any. Needs
   * {@link loadDictionary} to have run.
   */
  open(): void {
    this.#readVisit();
    this.arrive(this.#world?.revisited ?? false);
  }

  /** Grows with everything that can change a value or how it is shown; for what follows later, and not at once. */
  get revision(): number {
    return this.#revision;
  }

  /** The system that fields are shown in. Stored values do not change with it. */
  get system(): 'metric' | 'inch' {
    return this.#own.system;
  }
  setSystem(system: 'metric' | 'inch'): void {
    if (this.#world === undefined) return;
    this.#own.measureIn(system);
    this.#changed();
  }

  /** The id of the job that is open in this tab; empty for the first. */
  get jobId(): string {
    return this.#own.id;
  }
  /** Opens another job of the device, in this tab and for tabs to come. A visit ends. */
  openJob(id: string): void {
    if (this.#world === undefined) return;
    this.keepHistory();
    this.#enter(id);
    this.device.set(openJobKey, this.#own.id);
    if (this.#visit !== undefined) this.leaveVisit();
  }

  /** The label of the job: of the visit while there is one. */
  get job(): string {
    return this.#visit?.job ?? this.#own.label;
  }
  set job(job: string) {
    if (this.#world === undefined) return;
    if (this.#visit !== undefined) {
      this.#visit.job = job;
      this.#keepVisit();
      return;
    }
    this.#own.call(job);
    this.#changed();
  }

  /** The sets of the job, and which two are shown. A link has two. */
  get sets(): JobSets {
    if (this.#visit === undefined) return this.#own.sets;
    const [first = '', second = ''] = this.#visit.letter?.sets?.split('\n') ?? [];
    return named(named(plainSets, 'baseline', first), 'candidate', second);
  }
  /** Names the sets, adds one or lays others side by side. Nothing of a link that is visited. */
  arrange(sets: JobSets): void {
    if (this.#world === undefined || this.#visit !== undefined) return;
    this.#own.arrange(sets);
    this.#carried = { baseline: {}, candidate: {} };
    this.#changed();
  }
  /** What the set in a column is called. */
  setName(column: SetId): string {
    return nameOfSet(this.sets, this.sets.shown[column]);
  }
  /** The reader's own values of a set of the job, by name. */
  ownOf(set: KeptSet): Readonly<Record<string, StoredValue>> {
    return this.#own.values[set];
  }
  /** Puts `values` in the place of all that a set has of its own. */
  refill(set: KeptSet, values: Readonly<Record<string, StoredValue>>): void {
    if (this.#world === undefined) return;
    this.together(() => {
      for (const name of Object.keys(this.#own.values[set]))
        if (!Object.hasOwn(values, name)) this.#own.remove(set, name);
      for (const [name, value] of Object.entries(values)) this.#own.write(set, name, value);
    });
    this.#changed();
  }

  /** Makes one step back of all that `act` writes. */
  together(act: () => void): void {
    this.#own.together(act);
  }
  get canUndo(): boolean {
    void this.#revision;
    return this.#visit === undefined && this.#own.canUndo;
  }
  get canRedo(): boolean {
    void this.#revision;
    return this.#visit === undefined && this.#own.canRedo;
  }
  /** Takes the last step back, of the job's numbers and its name; undefined where there is none. */
  undo(): Moved | undefined {
    return this.canUndo ? this.#moved(this.#own.undo()) : undefined;
  }
  /** Does again what was taken back last. */
  redo(): Moved | undefined {
    return this.canRedo ? this.#moved(this.#own.redo()) : undefined;
  }
  /** Lets the steps back outlive the page. */
  keepHistory(): void {
    this.#own.keepHistory();
  }

  /**
   * The value of an entry: what the reader wrote, else what another page makes of the reader's numbers, else what
   * stands in the set that this one is the same as, else the invented example; in a job that begins without numbers
   * nothing stands for what only the reader can have. During a visit only the link's numbers count: what it does not
   * name is the example, or empty where a calculator can do without it, and never the reader's own, since numbers of
   * two engines would make a believable wrong result.
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
    // A link of a job that lacks a number says so.
    if (this.#visit !== undefined && given?.text.trim() === '') return true;
    return given === undefined && this.#isLeftEmpty(entry);
  }

  /** True as long as the invented example stands there. A link's number that equals it counts as one. */
  isExample(set: SetId, entry: Entry): boolean {
    const stored = this.#values[this.#placeOf(set, entry)][entry.name];
    // Nor is any number of a whole job one: none of the example was sent with it.
    if (stored === undefined || this.#visit?.letter?.say !== undefined || this.#visit === undefined)
      return this.#givenFor(set, entry) === undefined && !this.#isLeftEmpty(entry);
    return sameValue(settle(stored, entry), exampleOf(this.#exampleSet(set, entry), entry));
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

  /**
   * What the set is called in which the number of an entry was given, where the set of that column has none of its
   * own: both then have one and the same part.
   */
  sameAs(set: SetId, entry: Entry): string | undefined {
    const place = this.#placeOf(set, entry);
    const owner = this.#ownerOf(place, entry.name);
    if (owner === place || this.#givenFor(set, entry) === undefined) return undefined;
    return nameOfSet(this.sets, owner);
  }
  /** True where both columns have one and the same part, so that an error of measuring it is one for both. */
  isOnePart(entry: Entry): boolean {
    const [one, other] = (['baseline', 'candidate'] as const).map((set) =>
      this.#ownerOf(this.#placeOf(set, entry), entry.name),
    );
    return one === other;
  }

  /** Fills a quantity with what another page makes of the reader's numbers; undefined takes it away. */
  carry(set: SetId, name: string, value: StoredValue | undefined): void {
    if (sameValue(this.#carried[set][name], value)) return;
    if (value === undefined) delete this.#carried[set][name];
    else this.#carried[set][name] = value;
    this.#changed();
  }

  /** What the field shows in the reader's system. */
  display(set: SetId, entry: Entry): Shown {
    return shownIn(this.system, this.value(set, entry), entry);
  }

  /** Writes what was typed, readable or not. The visit's numbers while there is a visit, else the reader's own. */
  put(set: SetId, name: string, patch: Partial<StoredValue>, entry: Entry): void {
    if (this.#world === undefined) return;
    const place = this.#placeOf(set, entry);
    const stored = this.#values[place][name];
    // Where another page or another set gives the number, an emptied field is one that nobody has written.
    const isElsewhere = this.#withoutOwn(homeSet(set, entry), place, name) !== undefined;
    if (patch.text?.trim() === '' && isElsewhere) {
      this.clear(set, name);
      return;
    }
    const before = this.value(set, entry);
    // The ± of the example is not the reader's: a number of their own is exact until they say otherwise.
    const own = stored === undefined ? { text: before.text, unit: before.unit } : before;
    this.#write(place, name, written(own, patch, entry, this.display(set, entry)));
  }

  /** Takes a value out, so that what it stood before comes back. */
  clear(set: SetId, name: string): void {
    if (this.#world === undefined) return;
    const entry = dictionary().get(name);
    const place = entry === undefined ? this.sets.shown[set] : this.#placeOf(set, entry);
    if (this.#visit === undefined) this.#own.remove(place, name);
    else {
      delete this.#visit.values[place][name];
      this.#visit.isChanged = true;
      this.#keepVisit();
    }
    this.#changed();
  }

  /** The link being visited; undefined when the reader's own numbers are shown. */
  get visiting():
    | { readonly job: string; readonly letter?: Letter; readonly problems: readonly string[] }
    | undefined {
    return this.#visit;
  }
  /**
   * What the results were when the link that is visited was made, or the file that was opened last was saved; undefined
   * once a number was changed since, and where they do not say.
   */
  get was(): string | undefined {
    if (this.#visit === undefined) return this.#wasInFile;
    return this.#visit.isChanged === true ? undefined : this.#visit.letter?.was;
  }
  /** True when the reader has written something on this device: a number, or the label of a job. */
  get hasOwn(): boolean {
    return this.#own.label !== '' || countValues(this.#own.values) > 0;
  }
  /** How many of the reader's own values {@link keepVisit} would change. */
  get visitReplaces(): number {
    return this.#visit === undefined
      ? 0
      : links().countReplaced(this.#own.values, this.#visit.values);
  }
  /** Writes the visit's numbers over the reader's own, name by name; returns how many of their own changed. */
  keepVisit(): number {
    if (this.#visit === undefined) return 0;
    const replaced = this.visitReplaces;
    const kept = links().overlaid(this.#own.contents, this.#visit);
    // They stand in the first two sets.
    this.#replace({ ...kept, sets: { ...this.#own.sets, shown: plainSets.shown } });
    this.leaveVisit();
    return replaced;
  }
  /** Returns to the reader's own numbers; those of the link are dropped. */
  leaveVisit(): void {
    this.#visit = undefined;
    this.#changed();
    this.#keepVisit();
    this.#world?.dropHash();
  }

  /** One or more sentences about what could not be kept or read; undefined when all is well. */
  get notice(): string | undefined {
    const refused = this.#refusal === undefined ? [] : [this.#refusal];
    const said = [...refused, ...this.#own.notices];
    return said.length === 0 ? undefined : said.join(' ');
  }

  /** All that is shown and not an example, for a file: the visit's numbers while there is a visit. */
  get contents(): Contents {
    return this.#visit === undefined
      ? this.#own.contents
      : { job: this.#visit.job, values: copied(this.#visit.values) };
  }

  /** What opening a file's contents would do. Changes nothing. */
  offer(contents: Contents, problems: readonly string[] = []): Offer {
    const admitted = links().admit(contents.values, dictionary(), true);
    return {
      contents: { ...contents, values: admitted.values },
      numbers: countValues(admitted.values),
      putAway: countValues(this.#own.values),
      problems: [...problems, ...admitted.problems],
    };
  }
  /** Makes the offered contents the reader's notebook. What was there before is kept for {@link restorePrevious}. */
  accept(offer: Offer): void {
    this.#replace(offer.contents);
    this.#wasInFile = offer.contents.was;
    if (this.#visit !== undefined) this.leaveVisit();
  }
  /** True when a notebook was put away and can be brought back. */
  get canRestore(): boolean {
    return this.#own.hasPrevious;
  }
  /** Brings back the notebook that was put away last, and puts the present one away instead. */
  restorePrevious(): void {
    const previous = links().parseVisit(this.#own.previous);
    if (previous !== undefined) this.#replace(previous);
  }

  /**
   * The link to this page with the values of `entries` in both sets, examples included: a link must not
   * change with the site's defaults. Names that an opened link brought and nothing here knows travel on.
   * `problems` says what whoever opens it would be told.
   */
  linkFor(entries: readonly Entry[], results: readonly Was[] = []): Shared {
    return links().share(
      this.#world?.address() ?? '',
      { job: this.job, sets: this.#setNames, was: links().writeThen(results) },
      entries,
      (set, entry) => this.value(set, entry),
      this.#visit?.values ?? emptySets(),
      // Without a visit there are no names but the page's own, and the whole dictionary need not be fetched.
      new Map([...dictionary(), ...entries.map((entry) => [entry.name, entry] as const)]),
      shownViews.text,
    );
  }

  /**
   * The link to another page with all of the reader's own numbers in the two sets shown, and none of the example but what
   * is assumed, so that whoever opens it has the same results. Needs {@link loadDictionary}.
   *
   * @param address of that page
   * @param letter what it says beside the numbers
   * @param used the quantities that its results take
   */
  linkOfJob(address: string, letter: Letter, used: ReadonlySet<string>): Shared {
    const own = (set: SetId, entry: Entry): StoredValue | undefined => {
      const place = this.#placeOf(set, entry);
      const base = this.#baseOf(place);
      const given =
        this.#values[place][entry.name] ??
        (base === undefined ? undefined : this.#values[base][entry.name]);
      if (given !== undefined) return given;
      const isAssumed = entry.type !== 'choice' && !isReadersOwn(entry);
      return used.has(entry.name) && isAssumed && this.isExample(set, entry)
        ? this.value(set, entry)
        : undefined;
    };
    return links().shareJob(
      address,
      { job: this.job, sets: this.#setNames, ...letter },
      own,
      dictionary(),
    );
  }

  /** Reads everything stored anew, when the page comes back from the browser's cache. Needs {@link loadDictionary}. */
  reread(): void {
    this.#own.read();
    this.#readVisit();
  }

  /**
   * Opens the link in the address, if it is one. One that gives nothing ends the visit of another link too: its job
   * and numbers would pass for those of the link just opened.
   *
   * @param again the page was come back to: a visit of the same link goes on as it was left.
   */
  arrive(again: boolean): void {
    const hash = this.#world?.hash() ?? '';
    if (!isLink(hash)) return;
    if (again && this.#visit?.from === hash) return;
    const arrival = links().arrive(hash, dictionary());
    if (arrival === undefined) return;
    this.#refusal = 'say' in arrival ? arrival.say : undefined;
    if ('say' in arrival) this.#visit = undefined;
    else
      this.#visit = {
        ...arrival.visit,
        at: this.#world?.address() ?? '',
        values: copied(arrival.visit.values),
      };
    shownViews.open(this.#visit?.view ?? '');
    this.#changed();
    this.#keepVisit();
  }

  /** Another tab changed the storage: takes over the value of that key, or everything when it was emptied. */
  follow(on: string | null): void {
    if (this.#own.follow(on)) this.#changed();
  }

  /** True where the link of the visit says all: what it leaves out here was left empty, on a page that was a part of its own too. */
  get #isOnPageOfLink(): boolean {
    if (this.#visit === undefined) return false;
    const { at } = this.#visit;
    const here = this.#world?.address() ?? '';
    if (at === undefined || here.startsWith(at) || at.startsWith(here)) return true;
    return bringsNumbersFor(here, at, this.#visit.values);
  }
  /** True where no example stands for an entry that nobody has written. */
  #isLeftEmpty(entry: Entry): boolean {
    if (entry.type === 'choice') return false;
    const isAsked = entry.optional === true || isReadersOwn(entry);
    if (this.#visit === undefined) return this.#own.isBare && isAsked;
    // A link of a whole job names all that it has; any other all that its page asks for.
    if (this.#visit.letter?.say !== undefined) return isAsked;
    return entry.optional === true && this.#isOnPageOfLink;
  }
  get #values(): SetValues {
    return this.#visit?.values ?? this.#own.values;
  }
  /** What the sets shown are called, for a link; empty where the reader has named neither. */
  get #setNames(): string {
    const { names, shown } = this.sets;
    const own = bothSets.map((set) => names[shown[set]] ?? '');
    return own.every((name) => name === '') ? '' : own.join('\n');
  }
  /** The set in which the number of a column is kept. */
  #placeOf(set: SetId, entry: Entry): KeptSet {
    return isOfBoth(entry) ? 'baseline' : this.sets.shown[set];
  }
  /** The set of the example that stands in a column: the baseline's where the set is the same as that until it is changed. */
  #exampleSet(set: SetId, entry: Entry): SetId {
    const place = this.#placeOf(set, entry);
    return place === 'candidate' && this.#baseOf(place) === undefined ? 'candidate' : 'baseline';
  }
  /** The set whose part stands in one that has none of its own; undefined where the example has one for it. */
  #baseOf(place: KeptSet): KeptSet | undefined {
    if (place === 'baseline' || this.#visit !== undefined) return undefined;
    return place === 'candidate' && !this.#own.isBare ? undefined : 'baseline';
  }
  /** The set whose part it is: its own where its number, or one that it is worked from, was given for it. */
  #ownerOf(place: KeptSet, name: string): KeptSet {
    const base = this.#baseOf(place);
    if (base === undefined || this.#values[place][name] !== undefined) return place;
    const needs = sources[name]?.needs ?? [];
    return needs.some((need) => this.#ownerOf(place, need) === place) ? place : base;
  }
  /** What was given for a quantity: for this set, worked on another page, or for the set that this one is the same as. */
  #given(set: SetId, place: KeptSet, name: string): StoredValue | undefined {
    return this.#values[place][name] ?? this.#withoutOwn(set, place, name);
  }
  #givenFor(set: SetId, entry: Entry): StoredValue | undefined {
    return this.#given(homeSet(set, entry), this.#placeOf(set, entry), entry.name);
  }
  #withoutOwn(set: SetId, place: KeptSet, name: string): StoredValue | undefined {
    const carried = this.#carried[set][name];
    const base = this.#baseOf(place);
    const same = base === undefined ? undefined : this.#values[base][name];
    // One that was emptied says nothing of another set.
    if (same === undefined || same.text.trim() === '') return carried;
    return carried !== undefined && this.#ownerOf(place, name) === place ? carried : same;
  }
  #write(place: KeptSet, name: string, value: StoredValue): void {
    this.#wasInFile = undefined;
    if (this.#visit === undefined) this.#own.write(place, name, value);
    else {
      this.#visit.values[place][name] = value;
      this.#visit.isChanged = true;
      this.#keepVisit();
    }
    this.#changed();
  }
  #moved(moved: Moved | undefined): Moved | undefined {
    this.#changed();
    return moved;
  }
  #changed(): void {
    // Counted beside the state, so that a write inside an effect does not make the effect depend on it.
    this.#changes += 1;
    this.#revision = this.#changes;
  }
  #keepVisit(): void {
    // The tab's storage only carries a visit to other pages; where it is refused, this page still has it.
    if (this.#visit === undefined) this.#tab.remove(visitKey);
    else this.#tab.set(visitKey, links().writeVisit(this.#visit));
  }
  /** Goes to a job; an id that cannot be one's is the first. The tab keeps to it, whatever others open. */
  #enter(id: string): void {
    this.#own.enter(id);
    this.#carried = { baseline: {}, candidate: {} };
    this.#changed();
  }
  #readVisit(): void {
    const visiting = this.#tab.get(visitKey);
    const visit = visiting === undefined ? undefined : links().parseVisit(visiting);
    this.#visit = visit === undefined ? undefined : { ...visit, values: copied(visit.values) };
    shownViews.open(visit?.view ?? '');
    this.#changed();
  }
  #replace(contents: Contents): void {
    this.#own.replace(contents);
    this.#changed();
  }
}

function copied(values: SetValues): WritableSets {
  return mapSets((set) => values[set]);
}

/**
 * The one notebook of the page. It holds the reader's own numbers as the module loads, before any field can write: a
 * number typed before the page's code arrived must not find an empty notebook and wipe what is stored.
 */
export const notebook = new Notebook(typeof window === 'undefined' ? undefined : browserWorld());

/** Done when the numbers of a link are there as well; nothing of the page may come to life before. */
export const opened: Promise<void> =
  typeof window !== 'undefined' && namesFromOutside()
    ? loadDictionary().then(() => {
        notebook.open();
      })
    : Promise.resolve();

/** True when the address or the tab's storage brings names that this page's calculators may not know. */
function namesFromOutside(): boolean {
  try {
    return isLink(location.hash) || sessionStorage.getItem(visitKey) !== null;
  } catch {
    // Storage is forbidden: the address alone can bring any.
    return isLink(location.hash);
  }
}

if (typeof window !== 'undefined') {
  window.addEventListener('pagehide', () => {
    notebook.keepHistory();
  });
  window.addEventListener('storage', ({ key, storageArea }) => {
    if (isShared(storageArea)) notebook.follow(key);
  });
  window.addEventListener('hashchange', () => {
    void loadDictionary().then(() => notebook.arrive(false));
  });
  window.addEventListener('pageshow', ({ persisted }) => {
    if (!persisted) return;
    void loadDictionary().then(() => {
      notebook.reread();
      notebook.arrive(true);
    });
  });
}
