import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { enter, field, result, says, seen } from './support/form.ts';
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
    expect(await mass(there).inputValue()).toBe('428.0');
    await enter(mass(there), '333');
    await says(result(there, 'bobweight', 'bobweight', 'baseline'), /^1590/);
    await first.goto('bobweight/');
    await first.locator('[data-calculator="bobweight"]').hover();
    await expect.poll(() => mass(first).inputValue()).toBe('500');
    expect(await first.getByLabel('Job', { exact: true }).inputValue()).toBe('');
    await enter(mass(first), '501');
    expect(await mass(there).inputValue()).toBe('333');
    await openJobs(first);
    await says(jobNamed(first, 'A 45° V-twin'), '1 number of your own');
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
    await copy.locator('summary').click();
    await copy.getByLabel('Customer').fill('=HYPERLINK("x")');
    await copy.getByLabel('Notes').fill('<img src=x onerror=alert(1)>');
    await says(copy, '1 number of your own; =HYPERLINK("x")');
    await copy.getByLabel('Name of the job').fill('Spare');
    const spare = jobNamed(page, 'Spare');
    await page.reload();
    await page.locator('[data-jobs][data-alive]').waitFor();
    await spare.locator('summary').click();
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
    await other.getByLabel('Add the jobs of a file').setInputFiles({
      name: 'jobs.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    await says(other.getByRole('status').first(), '3 jobs from the file stand in the list');
    expect(await jobNamed(other, 'One').count()).toBe(1);
    expect(await jobNamed(other, 'Two').count()).toBe(1);
    await other
      .getByLabel('Add the jobs of a file')
      .setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('{') });
    await says(other.getByRole('status').first(), 'Nothing was added.');
    expect(await seen(other.getByRole('list', { name: 'What could not be used' }))).toContain(
      'None of it was used.',
    );
  });
});
