import type { Entry } from '../calculators/define.ts';

let known: ReadonlyMap<string, Entry> = new Map();

/** Every quantity of the site by name; empty until {@link loadDictionary} has run. */
export function dictionary(): ReadonlyMap<string, Entry> {
  return known;
}

/**
 * Fetches the whole dictionary. A page needs its own calculators' quantities only; all of them are wanted
 * where names come from outside, from a link or a file, or where a link is made.
 */
export async function loadDictionary(): Promise<void> {
  if (known.size > 0) return;
  const quantities = await import('../calculators/quantities.ts');
  known = new Map(Object.values(quantities).map((entry) => [entry.name, entry]));
}
