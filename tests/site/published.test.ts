import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { runAll, summarise } from '../../src/checks/coverage.ts';
import { loadChecks } from '../../src/checks/files.ts';
import { known } from '../../src/checks/known.ts';
import { countKnown } from '../../src/checks/proof.ts';
import { faults, type Json, type Schema } from '../schema.ts';
import { builtPages, topicPages } from './support/build.ts';
import { siteAddress, useSite } from './support/site.ts';

const site = useSite();
const total = summarise(runAll(loadChecks(), calculators));

function htmlOf(path: string): string {
  return builtPages().find((page) => page.path === path)?.html ?? '';
}
function built(file: string): string {
  return readFileSync(join(inject('folder'), file), 'utf8');
}

describe('the files of data', () => {
  const names = [...htmlOf('data/').matchAll(/href="\/data\/([^"]+)\.csv"/g)].map(
    ([, name = '']) => name,
  );

  it('are all there, and each is what its schema says', () => {
    expect(names).toContain('checks');
    expect(names).toContain('tables/tolerances');
    expect(names.length).toBeGreaterThanOrEqual(10);
    for (const name of names) {
      const data = JSON.parse(built(`data/${name}.json`)) as { $schema: string };
      const schema = new URL(data.$schema, `https://host/data/${name}.json`).pathname.slice(1);
      expect(faults(data as unknown as Json, JSON.parse(built(schema)) as Schema), name).toEqual(
        [],
      );
      expect(existsSync(join(inject('folder'), `data/${name}.csv`))).toBe(true);
    }
  });

  it('can be fetched from any site, by their kind', async () => {
    for (const [file, kind] of [
      ['checks.json', 'application/json'],
      ['checks.csv', 'text/csv'],
    ] as const) {
      const { headers } = await fetch(`${siteAddress()}data/${file}`);
      expect(headers.get('content-type')).toContain(kind);
      expect(headers.get('access-control-allow-origin')).toBe('*');
    }
  });

  it('hold as many checks as the page of checks says', () => {
    const { rows } = JSON.parse(built('data/checks.json')) as { rows: readonly unknown[] };
    expect(rows).toHaveLength(total.values);
    expect(htmlOf('checks/').replace(/\s+/g, ' ')).toContain(
      `${total.cases} cases with ${total.values} values`,
    );
  });
});

describe('how this is checked', () => {
  const html = htmlOf('how-checked/').replace(/\s+/g, ' ');

  it('counts the results by what they stand on, as they are', () => {
    const counts = [
      ...html.matchAll(/<tr data-known="([^"]+)">.*?<td data-label="Results">(\d+)<\/td>/g),
    ].map(([, way, count]) => [way, Number(count)]);
    expect(counts).toEqual(countKnown(known));
    expect(counts.reduce((sum, [, count]) => sum + Number(count), 0)).toBe(known.length);
    expect(html).toContain(`There are ${known.length} results`);
    expect(html).toContain(`${total.cases} cases with ${total.values} values`);
  });

  it('takes at most two screens a section', async () => {
    const page = await site.arrive('how-checked/', { viewport: { width: 1280, height: 900 } });
    const tall = await page.evaluate(() => {
      const tops = [...document.querySelectorAll('h1, h2, footer')].map(
        (each) => each.getBoundingClientRect().top,
      );
      return tops.slice(1).map((top, i) => (top - (tops[i] ?? 0)) / innerHeight);
    });
    expect(tall.length).toBeGreaterThan(5);
    expect(Math.max(...tall)).toBeLessThan(2);
  });
});

describe('a citation', () => {
  it('stands on every topic, with version and day, and leads to its other forms', () => {
    for (const { path, html } of topicPages().filter((page) => !page.path.includes('working'))) {
      expect(html, path).toMatch(
        /Throwbook, “[^”]+”, version \d\S+, calculations \d+, \d+ \w+ \d{4}/,
      );
      expect(html, path).toContain(`href="/cite/#${path.replace('/', '')}"`);
    }
  });

  it('names the address of the page, wherever the site is served, and is copied', async () => {
    const page = await site.arrive('cite/#bobweight', {
      permissions: ['clipboard-write', 'clipboard-read'],
    });
    const address = `${siteAddress()}bobweight/`;
    await expect.poll(() => page.locator('#bobweight-text').textContent()).toContain(address);
    expect(await page.locator('#bobweight').getAttribute('open')).not.toBeNull();
    await page.locator('#bobweight').getByRole('button', { name: 'CSL-JSON' }).click();
    await page.locator('#bobweight [role=status]', { hasText: 'Copied.' }).waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(JSON.parse(copied)).toMatchObject([{ URL: address, type: 'webpage' }]);
  });
});

it('the feed of changes is well formed, is named in the head of its page, and names each change', async () => {
  const page = await site.arrive('changes/');
  const address = page.locator('link[type="application/atom+xml"]');
  expect(await address.getAttribute('href')).toBe('/changes.xml');
  const entries = await page.evaluate(async (text) => {
    const feed = new DOMParser().parseFromString(text, 'application/xml');
    if (feed.querySelector('parsererror') !== null) return 'not well formed';
    return [...feed.querySelectorAll('entry > link')].map((link) => link.getAttribute('href'));
  }, built('changes.xml'));
  const ids = await page.locator('main section').evaluateAll((all) => all.map(({ id }) => id));
  expect(entries).toEqual(ids.map((id) => `changes/#${id}`));
  expect(ids.length).toBeGreaterThan(0);
});
