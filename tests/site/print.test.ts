import { type Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { sitePages, topicPages } from './support/build.ts';
import { field, put } from './support/form.ts';
import { pagesOf, print } from './support/print.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** What would be cut off at the right edge of a sheet whose text is this wide. */
async function cutOff(page: Page, width: number): Promise<readonly string[]> {
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width, height: 1000 });
  return page.evaluate(() =>
    [...document.querySelectorAll('main *')]
      .filter((part) => {
        const box = part.getBoundingClientRect();
        return (
          box.width > 0 && box.right > innerWidth + 1 && part.closest('svg') !== part.parentElement
        );
      })
      .slice(0, 3)
      .map((part) => part.outerHTML.slice(0, 140)),
  );
}

describe('on paper', () => {
  it.each(topicPages().map(({ path }) => [path]))('%s fits A4 and Letter', async (path) => {
    const page = await site.open(path);
    for (const format of ['A4', 'Letter'] as const) {
      const count = pagesOf(await print(page, format));
      expect(count, format).toBeGreaterThan(1);
      expect(count, format).toBeLessThan(30);
    }
    // 180 mm of text on A4, in CSS pixels.
    expect(await cutOff(page, 680)).toEqual([]);
    const shown = await page.evaluate(() =>
      [...document.querySelectorAll('button, .site-header nav, .bar, .predict-answer')]
        .filter((part) => part.checkVisibility())
        .map((part) => part.outerHTML.slice(0, 100)),
    );
    expect(shown, 'what is of no use on paper').toEqual([]);
    const ink = await page.evaluate(() => {
      const { color, backgroundColor } = getComputedStyle(document.body);
      return { color, backgroundColor };
    });
    expect(ink.color).toBe('rgb(0, 0, 0)');
  });

  it.each(
    sitePages()
      .filter(({ path }) => !topicPages().some((topic) => topic.path === path))
      .map(({ path }) => [path || '(first page)', path]),
  )('%s prints', async (_, path) => {
    const page = await site.open(path);
    expect(pagesOf(await print(page, 'A4'))).toBeGreaterThan(0);
  });

  it('the reader’s numbers are printed everywhere, also where the page was never scrolled to', async () => {
    const reader = await site.reader({
      colorScheme: 'dark',
      viewport: { width: 900, height: 600 },
    });
    const first = await reader.open('residual-unbalance/');
    await put(field(first, 'residual-unbalance', 'crankMass', 'baseline'), '40.4');
    await put(field(first, 'bobweight-error', 'stroke', 'baseline'), '74');
    await first.close();
    const page = await reader.arrive('residual-unbalance/');
    // What a browser prints a moment after the page has come.
    await page.waitForFunction(
      () => document.querySelectorAll('[data-calculator]:not([data-alive])').length === 0,
    );
    await page.emulateMedia({ media: 'print' });
    expect(await page.evaluate(() => scrollY)).toBe(0);
    const crank = field(page, 'residual-unbalance', 'crankMass', 'baseline');
    expect(await crank.inputValue()).toBe('40.4');
    expect(await field(page, 'bobweight-error', 'stroke', 'baseline').inputValue()).toBe('74');
    // 20 kg more of crank, 0.0125 mm off its axis: 125 g·mm more at the end, beside 188 and 119 at unknown angles.
    const prose = page.locator('[data-v="unbalance-floor.floor.baseline"]:not([data-also])');
    expect(await prose.count()).toBeGreaterThan(1);
    await expect
      .poll(async () => (await prose.allTextContents()).filter((text) => !/^\s*3[67]\d/.test(text)))
      .toEqual([]);
  });
});
