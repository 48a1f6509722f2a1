import { readFile } from 'node:fs/promises';
import { type Page } from 'playwright-core';
import { expect, it } from 'vitest';
import {
  enter,
  field,
  openTool,
  result,
  results,
  says,
  seen,
  shows,
  stored,
  texts,
  type SetId,
} from './support/form.ts';
import { pagesOf, print } from './support/print.ts';
import { alive, useSite, type Reader } from './support/site.ts';

const site = useSite();

const ounce = 28.349523125;

/** Two sets of weighed parts as a builder might write them down, and what they are in grams. */
const parts: Readonly<Record<SetId, Readonly<Record<string, readonly [string, number]>>>> = {
  baseline: {
    pistonMass: ['432,5', 432.5],
    pinMass: ['0.1182 kg', 118.2],
    ringMass: ['36.4 g', 36.4],
    lockMass: ['1.6', 1.6],
    smallEndMass: ['6 oz', 6 * ounce],
    bigEndMass: ['423.0', 423],
    shellMass: ['41,2 g', 41.2],
    oilMass: ['4', 4],
    rodsPerPin: ['2', 2],
    reciprocatingFraction: ['50 %', 0.5],
  },
  candidate: {
    pistonMass: ['305.4', 305.4],
    pinMass: ['76,9', 76.9],
    ringMass: ['23.1\u00a0g', 23.1],
    lockMass: ['1.2 g', 1.2],
    smallEndMass: ['139.6', 139.6],
    bigEndMass: ['10 1/2 oz', 10.5 * ounce],
    shellMass: ['1.26 oz', 1.26 * ounce],
    oilMass: ['3', 3],
    rodsPerPin: ['2', 2],
    reciprocatingFraction: ['50', 0.5],
  },
};
/** [g] What the builder's scale and hand are good for. */
const plusMinus: Readonly<Record<string, number>> = { pistonMass: 0.5, bigEndMass: 1, oilMass: 2 };

function grams(set: SetId, name: string): number {
  const part = parts[set][name];
  if (part === undefined) throw new Error(`No part ${name}.`);
  return part[1];
}

/** [g] By hand: all of what turns, and f of what slides. */
function bobweight(set: SetId): number {
  const of = (name: string): number => grams(set, name);
  const turning = of('rodsPerPin') * (of('bigEndMass') + of('shellMass')) + of('oilMass');
  const sliding = ['pistonMass', 'pinMass', 'ringMass', 'lockMass', 'smallEndMass'].reduce(
    (sum, name) => sum + of(name),
    0,
  );
  return turning + of('reciprocatingFraction') * of('rodsPerPin') * sliding;
}
/** [g] The typed big end counts twice, the piston twice by half, the oil once; the rest was typed exact. */
const bobweightPlusMinus = Math.hypot(2 * 1, 2 * 0.5 * 0.5, 2);

async function typeParts(page: Page): Promise<void> {
  for (const set of ['baseline', 'candidate'] as const) {
    for (const [name, [text]] of Object.entries(parts[set])) {
      await enter(field(page, 'bobweight', name, set), text);
    }
  }
}

async function typePlusMinus(page: Page): Promise<void> {
  await page
    .locator('[data-calculator="bobweight"]')
    .getByText('How sure (±)', { exact: true })
    .click();
  for (const [name, spread] of Object.entries(plusMinus)) {
    for (const set of ['baseline', 'candidate'] as const) {
      const box = page.locator(`[id="bobweight-${name}-${set}-pm"]`);
      await enter(box, `${String(spread)} g`);
    }
  }
}

type State = Awaited<ReturnType<Reader['context']['storageState']>>;
let typedState: State | undefined;

/** A builder with both sets and their ±, typed in once and then as their browser keeps them. */
async function builder(): Promise<{ reader: Reader; page: Page }> {
  const permissions = ['clipboard-read', 'clipboard-write'];
  if (typedState === undefined) {
    const first = await site.reader();
    const form = await first.open('bobweight/');
    await typeParts(form);
    await typePlusMinus(form);
    typedState = await first.context.storageState();
  }
  const reader = await site.reader({ permissions, storageState: typedState });
  return { reader, page: await reader.open('bobweight/') };
}

async function copyLink(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Copy link' }).click();
  await says(page.locator('.bar-status'), 'The link is copied.');
  return page.evaluate(() => navigator.clipboard.readText());
}

it('a piston changed on the first page is there on the bobweight page', async () => {
  const page = await site.open('');
  await enter(field(page, 'home', 'pistonMass', 'candidate'), '300,4');
  // By hand, from the example's other parts.
  const sliding = 300.4 + 77 + 1.2 + 23.5 + 138.2;
  const turning = 2 * (300.1 + 36) + 3;
  const answer = page.locator('[data-result="candidate"]');
  await shows(answer, turning + 0.5 * 2 * sliding, 'g');
  await page.getByRole('link', { name: 'Carry this on to the bobweight page' }).click();
  await page.waitForURL('**/bobweight/');
  await alive(page);
  expect(await field(page, 'bobweight', 'pistonMass', 'candidate').inputValue()).toBe('300,4');
  await shows(result(page, 'bobweight', 'reciprocatingPerCylinder', 'candidate'), sliding, 'g');
});

it('two sets of weighed parts give the bobweight that a hand calculation gives', async () => {
  const typist = await site.reader();
  const page = await typist.open('bobweight/');
  await typeParts(page);
  for (const set of ['baseline', 'candidate'] as const) {
    await shows(result(page, 'bobweight', 'bobweight', set), bobweight(set), 'g');
    await shows(result(page, 'bobweight', 'halfBobweight', set), bobweight(set) / 2, 'g');
  }
  const row = page.locator('[data-calculator="bobweight"] tr[data-output="bobweight"]');
  const change = bobweight('candidate') - bobweight('baseline');
  await shows(row.locator('td[data-label="Difference"] > span').first(), change, 'g');
  const quotient = bobweight('candidate') / bobweight('baseline');
  await says(row.locator('[data-ratio]'), `× ${quotient.toFixed(3)}`);

  await typePlusMinus(page);
  typedState = await typist.context.storageState();
  for (const set of ['baseline', 'candidate'] as const) {
    const cell = result(page, 'bobweight', 'bobweight', set);
    await shows(cell, bobweight(set), 'g', bobweightPlusMinus);
  }
  await says(page.locator('.bar-note').first(), /No number|numbers on this page are still/);
  await says(page.locator('[data-calculator="bobweight"] .plain-words'), 'The bobweight');
});

it('the masses are carried to the reversal load, with their ± and its shares', async () => {
  const { page } = await builder();
  const carried = await texts(page, 'bobweight');
  await page.goto('/reversal-load/');
  await alive(page);
  const here = await texts(page, 'reversal-load');
  for (const name of [
    'pistonMass',
    'pinMass',
    'ringMass',
    'lockMass',
    'smallEndMass',
    'bigEndMass',
    'shellMass',
  ]) {
    for (const set of ['baseline', 'candidate']) {
      expect(here[`${name} ${set}`], name).toBe(carried[`${name} ${set}`]);
    }
  }

  const typed = {
    maxSpeed: '6400',
    stroke: '73.00',
    rodLength: '142',
    capMass: '182,0',
    missedShiftSpeed: '7100',
  };
  for (const [name, text] of Object.entries(typed))
    await enter(field(page, 'reversal-load', name, 'baseline'), text);
  const shares = await openTool(page, 'reversal-load', 'How sure (±)');
  await enter(page.locator('[id="reversal-load-maxSpeed-baseline-pm"]'), '5');

  // By hand, in SI: r w² [m_rec (1 + r/L) + big end + shells - cap].
  const kg = (name: string): number => grams('baseline', name) / 1000;
  const r = 0.0365;
  const w = (6400 * 2 * Math.PI) / 60;
  const rec = ['pistonMass', 'pinMass', 'ringMass', 'lockMass', 'smallEndMass'].reduce(
    (sum, name) => sum + kg(name),
    0,
  );
  const stretch = 1 + r / 0.142;
  const pull = r * w * w * (rec * stretch + kg('bigEndMass') + kg('shellMass') - 0.182);
  const bySpeed = (2 * 5 * pull) / 6400;
  const byPiston = r * w * w * stretch * 0.0005;
  const byBigEnd = r * w * w * 0.001;
  const all = Math.hypot(bySpeed, byPiston, byBigEnd);

  const cell = result(page, 'reversal-load', 'partingPull', 'baseline');
  await shows(cell, pull / 1000, 'kN', all / 1000);

  const row = shares
    .locator('tr')
    .filter({ hasText: 'Pull across the parting line' })
    .filter({ hasText: 'Baseline' });
  const percent = (part: number): string => `${((100 * part ** 2) / all ** 2).toFixed(0)} %`;
  await says(row, new RegExp(`speed[^,%]* ${percent(bySpeed)}`, 'i'));
  await says(row, new RegExp(`Big end on the scale ${percent(byBigEnd)}`));
});

it('the balance card shows both sets and prints on one side', async () => {
  const { page } = await builder();
  await page.getByRole('textbox', { name: 'Job' }).fill('No. 17: 90° V8 for the hill, spare crank');
  await page.goto('/balance-card/');
  await alive(page);
  const card = page.locator('.card');
  for (const [column, set] of (['baseline', 'candidate'] as const).entries()) {
    const cell = card.locator('.card-answer td').nth(column);
    await shows(cell, bobweight(set), 'g', bobweightPlusMinus);
    for (const [name, label] of [
      ['pistonMass', 'Piston, bare'],
      ['bigEndMass', 'Big end on the scale'],
      ['oilMass', 'Oil allowance'],
    ] as const) {
      const mass = card.locator('tr').filter({ hasText: label }).locator('td').nth(column);
      await shows(mass, grams(set, name), 'g', plusMinus[name]);
    }
  }
  await says(card, 'No. 17: 90° V8 for the hill, spare crank');
  await says(card, 'The oil is in the rotating mass, once.');
  await says(card, /kill/);
  await card.locator('.card-qr').waitFor();
  const link = (await card.locator('.card-link a').getAttribute('href')) ?? '';
  expect(link).toContain('pistonMass=432.5g:0.5g,305.4g:0.5g');
  expect(link.length).toBeLessThan(450);
  for (const format of ['A4', 'Letter'] as const) {
    expect(pagesOf(await print(page, format)), format).toBe(1);
  }
  await page.emulateMedia({ media: 'print' });
  await card.waitFor();
  // 210 mm less the card's own margins, in CSS pixels.
  await page.setViewportSize({ width: 710, height: 1000 });
  expect(
    await card.evaluate((whole) =>
      [whole, ...whole.querySelectorAll('*')]
        .filter((part) => part.getBoundingClientRect().right > innerWidth + 1)
        .map((part) => part.outerHTML.slice(0, 80)),
    ),
  ).toEqual([]);
});

it('the card of the example prints on one side', async () => {
  const page = await site.open('balance-card/');
  await page.locator('.card-qr').waitFor();
  for (const format of ['A4', 'Letter'] as const) {
    expect(pagesOf(await print(page, format)), format).toBe(1);
  }
});

it('a copied link opens with the same numbers, and asks before it keeps them', async () => {
  const { page } = await builder();
  await page.getByRole('textbox', { name: 'Job' }).fill('No. 17');
  const link = await copyLink(page);
  expect(link).toMatch(/bobweight\/#job=No\./);
  expect(link).toMatch(/&v=1$/);
  // Only characters that programs which find links in text keep.
  expect(link.slice(link.indexOf('#'))).toMatch(/^[A-Za-z0-9!#$&',\-./:;=?@_~]+$/);
  const sent = { texts: await texts(page, 'bobweight'), results: await results(page, 'bobweight') };

  const customer = await site.reader();
  const own = await customer.open('bobweight/');
  await enter(field(own, 'bobweight', 'pistonMass', 'baseline'), '444');
  await enter(field(own, 'bobweight', 'ringMass', 'candidate'), '22.2');
  const notebook = await stored(own);
  await own.close();

  const visit = await customer.open(link);
  await says(visit.locator('.visit'), 'No. 17');
  await says(visit.locator('.visit'), 'Your own job is untouched.');
  await expect.poll(() => results(visit, 'bobweight')).toEqual(sent.results);
  const got = await texts(visit, 'bobweight');
  // The digits stand as typed and the unit beside the field; a comma and a unit typed behind do not travel twice.
  const plain = (text = ''): string =>
    text.replace(/(\d),(\d)/, '$1.$2').replace(/[\s\u00a0]*(?:kg|g|oz|%)?(?= \|)/, '');
  for (const [place, text] of Object.entries(sent.texts)) {
    expect.soft(plain(got[place]), place).toBe(plain(text));
  }
  expect(await stored(visit)).toEqual(notebook);

  // What is changed during the visit stays in the visit.
  await enter(field(visit, 'bobweight', 'lockMass', 'candidate'), '1.3');
  expect(await stored(visit)).toEqual(notebook);

  await visit.getByRole('button', { name: 'Keep these as my job' }).click();
  await says(visit.locator('.visit-ask'), '2 of your own numbers will be replaced.');
  expect(await stored(visit)).toEqual(notebook);
  await visit.getByRole('button', { name: 'No, go on looking' }).click();
  expect(await stored(visit)).toEqual(notebook);

  await visit.getByRole('button', { name: 'Back to my job' }).click();
  await visit.locator('.visit').waitFor({ state: 'detached' });
  expect(await field(visit, 'bobweight', 'pistonMass', 'baseline').inputValue()).toBe('444');
  await expect.poll(() => visit.url()).not.toContain('#');

  await visit.goto(link);
  await visit.reload();
  await alive(visit);
  await visit.getByRole('button', { name: 'Keep these as my job' }).click();
  await visit.getByRole('button', { name: 'Yes, keep them' }).click();
  await says(visit.locator('.bar-status'), 'The numbers of the link are in your notebook.');
  const kept = await stored(visit);
  expect(JSON.parse(kept['throwbook/1/baseline/pistonMass'] ?? '')).toMatchObject({
    text: '432.5',
  });
  expect(kept['throwbook/1/job']).toBe('No. 17');
});

it('a link opened in a tab that shows the page replaces nothing either', async () => {
  const page = await site.open('bobweight/');
  await enter(field(page, 'bobweight', 'pistonMass', 'baseline'), '444');
  const notebook = await stored(page);
  await page.evaluate(() => {
    location.hash = '#pistonMass=410g,300.5g&v=1';
  });
  await expect
    .poll(() => field(page, 'bobweight', 'pistonMass', 'baseline').inputValue())
    .toBe('410');
  expect(await stored(page)).toEqual(notebook);
});

it('a saved file carries the notebook to another device', async () => {
  const { page } = await builder();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save file' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/\.json$/);
  const text = await readFile(await download.path(), 'utf8');
  expect(() => void JSON.parse(text)).not.toThrow();
  const sent = await texts(page, 'bobweight');

  const other = await site.open('bobweight/');
  await enter(field(other, 'bobweight', 'pistonMass', 'baseline'), '444');
  await other.getByRole('button', { name: 'Open file' }).click();
  await other
    .getByLabel('File of a saved job')
    .setInputFiles({ name: 'job.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await says(other.locator('.open-answer'), 'The file holds 20 numbers');
  expect(await field(other, 'bobweight', 'pistonMass', 'baseline').inputValue()).toBe('444');
  await other.getByRole('button', { name: 'Open it' }).click();
  await expect.poll(() => texts(other, 'bobweight')).toEqual(sent);
  await other.getByRole('button', { name: 'Open file' }).click();
  await other.getByRole('button', { name: 'Bring back the job from before' }).click();
  await expect
    .poll(() => field(other, 'bobweight', 'pistonMass', 'baseline').inputValue())
    .toBe('444');
});

it('a card for one set says which, and its halves add up', async () => {
  const { page } = await builder();
  await page.goto('/balance-card/');
  await alive(page);
  const card = page.locator('.card');
  await says(card, 'Two sets are compared here');
  await card.getByLabel('Card for').selectOption('Candidate');
  await says(card, 'Balance the crank for Candidate.');
  expect(await card.locator('.card-answer td').count()).toBe(1);
  const printed = await seen(card.locator('.card-answer td'));
  const [whole = 0] = (printed.match(/[\d.]+/g) ?? []).map(Number);
  const halves = await seen(card.locator('.card-answer + tr td'));
  const [one = 0, other = one] = (halves.replace('2 ×', '').match(/[\d.]+/g) ?? []).map(Number);
  expect((one + other).toFixed(1)).toBe(whole.toFixed(1));
  await says(card, /Both ends of one rod together [\d.]+ g/);
});
