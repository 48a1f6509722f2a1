import type { Entry } from '../../calculators/define.ts';

/** What the build tells of a row of the parts table. */
export interface PartAbout {
  /** How it is measured at the bench, and what is easily got wrong. */
  readonly measure: string;
  readonly note?: string;
  /** Address of the sheet or page that deals with it first. */
  readonly at: string;
  /** The topics whose results take it, by id, those first that ask for it before all else. */
  readonly for: readonly string[];
  /** True where every result can do without it. */
  readonly isOptional: boolean;
}

/** The same of all rows, by name of the quantity; topics have their title and address. */
export interface PartsAbout {
  readonly topics: Readonly<Record<string, { readonly title: string; readonly href: string }>>;
  readonly of: Readonly<Record<string, PartAbout>>;
}

/** The entry of a row; one that every result can do without is optional, as on the sheets that take it. */
export function entryOf(entry: Entry, about: PartAbout | undefined): Entry {
  return about?.isOptional === true ? { ...entry, optional: true } : entry;
}
