import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { reversalLoad } from '../../src/calculators/loads/reversal-load.ts';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { makeQuestion, type NumberQuestion } from '../../src/calculators/practice/make.ts';
import { plansOf } from '../../src/calculators/practice/plan.ts';
import { workWay } from '../../src/calculators/practice/way.ts';
import { linesOf } from '../../src/components/practice/lines-of.ts';
import { fromSI } from '../../src/units/units.ts';
import { must } from '../calculators/must.ts';
import { says } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();
const calculator: AnyCalculator = reversalLoad;
const plan = must(
  plansOf(calculator, linesOf(calculator)).find(({ id }) => id === 'reversal-load.partingPull'),
);
const kept = `throwbook/practice/1/exercise/${plan.id}`;

/** A question that has a stroke in inches and asks in kilonewtons. */
const question = ((): NumberQuestion => {
  for (let seed = 1; seed < 500; seed += 1) {
    const made = makeQuestion(calculator, plan, seed);
    if (made.kind !== 'number' || !made.saysUnit || made.unit !== 'kN') continue;
    if (made.case.stated['stroke']?.unit === 'in') return made;
  }
  throw new Error('no seed below 500 gives such a question');
})();
const path = `reversal-load/practice/#${plan.id}/1/${String(question.seed)}`;

/** A force [N] as a reader writes it in kilonewtons. */
function typed(force: number): string {
  return fromSI(force, 'kN').toFixed(4);
}

const outcome = (page: Page) => page.locator('.practice-outcome');
async function answer(page: Page, text: string): Promise<void> {
  await page.getByLabel('Your answer').fill(text);
  await page.getByRole('button', { name: 'Check', exact: true }).click();
}
async function ready(page: Page): Promise<void> {
  await page.locator('[data-practice][data-alive]').waitFor();
}
async function begin(at = path): Promise<Page> {
  const page = await site.arrive(at);
  await ready(page);
  return page;
}
async function record(page: Page): Promise<unknown> {
  const text = await page.evaluate((key) => localStorage.getItem(key), kept);
  return text === null ? undefined : JSON.parse(text);
}

/** The pull that the last line gives where a value on the way is another one. */
function followed(own: Readonly<Record<string, number>>): number {
  const { input, output } = question.case;
  const told = Object.fromEntries(plan.told.map((name) => [name, output[name] as number]));
  return Number(workWay(plan.way, { ...input, ...told }, own)[plan.ask]);
}

describe('an exercise that is missed', () => {
  it('is told from one that could not be read: nothing is counted for that', async () => {
    const page = await begin();
    await answer(page, '');
    await says(outcome(page), 'Nothing is entered.');
    await answer(page, 'about twenty');
    await says(outcome(page), 'holds no number');
    await answer(page, '350 g');
    await says(outcome(page), 'must be a force. You entered a mass');
    await answer(page, '18-20');
    await says(outcome(page), 'is a range or two numbers');
    expect(await record(page)).toBeUndefined();
    await answer(page, typed(question.answer));
    await says(outcome(page), 'Right. It is');
    await says(outcome(page), 'in the unit of the question');
    expect(await record(page)).toMatchObject({ right: 1, missed: 0, level: 1 });
  });

  it('names the slip, goes through the steps where there is none, and is right in the end', async () => {
    const page = await begin();
    const stroke = Number(question.case.input['stroke']) / 25.4;
    const inches = calculator.compute({ ...question.case.input, stroke })['partingPull'];
    await answer(page, typed(Number(inches)));
    await says(outcome(page), 'Not yet. It looks like “Stroke (twice the throw)” was taken as');
    expect(await record(page)).toMatchObject({ right: 0, missed: 1 });
    await answer(page, typed(10 * question.answer));
    await says(outcome(page), 'It looks like a power of ten: too large by 10.');
    await answer(page, `${typed(question.answer)} lbf`);
    await says(outcome(page), 'It looks like the right number, but in kN; you wrote it in lbf.');

    // A throw ratio of half the size fits no slip: it is found by its value.
    const { throwRatio } = question.case.output;
    expect(throwRatio).toBeUndefined();
    const ratio = Number(question.case.input['stroke']) / Number(question.case.input['rodLength']);
    const own = 0.66 * (ratio / 2);
    await answer(page, typed(followed({ throwRatio: own })));
    await says(outcome(page), 'It fits none of the slips known here.');
    await page.getByRole('button', { name: 'Find where it differs' }).click();
    const step = page.getByLabel('What do you have for');
    const check = page.getByRole('button', { name: 'Check this step' });
    await step.fill('nothing');
    await check.click();
    await says(page.locator('.practice-steps'), 'Could not read it.');
    await step.fill(fromSI(Number(question.case.input['stroke']) / 2, 'mm').toFixed(3));
    await check.click();
    await says(page.locator('.practice-steps'), 'right');
    await step.fill(own.toFixed(6));
    await check.click();
    await says(page.locator('.practice-steps'), 'The working differs here.');
    await says(page.locator('.practice-steps'), 'that part of the work is earned');
    const line = page.locator('.practice-steps .working-step');
    expect(await line.count()).toBe(1);
    expect(await line.textContent()).toMatch(/= 0\.\d+/);
    expect(await line.textContent()).not.toContain('—');
    await page.getByRole('button', { name: 'Answer again' }).click();
    expect(
      await page.getByLabel('Your answer').evaluate((node) => node === document.activeElement),
    ).toBe(true);
    await answer(page, `${typed(question.answer)} kN`);
    await says(outcome(page), 'Right.');
    // Right in the end is not right at the first try.
    expect(await record(page)).toMatchObject({ right: 0, missed: 1, level: 0 });
  });

  it('comes back after two others', async () => {
    const page = await begin();
    const title = page.locator('#practice-title');
    const first = await title.textContent();
    await page.getByRole('button', { name: 'Show the answer' }).click();
    await says(outcome(page), 'The answer:');
    const next = page.getByRole('button', { name: 'Next exercise' });
    await next.click();
    const seen: (string | null)[] = [];
    for (let turn = 0; turn < 3; turn += 1) {
      seen.push(await title.textContent());
      await page.getByRole('button', { name: 'Another exercise' }).click();
    }
    expect(seen.slice(0, 2)).not.toContain(first);
    expect(seen[2]).toBe(first);
  });
});

describe('the working that is shown', () => {
  it('fades after success, line by line', async () => {
    const page = await begin();
    const lines = page.locator('.practice-worked[open] .working-step');
    expect(await lines.count()).toBe(plan.way.length);
    expect(await lines.last().textContent()).toMatch(/= .*\d/);
    const goTo = (hash: string): Promise<void> =>
      page.evaluate((to) => {
        location.hash = to;
      }, hash);
    for (const less of [1, 2]) {
      await answer(page, typed(question.answer));
      await says(outcome(page), 'Right.');
      // The exercise by itself, with numbers that nobody chose.
      await goTo(`#${plan.id}`);
      await expect
        .poll(() => page.locator('.practice-worked[open] .working-step').count())
        .toBe(plan.way.length - less);
      // Whoever opens the link has the same help as everybody: one like it, worked.
      await goTo(new URL(path, 'http://any/').hash);
      await expect
        .poll(() => page.locator('.practice-worked .working-step').count())
        .toBe(plan.way.length);
    }
  });
});

describe('a link to an exercise', () => {
  it('gives everybody the same numbers', async () => {
    const [one, other] = [await begin(), await begin()];
    const given = (page: Page) => page.locator('.practice .practice-given').first().textContent();
    expect(await given(one)).toBe(await given(other));
    expect(await given(one)).toContain(must(question.case.stated['stroke']).text);
  });

  it.each([
    [`#${plan.id}/7/12`, 'another version of the exercises'],
    [`#${plan.id}/1/twelve`, 'cut or changed'],
    ['#no-such.exercise/1/12', 'that this page does not have'],
  ])('%s gets words, and an exercise', async (hash, words) => {
    const page = await begin(`reversal-load/practice/${hash}`);
    await says(page.locator('.practice-said'), words);
    expect(await page.locator('#practice-title').textContent()).not.toBe('');
  });
});

describe('what is kept of the progress', () => {
  it('stays until the page is closed where the storage is full, and the page says so', async () => {
    const page = await site.arrive(path, {
      before: () => {
        Storage.prototype.setItem = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
      },
    });
    await ready(page);
    await answer(page, typed(question.answer));
    await says(outcome(page), 'Right.');
    await says(page.locator('.practice-said'), 'storage of this browser is full');
    await page.getByText('All exercises of this page: 1 of').waitFor();
  });

  it('is put aside where it is damaged, and begins anew', async () => {
    const { context } = await site.reader();
    const page = await context.newPage();
    await page.goto('reversal-load/practice/');
    await page.evaluate((key) => {
      localStorage.setItem(key, '{"level": 9');
    }, kept);
    await page.goto(path);
    await page.reload();
    await says(page.locator('.practice-said'), 'is damaged');
    await answer(page, typed(question.answer));
    await says(outcome(page), 'Right.');
    expect(await record(page)).toMatchObject({ right: 1 });
    const aside = await page.evaluate(
      (id) => localStorage.getItem(`throwbook/practice/1/damaged/${id}`),
      plan.id,
    );
    expect(aside).toBe('{"level": 9');
  });

  it('can be saved, cleared and brought back', async () => {
    const page = await begin();
    await answer(page, typed(question.answer));
    await says(outcome(page), 'Right.');
    await page.getByText('All exercises of this page').click();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the progress as a file' }).click();
    const file = JSON.parse(readFileSync(must(await (await download).path()), 'utf8')) as unknown;
    expect(file).toMatchObject({ format: 1, exercises: { [plan.id]: { right: 1 } } });
    await page.getByRole('button', { name: 'Clear the progress' }).click();
    await says(page.locator('.practice-said'), 'is cleared');
    expect(await record(page)).toBeUndefined();
    const saved = { name: 'practice.json', mimeType: 'application/json' };
    const choose = page.getByLabel('Read a saved file');
    await choose.setInputFiles({ ...saved, buffer: Buffer.from('{"what": "a list"}') });
    await says(page.locator('.practice-said'), 'This is no file of practice');
    await choose.setInputFiles({ ...saved, buffer: Buffer.from(JSON.stringify(file)) });
    await says(page.locator('.practice-said'), 'Taken from the file: 1');
    expect(await record(page)).toMatchObject({ right: 1 });
    await page.getByRole('button', { name: 'Clear the progress' }).click();
    await page.getByRole('button', { name: 'Bring the progress back' }).click();
    await says(page.locator('.practice-said'), 'The progress is back.');
    expect(await record(page)).toMatchObject({ right: 1 });
  });
});

it('is done by keys alone, without the network, on a phone', async () => {
  const { context } = await site.reader({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  await page.goto(path);
  await ready(page);
  await context.setOffline(true);
  // The browser asks for the picture of the tab again, whatever it has.
  site.forgive(/icon\.svg/);
  const reach = async (words: string): Promise<void> => {
    for (let press = 0; press < 60; press += 1) {
      await page.keyboard.press('Tab');
      const here = await page.evaluate(() => {
        const node = document.activeElement;
        const label =
          node?.id === undefined ? null : document.querySelector(`label[for="${node.id}"]`);
        return `${node?.textContent ?? ''} ${label?.textContent ?? ''}`;
      });
      if (here.includes(words)) return;
    }
    throw new Error(`no ${words} is reached by the Tab key`);
  };
  await reach('Your answer');
  await page.keyboard.type('nothing');
  await page.keyboard.press('Enter');
  await says(outcome(page), 'Could not read it.');
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(typed(question.answer));
  await page.keyboard.press('Enter');
  await says(outcome(page), 'Right.');
  await reach('Next exercise');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('practice-title');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
});

it.each(['light', 'dark'] as const)(
  'has no fault of access in any of its states, %s',
  async (colorScheme) => {
    const { context } = await site.reader({ colorScheme });
    const page = await context.newPage();
    const faults = async (): Promise<readonly string[]> => {
      const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
      return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160) ?? ''}`);
    };
    await page.goto(path);
    await ready(page);
    await page.getByText('All exercises of this page').click();
    await page.getByText('On paper').click();
    await answer(page, typed(1.37 * question.answer));
    await page.getByRole('button', { name: 'Find where it differs' }).click();
    expect(await faults()).toEqual([]);
    await page.getByRole('button', { name: 'Show the answer' }).click();
    expect(await faults()).toEqual([]);
    for (const id of ['reversal-load.pullCurve.read', 'reversal-load.commonPull.order']) {
      await page.goto(`reversal-load/practice/#${id}/1/3`);
      await page.reload();
      await ready(page);
      expect(await faults(), id).toEqual([]);
    }
  },
);

it('gives exercises on paper where no script runs', async () => {
  const page = await site.arrive(path, { javaScriptEnabled: false });
  await page.getByText('On paper').click();
  expect(await page.locator('.practice-paper').count()).toBeGreaterThanOrEqual(3);
  await page.getByText('The answer', { exact: true }).first().click();
  await says(page.locator('.practice-paper details p').first(), /\d/);
});

describe('a sheet to be judged', () => {
  const sheet = (page: Page) => page.locator('#filled-balance-card');

  it('tells of what is marked, and of how much is left', async () => {
    const page = await site.arrive('bobweight/practice/');
    await ready(page);
    const check = sheet(page).getByRole('button', { name: 'Check my marks' });
    const said = sheet(page).getByRole('status');
    await check.click();
    await says(said, 'Nothing is marked.');
    await sheet(page).getByLabel('Rotating mass of one rod').check();
    await sheet(page).getByLabel('Reciprocating mass of one cylinder').check();
    await check.click();
    await says(said, 'Not yet: 1 of 6 faults found. 1 line marked is right as it stands.');
    const told = sheet(page).locator('.judgement-why:visible');
    expect(await told.count()).toBe(2);
    await says(told.first(), 'Found: It should be 462.2');
    await sheet(page).getByLabel('Reciprocating mass of one cylinder').uncheck();
    for (const row of await sheet(page).locator('tr[data-fault] input').all()) await row.check();
    await check.click();
    await says(said, 'Right: all 6 faults are found');
  });

  it('shows all when it is asked', async () => {
    const page = await site.arrive('bobweight/practice/');
    await sheet(page).getByRole('button', { name: 'Show all' }).click();
    await says(sheet(page).getByRole('status'), '6 lines were not marked.');
    expect(await sheet(page).locator('.judgement-why:visible').count()).toBe(10);
  });
});
