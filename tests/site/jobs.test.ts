import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { enter, field, says, result, seen, shows } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();

async function openJobs(page: Page): Promise<void> {
  await page.goto('jobs/');
  await page.locator('[data-jobs][data-alive]').waitFor();
}
async function begin(page: Page, name: string, from?: string): Promise<void> {
  await page.getByLabel('Name', { exact: true }).fill(name);
  if (from !== undefined) await page.getByLabel('Begins').selectOption({ label: from });
  await page.getByRole('button', { name: 'Begin it' }).click();
  await says(page.getByRole('status').first(), `${name} is open`);
}
function jobNamed(page: Page, name: string): Locator {
  return page
    .locator('[data-job]')
    .filter({ has: page.getByRole('heading', { name, exact: true }) });
}
const mass = (page: Page): Locator => field(page, 'bobweight', 'pistonMass', 'baseline');

describe('jobs', () => {
  it('each have their numbers, in two tabs at once, and stand on every page', async () => {
    const { context, open } = await site.reader();
    const first = await open('bobweight/');
    await enter(mass(first), '500');
    await first.getByRole('link', { name: 'All jobs' }).click();
    await first.locator('[data-jobs][data-alive]').waitFor();
    await says(jobNamed(first, 'First job, without a name'), '1 number of your own');

    const second = await context.newPage();
    await openJobs(second);
    await begin(second, 'A 45° V-twin');
    const there = await open('bobweight/');
    // A tab to come goes on with the job opened last; the first tab stays with its own.
    expect(await there.getByLabel('Job', { exact: true }).inputValue()).toBe('A 45° V-twin');
    expect(await mass(there).inputValue()).toBe('');
    await enter(mass(there), '333');
    await first.goto('bobweight/');
    await first.locator('[data-calculator="bobweight"]').hover();
    await expect.poll(() => mass(first).inputValue()).toBe('500');
    expect(await first.getByLabel('Job', { exact: true }).inputValue()).toBe('');
    await enter(mass(first), '501');
    expect(await mass(there).inputValue()).toBe('333');
    await openJobs(first);
    await says(jobNamed(first, 'A 45° V-twin'), '1 number of your own');
  });

  it('begin without numbers: a page says what it still needs, leads there, and then has a result', async () => {
    const page = await site.arrive('jobs/');
    await openJobs(page);
    await begin(page, 'A 60° V6');
    await page.goto('bobweight/');
    await page.locator('[data-calculator="bobweight"]').hover();
    const sheet = page.locator('[data-calculator="bobweight"]');
    await says(
      sheet,
      'No result for the baseline yet. It still needs “Piston, bare”, “Wrist pin”, “Rings of one piston” and 5 more.',
    );
    expect(await mass(page).getAttribute('placeholder')).toBe('needed');
    expect(await mass(page).getAttribute('aria-invalid')).toBeNull();
    expect(await seen(sheet)).not.toContain('Nothing is entered');
    // What custom decides stands, as the example that it is.
    expect(await field(page, 'bobweight', 'reciprocatingFraction', 'baseline').inputValue()).toBe(
      '50',
    );
    for (const [name, grams] of [
      ['pistonMass', '400'],
      ['pinMass', '100'],
      ['ringMass', '30'],
      ['smallEndMass', '150'],
      ['bigEndMass', '420'],
      ['lockMass', '2'],
      ['rodsPerPin', '2'],
    ] as const)
      await enter(field(page, 'bobweight', name, 'baseline'), grams);
    await says(sheet, 'No result for the baseline yet. It still needs “Bearing pair of one rod”.');
    await sheet.getByText(/^Still needs 1 numbers? for the baseline/).click();
    await sheet.getByRole('button', { name: 'Bearing pair of one rod, baseline' }).click();
    const shells = field(page, 'bobweight', 'shellMass', 'baseline');
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.id))
      .toBe(await shells.getAttribute('id'));
    await page.keyboard.type('40');
    await page.keyboard.press('Enter');
    // By hand: two rods, half of what goes up and down, and 4 g of oil.
    const rotating = 2 * (420 + 40) + 4;
    const reciprocating = 2 * (400 + 100 + 30 + 150 + 2);
    await shows(
      result(page, 'bobweight', 'bobweight', 'baseline'),
      rotating + reciprocating / 2,
      'g',
    );
    // Until a part of it is changed, the candidate is the same.
    await shows(
      result(page, 'bobweight', 'bobweight', 'candidate'),
      rotating + reciprocating / 2,
      'g',
    );
    await says(sheet, 'the same part as in the other set');
    // With the example allowed, the candidate has parts of its own.
    await openJobs(page);
    const job = jobNamed(page, 'A 60° V6');
    await job.getByText('Name, customer, engine, notes').click();
    await job.getByRole('checkbox').check();
    await page.goto('bobweight/');
    await page.locator('[data-calculator="bobweight"]').hover();
    await says(result(page, 'bobweight', 'bobweight', 'candidate'), /^1233/);
  });

  it('are copied, named, described, deleted and brought back', async () => {
    const page = await site.arrive('jobs/');
    await openJobs(page);
    await begin(page, 'Hill V8');
    await page.goto('bobweight/');
    await page.locator('[data-calculator="bobweight"]').hover();
    await page.locator('[data-calculator="bobweight"][data-alive]').waitFor();
    await enter(mass(page), '410');
    await openJobs(page);
    await begin(page, 'Second <b>V8</b>', 'as a copy of Hill V8');
    const copy = jobNamed(page, 'Second <b>V8</b>');
    await says(copy, 'Open in this tab.');
    await says(copy, '1 number of your own');
    await copy.getByText('Name, customer, engine, notes').click();
    await copy.getByLabel('Customer', { exact: true }).fill('=HYPERLINK("x")');
    await copy.getByLabel('Notes').fill('<img src=x onerror=alert(1)>');
    await says(copy, '1 number of your own; =HYPERLINK("x")');
    await copy.getByLabel('Name of the job').fill('Spare');
    const spare = jobNamed(page, 'Spare');
    await page.reload();
    await page.locator('[data-jobs][data-alive]').waitFor();
    await spare.getByText('Name, customer, engine, notes').click();
    expect(await spare.getByLabel('Notes').inputValue()).toBe('<img src=x onerror=alert(1)>');

    await spare.getByRole('button', { name: 'Delete Spare' }).click();
    await says(page.getByRole('status').first(), 'Spare is deleted. It can be brought back.');
    expect(await spare.count()).toBe(0);
    await says(jobNamed(page, 'First job, without a name'), 'Open in this tab.');
    await page.getByRole('button', { name: 'Bring back Spare' }).click();
    await says(spare, '1 number of your own; =HYPERLINK("x")');
    await spare.getByRole('button', { name: 'Open Spare' }).click();
    await page.goto('bobweight/');
    await page.locator('[data-calculator="bobweight"]').hover();
    await expect.poll(() => mass(page).inputValue()).toBe('410');
  });

  it('are saved as one file and added from it on another device', async () => {
    const page = await site.arrive('jobs/');
    await openJobs(page);
    await begin(page, 'One');
    await begin(page, 'Two');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save all jobs in one file' }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^jobs-\d{4}-\d\d-\d\d\.json$/);
    const text = await readFile(await download.path(), 'utf8');
    const other = await site.arrive('jobs/');
    await openJobs(other);
    await other.getByLabel('Add the jobs from a file').setInputFiles({
      name: 'jobs.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    await says(other.getByRole('status').first(), '3 jobs from the file stand in the list');
    expect(await jobNamed(other, 'One').count()).toBe(1);
    expect(await jobNamed(other, 'Two').count()).toBe(1);
    await other
      .getByLabel('Add the jobs from a file')
      .setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('{') });
    await says(other.getByRole('status').first(), 'Nothing was added.');
    expect(await seen(other.getByRole('list', { name: 'What could not be used' }))).toContain(
      'None of it was used.',
    );
  });
});
