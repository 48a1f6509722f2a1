import { resolve } from 'node:path';
import ts from 'typescript';
import { beforeAll, describe, expect, test } from 'vitest';

/** A small declaration, with one part of it replaced. */
function declaration(part: string, by: string): string {
  const whole = `
import { defineCalculator } from '../define.ts';
import { length, maybe } from '../output.ts';
import { stroke } from '../quantities.ts';
import { is, length as lengthStep } from '../step.ts';

export const sample = defineCalculator({
  id: 'sample',
  title: 'Sample',
  purpose: 'Shows a mistake.',
  asks: ['stroke'],
  answers: ['radius'],
  inputs: { stroke },
  outputs: { radius: length('r', 'Radius'), other: maybe(length('o', 'Other')) },
  compute: ({ stroke }) => ({ radius: stroke / 2, other: { absent: 'none' } }),
  steps: { radius: is('stroke / 2', 'Half.'), half: lengthStep('h', 'radius / 2', 'Half of it.') },
  limits: [],
  validity: [],
  assumptions: [],
  cautions: [],
  sources: [],
  sweep: { input: 'stroke', output: 'radius' },
  solve: { input: 'stroke', output: 'radius' },
  exercise: { ask: 'radius', tolerance: 0.01 },
});
`;
  const changed = whole.replace(part, by);
  if (part !== '' && changed === whole) throw new Error(`the sample has no ${part}`);
  return changed;
}

const mistakes = {
  none: ['', ''],
  'undeclared output': ['radius: stroke / 2,', 'radius: stroke / 2, area: 1,'],
  'missing output': ['radius: stroke / 2, other', 'other'],
  'misspelt input': ['({ stroke }) =>', '({ stroek: stroke }) =>'],
  'misspelt step': ['{ radius: is(', '{ raduis: is('],
  'misspelt exercise': [`ask: 'radius'`, `ask: 'raduis'`],
} as const;

/** What the compiler says of each sample, by its name. */
const said = new Map<string, string>();

beforeAll(() => {
  const read = ts.readConfigFile('tsconfig.json', (path) => ts.sys.readFile(path));
  const { options } = ts.parseJsonConfigFileContent(read.config, ts.sys, '.');
  const samples = new Map(
    Object.entries(mistakes).map(([name, [part, by]]) => [
      resolve(`src/calculators/motion/sample-${name.replaceAll(' ', '-')}.ts`),
      { name, text: declaration(part, by) },
    ]),
  );
  const host = ts.createCompilerHost(options);
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (path) => samples.has(path) || fileExists.call(host, path);
  host.readFile = (path) => samples.get(path)?.text ?? readFile.call(host, path);
  host.getSourceFile = (path, ...rest) => {
    const sample = samples.get(path);
    return sample === undefined
      ? getSourceFile.call(host, path, ...rest)
      : ts.createSourceFile(path, sample.text, ts.ScriptTarget.Latest, true);
  };
  const program = ts.createProgram([...samples.keys()], options, host);
  for (const [path, { name }] of samples)
    said.set(
      name,
      ts
        .getPreEmitDiagnostics(program, program.getSourceFile(path))
        .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'))
        .join('\n'),
    );
});

describe('a mistake in a declaration is named by the compiler', () => {
  test('a right one compiles', () => {
    expect(said.get('none')).toBe('');
  });
  test.each([
    ['undeclared output', 'compute returns “area”: declare it in outputs, or do not return it'],
    ['missing output', "Property 'radius' is missing"],
    ['misspelt input', "Property 'stroek' does not exist"],
    ['misspelt step', '“raduis” is no output: correct the name, or make the step with a symbol'],
    ['misspelt exercise', '"raduis"'],
  ])('%s: %s', (name, words) => {
    expect(said.get(name)).toContain(words);
  });
});
