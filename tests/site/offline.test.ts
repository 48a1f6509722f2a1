import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { writeWorker } from '../../src/build/offline.js';
import { sitePages } from './support/build.ts';
import { enter, field, result, says } from './support/form.ts';
import { afterwards, isKept, ownSite } from './support/own-site.ts';
import { alive, siteAddress, useSite } from './support/site.ts';

const site = useSite();
describe('after one visit', () => {
  it('every page is there without a connection, and works', async () => {
    const { reader, server } = await ownSite(site, inject('folder'));
    const page = await reader.arrive('crank-overlap/');
    await isKept(page);
    await server.close();
    site.forgive(/ERR_CONNECTION_REFUSED|status of 404/);

    // What this page had not fetched while it could.
    await enter(field(page, 'crank-overlap', 'stroke', 'baseline'), '90');
    await alive(page);

    for (const { path, html } of sitePages()) {
      await page.goto(path);
      expect(await page.title(), path).toBe(/<title>([^<]+)</.exec(html)?.[1]);
      expect(await page.evaluate(() => document.styleSheets.length), path).toBeGreaterThan(0);
    }
    await page.goto('bobweight/?from=elsewhere');
    await alive(page);
    await enter(field(page, 'bobweight', 'pistonMass', 'baseline'), '500');
    await says(result(page, 'bobweight', 'bobweight', 'baseline'), /1757/);
    await page.goto('bobweight');
    await says(page.locator('h1'), /./);
    await alive(page);
    expect(await field(page, 'bobweight', 'pistonMass', 'baseline').inputValue()).toBe('500');
    const answer = await page.goto('no-such-page/');
    expect(answer?.status()).toBe(404);
    await says(page.locator('h1'), /not|no /i);
  });

  it('all of it takes less than 4 MB of the device', async () => {
    const { reader } = await ownSite(site, inject('folder'));
    const page = await reader.arrive('');
    await isKept(page);
    const kept = await page.evaluate(async () => {
      let bytes = 0;
      let files = 0;
      for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        for (const request of await cache.keys()) {
          files += 1;
          bytes += (await (await cache.match(request))?.arrayBuffer())?.byteLength ?? 0;
        }
      }
      return { bytes, files };
    });
    expect(kept.files).toBeGreaterThan(sitePages().length + 50);
    expect(kept.bytes).toBeGreaterThan(300_000);
    expect(kept.bytes).toBeLessThan(4_000_000);
  });
});

it('a newer version waits until it is asked for, and then takes over with the numbers kept', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'throwbook-newer-'));
  afterwards(() => {
    rmSync(folder, { recursive: true });
  });
  cpSync(inject('folder'), folder, { recursive: true });
  const { reader } = await ownSite(site, folder);
  const page = await reader.open('crank-overlap/');
  await isKept(page);
  await enter(field(page, 'crank-overlap', 'stroke', 'baseline'), '91.5');
  const other = await reader.arrive('topics/');
  const file = join(folder, 'crank-overlap/index.html');
  writeFileSync(file, readFileSync(file, 'utf8').replace('<title>', '<title>Newer: '));
  await writeWorker(folder, '/');

  await page.reload();
  await says(page.locator('.newer'), 'A newer version of these pages is ready.');
  expect(await page.title()).not.toMatch(/^Newer/);
  // Left alone it stays away, also from whoever goes on reading.
  await page.reload();
  expect(await page.title()).not.toMatch(/^Newer/);
  await page.locator('.newer').getByRole('button', { name: 'Load it' }).click();
  await expect.poll(() => page.title()).toMatch(/^Newer/);
  await alive(page);
  expect(await field(page, 'crank-overlap', 'stroke', 'baseline').inputValue()).toBe('91.5');
  // A tab that did not ask is told, and not changed under its reader's hands.
  await says(other.locator('.newer'), 'A newer version of these pages is ready.');
});

it('the manifest names the site, its first page and a picture that is there', async () => {
  const page = await site.arrive('bobweight/');
  const address = await page.locator('link[rel="manifest"]').getAttribute('href');
  const url = new URL(address ?? '', page.url());
  const answer = await fetch(url);
  expect(answer.headers.get('content-type')).toBe('application/manifest+json');
  const manifest = (await answer.json()) as {
    name: string;
    start_url: string;
    icons: readonly { src: string }[];
  };
  expect(manifest.name).toMatch(/^Throwbook/);
  expect(new URL(manifest.start_url, url).href).toBe(siteAddress());
  expect(manifest.icons.length).toBeGreaterThan(0);
  for (const { src } of manifest.icons) expect((await fetch(new URL(src, url))).status).toBe(200);
});
