import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { says, seen } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** A job with the masses of one pin, and another layout than the example's. */
async function begin(page: Page): Promise<void> {
  await page.locator('[data-jobs][data-alive]').waitFor();
  await page.getByLabel('Name', { exact: true }).fill('Two sets');
  await page.getByRole('button', { name: 'Begin it' }).click();
  await says(page.getByRole('status').first(), 'Two sets is open');
  await page.evaluate(() => {
    const room = `throwbook/1/jobs/${sessionStorage.getItem('throwbook/1/open') ?? ''}`;
    const keep = (set: string, name: string, text: string, unit: string): void => {
      localStorage.setItem(`${room}/${set}/${name}`, JSON.stringify({ text, unit }));
    };
    for (const [name, grams] of [
      ['pistonMass', '500'],
      ['pinMass', '100'],
      ['ringMass', '30'],
      ['lockMass', '2'],
      ['smallEndMass', '150'],
      ['bigEndMass', '420'],
      ['shellMass', '40'],
    ] as const)
      keep('baseline', name, grams, 'g');
    keep('baseline', 'rodsPerPin', '2', 'count');
    keep('candidate', 'pistonMass', '400', 'g');
    keep('baseline', 'stroke', '88', 'mm');
    keep('baseline', 'crankLayout', 'inline-6', '');
  });
}

describe('the spec sheet', () => {
  it('has all that was entered and what comes of it, says what is missing, and is two sides', async () => {
    const page = await site.arrive('jobs/');
    await begin(page);
    await page.goto('spec-sheet/');
    const sheet = page.locator('.spec-sheet');
    // By hand: two rods, half of what goes up and down, and 4 g of oil.
    await says(sheet, /Bobweight of one crankpin 1706\.0 ± \d\.\d g 1606\.0 ± \d\.\d g/);
    await says(sheet, 'Piston, bare 500 g 400 g');
    // A part that is the same stands in both columns.
    await says(sheet, 'Wrist pin 100 g 100 g');
    await says(sheet, 'Stroke (twice the throw) 88 mm 88 mm');
    const words = await seen(sheet);
    expect(words).toContain('Still missing');
    expect(words).toMatch(
      /Piston motion: Rod length, centre to centre, Redline \(highest intended speed\)/,
    );
    // The example's own masses are nowhere.
    expect(words).not.toMatch(/428\.0|421\.2|1685/);
    const [csv] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as CSV' }).click(),
    ]);
    expect(await readFile(await csv.path(), 'utf8')).toContain(
      'entered,Pistons,"Piston, bare",500 g,400 g,',
    );
    const sides = (await page.pdf({ format: 'A4' })).toString('latin1').match(/\/Type\s*\/Page\b/g);
    expect(sides?.length).toBeLessThanOrEqual(2);
  });

  it('is empty in a job without numbers, and says where to begin', async () => {
    const page = await site.arrive('spec-sheet/');
    await says(page.locator('.spec-sheet'), 'No number of your own is entered in this job yet.');
  });
});

describe('the weigh sheet', () => {
  it('has a row for each cylinder of the layout, on one side, and fits a phone', async () => {
    const { open } = await site.reader({ viewport: { width: 360, height: 740 } });
    const page = await open('jobs/');
    await begin(page);
    await page.goto('weigh-sheet/');
    await page.locator('[data-weigh][data-alive]').waitFor();
    await says(page.locator('.weigh-sheet'), '6 cylinders');
    expect(await page.locator('.weigh-sheet tbody tr').count()).toBe(7);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      360,
    );
    const sides = (await page.pdf({ format: 'A4' })).toString('latin1').match(/\/Type\s*\/Page\b/g);
    expect(sides).toHaveLength(1);
  });
});
