import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, it } from 'vitest';
import { writeWorker } from '../../src/build/offline.js';

/** The worker of a site that holds these files, served under `base`. */
async function workerOf(files: Readonly<Record<string, string>>, base: string): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'throwbook-offline-test-'));
  try {
    for (const [file, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      writeFileSync(join(folder, file), text);
    }
    const { count, size } = await writeWorker(folder, base);
    expect(count).toBeLessThanOrEqual(Object.keys(files).length);
    expect(size).toBeGreaterThan(0);
    return readFileSync(join(folder, 'offline.js'), 'utf8');
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The list of files in a worker's code: address and revision of each. */
function kept(worker: string): ReadonlyMap<string, string | null> {
  const list = /\[\{"revision".*?\}\]/.exec(worker)?.[0] ?? '[]';
  return new Map(
    (JSON.parse(list) as { url: string; revision: string | null }[]).map(({ url, revision }) => [
      url,
      revision,
    ]),
  );
}

const site = {
  'index.html': 'first',
  '404.html': 'none',
  'bobweight/index.html': 'page',
  '_astro/wake.a1b2c3d4.js': 'code',
  'pagefind/index/en-gb_a1b2c3d.pf_index': 'words',
  'pagefind/wasm.en-gb.pagefind': 'what finds them',
  'data/index.html': 'what the files say',
  'data/checks.json': 'for others',
  'data/schema/tables/tolerances.json': 'for others',
  'embed/index.html': 'the line',
  'embed/bobweight/index.html': 'for others',
  'fonts/LICENSE.txt': 'words nobody needs offline',
};

it.each([
  ['/', ''],
  ['/reference/', 'reference/'],
])('served under %s, all that a reader needs is kept by its address there', async (base, path) => {
  const list = kept(await workerOf(site, base));
  expect([...list.keys()].sort()).toEqual(
    [
      '',
      '404.html',
      '_astro/wake.a1b2c3d4.js',
      'bobweight/',
      'data/',
      'embed/',
      'pagefind/index/en-gb_a1b2c3d.pf_index',
      'pagefind/wasm.en-gb.pagefind',
    ].map((url) => `/${path}${url}`),
  );
  // A name that tells its content needs no revision beside it; a page's does.
  expect(list.get(`/${path}_astro/wake.a1b2c3d4.js`)).toBeNull();
  expect(list.get(`/${path}pagefind/index/en-gb_a1b2c3d.pf_index`)).toBeNull();
  for (const url of ['bobweight/', 'pagefind/wasm.en-gb.pagefind'])
    expect(list.get(`/${path}${url}`)).toMatch(/^[0-9a-f]{32}$/);
});

it('a page that changes makes another worker, or nobody would hear of it', async () => {
  const before = await workerOf(site, '/');
  expect(await workerOf(site, '/')).toBe(before);
  expect(await workerOf({ ...site, 'bobweight/index.html': 'other' }, '/')).not.toBe(before);
});
