import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import * as quantities from '../../src/calculators/quantities.ts';
import {
  collectNames,
  type NamedContent,
  type Synonym,
} from '../../src/components/search/collect.ts';
import { namesFor, plainWords } from '../../src/components/search/names.ts';
import { jobPages, mainPages, referencePages } from '../../src/components/site/pages.ts';

const content = new URL('../../content/', import.meta.url);

function read<T>(file: string): readonly T[] {
  return parse(readFileSync(new URL(file, content), 'utf8')) as T[];
}

const synonyms = read<Synonym>('synonyms.yaml');
const terms = read<NamedContent['terms'][number]>('glossary.yaml');
const topics = readdirSync(new URL('topics', content)).map((id) => ({
  id,
  title: id,
  summary: '',
  calculators: [],
}));
const all: NamedContent = {
  synonyms,
  terms,
  topics,
  quantities,
  notes: {},
  calculators: {},
  cautions: [],
  sources: [],
  pages: [...mainPages, ...jobPages, ...referencePages],
};

describe('other words of the trade', () => {
  test('lead to one thing each, which is there', () => {
    expect(synonyms.length).toBeGreaterThan(50);
    expect(() => collectNames(all)).not.toThrow();
    for (const { id, term, topic, quantity, page } of synonyms)
      expect([term, topic, quantity, page].filter(Boolean), id).toHaveLength(1);
    expect(new Set(synonyms.map(({ id }) => id)).size).toBe(synonyms.length);
  });

  test('that lead nowhere stop the build and are named', () => {
    const dead = { id: 'x', words: ['some word'], term: 'no-such-term' };
    expect(() => collectNames({ ...all, synonyms: [...synonyms, dead] })).toThrow(
      /term no-such-term/,
    );
  });

  test('each stand once, and none is a name that this site has already', () => {
    const words = synonyms.flatMap(({ words }) => words.map(plainWords));
    expect(words.filter((word, place) => words.indexOf(word) !== place)).toEqual([]);
    const own = new Set(terms.flatMap(({ term, also }) => [term, also ?? term]).map(plainWords));
    expect(words.filter((word) => own.has(word))).toEqual([]);
  });

  test('each lead first of all to what they stand for', () => {
    const names = collectNames(all);
    const lost = synonyms.flatMap(({ words }) =>
      words.filter((word) => {
        const [best] = namesFor(word, names);
        return best?.named.elsewhere?.includes(word) !== true;
      }),
    );
    expect(lost).toEqual([]);
  });
});
