import { readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findEngine, installEngines, noEngine } from './browser.js';
import { runTool } from './tool.js';

/** @type {readonly (readonly [what: string, tool: string, options: readonly string[]])[]} */
const groups = [
  ['Format', 'prettier', ['--check', '--log-level=warn', '.']],
  ['Lint and layers', 'eslint', ['--max-warnings=0', '.']],
  ['Types of pages', 'astro', ['check', '--minimumFailingSeverity', 'warning']],
  ['Types of components', 'svelte-check', ['--tsconfig', './tsconfig.json', '--fail-on-warnings']],
];

/** @param {number} began of `Date.now()` */
function secondsSince(began) {
  return `${((Date.now() - began) / 1000).toFixed(1)} s`;
}

for (const [what, tool, options] of groups) {
  const began = Date.now();
  const { code, text } = await runTool(tool, options, { quiet: true });
  if (code !== 0) {
    console.error(text.trim());
    console.error(`${what}: failed (${tool} ${options.join(' ')}). Nothing after it was run.`);
    process.exit(1);
  }
  console.log(`${what}: passed in ${secondsSince(began)}`);
}

installEngines();
const browser = findEngine('chromium');
if (browser === undefined) {
  console.error(noEngine('chromium'));
  process.exit(1);
}

/** @typedef {{ numPassedTests: number, numFailedTests: number, testResults: readonly { status: string, assertionResults: readonly unknown[] }[] }} Report */

/**
 * Runs the tests of one project and counts them. What stopped before it could be counted is one failure.
 *
 * @param {string} project
 * @param {string} browser
 */
async function runTests(project, browser) {
  const file = join(tmpdir(), `throwbook-tests-${process.pid}-${project}.json`);
  const { code } = await runTool(
    'vitest',
    [
      'run',
      `--project=${project}`,
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${file}`,
    ],
    { env: { CHROME_PATH: browser } },
  );
  try {
    const report = /** @type {Report} */ (JSON.parse(readFileSync(file, 'utf8')));
    // A file that could not be loaded holds no test that could be counted as failed.
    const unread = report.testResults.filter(
      ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
    ).length;
    const failed = report.numFailedTests + unread;
    // A run can also fail by what no test can be blamed for, or by holding none.
    const isSound = code === 0 && report.numPassedTests > 0;
    return { passed: report.numPassedTests, failed: isSound ? failed : Math.max(failed, 1) };
  } catch {
    console.error('The tests stopped before they could be counted.');
    return { passed: 0, failed: 1 };
  } finally {
    rmSync(file, { force: true });
  }
}

let passed = 0;
let failed = 0;
/** @type {string[]} */
const lines = [];
for (const [what, project] of /** @type {const} */ ([
  ['Unit tests', 'unit'],
  ['Tests of the built site', 'site'],
])) {
  const began = Date.now();
  const counted = await runTests(project, browser);
  passed += counted.passed;
  failed += counted.failed;
  lines.push(
    `${what}: ${counted.passed} passed, ${counted.failed} failed in ${secondsSince(began)}`,
  );
}
for (const engine of /** @type {const} */ (['firefox', 'webkit']))
  if (findEngine(engine) === undefined) lines.push(`Not tried: ${noEngine(engine)}`);
console.log(lines.join('\n'));
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
