import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeIndex } from '../../src/build/search.js';

function page(main: string): string {
  return `<!doctype html><html lang="en-GB"><head><title>x</title></head>
    <body><header>Topics Jobs</header><main id="content">${main}</main><footer>All pages</footer></body></html>`;
}

const site = {
  'index.html': page('<h1>First page</h1><p>Welcome.</p>'),
  '404.html': page('<h1>None</h1><p>Missing.</p>'),
  'search/index.html': page('<h1>Search</h1><p>Other words.</p>'),
  'bobweight/index.html': page(`<h1>Bobweight</h1>
    <p>Clamped to a <a class="term">crankpin</a><span class="term-meaning">A journal.</span>.</p>
    <div class="predict"><p>How much?</p><details class="predict-answer"><p>Half of it.</p></details></div>
    <section class="calculator"><p>Sheet of numbers</p></section>
    <div class="figure-wide"><p>Drawn twice</p></div>
    <details><summary><h2 id="oil">Oil</h2></summary><p>What clings, <math><mi>m</mi></math> of it.</p></details>`),
  'checks/bobweight/index.html': page('<h1>Bobweight: the checks</h1><p>Clamped as well.</p>'),
};

interface Fragment {
  readonly url: string;
  readonly content: string;
  readonly meta: { readonly title: string };
  readonly anchors: readonly { readonly id: string; readonly text: string }[];
}

describe('the index of a site', () => {
  const folder = mkdtempSync(join(tmpdir(), 'throwbook-search-test-'));
  const files: string[] = [];
  const fragments: Fragment[] = [];
  let written = { pages: 0, size: 0 };
  beforeAll(async () => {
    for (const [file, text] of Object.entries(site)) {
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      writeFileSync(join(folder, file), text);
    }
    written = await writeIndex(folder);
    const index = join(folder, 'pagefind');
    for (const name of readdirSync(index, { recursive: true, encoding: 'utf8' })) {
      files.push(name.replaceAll('\\', '/'));
      if (!name.endsWith('.pf_fragment')) continue;
      const text = gunzipSync(readFileSync(join(index, name))).toString();
      fragments.push(JSON.parse(text.slice(text.indexOf('{'))) as Fragment);
    }
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it('knows the pages that are read, by the addresses they have', () => {
    expect(fragments.map(({ url }) => url).sort()).toEqual([
      '/',
      '/bobweight/',
      '/checks/bobweight/',
    ]);
    expect(written.pages).toBe(3);
    expect(written.size).toBeGreaterThan(1000);
  });

  it('knows their text, and none of what stands beside it', () => {
    const topic = fragments.find(({ url }) => url === '/bobweight/');
    expect(topic?.meta.title).toBe('Bobweight');
    expect(topic?.content).toMatch(/Clamped to a crankpin.*How much.*What clings/s);
    expect(topic?.content).not.toMatch(/journal|Sheet|Drawn|Half|Topics|All pages/);
    expect(topic?.anchors.find(({ id }) => id === 'oil')?.text).toBe('Oil');
  });

  it('brings no dialog of its own, and no code for another language', () => {
    expect(files).toContain('pagefind.js');
    expect(files.filter((name) => /ui|highlight|css|unknown/.test(name))).toEqual([]);
    expect(files.filter((name) => name.startsWith('wasm.'))).toHaveLength(1);
  });
});

it('a site without a page cannot be searched, and the build says so', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'throwbook-search-test-'));
  try {
    await expect(writeIndex(folder)).rejects.toThrow(/no page/);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
