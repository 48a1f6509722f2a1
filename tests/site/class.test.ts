import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { enter, field, says } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();
const topics = readdirSync(join(import.meta.dirname, '../../content/topics'));
/** A projector of 1080 lines. */
const projector = { width: 1920, height: 1080 };

async function openClass(page: Page, topic: string, place = ''): Promise<void> {
  await page.goto(`${topic}/class/${place}`);
  await page.locator('[data-presented]').waitFor();
}
/** What the screen that is shown is called, and of how many it is which. */
async function screen(page: Page): Promise<{ readonly at: number; readonly of: number }> {
  const text = (await page.locator('[data-screen-count]').textContent()) ?? '';
  const [, at, of] = /^(\d+) of (\d+):/.exec(text) ?? [];
  return { at: Number(at), of: Number(of) };
}
/** The height of the smallest letters that can be seen [px], and those of the key results. */
function letters(): {
  readonly least: number;
  readonly of: string;
  readonly keys: readonly number[];
} {
  let [least, of] = [Infinity, ''];
  const root = document.querySelector('[data-class]');
  if (root === null) throw new Error('There is no deck.');
  const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const element = node.parentElement;
    const text = node.textContent?.trim() ?? '';
    if (element === null || text === '' || !element.checkVisibility()) continue;
    if (element.closest('.visually-hidden, .cell-label, option') !== null) continue;
    const matrix = element instanceof SVGGraphicsElement ? element.getScreenCTM() : null;
    const scale = matrix === null ? 1 : Math.hypot(matrix.a, matrix.b);
    const size = parseFloat(getComputedStyle(element).fontSize) * scale;
    if (size < least) [least, of] = [size, text];
  }
  const keys = [...document.querySelectorAll('.class-values > span')]
    .filter((key) => key.checkVisibility())
    .map((key) => parseFloat(getComputedStyle(key).fontSize));
  return { least, of, keys };
}

describe('the class view is read at the back of the room', () => {
  it.each(topics)('%s', async (topic) => {
    const { context } = await site.reader({ viewport: projector });
    const page = await context.newPage();
    await openClass(page, topic);
    const { of } = await screen(page);
    expect(of).toBeGreaterThan(4);
    for (let at = 1; at <= of; at += 1) {
      await page.evaluate((to) => (location.hash = `#screen-${String(to)}`), at);
      await expect.poll(async () => (await screen(page)).at).toBe(at);
      const figure = page.locator('.class-figure[data-now] [data-figure]');
      if ((await figure.count()) > 0) {
        await page.locator('.class-figure[data-now] [data-figure][data-alive]').waitFor();
        await page.locator('.class-figure[data-now][data-fitted]').waitFor();
      }
      const found = await page.evaluate(letters);
      expect.soft(found.least, `${String(at)}: “${found.of}”`).toBeGreaterThanOrEqual(31.9);
      for (const key of found.keys) expect.soft(key).toBeGreaterThanOrEqual(64);
      expect
        .soft(await page.evaluate(() => document.documentElement.scrollWidth))
        .toBeLessThanOrEqual(projector.width);
    }
  });

  it.each(['light', 'dark'] as const)('with contrast enough, %s', async (colorScheme) => {
    const { context } = await site.reader({ viewport: projector, colorScheme });
    const page = await context.newPage();
    await openClass(page, 'bobweight');
    const { of } = await screen(page);
    for (let at = 1; at <= of; at += 1) {
      await page.evaluate((to) => (location.hash = `#screen-${String(to)}`), at);
      await expect.poll(async () => (await screen(page)).at).toBe(at);
      const axe = new AxeBuilder({ page }).options({
        rules: { 'color-contrast-enhanced': { enabled: true } },
      });
      const { violations } = await axe.analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
    }
  });
});

describe('by a presenter’s keys', () => {
  it('the question comes first, takes a show of hands, and is answered; then one part is changed at a time', async () => {
    const { context } = await site.reader({ viewport: projector });
    const page = await context.newPage();
    await openClass(page, 'bobweight');
    await page.keyboard.press('PageDown');
    const question = page.locator('.class-question').first();
    await says(question, 'How much of it is the bobweight?');
    await question.getByRole('button', { name: 'One hand more for A' }).click({ clickCount: 3 });
    await question.getByRole('button', { name: 'One hand more for C' }).click();
    await question.getByRole('button', { name: 'One hand less for B' }).click();
    expect(await question.locator('output').allTextContents()).toEqual(['3', '0', '1']);
    expect(await question.locator('[data-is-right]').count()).toBe(0);
    await page.keyboard.press('PageDown');
    await says(question.locator('[data-is-right]'), 'All that rotates, half of the rest');
    // The space bar belongs to a button that has the focus.
    await question.getByRole('button', { name: 'One hand more for B' }).focus();
    await page.keyboard.press(' ');
    expect(await question.locator('output').allTextContents()).toEqual(['3', '1', '1']);
    for (let press = 0; press < 2; press += 1) await page.keyboard.press('PageDown');
    await page.locator('.class-figure[data-now]').waitFor();
    await page.keyboard.press('ArrowRight');
    await says(page.locator('.class-result[data-now]'), 'candidate 1233.1 g');
    await page.keyboard.press('PageDown');
    const factor = page.locator('.class-factor');
    await says(factor, 'The same engine twice.');
    await says(factor.getByRole('status'), 'baseline 1685.2 g the same 1685.2 g difference none');
    await page.keyboard.press('PageDown');
    await says(factor, 'Only this is changed: Piston, bare');
    // Half of the piston's 110 g, twice on the pin.
    await says(
      factor.getByRole('status'),
      'baseline 1685.2 g one part changed 1575.2 g difference −110.0 g',
    );
    await factor.getByRole('button', { name: 'all of these' }).click();
    await says(factor.getByRole('status'), 'candidate 1233.1 g difference −452.1 g');
    await page.keyboard.press('PageUp');
    await says(factor, 'Only this is changed: Big end');
  });

  it('the screen is blanked and comes back at any key; the address keeps the place', async () => {
    const { context } = await site.reader({ viewport: projector });
    const page = await context.newPage();
    await openClass(page, 'rod-angularity');
    await page.keyboard.press('PageDown');
    await page.keyboard.press('b');
    const blank = page.locator('[data-blank]');
    await blank.waitFor();
    await page.keyboard.press('PageDown');
    await blank.waitFor({ state: 'hidden' });
    expect(await screen(page)).toMatchObject({ at: 2 });
    await page.keyboard.press('PageDown');
    expect(page.url()).toMatch(/#screen-2\.1$/);
    await page.reload();
    await page.locator('[data-presented]').waitFor();
    expect(await page.locator('.class-question[data-now] [data-is-right]').count()).toBe(1);
    await page.keyboard.press('End');
    const { at, of } = await screen(page);
    expect(at).toBe(of);
    await page.keyboard.press('?');
    await page.getByRole('link', { name: 'Leave' }).click();
    await page.waitForURL(/\/rod-angularity\/$/);
  });

  it('a slider keeps its own keys but those of a clicker', async () => {
    const { context } = await site.reader({ viewport: projector });
    const page = await context.newPage();
    await openClass(page, 'piston-motion', '#screen-4');
    const figure = page.locator('.class-figure[data-now] [data-figure][data-alive]');
    await figure.waitFor();
    const slider = figure.getByRole('slider').first();
    const before = await slider.inputValue();
    await slider.focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => slider.inputValue()).not.toBe(before);
    expect(await screen(page)).toMatchObject({ at: 4 });
    // What is higher than the window is gone through first.
    await expect
      .poll(async () => {
        await page.keyboard.press('PageDown');
        return (await screen(page)).at;
      })
      .toBeGreaterThanOrEqual(5);
  });
});

describe('demonstrations', () => {
  it('are kept with numbers, angle and note, shown one after the other, and go into a file', async () => {
    const { context, open } = await site.reader({ viewport: projector });
    const topic = await open('piston-motion/');
    await enter(field(topic, 'piston-motion', 'rodLength', 'baseline'), '150');
    const page = await context.newPage();
    await openClass(page, 'piston-motion', '#screen-4');
    const figure = page.locator('.class-figure[data-now] [data-figure][data-alive]');
    await figure.waitFor();
    const slider = figure.getByRole('slider').first();
    await slider.fill('75');
    await page.keyboard.press('Escape');
    await page.locator('[data-desk] > summary').click();
    await page.getByLabel('Note for who shows it').fill('Ask before you turn it');
    await page.getByRole('button', { name: 'Keep this screen' }).click();
    await says(page.locator('[data-kept]'), 'Kept as number 1');
    await openClass(page, 'bobweight', '#screen-2');
    await page.locator('[data-desk] > summary').click();
    await page.getByRole('button', { name: 'Keep this screen' }).click();
    await says(page.locator('[data-kept]'), 'Kept as number 2');

    await page.getByRole('link', { name: 'Demonstrations' }).click();
    const list = page.locator('.demo-list');
    await says(list, 'Piston motion: Figure');
    expect(await list.getByLabel('Note').first().inputValue()).toBe('Ask before you turn it');
    await page.getByRole('button', { name: /^Take off ?: Bobweight/ }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await list.getByRole('listitem').count()).toBe(2);
    await list.getByRole('link').first().click();
    await page.locator('[data-presented]').waitFor();
    await page.locator('[data-desk] > summary').click();
    await says(page.locator('[data-shown]'), '1 of 2 kept. Ask before you turn it');
    const shown = page.locator('.class-figure[data-now] [data-figure][data-alive]');
    await expect.poll(() => shown.getByRole('slider').first().inputValue()).toBe('75');
    await page.locator('.class-figure[data-now][data-fitted]').waitFor();
    // What is higher than the window is gone through first.
    await expect
      .poll(async () => {
        if (!page.url().includes('/bobweight/')) await page.keyboard.press('PageDown');
        return page.url();
      })
      .toContain('/bobweight/');
    await page.waitForURL(/\/bobweight\/class\//);
    await page.locator('[data-presented]').waitFor();
    expect(await page.locator('.class-question[data-now]').count()).toBe(1);
  });
});
