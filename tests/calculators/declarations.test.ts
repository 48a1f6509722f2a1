import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';

const all: Readonly<Record<string, AnyCalculator>> = calculators;

/** Files of declarations, as `subject/id`. Parts of one have a second dot; `quantities` and `notes` are a subject's own. */
const files = readdirSync('src/calculators', { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap(({ name: subject }) =>
    readdirSync(join('src/calculators', subject))
      .filter((file) => /^[a-z-]+\.ts$/.test(file) && !/^(?:quantities|notes)\.ts$/.test(file))
      .map((file) => ({ subject, id: file.replace(/\.ts$/, '') })),
  )
  .filter(({ subject, id }) =>
    readFileSync(`src/calculators/${subject}/${id}.ts`, 'utf8').includes('defineCalculator('),
  );

function camel(id: string): string {
  return id.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

describe.each(files)('src/calculators/$subject/$id.ts', ({ subject, id }) => {
  test('stands in the record of all calculators', () => {
    expect(
      Object.keys(all).includes(id),
      `src/calculators/index.ts does not name ${id}. Add the line: import { ${camel(id)} } from './${subject}/${id}.ts'; and to the record: '${id}': ${camel(id)},`,
    ).toBe(true);
  });

  test('declares the calculator of its own name', () => {
    expect(all[id]?.id, `the id in src/calculators/${subject}/${id}.ts must be '${id}'`).toBe(id);
  });
});

test('every calculator of the record has its file', () => {
  const ids = new Set(files.map(({ id }) => id));
  expect(Object.keys(all).filter((id) => !ids.has(id))).toEqual([]);
});
