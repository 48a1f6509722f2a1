import { brotliCompressSync } from 'node:zlib';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { enter, field, result } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();
const topics = readdirSync(join(import.meta.dirname, '../../content/topics')).map(
  (topic) => `${topic}/`,
);
const phone = { viewport: { width: 390, height: 844 } };
const desk = { viewport: { width: 1280, height: 720 } };

/** Opens a page as a reader who has written nothing, and touches nothing. */
async function arrive(context: BrowserContext, path: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(path, { waitUntil: 'networkidle' });
  return page;
}

async function asleep(page: Page): Promise<number> {
  return page
    .locator(':is([data-calculator], [data-figure], [data-notebook-bar]):not([data-alive])')
    .count();
}

/** Opens a page whose parts get no code until the function given with it is called. */
async function openHeldBack(path: string): Promise<{ page: Page; release: () => void }> {
  const { context } = await site.reader(desk);
  const page = await context.newPage();
  let release = (): void => undefined;
  const wait = new Promise<void>((done) => {
    release = done;
  });
  await page.route(/alive\.svelte.*\.js$/, async (route) => {
    await wait;
    await route.continue();
  });
  await page.goto(path);
  return { page, release };
}

describe('a page that nobody has written on', () => {
  it.each([
    ['on a phone', phone],
    ['on a desk', desk],
  ])('fetches at most 45 kB of script %s', { timeout: 120_000 }, async (_, how) => {
    const { context } = await site.reader(how);
    const heavy: string[] = [];
    for (const topic of topics) {
      const page = await context.newPage();
      const sizes: Promise<number>[] = [];
      page.on('response', (response) => {
        if (response.request().resourceType() === 'script')
          sizes.push(response.body().then((body) => brotliCompressSync(body).length));
      });
      await page.goto(topic, { waitUntil: 'networkidle' });
      const sum = (await Promise.all(sizes)).reduce((one, other) => one + other, 0);
      expect(sum, topic).toBeGreaterThan(500);
      if (sum > 45_000) heavy.push(`${topic}: ${String(sum)} bytes`);
      await page.close();
    }
    expect(heavy).toEqual([]);
  });

  it('brings a figure to life when it is touched, by pointer or by key', async () => {
    const { context } = await site.reader(desk);
    const page = await arrive(context, 'piston-motion/');
    const figure = page.locator('[data-figure="mechanism"]');
    await expect.poll(() => figure.getAttribute('data-alive')).toBeNull();
    await figure.getByRole('button', { name: 'BDC' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => figure.getAttribute('data-alive')).toBe('');
    await expect
      .poll(() => figure.locator('figcaption').textContent())
      .toMatch(/^At 1[78]\d(\.\d)?° after TDC/);
  });

  it('follows with every part once the first number is written', async () => {
    const { context } = await site.reader(desk);
    const page = await arrive(context, 'bobweight/');
    expect(await asleep(page)).toBeGreaterThan(3);
    await enter(field(page, 'bobweight', 'pistonMass', 'baseline'), '500');
    await expect.poll(() => asleep(page), { timeout: 10_000 }).toBe(0);
    expect(await field(page, 'bobweight-implied', 'pistonMass', 'baseline').inputValue()).toBe(
      '500',
    );
    const figure = page.locator('[data-figure="bobweight-bar"]');
    await expect.poll(() => figure.textContent()).toMatch(/1757/);
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
  await page.goto('bobweight/', { waitUntil: 'networkidle' });
  await page.getByRole('button', { name: 'Copy link' }).click();
  await expect
    .poll(() => page.getByRole('alert').textContent())
    .toContain('Check the connection and load the page again.');
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
  expect(printed.length).toBeGreaterThan(3);
  expect(printed.filter((text) => !/^\s*1757/.test(text))).toEqual([]);
});

describe('what is done before the code has arrived', () => {
  it('counts in the drawing for a wide page as well, and that drawing leaves', async () => {
    const { page, release } = await openHeldBack('reversal-load/');
    const figure = page.locator('[data-figure="load-speed"]');
    const wide = page.locator('.figure-wide').filter({ has: page.locator('select') });
    expect(await figure.isVisible()).toBe(false);
    await wide.locator('select').selectOption({ index: 2 });
    const wanted = await wide.locator('select').inputValue();
    await wide.locator('summary').first().click();
    release();
    await expect.poll(() => figure.getAttribute('data-alive')).toBe('');
    expect(await wide.count()).toBe(0);
    expect(await figure.isVisible()).toBe(true);
    expect(await figure.locator('select').inputValue()).toBe(wanted);
    expect(await figure.locator('details').first().getAttribute('open')).not.toBeNull();
  });

  it('is not lost: a number, a unit, a button, a system of units', async () => {
    const { page, release } = await openHeldBack('bobweight/');
    const mass = field(page, 'bobweight', 'pistonMass', 'baseline');
    await mass.fill('17.5');
    await mass.locator('xpath=..').getByRole('combobox').selectOption('oz');
    await page.getByRole('radio', { name: 'Inch' }).check();
    await page.getByRole('button', { name: 'Open file' }).click();
    expect(await mass.inputValue()).toBe('17.5');
    release();
    await expect.poll(() => asleep(page), { timeout: 10_000 }).toBe(0);
    expect(await mass.inputValue()).toBe('17.5');
    expect(await page.getByRole('radio', { name: 'Inch' }).isChecked()).toBe(true);
    await expect.poll(() => page.getByLabel('File saved from a notebook').count()).toBe(1);
    // 17.5 oz are 496.1 g: 68.1 g more than the example, on each of two pistons, of which half counts.
    await expect
      .poll(() => result(page, 'bobweight', 'bobweight', 'baseline').textContent())
      .toMatch(/1753/);
  });

  it('stays selected, so that what is typed takes its place', async () => {
    const { page, release } = await openHeldBack('rod-weighing/');
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
    const { page, release } = await openHeldBack('bobweight/');
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
