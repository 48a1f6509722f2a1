import type { Page } from 'playwright-core';
import { expect, inject, it } from 'vitest';
import { pullExercise } from './support/exercise.ts';
import { says } from './support/form.ts';
import { isKept, ownSite } from './support/own-site.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** Goes on by Tab until what `selector` names has the focus; throws after as many as a page has. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let press = 0; press < 400; press += 1) {
    await page.keyboard.press('Tab');
    const isThere = await page.evaluate(
      (wanted) => document.activeElement?.matches(wanted) === true,
      selector,
    );
    if (isThere) return;
  }
  throw new Error(`Tab never comes to ${selector}.`);
}

it('a lesson is gone through by keys alone, without a connection: from the first lesson to an answer that is marked', async () => {
  const { reader, server } = await ownSite(site, inject('folder'));
  const page = await reader.arrive('first-lesson/');
  await isKept(page);
  await server.close();
  site.forgive(/ERR_CONNECTION_REFUSED/);

  // Two wrong guesses and a right one: each goes on.
  for (const [id, downs, told] of [
    ['first-half-turn', 0, 'You predicted: Half.'],
    ['first-rod', 2, 'Your prediction agrees'],
    ['first-speed', 0, /predict/],
  ] as const) {
    const question = page.locator(`#predict-${id}`);
    await tabTo(page, `#predict-${id} input`);
    await page.keyboard.press('Space');
    for (let press = 0; press < downs; press += 1) await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await says(question.locator('.predict-say'), told);
  }
  await says(page.locator('main'), 'What you can do now');

  // Its practice, at an exercise that nobody has seen; the answer is worked here, and typed.
  const { path, answer } = pullExercise(70_001);
  await page.goto(path);
  await page.locator('[data-practice][data-alive]').waitFor();
  await tabTo(page, '#practice-answer');
  await page.keyboard.type('nothing yet');
  await page.keyboard.press('Enter');
  await says(page.locator('.practice-outcome'), 'Could not read it.');
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(answer);
  await page.keyboard.press('Enter');
  await says(page.locator('.practice-outcome'), 'Right. It is');

  // And before a class.
  await page.goto('reversal-load/class/');
  await page.locator('[data-presented]').waitFor();
  for (let press = 0; press < 3; press += 1) await page.keyboard.press('PageDown');
  expect(await page.locator('.class-answer[data-now]').count()).toBe(1);
});
