import { describe, expect, it } from 'vitest';
import { atomFeed, lastingName } from '../../../src/components/site/feed.ts';
import { inXml } from '../../../src/components/site/in-xml.ts';

const about = { self: 'changes.xml', page: 'changes/', title: 'Changes & more' };
const entry = {
  id: 'changes/first',
  title: 'Version 1',
  date: '2026-11-30',
  text: 'Pins < 20 mm & "more"',
  link: 'changes/#first',
};

describe('a feed', () => {
  const text = atomFeed(about, [entry, { ...entry, id: 'changes/older', date: '2026-10-01' }]);

  it('has what every feed must have, once, and what every entry must have', () => {
    const [head = '', ...entries] = text.split('<entry>');
    for (const name of ['id', 'title', 'updated', 'author'])
      expect(head.match(new RegExp(`<${name}>`, 'g')), name).toHaveLength(1);
    expect(head).toContain('<feed xmlns="http://www.w3.org/2005/Atom"');
    expect(head).toContain('rel="self"');
    expect(entries).toHaveLength(2);
    for (const one of entries)
      for (const name of ['id', 'title', 'updated'])
        expect(one.match(new RegExp(`<${name}>`, 'g')), name).toHaveLength(1);
  });

  it('is of the day of its newest entry', () => {
    expect(/<updated>(.*?)<\/updated>/.exec(text)?.[1]).toBe('2026-11-30T00:00:00Z');
  });

  it('keeps signs that mean something to XML', () => {
    expect(text).toContain('<title>Changes &amp; more</title>');
    expect(text).toContain('Pins &lt; 20 mm &amp; &quot;more&quot;');
    expect(inXml('a]]>b')).toBe('a]]&gt;b');
  });

  it('names each of its entries for ever, and each otherwise', () => {
    const names = [...text.matchAll(/<id>(.*?)<\/id>/g)].map(([, name]) => name);
    expect(new Set(names).size).toBe(3);
    expect(atomFeed(about, [entry])).toContain(lastingName(entry.id));
    for (const name of names)
      expect(name).toMatch(
        /^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
      );
  });

  it('needs an entry', () => {
    expect(() => atomFeed(about, [])).toThrow(RangeError);
  });
});

// Programs that have read an entry know it by this name: it must never be another.
it('the name of the first change is the one that was given out', () => {
  expect(lastingName('changes/first')).toMatchInlineSnapshot(
    `"urn:uuid:e3ef3191-06e7-513d-9339-62644820508d"`,
  );
});
