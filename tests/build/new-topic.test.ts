import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { topicFiles, withCalculator, withGuard } from '../../src/build/new-topic.js';
import { readCases } from '../../src/checks/case.ts';

const subjects = readdirSync('src/core', { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'math')
  .map(({ name }) => name);

test('what a new topic begins with compiles, and its check waits for a published value', () => {
  const [id, subject] = ['sample-topic', 'motion'];
  const files = topicFiles(id, subject);
  const changed = {
    ...files,
    'src/calculators/index.ts': withCalculator(
      readFileSync('src/calculators/index.ts', 'utf8'),
      id,
      subject,
    ),
    [`tests/core/${subject}/guards.ts`]: withGuard(
      readFileSync(`tests/core/${subject}/guards.ts`, 'utf8'),
      id,
      subject,
    ),
  };
  const texts = new Map(Object.entries(changed).map(([name, text]) => [resolve(name), text]));
  const read = ts.readConfigFile('tsconfig.json', (path) => ts.sys.readFile(path));
  const { options } = ts.parseJsonConfigFileContent(read.config, ts.sys, '.');
  const host = ts.createCompilerHost(options);
  const { fileExists, getSourceFile } = host;
  host.fileExists = (path) => texts.has(path) || fileExists.call(host, path);
  host.getSourceFile = (path, ...rest) => {
    const text = texts.get(path);
    return text === undefined
      ? getSourceFile.call(host, path, ...rest)
      : ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  };
  const roots = [...texts.keys()].filter((path) => path.endsWith('.ts'));
  const program = ts.createProgram(roots, options, host);
  const said = roots.flatMap((path) =>
    ts
      .getPreEmitDiagnostics(program, program.getSourceFile(path))
      .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n')),
  );
  expect(said).toEqual([]);
  const [check] = readCases('checks.yaml', parse(files[`content/topics/${id}/checks.yaml`] ?? ''));
  expect(check?.expected[0]).toMatchObject({ published: '0' });
});

test.each(subjects)('%s has what a new topic adds a line to', (subject) => {
  expect(existsSync(`tests/core/${subject}/guards.ts`)).toBe(true);
});
