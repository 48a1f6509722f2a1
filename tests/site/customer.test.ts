import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { enter, field, says, seen } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** A builder's numbers of two sets, as the notebook keeps them. */
const numbers: Readonly<
  Record<string, readonly [baseline: string, candidate: string, unit: string]>
> = {
  pistonMass: ['500', '400', 'g'],
  pinMass: ['100', '80', 'g'],
  ringMass: ['30', '20', 'g'],
  lockMass: ['2', '2', 'g'],
  smallEndMass: ['150', '140', 'g'],
  bigEndMass: ['420', '400', 'g'],
  shellMass: ['40', '40', 'g'],
  rodsPerPin: ['2', '2', 'count'],
  maxSpeed: ['6000', '7000', 'rpm'],
  rodLength: ['6.0', '6.0', 'in'],
  stroke: ['88', '88', 'mm'],
};
// By hand: two rods, half of what goes up and down, and 4 g of oil.
const bobweight = {
  before: 2 * 460 + 4 + 782,
  now: 2 * 440 + 4 + 642,
} as const;

async function begin(page: Page): Promise<void> {
  await page.locator('[data-jobs][data-alive]').waitFor();
  await page.getByLabel('Name', { exact: true }).fill('Hill <i>V8</i>');
  await page.getByRole('button', { name: 'Begin it' }).click();
  await page.evaluate((all) => {
    const room = `throwbook/1/jobs/${sessionStorage.getItem('throwbook/1/open') ?? ''}`;
    for (const [name, [baseline, candidate, unit]] of Object.entries(all)) {
      localStorage.setItem(`${room}/baseline/${name}`, JSON.stringify({ text: baseline, unit }));
      localStorage.setItem(`${room}/candidate/${name}`, JSON.stringify({ text: candidate, unit }));
    }
  }, numbers);
}
async function open(page: Page): Promise<Locator> {
  await page.goto('customer/');
  await page.locator('[data-customer][data-alive]').waitFor();
  return page.locator('.letter');
}

describe('the customer’s page', () => {
  it('shows the builder what will be seen, and the customer that and nothing else', async () => {
    const page = await site.arrive('jobs/');
    await begin(page);
    const preview = await open(page);
    await says(preview, 'Bobweight of a crankpin 1706.0 g 1526.0 g');
    await page.getByLabel('From').fill('The workshop');
    await page.getByLabel('Date').fill('2026-11-30');
    await page.getByLabel('Your message').fill('<script>alert(1)</script>\nCall me.');
    await says(preview, 'The workshop, 30 November 2026');
    // What is assumed is named, and what a line still lacks.
    await page.getByText(/numbers are not yours/).click();
    await says(page.locator('[data-customer]'), 'Oil allowance of one crankpin: 4.0 g, assumed');
    await page.getByText('Not in the table, since numbers are missing').click();
    await says(page.locator('[data-customer]'), 'Reversal load:');
    await page.getByRole('checkbox', { name: 'Whether it makes more power' }).uncheck();
    await page.getByRole('button', { name: 'Copy the customer’s link' }).click();
    const box = page.getByLabel('The link', { exact: true });
    await box.waitFor();
    const href = await box.inputValue();
    expect(href.length).toBeLessThan(2000);

    const { context } = await site.reader({ viewport: { width: 390, height: 844 } });
    const phone = await context.newPage();
    await phone.goto(href);
    await phone.locator('[data-customer][data-alive]').waitFor();
    const letter = phone.locator('.letter');
    await says(letter, 'Bobweight of a crankpin 1706.0 g 1526.0 g');
    const words = await seen(phone.locator('main'));
    expect(words).toContain('Hill <i>V8</i>');
    expect(words).toContain('<script>alert(1)</script> Call me.');
    expect(words).toContain(
      'The bobweight, which stands for rods and pistons while a crank is balanced, changes from 1706.0 g to 1526.0 g',
    );
    expect(words).not.toMatch(/example|damaged|more power|Baseline|Candidate|could not be read/);
    // Of the customer's own device nothing is kept, and no box waits for a number.
    expect(await phone.locator('main :is(input, textarea, select)').count()).toBe(0);
    const height = await letter.evaluate((node) => node.getBoundingClientRect().bottom);
    expect(height / 844).toBeLessThan(1.5);

    await phone.getByRole('button', { name: 'Try other numbers' }).click();
    await enter(phone.getByLabel('Piston, bare in g, Candidate'), '390');
    await says(letter, `1706.0 g ${String(bobweight.now - 10)}.0 g`);
    await phone.getByRole('link', { name: 'See the working' }).click();
    await phone.waitForURL(/bobweight\//);
    await expect
      .poll(() => field(phone, 'bobweight', 'pistonMass', 'candidate').inputValue())
      .toBe('390');
    expect(bobweight.before).toBe(1706);
  });

  it('saves one file with the same words, that runs and fetches nothing', async () => {
    const page = await site.arrive('jobs/');
    await begin(page);
    const preview = await open(page);
    await says(preview, '1706.0 g 1526.0 g');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save a one-file copy' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('Hill-i-V8-i.html');
    const html = await readFile(await download.path(), 'utf8');
    expect(html.length).toBeLessThan(250_000);
    const { context } = await site.reader();
    await context.setOffline(true);
    const copy = await context.newPage();
    await copy.setContent(html);
    await says(copy.locator('body'), 'Bobweight of a crankpin 1706.0 g 1526.0 g');
    expect(await copy.title()).toBe('Hill <i>V8</i>');
    expect(await copy.locator('script, i').count()).toBe(0);
  });

  it('says then and now where the same numbers gave another result', async () => {
    const page = await site.arrive('jobs/');
    await begin(page);
    await open(page);
    await says(page.locator('.letter'), '1706.0 g');
    await page.getByRole('button', { name: 'Copy the customer’s link' }).click();
    const box = page.getByLabel('The link', { exact: true });
    await box.waitFor();
    const href = await box.inputValue();
    expect(href).toContain('/bobweight.bobweight/1.706/1.526/');
    const other = await site.arrive('');
    await other.goto(href.replace('/1.706/1.526/', '/1.7/1.526/'));
    await says(
      other.locator('main'),
      'Bobweight of one crankpin, Baseline: then 1700.0 g, now 1706.0 g',
    );
    // On the page of its topic as well, until a number is changed.
    await other.getByRole('link', { name: 'See the working' }).click();
    const told = other.getByRole('region', { name: 'Then and now' });
    await says(told, 'Bobweight of one crankpin, Baseline: then 1700.0 g, now 1706.0 g');
    await enter(field(other, 'bobweight', 'pistonMass', 'baseline'), '501');
    await told.waitFor({ state: 'detached' });
  });

  it('has nothing to show of the example, and says where to begin', async () => {
    const page = await site.arrive('customer/');
    await page.locator('[data-customer][data-alive]').waitFor();
    await says(page.locator('main'), 'There is nothing to show a customer yet');
    expect(await page.locator('.letter').count()).toBe(0);
  });
});
