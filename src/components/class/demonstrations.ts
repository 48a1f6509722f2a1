import { openShelf, type Shelf } from '../../notebook/storage.ts';
import { parsed } from '../../notebook/values.ts';

/** A screen of the class view as it was kept: with its numbers, the angle of its figure, and a note for who shows it. */
export interface Demonstration {
  readonly title: string;
  /** Below the root of the site: `bobweight/class/#…`. */
  readonly path: string;
  readonly note: string;
}

/** Not among the keys of the notebook: whoever has only this list has no numbers of their own. */
const listKey = 'throwbook/demonstrations';
/** In the tab: which of the list is being shown, from 0. */
const shownKey = 'throwbook/demonstration';

/** More are a course, and belong into several files. */
export const mostDemonstrations = 60;
const longestPath = 4000;
const longestNote = 500;

/** What a path of this list may be: a page of the class view, and nothing that leaves the site. */
const asPath = /^[a-z0-9-]+\/class\/(?:#[^\s<>"]*)?$/u;

function asDemonstration(something: unknown): Demonstration | undefined {
  if (typeof something !== 'object' || something === null) return undefined;
  const { title, path, note } = something as Readonly<Record<string, unknown>>;
  if (typeof title !== 'string' || typeof path !== 'string') return undefined;
  if (!asPath.test(path) || path.length > longestPath) return undefined;
  return {
    title: title.slice(0, 200),
    path,
    note: typeof note === 'string' ? note.slice(0, longestNote) : '',
  };
}

/** The list in something that was parsed; what in it is damaged is left out and counted. */
export function asDemonstrations(something: unknown): {
  readonly list: readonly Demonstration[];
  readonly lost: number;
} {
  if (!Array.isArray(something)) return { list: [], lost: 0 };
  const read = something.map(asDemonstration);
  const list = read.filter((one) => one !== undefined).slice(0, mostDemonstrations);
  return { list, lost: read.length - list.length };
}

/** The list as this device keeps it, and which of it is shown in this tab. */
export class DemonstrationShelf {
  readonly #device: Shelf = openShelf(() => localStorage);
  readonly #tab: Shelf = openShelf(() => sessionStorage);

  get list(): readonly Demonstration[] {
    return asDemonstrations(parsed(this.#device.get(listKey))).list;
  }
  /** True where it is kept; where the storage is full or forbidden it stays until the page is closed. */
  keep(list: readonly Demonstration[]): boolean {
    this.#device.set(listKey, JSON.stringify(list));
    return this.#device.notice === undefined;
  }
  /** The place of what is shown, from 0; undefined where the class view was opened by itself. */
  get shown(): number | undefined {
    const at = Number(this.#tab.get(shownKey) ?? Number.NaN);
    return Number.isInteger(at) && at >= 0 && at < this.list.length ? at : undefined;
  }
  show(at: number | undefined): void {
    if (at === undefined) this.#tab.remove(shownKey);
    else this.#tab.set(shownKey, String(at));
  }
}

/** The list as a file. */
export function demonstrationsFile(list: readonly Demonstration[]): string {
  return `${JSON.stringify({ format: 'throwbook-demonstrations', version: 1, list }, undefined, 2)}\n`;
}

/** What a file holds, or why it is none. */
export function readDemonstrationsFile(
  text: string,
): { readonly list: readonly Demonstration[]; readonly lost: number } | { readonly say: string } {
  const file = parsed(text) as Readonly<Record<string, unknown>> | null | undefined;
  if (typeof file !== 'object' || file === null || file['format'] !== 'throwbook-demonstrations')
    return { say: 'This file holds no list of demonstrations. Nothing was changed.' };
  if (file['version'] !== 1)
    return { say: 'This list was saved by a later version of the site. Nothing was changed.' };
  return asDemonstrations(file['list']);
}
