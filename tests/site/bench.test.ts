import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { enter, field, result, says, seen, shows } from './support/form.ts';
import { pagesOf, print } from './support/print.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** Eight of everything, as a spreadsheet has them side by side: what came out. */
const weighed = [
  'Piston (g)\tPin (g)\tSmall end (g)\tBig end (g)',
  '428.0\t120.2\t170.6\t421.2',
  '427.1\t120.6\t171.4\t422.9',
  '429.2\t119.9\t169.9\t420.1',
  '428.6\t120.4\t170.2\t421.8',
  '426.8\t120.1\t171.0\t420.6',
  '428.3\t120.0\t170.8\t422.3',
  '427.7\t120.5\t170.1\t421.0',
  '429.0\t120.3\t171.2\t421.6',
].join('\n');
const mean = (column: number): number =>
  weighed
    .split('\n')
    .slice(1)
    .reduce((sum, line) => sum + Number(line.split('\t')[column]), 0) / 8;
/** What is the same in all parts of this engine, typed once. */
const typed = { ringMass: 38, lockMass: 0, shellMass: 41 } as const;
/** The allowance of the example, which stands in every job as an assumption. */
const oil = 4;
function bobweight(piston: number): number {
  const reciprocating = piston + mean(1) + typed.ringMass + mean(2);
  return 2 * (mean(3) + typed.shellMass) + oil + reciprocating;
}

async function wake(page: Page, path: string, part: string): Promise<Locator> {
  await page.goto(path);
  await page.locator(part).dispatchEvent('pointermove');
  await page.locator(`${part}[data-alive]`).waitFor();
  return page.locator(part);
}
const sheet = (id: string): string => `[data-calculator="${id}"]`;

describe('a V8 on the bench', () => {
  it('is weighed once, offered in three sets, matched, carded, specified and sent', async () => {
    const page = await site.arrive('jobs/');
    await page.locator('[data-jobs][data-alive]').waitFor();
    await page.getByLabel('Name', { exact: true }).fill('Hill V8');
    await page
      .locator('.new-job')
      .getByLabel('Crank layout')
      .selectOption({ label: 'V8, 90°, cross-plane' });
    await page.getByRole('button', { name: 'Begin it' }).click();
    await says(page.getByRole('status').first(), 'Hill V8 is open');

    // Eight of everything, from the spreadsheet, in one paste and one step back.
    await wake(page, 'parts/', '[data-parts]');
    await page.getByRole('button', { name: 'Paste cells' }).click();
    const panel = page.getByRole('region', { name: 'Paste weights' });
    await panel.getByRole('textbox').fill(weighed);
    for (const [column, list] of [
      'pistonMasses',
      'pinMasses',
      'smallEndMasses',
      'bigEndMasses',
    ].entries())
      await panel
        .getByLabel(`Column ${String(column + 1)} goes to`)
        .selectOption(`${list}/baseline/weights`);
    await panel.getByRole('button', { name: 'Take 32 weights' }).click();
    await panel.waitFor({ state: 'detached' });

    // The rest is typed where it is asked for; rods on a pin and balance factor follow from the layout.
    await wake(page, 'bobweight/', sheet('bobweight'));
    for (const [name, grams] of Object.entries(typed))
      await enter(field(page, 'bobweight', name, 'baseline'), String(grams));
    await shows(result(page, 'bobweight', 'bobweight', 'baseline'), bobweight(mean(0)), 'g');
    // Nothing was changed yet: the candidate is the same engine.
    await shows(result(page, 'bobweight', 'bobweight', 'candidate'), bobweight(mean(0)), 'g');
    await enter(field(page, 'bobweight', 'pistonMass', 'candidate'), '318');
    await shows(result(page, 'bobweight', 'bobweight', 'candidate'), bobweight(318), 'g');

    // A third choice of parts, which is the first one but for its piston.
    await page.goto('jobs/');
    await page.locator('[data-jobs][data-alive]').waitFor();
    await page.getByText(/^Sets of parts: /).click();
    const sets = page.getByRole('group', { name: 'Sets of parts' });
    await sets.getByLabel('Name of the baseline').fill('Road parts');
    await sets.getByLabel('Name of the candidate').fill('Hill parts');
    await sets.getByRole('button', { name: 'Add a set' }).click();
    await sets.getByLabel('Name of the third set').fill('Middle way');
    await wake(page, 'bobweight/', sheet('bobweight'));
    await enter(field(page, 'bobweight', 'pistonMass', 'candidate'), '380');
    await shows(result(page, 'bobweight', 'bobweight', 'candidate'), bobweight(380), 'g');

    // Matching has the weights; nobody types them twice.
    await wake(page, 'part-matching/', sheet('part-matching'));
    expect(await field(page, 'part-matching', 'pistonMasses', 'baseline').inputValue()).toContain(
      '429.2',
    );
    await says(result(page, 'part-matching', 'spread', 'baseline'), /^[\d.]+ g/);

    // The card is for the set that is fitted.
    await page.goto('balance-card/');
    await page.locator('[data-card][data-alive]').waitFor();
    const card = page.locator('.card');
    await card.getByLabel('Card for').selectOption({ label: 'Candidate: Middle way' });
    await says(card, 'Balance the crank for Candidate: Middle way.');
    await says(card.locator('.card-answer'), bobweight(380).toFixed(1));
    await says(card, 'Four bobweights to make');
    await page.locator('.card-qr').waitFor();
    for (const format of ['A4', 'Letter'] as const)
      expect(pagesOf(await print(page, format)), format).toBe(1);

    await page.goto('spec-sheet/');
    await says(
      page.locator('.spec-sheet'),
      `Bobweight of one crankpin ${bobweight(mean(0)).toFixed(1)}`,
    );
    await says(page.locator('.spec-sheet'), 'Still missing');

    await page.goto('customer/');
    await page.locator('[data-customer][data-alive]').waitFor();
    await says(
      page.locator('.letter'),
      `Bobweight of a crankpin ${bobweight(mean(0)).toFixed(1)} g ${bobweight(380).toFixed(1)} g`,
    );
    await page.getByRole('button', { name: 'Copy the customer’s link' }).click();
    const box = page.getByLabel('The link', { exact: true });
    await box.waitFor();
    const href = await box.inputValue();
    expect(href.length).toBeLessThan(2000);
    const { context } = await site.reader({ viewport: { width: 390, height: 844 } });
    const phone = await context.newPage();
    await phone.goto(href);
    await phone.locator('[data-customer][data-alive]').waitFor();
    await says(phone.locator('.letter'), 'Hill V8: Road parts against Middle way');
    await says(
      phone.locator('.letter'),
      `Bobweight of a crankpin ${bobweight(mean(0)).toFixed(1)} g ${bobweight(380).toFixed(1)} g`,
    );
    expect(await seen(phone.locator('main'))).not.toMatch(/example|damaged|could not be read/);

    // All of it can be taken back: the piston of the third set first.
    await wake(page, 'bobweight/', sheet('bobweight'));
    await page.getByRole('button', { name: 'Undo' }).click();
    await shows(result(page, 'bobweight', 'bobweight', 'candidate'), bobweight(mean(0)), 'g');
  });
});
