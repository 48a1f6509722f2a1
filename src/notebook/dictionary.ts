import type { Entry } from '../calculators/define.ts';
import type * as Links from './links.ts';

let known: ReadonlyMap<string, Entry> = new Map();
let fetched: typeof Links | undefined;

/** Every quantity of the site by name; empty until {@link loadDictionary} has run. */
export function dictionary(): ReadonlyMap<string, Entry> {
  return known;
}

/** The code of links and visits. Throws Error before {@link loadLinks} has run: a fault of the caller. */
export function links(): typeof Links {
  if (fetched === undefined) throw new Error('The code of links was used before it was fetched.');
  return fetched;
}

/** Fetches the code that makes a link of the page's own quantities. */
export async function loadLinks(): Promise<void> {
  fetched ??= await import('./links.ts');
}

/**
 * Fetches the whole dictionary and the code of links. A page needs its own calculators' quantities only; all
 * of them are wanted where names come from outside, from a link or a file.
 */
export async function loadDictionary(): Promise<void> {
  await loadLinks();
  if (known.size > 0) return;
  const quantities = await import('../calculators/quantities.ts');
  known = new Map(Object.values(quantities).map((entry) => [entry.name, entry]));
}
