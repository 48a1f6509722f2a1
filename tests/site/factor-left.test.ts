import { describe, expect, it } from 'vitest';
import { enter, openFolds, result, says, shows, stored } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** Of the baseline, by hand: F₁ = m r ω² [kN]. */
const first = (0.7568 * 0.0365 * (6400 * (Math.PI / 30)) ** 2) / 1000;

describe('the balance factor of a whole crank', () => {
  it('is chosen at the ellipse it leaves, with its layout; results, words and drawing agree', async () => {
    const page = await site.open('balance-factor/');
    const figure = page.locator('[data-figure="factor-ellipse"]');
    const caption = figure.locator('figcaption').first();
    await says(caption, 'Baseline, V8, 90°, cross-plane, with 50 per cent: nothing is left');
    await figure.getByLabel('Layout of the baseline').selectOption('single');
    const factor = figure.getByRole('textbox', { name: 'Balance factor of the baseline' });
    await enter(factor, '30');
    const cell = (name: string) => result(page, 'factor-left', name, 'baseline');
    await openFolds(cell('forceMost'));
    await shows(cell('forceMost'), 0.7 * first, 'kN');
    await shows(cell('forceLeast'), 0.3 * first, 'kN');
    await says(
      caption,
      /^Baseline, Single, with 30 per cent: a force between [\d.]+ kN and [\d.]+ kN/,
    );

    await figure.getByLabel('Layout of the baseline').selectOption('v6-90-split');
    await enter(factor, '36.6');
    await says(caption, /a couple of up to [\d.]+ N·m along one line/);
    const slider = figure.getByRole('slider', { name: 'Balance factor of the baseline' });
    await slider.focus();
    await page.keyboard.press('End');
    await expect
      .poll(async () => (await stored(page))['throwbook/1/baseline/reciprocatingFraction'])
      .toContain('100');
    await says(caption, 'with 100 per cent');
  });
});
