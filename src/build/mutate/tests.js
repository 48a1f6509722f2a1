import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, posix } from 'node:path';

/**
 * Tests that are run together, and the beginning of the names of those that count; all when left out.
 *
 * @typedef {{ tests: string[], names?: string, slow?: boolean }} Stage
 */

const guards = 'tests/core/guards.test.ts';
const checks = 'tests/content/checks.test.ts';
/** Minutes of other tests' worth: only for what all others let pass. */
const heavy = /working\.test|gas-port-(?:fuzz|accuracy)|two-term/u;

/** @param {string} folder @returns {string[]} */
export function filesIn(folder) {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .filter((name) => name.endsWith('.ts'))
    .sort();
}

/** @type {Map<string, ReadonlySet<string>>} */
const known = new Map();

/**
 * All files that a file imports, directly or through others; types count too.
 *
 * @param {string} file
 * @returns {ReadonlySet<string>}
 */
function reachedFrom(file) {
  const found = known.get(file);
  if (found !== undefined) return found;
  const reached = new Set([file]);
  known.set(file, reached);
  for (const each of reached) {
    if (!/\.[jt]s$/u.test(each) || !existsSync(each)) continue;
    for (const [, path = ''] of readFileSync(each, 'utf8').matchAll(/from '(\.[^']+)'/gu))
      reached.add(posix.join(dirname(each), path));
  }
  return reached;
}

/**
 * The tests that may catch a mutant of a file, quickest and nearest first: its own, those of its subject, the
 * table of guards, others of `tests/core` that reach it, those of the calculators with the published values, and last the slow ones.
 *
 * @param {string} file
 * @param {'guards' | 'operators'} kind
 * @returns {Stage[]}
 */
export function stagesFor(file, kind) {
  const own = file.replace(/^src/u, 'tests').replace(/\.ts$/u, '.test.ts');
  const reaching = [...filesIn('tests/core'), ...filesIn('tests/calculators')].filter(
    (name) => name.endsWith('.test.ts') && name !== guards && reachedFrom(name).has(file),
  );
  // The count of rows reads the files as they are: only the rows themselves see a mutant.
  const table = { tests: [guards], names: '^[a-z]+/' };
  const subject = `${posix.dirname(own)}/`;
  const inCore = reaching.filter((name) => name.startsWith('tests/core/') && name !== own);
  const first = { tests: reaching.filter((name) => name === own) };
  const beside = { tests: inCore.filter((name) => name.startsWith(subject)) };
  const others = { tests: inCore.filter((name) => !name.startsWith(subject)) };
  const above = reaching.filter((name) => /^tests\/calculators\/[^/]+\//u.test(name));
  const published = { tests: [checks, ...above.filter((name) => !heavy.test(name))] };
  const slow = {
    slow: true,
    tests: ['tests/calculators/working.test.ts', ...above.filter((name) => heavy.test(name))],
  };
  const near = kind === 'guards' ? [table, first, beside] : [first, beside, table];
  return [...near, others, published, slow].filter(({ tests }) => tests.length > 0);
}
