import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { isAnswered, readAnswers, staleAnswers } from '../../src/build/mutate/answers.js';
import { mutantsOf } from '../../src/build/mutate/mutants.js';
import { filesIn, stagesFor } from '../../src/build/mutate/tests.js';

const source = `import { above, atLeast, refusal } from '../refuse.ts';

/** Speed + 1 in a comment. */
export function work(given: { readonly a: number; readonly b: -1 | 1 }, list: number[]): number {
  above(given, 'a');
  const a = atLeast(given, 'a', list.length - 1);
  if (a < 2 && list.length > 0) throw refusal(given, 'a', 'at least', 2);
  let sum = -a;
  for (const one of list) sum += one;
  return sum * Math.max(a, 1);
}

export function named(a: number): string {
  return 'all ' + \`\${a + 1}\`;
}
`;

/** What the compiler says of a text that it cannot read. */
function unread(text: string): readonly string[] {
  const { diagnostics = [] } = ts.transpileModule(text, { reportDiagnostics: true });
  return diagnostics.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '));
}

describe('the mutants of a file', () => {
  const mutants = mutantsOf('src/core/sample/work.ts', source);

  test('are its guards dropped and its operators flipped, but no types, texts and comments', () => {
    expect(mutants.map(({ kind, line, change }) => [kind, line, change])).toEqual([
      ['guards', 5, "above(given, 'a') → void 0"],
      ['guards', 6, "atLeast(given, 'a', list.length - 1) → (given)['a']"],
      ['operators', 6, 'list.length - 1 → list.length + 1'],
      ['operators', 7, 'a < 2 && list.length > 0 → a < 2 || list.length > 0'],
      ['operators', 7, 'a < 2 → a <= 2'],
      ['operators', 7, 'list.length > 0 → list.length >= 0'],
      ['guards', 7, "throw refusal(given, 'a', 'at least', 2); → ;"],
      ['operators', 8, '-a → a'],
      ['operators', 9, 'sum += one → sum -= one'],
      ['operators', 10, 'sum * Math.max(a, 1) → sum / Math.max(a, 1)'],
      ['operators', 10, 'Math.max(a, 1) → Math.min(a, 1)'],
    ]);
  });

  test('differ from it in the one place that they name', () => {
    for (const { change, text } of mutants) {
      const [was = '', is = ''] = change.split(' → ');
      expect(text).not.toBe(source);
      expect(source.replace(was, is)).toBe(text);
    }
  });

  test('can be read, in the physics too', () => {
    for (const file of filesIn('src/core').slice(0, 3))
      for (const { change, text } of mutantsOf(file, readFileSync(file, 'utf8')))
        expect(unread(text), `${file}: ${change}`).toEqual([]);
  });
});

test('a file is tried by its own test first, a guard by the table of guards', () => {
  const own = 'tests/core/math/peak.test.ts';
  const guards = 'tests/core/guards.test.ts';
  const stages = (kind: 'guards' | 'operators') =>
    stagesFor('src/core/math/peak.ts', kind).map(({ tests }) => tests);
  expect(stages('operators')[0]).toEqual([own]);
  expect(stages('guards').slice(0, 2)).toEqual([[guards], [own]]);
  // What uses the search for a peak is tried too.
  expect(stages('operators').flat()).toContain('tests/core/motion/piston-motion.test.ts');
});

describe('answers', () => {
  const answers = { 'a.ts': [{ mutant: 'a < b → a <= b', because: 'both are the end' }] };

  test('belong to one change of one file', () => {
    expect(isAnswered(answers, 'a.ts', 'a < b → a <= b')).toBe(true);
    expect(isAnswered(answers, 'a.ts', 'a < c → a <= c')).toBe(false);
    expect(isAnswered(answers, 'b.ts', 'a < b → a <= b')).toBe(false);
  });

  test('are stale where the change was tried and did not survive', () => {
    const mutant = { file: 'a.ts', change: 'a < b → a <= b' };
    expect(staleAnswers(answers, [mutant], [mutant])).toEqual([]);
    expect(staleAnswers(answers, [], [])).toEqual([]);
    expect(staleAnswers(answers, [mutant], [])).toEqual(['a.ts  a < b → a <= b']);
  });

  test('name a file and a change that are there, and a reason', () => {
    for (const [file, each] of Object.entries(readAnswers())) {
      const made = mutantsOf(file, readFileSync(file, 'utf8')).map(({ change }) => change);
      for (const { mutant, because } of each) {
        if (file.startsWith('src/core/')) expect(made, file).toContain(mutant);
        expect(because, mutant).toMatch(/^[A-Z“].{20,}\.$/u);
      }
    }
  });
});
