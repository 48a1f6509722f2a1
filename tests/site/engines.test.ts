import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { serve } from '../../src/build/serve.js';
import { sitePages, topicPages } from './support/build.ts';
import { enginesHere } from './support/engines.ts';
import { pullExercise } from './support/exercise.ts';
import { siteAddress } from './support/site.ts';
import type { Running, Tab } from './support/tab.ts';
import { isReadyForLoss } from './support/waking.ts';

/*
 * What engines do each in their own way: keys, storage, a fresh profile, the sizes in formulas, boxes that stand out,
 * the copy on the device, the search's WebAssembly, practice and class, and code that could not be fetched. All else is tried in one.
 */

const mass = '#bobweight-pistonMass-baseline';
const total = '[data-calculator="bobweight"] tr[data-output="bobweight"] td[data-set="baseline"]';

function textOf(selector: string): string {
  return `return document.querySelector(${JSON.stringify(selector)})?.textContent.replace(/\\s+/g, ' ') ?? ''`;
}
function isThere(selector: string): string {
  return `document.querySelector(${JSON.stringify(selector)}) !== null`;
}
const openAll = `for (const fold of document.querySelectorAll('details')) fold.open = true;`;

/** Leaf elements of formulas whose size or place is wrong, as one line each; and how many there are in all. */
const judgeFormulas = `${openAll}
  const size = (element) => parseFloat(getComputedStyle(element).fontSize);
  const letters = [...document.querySelectorAll('math :is(mi, mn, mo, mtext)')].filter(
    (each) => each.textContent.replace(/[\\u2061\\s]/g, '') !== '' && each.getClientRects().length > 0);
  const wrong = [];
  const tell = (what, element) => wrong.push(what + ': ' + element.textContent + ' in ' + element.closest('math').textContent.slice(0, 50));
  for (const each of letters) if (size(each) < 11) tell('too small', each);
  const letterOf = (part) => part.matches('mi, mn, mo, mtext') ? part : part.querySelector('mi, mn, mo, mtext') ?? part;
  const raised = [...document.querySelectorAll('math :is(msub, msup, msubsup)')];
  for (const each of raised) {
    const [base, ...scripts] = [...each.children].map(letterOf);
    for (const script of scripts)
      if (size(script) > Math.max(0.8 * size(base), 11.1)) tell('full size', script);
  }
  letters.forEach((each, at) => {
    const next = letters[at + 1];
    if (!/^[([]$/.test(next?.textContent ?? '') || !/^[a-z]{3,}$/.test(each.textContent)) return;
    if (each.closest('msub, msup') !== null || each.closest('math') !== next.closest('math')) return;
    const [word, bracket] = [each, next].map((one) => one.getBoundingClientRect());
    if (bracket.left < word.right + 1) tell('meets its bracket', each);
  });
  for (const formula of document.querySelectorAll('math'))
    if (/\\d\\s*e\\s*[-−]\\s*\\d/.test(formula.textContent)) tell('not a power of ten', formula);
  return { wrong, count: letters.length, raised: raised.length };`;

/** What stands out of a page where everything is open. */
const judgeWidth = `${openAll}
  const { scrollWidth, clientWidth } = document.documentElement;
  if (scrollWidth <= clientWidth) return [];
  return [...document.querySelectorAll('main *')]
    .filter((each) => each.getBoundingClientRect().right > clientWidth + 0.5)
    .map((each) => each.outerHTML.slice(0, 90)).slice(0, 5).concat(scrollWidth + ' px');`;

/** What can be pressed, and is less than 24 px wide or high; links within a sentence are as high as its line. */
const judgeTargets = `${openAll}
  const inSentence = (each) => each.matches('a') && getComputedStyle(each).display === 'inline' &&
    each.parentElement.textContent.trim() !== each.textContent.trim();
  // A box for a file that is out of sight is hit by its label.
  const hit = (each) => (each.matches('input.visually-hidden') ? each.closest('label') : each).getBoundingClientRect();
  return [...document.querySelectorAll('a[href], button, input, select, textarea, summary')]
    .filter((each) => each.checkVisibility() && !inSentence(each) && !each.matches('.skip'))
    .filter((each) => [hit(each)].some(({ width, height }) => width < 23.9 || height < 23.9))
    .map((each) => each.outerHTML.slice(0, 110));`;

/** Terms whose meaning, once shown, does not hang right under their line, with the distance in px; and their number. */
const judgeMeanings = `${openAll}
  const terms = [...document.querySelectorAll('.term')];
  const wrong = terms.flatMap((term) => {
    term.dataset.meaning = 'shown';
    const meaning = term.nextElementSibling.getBoundingClientRect();
    const below = meaning.top - [...term.getClientRects()].at(-1).bottom;
    const outside = meaning.left < 0 || meaning.right > document.documentElement.clientWidth;
    delete term.dataset.meaning;
    return Math.abs(below) > 12 || outside ? [term.textContent + ': ' + below] : [];
  });
  return { wrong, count: terms.length };`;

/** Brings every part of the page to life. */
const wake = `for (const part of document.querySelectorAll('[data-calculator], [data-figure], [data-notebook-bar]'))
  part.dispatchEvent(new PointerEvent('pointermove', { bubbles: true }));`;
const unwoken = `return document.querySelectorAll(':is([data-calculator], [data-figure], [data-notebook-bar]):not([data-alive])').length`;

/** Asks for the search until it is there: before the page's script has run, its link leads to a page of its own. */
const openSearch = `const at = () => document.activeElement?.id ?? '';
  if (document.readyState === 'complete' && at() !== 'search-field')
    document.querySelector('[data-search]').click();
  return at();`;

async function awake(tab: Tab): Promise<void> {
  await tab.run(wake);
  await expect.poll(() => tab.run(unwoken)).toBe(0);
}

// A driver that stops answering is not the page's fault: each test has its own, and may ask for another once.
describe.each(enginesHere())('in $name', { retry: 1 }, ({ start }) => {
  let engine: Running;
  const cleaning: (() => unknown)[] = [];
  beforeAll(async () => {
    engine = await start();
  });
  afterEach(async () => {
    for (const clean of cleaning.splice(0).reverse()) await clean();
  });
  afterAll(async () => {
    await engine.close();
  });
  async function fresh(): Promise<Tab> {
    const tab = await engine.tab();
    cleaning.push(() => tab.close());
    return tab;
  }

  it('a number is typed, stays, and travels by link to another reader', async () => {
    const tab = await fresh();
    await tab.goto(`${siteAddress()}bobweight/`);
    await tab.type(mass, '500');
    await expect.poll(() => tab.run<string>(textOf(total))).toMatch(/1757/);
    await tab.reload();
    await expect.poll(() => tab.run<string>(textOf(total))).toMatch(/1757/);
    expect(await tab.run(`return document.querySelector('${mass}').value`)).toBe('500');

    await awake(tab);
    await tab.run(
      `[...document.querySelectorAll('button')].find((each) => each.textContent === 'QR code').click()`,
    );
    const link = (): Promise<string> =>
      tab.run(`return document.querySelector('.link-label textarea')?.value ?? ''`);
    await expect.poll(link).toContain('pistonMass=500');
    const href = await link();
    await tab.close();
    cleaning.pop();

    const other = await fresh();
    await other.goto(href);
    await expect.poll(() => other.run<string>(textOf('.visit'))).toContain('numbers of a link');
    await expect.poll(() => other.run<string>(textOf(total))).toMatch(/1757/);
    expect(
      await other.run(`return Object.keys(localStorage).filter((key) => /baseline/.test(key))`),
    ).toEqual([]);
  });

  it('formulas can be read: nothing below 11 px, indices smaller than what they belong to', async () => {
    const tab = await fresh();
    for (const { path } of topicPages()) {
      await tab.goto(`${siteAddress()}${path}working/`);
      const { wrong, count, raised } = await tab.run<{
        wrong: string[];
        count: number;
        raised: number;
      }>(judgeFormulas);
      expect(count, path).toBeGreaterThan(10);
      expect(raised, path).toBeGreaterThan(5);
      expect.soft([...new Set(wrong)].slice(0, 5), path).toEqual([]);
    }
  });

  it('nothing scrolls sideways, and everything can be hit', async () => {
    const tab = await fresh();
    await tab.widen(640);
    for (const { path } of sitePages()) {
      await tab.goto(siteAddress() + path);
      expect.soft(await tab.run(judgeWidth), path).toEqual([]);
      expect.soft((await tab.run<string[]>(judgeTargets)).slice(0, 5), path).toEqual([]);
    }
  });

  it('a part for another page finds no storage, and works', async () => {
    const tab = await fresh();
    await tab.goto(`${siteAddress()}embed/bobweight/#pistonMass=500g,400g&v=1`);
    await expect.poll(() => tab.run(unwoken)).toBe(0);
    expect(
      await tab.run(`
        const said = [];
        for (const name of ['localStorage', 'sessionStorage'])
          try { said.push(typeof window[name]); } catch (error) { said.push(error.name); }
        return said;`),
    ).toEqual(['SecurityError', 'SecurityError']);
    expect(await tab.run(`return document.querySelector('${mass}').value`)).toBe('500');
  });

  it('the meaning of a term hangs under its line', async () => {
    const tab = await fresh();
    for (const width of [640, 1200]) {
      await tab.widen(width);
      for (const path of ['bobweight/', 'piston-motion/', 'reversal-load/']) {
        await tab.goto(siteAddress() + path);
        const { wrong, count } = await tab.run<{ wrong: string[]; count: number }>(judgeMeanings);
        expect(count, path).toBeGreaterThan(5);
        expect.soft(wrong, `${path} at ${String(width)} px`).toEqual([]);
      }
    }
  });

  it('the text is searched, by a word and by another word for a term', async () => {
    const tab = await fresh();
    await tab.goto(`${siteAddress()}topics/`);
    await expect.poll(() => tab.run(openSearch)).toBe('search-field');
    await tab.type('#search-field', 'gudgeon pin');
    await expect
      .poll(() => tab.run<string>(textOf('.search-status')))
      .toMatch(/\d+ pages for “wrist pin, also called gudgeon pin”/);
    await expect.poll(() => tab.run<string>(textOf('.search-found mark'))).toMatch(/^wrist/i);
    await tab.run(`document.querySelector('.search-found a').click()`);
    await expect.poll(() => tab.run(`return location.hash`)).toBe('#wrist-pin');
  });

  it('an exercise is missed and then right, and a class is led on by keys', async () => {
    const tab = await fresh();
    const { path, answer } = pullExercise(4711);
    await tab.goto(siteAddress() + path);
    await expect.poll(() => tab.run(`return ${isThere('[data-practice][data-alive]')}`)).toBe(true);
    const outcome = (): Promise<string> => tab.run(textOf('.practice-outcome'));
    const check = `document.querySelector('#practice-answer').form.requestSubmit()`;
    for (const [typed, told] of [
      ['three', 'Could not read it.'],
      ['1 kN', 'Not yet.'],
      [answer, 'Right. It is'],
    ] as const) {
      await tab.type('#practice-answer', typed);
      await tab.run(check);
      await expect.poll(outcome).toContain(told);
    }
    await tab.goto(`${siteAddress()}reversal-load/class/`);
    await expect.poll(() => tab.run(`return ${isThere('[data-presented]')}`)).toBe(true);
    for (let press = 0; press < 2; press += 1)
      await tab.run(`document.dispatchEvent(new KeyboardEvent('keydown', { key: 'PageDown' }))`);
    expect(await tab.run(`return ${isThere('.class-question[data-now] [data-is-right]')}`)).toBe(
      true,
    );
    await expect.poll(() => tab.run(`return location.hash`)).toBe('#screen-2.1');
  });

  it('after one visit the site is there without a connection', async () => {
    const server = await serve(inject('folder'), 0);
    cleaning.push(server.close);
    const tab = await fresh();
    await tab.goto(`${server.address}topics/`);
    await expect
      .poll(() => tab.run(`return navigator.serviceWorker.controller !== null`))
      .toBe(true);
    await server.close();
    await tab.goto(`${server.address}bobweight/`);
    await tab.type(mass, '500');
    await expect.poll(() => tab.run<string>(textOf(total))).toMatch(/1757/);
    await expect.poll(() => tab.run(openSearch)).toBe('search-field');
    await tab.type('#search-field', 'crush');
    await expect.poll(() => tab.run<string>(textOf('.search-status'))).toMatch(/pages for “crush”/);
  });

  it('what is typed while the connection is lost goes on when it is back', async () => {
    // Without the worker, as on the very first page.
    const folder = mkdtempSync(join(tmpdir(), 'throwbook-lost-'));
    cpSync(inject('folder'), folder, { recursive: true });
    rmSync(join(folder, 'offline.js'));
    cleaning.push(() => {
      rmSync(folder, { recursive: true });
    });
    const server = await serve(folder, 0);
    const tab = await fresh();
    // So narrow that no pointer stands over the page.
    await tab.widen(640);
    await tab.goto(`${server.address}bobweight/`);
    await expect.poll(() => tab.run(`return ${isReadyForLoss}`)).toBe(true);
    await server.close();
    await tab.type(mass, '500');
    await expect
      .poll(() => tab.run<string>(textOf('.stale-note')))
      .toContain('the connection is lost');
    const again = await serve(folder, server.port);
    cleaning.push(again.close);
    expect(again.port).toBe(server.port);
    await tab.run(`window.dispatchEvent(new Event('online'))`);
    await expect.poll(() => tab.run<string>(textOf(total))).toMatch(/1757/);
    expect(await tab.run(`return document.querySelector('${mass}').value`)).toBe('500');
    await expect.poll(() => tab.run<string>(textOf('.stale-note'))).toBe('');
  });
});
