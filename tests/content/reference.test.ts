import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { calculators } from '../../src/calculators/index.ts';
import * as quantities from '../../src/calculators/quantities.ts';
import { quantityNotes } from '../../src/calculators/quantity-notes.ts';
import { shortSource } from '../../src/components/text/short-source.ts';

interface Caution {
  readonly id: string;
  readonly title: string;
  readonly sentences: readonly string[];
}
interface Term {
  readonly id: string;
  readonly term: string;
  readonly see?: readonly string[];
}

function read<T>(file: string): readonly T[] {
  return parse(readFileSync(new URL(`../../content/${file}`, import.meta.url), 'utf8')) as T[];
}

const cautions = read<Caution>('cautions.yaml');
const terms = read<Term>('glossary.yaml');

describe('cautions', () => {
  test('every block that a calculator asks for is there', () => {
    const known = cautions.map((caution) => caution.id);
    for (const calculator of Object.values(calculators)) {
      expect(known, calculator.id).toEqual(expect.arrayContaining([...calculator.cautions]));
    }
  });

  test('none promises anything', () => {
    const text = JSON.stringify(cautions);
    expect(text).not.toMatch(/\b(safe|guarantee|proven|will last)\b/i);
  });
});

describe('glossary', () => {
  test('ids and terms are each there once', () => {
    expect(new Set(terms.map((term) => term.id)).size).toBe(terms.length);
    expect(new Set(terms.map((term) => term.term)).size).toBe(terms.length);
  });

  test('every "see" leads to a term', () => {
    const known = new Set(terms.map((term) => term.id));
    const dead = terms.flatMap((term) => (term.see ?? []).filter((id) => !known.has(id)));
    expect(dead).toEqual([]);
  });
});

test('every quantity says how it is measured', () => {
  expect(Object.keys(quantityNotes).sort()).toEqual(Object.keys(quantities).sort());
  for (const [name, note] of Object.entries(quantityNotes)) {
    expect(note.measure, name).toMatch(/^[A-Z].*\.$/s);
  }
});

test.each([
  ['F. P. Beer, E. R. Johnston et al.', 'Beer and others 2009'],
  ['R. S. Khurmi, J. K. Gupta', 'Khurmi and Gupta 2009'],
  ['R. S. Khurmi and J. K. Gupta', 'Khurmi and Gupta 2009'],
  ['T. Bevan', 'Bevan 2009'],
  ['Joint Committee for Guides in Metrology', 'Joint Committee for Guides in Metrology 2009'],
])('the short form of %s', (authors, short) => {
  expect(shortSource({ authors, year: '2009' })).toBe(short);
});
