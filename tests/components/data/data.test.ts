import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { describe, expect, it } from 'vitest';
import { calculators } from '../../../src/calculators/index.ts';
import { runAll, summarise } from '../../../src/checks/coverage.ts';
import { loadChecks, loadSources } from '../../../src/checks/files.ts';
import { allData } from '../../../src/components/data/all-data.ts';
import {
  csvOf,
  filesOf,
  jsonOf,
  schemaOf,
  type DataSet,
} from '../../../src/components/data/data-set.ts';
import type { Term } from '../../../src/components/data/words-data.ts';
import { faults, type Json, type Schema } from '../../schema.ts';

const terms = (parse(readFileSync('content/glossary.yaml', 'utf8')) as Term[]).map((term) => ({
  ...term,
  see: (term.see as readonly string[] | undefined) ?? [],
}));
const sets = allData(terms);
const setOf = new Map(sets.map((set) => [set.path, set]));

/** The cells of a CSV text, row by row, as RFC 4180 says. */
function cellsOf(csv: string): readonly (readonly string[])[] {
  const rows: string[][] = [[]];
  for (const [, quoted, plain = '', end] of csv.matchAll(
    /(?:"((?:[^"]|"")*)"|([^,\r]*))(,|\r\n)/g,
  )) {
    rows.at(-1)?.push(quoted?.replaceAll('""', '"') ?? plain);
    if (end === '\r\n') rows.push([]);
  }
  return rows.slice(0, -1);
}

describe.each(sets.map((set) => [set.path, set] as const))('data/%s', (_, set) => {
  const json = JSON.parse(jsonOf(set, 3)) as { readonly [key: string]: Json };
  const schema = JSON.parse(schemaOf(set)) as Schema;

  it('is what its schema describes, and names that schema', () => {
    expect(faults(json, schema)).toEqual([]);
    const files = filesOf(set, 3).map(({ path }) => path);
    const target = new URL(String(json['$schema']), `https://host/${set.path}.json`).pathname;
    expect(files).toContain(target.slice(1));
    expect(json['calculations']).toBe(3);
  });

  it('holds the same rows in both forms', () => {
    const [head, ...rows] = cellsOf(csvOf(set));
    expect(head).toEqual(set.columns.map(({ name }) => name));
    expect(rows).toHaveLength(set.rows.length);
    expect(json['rows']).toHaveLength(set.rows.length);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([set.columns.length]));
  });

  it('has no cell that a spreadsheet would work out', () => {
    for (const cell of cellsOf(csvOf(set)).flat())
      if (/^[=+\-@\t\r\n\u2212]/.test(cell)) expect(Number(cell), cell).not.toBeNaN();
  });

  it('names each column once, and says what it is', () => {
    const names = set.columns.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const { name, means } of set.columns) expect(means, name).toMatch(/^[A-Z].*\.$/);
    // A column that nothing ever stands in says nothing.
    for (const name of names)
      expect(
        set.rows.some((row) => row[name] !== undefined),
        name,
      ).toBe(true);
  });
});

it('the checks are those of the page, row by row and in number', () => {
  const rows = setOf.get('checks')?.rows ?? [];
  const total = summarise(runAll(loadChecks(), calculators));
  expect(rows).toHaveLength(total.values);
  expect(new Set(rows.map((row) => `${String(row['topic'])}/${String(row['case'])}`)).size).toBe(
    total.cases,
  );
  const values = rows.filter((row) => row['value'] !== undefined);
  expect(values).toHaveLength(total.values - total.bands);
  expect(rows.filter((row) => row['insteadOfMisprint'] !== undefined)).toHaveLength(
    total.misprinted,
  );
  expect(rows.filter((row) => row['passes'] !== true)).toHaveLength(total.failing);
});

it('every source that a row names is among the sources, or is no text', () => {
  const known = new Set([...Object.keys(loadSources()), 'practice', 'memory', 'own derivation']);
  for (const { path, rows } of sets)
    for (const row of rows)
      if (row['source'] !== undefined) expect(known, path).toContain(row['source']);
});

describe('a table of odd texts', () => {
  const odd: DataSet = {
    path: 'tables/odd',
    title: 'Odd',
    means: 'Odd texts.',
    columns: [
      { name: 'text', type: 'text', means: 'A text.' },
      { name: 'list', type: 'texts', means: 'Texts.' },
      { name: 'is', type: 'yes or no', means: 'Is it?' },
      { name: 'number', type: 'number', optional: true, means: 'A number.' },
    ],
    rows: [
      { text: '=1+1', list: ['−2', 'b'], is: true, number: -1.5 },
      { text: 'a "b", c\nd', list: [], is: false },
    ],
  };

  it('keeps them in JSON and makes them harmless in CSV', () => {
    const { rows } = JSON.parse(jsonOf(odd, 1)) as { readonly rows: unknown };
    expect(rows).toEqual(odd.rows);
    expect(cellsOf(csvOf(odd)).slice(1)).toEqual([
      ["'=1+1", "'−2; b", 'yes', '-1.5'],
      ['a "b", c\nd', '', 'no', ''],
    ]);
  });

  it.each([
    ['a missing cell', { list: [], is: true }],
    ['a cell of another type', { text: 5, list: [], is: true }],
    ['a list of numbers', { text: '', list: [5], is: true }],
  ])('its schema refuses %s', (_, row) => {
    const data = { $schema: '', title: '', calculations: 1, rows: [row] };
    expect(faults(data, JSON.parse(schemaOf(odd)) as Schema)).toHaveLength(1);
  });

  it('refuses a cell without a column', () => {
    expect(() => jsonOf({ ...odd, rows: [{ other: 1 }] }, 1)).toThrow(/no column “other”/);
  });
});
