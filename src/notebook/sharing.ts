import type { Entry, SetId } from '../calculators/define.ts';
import { encodeLink, linkVersion, type LinkValue } from './link.ts';
import { setsOf, type SetValues, type StoredValue } from './values.ts';
import { arrive } from './visit.ts';

/** A link, and what whoever opens it would be told about its parts. */
export interface Shared {
  readonly href: string;
  readonly problems: readonly string[];
}

/**
 * The link to `address` with the values of `entries` in both sets, examples included: a link must not change
 * with the site's defaults. `view` is what the page's figures are set to. Names in `visited` that the dictionary does not know travel on behind them.
 */
export function share(
  address: string,
  job: string,
  entries: readonly Entry[],
  valueOf: (set: SetId, entry: Entry) => StoredValue,
  visited: SetValues,
  dictionary: ReadonlyMap<string, Entry>,
  view = '',
): Shared {
  const known: readonly LinkValue[] = entries.map((entry) => ({
    name: entry.name,
    entry,
    baseline: valueOf('baseline', entry),
    ...(setsOf(entry).includes('candidate') ? { candidate: valueOf('candidate', entry) } : {}),
  }));
  const names = [...Object.keys(visited.baseline), ...Object.keys(visited.candidate)];
  const unknown: readonly LinkValue[] = [...new Set(names)]
    .filter((name) => !dictionary.has(name))
    .map((name) => {
      const { [name]: baseline } = visited.baseline;
      const { [name]: candidate } = visited.candidate;
      return {
        name,
        ...(baseline === undefined ? {} : { baseline }),
        ...(candidate === undefined ? {} : { candidate }),
      };
    });
  const values = [...known, ...unknown];
  const href = encodeLink({ address, job, view, version: linkVersion, values });
  const arrival = arrive(href.slice(address.length), dictionary);
  if (arrival === undefined) return { href, problems: [] };
  return { href, problems: 'say' in arrival ? [arrival.say] : arrival.visit.problems };
}
