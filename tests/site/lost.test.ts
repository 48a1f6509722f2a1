import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, it } from 'vitest';
import { enter, field, openTool, result, says, stored } from './support/form.ts';
import { alive, useSite } from './support/site.ts';
import { asleep, desk, readyForLoss } from './support/waking.ts';

const site = useSite();
const figure = '[data-figure="bobweight-bar"]';

beforeEach(() => {
  site.forgive(/ERR_FAILED|ERR_INTERNET_DISCONNECTED/);
});

/** From here on nothing is fetched, until the function given back is called. */
async function cut(page: Page): Promise<() => Promise<void>> {
  await readyForLoss(page);
  // The server must not answer at all: a page whose server does is loaded again for its code.
  await page.route('**/*', (route) => route.abort());
  return async () => {
    await page.unroute('**/*');
    await page.evaluate(() => window.dispatchEvent(new Event('online')));
  };
}

/** A page that has the code it begins with, and no more. */
async function arriveCut(path: string) {
  const { context } = await site.reader(desk);
  const page = await context.newPage();
  await page.goto(path, { waitUntil: 'networkidle' });
  return { context, page, mend: await cut(page) };
}

describe('a number typed in a part that cannot be fetched', () => {
  it('is kept at once, the page says so, and goes on when the connection is back', async () => {
    const { page, mend } = await arriveCut('bobweight/');
    const mass = field(page, 'bobweight', 'pistonMass', 'baseline');
    await enter(mass, '500');
    await says(page.getByRole('alert'), 'the connection is lost');
    await expect
      .poll(async () => (await stored(page))['throwbook/1/baseline/pistonMass'])
      .toMatch(/"text":"500"/);
    // And what is typed after it was said.
    await enter(mass, '501');
    await expect
      .poll(async () => (await stored(page))['throwbook/1/baseline/pistonMass'])
      .toMatch(/"text":"501"/);
    await mend();
    await expect.poll(() => asleep(page)).toBe(0);
    await says(result(page, 'bobweight', 'bobweight', 'baseline'), /1758/);
    expect(await mass.inputValue()).toBe('501');
    await expect.poll(() => page.locator('.stale-note').count()).toBe(0);
  });

  it('is there for whoever comes back', async () => {
    const { context, page } = await arriveCut('bobweight/');
    await enter(field(page, 'bobweight', 'pistonMass', 'baseline'), '500');
    await says(page.getByRole('alert'), 'What you type is kept');
    await page.close();
    const again = await context.newPage();
    await again.goto('bobweight/');
    await alive(again);
    await says(result(again, 'bobweight', 'bobweight', 'baseline'), /1757/);
  });

  it('is told of though the code that tells it comes after the loss', async () => {
    const { context } = await site.reader(desk);
    const page = await context.newPage();
    let release = (): void => undefined;
    const wait = new Promise<void>((done) => {
      release = done;
    });
    await page.route(/\/(?:alive|lost)\.[^/]*\.js$/, async (route) => {
      if (route.request().url().includes('/alive.')) return route.abort();
      await wait;
      return route.continue();
    });
    await page.goto('bobweight/');
    const failed = page.waitForEvent('requestfailed');
    await enter(field(page, 'bobweight', 'pistonMass', 'baseline'), '500');
    await failed;
    release();
    await says(page.getByRole('alert'), 'the connection is lost');
  });

  it('is told of where it is seen, though a part in a closed fold was lost first', async () => {
    const { page } = await arriveCut('residual-unbalance/');
    const folded = page.locator('[data-calculator="bobweight-error"]');
    await folded.dispatchEvent('pointermove');
    await page
      .locator('.stale-note:has(+ [data-calculator="bobweight-error"])')
      .waitFor({ state: 'attached' });
    expect(await page.getByRole('alert').count()).toBe(0);
    await enter(field(page, 'residual-unbalance', 'crankMass', 'baseline'), '25');
    await says(page.getByRole('alert'), 'the connection is lost');
  });

  it('does not become the reader’s own where a link is visited', async () => {
    const { page, mend } = await arriveCut('bobweight/');
    await page.evaluate(() => {
      location.hash = '#pistonMass=410g,300.5g&v=1';
    });
    await enter(field(page, 'bobweight', 'ringMass', 'baseline'), '40');
    await says(page.getByRole('alert'), 'the connection is lost');
    expect(await stored(page)).toEqual({});
    await mend();
    await alive(page);
    await says(page.locator('.visit'), 'These are the numbers of a link');
    expect(await stored(page)).toEqual({});
  });
});

it('a figure that cannot be fetched says so, and follows the calculator later', async () => {
  const { context } = await site.reader(desk);
  const page = await context.newPage();
  await page.goto('bobweight/', { waitUntil: 'networkidle' });
  const mass = field(page, 'bobweight', 'pistonMass', 'baseline');
  await mass.focus();
  await page.locator('[data-calculator="bobweight"][data-alive]').waitFor();
  const mend = await cut(page);
  await enter(mass, '500');
  await says(result(page, 'bobweight', 'bobweight', 'baseline'), /1757/);
  const note = page.locator(`.stale-note:has(+ ${figure})`);
  await says(note, 'the example stands here');
  await mend();
  await expect.poll(() => page.locator(figure).textContent()).toMatch(/1757/);
  expect(await page.locator('.stale-note').count()).toBe(0);
});

it('every button whose code cannot be fetched says why, and works when it is back', async () => {
  const page = await site.open('bobweight/', desk);
  await enter(field(page, 'bobweight', 'pistonMass', 'baseline'), '500');
  // One tool is open at a time; the code of both is here before the connection goes.
  const solve = await openTool(page, 'bobweight', 'Solve for');
  await solve.getByRole('button').first().waitFor();
  const downloads = await openTool(page, 'bobweight', 'Export');
  await downloads.getByRole('button').first().waitFor();
  const mend = await cut(page);
  const status = page.locator('.bar-status');
  for (const name of ['QR code', 'Open file', 'Save file', 'Copy link']) {
    // What a press before it has said must not stand for its answer.
    await page.getByRole('radio', { name: 'Metric' }).check();
    await page.getByRole('button', { name, exact: true }).click();
    await says(status, 'The connection is lost, so this could not be fetched.');
  }
  await downloads.getByRole('button').first().click();
  await says(downloads.getByRole('status'), 'The connection is lost');
  await mend();
  await page.getByRole('button', { name: 'Open file' }).click();
  await page.getByLabel('File of a saved job').waitFor();
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    downloads.getByRole('button').first().click(),
  ]);
  expect(saved.suggestedFilename()).toBe('bobweight.csv');
});
