import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { followed, stopClock } from './support/clock.ts';
import { field } from './support/form.ts';
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

describe('the working', () => {
  test('follows what is typed though it is folded, and agrees with the result', async () => {
    const page = await site.open('bobweight/');
    expect(await slots(page, 'bobweight')).toContain('1685.2\u00a0g');
    await piston(page).fill('528.0 g');
    // One hundred grams more on each of two pistons, half of it carried.
    await expect.poll(() => slots(page, 'bobweight')).toContain('1785.2\u00a0g');
    await expect.poll(() => slots(page, 'pistonMass')).toContain('528\u00a0g');
    const result = page.locator('[data-output="bobweight"] [data-set="baseline"]');
    await expect.poll(() => result.textContent()).toContain('1785');
  });

  test('shows the numbers of now to whoever opens it at once', async () => {
    const page = await site.open('bobweight/');
    // The first number written fetches the code that the working follows by.
    await piston(page).fill('528.0 g');
    await expect.poll(() => slots(page, 'pistonMass')).toContain('528\u00a0g');
    // The ± of the first number, too, has put the prose right before the clock stops.
    await followed(page);
    const pass = await stopClock(page);
    await piston(page).fill('430.0 g');
    expect(await slots(page, 'pistonMass')).toContain('528\u00a0g');
    await fold(page).click();
    await expect.poll(() => slots(page, 'pistonMass')).toContain('430\u00a0g');
    expect(await slots(page, 'pistonMass')).not.toContain('528\u00a0g');
    await pass(2000);
    expect(await slots(page, 'pistonMass')).toContain('430\u00a0g');
  });

  test('shows the numbers of the case that applies, and none where no result exists', async () => {
    function shown(page: Page, step: string): Promise<string[]> {
      return page
        .locator(`[data-case="${step}"]`)
        .evaluateAll((parts: HTMLElement[]) =>
          parts.filter(({ hidden }) => !hidden).map(({ textContent }) => textContent),
        );
    }
    const shank = await site.open('rod-shank/');
    expect(await shown(shank, 'rod-shank.flangeSpan.candidate')).toEqual(['27\u00a0mm']);
    await shank.locator('#rod-shank-shankShape-candidate').selectOption('h');
    await expect.poll(() => shown(shank, 'rod-shank.flangeSpan.candidate')).toEqual(['19\u00a0mm']);
    expect(await shown(shank, 'rod-shank.flangeSpan.baseline')).toEqual(['20\u00a0mm']);

    const clearance = await site.open('bearing-clearance/');
    expect(await shown(clearance, 'bearing-clearance.gaugeDifference.baseline')).toEqual([]);
    const gauged = clearance.locator('#bearing-clearance-rodClearance-baseline');
    // The field is one of those that are folded away.
    await gauged.evaluate((field) => {
      for (let at = field.closest('details'); at; at = at.parentElement?.closest('details') ?? null)
        at.open = true;
    });
    await gauged.fill('0.05 mm');
    await expect
      .poll(() => shown(clearance, 'bearing-clearance.gaugeDifference.baseline'))
      .toEqual(['= 0.05\u00a0mm − 0.046098\u00a0mm']);
    await expect
      .poll(() => shown(clearance, 'bearing-clearance.clearance.baseline'))
      .toEqual(['0.05\u00a0mm']);
  });

  test('a symbol lights up every mark of the same quantity', async () => {
    const page = await site.open('bobweight/');
    await fold(page).click();
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

  test('the marks of the strip move with the share', async () => {
    const page = await site.open('bobweight/');
    const strip = page.locator('[data-strip="bobweight.fraction"]').first();
    const mark = strip.locator('[data-mark="candidate"]');
    const before = await mark.getAttribute('transform');
    await field(page, 'bobweight', 'reciprocatingFraction', 'candidate').fill('90');
    await expect.poll(() => mark.getAttribute('transform')).not.toBe(before);
    await expect
      .poll(() => strip.locator('[data-place="candidate"]').textContent())
      .toContain('no published case reaches so far');
  });
});

test('the Checks page leads to the checks of each topic, also from its old places', async () => {
  const page = await site.open('checks/#bobweight', { javaScriptEnabled: false });
  await page.locator('tr:target a').click();
  await page.waitForURL('**/checks/bobweight/');
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
