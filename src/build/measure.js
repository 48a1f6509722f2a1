import { readdirSync } from 'node:fs';
import { join, sep } from 'node:path';
import { chromium } from 'playwright-core';
import { findEngine, installEngines, noEngine } from './browser.js';
import { countLayout, layoutBudget, printedSides, screens } from './measure-layout.js';
import { fixedWork, machineFactor } from './measure-machine.js';
import { slowed, strike, weigh } from './measure-page.js';
import { note, noteBytes, noteTimes, printTable } from './measure-table.js';
import { serve } from './serve.js';
import { build, root } from './tool.js';

/*
 * Measures the site against its budgets and prints a table. Benchmarks of this machine on this day, not tests:
 * a missed budget does not stop anything, it is there to be read. Pages named behind the command (`npm run measure --
 * gas-port`) are measured alone.
 */
/** kB for bytes, ms for times. */
const budget = { first: 45, used: 100, whole: 150, keystroke: 16, compute: 1 };

/** @param {string} folder @returns {string[]} addresses of all pages below the site's root */
function pagesOf(folder) {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('index.html'))
    .map((name) => name.split(sep).slice(0, -1).join('/'))
    .map((path) => (path === '' ? '' : `${path}/`))
    .sort();
}

/**
 * The pages that were asked for; all when none was.
 *
 * @param {readonly string[]} pages
 * @param {readonly string[]} asked
 */
function chosen(pages, asked) {
  const paths = asked.map((name) => `${name.replace(/^\/|\/$/gu, '')}/`);
  const unknown = paths.find((path) => !pages.includes(path));
  if (unknown !== undefined)
    throw new Error(`There is no page “${unknown}”. There are: ${pages.join(' ')}`);
  return paths.length === 0 ? pages : paths;
}

/**
 * @param {readonly string[]} pages
 * @param {string} address
 */
async function measurePages(pages, address) {
  if (findEngine('chromium') === undefined) installEngines();
  const program = findEngine('chromium');
  if (program === undefined) throw new Error(noEngine('chromium'));
  const browser = await chromium.launch({ executablePath: program, args: ['--no-sandbox'] });
  try {
    for (const path of pages) {
      const { whole, first, scrolled, used } = await weigh(browser, address + path);
      noteBytes(`/${path}: whole first view`, whole, budget.whole);
      noteBytes(`/${path}: script of a first view`, first, budget.first);
      noteBytes(`/${path}: script after scrolling`, scrolled, budget.used);
      if (used !== undefined)
        noteBytes(`/${path}: script after scrolling and typing`, used, budget.used);
    }
    for (const path of pages) await measureLayout(browser, path, address);
    for (const path of pages) {
      const { keys, figures, fixed } = await strike(browser, address + path);
      if (keys.length === 0) continue;
      noteTimes(`/${path}: key to results, CPU slowed ${slowed}×`, keys, fixed, {
        budget: budget.keystroke,
        slowed,
      });
      noteTimes(`/${path}: what follows a frame later, CPU slowed ${slowed}×`, figures, fixed, {
        slowed,
      });
    }
  } finally {
    await browser.close();
  }
}

/**
 * What a reader meets on a topic's page as it opens. Pages without a sheet are left out.
 *
 * @param {import('playwright-core').Browser} browser
 * @param {string} path
 * @param {string} address
 */
async function measureLayout(browser, path, address) {
  for (const name of /** @type {const} */ (['phone', 'desk'])) {
    const context = await browser.newContext({ viewport: screens[name] });
    const page = await context.newPage();
    await page.goto(address + path);
    if ((await page.locator('section.calculator').count()) > 0) {
      const count = await page.evaluate(countLayout);
      const { boxes, lines, elements } = layoutBudget;
      /** @type {readonly (readonly [string, number, number, number])[]} */
      const rows = [
        ['open boxes', count.boxes, boxes, 0],
        ['open result lines', count.lines, lines, 0],
        ['screens to the first result', count.result, layoutBudget[name].result, 1],
        ['screens of the page', count.page, layoutBudget[name].page, 1],
        ['elements', count.elements, elements, 0],
      ];
      for (const [what, measured, most, digits] of rows)
        note(`/${path}: ${what}, ${name}`, measured.toFixed(digits), {
          budget: String(most),
          kept: measured <= most,
        });
      note(`/${path}: words, ${name}`, String(count.words));
      if (name === 'desk') {
        const sides = await printedSides(page);
        note(`/${path}: printed sides`, String(sides), {
          budget: String(layoutBudget.sides),
          kept: sides <= layoutBudget.sides,
        });
      }
    }
    await context.close();
  }
}

/** Times warm computations of each calculator with its example numbers, and the fixed piece of work between them. */
async function measureComputations() {
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
    const times = Array.from({ length: 200 }, () => timed(() => work(input)));
    const fixed = Array.from({ length: 20 }, () => timed(fixedWork));
    noteTimes(`${calculator.id}: one set computed, warm`, times, fixed, { budget: budget.compute });
  }
}

/** @param {() => unknown} work @returns {number} milliseconds */
function timed(work) {
  const began = performance.now();
  work();
  return performance.now() - began;
}

const asked = process.argv.slice(2);
const began = Date.now();
const built = await build({ quiet: true });
if (built.code !== 0) {
  console.error(built.text);
  console.error('Nothing was measured: the site was not built.');
  process.exit(1);
}
const seconds = (Date.now() - began) / 1000;
const pages = pagesOf(join(root, 'dist'));
const site = await serve(join(root, 'dist'), 0);
try {
  for (let count = 0; count < 20; count += 1) fixedWork();
  const factor = machineFactor(
    Array.from({ length: 50 }, () => timed(fixedWork)),
    0.5,
  );
  note('Machine factor (1: as fast as where the budgets were made)', factor.toFixed(2));
  note(
    'Build',
    `${seconds.toFixed(1)} s for ${pages.length} pages: ${(seconds / pages.length).toFixed(2)} s a page`,
    {
      fair: `${(seconds / pages.length / factor).toFixed(2)} s a page`,
      budget: 'linear in pages',
    },
  );
  await measurePages(chosen(pages, asked), site.address);
  if (asked.length === 0) await measureComputations();
  printTable();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
} finally {
  await site.close();
}
