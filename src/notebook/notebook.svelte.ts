import type { Entry, SetId } from '../calculators/define.ts';
import { isReadersOwn } from '../calculators/readers-own.ts';
import { shownIn, written, type Shown } from '../units/settle.ts';
import { Columns, type Ground } from './columns.svelte.ts';
import { dictionary, links, loadDictionary } from './dictionary.ts';
import { isLink } from './is-link.ts';
import { plainSets } from './job-sets.ts';
import { OwnNumbers, type Moved } from './own-numbers.svelte.ts';
import type { Shared } from './sharing.ts';
import { shownViews } from './shown-views.svelte.ts';
import { openJobKey, openShelf, visitKey, type Shelf } from './storage.ts';
import type { Was } from './then.ts';
import {
  bothSets,
  countValues,
  emptySets,
  isOfJob,
  mapSets,
  type Contents,
  type JobSets,
  type KeptSet,
  type Letter,
  type SetValues,
  type StoredValue,
} from './values.ts';
import type { Visit } from './visit.ts';
import { Visiting } from './visiting.svelte.ts';
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
export class Notebook extends Columns {
  readonly #world: World | undefined;
  /** What the device keeps, of all jobs. */
  readonly device: Shelf;
  readonly #tab: Shelf;
  readonly #own: OwnNumbers;
  readonly #visit: Visiting;
  #wasInFile: string | undefined = $state();

  constructor(world?: World) {
    super();
    this.#world = world;
    const soon = world?.soon;
    this.device = openShelf(
      () => world?.local(),
      undefined,
      soon && { soon, told: () => this.#own.hear() },
    );
    this.#tab = openShelf(() => world?.session());
    this.#own = new OwnNumbers(this.device, this.#tab);
    this.#visit = new Visiting(world, this.#tab);
    if (world !== undefined)
      this.#enter(this.#tab.get(openJobKey) ?? this.device.get(openJobKey) ?? '');
  }

  /**
   * Shows the numbers of the link in the address, or of the visit that goes on in this tab, if there are any. Needs
   * {@link loadDictionary} to have run.
   */
  open(): void {
    this.#visit.read();
    this.changed();
    this.arrive(this.#world?.revisited ?? false);
  }

  protected get values(): SetValues {
    return this.visiting?.values ?? this.#own.values;
  }
  protected get ground(): Ground {
    if (this.visiting === undefined) return this.#own.isBare ? 'nothing' : 'example';
    if (isOfJob(this.visiting.letter)) return 'job';
    return this.#visit.isOnItsPage ? 'page' : 'link';
  }

  /** The system that fields are shown in. Stored values do not change with it. */
  get system(): 'metric' | 'inch' {
    return this.#own.system;
  }
  setSystem(system: 'metric' | 'inch'): void {
    if (this.#world === undefined) return;
    this.#own.measureIn(system);
    this.changed();
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
    if (this.visiting !== undefined) this.leaveVisit();
  }

  /** The label of the job: of the visit while there is one. */
  get job(): string {
    return this.visiting?.job ?? this.#own.label;
  }
  set job(job: string) {
    if (this.#world === undefined) return;
    if (this.visiting === undefined) this.#own.call(job);
    else this.#visit.call(job);
    this.changed();
  }

  /** The sets of the job, and which two are shown. A link has two. */
  get sets(): JobSets {
    return this.visiting === undefined ? this.#own.sets : this.#visit.sets;
  }
  /** Names the sets, adds one or lays others side by side. Nothing of a link that is visited. */
  arrange(sets: JobSets): void {
    if (this.#world === undefined || this.visiting !== undefined) return;
    this.#own.arrange(sets);
    this.forgetCarried();
    this.changed();
  }
  /** True in a job of the reader's in which no example stands for what only they can have. */
  get isBare(): boolean {
    return this.#own.isBare;
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
    this.changed();
  }

  /** Makes one step back of all that `act` writes. */
  together(act: () => void): void {
    this.#own.together(act);
  }
  get canUndo(): boolean {
    void this.revision;
    return this.visiting === undefined && this.#own.canUndo;
  }
  get canRedo(): boolean {
    void this.revision;
    return this.visiting === undefined && this.#own.canRedo;
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

  /** What the field shows in the reader's system. */
  display(set: SetId, entry: Entry): Shown {
    return shownIn(this.system, this.value(set, entry), entry);
  }

  /** Writes what was typed, readable or not. The visit's numbers while there is a visit, else the reader's own. */
  put(set: SetId, name: string, patch: Partial<StoredValue>, entry: Entry): void {
    if (this.#world === undefined) return;
    const place = this.placeOf(set, entry);
    const stored = this.values[place][name];
    // Where another page or another set gives the number, an emptied field is one that nobody has written.
    const isElsewhere = this.withoutOwn(set, entry) !== undefined;
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
    const place = entry === undefined ? this.sets.shown[set] : this.placeOf(set, entry);
    if (this.visiting === undefined) this.#own.remove(place, name);
    else this.#visit.write(place, name, undefined);
    this.changed();
  }

  /** The link being visited; undefined when the reader's own numbers are shown. */
  get visiting(): Readonly<Visit> | undefined {
    return this.#visit.now;
  }
  /**
   * What the results were when the link that is visited was made, or the file that was opened last was saved; undefined
   * once a number was changed since, and where they do not say.
   */
  get was(): string | undefined {
    if (this.visiting === undefined) return this.#wasInFile;
    return this.visiting.isChanged === true ? undefined : this.visiting.letter?.was;
  }
  /** True when the reader has written something on this device: a number, or the label of a job. */
  get hasOwn(): boolean {
    return this.#own.label !== '' || countValues(this.#own.values) > 0;
  }
  /** How many of the reader's own values {@link keepVisit} would change. */
  get visitReplaces(): number {
    return this.visiting === undefined
      ? 0
      : links().countReplaced(this.#own.values, this.visiting.values);
  }
  /** Writes the visit's numbers over the reader's own, name by name; returns how many of their own changed. */
  keepVisit(): number {
    if (this.visiting === undefined) return 0;
    const replaced = this.visitReplaces;
    const kept = links().overlaid(this.#own.contents, this.visiting);
    // They stand in the first two sets.
    this.#replace({ ...kept, sets: { ...this.#own.sets, shown: plainSets.shown } });
    this.leaveVisit();
    return replaced;
  }
  /** Returns to the reader's own numbers; those of the link are dropped. */
  leaveVisit(): void {
    this.#visit.leave();
    this.changed();
  }

  /** One or more sentences about what could not be kept or read; undefined when all is well. */
  get notice(): string | undefined {
    const { refusal } = this.#visit;
    const said = [...(refusal === undefined ? [] : [refusal]), ...this.#own.notices];
    return said.length === 0 ? undefined : said.join(' ');
  }

  /** All that is shown and not an example, for a file: the visit's numbers while there is a visit. */
  get contents(): Contents {
    if (this.visiting === undefined) return this.#own.contents;
    const { job, values } = this.visiting;
    return { job, values: mapSets((set) => values[set]) };
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
    if (this.visiting !== undefined) this.leaveVisit();
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
      this.visiting?.values ?? emptySets(),
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
      const given = this.writtenFor(set, entry);
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
    this.#visit.read();
    this.changed();
  }

  /** Opens the link in the address, if it is one; see {@link Visiting.arrive}. */
  arrive(again: boolean): void {
    if (this.#visit.arrive(again)) this.changed();
  }

  /** Another tab changed the storage: takes over the value of that key, or everything when it was emptied. */
  follow(on: string | null): void {
    if (this.#own.follow(on)) this.changed();
  }

  /** What the sets shown are called, for a link; empty where the reader has named neither. */
  get #setNames(): string {
    const { names, shown } = this.sets;
    const own = bothSets.map((set) => names[shown[set]] ?? '');
    return own.every((name) => name === '') ? '' : own.join('\n');
  }
  #write(place: KeptSet, name: string, value: StoredValue): void {
    this.#wasInFile = undefined;
    if (this.visiting === undefined) this.#own.write(place, name, value);
    else this.#visit.write(place, name, value);
    this.changed();
  }
  #moved(moved: Moved | undefined): Moved | undefined {
    this.changed();
    return moved;
  }
  /** Goes to a job; an id that cannot be one's is the first. The tab keeps to it, whatever others open. */
  #enter(id: string): void {
    this.#own.enter(id);
    this.forgetCarried();
    this.changed();
  }
  #replace(contents: Contents): void {
    this.#own.replace(contents);
    this.changed();
  }
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
