import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { root, runTool } from './tool.js';

/*
 * npm run new-topic <id> <subject>: writes the files of a topic, with a check that fails until it is given a
 * published value. What they hold is a model as small as can be (half of the stroke), to be replaced.
 */

/** @param {string} id */
function camelCase(id) {
  return id.replace(/-([a-z])/gu, (_, /** @type {string} */ letter) => letter.toUpperCase());
}

/**
 * The files of a topic by their path, ready to be replaced by a real one.
 *
 * @param {string} id
 * @param {string} subject
 * @returns {Readonly<Record<string, string>>}
 */
export function topicFiles(id, subject) {
  const words = id.split('-');
  const title = [
    words[0]?.replace(/^./u, (letter) => letter.toUpperCase()),
    ...words.slice(1),
  ].join(' ');
  const camel = camelCase(id);
  const Pascal = camel.replace(/^./u, (letter) => letter.toUpperCase());
  return {
    [`src/core/${subject}/${id}.ts`]: `import { above } from '../refuse.ts';

/** What ${title.toLowerCase()} is worked from. */
export interface ${Pascal}Input {
  /** [m] Twice the throw. */
  readonly stroke: number;
}

/**
 * The throw [m] of a stroke [m]: half of it. Throws OutOfDomain for a stroke that is not greater than 0.
 *
 * Source: the book, its year, its section.
 */
export function ${camel}(input: ${Pascal}Input): number {
  return above(input, 'stroke') / 2;
}
`,
    [`src/calculators/${subject}/${id}.ts`]: `import { ${camel} as answerOf } from '../../core/${subject}/${id}.ts';
import { defineCalculator } from '../define.ts';
import { length } from '../output.ts';
import { stroke } from '../quantities.ts';
import { is, millimetres } from '../step.ts';

/** One sentence for a reader of the code. */
export const ${camel} = defineCalculator({
  id: '${id}',
  title: '${title}',
  purpose: 'One sentence: what it answers.',
  asks: ['stroke'],
  answers: ['answer'],
  inputs: { stroke },
  outputs: {
    answer: length('r', 'Throw', { phrase: 'The throw', main: true }),
  },
  compute: (input) => ({ answer: answerOf(input) }),
  steps: {
    answer: is('stroke / 2', 'The formula in words.', { units: millimetres }),
  },
  limits: [],
  validity: [
    {
      id: 'stroke',
      label: 'Stroke',
      symbol: 'S',
      kind: 'length',
      of: (input) => input.stroke,
      possible: [0, 1],
    },
  ],
  assumptions: ['What the model leaves out, and what that costs.'],
  cautions: [],
  sources: [],
  sweep: { input: 'stroke', output: 'answer' },
  solve: { input: 'stroke', output: 'answer' },
  exercise: { ask: 'answer', tolerance: 0.01 },
});
`,
    [`content/topics/${id}/index.mdx`]: `---
title: ${title}
summary: One sentence that gives nothing away.
order: 99
part: Motion and mass
calculators: [${id}]
teaches:
  - what a reader can do afterwards
cautions: []
---

<Predict
  id="${id}-first"
  question="A question with three answers, the likely wrong ones among them?"
  options={['one', 'two', 'three']}
  right={1}
>

Why the second is right, and what the others come from.

</Predict>

<Calculator id="${id}" />

<Checked topic="${id}" />

## One idea

The text.
`,
    [`content/topics/${id}/checks.yaml`]: `- id: first-published-value
  calculator: ${id}
  title: What the case is
  source: khurmi-gupta-2009
  where: the example, its page
  evidence: memory
  inputs: { stroke: 80 mm }
  expected:
    - output: answer
      published: '0'
      unit: mm
`,
    [`tests/core/${subject}/${id}.test.ts`]: `import { expect, test } from 'vitest';
import { ${camel} } from '../../../src/core/${subject}/${id}.ts';

test('is half of the stroke', () => {
  expect(${camel}({ stroke: 0.08 })).toBe(0.04);
});
`,
  };
}

/**
 * The record of all calculators with one more.
 *
 * @param {string} record text of src/calculators/index.ts
 * @param {string} id
 * @param {string} subject
 */
export function withCalculator(record, id, subject) {
  const camel = camelCase(id);
  return record
    .replace('\n\n', `\nimport { ${camel} } from './${subject}/${id}.ts';\n\n`)
    .replace(/\n\} as const;/u, `\n  ${camel === id ? id : `'${id}': ${camel}`},\n} as const;`);
}

/**
 * A subject's table of guards with a row for the guard of the new core file.
 *
 * @param {string} table text of tests/core/<subject>/guards.ts
 * @param {string} id
 * @param {string} subject
 */
export function withGuard(table, id, subject) {
  const camel = camelCase(id);
  return (
    `import { ${camel} } from '../../../src/core/${subject}/${id}.ts';\n` +
    table.replace(
      /\n\};\s*$/u,
      `\n  '${subject}/${id}.ts': [\n    guarded({ stroke: 0.08 }, ${camel}, [['stroke', 'greater than', 0]]),\n  ],\n};\n`,
    )
  );
}

/** @param {string} why @returns {never} */
function stop(why) {
  console.error(why);
  console.error(
    'Usage: npm run new-topic <id> <subject>, for example: npm run new-topic rod-angularity motion',
  );
  process.exit(1);
}

/** @param {string} id @param {string} subject */
async function write(id, subject) {
  const subjects = readdirSync(join(root, 'src/core'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== 'math')
    .map(({ name }) => name);
  if (!/^[a-z]+(-[a-z]+)*$/u.test(id))
    stop(`An id is written in lower case with hyphens; it is “${id}”.`);
  if (!subjects.includes(subject))
    stop(`A subject is one of ${subjects.join(', ')}; it is “${subject}”.`);
  const files = topicFiles(id, subject);
  for (const name of Object.keys(files))
    if (existsSync(join(root, name))) stop(`${name} is there already.`);
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(root, name)), { recursive: true });
    writeFileSync(join(root, name), text);
  }
  const lists = {
    'src/calculators/index.ts': withCalculator,
    [`tests/core/${subject}/guards.ts`]: withGuard,
  };
  for (const [name, add] of Object.entries(lists)) {
    const path = join(root, name);
    writeFileSync(path, add(readFileSync(path, 'utf8'), id, subject));
  }
  await runTool('prettier', [
    '--write',
    '--log-level=warn',
    ...Object.keys(lists),
    ...Object.keys(files),
  ]);

  console.log(`Written, with a line each in ${Object.keys(lists).join(' and ')}:
${Object.keys(files)
  .map((name) => `  ${name}`)
  .join('\n')}
Next: npx vitest run --project unit tests/core/${subject}/${id}.test.ts tests/content tests/calculators
The check in content/topics/${id}/checks.yaml fails until it holds what a source prints.`);
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  await write(process.argv[2] ?? '', process.argv[3] ?? '');
