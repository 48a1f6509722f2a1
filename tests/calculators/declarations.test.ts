import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { foldedInputs } from '../../src/calculators/group.ts';
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

describe.each(Object.values<AnyCalculator>(calculators))(
  'what comes first of $id',
  (calculator) => {
    const { asks, answers, inputs, outputs, sweep, solve } = calculator;

    test('at most six numbers are asked for, each once and each with an input', () => {
      expect(asks.length).toBeGreaterThan(0);
      expect(asks.length).toBeLessThanOrEqual(6);
      expect(new Set(asks).size).toBe(asks.length);
      expect(asks.filter((name) => inputs[name] === undefined)).toEqual([]);
    });

    test('at most six results answer, the large ones among them and at most three', () => {
      expect(answers.length).toBeGreaterThan(0);
      expect(answers.length).toBeLessThanOrEqual(6);
      expect(new Set(answers).size).toBe(answers.length);
      expect(answers.filter((name) => (outputs[name]?.type ?? 'series') === 'series')).toEqual([]);
      const main = Object.entries(outputs).flatMap(([name, output]) =>
        output.type !== 'series' && output.main === true ? [name] : [],
      );
      expect(main.filter((name) => !answers.includes(name))).toEqual([]);
      expect(main.length).toBeGreaterThan(0);
      expect(main.length).toBeLessThanOrEqual(3);
    });

    test('no input is lost: each is asked for or folded, once', () => {
      const folded = foldedInputs(calculator).flatMap(({ entries }) =>
        entries.map(({ name }) => name),
      );
      expect([...asks, ...folded].sort()).toEqual(Object.keys(inputs).sort());
      expect(inputs[sweep.input] ?? inputs[solve.input]).toBeDefined();
    });
  },
);

test('every calculator of the record has its file', () => {
  const ids = new Set(files.map(({ id }) => id));
  expect(Object.keys(all).filter((id) => !ids.has(id))).toEqual([]);
});
