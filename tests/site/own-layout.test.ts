import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import {
  enter,
  field,
  note,
  put,
  result,
  says,
  seen,
  shows,
  stored,
  type,
} from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();
const key = 'throwbook/1/baseline/crankLayout';

/** Of the baseline, by hand: F₁ = m r ω² [kN]. */
const first = (0.7568 * 0.0365 * (6400 * (Math.PI / 30)) ** 2) / 1000;
/** Two throws opposite one another but for an angle [°]: what is left of the two rods on each, turning forward. */
const apart = (degrees: number): number => 2 * Math.sin((degrees * Math.PI) / 360) * first;

const rows = (page: Page): Locator => page.getByRole('group', { name: 'Own layout, Baseline' });
const cell = (page: Page, at: number, part: 'angle' | 'place' | 'banks'): Locator =>
  rows(page).locator(`[data-throw="${String(at)}"][data-part="${part}"]`);
const held = (page: Page): Locator => result(page, 'shaking-forces', 'heldForce', 'baseline');
const problem = (page: Page): Locator => note(page, 'shaking-forces', 'crankLayout', 'baseline');

async function own(page: Page): Promise<void> {
  const box = field(page, 'shaking-forces', 'crankLayout', 'baseline');
  await box.focus();
  await page.locator('[data-calculator="shaking-forces"][data-alive]').waitFor();
  await box.selectOption({ label: 'own layout' });
  await rows(page).waitFor();
}

/** The V8 of the example with its second throw moved to 80°. */
async function moved(page: Page): Promise<void> {
  await own(page);
  await enter(cell(page, 2, 'angle'), '80');
  await shows(held(page), apart(10), 'kN');
}

describe('a crank that no ready layout has', () => {
  it('begins as the ready one; a throw moved changes the results, and reload, link and undo know it', async () => {
    const reader = await site.reader();
    const page = await reader.open('shaking-forces/');
    await own(page);
    await shows(held(page), 0, 'kN');
    expect(await cell(page, 2, 'angle').inputValue()).toBe('90');
    await moved(page);
    await says(
      page.locator('[data-figure="shaking-forces"] figcaption').first(),
      'Baseline, Own layout, 4 throws, 8 cylinders: a primary force of',
    );

    await page.reload();
    await page.locator('[data-calculator="shaking-forces"][data-alive]').waitFor();
    await rows(page).waitFor();
    expect(await cell(page, 2, 'angle').inputValue()).toBe('80');
    await shows(held(page), apart(10), 'kN');

    const box = page.getByLabel('Link to these numbers').last();
    if (!(await box.isVisible())) await page.getByRole('button', { name: 'QR code' }).click();
    await expect.poll(() => box.inputValue()).toContain('crankLayout=');
    const there = await site.open(`shaking-forces/${new URL(await box.inputValue()).hash}`);
    await rows(there).waitFor();
    expect(await cell(there, 2, 'angle').inputValue()).toBe('80');
    await shows(held(there), apart(10), 'kN');

    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(async () => (await stored(page))[key] ?? '').not.toContain('80 at');
    await shows(held(page), 0, 'kN');
  });

  it('a row that cannot be read is said in words, keeps what was typed, and the last result stands as such', async () => {
    const page = await site.open('shaking-forces/');
    await moved(page);
    await put(cell(page, 3, 'angle'), '27o');
    await says(problem(page), /Throw 3, angle.*27o/);
    expect(await cell(page, 3, 'angle').getAttribute('aria-invalid')).toBe('true');
    await shows(held(page), apart(10), 'kN');
    expect(await held(page).getAttribute('class')).toContain('stale');
    await page.reload();
    await rows(page).waitFor();
    expect(await cell(page, 3, 'angle').inputValue()).toBe('27o');
    await enter(cell(page, 3, 'angle'), '270');
    await shows(held(page), apart(10), 'kN');
    expect(await held(page).getAttribute('class')).not.toContain('stale');
    expect(await seen(problem(page))).toBe('');

    await enter(cell(page, 2, 'place'), '-1.5');
    await says(problem(page), 'Throws 1 and 2 have a cylinder in the same bank at the same place.');
    await enter(cell(page, 2, 'place'), '-0.5');
    await enter(cell(page, 4, 'banks'), '');
    await says(problem(page), 'Throw 4 carries no cylinder.');
  });

  it('throws are added and removed, a ready layout is started from, and keys step an angle', async () => {
    const page = await site.open('shaking-forces/');
    await own(page);
    await rows(page).getByRole('button', { name: 'Add a throw' }).click();
    expect(await cell(page, 5, 'place').inputValue()).toBe('2.5');
    await expect
      .poll(() => cell(page, 5, 'angle').evaluate((it) => it === document.activeElement))
      .toBe(true);
    await page.keyboard.press('ArrowUp');
    expect(await cell(page, 5, 'angle').inputValue()).toBe('181');
    // Five throws: the fifth stays alone on its side.
    await shows(held(page), first, 'kN');
    await rows(page).getByRole('button', { name: 'Remove throw 5' }).click();
    await shows(held(page), 0, 'kN');
    await rows(page).getByLabel('Start again from').selectOption('inline-2-360');
    await expect.poll(() => rows(page).locator('tbody tr').count()).toBe(2);
    await shows(held(page), first, 'kN');
  });

  it('is written as text too, and two hundred cylinders are refused with the limit, nothing lost', async () => {
    const page = await site.open('shaking-forces/');
    await own(page);
    await rows(page).getByText('The same as text').click();
    const text = rows(page).getByRole('textbox', { name: /^Own layout as text/ });
    await put(text, '0 at 0: 0\n180 at 1: 0\n180 at 2: 0\n0 at 3: 0');
    await shows(held(page), 0, 'kN');
    await shows(
      result(page, 'shaking-forces', 'secondaryForce', 'baseline'),
      (4 * first * 36.5) / 142,
      'kN',
    );
    const many = Array.from({ length: 200 }, (_, at) => `0 at ${String(at)}: 0`).join('\n');
    await put(text, many);
    await says(problem(page), 'A layout has at most 64 cylinders. This one has 200.');
    expect((await stored(page))[key]).toContain('0 at 57: 0');
  });

  it('is changed in the figure by a drag, by keys and as a number, and the rows follow', async () => {
    const page = await site.open('shaking-forces/');
    await own(page);
    const figure = page.locator('[data-figure="shaking-forces"]');
    await enter(figure.getByRole('textbox', { name: 'Crank angle' }), '0');
    const grip = figure.locator('.throw-grip[data-throw="2"]');
    await grip.evaluate((node) => node.scrollIntoView({ block: 'center' }));
    const [from, axis] = [
      await grip.boundingBox(),
      await figure.locator('.pin').last().boundingBox(),
    ];
    if (from === null || axis === null) throw new Error('Nothing is drawn.');
    await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
    await page.mouse.down();
    // Straight below the middle of the crank.
    await page.mouse.move(axis.x + axis.width / 2, axis.y + 90, { steps: 6 });
    await page.mouse.up();
    await expect.poll(() => cell(page, 2, 'angle').inputValue()).toBe('180');

    await figure.getByLabel('Throw to move').selectOption('2');
    const slider = figure.getByRole('slider', { name: 'Angle of throw 2' });
    await slider.focus();
    await page.keyboard.press('ArrowLeft');
    await expect.poll(() => cell(page, 2, 'angle').inputValue()).toBe('179');
    await enter(figure.getByRole('textbox', { name: 'Angle of throw 2' }), '80');
    await expect.poll(() => cell(page, 2, 'angle').inputValue()).toBe('80');
    await shows(held(page), apart(10), 'kN');
  });

  it('is open to everybody, in light and dark, and scrolls nothing sideways on a phone', async () => {
    for (const colorScheme of ['light', 'dark'] as const) {
      const page = await site.open('shaking-forces/', {
        colorScheme,
        viewport: { width: 390, height: 844 },
      });
      await own(page);
      await rows(page).getByText('The same as text').click();
      const { violations } = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
        .analyze();
      expect(violations.map(({ id }) => id)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    }
  });

  it('goes with the job: words, cylinders and bobweights of every page that follows the layout', async () => {
    const reader = await site.reader();
    const page = await reader.open('shaking-forces/');
    await own(page);
    await rows(page).getByText('The same as text').click();
    const text = rows(page).getByRole('textbox', { name: /^Own layout as text/ });
    await type(text, '0 at 0: 0\n120 at 1: 0\n240 at 2: 0');
    await text.blur();
    await says(held(page), '0');
    const layout = await reader.open('crank-layout/');
    await shows(result(layout, 'crank-layout', 'cylinders', 'baseline'), 3, '');
    await says(
      layout.locator('[data-figure="crank-layout"] figcaption').first(),
      'Three pins with one rod each. Three bobweights to make.',
    );
    await layout.close();
    const card = await reader.arrive('balance-card/');
    await card.locator('[data-card][data-alive]').waitFor();
    await says(
      card.locator('.card'),
      'Own layout, 3 throws, 3 cylinders. Three pins with one rod each.',
    );
  });
});
