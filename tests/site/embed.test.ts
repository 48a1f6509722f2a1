import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { FrameLocator, Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { longestLink } from '../../src/notebook/link.ts';
import { enter, field } from './support/form.ts';
import { siteAddress, useSite } from './support/site.ts';

const site = useSite();
const cleaning: (() => unknown)[] = [];
afterEach(async () => {
  for (const clean of cleaning.splice(0)) await clean();
});

const numbers = '#pistonMass=500g,400g&v=1';

/** The address of a page of another site that holds this HTML. */
async function otherSite(html: string): Promise<string> {
  const server = createServer((_, response) => {
    response.setHeader('content-type', 'text/html; charset=utf-8');
    // Its own icon would be asked for at any time, also when the server has been closed.
    const head = '<title>Another site</title><link rel="icon" href="data:,">';
    response.end(`<!doctype html><html lang="en">${head}${html}</html>`);
  });
  cleaning.push(() => server.close());
  await new Promise<void>((done) => {
    server.listen(0, '127.0.0.1', done);
  });
  return `http://127.0.0.1:${String((server.address() as AddressInfo).port)}/`;
}

/** A part in a frame of another site; `how` are more attributes of the frame. */
async function framed(part: string, how: string): Promise<{ page: Page; frame: FrameLocator }> {
  const src = `${siteAddress()}embed/${part}`.replaceAll('&', '&amp;');
  const address = await otherSite(
    `<iframe src="${src}" title="Part" width="900" height="900" ${how}></iframe>`,
  );
  site.forgive(new RegExp(`Asked another origin: ${address}`));
  const { context } = await site.reader();
  const page = await context.newPage();
  await page.goto(address);
  return { page, frame: page.frameLocator('iframe') };
}

const mass = '[id="bobweight-pistonMass-baseline"]';
const total = 'tr[data-output="bobweight"] td[data-set="baseline"]';

describe.each([
  ['cut off from every site', 'sandbox="allow-scripts"'],
  ['of the other site’s own', ''],
])('a part in a frame %s', (_, how) => {
  it('opens with the numbers of its address, and can be worked', async () => {
    const { frame } = await framed(`bobweight/${numbers}`, how);
    await expect.poll(() => frame.locator(mass).inputValue()).toBe('500');
    await expect.poll(() => frame.locator(total).first().textContent()).toMatch(/1757/);
    await expect
      .poll(() => frame.locator('[data-whose]').textContent())
      .toBe('The numbers come with the address.');
    await frame.locator(mass).fill('510');
    await frame.locator(mass).press('Enter');
    await expect.poll(() => frame.locator(total).first().textContent()).toMatch(/1767/);
  });

  it('without any it shows the invented example, and says so', async () => {
    const { frame } = await framed('figure-mechanism/', how);
    await frame.getByRole('button', { name: 'BDC' }).click();
    await expect
      .poll(() => frame.locator('figcaption').first().textContent())
      .toMatch(/^At 1[78]\d/);
    expect(await frame.locator('[data-whose]').textContent()).toMatch(/invented example/);
  });
});

it('a part changes nothing that a reader of the site keeps, and shows nothing of it', async () => {
  const reader = await site.reader();
  const own = await reader.open('bobweight/');
  await enter(field(own, 'bobweight', 'pistonMass', 'baseline'), '490');
  const part = await reader.open('embed/bobweight/');
  expect(await part.locator(mass).inputValue()).toBe('428.0');
  await part.locator(mass).fill('777');
  await part.locator(mass).press('Enter');
  await expect.poll(() => part.locator(total).first().textContent()).toMatch(/g/);
  const again = await reader.open('bobweight/');
  expect(await field(again, 'bobweight', 'pistonMass', 'baseline').inputValue()).toBe('490');
});

it('a link that cannot be read says so, and leaves the example', async () => {
  const page = await site.arrive(`embed/bobweight/#pistonMass=${'5'.repeat(longestLink)}&v=1`);
  await expect
    .poll(() => page.locator('[data-whose]').textContent())
    .toMatch(/^This link is .* Those shown are an invented example\.$/);
  expect(await page.locator('html[data-pending]').count()).toBe(0);
  expect(await page.locator(mass).inputValue()).toBe('428.0');
});

it('its topic opens in a tab of its own, and can be used there', async () => {
  const { page, frame } = await framed(
    'bobweight/',
    'sandbox="allow-scripts allow-popups allow-popups-to-escape-sandbox"',
  );
  const link = frame.locator('.embed-from a');
  expect(await link.getAttribute('rel')).toBe('noopener');
  expect(await link.textContent()).toMatch(
    /^Throwbook, “Bobweight”, version \S+, calculations \d+, \d+ \w+ \d{4}$/,
  );
  const [tab] = await Promise.all([page.context().waitForEvent('page'), link.click()]);
  await tab.locator('h1', { hasText: 'Bobweight' }).waitFor();
  expect(await tab.evaluate(() => typeof localStorage)).toBe('object');
  // The caution stands on a page of the site, which no frame may show.
  expect(await frame.locator('base').getAttribute('target')).toBe('_blank');
});

it('no other page of the site can be framed', async () => {
  const address = await otherSite(
    `<iframe src="${siteAddress()}bobweight/" title="Page"></iframe>`,
  );
  site.forgive(/Asked another origin|frame-ancestors|ERR_BLOCKED_BY_RESPONSE/);
  const { context } = await site.reader();
  const page = await context.newPage();
  const refused = page.waitForEvent('console', (message) => /frame-ancestors/.test(message.text()));
  await page.goto(address);
  await refused;
});

describe('the line to embed a part', () => {
  const line = (page: Page): Promise<string> => page.locator('[name=line]').inputValue();

  it('is that of the chosen part, size and numbers, and works', async () => {
    const page = await site.arrive('embed/#bobweight');
    await expect.poll(() => line(page)).toContain(`src="${siteAddress()}embed/bobweight/"`);
    await page.getByLabel('Link with').fill(`${siteAddress()}bobweight/${numbers}`);
    await page.getByLabel('Width').fill('800');
    expect(await line(page)).toContain('width="800"');
    const address = await otherSite(await line(page));
    site.forgive(new RegExp(`Asked another origin: ${address}`));
    await page.goto(address);
    const box = page.frameLocator('iframe').locator(mass);
    await expect.poll(() => box.inputValue()).toBe('500');
  });

  it('says what cannot be used, and keeps the last line', async () => {
    const page = await site.arrive('embed/');
    const before = await line(page);
    await page.getByLabel('Height').fill('tall');
    expect(await page.locator('[data-said]').textContent()).toMatch(/height is a number/);
    await page.getByLabel('Height').fill('700');
    await page.getByLabel('Link with').fill('https://host.example/');
    expect(await page.locator('[data-said]').textContent()).toMatch(/brings no numbers/);
    expect(before).toContain('<iframe');
    expect(await line(page)).toContain('height="700"');
  });

  it('is copied', async () => {
    const page = await site.arrive('embed/', {
      permissions: ['clipboard-write', 'clipboard-read'],
    });
    await page.getByRole('button', { name: 'Copy the line' }).click();
    await expect.poll(() => page.locator('[data-said]').textContent()).toBe('Copied.');
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(await line(page));
  });
});
