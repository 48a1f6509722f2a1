import { describe, expect, it } from 'vitest';
import {
  bibtex,
  citationLine,
  cslJson,
  plainCitation,
  type Cited,
} from '../../../src/components/cite/cite.ts';
import { dayInWords } from '../../../src/components/site/day-in-words.ts';

const cited: Cited = {
  title: 'Bobweight',
  path: 'bobweight/',
  version: '0.1.0',
  calculations: 3,
  date: '2026-11-05',
};
const address = 'https://host.example/reference/bobweight/';

describe('a citation', () => {
  it('says page, versions and day in one line, and then the address', () => {
    expect(citationLine(cited)).toBe(
      'Throwbook, “Bobweight”, version 0.1.0, calculations 3, 5 November 2026',
    );
    expect(plainCitation(cited, address)).toBe(`${citationLine(cited)}, ${address}`);
  });

  it('as BibTeX is one entry of balanced braces, without an author', () => {
    const text = bibtex(cited, address);
    expect(text).toMatch(/^@misc\{throwbook-bobweight-3,\n/);
    const fields = Object.fromEntries(
      [...text.matchAll(/^ {2}(\w+) = \{(.*)\},$/gm)].map(([, name = '', value]) => [name, value]),
    );
    expect(fields).toEqual({
      title: '{Throwbook}: Bobweight',
      version: '0.1.0, calculations 3',
      year: '2026',
      month: '11',
      url: address,
    });
    const depth = [...text].reduce(
      (sum, each) => sum + (each === '{' ? 1 : each === '}' ? -1 : 0),
      0,
    );
    expect(depth).toBe(0);
  });

  it('as BibTeX keeps signs that mean something to TeX', () => {
    const text = bibtex({ ...cited, title: 'Rods & 50 % {a_b} ‘so’' }, address);
    expect(text).toContain(String.raw`{Throwbook}: Rods \& 50 \% \{a\_b\} 'so'`);
  });

  it('as CSL-JSON is a list of one item', () => {
    expect(JSON.parse(cslJson(cited, address))).toEqual([
      {
        id: 'throwbook-bobweight-3',
        type: 'webpage',
        title: 'Bobweight',
        'container-title': 'Throwbook',
        version: '0.1.0, calculations 3',
        issued: { 'date-parts': [[2026, 11, 5]] },
        URL: address,
      },
    ]);
  });
});

it.each([
  ['2026-01-01', '1 January 2026'],
  ['2026-12-31', '31 December 2026'],
])('%s is %s', (date, words) => {
  expect(dayInWords(date)).toBe(words);
});
