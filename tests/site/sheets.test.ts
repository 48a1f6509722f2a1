import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { printedSides } from '../../src/build/measure-layout.js';
import { bobweight } from '../../src/calculators/balance/bobweight.ts';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { exampleInput } from '../../src/calculators/practice/example.ts';
import { readAs } from '../../src/units/field.ts';
import { readQuantity } from '../../src/units/read.ts';
import { must } from '../calculators/must.ts';
import { says } from './support/form.ts';
import { pagesOf } from './support/print.ts';
import { useSite } from './support/site.ts';

const site = useSite();
const topics = readdirSync(join(import.meta.dirname, '../../content/topics'));
const calculator: AnyCalculator = bobweight;

async function made(path: string, how = {}): Promise<Page> {
  const page = await site.arrive(path, how);
  await page.locator('[data-sheets][data-alive]').waitFor();
  return page;
}

describe('handouts', () => {
  it('print on two sides at most, A4 and Letter, each of them', { timeout: 180_000 }, async () => {
    const page = await site.arrive('teach/');
    const long: string[] = [];
    for (const topic of topics) {
      await page.goto(`${topic}/handout/`);
      if ((await printedSides(page)) > 2) long.push(`${topic}, A4`);
      if (pagesOf(await page.pdf({ format: 'Letter', preferCSSPageSize: true })) > 2)
        long.push(`${topic}, Letter`);
    }
    expect(long).toEqual([]);
  });

  it('have the figure, a worked case, exercises and a citation, also without script', async () => {
    const page = await site.arrive('reversal-load/handout/', { javaScriptEnabled: false });
    expect(await page.locator('.handout-figure svg').count()).toBeGreaterThan(0);
    expect(await page.locator('.handout-line').count()).toBeGreaterThan(3);
    const tasks = await page.locator('[data-task]').count();
    expect(tasks).toBeGreaterThanOrEqual(3);
    expect(tasks).toBeLessThanOrEqual(4);
    expect(await page.locator('[data-cite]').textContent()).toMatch(
      /Throwbook, “Reversal load: handout”, version \d.*Printed on/s,
    );
  });

  it('lead to the key of their own exercises', async () => {
    const page = await site.arrive('bobweight/handout/');
    const texts = await page.locator('[data-task]').allTextContents();
    await page.getByRole('link', { name: 'The key to the exercises' }).click();
    await page.locator('[data-sheets][data-alive]').waitFor();
    expect(await page.locator('.paper-sheet').count()).toBe(0);
    expect(await page.locator('[data-key]').count()).toBeGreaterThan(2);
    await page.getByLabel('The sheets alone').check();
    const plain = (text: string): string => text.replace(/^\s*\d+\.\s*|\s+/g, '');
    const sheets = (await page.locator('[data-task]').allTextContents()).map(plain);
    for (const text of texts) expect(sheets).toContain(plain(text));
  });
});

/** What one printed exercise states: label and text. */
async function givens(page: Page, variant: number, task: string) {
  const terms = page.locator(`[data-variant="${String(variant)}"] [data-task="${task}"] dl > div`);
  return terms.evaluateAll((rows) =>
    rows.map((row) => {
      const term = row.querySelector('dt')?.cloneNode(true) as HTMLElement;
      term.querySelector('var')?.remove();
      return [term.textContent.trim(), row.querySelector('dd')?.textContent ?? ''] as const;
    }),
  );
}

describe('exercise sheets', () => {
  it('three variants print on sides of their own, and the key is their answer worked again', async () => {
    const page = await made('bobweight/sheet/#seed=4821&n=3');
    expect(await page.locator('.paper-sheet').count()).toBe(3);
    expect(await page.locator('.paper-code').allTextContents()).toEqual([
      'Sheet 4821-1',
      'Sheet 4821-2',
      'Sheet 4821-3',
    ]);
    const answers: number[] = [];
    for (const variant of [1, 2, 3]) {
      const stated = await givens(page, variant, 'bobweight.bobweight');
      expect(stated.length).toBeGreaterThan(5);
      const printed = stated.map(([label, text]) => {
        const entry = must(Object.values(calculator.inputs).find((one) => one.label === label));
        if (entry.type === 'choice') throw new Error(`${label} is a choice`);
        const read = readAs(entry, text, entry.metric);
        if (!read.ok) throw new Error(`${label}: ${read.say}`);
        return [entry.name, read.si] as const;
      });
      const input = { ...exampleInput(calculator, 'baseline'), ...Object.fromEntries(printed) };
      const again = calculator.compute(input)['bobweight'] as number;
      const key = page.locator(
        `[data-key-of="${String(variant)}"] [data-key="bobweight.bobweight"]`,
      );
      const read = readQuantity(await key.locator('b').innerText(), {
        label: 'key',
        kind: 'mass',
        unit: 'g',
      });
      if (!read.ok) throw new Error(read.say);
      // A fifth of the tolerance of 0.1 %, which rounding may take.
      expect(Math.abs(read.si / again - 1)).toBeLessThan(2.1e-4);
      answers.push(read.si);
    }
    expect(new Set(answers).size).toBe(3);
    const both = await printedSides(page);
    await page.getByLabel('The key alone').check();
    const key = await printedSides(page);
    await page.getByLabel('The sheets alone').check();
    const sheets = await printedSides(page);
    expect(sheets).toBeGreaterThanOrEqual(3);
    expect(both).toBe(sheets + key);
    await page.emulateMedia({ media: 'print' });
    const breaks = await page
      .locator('.paper-sheet + .paper-sheet')
      .evaluateAll((all) => all.map((sheet) => getComputedStyle(sheet).breakBefore));
    expect(breaks).toEqual(['page', 'page']);
    expect(await page.locator('.site-header, .site-footer, h1, form').first().isVisible()).toBe(
      false,
    );
  });

  it('are the same again from the seed, and need nothing more once the page stands', async () => {
    const page = await made('reversal-load/sheet/#seed=77&n=2&units=metric');
    // What every page fetches once it is idle is there first.
    await page.waitForLoadState('networkidle');
    const asked: string[] = [];
    page.on('request', (request) => {
      // The browser itself looks for the icon when the address changes.
      if (!request.url().endsWith('/icon.svg')) asked.push(request.url());
    });
    const before = await page.locator('.sheets-made').textContent();
    await page.getByLabel('Seed').fill('78');
    await page.getByRole('button', { name: 'Make the sheets' }).click();
    await says(page.locator('.paper-code').first(), 'Sheet 78-1');
    expect(await page.locator('.sheets-made').textContent()).not.toBe(before);
    await page.getByLabel('Seed').fill('77');
    await page.getByRole('button', { name: 'Make the sheets' }).click();
    await says(page.locator('.paper-code').first(), 'Sheet 77-1');
    expect(await page.locator('.sheets-made').textContent()).toBe(before);
    expect(asked).toEqual([]);
  });

  it('say what they cannot read, and lose nothing', async () => {
    const page = await made('bobweight/sheet/#seed=12&n=2');
    const before = await page.locator('.sheets-made').textContent();
    const make = page.getByRole('button', { name: 'Make the sheets' });
    for (const [label, text, words] of [
      ['Variants', '0', 'from 1 to 30. You entered 0'],
      ['Variants', '31', 'You entered 31'],
      ['Variants', '1.5', 'no whole number'],
      ['Variants', 'many', 'no whole number'],
      ['Variants', '', 'Nothing is entered'],
      ['Seed', '', 'Nothing is entered'],
      ['Seed', '12345678901234567890', 'at most 9 digits. You entered 20'],
      ['Seed', '-3', 'no whole number'],
    ] as const) {
      const field = page.getByLabel(label);
      const kept = await field.inputValue();
      await field.fill(text);
      await make.click();
      await says(page.locator('.sheet-problem'), words);
      expect(await field.inputValue()).toBe(text);
      expect(await page.locator('.sheets-made').textContent()).toBe(before);
      await field.fill(kept);
      await make.click();
      await expect.poll(() => page.locator('.sheet-problem').count()).toBe(0);
    }
  });

  it('tell a link of another version', async () => {
    const page = await made('bobweight/sheet/#seed=12&n=1&v=99');
    await says(page.locator('.sheet-note'), 'another version of the exercises (99');
    expect(await page.locator('.paper-sheet').count()).toBe(1);
  });

  it('without script the page says so and offers the handout', async () => {
    const page = await site.arrive('bobweight/sheet/', { javaScriptEnabled: false });
    expect(await page.locator('[data-sheets]').isVisible()).toBe(false);
    const words = (await page.locator('main noscript').textContent()) ?? '';
    expect(words).toContain('this browser runs none');
    expect(words).toContain('handout');
  });

  it.each(['bobweight/sheet/#seed=5&n=2&kinds=number.choice.order', 'rod-shank/handout/'])(
    '%s passes axe, and nothing scrolls sideways on a phone',
    async (path) => {
      const page = await site.arrive(path, { viewport: { width: 360, height: 800 } });
      if (path.includes('/sheet/')) await page.locator('[data-sheets][data-alive]').waitFor();
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
    },
  );
});
