import { dictionary, links } from './dictionary.ts';
import { isLink } from './is-link.ts';
import { named, plainSets } from './job-sets.ts';
import { bringsNumbersFor } from './moved.ts';
import { shownViews } from './shown-views.svelte.ts';
import { visitKey, type Shelf } from './storage.ts';
import {
  mapSets,
  type JobSets,
  type KeptSet,
  type SetValues,
  type StoredValue,
  type WritableSets,
} from './values.ts';
import type { Visit } from './visit.ts';
import type { World } from './world.ts';

/** A visit that can be changed. */
type Open = Omit<Visit, 'job' | 'values' | 'isChanged'> & {
  job: string;
  values: WritableSets;
  isChanged?: boolean;
};

function copied(values: SetValues): WritableSets {
  return mapSets((set) => values[set]);
}

/** The link that is visited in this tab, if there is one: its numbers, apart from the reader's own. */
export class Visiting {
  readonly #world: World | undefined;
  readonly #tab: Shelf;
  #visit: Open | undefined = $state();
  #refusal: string | undefined = $state();

  /** @param tab what this tab keeps, so that the visit goes on from page to page */
  constructor(world: World | undefined, tab: Shelf) {
    this.#world = world;
    this.#tab = tab;
  }

  get now(): Readonly<Visit> | undefined {
    return this.#visit;
  }
  /** Why the last link could not be opened. */
  get refusal(): string | undefined {
    return this.#refusal;
  }
  /** The two sets of the link, called as it says. */
  get sets(): JobSets {
    const [first = '', second = ''] = this.#visit?.letter?.sets?.split('\n') ?? [];
    return named(named(plainSets, 'baseline', first), 'candidate', second);
  }
  /** True where the link says all: what it leaves out here was left empty, on a page that was a part of its own too. */
  get isOnItsPage(): boolean {
    if (this.#visit === undefined) return false;
    const { at, values } = this.#visit;
    const here = this.#world?.address() ?? '';
    if (at === undefined || here.startsWith(at) || at.startsWith(here)) return true;
    return bringsNumbersFor(here, at, values);
  }

  /** Goes on with the visit that the tab keeps. */
  read(): void {
    const kept = this.#tab.get(visitKey);
    const visit = kept === undefined ? undefined : links().parseVisit(kept);
    this.#visit = visit === undefined ? undefined : { ...visit, values: copied(visit.values) };
    shownViews.open(visit?.view ?? '');
  }

  /**
   * Opens the link in the address, if it is one; true if so. One that gives nothing ends the visit of another link too:
   * its job and numbers would pass for those of the link just opened.
   *
   * @param again the page was come back to: a visit of the same link goes on as it was left.
   */
  arrive(again: boolean): boolean {
    const hash = this.#world?.hash() ?? '';
    if (!isLink(hash) || (again && this.#visit?.from === hash)) return false;
    const arrival = links().arrive(hash, dictionary());
    if (arrival === undefined) return false;
    this.#refusal = 'say' in arrival ? arrival.say : undefined;
    if ('say' in arrival) this.#visit = undefined;
    else {
      const { visit } = arrival;
      this.#visit = { ...visit, at: this.#world?.address() ?? '', values: copied(visit.values) };
    }
    shownViews.open(this.#visit?.view ?? '');
    this.#keep();
    return true;
  }

  leave(): void {
    this.#visit = undefined;
    this.#keep();
    this.#world?.dropHash();
  }

  call(job: string): void {
    if (this.#visit !== undefined) this.#visit.job = job;
    this.#keep();
  }
  /** Writes a value of the visit; undefined takes it out. */
  write(set: KeptSet, name: string, value: StoredValue | undefined): void {
    if (this.#visit === undefined) return;
    if (value === undefined) delete this.#visit.values[set][name];
    else this.#visit.values[set][name] = value;
    this.#visit.isChanged = true;
    this.#keep();
  }

  #keep(): void {
    // The tab's storage only carries a visit to other pages; where it is refused, this page still has it.
    if (this.#visit === undefined) this.#tab.remove(visitKey);
    else this.#tab.set(visitKey, links().writeVisit(this.#visit));
  }
}
