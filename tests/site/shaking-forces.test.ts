import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { enter, field, openFolds, printed, result, says, seen } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** Of the baseline, by hand: F₁ = m r ω² [N], and λ. */
const first = 0.7568 * 0.0365 * (6400 * (Math.PI / 30)) ** 2;

async function open(): Promise<{
  readonly page: Page;
  readonly figure: Locator;
  readonly caption: Locator;
}> {
  const page = await site.open('shaking-forces/');
  const figure = page.locator('[data-figure="shaking-forces"]');
  return { page, figure, caption: figure.locator('figcaption').first() };
}

async function choose(page: Page, set: 'baseline' | 'candidate', layout: string): Promise<void> {
  const box = field(page, 'shaking-forces', 'crankLayout', set);
  await box.focus();
  await page.locator('[data-calculator="shaking-forces"][data-alive]').waitFor();
  await box.selectOption(layout);
}

describe('what shakes an engine', () => {
  it('is a couple on the V8 until it has its counterweights, and then nothing', async () => {
    const { figure, caption } = await open();
    // √10 times F₁ times 100 mm.
    const couple = Math.sqrt(10) * first * 0.1;
    await says(
      caption,
      `Baseline, V8, 90°, cross-plane: a primary couple of ${couple.toFixed(0).slice(0, 3)}`,
    );
    expect(await figure.locator('.weight').count()).toBe(0);
    await figure.getByRole('checkbox', { name: 'with its counterweights' }).check();
    await says(caption, 'Baseline, V8, 90°, cross-plane: nothing shakes it');
    // Four from the nose and four from the side.
    expect(await figure.locator('.weight').count()).toBe(8);
  });

  it('is a force along the bores of an in-line four, twice a turn; results, words and figure agree', async () => {
    const { page, figure, caption } = await open();
    await choose(page, 'baseline', 'inline-4-flat');
    const rod = Number(await field(page, 'shaking-forces', 'rodLength', 'baseline').inputValue());
    const byHand = (4e-3 * first * 36.5) / rod;
    const shown = result(page, 'shaking-forces', 'secondaryForce', 'baseline');
    await expect
      .poll(async () => {
        const { value, half } = printed(await seen(shown));
        return Math.abs(value - byHand) < half * 1.01;
      })
      .toBe(true);
    await says(
      caption,
      /Baseline, In-line four, flat-plane: a secondary force of up to [\d.]+ kN, along one line\./,
    );
    await says(page.locator('[data-calculator="shaking-forces"]'), 'What comes twice a turn stays');
    await choose(page, 'baseline', 'radial-7');
    await says(caption, 'rotating with the crank');
    await expect.poll(() => figure.locator('.piston').count()).toBe(14);
  });

  it('is turned by keys, field, button and a drag of the first throw, and the page follows', async () => {
    const { page, figure } = await open();
    const slider = figure.getByRole('slider', { name: 'Crank angle' });
    await slider.focus();
    await page.keyboard.press('ArrowRight');
    await says(figure.locator('table').first(), /At 41°/);
    await enter(figure.getByRole('textbox', { name: 'Crank angle' }), '90');
    await says(figure.locator('table').first(), /At 90°/);
    await figure.locator('.grip').evaluate((node) => node.scrollIntoView({ block: 'center' }));
    const grip = await figure.locator('.grip').boundingBox();
    const axis = await figure.locator('.pin').last().boundingBox();
    if (grip === null || axis === null) throw new Error('Nothing is drawn.');
    await page.mouse.move(grip.x + grip.width / 2, grip.y + grip.height / 2);
    await page.mouse.down();
    // Straight below the middle of the crank.
    await page.mouse.move(axis.x + axis.width / 2, axis.y + 120, { steps: 5 });
    await page.mouse.up();
    await says(figure.locator('table').first(), /At 180°/);
    const angle = field(page, 'shaking-forces', 'crankAngle', 'baseline');
    await openFolds(angle);
    await expect.poll(() => angle.inputValue()).toBe('180');
    await figure.getByRole('button', { name: 'Turn the crank' }).click();
    await figure.getByRole('button', { name: 'Stop the crank' }).click();
    await figure.getByRole('button', { name: 'Turn the crank' }).waitFor();
  });

  it('travels in the link: whose crank is drawn, and that it has its counterweights', async () => {
    const { page, figure } = await open();
    await figure.getByRole('radio', { name: 'candidate' }).check();
    await figure.getByRole('checkbox', { name: 'with its counterweights' }).check();
    const box = page.getByLabel('Link to these numbers').last();
    if (!(await box.isVisible())) await page.getByRole('button', { name: 'QR code' }).click();
    await expect
      .poll(() => box.inputValue())
      .toContain('view=shaking-forces/set/candidate/counterweights/with');
    const there = await site.open(`shaking-forces/${new URL(await box.inputValue()).hash}`);
    const opened = there.locator('[data-figure="shaking-forces"]');
    await expect
      .poll(() => opened.getByRole('radio', { name: 'candidate' }).isChecked())
      .toBe(true);
    await says(opened.locator('figcaption').first(), 'with counterweights');
    expect(await opened.locator('g.candidate .throw').count()).toBeGreaterThan(0);
  });

  it('takes another layout in the class view, where no sheet is seen', async () => {
    const page = await site.arrive('shaking-forces/class/');
    await page.locator('[data-presented]').waitFor();
    await page.evaluate(() => (location.hash = '#screen-4'));
    const figure = page.locator('.class-figure[data-now] [data-figure="shaking-forces"]');
    const picked = figure.getByLabel('Layout of the baseline');
    await picked.waitFor();
    await expect.poll(() => figure.locator('.piston').count()).toBe(16);
    await picked.selectOption('inline-6');
    await expect.poll(() => figure.locator('.piston').count()).toBe(12);
  });

  it('loses what balance shafts take, and says what they carry', async () => {
    const { page, caption, figure } = await open();
    await choose(page, 'baseline', 'inline-4-flat');
    const shafts = field(page, 'shaking-forces', 'balanceShafts', 'baseline');
    await openFolds(shafts);
    await shafts.selectOption('pair');
    await figure.getByRole('checkbox', { name: 'with its counterweights and shafts' }).check();
    await says(caption, 'Baseline, In-line four, flat-plane: nothing shakes it');
    const carried = result(page, 'shaking-forces', 'pairForce', 'baseline');
    await openFolds(carried);
    // m r λ/2 in g·mm, by hand; the rod of the example is 142 mm.
    const { value, half } = printed(await seen(carried));
    expect(Math.abs(value - (756.8 * 36.5 * (36.5 / 142)) / 2)).toBeLessThan(half * 1.01);
  });
});

describe('a layout that has more than two banks', () => {
  it('settles a job like any other: seven rods on one pin, one half, one bobweight', async () => {
    const page = await site.open('crank-layout/');
    const box = field(page, 'crank-layout', 'crankLayout', 'baseline');
    await box.focus();
    await page.locator('[data-calculator="crank-layout"][data-alive]').waitFor();
    await box.selectOption('radial-7');
    await says(result(page, 'crank-layout', 'rodsPerPin', 'baseline'), '7');
    await says(result(page, 'crank-layout', 'bobweights', 'baseline'), '1');
    await says(result(page, 'crank-layout', 'reciprocatingFraction', 'baseline'), '50');
    await says(
      page.locator('[data-figure="crank-layout"] figcaption').first(),
      'A master rod with its link rods is counted as so many equal rods.',
    );
    await page.goto('bobweight/');
    await page.locator('[data-calculator="bobweight"]').hover();
    await page.locator('[data-calculator="bobweight"][data-alive]').waitFor();
    const rods = field(page, 'bobweight', 'rodsPerPin', 'baseline');
    await openFolds(rods);
    await expect.poll(() => rods.inputValue()).toBe('7');
    // The page on one pin of a V knows two rods at most, and says so.
    await page.goto('balance-factor/');
    await page.locator('[data-calculator="partial-balance"]').hover();
    await page.locator('[data-calculator="partial-balance"][data-alive]').waitFor();
    await says(page.locator('[data-calculator="partial-balance"]'), /at most 2/);
  });
});
