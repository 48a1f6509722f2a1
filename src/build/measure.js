import { readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { findOrInstallBrowser, noBrowser } from './browser.js';
import { serve } from './serve.js';
import { build, root } from './tool.js';

/*
 * Measures the site against its budgets and prints a table. Benchmarks of this machine on this day, not tests:
 * a missed budget does not stop anything, it is there to be read.
 */
const budget = { script: 45, page: 150, keystroke: 16, compute: 1 };
const slowed = 4;

/** @type {(readonly string[])[]} */
const table = [['What', 'Measured', 'Budget', 'Kept']];
/** @type {(what: string, measured: string, limit?: string, kept?: boolean) => void} */
function note(what, measured, limit = '', kept = undefined) {
  table.push([what, measured, limit, kept === undefined ? '' : kept ? 'yes' : 'NO']);
}

/** @param {string} folder @returns {string[]} addresses of all pages below the site's root */
function pagesOf(folder) {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('index.html'))
    .map((name) => relative('.', name).split(sep).slice(0, -1).join('/'))
    .map((path) => (path === '' ? '' : `${path}/`))
    .sort();
}

/** @param {readonly number[]} values @param {number} share */
function at(values, share) {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

/** @param {number} bytes */
function kilobytes(bytes) {
  return `${(bytes / 1000).toFixed(1)} kB`;
}

/**
 * Everything a first view fetches, each compressed by itself; how much of it is script; and how much script it is
 * once a number has been written and every part of the page has followed.
 *
 * @param {import('playwright-core').Browser} browser
 * @param {string} url
 */
async function weigh(browser, url) {
  const context = await browser.newContext();
  const page = await context.newPage();
  /** @type {Promise<readonly [boolean, number]>[]} */
  const parts = [];
  page.on('response', (response) => {
    const type = response.request().resourceType();
    parts.push(
      response.body().then(
        (body) => {
          const packed = /woff2/u.test(response.url())
            ? body.length
            : brotliCompressSync(body).length;
          return /** @type {const} */ ([type === 'script', packed]);
        },
        () => /** @type {const} */ ([false, 0]),
      ),
    );
  });
  await page.goto(url, { waitUntil: 'networkidle' });
  // What is fetched when the page is idle belongs to the first view too.
  await page.waitForTimeout(2500);
  const { script, whole } = await sum();
  const used = (await write(page)) ? (await sum()).script : undefined;
  await context.close();
  return { script, whole, used };

  async function sum() {
    const sizes = await Promise.all(parts);
    return {
      script: sizes.reduce((all, [isScript, size]) => all + (isScript ? size : 0), 0),
      whole: sizes.reduce((all, [, size]) => all + size, 0),
    };
  }
}

const firstField = '[data-calculator] input[type="text"]';

/**
 * Writes a number as a reader does, and waits until every part of the page has followed.
 *
 * @param {import('playwright-core').Page} page
 * @returns {Promise<boolean>} false when the page has no field
 */
async function write(page) {
  const field = page.locator(firstField).first();
  if ((await field.count()) === 0) return false;
  await field.click();
  await page.locator('[data-calculator][data-alive]').first().waitFor();
  await field.press('End');
  await field.press('Backspace');
  await field.press('4');
  await page.waitForFunction(
    () =>
      document.querySelector(
        ':is([data-calculator], [data-figure], [data-notebook-bar]):not([data-alive])',
      ) === null,
  );
  await page.waitForTimeout(2500);
  return true;
}

/**
 * From a key in a field to all that can be seen computed, written and laid out, with the processor slowed. What
 * is off the screen follows when the keys are quiet, and is not waited for.
 *
 * @param {import('playwright-core').Browser} browser
 * @param {string} url
 * @returns {Promise<number[]>} milliseconds, one a keystroke; none when the page has no field
 */
async function strike(browser, url) {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(url, { waitUntil: 'networkidle' });
  if (!(await write(page))) {
    await context.close();
    return [];
  }
  const devtools = await context.newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  const times = await page.evaluate(async (selector) => {
    const found = document.querySelector(selector);
    if (!(found instanceof HTMLInputElement)) return [];
    const field = found;
    field.focus();
    const typed = field.value;
    /** @type {number[]} */
    const spent = [];
    for (let count = 0; count < 40; count += 1) {
      const changed = typed.replace(/\d(?=\D*$)/u, String(count % 10));
      const began = performance.now();
      field.value = changed;
      field.dispatchEvent(new InputEvent('input', { bubbles: true, inputType: 'insertText' }));
      // Results are written in microtasks of the event; reading a height makes the page lay itself out.
      for (let turn = 0; turn < 5; turn += 1) await Promise.resolve();
      void document.body.offsetHeight;
      spent.push(performance.now() - began);
      await new Promise((done) => setTimeout(done, 250));
    }
    return spent;
  }, firstField);
  await context.close();
  return times;
}

/** Times one warm computation of each calculator with its example numbers. */
async function compute() {
  const { calculators } = await import('../calculators/index.ts');
  const { readList, readQuantity } = await import('../units/read.ts');
  for (const calculator of Object.values(calculators)) {
    /** @type {Record<string, unknown>} */
    const input = {};
    for (const [name, entry] of Object.entries(calculator.inputs)) {
      const typed = entry.demo.baseline;
      if (entry.type === 'choice') {
        input[name] = typed;
        continue;
      }
      const context = { label: entry.label, kind: entry.kind, unit: entry.metric };
      const read =
        entry.type === 'list' ? readList(typed, context, entry.most) : readQuantity(typed, context);
      if (read.ok) input[name] = read.si;
    }
    const work = /** @type {(input: unknown) => unknown} */ (calculator.compute);
    for (let count = 0; count < 300; count += 1) work(input);
    const times = Array.from({ length: 200 }, () => {
      const began = performance.now();
      work(input);
      return performance.now() - began;
    });
    const middle = at(times, 0.5);
    note(
      `${calculator.id}: one set computed, warm`,
      `${middle.toFixed(3)} ms`,
      `${budget.compute} ms (a whole cycle)`,
      middle < budget.compute,
    );
  }
}

const program = findOrInstallBrowser();
if (program === undefined) {
  console.error(noBrowser);
  process.exit(1);
}
const began = Date.now();
const built = await build({ quiet: true });
if (built.code !== 0) {
  console.error(built.text);
  console.error('Nothing was measured: the site was not built.');
  process.exit(1);
}
const seconds = (Date.now() - began) / 1000;
const pages = pagesOf(join(root, 'dist'));
note(
  'Build',
  `${seconds.toFixed(1)} s for ${pages.length} pages: ${(seconds / pages.length).toFixed(2)} s a page`,
  'linear in pages',
);

const site = await serve(join(root, 'dist'), 0);
const browser = await chromium.launch({ executablePath: program, args: ['--no-sandbox'] });
try {
  for (const path of pages) {
    const name = `/${path}`;
    const { script, whole, used } = await weigh(browser, site.address + path);
    note(
      `${name}: script of a first view`,
      kilobytes(script),
      `${budget.script} kB`,
      script / 1000 <= budget.script,
    );
    if (used !== undefined) note(`${name}: script, all parts in use`, kilobytes(used));
    note(
      `${name}: whole first view`,
      kilobytes(whole),
      `${budget.page} kB`,
      whole / 1000 <= budget.page,
    );
  }
  for (const path of pages) {
    const times = await strike(browser, site.address + path);
    if (times.length === 0) continue;
    // Judged by the median: a single key may meet the collecting of garbage, or whatever else the machine does.
    const [middle, slow] = [at(times, 0.5), at(times, 0.95)];
    note(
      `/${path}: keystroke to results, CPU slowed ${slowed}×`,
      `${middle.toFixed(1)} ms (95 %: ${slow.toFixed(1)} ms)`,
      `${budget.keystroke} ms`,
      middle <= budget.keystroke,
    );
  }
} finally {
  await browser.close();
  await site.close();
}
await compute();

const widths = [0, 1, 2].map((column) =>
  Math.max(...table.map((row) => (row[column] ?? '').length)),
);
for (const row of table)
  console.log(
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join('  ')
      .trimEnd(),
  );
