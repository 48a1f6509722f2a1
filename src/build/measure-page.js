import { brotliCompressSync } from 'node:zlib';
import { fixedWork } from './measure-machine.js';

/** How many times the processor is slowed while keys are timed: a phone of the middle class. */
export const slowed = 4;

/**
 * Where a number is typed on a page: by which field, on which part that must be alive, at which place of the address,
 * and with what on the device.
 *
 * @typedef {{ field: string, part: string, place: string, kept: Readonly<Record<string, string>> }} Typing
 */
const sixteen = Array.from({ length: 16 }, (_, at) => (428 + at / 10).toFixed(1)).join('; ');
/** @type {Typing} */
const onTopic = {
  field: '[data-calculator] input[type="text"]',
  part: '[data-calculator]',
  place: '',
  kept: {},
};
/** The parts table is measured with as many weights as it takes. @type {Typing} */
const onParts = {
  field: '[id="parts-pistonMasses-baseline-16"]',
  part: '[data-parts]',
  place: '#part-pistonMasses',
  kept: Object.fromEntries(
    ['baseline', 'candidate'].flatMap((set) =>
      ['pistonMasses', 'pinMasses', 'smallEndMasses', 'bigEndMasses'].map((list) => [
        `throwbook/1/${set}/${list}`,
        JSON.stringify({ text: sixteen, unit: 'g' }),
      ]),
    ),
  ),
};

/** @param {string} url @returns {Typing} */
function typingOn(url) {
  return /\/parts\/$/u.test(url) ? onParts : onTopic;
}
/** What is fetched when the page is idle is waited for (ms). */
const idle = 2500;

/**
 * What is fetched, each file compressed by itself: at a first view, all of it and the script alone; the script
 * once the page has been scrolled through; and the script once a number has been written as well, so that every part
 * of the page has followed.
 *
 * @param {import('playwright-core').Browser} browser
 * @param {string} url
 * @returns {Promise<{ whole: number, first: number, scrolled: number, used: number | undefined }>} bytes; `used` is
 *   undefined for a page without a field
 */
export async function weigh(browser, url) {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  /** @type {Promise<readonly [isScript: boolean, bytes: number]>[]} */
  const parts = [];
  page.on('response', (response) => {
    const isScript = response.request().resourceType() === 'script';
    const isPacked = /woff2/u.test(response.url());
    parts.push(
      response.body().then(
        (body) => [isScript, isPacked ? body.length : brotliCompressSync(body).length],
        () => [isScript, 0],
      ),
    );
  });
  /** @param {boolean} scriptAlone */
  async function sum(scriptAlone) {
    const sizes = await Promise.all(parts);
    return sizes.reduce((all, [isScript, size]) => all + (scriptAlone && !isScript ? 0 : size), 0);
  }

  await page.goto(url, { waitUntil: 'networkidle' });
  await page.waitForTimeout(idle);
  const whole = await sum(false);
  const first = await sum(true);
  await scrollThrough(page);
  const scrolled = await sum(true);
  const used = (await write(page)) ? await sum(true) : undefined;
  await context.close();
  return { whole, first, scrolled, used };
}

/**
 * Scrolls from top to bottom as a reader does whose pointer rests in the middle of the screen: what it comes to at
 * first is touched, and what passes under it is not.
 *
 * @param {import('playwright-core').Page} page
 */
async function scrollThrough(page) {
  const { width, height } = page.viewportSize() ?? { width: 1280, height: 720 };
  await page.mouse.move(width / 2, height / 2);
  for (;;) {
    const before = await page.evaluate(() => scrollY);
    await page.mouse.wheel(0, height / 2);
    await page.waitForTimeout(150);
    if ((await page.evaluate(() => scrollY)) === before) break;
  }
  await page.waitForTimeout(idle);
}

/**
 * Writes a number as a reader does, and waits until every part of the page has followed.
 *
 * @param {import('playwright-core').Page} page
 * @returns {Promise<boolean>} false when the page has no field
 */
async function write(page) {
  const { field: selector, part } = typingOn(page.url().replace(/#.*/u, ''));
  const field = page.locator(selector).first();
  if ((await field.count()) === 0) return false;
  await field.click();
  await page.locator(`${part}[data-alive]`).first().waitFor();
  await field.press('End');
  await field.press('Backspace');
  await field.press('4');
  await page.waitForFunction(
    () =>
      document.querySelector(
        ':is([data-calculator], [data-figure], [data-notebook-bar]):not([data-alive])',
      ) === null,
  );
  await page.waitForTimeout(idle);
  return true;
}

/**
 * With the processor slowed: from a key in a field to all results that can be seen computed, written and laid out; what
 * figures and prose in sight then take, which follow in the frame after; and after each key the fixed piece of work.
 * What is off the screen follows when the keys are quiet, and is not waited for.
 *
 * @param {import('playwright-core').Browser} browser
 * @param {string} url
 * @returns {Promise<{ keys: number[], figures: number[], fixed: number[] }>} milliseconds; none when the page has no
 *   field
 */
export async function strike(browser, url) {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  const { field: selector, place, kept } = typingOn(url);
  await page.addInitScript((values) => {
    for (const [key, text] of Object.entries(values)) localStorage.setItem(key, text);
  }, kept);
  await page.goto(url + place, { waitUntil: 'networkidle' });
  if (!(await write(page))) {
    await context.close();
    return { keys: [], figures: [], fixed: [] };
  }
  const devtools = await context.newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  await page.evaluate(`globalThis.fixedWork = ${String(fixedWork)}`);
  const times = await page.evaluate(async (wanted) => {
    /** @type {() => unknown} */
    const work = Reflect.get(globalThis, 'fixedWork');
    const found = document.querySelector(wanted);
    /** @type {number[]} */
    const keys = [];
    /** @type {number[]} */
    const figures = [];
    /** @type {number[]} */
    const fixed = [];
    if (!(found instanceof HTMLInputElement)) return { keys, figures, fixed };
    /** @returns {Promise<number>} when a task that follows the next frame begins */
    const afterFrame = () =>
      new Promise((done) => {
        requestAnimationFrame(() => setTimeout(() => done(performance.now())));
      });
    const field = found;
    field.focus();
    const typed = field.value;
    for (let count = 0; count < 40; count += 1) {
      const changed = typed.replace(/\d(?=\D*$)/u, String(count % 10));
      // Asked for before and after the page asks for its own frame, so that the page's work lies in between.
      const before = afterFrame();
      const began = performance.now();
      field.value = changed;
      field.dispatchEvent(new InputEvent('input', { bubbles: true, inputType: 'insertText' }));
      // Results are written in microtasks of the event; reading a height makes the page lay itself out.
      for (let turn = 0; turn < 5; turn += 1) await Promise.resolve();
      void document.body.offsetHeight;
      keys.push(performance.now() - began);
      const after = afterFrame();
      const follows = await before;
      await after;
      void document.body.offsetHeight;
      figures.push(performance.now() - follows);
      await new Promise((done) => setTimeout(done, 250));
      const start = performance.now();
      work();
      fixed.push(performance.now() - start);
    }
    return { keys, figures, fixed };
  }, selector);
  await context.close();
  return times;
}
