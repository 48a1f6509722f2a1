import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { enter, field, result, says, shows } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();
const mass = (page: Page, set: 'baseline' | 'candidate'): Locator =>
  field(page, 'bobweight', 'pistonMass', set);

/** What stands in the candidate's column, as the bar has it where there are three. */
const candidateOf = (page: Page): Locator =>
  page.locator('[data-notebook-bar]').getByLabel(/^Candidate/);

/** Opens the sets of the job that is open. */
async function openSets(page: Page): Promise<Locator> {
  await page.goto('jobs/');
  await page.locator('[data-jobs][data-alive]').waitFor();
  await page.getByText(/^Sets of parts: /).click();
  return page.getByRole('group', { name: 'Sets of parts' });
}
async function awake(page: Page): Promise<void> {
  await page.goto('bobweight/');
  await page.locator('[data-calculator="bobweight"]').hover();
  await page.locator('[data-calculator="bobweight"][data-alive]').waitFor();
}

describe('the sets of a job', () => {
  it('are named, added, laid side by side, copied and removed, and every page shows the two', async () => {
    const page = await site.arrive('jobs/');
    const sets = await openSets(page);
    await sets.getByLabel('Name of the baseline').fill('Road parts');
    await sets.getByLabel('Name of the candidate').fill('<b>Hill</b> parts');
    await sets.getByRole('button', { name: 'Add a set' }).click();
    await sets.getByLabel('Name of the third set').fill('Forged');
    await awake(page);
    const sheet = page.locator('[data-calculator="bobweight"]');
    await says(sheet.locator('.row-head'), 'Baseline Road parts');
    await says(sheet.locator('.row-head'), 'Candidate Forged');
    // An added set is the same as the baseline until a part of it is changed.
    await enter(mass(page, 'baseline'), '430.0');
    await expect.poll(() => mass(page, 'candidate').inputValue()).toBe('430.0');
    await says(sheet, 'the same part as in the other set');
    await enter(mass(page, 'candidate'), '400');
    // Two rods, half of 30 g each.
    const baseline = 1685.2 + 2 * 0.5 * 2;
    await shows(result(page, 'bobweight', 'bobweight', 'baseline'), baseline, 'g');
    await shows(result(page, 'bobweight', 'bobweight', 'candidate'), baseline - 30, 'g');

    await candidateOf(page).selectOption('<b>Hill</b> parts');
    await says(sheet.locator('.row-head'), 'Candidate <b>Hill</b> parts');
    await expect.poll(() => mass(page, 'candidate').inputValue()).toBe('318.0');

    const again = await openSets(page);
    await again.getByLabel(/^Copy/).selectOption('Forged');
    await again.getByLabel(/^into/).selectOption('<b>Hill</b> parts');
    await again.getByRole('button', { name: 'Copy', exact: true }).click();
    await says(page.getByRole('status').first(), '<b>Hill</b> parts has what Forged has');
    await again.getByRole('button', { name: 'Remove Forged' }).click();
    await awake(page);
    await expect.poll(() => mass(page, 'candidate').inputValue()).toBe('400');
    expect(await candidateOf(page).count()).toBe(0);
  });

  it('a step is undone and done again by button and by key, on the page and on the next', async () => {
    const page = await site.arrive('bobweight/');
    await awake(page);
    await enter(mass(page, 'baseline'), '500');
    await enter(mass(page, 'candidate'), '400');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => mass(page, 'candidate').inputValue()).toBe('318.0');
    await says(page.locator('[data-notebook-bar] [role="status"]'), 'One step is undone: ');
    await page.locator('body').press('Control+z');
    await expect.poll(() => mass(page, 'baseline').inputValue()).toBe('428.0');
    await page.reload();
    await page.locator('[data-notebook-bar]').hover();
    await page.getByRole('button', { name: 'Redo' }).click();
    await expect.poll(() => mass(page, 'baseline').inputValue()).toBe('500');
    await page.locator('h1').click();
    await page.keyboard.press('Control+Shift+z');
    await expect.poll(() => mass(page, 'candidate').inputValue()).toBe('400');
    // In a field the key takes back what was typed there, and no step of the job.
    await mass(page, 'baseline').press('Control+z');
    await expect.poll(() => mass(page, 'candidate').inputValue()).toBe('400');
  });
});
