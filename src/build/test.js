import { readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findOrInstallBrowser, noBrowser } from './browser.js';
import { runTool } from './tool.js';

/** @type {readonly (readonly [what: string, tool: string, options: readonly string[]])[]} */
const groups = [
  ['Format', 'prettier', ['--check', '--log-level=warn', '.']],
  ['Lint and layers', 'eslint', ['--max-warnings=0', '.']],
  ['Types of pages', 'astro', ['check', '--minimumFailingSeverity', 'warning']],
  ['Types of components', 'svelte-check', ['--tsconfig', './tsconfig.json', '--fail-on-warnings']],
];

for (const [what, tool, options] of groups) {
  const began = Date.now();
  const { code, text } = await runTool(tool, options, { quiet: true });
  const seconds = ((Date.now() - began) / 1000).toFixed(1);
  if (code !== 0) {
    console.error(text.trim());
    console.error(`${what}: failed (${tool} ${options.join(' ')}). Nothing after it was run.`);
    process.exit(1);
  }
  console.log(`${what}: passed in ${seconds} s`);
}

const browser = findOrInstallBrowser();
if (browser === undefined) {
  console.error(noBrowser);
  process.exit(1);
}

const report = join(tmpdir(), `throwbook-tests-${process.pid}.json`);
const { code } = await runTool(
  'vitest',
  ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
  { env: { CHROME_PATH: browser } },
);

/** @type {{ numPassedTests: number, numFailedTests: number, testResults: { status: string, assertionResults: unknown[] }[] }} */
let counts;
try {
  counts = JSON.parse(readFileSync(report, 'utf8'));
} catch {
  console.error('The tests stopped before they could be counted.');
  process.exit(code === 0 ? 1 : code);
} finally {
  rmSync(report, { force: true });
}
// A file that could not be loaded holds no test that could be counted as failed.
const unread = counts.testResults.filter(
  ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
).length;
console.log(`${counts.numPassedTests} passed, ${counts.numFailedTests + unread} failed`);
process.exitCode = code !== 0 || counts.numPassedTests === 0 ? 1 : 0;
