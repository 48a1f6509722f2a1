import { brotliCompressSync } from 'node:zlib';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, Page, Response } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { enter, field, openFolds, result, unitOf } from './support/form.ts';
import { useSite } from './support/site.ts';
import { asleep, desk, readyForLoss, openHeldBack, phone } from './support/waking.ts';

const site = useSite();
const topics = readdirSync(join(import.meta.dirname, '../../content/topics')).map(
  (topic) => `${topic}/`,
);

/** Opens a page as a reader who has written nothing, and touches nothing. */
async function arrive(context: BrowserContext, path: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(path, { waitUntil: 'networkidle' });
  return page;
}

/** Opens a page on a desk whose parts get no code until the function given with it is called. */
async function openSlow(path: string): Promise<{ page: Page; release: () => void }> {
  const { context } = await site.reader(desk);
  return openHeldBack(context, path);
}

/** The script that a page fetches until `done`, and by what is done then, each file compressed by itself, in bytes. */
async function scriptOf(
  page: Page,
  path: string,
  done: 'load' | 'networkidle',
  use?: () => Promise<void>,
): Promise<number> {
  const sizes: Promise<number>[] = [];
  const weigh = (response: Response): void => {
    if (response.request().resourceType() === 'script')
      sizes.push(response.body().then((body) => brotliCompressSync(body).length));
  };
  page.on('response', weigh);
  await page.goto(path, { waitUntil: done });
  await use?.();
  page.off('response', weigh);
  return (await Promise.all(sizes)).reduce((one, other) => one + other, 0);
}

describe('a page that nobody has written on', () => {
  it.each([
    ['on a phone', phone],
    ['on a desk', desk],
  ])('fetches at most 45 kB of script %s', { timeout: 120_000 }, async (_, how) => {
    const heavy: string[] = [];
    for (const topic of topics) {
      // A reader of its own for each, or a browser would have most of it already.
      const { context } = await site.reader(how);
      const sum = await scriptOf(await context.newPage(), topic, 'networkidle');
      expect(sum, topic).toBeGreaterThan(500);
      if (sum > 45_000) heavy.push(`${topic}: ${String(sum)} bytes`);
      await context.close();
    }
    expect(heavy).toEqual([]);
  });

  it('begins with 5.3 kB of script and no more', async () => {
    for (const topic of topics) {
      const { context } = await site.reader(desk);
      // What wakes a part is there; what it would fetch is not.
      await context.route(/alive\.svelte.*\.js$/, () => undefined);
      const sum = await scriptOf(await context.newPage(), topic, 'load');
      expect(sum, topic).toBeGreaterThan(500);
      expect(sum, topic).toBeLessThan(5350);
      await context.close();
    }
  });

  it.each([
    ['gas-port/', 'gas-port', 'ringSideClearance'],
    ['bearing-clearance/', 'bearing-clearance', 'rodClearance'],
  ])('%s takes at most 100 kB once every part of it is in use', async (path, form, name) => {
    const { context } = await site.reader(desk);
    const page = await context.newPage();
    const sum = await scriptOf(page, path, 'networkidle', async () => {
      await enter(field(page, form, name, 'baseline'), '0.05');
      await expect.poll(() => asleep(page)).toBe(0);
      await page.waitForLoadState('networkidle');
    });
    expect(sum).toBeGreaterThan(50_000);
    expect(sum).toBeLessThanOrEqual(100_000);
  });

  it('brings a figure to life when it is touched, by pointer or by key', async () => {
    const { context } = await site.reader(desk);
    const page = await arrive(context, 'piston-motion/');
    const figure = page.locator('[data-figure="mechanism"]');
    await expect.poll(() => figure.getAttribute('data-alive')).toBeNull();
    await page.getByRole('button', { name: 'Just show me' }).click();
    expect(await figure.getAttribute('data-alive')).toBeNull();
    await figure.getByRole('button', { name: 'BDC' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => figure.getAttribute('data-alive')).toBe('');
    await expect
      .poll(() => figure.locator('figcaption').textContent())
      .toMatch(/^At 1[78]\d(\.\d)?° after TDC/);
  });

  it('follows with every part once the first number is written', async () => {
    const { context } = await site.reader(desk);
    const page = await arrive(context, 'residual-unbalance/');
    expect(await asleep(page)).toBeGreaterThan(3);
    await enter(field(page, 'residual-unbalance', 'balanceGrade', 'baseline'), '6.3');
    await expect.poll(() => asleep(page), { timeout: 10_000 }).toBe(0);
    // What another calculator of the page asks for as well stands there, too.
    await enter(field(page, 'residual-unbalance', 'crankMass', 'baseline'), '25');
    const other = field(page, 'unbalance-floor', 'crankMass', 'baseline');
    await openFolds(other);
    expect(await other.inputValue()).toBe('25');
    // 6.3 mm/s at 6400 rpm on 25 kg of crank and 6.741 kg of bobweights.
    const figure = page.locator('[data-figure="grade-scale"]');
    await expect.poll(() => figure.textContent()).toMatch(/298/);
  });

  it('hears of numbers that are written in another tab', async () => {
    const { context } = await site.reader(desk);
    const still = await arrive(context, 'bobweight/');
    const other = await arrive(context, 'bobweight/');
    await enter(field(other, 'bobweight', 'pistonMass', 'baseline'), '500');
    await expect.poll(() => asleep(still), { timeout: 10_000 }).toBe(0);
    expect(await field(still, 'bobweight', 'pistonMass', 'baseline').inputValue()).toBe('500');
  });
});

it('says so when its code cannot be fetched', async () => {
  const { context } = await site.reader(desk);
  const page = await context.newPage();
  await page.route(/alive\.svelte.*\.js$/, (route) => route.abort());
  await page.goto('bobweight/');
  await readyForLoss(page);
  await page.getByRole('button', { name: 'Copy link' }).click();
  await expect
    .poll(() => page.getByRole('alert').textContent())
    .toContain('the connection is lost');
  site.forgive(/ERR_FAILED/);
});

it('shows the numbers of now to whoever prints, wherever they stand', async () => {
  const page = await site.open('bobweight/', desk);
  const box = field(page, 'bobweight', 'pistonMass', 'baseline');
  await enter(box, '490');
  const inProse = page.locator('[data-v="bobweight.bobweight.baseline"]:not([data-also])');
  await expect
    .poll(async () => (await inProse.allTextContents()).filter((text) => !/^\s*1747/.test(text)))
    .toEqual([]);
  await box.focus();
  const printed = await box.evaluate(async (input: HTMLInputElement) => {
    input.value = '500';
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    await Promise.resolve();
    window.dispatchEvent(new Event('beforeprint'));
    return [
      ...document.querySelectorAll('[data-v="bobweight.bobweight.baseline"]:not([data-also])'),
    ].map((slot) => slot.textContent);
  });
  expect(printed.length).toBeGreaterThan(1);
  expect(printed.filter((text) => !/^\s*1757/.test(text))).toEqual([]);
});

describe('what is done before the code has arrived', () => {
  it('counts in the drawing for a wide page as well, and that drawing leaves', async () => {
    const { page, release } = await openSlow('gas-port/');
    const figure = page.locator('[data-figure="groove-section"]');
    const wide = page.locator('.figure-wide').filter({ has: page.locator('select') });
    const holes = 'Holes of the third';
    expect(await figure.isVisible()).toBe(false);
    await wide.getByLabel(holes).selectOption({ index: 1 });
    const wanted = await wide.getByLabel(holes).inputValue();
    await wide.locator('summary').first().click();
    release();
    await expect.poll(() => figure.getAttribute('data-alive')).toBe('');
    expect(await wide.count()).toBe(0);
    expect(await figure.isVisible()).toBe(true);
    expect(await figure.getByLabel(holes).inputValue()).toBe(wanted);
    expect(await figure.locator('details').first().getAttribute('open')).not.toBeNull();
  });

  it('is not lost: a number, a unit, a button, a system of units', async () => {
    const { page, release } = await openSlow('bobweight/');
    const mass = field(page, 'bobweight', 'pistonMass', 'baseline');
    await mass.fill('17.5');
    await unitOf(mass).selectOption('oz');
    await page.getByRole('radio', { name: 'Inch' }).check();
    await page.getByRole('button', { name: 'Open file' }).click();
    expect(await mass.inputValue()).toBe('17.5');
    release();
    await expect.poll(() => asleep(page), { timeout: 10_000 }).toBe(0);
    // The number keeps the unit it was given. Whether the row stands in it as well hangs on which part came to life
    // first, the sheet or the bar with the systems: in another system a row stands in its own unit again.
    const row = await unitOf(mass).inputValue();
    expect(await mass.inputValue()).toBe(row === 'oz' ? '17.5' : '17.5\u00a0oz');
    expect(await page.getByRole('radio', { name: 'Inch' }).isChecked()).toBe(true);
    await expect.poll(() => page.getByLabel('File of a saved job').count()).toBe(1);
    // 17.5 oz are 496.1 g: 68.1 g more than the example, on each of two pistons, of which half counts.
    await expect
      .poll(() => result(page, 'bobweight', 'bobweight', 'baseline').textContent())
      .toMatch(/1753/);
  });

  it('goes on as it was typed, also where it began before any code at all', async () => {
    const { context } = await site.reader(desk);
    const page = await context.newPage();
    const holds = [/_astro\/(?!alive)[^/]*\.js$/, /alive\.svelte.*\.js$/].map((what) => {
      let release = (): void => undefined;
      const wait = new Promise<void>((done) => {
        release = done;
      });
      return { what, wait, release: () => release() };
    });
    for (const { what, wait } of holds)
      await page.route(what, async (route) => {
        await wait;
        await route.continue();
      });
    await page.goto('rod-weighing/', { waitUntil: 'commit' });
    const mass = field(page, 'rod-weighing', 'rodMass', 'baseline');
    await mass.click();
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('6');
    holds[0]?.release();
    await page.waitForLoadState();
    await page.keyboard.type('05');
    await page.keyboard.press('ArrowUp');
    holds[1]?.release();
    await expect
      .poll(() => page.locator('[data-calculator="rod-weighing"]').getAttribute('data-alive'))
      .toBe('');
    await page.keyboard.type('.5');
    expect(await mass.inputValue()).toBe('606.5');
  });

  it('stays selected, so that what is typed takes its place', async () => {
    const { page, release } = await openSlow('rod-weighing/');
    const mass = field(page, 'rod-weighing', 'rodMass', 'baseline');
    await mass.click();
    await page.keyboard.press('Control+A');
    release();
    await expect
      .poll(() => page.locator('[data-calculator="rod-weighing"]').getAttribute('data-alive'))
      .toBe('');
    await page.keyboard.type('600');
    expect(await mass.inputValue()).toBe('600');
  });

  it('goes on as it was typed, also in the middle of a number', async () => {
    const { page, release } = await openSlow('bobweight/');
    const mass = field(page, 'bobweight', 'pistonMass', 'baseline');
    await mass.click();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('50');
    release();
    await expect
      .poll(() => page.locator('[data-calculator="bobweight"]').getAttribute('data-alive'))
      .toBe('');
    await page.keyboard.type('0.0');
    expect(await mass.inputValue()).toBe('500.0');
    await expect
      .poll(() => result(page, 'bobweight', 'bobweight', 'baseline').textContent())
      .toMatch(/1757/);
  });
});
