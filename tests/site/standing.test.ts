import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { enter, field, put, result, says, seen, type } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();
const id = 'bobweight';

/** The numbers in prose of one set that are results of the calculator, as they are read. */
async function inProse(page: Page, set: string): Promise<readonly string[]> {
  return page
    .locator(`.prose p [data-v^="${id}."][data-v$=".${set}"], .prose li [data-v$=".${set}"]`)
    .evaluateAll((slots) =>
      slots
        .filter((slot) => slot.getAttribute('data-v')?.startsWith('bobweight.') === true)
        .map(({ textContent }) => textContent),
    );
}

const spoken = (page: Page) => page.locator(`[data-calculator="${id}"] [role="status"]`).last();

describe('a set without a result', () => {
  it('has no number anywhere after a reload', async () => {
    const page = await site.open(`${id}/`);
    await enter(field(page, id, 'pistonMass', 'candidate'), '4x');
    await page.reload();
    const standing = page.locator(`[data-calculator="${id}"] .standing`);
    await says(standing, /^No result for the candidate yet\. .*“Piston, bare”\.$/);
    await expect.poll(() => seen(result(page, id, 'bobweight', 'candidate'))).toBe('—');
    const figure = page.locator('[data-figure="bobweight-bar"]');
    await says(figure, 'There is nothing to draw: the candidate has no result.');
    expect(await figure.locator('svg').count()).toBe(0);
    expect((await inProse(page, 'candidate')).length).toBeGreaterThan(1);
    await expect
      .poll(async () =>
        (await inProse(page, 'candidate')).filter((text) => !['', '—'].includes(text)),
      )
      .toEqual([]);
    expect((await inProse(page, 'baseline')).some((text) => /\d/.test(text))).toBe(true);

    await enter(field(page, id, 'pistonMass', 'candidate'), '300');
    await says(figure, 'The candidate’s is');
    await expect
      .poll(async () => (await inProse(page, 'candidate')).filter((text) => text === '—'))
      .toEqual([]);
  });

  it('after a good one shows that, marked everywhere with what it was for', async () => {
    const page = await site.open(`${id}/`);
    const box = field(page, id, 'pistonMass', 'candidate');
    await enter(box, '381.5');
    await put(box, '4x');
    const standing = page.locator(`[data-calculator="${id}"] .standing`);
    await says(standing, 'The candidate shows the last good result, for 381.5 g');
    const cell = result(page, id, 'bobweight', 'candidate');
    expect((await cell.getAttribute('data-stale'))?.replace(/\s/g, ' ')).toBe('for 381.5 g');
    await says(
      page.locator('[data-figure="bobweight-bar"]'),
      'Drawn for the last good numbers of the candidate (381.5 g)',
    );
    const slots = page.locator(`.prose p [data-v^="${id}."][data-v$=".candidate"]`);
    await expect
      .poll(() =>
        slots.evaluateAll((all) => all.filter((slot) => !('stale' in slot.dataset)).length),
      )
      .toBe(0);
    await enter(box, '300');
    await expect.poll(() => page.locator('[data-stale]').count()).toBe(0);
  });
});

describe('what is said aloud', () => {
  it('is nothing of a number being typed, its problem when the field is left, then the result', async () => {
    const page = await site.open(`${id}/`);
    const box = field(page, id, 'pistonMass', 'candidate');
    await box.focus();
    await spoken(page).evaluate((line) => {
      const heard: string[] = [];
      Object.assign(window, { heard });
      new MutationObserver(() => heard.push(line.textContent)).observe(line, {
        characterData: true,
        childList: true,
        subtree: true,
      });
    });
    const heard = (): Promise<string[]> =>
      page.evaluate(() => (window as unknown as { heard: string[] }).heard);
    await type(box, '4x');
    await says(page.locator(`[data-calculator="${id}"] .standing`), 'last good result');
    await box.blur();
    await expect.poll(async () => (await heard()).at(-1)).toMatch(/^Piston, bare .*4x/);
    expect((await heard()).filter((text) => text.includes('4x'))).toHaveLength(1);
    await enter(box, '300');
    await expect
      .poll(async () => (await heard()).at(-1))
      .toMatch(/baseline \S.* candidate \S.*\.$/);
  });

  it('a field’s name has its unit', async () => {
    const page = await site.open(`${id}/`);
    await page.getByRole('textbox', { name: 'Piston, bare in g, Candidate' }).first().waitFor();
  });
});

describe('a number that comes from another tab', () => {
  it('stands the same in a calculator that is awake and a figure that sleeps', async () => {
    const reader = await site.reader();
    const page = await reader.open(`${id}/`);
    await field(page, id, 'pistonMass', 'candidate').focus();
    const other = await reader.open(`${id}/`);
    await enter(field(other, id, 'pistonMass', 'candidate'), '300');
    const figures = other.locator('[data-figure="bobweight-bar"] figcaption');
    await says(figures, 'The candidate’s is');
    const told = await seen(figures);
    await expect.poll(() => field(page, id, 'pistonMass', 'baseline').inputValue()).toBe('428.0');
    await expect
      .poll(() => seen(page.locator('[data-figure="bobweight-bar"] figcaption')))
      .toBe(told);
    // Off the screen both follow when the keys are quiet.
    await expect
      .poll(async () => {
        const [here, there] = [await inProse(page, 'candidate'), await inProse(other, 'candidate')];
        return here.every((text, i) => text === there[i]);
      })
      .toBe(true);
  });
});

describe('the figure of the metals', () => {
  it('lives at a speed of zero, and no connection is blamed', async () => {
    const page = await site.open('rod-materials/#maxSpeed=0rpm,0rpm&v=1');
    await says(page.locator('.visit'), 'These are the numbers of a link');
    await expect
      .poll(() => page.locator('[data-figure="material-bars"]').getAttribute('data-alive'))
      .toBe('');
    expect(await page.getByRole('alert').count()).toBe(0);
  });
});
