import { type Locator } from 'playwright-core';
import { expect, it } from 'vitest';
import { enter, field, note, openFolds, printed, result, says, seen } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();
const set = 'candidate';

async function number(cell: Locator): Promise<number> {
  return printed(await seen(cell)).value;
}

it('a weighed bobweight goes on to the end planes of a crank that is balanced for another', async () => {
  const { open } = await site.reader();
  const parts = await open('bobweight/');
  for (const [name, text] of [
    ['pistonMass', '320 g'],
    ['pinMass', '80 g'],
    ['ringMass', '25 g'],
    ['smallEndMass', '150 g'],
    ['bigEndMass', '310 g'],
    ['shellMass', '40 g'],
  ] as const)
    await enter(field(parts, 'bobweight', name, set), text);
  const bobweight = await number(result(parts, 'bobweight', 'bobweight', set));

  const planes = await open('two-plane/');
  const change = (name: string) => result(planes, 'bobweight-change', name, set);
  await enter(field(planes, 'bobweight-change', 'balancedBobweight', set), '1700 g');
  const lighter = 1700 - bobweight;
  await expect.poll(() => number(change('change'))).toBeCloseTo(-lighter, 0);
  const byHand = (lighter * 36.5 * Math.sqrt(10) * 100) / 388;
  // Printed to four figures, of a bobweight that is printed to a tenth of a gram.
  await expect
    .poll(async () => Math.abs((await number(change('endUnbalance'))) - byHand))
    .toBeLessThan(10);
  await field(planes, 'bobweight-change', 'takenAt', set).selectOption('webs');
  await expect
    .poll(async () => Math.abs((await number(change('perWeight'))) - (lighter * 36.5) / 2))
    .toBeLessThan(10);
  await expect.poll(() => number(change('mainPull'))).toBe(0);
});

it('planes that coincide are refused in words', async () => {
  const { open } = await site.reader();
  const page = await open('two-plane/');
  await enter(field(page, 'plane-transfer', 'newPlaneA', set), '232 mm');
  await says(note(page, 'plane-transfer', 'newPlaneA', set), 'less than');
});

it('what the crank is balanced with stands on its card, once it was chosen', async () => {
  const { open, context } = await site.reader();
  const page = await open('two-plane/');
  const choice = field(page, 'outside-masses', 'balancedWith', set);
  await openFolds(choice);
  await choice.selectOption('neutral');
  await choice.selectOption('own');
  const card = await context.newPage();
  await card.goto('balance-card/');
  await card.locator('[data-card][data-alive]').waitFor();
  const fitted = card.locator('.card-record [data-line="fitted"]');
  expect(await fitted.locator('b').count()).toBe(0);
  await card.getByLabel('Card for').selectOption(set);
  await says(fitted, 'its own, weighted');
  await card.getByLabel('Card for').selectOption('baseline');
  await expect.poll(() => fitted.locator('b').count()).toBe(0);
});
