import { AxeBuilder } from '@axe-core/playwright';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { serve } from '../../src/build/serve.js';
import { sitePages } from './support/build.ts';
import { says } from './support/form.ts';
import { useSite } from './support/site.ts';
import { desk, phone } from './support/waking.ts';

const site = useSite();

function field(page: Page): Locator {
  return page.getByLabel('A word, a part or a symbol');
}
function found(page: Page): Locator {
  return page.locator('dialog.search .search-found');
}
function status(page: Page): Locator {
  return page.locator('dialog.search').getByRole('status');
}

/** Opens the search of a page by its link, and looks for something. */
async function search(page: Page, query: string): Promise<void> {
  if (!(await field(page).isVisible()))
    await page.getByRole('banner').getByRole('link', { name: 'Search' }).click();
  await field(page).fill(query);
  await expect.poll(() => status(page).textContent()).toContain(`“`);
}

/** Addresses of the first entries and pages that are shown, from the site's root. */
async function addresses(page: Page): Promise<readonly string[]> {
  const links = await found(page)
    .locator('a')
    .evaluateAll((all) => all.map((link) => link.getAttribute('href') ?? ''));
  return links.map((href) => href.replace(/^\//, ''));
}

/** What a page has fetched of the search. */
function fetched(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    performance
      .getEntriesByType('resource')
      .map(({ name }) => new URL(name).pathname)
      .filter((path) => /pagefind|names\.json|dialog/.test(path)),
  );
}

it('every page has the link, and its script, and fetches nothing of the search before it is opened', async () => {
  // A class is shown nothing beside the screen.
  for (const { path, html } of sitePages().filter((page) => !page.path.endsWith('/class/')))
    expect(html, path).toMatch(/<header[\s\S]*<a [^>]*href="\/search\/"[\s\S]*<\/header>/);
  const page = await site.open('bobweight/', desk);
  await page.waitForLoadState('networkidle');
  expect(await fetched(page)).toEqual([]);
  await page.getByRole('banner').getByRole('link', { name: 'Search' }).click();
  await expect.poll(async () => (await fetched(page)).join(' ')).toMatch(/pagefind\.js/);
});

describe('what is found', () => {
  it('a word, by page and section, with the words marked; a section that is folded opens', async () => {
    const page = await site.arrive('topics/', desk);
    await search(page, 'overbalance');
    await says(status(page), /entr.* and .*pages? for “overbalance”/);
    const section = found(page).getByRole('link', { name: 'What a gram does' });
    expect(await section.getAttribute('href')).toBe('/residual-unbalance/#what-a-gram-does');
    const marks = await found(page).locator('mark').allTextContents();
    expect(marks.length).toBeGreaterThan(2);
    for (const mark of marks) expect(mark).toMatch(/overbalanc/i);
    await section.click();
    await page.waitForURL('**/residual-unbalance/#what-a-gram-does');
    await page.locator('details.section[open] #what-a-gram-does').waitFor();
  });

  it.each([
    ['λ', /glossary\/#lambda/],
    ['lambda', /glossary\/#lambda/],
    ['m_bob', /bobweight\/working\/#r-bobweight|symbols\/#bobweight/],
    ['F', /working\/#r-/],
    ['m_pin', /symbols\/#pinMass/],
  ])('the symbol %s', async (query, where) => {
    const page = await site.arrive('', desk);
    await search(page, query);
    const [one, other] = await addresses(page);
    expect(`${one ?? ''} ${other ?? ''}`).toMatch(where);
  });

  it('a result by its symbol, at its own row', async () => {
    const page = await site.arrive('', desk);
    await search(page, 'm_half');
    await found(page)
      .getByRole('link', { name: /^Each half of the clamp/ })
      .click();
    await page.waitForURL('**/bobweight/working/#r-halfBobweight');
    expect(await page.locator('#r-halfBobweight').isVisible()).toBe(true);
  });

  it.each([
    ['gudgeon pin', 'wrist pin', 'glossary/#wrist-pin'],
    ['conrods', 'rod', 'glossary/#rod'],
    ['harmonic balancer', 'damper', 'glossary/#damper'],
    ['bearing nip', 'crush', 'glossary/#crush'],
  ])('%s by the name it has here', async (query, ours, where) => {
    const page = await site.arrive('', desk);
    await search(page, query);
    const first = found(page).locator('li').first();
    await says(first, new RegExp(`^${ours}, also called ${query.replace(/s$/, '')}`));
    expect((await addresses(page))[0]).toBe(where);
    await says(status(page), new RegExp(`pages? for “${ours}, also called`));
  });

  it('nothing, in words, with what to try', async () => {
    const page = await site.arrive('', desk);
    await search(page, 'xyzzy');
    await says(status(page), 'Nothing was found for “xyzzy”.');
    await says(found(page), /Try one word/);
    expect(await addresses(page)).toEqual(['glossary/', 'symbols/', 'topics/']);
    // Emptied, it says nothing at all.
    await field(page).fill('');
    await expect.poll(() => status(page).textContent()).toBe('');
    expect(await found(page).textContent()).toBe('');
  });

  it('more of it at a press, and the focus goes on there', async () => {
    const page = await site.arrive('', desk);
    await search(page, 'pin');
    const more = found(page)
      .getByRole('button', { name: /^\d+ more$/ })
      .first();
    const before = await found(page).locator('ol').first().locator(':scope > li').count();
    await more.press('Enter');
    const list = found(page).locator('ol').first().locator(':scope > li');
    await expect.poll(() => list.count()).toBeGreaterThan(before);
    const isThere = await list
      .nth(before)
      .locator('a')
      .evaluate((link) => link === document.activeElement);
    expect(isThere).toBe(true);
  });
});

describe('by keyboard alone', () => {
  it('opens at /, goes down the list, follows a link; Escape gives the focus back', async () => {
    const page = await site.arrive('topics/', desk);
    const link = page.getByRole('link', { name: 'Bobweight', exact: true }).first();
    await link.focus();
    await page.keyboard.press('/');
    await field(page).waitFor();
    await page.keyboard.type('crush');
    await says(status(page), /for “crush”/);
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    const at = (): Promise<string> =>
      page.evaluate(() => document.activeElement?.textContent ?? '');
    const second = (await found(page).locator('a').nth(1).textContent()) ?? '?';
    expect(await at()).toBe(second);
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    expect(await field(page).evaluate((box) => box === document.activeElement)).toBe(true);
    await page.keyboard.press('Escape');
    await field(page).waitFor({ state: 'hidden' });
    expect(await link.evaluate((one) => one === document.activeElement)).toBe(true);

    // What was looked for is there again, and typing takes its place.
    await page.keyboard.press('Control+k');
    expect(await field(page).inputValue()).toBe('crush');
    await page.keyboard.type('gudgeon pin');
    await page.keyboard.press('Enter');
    await page.waitForURL('**/glossary/#wrist-pin');
  });

  it('a / that belongs to a number is left to it', async () => {
    const page = await site.open('bobweight/', desk);
    const mass = page.locator('#bobweight-pistonMass-baseline');
    await mass.fill('1 7');
    await mass.press('End');
    await mass.press('/');
    expect(await mass.inputValue()).toBe('1 7/');
    expect(await page.locator('dialog.search').count()).toBe(0);
  });

  it('the key can be turned off, on this device', async () => {
    const { arrive } = await site.reader(desk);
    const page = await arrive('topics/');
    await page.keyboard.press('/');
    await page.getByLabel('opens the search').uncheck();
    await page.keyboard.press('Escape');
    for (const where of ['topics/', 'glossary/']) {
      await page.goto(where);
      await page.keyboard.press('/');
      await page.keyboard.press('Control+k');
      await field(page).waitFor();
      // Had the key opened it as well, it would stand in the field.
      expect(await field(page).inputValue()).toBe('');
    }
    await page.getByLabel('opens the search').check();
    await page.keyboard.press('Escape');
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('BODY');
    await page.keyboard.press('/');
    await field(page).waitFor();
  });
});

describe('for everybody', () => {
  it.each([
    ['on a phone', { ...phone, viewport: { width: 360, height: 740 } }],
    ['on a desk', desk],
  ])('no fault %s, light and dark, and nothing stands out of it', async (_, how) => {
    const page = await site.arrive('bobweight/', how);
    await search(page, 'crush');
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const { violations } = await new AxeBuilder({ page }).include('dialog.search').analyze();
      expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html ?? ''}`)).toEqual([]);
    }
    for (const letters of ['100%', '200%']) {
      const wide = await page.evaluate((size) => {
        document.documentElement.style.fontSize = size;
        const dialog = document.querySelector('dialog.search');
        if (dialog === null) return ['none'];
        const { right, left } = dialog.getBoundingClientRect();
        return [...dialog.querySelectorAll('*')]
          .filter((part) => {
            const box = part.getBoundingClientRect();
            return part.checkVisibility() && (box.right > right + 0.5 || box.left < left - 0.5);
          })
          .map((part) => part.outerHTML.slice(0, 90))
          .concat(right > innerWidth || left < 0 ? ['the dialog'] : []);
      }, letters);
      expect(wide, letters).toEqual([]);
      const box = await field(page).boundingBox();
      expect(box?.width, letters).toBeGreaterThan(140);
    }
  });

  it('without a script the link leads to other ways, with the other words', async () => {
    const page = await site.arrive('bobweight/', { javaScriptEnabled: false });
    await page.getByRole('banner').getByRole('link', { name: 'Search' }).click();
    await page.waitForURL('**/search/');
    const row = page.getByRole('row').filter({ hasText: 'gudgeon pin' }).first();
    await row.getByRole('link', { name: 'wrist pin' }).click();
    await page.waitForURL('**/glossary/#wrist-pin');
  });
});

describe('without a connection, or with a poor one', () => {
  it('it finds words and names once the site is on the device, though it was never opened', async () => {
    const server = await serve(inject('folder'), 0);
    const { origin } = new URL(server.address);
    site.forgive(new RegExp(`^Asked another origin: ${origin}/`));
    const { arrive } = await site.reader({ baseURL: server.address, serviceWorkers: 'allow' });
    const page = await arrive('topics/');
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await server.close();
    await search(page, 'gudgeon pin');
    await says(status(page), /entr.* and .*pages for “wrist pin, also called gudgeon pin”/);
    await found(page).locator('a[href="/wrist-pin/"]').click();
    await says(page.locator('h1'), 'Wrist pin');
  });

  it('and where the connection is slow, it says so and has it at the next letter', async () => {
    site.forgive(/[Pp]agefind|WebAssembly|Content Security Policy|Content policy/);
    const page = await site.arrive('topics/', desk);
    let slow = true;
    await page.route(/pagefind-worker/, async (route) => {
      // Longer than pagefind waits for its worker.
      if (slow) await new Promise((done) => setTimeout(done, 6000));
      await route.continue();
    });
    await page.keyboard.press('/');
    await field(page).fill('crush');
    await says(status(page), /connection is lost/);
    slow = false;
    await field(page).fill('crush height');
    await says(status(page), /pages? for “crush height”/);
  });

  it('it says why nothing comes, and goes on when it can', async () => {
    site.forgive(/ERR_FAILED|pagefind/);
    const page = await site.arrive('topics/', desk);
    await page.route(/pagefind|names\.json/, (route) => route.abort());
    await page.keyboard.press('/');
    await field(page).fill('crush');
    await says(status(page), /connection is lost/);
    await page.unroute(/pagefind|names\.json/);
    await field(page).fill('crush height');
    await says(status(page), /pages? for “crush height”/);
  });
});
