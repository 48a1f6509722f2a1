import { History, noting, type Step } from './history.ts';
import { plainSets } from './job-sets.ts';
import { links } from './dictionary.ts';
import {
  exampleKey,
  historyKey,
  isJobId,
  jobKey,
  keyInJob,
  openJobKey,
  placeOf,
  previousKey,
  readShelf,
  renameOnShelf,
  setsKey,
  shelfOfJob,
  systemKey,
  valueKey,
  type Shelf,
} from './storage.ts';
import {
  emptySets,
  mapSets,
  parseValue,
  writeValue,
  type Contents,
  type JobSets,
  type KeptSet,
  type SetValues,
  type StoredValue,
} from './values.ts';

const deletedWords =
  'This job was deleted in another tab. The page “All jobs” can bring it back; what you type here begins it anew.';

/** What came of a step that was taken back or done again. */
export interface Moved {
  /** How many things stand as they were. */
  readonly done: number;
  /** How many were left, since another tab has changed them meanwhile. */
  readonly left: number;
  /** The numbers among them, each with its set. */
  readonly numbers: readonly { readonly set: KeptSet; readonly name: string }[];
}

/** The job that is open, as this device keeps it: its numbers, its label, its sets, and the steps back. */
export class OwnNumbers {
  readonly #device: Shelf;
  readonly #tab: Shelf;
  readonly #history = new History();
  /** As it is, and as it is written with every change noted. */
  #kept: Shelf;
  #shelf: Shelf;
  #id = $state('');
  #values = $state(emptySets());
  #label = $state('');
  #sets: JobSets = $state.raw(plainSets);
  #isBare = $state(false);
  #isDeleted = $state(false);
  #system: 'metric' | 'inch' = $state('metric');
  #damaged: Record<string, string> = $state({});
  #shelfNotice: string | undefined = $state();
  #previous = $state(false);

  /**
   * @param device what the device keeps, of all jobs
   * @param tab what this tab keeps
   */
  constructor(device: Shelf, tab: Shelf) {
    this.#device = device;
    this.#tab = tab;
    this.#kept = device;
    this.#shelf = device;
  }

  /** The id of the job; empty for the first. */
  get id(): string {
    return this.#id;
  }
  get values(): SetValues {
    return this.#values;
  }
  get label(): string {
    return this.#label;
  }
  get sets(): JobSets {
    return this.#sets;
  }
  get system(): 'metric' | 'inch' {
    return this.#system;
  }
  /** True where the example stands for nothing that only the reader can have. */
  get isBare(): boolean {
    return this.#isBare;
  }
  get contents(): Contents {
    return { job: this.#label, values: mapSets((set) => this.#values[set]), sets: this.#sets };
  }
  /** True when a notebook was put away and can be brought back. */
  get hasPrevious(): boolean {
    return this.#previous;
  }
  get canUndo(): boolean {
    return this.#history.canUndo;
  }
  get canRedo(): boolean {
    return this.#history.canRedo;
  }
  /** Sentences about what could not be kept or read. */
  get notices(): readonly string[] {
    const all = [this.#isDeleted ? deletedWords : undefined, this.#shelfNotice];
    return [...all, ...Object.values(this.#damaged)].filter((one) => one !== undefined);
  }

  /** Goes to a job; an id that cannot be one's is the first. The tab keeps to it, whatever others open. */
  enter(id: string): void {
    this.#id = isJobId(id) ? id : '';
    this.#kept = shelfOfJob(this.#id, this.#device);
    this.#shelf = noting(this.#kept, this.#history);
    this.#tab.set(openJobKey, this.#id);
    this.#history.read(this.#tab.get(historyKey(this.#id)));
    this.read();
  }

  /** Reads all that is kept. */
  read(): void {
    renameOnShelf(this.#kept);
    const found = readShelf(this.#kept);
    this.#values = found.values;
    this.#label = found.job;
    this.#system = found.system;
    this.#sets = found.sets;
    this.#damaged = { ...found.damaged };
    // A job that another tab has deleted is no example; what is typed here begins it anew.
    this.#isDeleted = this.#id !== '' && this.#kept.keys().length === 0;
    this.#isBare = this.#isDeleted || this.#kept.get(exampleKey) === 'none';
    this.#previous = this.#kept.get(previousKey) !== undefined;
  }

  write(set: KeptSet, name: string, value: StoredValue): void {
    this.#values[set][name] = value;
    delete this.#damaged[valueKey(set, name)];
    this.#keep(valueKey(set, name), writeValue(value));
  }
  remove(set: KeptSet, name: string): void {
    delete this.#values[set][name];
    delete this.#damaged[valueKey(set, name)];
    this.#shelf.remove(valueKey(set, name));
  }
  call(label: string): void {
    this.#label = label;
    this.#keep(jobKey, label);
  }
  arrange(sets: JobSets): void {
    this.#sets = sets;
    this.#keep(setsKey, JSON.stringify(sets));
  }
  measureIn(system: 'metric' | 'inch'): void {
    this.#system = system;
    // What the pages show is no part of the job, and no step back.
    this.#kept.set(systemKey, system);
    this.#shelfNotice = this.#kept.notice;
  }
  /** Puts `contents` in the place of all that is there, which is kept for one step back. */
  replace(contents: Contents): void {
    this.#history.together(() => {
      links().replaceOnShelf(this.#shelf, contents);
    });
    this.read();
    this.hear();
  }
  /** What the notebook was before the last {@link replace}, as it is kept. */
  get previous(): string | undefined {
    return this.#kept.get(previousKey);
  }

  /** Makes one step of all that `act` changes. */
  together(act: () => void): void {
    this.#history.together(act);
  }
  undo(): Moved | undefined {
    return this.#go(this.#history.back(), ({ before, after }) => [after, before]);
  }
  redo(): Moved | undefined {
    return this.#go(this.#history.forth(), ({ before, after }) => [before, after]);
  }
  /** Lets the steps back outlive the page. */
  keepHistory(): void {
    this.#tab.set(historyKey(this.#id), this.#history.written());
  }

  /** Another tab changed the storage: takes over that key, or everything when it was emptied. True if it is of this job. */
  follow(on: string | null): boolean {
    if (on !== null) this.#device.forget(on);
    const key = on === null || on === systemKey ? on : keyInJob(this.#id, on);
    if (key === undefined) return false;
    const place = key === null ? undefined : placeOf(key);
    if (key === null || place === undefined) {
      this.read();
      return true;
    }
    const json = this.#kept.get(key);
    const value = json === undefined ? undefined : parseValue(json);
    delete this.#damaged[key];
    if (value === undefined) delete this.#values[place.set][place.name];
    else this.#values[place.set][place.name] = value;
    return true;
  }

  /** Hears what the shelf says now. */
  hear(): void {
    this.#shelfNotice = this.#shelf.notice;
  }

  #keep(key: string, text: string): void {
    this.#shelf.set(key, text);
    this.hear();
  }
  #go(
    step: Step | undefined,
    ends: (
      change: Step[number],
    ) => readonly [stands: string | undefined, comes: string | undefined],
  ): Moved | undefined {
    if (step === undefined) return undefined;
    let left = 0;
    for (const change of step) {
      const [stands, comes] = ends(change);
      if (this.#kept.get(change.key) !== stands) left += 1;
      else if (comes === undefined) this.#kept.remove(change.key);
      else this.#kept.set(change.key, comes);
    }
    this.read();
    this.#shelfNotice = this.#kept.notice;
    const numbers = step.flatMap(({ key }) => placeOf(key) ?? []);
    return { done: step.length - left, left, numbers };
  }
}
