import { type Locator, type Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { topicPages } from './support/build.ts';
import { seen } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();
const asking = topicPages().filter(({ html }) => html.includes(' data-predict'));

/** A stretch of the answer's own words, long enough to stand nowhere else. */
async function answerWords(question: Locator): Promise<string> {
  const text = await question
    .locator('.predict-answer')
    .evaluate((answer) => (answer.querySelector(':scope > p')?.textContent ?? '').trim());
  const words = text.replace(/\s+/g, ' ').slice(0, 60);
  expect(words.length).toBeGreaterThan(20);
  return words;
}

/** What a screen reader can come upon, as one line. */
async function readOut(page: Page): Promise<string> {
  return (await page.locator('body').ariaSnapshot()).replace(/["\\]/g, '').replace(/\s+/g, ' ');
}

it('every topic opens with a question', () => {
  expect(topicPages().length).toBeGreaterThanOrEqual(4);
  expect(asking.map(({ path }) => path)).toEqual(topicPages().map(({ path }) => path));
});

it.each(asking.map(({ path }) => [path]))(
  '%s: the answer is neither seen nor read out before the reader commits',
  async (path) => {
    const page = await site.arrive(path);
    const question = page.locator('[data-predict]').first();
    const words = await answerWords(question);
    // The middle of the stretch: a formula or a number at its ends may be read out in another form.
    const part = words.slice(0, 24);
    expect(await question.locator('legend').isVisible()).toBe(true);
    expect(await readOut(page)).not.toContain(part);
    expect(await page.locator('body').innerText()).not.toContain(part);
    expect(await question.locator('.predict-answer').isVisible()).toBe(false);

    await question.getByRole('button', { name: 'Check my answer' }).click();
    expect(await seen(question.locator('.predict-say'))).toContain('Choose one of the three first');
    expect(await readOut(page)).not.toContain(part);

    const right = Number(await question.getAttribute('data-right'));
    const wrong = right === 0 ? 1 : 0;
    await question.getByRole('radio').nth(wrong).check();
    expect(await readOut(page)).not.toContain(part);
    await question.getByRole('button', { name: 'Check my answer' }).click();
    expect(await question.locator('.predict-answer').isVisible()).toBe(true);
    expect(await seen(question.locator('.predict-say'))).toContain('It comes out differently');
    expect(await readOut(page)).toContain(part);
    // The reader is taken to the answer, and what they predicted stays on the page.
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('predict-say');
    expect(await question.getByRole('radio').nth(wrong).isChecked()).toBe(true);
    expect(await question.getByRole('button').count()).toBe(0);
  },
);

it('a right prediction is told so, and why', async () => {
  const page = await site.arrive('piston-motion/');
  const question = page.locator('[data-predict]').first();
  await question.getByRole('radio', { name: 'Before 90°' }).check();
  await question.getByRole('button', { name: 'Check my answer' }).click();
  expect(await seen(question.locator('.predict-say'))).toContain(
    'Your prediction agrees: Before 90°',
  );
  expect(await question.locator('.predict-answer').isVisible()).toBe(true);
});

it('who does not care to guess may skip', async () => {
  const page = await site.arrive('bobweight/');
  const question = page.locator('[data-predict]').first();
  await question.getByRole('button', { name: 'Just show me' }).click();
  expect(await question.locator('.predict-answer').isVisible()).toBe(true);
  expect(await seen(question.locator('.predict-say'))).toContain('The answer:');
});

/** The figures that stand under the first question of a page, seen or not. */
function figuresUnder(page: Page): Locator {
  return page.locator('.predict ~ .figure-island').filter({ visible: true });
}

it.each(asking.filter(({ html }) => html.includes('figure-island')).map(({ path }) => [path]))(
  '%s: the figure comes with the answer',
  async (path) => {
    const page = await site.arrive(path);
    expect(await figuresUnder(page).count()).toBe(0);
    await page.getByRole('button', { name: 'Just show me' }).first().click();
    expect(await figuresUnder(page).count()).toBeGreaterThan(0);
  },
);

it('who goes to work sees the figure, and the number stays under the hand', async () => {
  const page = await site.arrive('bobweight/');
  const field = page.getByRole('textbox', { name: 'Piston', exact: false }).first();
  await field.scrollIntoViewIfNeeded();
  const at = await field.boundingBox();
  await field.click();
  expect(await figuresUnder(page).count()).toBe(1);
  const after = await field.boundingBox();
  expect(after?.y).toBeCloseTo(at?.y ?? NaN, 0);
});

it('a section that is led to does not hide the figure', async () => {
  const page = await site.arrive('bobweight/');
  await page.getByRole('link', { name: 'Work it' }).click();
  expect(await figuresUnder(page).count()).toBe(1);
  const linked = await site.arrive('residual-unbalance/#what-a-gram-does');
  expect(await figuresUnder(linked).count()).toBe(1);
});

it('who wants no questions has the figure at once, on this page and the next', async () => {
  const { context } = await site.reader();
  const page = await context.newPage();
  await page.goto('bobweight/');
  await page.getByRole('button', { name: 'No questions on this device' }).first().click();
  expect(await figuresUnder(page).count()).toBe(1);
  await page.goto('wrist-pin/');
  expect(await figuresUnder(page).count()).toBe(1);
  expect(await page.locator('.predict').getByRole('radio').count()).toBe(0);
  // And has them back where the topics are listed.
  await page.goto('topics/');
  await page.getByRole('button', { name: 'Ask them again' }).click();
  await page.getByRole('button', { name: 'Ask them again' }).waitFor({ state: 'hidden' });
  await page.goto('wrist-pin/');
  expect(await page.locator('.predict').getByRole('radio').count()).toBeGreaterThan(2);
});

it('paper has the figure though the question is open', async () => {
  const page = await site.arrive('bobweight/');
  await page.emulateMedia({ media: 'print' });
  expect(await figuresUnder(page).count()).toBe(1);
});
