import type { Entry, SetId } from '../calculators/define.ts';
import { encodeLink, linkVersion, type LinkParts, type LinkValue } from './link.ts';
import { isOfBoth, setsOf, type Letter, type SetValues, type StoredValue } from './values.ts';
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
  letter: Letter,
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
  return shared(
    { address, letter, view, version: linkVersion, values: [...known, ...unknown] },
    dictionary,
  );
}

/**
 * The link to `address` with every quantity of the dictionary that `own` gives for either set, and no other: what a set
 * lacks is empty in it, and no example stands there for whoever opens it.
 */
export function shareJob(
  address: string,
  letter: Letter,
  own: (set: SetId, entry: Entry) => StoredValue | undefined,
  dictionary: ReadonlyMap<string, Entry>,
): Shared {
  const empty: StoredValue = { text: '', unit: '' };
  const values = [...dictionary.values()].flatMap((entry): readonly LinkValue[] => {
    const [baseline, candidate] = [own('baseline', entry), own('candidate', entry)];
    if (baseline === undefined && candidate === undefined) return [];
    const { name } = entry;
    return isOfBoth(entry)
      ? [{ name, entry, baseline: baseline ?? empty }]
      : [{ name, entry, baseline: baseline ?? empty, candidate: candidate ?? empty }];
  });
  return shared({ address, letter, version: linkVersion, values }, dictionary);
}

function shared(parts: LinkParts, dictionary: ReadonlyMap<string, Entry>): Shared {
  const href = encodeLink(parts);
  const arrival = arrive(href.slice(parts.address.length), dictionary);
  if (arrival === undefined) return { href, problems: [] };
  return { href, problems: 'say' in arrival ? [arrival.say] : arrival.visit.problems };
}
