import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { alive } from './support/site.ts';

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await chromium.launch({
    executablePath: inject('browser'),
    args: ['--no-sandbox'],
  });
  page = await browser.newPage();
  await page.goto(`${inject('address')}bobweight/`);
  await alive(page);
});
afterAll(async () => {
  await browser.close();
});

/** Text of every slot of a name and set, wherever it stands. */
function slots(name: string, set = 'baseline'): Promise<string[]> {
  return page.locator(`[data-v="bobweight.${name}.${set}"]`).allTextContents();
}

describe('the working', () => {
  test('follows what is typed, folded or open, and agrees with the result', async () => {
    expect(await slots('bobweight')).toContain('1685\u00a0g');
    const field = page.locator('#calculator-bobweight input[type="text"]').first();
    await field.fill('528.0 g');
    await expect
      .poll(() => slots('bobweight'), { timeout: 5000 })
      // One hundred grams more on each of two pistons, half of it carried.
      .toContain('1785\u00a0g');
    await expect.poll(() => slots('pistonMass'), { timeout: 5000 }).toContain('528\u00a0g');
    const result = page.locator('[data-output="bobweight"] [data-set="baseline"]');
    await expect.poll(() => result.textContent()).toContain('1785');
  });

  test('shows the numbers of now to whoever opens it at once', async () => {
    const field = page.locator('#calculator-bobweight input[type="text"]').first();
    const fold = page.locator('details:has([data-working="bobweight"]) > summary');
    const isFolded = (await fold.count()) > 0;
    await field.fill('428.0 g');
    if (isFolded) await fold.first().click();
    await expect.poll(() => slots('pistonMass'), { timeout: 5000 }).toContain('428\u00a0g');
  });

  test('shows the numbers of the case that applies, and none where no result exists', async () => {
    const context = await browser.newContext();
    const other = await context.newPage();
    function shown(step: string): Promise<string[]> {
      return other
        .locator(`[data-case="${step}"]`)
        .evaluateAll((parts: HTMLElement[]) =>
          parts.filter(({ hidden }) => !hidden).map(({ textContent }) => textContent),
        );
    }
    await other.goto(`${inject('address')}rod-shank/`);
    await alive(other);
    expect(await shown('rod-shank.flangeSpan.candidate')).toEqual(['27\u00a0mm']);
    await other.locator('#rod-shank-shankShape-candidate').selectOption('h');
    await expect.poll(() => shown('rod-shank.flangeSpan.candidate')).toEqual(['19\u00a0mm']);
    expect(await shown('rod-shank.flangeSpan.baseline')).toEqual(['20\u00a0mm']);

    await other.goto(`${inject('address')}bearing-clearance/`);
    await alive(other);
    expect(await shown('bearing-clearance.gaugeDifference.baseline')).toEqual([]);
    const gauged = other.locator('#bearing-clearance-rodClearance-baseline');
    // The field is one of those that are folded away.
    await gauged.evaluate((field) => {
      for (let at = field.closest('details'); at; at = at.parentElement?.closest('details') ?? null)
        at.open = true;
    });
    await gauged.fill('0.05 mm');
    await expect
      .poll(() => shown('bearing-clearance.gaugeDifference.baseline'))
      .toEqual(['= 0.05\u00a0mm − 0.046\u00a0mm']);
    await expect
      .poll(() => shown('bearing-clearance.clearance.baseline'))
      .toEqual(['0.05\u00a0mm']);
    await context.close();
  });

  test('a symbol lights up every mark of the same quantity', async () => {
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
    const strip = page.locator('[data-strip="bobweight.fraction"]').first();
    const before = await strip.locator('[data-mark="candidate"]').getAttribute('transform');
    const share = page
      .locator('#calculator-bobweight')
      .getByRole('textbox', { name: /share.*candidate/iu })
      .first();
    await share.fill('0.9');
    await expect
      .poll(() => strip.locator('[data-mark="candidate"]').getAttribute('transform'))
      .not.toBe(before);
    expect(await strip.locator('[data-place="candidate"]').textContent()).toContain(
      'no published case reaches so far',
    );
  });
});

describe('the Checks page', () => {
  test('stands complete without a script, failing rows first, and opens a case in its calculator', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const plain = await context.newPage();
    await plain.goto(`${inject('address')}checks/`);
    const rows = await plain.locator('.checks tbody tr').count();
    expect(rows).toBeGreaterThan(100);
    expect(await plain.locator('.checks .fails').count()).toBe(0);
    const link = await plain
      .locator('section:has(#bobweight) a[href*="pistonMass="]')
      .first()
      .getAttribute('href');
    await context.close();
    expect(link).toMatch(/&v=1$/u);
    const visit = await (await browser.newContext()).newPage();
    await visit.goto(new URL(link ?? '', inject('address')).href);
    await visit.locator('[data-calculator="bobweight"][data-alive]').waitFor();
    const typed = decodeURIComponent(/pistonMass=([^&]*)/u.exec(link ?? '')?.[1] ?? '');
    const number = /[\d.]+/u.exec(typed)?.[0] ?? 'none';
    await expect
      .poll(() => visit.locator('#calculator-bobweight input[type="text"]').first().inputValue())
      .toContain(number);
    await visit.close();
  });
});
