import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { printedSides } from '../../src/build/measure-layout.js';
import { useSite } from './support/site.ts';

const site = useSite();
const topics = readdirSync(join(import.meta.dirname, '../../content/topics'));

describe('teacher’s notes', () => {
  it('print on two sides at most, each of them', { timeout: 120_000 }, async () => {
    const page = await site.open('teach/');
    const links = page.locator('main .topic-list > li > a');
    expect(await links.count()).toBe(topics.length);
    const long: string[] = [];
    for (const topic of topics) {
      await page.goto(`${topic}/teach/`);
      if ((await printedSides(page)) > 2) long.push(topic);
    }
    expect(long).toEqual([]);
  });

  it('lead back to the topic, which leads to them', async () => {
    const page = await site.arrive('wrist-pin/');
    await page.getByRole('link', { name: 'teacher’s notes', exact: true }).click();
    await page.waitForURL('**/wrist-pin/teach/');
    await page.getByRole('link', { name: 'Back to the topic' }).click();
    await page.waitForURL('**/wrist-pin/');
  });
});

describe('the path', () => {
  it('can be walked by keys alone, in the order in which it is read', async () => {
    const page = await site.open('path/', { viewport: { width: 1280, height: 900 } });
    const map = page.locator('.path-map');
    expect(await map.locator('li > a').count()).toBe(topics.length);
    await map.getByRole('link', { name: 'Piston motion', exact: true }).first().focus();
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(
      'Weighing the parts',
    );
    await page.keyboard.press('Enter');
    await page.waitForURL('**/rod-weighing/');
  });

  it('says how many exercises of a topic were answered right on this device', async () => {
    const { context } = await site.reader({ viewport: { width: 1280, height: 900 } });
    const page = await context.newPage();
    await page.goto('path/');
    const place = page.locator('.path-map li[data-topic="bobweight"]');
    const ids = ((await place.getAttribute('data-exercises')) ?? '').split(' ');
    expect(ids.length).toBeGreaterThan(1);
    expect(await page.locator('.path-map small').count()).toBe(0);
    const record = { level: 1, right: 1, missed: 0, gap: 1 };
    await page.evaluate(
      ([right = '', missed = '', text]) => {
        localStorage.setItem(`throwbook/practice/1/exercise/${right}`, text);
        localStorage.setItem(`throwbook/practice/1/exercise/${missed}`, '{damaged');
      },
      [ids[0], ids[1], JSON.stringify(record)] as const,
    );
    await page.reload();
    expect(await page.locator('.path-map small').count()).toBe(1);
    expect(await place.locator('small').textContent()).toBe(
      ` 1 of ${String(ids.length)} exercises answered right`,
    );
  });

  it('is a list on a phone, which says in words what the lines say', async () => {
    const page = await site.open('path/', { viewport: { width: 360, height: 800 } });
    expect(await page.locator('.path-lines').isVisible()).toBe(false);
    const gasPorts = page.locator('.path-map li[data-topic="gas-port"]');
    expect(await gasPorts.locator('.path-after').innerText()).toBe(
      'After Cylinder pressure, Ring tension',
    );
  });
});

describe('the first lesson', () => {
  const isSeen = async (parts: Locator): Promise<readonly boolean[]> => {
    const all = await parts.all();
    return Promise.all(all.map((part) => part.isVisible()));
  };

  it('goes on with each answer, on a phone', async () => {
    const page = await site.arrive('first-lesson/', { viewport: { width: 360, height: 800 } });
    const figures = page.locator('.lesson > [data-figure]');
    expect(await isSeen(figures)).toEqual([false, false, false]);
    expect(await page.getByText('The idea:').first().isVisible()).toBe(false);
    for (const answered of [1, 2, 3]) {
      const question = page.locator('[data-predict]').nth(answered - 1);
      await question.getByRole('radio').first().check();
      await question.getByRole('button', { name: 'Check my answer' }).click();
      expect(await isSeen(figures)).toEqual([0, 1, 2].map((place) => place < answered));
    }
    expect(await page.getByRole('heading', { name: 'What you can do now' }).isVisible()).toBe(true);
    const mechanism = figures.first();
    await mechanism.getByRole('button', { name: 'BDC' }).focus();
    await page.keyboard.press('Enter');
    await expect
      .poll(() => mechanism.locator('figcaption').textContent())
      .toMatch(/^At 1[78]\d(\.\d)?° after TDC/);
  });

  it('is whole without script', async () => {
    const { context } = await site.reader({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto('first-lesson/');
    const shown = await isSeen(page.locator('.lesson > .figure-island'));
    expect(shown.filter(Boolean)).toHaveLength(3);
  });
});
