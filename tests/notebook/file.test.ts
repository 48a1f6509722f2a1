import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { admit } from '../../src/notebook/admit.ts';
import { fileFormat, fromFile, longestFile, toFile } from '../../src/notebook/file.ts';
import { plainSets } from '../../src/notebook/job-sets.ts';
import { emptySets, type SetValues } from '../../src/notebook/values.ts';
import { units } from '../../src/units/units.ts';
import { faults, type Json, type Schema } from '../schema.ts';

const values: SetValues = {
  ...emptySets(),
  baseline: {
    pistonMass: { text: '495.2', unit: 'g', plusMinus: '0.1' },
    bore: { text: '3 9/16"', unit: 'in' },
    strokesPerCycle: { text: 'four', unit: '' },
  },
  candidate: { pistonMass: { text: 'heavy\n“quoted”', unit: 'g' } },
};
const saved = toFile({ job: 'No.17', values }, '2026-11-25');

const schema = JSON.parse(
  readFileSync(new URL('../../public/notebook.schema.json', import.meta.url), 'utf8'),
) as Schema;

describe('a saved file', () => {
  test('names its format, version and schema, and keeps one value a line', () => {
    expect(saved).toContain('"$schema": "notebook.schema.json"');
    expect(saved.split('\n')).toContain(
      '      "pistonMass": {"text":"495.2","unit":"g","plusMinus":"0.1"},',
    );
    expect(JSON.parse(saved)).toMatchObject({
      format: fileFormat,
      version: 2,
      saved: '2026-11-25',
    });
  });

  test('is what the published schema describes', () => {
    expect(faults(JSON.parse(saved) as Json, schema)).toEqual([]);
    expect(
      faults(JSON.parse(toFile({ job: '', values: emptySets() }, '2026-11-25')) as Json, schema),
    ).toEqual([]);
  });

  test.each([
    ['format', { format: 'another' }],
    ['version', { version: 0 }],
    ['version', { version: 1.5 }],
    ['job', { job: 5 }],
    ['sets', { sets: { baseline: {} } }],
    ['sets', { sets: { baseline: {}, candidate: {}, fifth: {} } }],
    ['value', { sets: { baseline: { bore: { text: '1' } }, candidate: {} } }],
    ['value', { sets: { baseline: { bore: { text: '1', unit: 'g mm' } }, candidate: {} } }],
    ['value', { sets: { baseline: { bore: { text: '1', unit: 'g', si: 1 } }, candidate: {} } }],
    ['name', { sets: { baseline: { 'two words': { text: '1', unit: 'g' } }, candidate: {} } }],
  ])('the schema refuses a wrong %s', (_, wrong: Record<string, Json>) => {
    const file = { ...(JSON.parse(saved) as Record<string, Json>), ...wrong };
    expect(faults(file, schema)).toHaveLength(1);
  });

  test('every unit id of the site fits the schema', () => {
    const pattern = new RegExp(
      schema.$defs?.['value']?.properties?.['unit']?.pattern ?? 'none',
      'u',
    );
    for (const id of ['', ...Object.keys(units)]) expect(id).toMatch(pattern);
  });

  test('keeps where a number is from and what is noted of it; what is damaged of that costs no number', () => {
    const told = {
      baseline: {
        bore: { text: '86', unit: 'mm', from: 'drawing', note: '<b>=1+1</b> "two"\nlines' },
        stroke: { text: '88', unit: 'mm', from: 'measured' },
        pistonMasses: { text: '428.0; 427.1', unit: 'g', marks: ['', '=A"1'] },
      },
      candidate: { bore: { text: '86.5', unit: 'mm', note: 'honed' } },
    } as const;
    const file = toFile({ job: '', values: { ...emptySets(), ...told } }, '2026-11-25');
    expect(fromFile(file)).toMatchObject({ values: told, problems: [], usable: true });
    expect(faults(JSON.parse(file) as Json, schema)).toEqual([]);
    const odd = file
      .replace('"from":"drawing"', '"from":"toString"')
      .replace('"note":"honed"', '"note":5')
      .replace('"marks":["",', '"marks":[7,');
    expect(fromFile(odd).values.baseline['pistonMasses']).toEqual({
      text: '428.0; 427.1',
      unit: 'g',
    });
    expect(fromFile(odd).values.baseline['bore']).toEqual({
      text: '86',
      unit: 'mm',
      note: told.baseline.bore.note,
    });
    expect(fromFile(odd).values.candidate['bore']).toEqual({ text: '86.5', unit: 'mm' });
    expect(fromFile(odd).problems).toEqual([]);
  });

  test('comes back unchanged', () => {
    expect(fromFile(saved)).toEqual({
      job: 'No.17',
      values,
      sets: plainSets,
      problems: [],
      usable: true,
    });
    expect(fromFile(`\uFEFF${saved.replaceAll('\n', '\r\n')}`)).toMatchObject({
      values,
      problems: [],
    });
  });

  test('any text comes back from it', () => {
    const value = fc.record({
      text: fc.string({ unit: 'binary' }),
      unit: fc.constantFrom('', ...Object.keys(units)),
    });
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary' }),
        fc.dictionary(
          fc.stringMatching(/^[a-z][A-Z0-9]{0,8}$/).filter((name) => name !== 'v'),
          value,
        ),
        (job, set) => {
          const text = toFile({ job, values: { ...emptySets(), baseline: set } }, '2026-11-25');
          expect(fromFile(text)).toEqual({
            job,
            values: { ...emptySets(), baseline: { ...set } },
            sets: plainSets,
            problems: [],
            usable: true,
          });
          expect(faults(JSON.parse(text) as Json, schema)).toEqual([]);
        },
      ),
    );
  });
});

describe('a damaged file', () => {
  test.each([
    '',
    'hello',
    '{}',
    '[]',
    'null',
    '5',
    '{"format":"another","version":1,"sets":{}}',
    '\u0000',
  ])('%j is refused in one sentence', (text) => {
    const read = fromFile(text);
    expect(read.usable).toBe(false);
    expect(read.problems).toHaveLength(1);
    expect(read.problems[0]).toMatch(/None of it was used\.$/);
  });

  test('too long is refused before it is taken apart', () => {
    const read = fromFile('['.repeat(longestFile + 1));
    expect(read).toMatchObject({ usable: false });
    expect(read.problems[0]).toContain(String(longestFile));
  });

  test('cut short: the lines that are whole are used, and it says how many', () => {
    const cut = fromFile(saved.slice(0, saved.indexOf('"candidate"') - 12));
    expect(cut).toMatchObject({ job: 'No.17', usable: true });
    expect(Object.keys(cut.values.baseline)).toEqual(['bore', 'pistonMass', 'strokesPerCycle']);
    expect(cut.problems).toEqual([
      'This file is damaged. 3 values could still be read; the others are lost.',
    ]);
  });

  test('cut anywhere, no value is another than the one saved', () => {
    for (let length = 0; length < saved.length - 2; length += 1) {
      const cut = fromFile(saved.slice(0, length));
      expect(cut.problems).toHaveLength(1);
      for (const set of ['baseline', 'candidate'] as const) {
        for (const [name, value] of Object.entries(cut.values[set]))
          expect(value).toEqual(values[set][name]);
      }
    }
  });

  test('one damaged value is named, the rest used', () => {
    const file = JSON.parse(saved) as { sets: { baseline: Record<string, unknown> } };
    file.sets.baseline['bore'] = { text: 90.5, unit: 'mm' };
    file.sets.baseline['stroke'] = { text: '73', unit: 'cubit' };
    file.sets.baseline['two words'] = { text: '1', unit: 'g' };
    const read = fromFile(JSON.stringify(file));
    expect(read.problems).toEqual([
      'The value of bore (baseline) is damaged; it is not used.',
      'The value of stroke (baseline) is damaged; it is not used.',
      'The value of two words (baseline) is damaged; it is not used.',
    ]);
    expect(read.values.candidate).toEqual(values.candidate);
  });

  test('of a later version: named and used as far as it goes', () => {
    const read = fromFile(saved.replace('"version": 2', '"version": 3'));
    expect(read.usable).toBe(true);
    expect(read.problems[0]).toContain('later version');
    expect(read.values).toEqual(values);
  });
});

describe('a file with very many faults', () => {
  const many = 20_000;
  function fileOf(value: unknown): string {
    const names = Array.from({ length: many }, (_, i) => [`n${String(i)}`, value] as const);
    const sets = { baseline: Object.fromEntries(names), candidate: {} };
    return JSON.stringify({ format: fileFormat, version: 1, job: '', sets });
  }

  test('names a few unknown quantities, counts the others, and keeps them all', () => {
    const read = fromFile(fileOf({ text: '1', unit: 'g' }));
    expect(read.problems).toEqual([]);
    const admitted = admit(read.values, new Map(), true);
    expect(admitted.problems).toEqual([
      '“n0”, “n1”, “n2”, “n3”, “n4”, “n5”, “n6”, “n7” and 19992 others are no quantities known here. ' +
        'They are kept, but nothing uses them.',
    ]);
    expect(Object.keys(admitted.values.baseline)).toHaveLength(many);
  });

  test('names a few damaged values and counts the others', () => {
    const { problems } = fromFile(fileOf(5));
    expect(problems).toHaveLength(9);
    expect(problems[0]).toBe('The value of n0 (baseline) is damaged; it is not used.');
    expect(problems.at(-1)).toBe('And 19992 more of this kind.');
  });

  test('says one name or two in full', () => {
    const value = { text: '1', unit: 'g' };
    const sentence = (names: readonly string[]): readonly string[] => {
      const baseline = Object.fromEntries(names.map((name) => [name, value]));
      return admit({ ...emptySets(), baseline }, new Map(), true).problems;
    };
    expect(sentence(['wingspan'])).toEqual([
      '“wingspan” is no quantity known here. It is kept, but nothing uses it.',
    ]);
    expect(sentence(['a', 'b'])).toEqual([
      '“a” and “b” are no quantities known here. They are kept, but nothing uses them.',
    ]);
  });
});
