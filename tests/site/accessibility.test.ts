import { AxeBuilder } from '@axe-core/playwright';
import { type Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { sitePages } from './support/build.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** Opens everything that is folded, answers every question, fetches every tool. */
async function unfoldAll(page: Page): Promise<void> {
  // Each goes once it is pressed, so the first of those left is pressed until none is.
  const skips = page.getByRole('button', { name: 'Just show me' });
  while ((await skips.count()) > 0) await skips.first().click();
  await skips.waitFor({ state: 'detached' });
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) {
      // Of the tools of a sheet one is open at a time; here all of them are looked at.
      fold.removeAttribute('name');
      fold.open = true;
    }
  });
  await page.waitForFunction(() =>
    [...document.querySelectorAll('.tool:not(.handout *)')].every(
      (tool) =>
        tool.childElementCount > 1 &&
        // The plot is drawn in slices, and nothing stands there before.
        (tool.firstElementChild?.textContent !== 'Plot' || tool.querySelector('svg') !== null),
    ),
  );
}

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** Faults by WCAG 2.2 AA; in the second scheme of colours only what colours can change. */
async function violations(page: Page, what: 'all' | 'contrast'): Promise<readonly string[]> {
  const { violations: found, passes } = await new AxeBuilder({ page })
    // One document without frames: the whole run in the page itself takes a third of the time.
    .setLegacyMode(true)
    .options({
      runOnly: what === 'all' ? rules : { type: 'rule', values: ['color-contrast'] },
      // Listing what is well takes longer than finding what is not.
      resultTypes: ['violations'],
    })
    .analyze();
  expect(passes.map(({ id }) => id)).toContain('color-contrast');
  return found.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`),
  );
}

/** What reaches past the right edge of the window, where the page itself would scroll sideways. */
function overflow(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    // What scrolls or is cut inside a part of its own is no fault of the page.
    const held = (part: Element): boolean => {
      for (let at = part.parentElement; at !== null; at = at.parentElement)
        if (getComputedStyle(at).overflowX !== 'visible') return true;
      return false;
    };
    const wide = [...document.querySelectorAll('body *')].filter(
      (part) => part.getBoundingClientRect().right > clientWidth + 0.5 && !held(part),
    );
    return [
      `${String(scrollWidth)} px`,
      ...wide.slice(-3).map((part) => part.outerHTML.slice(0, 160)),
    ];
  });
}

/** Sets the size of a page's letters, as a reader does in a browser that enlarges text alone. */
async function letters(page: Page, size: string): Promise<void> {
  await page.evaluate((set) => {
    document.documentElement.style.fontSize = set;
  }, size);
}

// One sheet and one figure stand for the parts for pages of other sites.
const parts = ['embed/bobweight/', 'embed/figure-mechanism/'];

it.each(
  [...sitePages().map(({ path }) => path), ...parts].map((path) => [path || '(first page)', path]),
)('%s: no fault for those who cannot see it, no sideways scroll', async (_, path) => {
  const page = await site.open(path, { viewport: { width: 320, height: 720 } });
  expect.soft(await overflow(page), 'at 320 px').toEqual([]);
  await unfoldAll(page);
  expect.soft(await overflow(page), 'at 320 px, unfolded').toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
  await letters(page, '200%');
  expect.soft(await overflow(page), 'at 390 px, letters twice as large').toEqual([]);
  await letters(page, '');
  await page.setViewportSize({ width: 1920, height: 1080 });
  expect.soft(await overflow(page), 'at 1920 px').toEqual([]);
  await page.setViewportSize({ width: 1280, height: 900 });
  expect.soft(await violations(page, 'all'), 'light').toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect.soft(await violations(page, 'contrast'), 'dark').toEqual([]);
  const ground = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  expect(ground).not.toBe('rgb(255, 255, 255)');
});
