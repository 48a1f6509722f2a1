import { AxeBuilder } from '@axe-core/playwright';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { topicPages } from './support/build.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** The term that these tests take for an example, and its meaning, on the page of bobweights. */
function example(page: Page): { readonly term: Locator; readonly meaning: Locator } {
  return {
    term: page.locator('.term[href$="#candidate"]'),
    meaning: page.locator('#term-candidate'),
  };
}

/** Where the parts of the page stand, as numbers that differ when anything has moved. */
function places(page: Page): Promise<readonly number[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('main :is(p, h2, li):not([hidden])')].map(
      (part) => part.getBoundingClientRect().top + scrollY,
    ),
  );
}

describe('a term of the glossary', () => {
  it('shows its meaning to who points at it, moves nothing, and hides it at Escape', async () => {
    const page = await site.arrive('bobweight/');
    const { term, meaning } = example(page);
    await term.scrollIntoViewIfNeeded();
    const before = await places(page);
    await term.hover();
    await meaning.waitFor();
    expect(await places(page)).toEqual(before);
    // The pointer may go over to the meaning, to read it or to mark it.
    await meaning.hover();
    expect(await meaning.isVisible()).toBe(true);
    await page.keyboard.press('Escape');
    await meaning.waitFor({ state: 'hidden' });
    await page.mouse.move(0, 0);
    await term.hover();
    await meaning.waitFor();
  });

  it('shows it to who comes by keys, and says it of the link', async () => {
    const page = await site.arrive('bobweight/');
    const { term, meaning } = example(page);
    await term.focus();
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Tab');
    await expect.poll(() => term.evaluate((link) => link === document.activeElement)).toBe(true);
    await meaning.waitFor();
    const { violations } = await new AxeBuilder({ page }).include('.prose > p').analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    const described = await term.evaluate(
      (link) => document.getElementById(link.getAttribute('aria-describedby') ?? '')?.textContent,
    );
    expect(described).toBe(await meaning.textContent());
    await page.keyboard.press('Escape');
    await meaning.waitFor({ state: 'hidden' });
    await page.keyboard.press('Enter');
    await page.waitForURL('**/glossary/#candidate');
  });

  it('stands in the question that a page opens with, too', async () => {
    const page = await site.arrive('crank-overlap/');
    const term = page.locator('legend .term').first();
    await term.hover();
    await page.locator('legend .term + .term-meaning').first().waitFor();
    await term.click();
    await page.waitForURL('**/glossary/#crankpin');
  });

  it('shows it at a tap, hides it at a tap elsewhere, and leads to the glossary at the second', async () => {
    const page = await site.arrive('bobweight/', { hasTouch: true, isMobile: true });
    const { term, meaning } = example(page);
    await term.tap();
    await meaning.waitFor();
    await page.locator('h1').tap();
    await meaning.waitFor({ state: 'hidden' });
    await term.tap();
    await meaning.waitFor();
    await term.tap();
    await page.waitForURL('**/glossary/#candidate');
  });

  it('is a plain link without a script, and plain text on paper', async () => {
    const page = await site.arrive('bobweight/', { javaScriptEnabled: false });
    const { term, meaning } = example(page);
    expect(await meaning.isVisible()).toBe(false);
    await page.emulateMedia({ media: 'print' });
    await term.hover();
    expect(await meaning.isVisible()).toBe(false);
    expect(await term.evaluate((link) => getComputedStyle(link).textDecorationLine)).toBe('none');
    await page.emulateMedia({ media: 'screen' });
    await term.click();
    await page.waitForURL('**/glossary/#candidate');
  });
});

it('a page marks a term once, some but not too many', () => {
  for (const { path, html } of topicPages().filter((page) => !page.path.includes('working'))) {
    const places = [...html.matchAll(/<a class="term" href="([^"]*)"/g)].map(([, place]) => place);
    expect(new Set(places).size, path).toBe(places.length);
    expect(places.length, path).toBeGreaterThan(2);
    expect(places.length, path).toBeLessThanOrEqual(30);
  }
});

it('all sections of a page open at one press, and one that an address names opens by itself', async () => {
  const page = await site.arrive('bobweight/');
  const folded = page.locator('details.section:not([open])');
  const place = (await folded.first().locator('h2').getAttribute('id')) ?? '';
  await page.getByRole('button', { name: 'Open all sections' }).click();
  await expect.poll(() => folded.count()).toBe(0);
  const other = await site.arrive(`bobweight/#${place}`);
  await other.locator(`details.section[open] #${place}`).waitFor();
});
