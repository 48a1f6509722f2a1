import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeLink, encodeLink } from '../../src/notebook/link.ts';
import { decodeViews, encodeViews } from '../../src/notebook/views.ts';

const word = fc.stringMatching(/^[a-z][a-z0-9.-]{0,12}$/);
const views = fc.dictionary(
  word,
  fc.dictionary(word, word, { minKeys: 1, maxKeys: 3, noNullPrototype: true }),
  { maxKeys: 4, noNullPrototype: true },
);

describe('what figures are set to, in a link', () => {
  it('comes back as it was, whatever it is', () => {
    fc.assert(
      fc.property(views, (set) => {
        expect({ ...decodeViews(encodeViews(set)) }).toEqual(set);
      }),
    );
  });

  it('is written in letters that programs which find links leave whole', () => {
    const text = encodeViews({
      'load-speed': { section: 'eye', at: '7464' },
      'pressure-curve': { show: 'firing', at: '-12.5' },
    });
    expect(text).toBe('load-speed/section/eye/at/7464;pressure-curve/show/firing/at/-12.5');
    const link = encodeLink({
      address: 'a',
      letter: { job: 'x' },
      view: text,
      version: 1,
      values: [],
    });
    expect(link).toBe(`a#job=x&view=${text}&v=1`);
    expect(decodeLink(link.slice(1))).toMatchObject({ ok: true, view: text, problems: [] });
  });

  it('is read also where a program wrote percent signs', () => {
    const hash = '#stroke=80mm,80mm&view=load-speed%2Fsection%2Feye&v=1';
    expect(decodeLink(hash)).toMatchObject({ view: 'load-speed/section/eye', problems: [] });
  });

  it('is empty in an old link, which is read as before', () => {
    expect(decodeLink('#stroke=80mm,80mm&v=1')).toMatchObject({ ok: true, view: '', numbers: 2 });
  });

  it.each(['', ';', '/', 'a', 'a/b', 'a/b/<script>', `a/b/${'c'.repeat(41)}`, 'a/b/c/d', 'x;;y/z'])(
    'leaves out what is damaged: “%s”',
    (text) => {
      expect(Object.values(decodeViews(text)).filter((own) => Object.keys(own).length > 0)).toEqual(
        [],
      );
    },
  );

  it('keeps what is whole beside what is not, and takes no text of endless length', () => {
    expect({ ...decodeViews('a/b;c/d/e') }).toEqual({ c: { d: 'e' } });
    expect({ ...decodeViews(`a/b/c;${'d/e/f;'.repeat(400)}`) }).toEqual({});
    expect(encodeViews({ a: {}, b: { c: 'no space allowed' } })).toBe('');
  });
});
