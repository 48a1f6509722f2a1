import type { Entry, SetId } from '../calculators/define.ts';
import { dictionary, links, loadDictionary } from './dictionary.ts';
import { settle, shownIn, written, type Shown } from '../units/settle.ts';
import { isReadersOwn } from '../calculators/readers-own.ts';
import {
  exampleKey,
  isJobId,
  jobKey,
  keyInJob,
  openJobKey,
  openShelf,
  placeOf,
  previousKey,
  readShelf,
  renameOnShelf,
  shelfOfJob,
  systemKey,
  valueKey,
  visitKey,
  type Shelf,
} from './storage.ts';
import { shownViews } from './shown-views.svelte.ts';
import type { Shared } from './sharing.ts';
import { exampleOf } from './example.ts';
import { isLink } from './is-link.ts';
import { bringsNumbersFor } from './moved.ts';
import {
  countValues,
  emptyContents,
  homeSet,
  parseValue,
  sameValue,
  writeValue,
  type Contents,
  type SetValues,
  type StoredValue,
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

type Writable = Record<SetId, Record<string, StoredValue>>;

const deletedWords =
  'This job was deleted in another tab. The page “All jobs” can bring it back; what you type here begins it anew.';

function copied(values: SetValues): Writable {
  return { baseline: { ...values.baseline }, candidate: { ...values.candidate } };
}

/**
 * The reader's numbers, shared by all parts of a page and kept in the browser. Without a world, on the
 * server, it shows the examples and ignores every write: one process renders all pages for all readers.
 */
export class Notebook {
  readonly #world: World | undefined;
  /** What the device keeps, of all jobs. */
  readonly device: Shelf;
  #jobId = $state('');
  #shelf: Shelf;
  readonly #tab: Shelf;
  #own: Writable = $state({ baseline: {}, candidate: {} });
  #ownJob = $state('');
  /** In the job that is open the example stands for nothing that only the reader can have. */
  #isBare = $state(false);
  #isDeleted = $state(false);
  #system: 'metric' | 'inch' = $state('metric');
  #visit: (Omit<Visit, 'job' | 'values'> & { job: string; values: Writable }) | undefined =
    $state();
  /** What other pages make of these numbers, by the quantity that it fills. Worked, and so not kept. */
  #carried: Writable = $state({ baseline: {}, candidate: {} });
  #damaged: Record<string, string> = $state({});
  #refusal: string | undefined = $state();
  #shelfNotice: string | undefined = $state();
  #previous = $state(false);
  #changes = 0;
  #revision = $state(0);

  constructor(world?: World) {
    this.#world = world;
    this.device = openShelf(() => world?.local());
    this.#tab = openShelf(() => world?.session());
    this.#shelf = this.device;
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
    return this.#system;
  }
  setSystem(system: 'metric' | 'inch'): void {
    if (this.#world === undefined) return;
    this.#system = system;
    this.#changed();
    this.#keep(systemKey, system);
  }

  /** The id of the job that is open in this tab; empty for the first. */
  get jobId(): string {
    return this.#jobId;
  }
  /** Opens another job of the device, in this tab and for tabs to come. A visit ends. */
  openJob(id: string): void {
    if (this.#world === undefined) return;
    this.#enter(id);
    this.device.set(openJobKey, this.#jobId);
    if (this.#visit !== undefined) this.leaveVisit();
  }

  /** The label of the job: of the visit while there is one. */
  get job(): string {
    return this.#visit?.job ?? this.#ownJob;
  }
  set job(job: string) {
    if (this.#world === undefined) return;
    if (this.#visit !== undefined) {
      this.#visit.job = job;
      this.#keepVisit();
      return;
    }
    this.#ownJob = job;
    this.#keep(jobKey, job);
  }

  /**
   * The value of an entry: what the reader wrote, else what another page makes of the reader's numbers, else the
   * invented example; in a job that begins without numbers nothing stands for what only the reader can have. During a
   * visit only the link's numbers count: what it does not name is the example, or empty where a calculator can do
   * without it, and never the reader's own, since numbers of two engines would make a believable wrong result.
   */
  value(set: SetId, entry: Entry): StoredValue {
    const home = homeSet(set, entry);
    const stored = this.#values[home][entry.name];
    if (stored !== undefined) return settle(stored, entry);
    const carried = this.#carried[home][entry.name];
    if (carried !== undefined) return carried;
    const example = exampleOf(home, entry);
    return this.#isLeftEmpty(entry) ? { text: '', unit: example.unit } : example;
  }

  /** True for an entry that a result needs and for which nothing stands. */
  isMissing(set: SetId, entry: Entry): boolean {
    const home = homeSet(set, entry);
    if (entry.optional === true || entry.type === 'choice') return false;
    // A link of a job that lacks a number says so.
    if (this.#visit !== undefined) return this.#values[home][entry.name]?.text.trim() === '';
    return !this.isGiven(home, entry.name) && this.#isLeftEmpty(entry);
  }

  /** True as long as the invented example stands there. A link's number that equals it counts as one. */
  isExample(set: SetId, entry: Entry): boolean {
    const home = homeSet(set, entry);
    const stored = this.#values[home][entry.name];
    if (stored === undefined)
      return this.#carried[home][entry.name] === undefined && !this.#isLeftEmpty(entry);
    if (this.#visit === undefined) return false;
    return sameValue(settle(stored, entry), exampleOf(home, entry));
  }

  /** What another page makes of the reader's numbers for an entry, whether it stands there or their own does. */
  carriedFor(
    set: SetId,
    entry: Entry,
  ): { readonly value: StoredValue; readonly stands: boolean } | undefined {
    const value = this.#carried[set][entry.name];
    return value && { value, stands: this.#values[set][entry.name] === undefined };
  }

  /** True for a number that the reader gave, here or by what another page makes of theirs. */
  isGiven(set: SetId, name: string): boolean {
    return this.#values[set][name] !== undefined || this.#carried[set][name] !== undefined;
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
    return shownIn(this.#system, this.value(set, entry), entry);
  }

  /** Writes what was typed, readable or not. The visit's numbers while there is a visit, else the reader's own. */
  put(set: SetId, name: string, patch: Partial<StoredValue>, entry: Entry): void {
    if (this.#world === undefined) return;
    const home = homeSet(set, entry);
    // Where another page gives the number, an emptied field is one that nobody has written.
    if (patch.text?.trim() === '' && this.#carried[home][name] !== undefined) {
      this.clear(home, name);
      return;
    }
    const before = this.value(home, entry);
    // The ± of the example is not the reader's: a number of their own is exact until they say otherwise.
    const own =
      this.#values[home][name] === undefined ? { text: before.text, unit: before.unit } : before;
    const value = written(own, patch, entry, this.display(home, entry));
    this.#values[home][name] = value;
    this.#changed();
    if (this.#visit !== undefined) {
      this.#keepVisit();
      return;
    }
    const key = valueKey(home, name);
    delete this.#damaged[key];
    this.#keep(key, writeValue(value));
  }

  /** Takes a value out, so that the example stands there again. */
  clear(set: SetId, name: string): void {
    if (this.#world === undefined) return;
    const entry = dictionary().get(name);
    const home = entry === undefined ? set : homeSet(set, entry);
    delete this.#values[home][name];
    this.#changed();
    if (this.#visit !== undefined) {
      this.#keepVisit();
      return;
    }
    delete this.#damaged[valueKey(home, name)];
    this.#shelf.remove(valueKey(home, name));
  }

  /** The link being visited; undefined when the reader's own numbers are shown. */
  get visiting(): { readonly job: string; readonly problems: readonly string[] } | undefined {
    return this.#visit;
  }
  /** True when the reader has written something on this device: a number, or the label of a job. */
  get hasOwn(): boolean {
    return this.#ownJob !== '' || countValues(this.#own) > 0;
  }
  /** How many of the reader's own values {@link keepVisit} would change. */
  get visitReplaces(): number {
    return this.#visit === undefined ? 0 : links().countReplaced(this.#own, this.#visit.values);
  }
  /** Writes the visit's numbers over the reader's own, name by name; returns how many of their own changed. */
  keepVisit(): number {
    if (this.#visit === undefined) return 0;
    const replaced = this.visitReplaces;
    this.#replace(links().overlaid(this.#ownContents, this.#visit));
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
    const deleted = this.#isDeleted ? deletedWords : undefined;
    const all = [deleted, this.#refusal, this.#shelfNotice, ...Object.values(this.#damaged)];
    const said = all.filter((one) => one !== undefined);
    return said.length === 0 ? undefined : said.join(' ');
  }

  /** All that is shown and not an example, for a file: the visit's numbers while there is a visit. */
  get contents(): Contents {
    return this.#visit === undefined
      ? this.#ownContents
      : { job: this.#visit.job, values: copied(this.#visit.values) };
  }

  /** What opening a file's contents would do. Changes nothing. */
  offer(contents: Contents, problems: readonly string[] = []): Offer {
    const admitted = links().admit(contents.values, dictionary(), true);
    return {
      contents: { job: contents.job, values: admitted.values },
      numbers: countValues(admitted.values),
      putAway: countValues(this.#own),
      problems: [...problems, ...admitted.problems],
    };
  }
  /** Makes the offered contents the reader's notebook. What was there before is kept for {@link restorePrevious}. */
  accept(offer: Offer): void {
    this.#replace(offer.contents);
    if (this.#visit !== undefined) this.leaveVisit();
  }
  /** True when a notebook was put away and can be brought back. */
  get canRestore(): boolean {
    return this.#previous;
  }
  /** Brings back the notebook that was put away last, and puts the present one away instead. */
  restorePrevious(): void {
    const previous = links().parseVisit(this.#shelf.get(previousKey));
    if (previous !== undefined) this.#replace(previous);
  }

  /**
   * The link to this page with the values of `entries` in both sets, examples included: a link must not
   * change with the site's defaults. Names that an opened link brought and nothing here knows travel on.
   * `problems` says what whoever opens it would be told.
   */
  linkFor(entries: readonly Entry[]): Shared {
    return links().share(
      this.#world?.address() ?? '',
      this.job,
      entries,
      (set, entry) => this.value(set, entry),
      this.#visit?.values ?? emptyContents().values,
      // Without a visit there are no names but the page's own, and the whole dictionary need not be fetched.
      new Map([...dictionary(), ...entries.map((entry) => [entry.name, entry] as const)]),
      shownViews.text,
    );
  }

  /** Reads everything stored anew, when the page comes back from the browser's cache. Needs {@link loadDictionary}. */
  reread(): void {
    this.#readOwn();
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
    if (on !== null) this.device.forget(on);
    const key = on === null || on === systemKey ? on : keyInJob(this.#jobId, on);
    // Another job's.
    if (key === undefined) return;
    const place = key === null ? undefined : placeOf(key);
    if (key === null || place === undefined) {
      this.#readOwn();
      return;
    }
    const json = this.#shelf.get(key);
    const value = json === undefined ? undefined : parseValue(json);
    delete this.#damaged[key];
    if (value === undefined) delete this.#own[place.set][place.name];
    else this.#own[place.set][place.name] = value;
    this.#changed();
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
    if (this.#visit !== undefined) return entry.optional === true && this.#isOnPageOfLink;
    return this.#isBare && (entry.optional === true || isReadersOwn(entry));
  }
  get #values(): Writable {
    return this.#visit === undefined ? this.#own : this.#visit.values;
  }
  get #ownContents(): Contents {
    return { job: this.#ownJob, values: copied(this.#own) };
  }
  #changed(): void {
    // Counted beside the state, so that a write inside an effect does not make the effect depend on it.
    this.#changes += 1;
    this.#revision = this.#changes;
  }
  #keep(key: string, text: string): void {
    this.#shelf.set(key, text);
    this.#shelfNotice = this.#shelf.notice;
  }
  #keepVisit(): void {
    // The tab's storage only carries a visit to other pages; where it is refused, this page still has it.
    if (this.#visit === undefined) this.#tab.remove(visitKey);
    else this.#tab.set(visitKey, links().writeVisit(this.#visit));
  }
  /** Goes to a job; an id that cannot be one's is the first. The tab keeps to it, whatever others open. */
  #enter(id: string): void {
    this.#jobId = isJobId(id) ? id : '';
    this.#shelf = shelfOfJob(this.#jobId, this.device);
    this.#tab.set(openJobKey, this.#jobId);
    this.#carried = { baseline: {}, candidate: {} };
    this.#readOwn();
  }
  #readOwn(): void {
    renameOnShelf(this.#shelf);
    const found = readShelf(this.#shelf);
    this.#own = copied(found.values);
    this.#ownJob = found.job;
    this.#system = found.system;
    this.#damaged = { ...found.damaged };
    // A job that another tab has deleted is no example; what is typed here begins it anew.
    this.#isDeleted = this.#jobId !== '' && this.#shelf.keys().length === 0;
    this.#isBare = this.#isDeleted || this.#shelf.get(exampleKey) === 'none';
    this.#previous = this.#shelf.get(previousKey) !== undefined;
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
    links().replaceOnShelf(this.#shelf, contents);
    this.#readOwn();
    this.#shelfNotice = this.#shelf.notice;
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
