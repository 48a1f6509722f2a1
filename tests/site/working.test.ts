import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { enter, field, openFolds } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** Text of every slot of a name and set, wherever it stands. */
function slots(page: Page, name: string, set = 'baseline'): Promise<string[]> {
  return page.locator(`[data-v="bobweight.${name}.${set}"]`).allTextContents();
}

function piston(page: Page): Locator {
  return field(page, 'bobweight', 'pistonMass', 'baseline');
}

function fold(page: Page): Locator {
  return page.locator('details:has([data-working="bobweight"]) > summary');
}

/** The page of a topic, and that of its working beside it in the same browser. */
async function open(topic: string): Promise<{ form: Page; page: Page }> {
  const reader = await site.reader();
  return { form: await reader.open(`${topic}/`), page: await reader.open(`${topic}/working/`) };
}

describe('the working', () => {
  test('follows what is typed on the topic’s page, and agrees with the result', async () => {
    const { form, page } = await open('bobweight');
    expect(await slots(page, 'bobweight')).toContain('1685.2\u00a0g');
    await enter(piston(form), '528.0 g');
    // One hundred grams more on each of two pistons, half of it carried.
    await expect.poll(() => slots(page, 'bobweight')).toContain('1785.2\u00a0g');
    await expect.poll(() => slots(page, 'pistonMass')).toContain('528\u00a0g');
    const result = form.locator('[data-output="bobweight"] [data-set="baseline"]');
    await expect.poll(() => result.textContent()).toContain('1785');
  });

  test('follows though it is folded away', async () => {
    const { form, page } = await open('bobweight');
    await fold(page).click();
    await enter(piston(form), '528.0 g');
    await expect.poll(() => slots(page, 'pistonMass')).toContain('528\u00a0g');
    await enter(piston(form), '430.0 g');
    await fold(page).click();
    await expect.poll(() => slots(page, 'pistonMass')).toContain('430\u00a0g');
    expect(await slots(page, 'pistonMass')).not.toContain('528\u00a0g');
  });

  test('shows the numbers of the case that applies, and none where no result exists', async () => {
    function shown(page: Page, step: string): Promise<string[]> {
      return page
        .locator(`[data-case="${step}"]`)
        .evaluateAll((parts: HTMLElement[]) =>
          parts.filter(({ hidden }) => !hidden).map(({ textContent }) => textContent),
        );
    }
    const { form, page: shank } = await open('rod-shank');
    expect(await shown(shank, 'rod-shank.flangeSpan.candidate')).toEqual(['27\u00a0mm']);
    const shape = form.locator('#rod-shank-shankShape-candidate');
    await openFolds(shape);
    await shape.selectOption('h');
    await expect.poll(() => shown(shank, 'rod-shank.flangeSpan.candidate')).toEqual(['19\u00a0mm']);
    expect(await shown(shank, 'rod-shank.flangeSpan.baseline')).toEqual(['20\u00a0mm']);

    const { form: gauge, page: clearance } = await open('bearing-clearance');
    expect(await shown(clearance, 'bearing-clearance.gaugeDifference.baseline')).toEqual([]);
    await enter(field(gauge, 'bearing-clearance', 'rodClearance', 'baseline'), '0.05 mm');
    await expect
      .poll(() => shown(clearance, 'bearing-clearance.gaugeDifference.baseline'))
      .toEqual(['= 0.05\u00a0mm − 0.046098\u00a0mm']);
    await expect
      .poll(() => shown(clearance, 'bearing-clearance.clearance.baseline'))
      .toEqual(['0.05\u00a0mm']);
  });

  test('a symbol lights up every mark of the same quantity', async () => {
    const { page } = await open('bobweight');
    const symbol = page.locator('[data-working="bobweight"] math [data-q="pistonMass"]').first();
    await symbol.hover();
    const lit = page.locator('[data-q="pistonMass"][data-asked]');
    await expect.poll(() => lit.count()).toBeGreaterThan(1);
    await symbol.click();
    const step = page
      .locator('[data-working="bobweight"] .working-step', {
        has: page.locator('math [data-q="pistonMass"]'),
      })
      .first();
    await step.locator('.working-symbols[open] button').first().waitFor();
  });

  test('word, symbol and part of a quantity light up together, whichever is pointed at', async () => {
    const { page } = await open('bobweight');
    const parts = page.locator('.working-parts').first();
    const row = parts.locator('tr[data-q="pistonMass"]');
    const symbol = page.locator('[data-working="bobweight"] math [data-q="pistonMass"]').first();
    const lit = (part: Locator): Promise<string | null> => part.getAttribute('data-asked');
    await symbol.hover();
    const drawn = parts.locator('[data-figure] [data-q~="pistonMass"]:visible').first();
    for (const part of [symbol, row, row.locator('[data-v]').first(), drawn])
      await expect.poll(() => lit(part)).toBe('');
    await row.locator('th').hover();
    expect(await lit(symbol)).toBe('');
    await parts.locator('tr[data-q="pinMass"] th').hover();
    await expect.poll(() => lit(symbol)).toBeNull();
    await parts.locator('[data-figure] [data-q~="pistonMass"] text:visible').first().hover();
    await expect.poll(() => lit(symbol)).toBe('');

    // A number beside the working is changed where it stands, and the lines follow.
    await parts.locator('[data-figure]').hover();
    await row.locator('[data-v][role="button"]').first().click();
    await page.keyboard.type('500');
    await page.keyboard.press('Enter');
    await expect.poll(() => slots(page, 'reciprocating')).toContain('1657.6\u00a0g');
  });

  test('a field of the form lights up its row, and a result its numbers in the sentences', async () => {
    const page = await site.open('bobweight/');
    await field(page, 'bobweight', 'pistonMass', 'candidate').focus();
    const row = page.locator('.row[data-q="pistonMass"]');
    await expect.poll(() => row.getAttribute('data-asked')).toBe('');
    await page.locator('[data-output="bobweight"] th').hover();
    await expect.poll(() => row.getAttribute('data-asked')).toBeNull();
    const number = page.locator('.prose p [data-v="bobweight.bobweight.baseline"]').first();
    await expect.poll(() => number.getAttribute('data-asked')).toBe('');
  });

  test('the marks of the strip move with the share', async () => {
    const page = await site.open('bobweight/');
    const strip = page.locator('[data-strip="bobweight.fraction"]').first();
    const mark = strip.locator('[data-mark="candidate"]');
    const before = await mark.getAttribute('transform');
    await field(page, 'bobweight', 'reciprocatingFraction', 'candidate').fill('90');
    await expect.poll(() => mark.getAttribute('transform')).not.toBe(before);
    await expect
      .poll(() => strip.locator('[data-place="candidate"]').textContent())
      .toBe('0.9, possible');
  });
});

test('the Checks page leads to the checks of each topic, also from its old places', async () => {
  const page = await site.open('checks/#piston-motion', { javaScriptEnabled: false });
  await page.locator('tr:target a').click();
  await page.waitForURL('**/checks/piston-motion/');
  expect(await page.locator('.checks tbody tr').count()).toBeGreaterThan(10);
});

test('the checks of a topic stand complete without a script, and open a case in its calculator', async () => {
  const plain = await site.open('checks/bobweight/', { javaScriptEnabled: false });
  const said = /(\d+) values/u.exec(await plain.locator('.lead').innerText())?.[1];
  expect(await plain.locator('.checks tbody tr').count()).toBe(Number(said));
  expect(await plain.locator('.checks .fails').count()).toBe(0);
  const link = await plain.locator('a[href*="pistonMass="]').first().getAttribute('href');
  expect(link).toMatch(/&v=1$/u);
  const visit = await site.open(new URL(link ?? '', plain.url()).href);
  const typed = decodeURIComponent(/pistonMass=([^&]*)/u.exec(link ?? '')?.[1] ?? '');
  const number = /[\d.]+/u.exec(typed)?.[0] ?? 'none';
  await expect.poll(() => piston(visit).inputValue()).toContain(number);
});
