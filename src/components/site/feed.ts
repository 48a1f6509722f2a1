import { createHash } from 'node:crypto';
import { inXml } from './in-xml.ts';

/** One entry of a feed of changes. */
export interface Entry {
  readonly id: string;
  readonly title: string;
  /** The day, as 2026-11-30. */
  readonly date: string;
  readonly text: string;
  /** Where it stands, from the feed's own address. */
  readonly link: string;
}

/** What the names of entries are numbers in; drawn once, and never changed. */
const space = Buffer.from('6d8a2f0b54c94d0f9d3e1c7b5a4e2f18', 'hex');

/**
 * A name that lasts for whatever has this id, wherever the site is served: a UUID of its SHA-1 (RFC 9562, version 5).
 */
export function lastingName(id: string): string {
  const hash = createHash('sha1').update(space).update(id).digest();
  hash[6] = ((hash[6] ?? 0) & 0x0f) | 0x50;
  hash[8] = ((hash[8] ?? 0) & 0x3f) | 0x80;
  const hex = hash.toString('hex');
  const parts = [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20)];
  return `urn:uuid:${parts.join('-')}-${hex.slice(20, 32)}`;
}

function instant(date: string): string {
  return `${date}T00:00:00Z`;
}

function entryOf({ id, title, date, text, link }: Entry): string {
  return `  <entry>
    <id>${lastingName(id)}</id>
    <title>${inXml(title)}</title>
    <updated>${instant(date)}</updated>
    <link href="${inXml(link)}"/>
    <content type="text">${inXml(text)}</content>
  </entry>
`;
}

/**
 * A feed (Atom, RFC 4287) of entries, newest first. Its links start from its own address, so it need not know which
 * host serves it.
 *
 * @param self the feed's own name, and what its own lasting name is made of
 * @param page the page that says the same
 */
export function atomFeed(
  { self, page, title }: { readonly self: string; readonly page: string; readonly title: string },
  entries: readonly Entry[],
): string {
  const updated = entries
    .map(({ date }) => date)
    .sort()
    .at(-1);
  if (updated === undefined)
    throw new RangeError('A feed needs an entry: it says when it changed.');
  return `<?xml version="1.0" encoding="utf-8"?>
<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en-GB">
  <id>${lastingName(self)}</id>
  <title>${inXml(title)}</title>
  <updated>${instant(updated)}</updated>
  <author><name>Throwbook</name></author>
  <link rel="self" type="application/atom+xml" href="${inXml(self)}"/>
  <link rel="alternate" type="text/html" href="${inXml(page)}"/>
${entries.map(entryOf).join('')}</feed>
`;
}
