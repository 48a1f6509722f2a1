import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { field } from './support/form.ts';
import { useSite } from './support/site.ts';
import { desk } from './support/waking.ts';

const site = useSite();

function number(page: Page): Locator {
  return page.locator('[data-v="piston-motion.rodLength.baseline"][role=button]').first();
}
/** The field that stands in the place of a number while it is changed. */
function box(page: Page): Locator {
  return page.locator('.in-sentence input');
}
function onSheet(page: Page): Promise<string> {
  return field(page, 'piston-motion', 'rodLength', 'baseline').inputValue();
}

/** A page with every section open, woken. */
async function opened(): Promise<Page> {
  const page = await site.open('piston-motion/', desk);
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
  await number(page).waitFor();
  return page;
}

it('a number of a sentence is changed in its place, and the sheet follows', async () => {
  const page = await opened();
  const before = await onSheet(page);
  await number(page).focus();
  await page.keyboard.press('Enter');
  expect(await box(page).inputValue()).toBe(before);
  await page.keyboard.type('150');
  await expect.poll(() => onSheet(page)).toBe('150');
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => onSheet(page)).toBe('151');
  await page.keyboard.press('Enter');
  expect(await box(page).count()).toBe(0);
  await expect.poll(() => number(page).textContent()).toMatch(/^151/);
  expect(await number(page).evaluate((each) => each === document.activeElement)).toBe(true);
});

it('Escape puts back what stood there, the example as the example', async () => {
  const page = await opened();
  const before = await onSheet(page);
  await number(page).click();
  await box(page).fill('160');
  await expect.poll(() => onSheet(page)).toBe('160');
  await box(page).press('Escape');
  await expect.poll(() => onSheet(page)).toBe(before);
  expect(
    await page.evaluate(() => Object.keys(localStorage).filter((key) => /rodLength/.test(key))),
  ).toEqual([]);
});

it('what cannot be read says so, is written nowhere, and leaves with the focus', async () => {
  const page = await opened();
  const before = await onSheet(page);
  await number(page).click();
  await box(page).fill('350 g');
  await box(page).press('Enter');
  expect(await page.locator('.in-sentence [role=alert]').textContent()).toMatch(/must be a length/);
  expect(await onSheet(page)).toBe(before);
  await box(page).blur();
  expect(await box(page).count()).toBe(0);
  expect(await number(page).isVisible()).toBe(true);
});
