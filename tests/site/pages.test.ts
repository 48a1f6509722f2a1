import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { allowed, unwanted } from '../content/unwanted-words.ts';
import { builtPages, topicPages } from './support/build.ts';
import { siteAddress, useSite } from './support/site.ts';

const site = useSite();
const pages = builtPages();

it('the build holds every page that is promised', () => {
  const paths = pages.map(({ path }) => path);
  for (const path of [
    '',
    'topics/',
    'piston-motion/',
    'rod-weighing/',
    'bobweight/',
    'reversal-load/',
    'balance-card/',
    'jobs/',
    'parts/',
    'checks/',
    'checks/bobweight/',
    'sources/',
    'symbols/',
    'units/',
    'glossary/',
    'cautions/',
    '404.html',
  ])
    expect(paths).toContain(path);
});

describe('the content policy', () => {
  it.each(pages.map(({ file, html }) => [file, html]))('%s forbids inline code', (_, html) => {
    const policy =
      /<meta http-equiv="content-security-policy" content="([^"]*)"/i.exec(html)?.[1] ?? '';
    const directives = new Map(
      policy.split(';').map((part) => {
        const [name = '', ...values] = part.trim().split(/\s+/);
        return [name, values.join(' ')];
      }),
    );
    expect(directives.get('default-src')).toBe("'none'");
    const scripts = directives.get('script-src') ?? '';
    expect(scripts).toContain("'self'");
    expect(scripts).not.toMatch(/unsafe-inline|unsafe-eval|\*|https?:/);
    expect(directives.get('style-src') ?? '').not.toMatch(/unsafe-inline/);
    // What stands before the policy is not bound by it: nothing but the site's own files may.
    const before = html.slice(0, html.search(/<meta http-equiv="content-security-policy"/i));
    for (const [tag] of before.matchAll(/<script\b[^>]*>|<style\b[^>]*>/g))
      expect(tag).toMatch(/^<script src="\/(?!\/)[^"]*">$/);
    expect(html).not.toMatch(/\son[a-z]+="|\sstyle="|javascript:/);
  });
});

describe('links', () => {
  const ids = new Map(
    pages.map(({ path, html }) => [
      path,
      new Set([...html.matchAll(/\s(?:id|name)="([^"]+)"/g)].map(([, id]) => id)),
    ]),
  );
  const base = new URL(siteAddress());

  /** Why an address of a page leads nowhere; undefined when it leads somewhere. */
  function fault(from: string, link: string): string | undefined {
    const url = new URL(link.replaceAll('&amp;', '&'), new URL(from, base));
    if (url.origin !== base.origin) return undefined;
    const path = decodeURIComponent(url.pathname.slice(base.pathname.length));
    const file = join(inject('folder'), path);
    const page = path === '' || path.endsWith('/') ? join(file, 'index.html') : file;
    if (!existsSync(page) || !statSync(page).isFile()) return `${from || '/'} → ${link}`;
    const fragment = decodeURIComponent(url.hash.slice(1));
    // A fragment with an equals sign carries numbers; it names no place of the page.
    if (fragment === '' || fragment.includes('=')) return undefined;
    return ids.get(path)?.has(fragment) === true
      ? undefined
      : `${from || '/'} → ${link}: no such place`;
  }

  it('all lead to a file, and to a place in it', () => {
    const found = pages.flatMap(({ path, html }) =>
      [...html.matchAll(/\s(?:href|src)="([^"]*)"/g)].map(([, link = '']) => ({ path, link })),
    );
    expect(found.length).toBeGreaterThan(200);
    expect(found.filter(({ link }) => link === '')).toEqual([]);
    const broken = found.flatMap(({ path, link }) => fault(path, link) ?? []);
    expect([...new Set(broken)]).toEqual([]);
  });

  it('of the walker itself are judged', () => {
    expect(fault('', 'no-such-page/')).toBeDefined();
    expect(fault('bobweight/', '#no-such-place')).toBeDefined();
    expect(fault('bobweight/', '../piston-motion/')).toBeUndefined();
  });

  it('no page is an island: each can be reached from the first', () => {
    const reached = new Set<string>();
    const waiting = [''];
    for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
      if (reached.has(path)) continue;
      reached.add(path);
      const html = pages.find((page) => page.path === path)?.html ?? '';
      for (const [, link = ''] of html.matchAll(/<a\b[^>]*?\shref="([^"]*)"/g)) {
        const url = new URL(link.replaceAll('&amp;', '&'), new URL(path, base));
        if (url.origin === base.origin) waiting.push(url.pathname.slice(base.pathname.length));
      }
    }
    const missing = pages.filter(({ path }) => path !== '404.html' && !reached.has(path));
    expect(missing.map(({ path }) => path)).toEqual([]);
  });
});

describe('the head and the formulas', () => {
  it.each(pages.map(({ file, html }) => [file, html]))(
    '%s has its own title and words',
    (_, html) => {
      expect(html).toMatch(/<html lang="en-GB"/);
      expect(/<title>([^<]+)<\/title>/.exec(html)?.[1]?.length).toBeGreaterThan(5);
      expect(html.match(/<h1\b/g)).toHaveLength(1);
      expect(/<meta name="description" content="([^"]+)"/.exec(html)?.[1]?.length).toBeGreaterThan(
        20,
      );
    },
  );

  it('no two pages share a title', () => {
    const titles = pages.map(({ html }) => /<title>([^<]+)<\/title>/.exec(html)?.[1]);
    expect(new Set(titles).size).toBe(titles.length);
  });

  it.each(
    topicPages().map(({ path }) => [
      path,
      builtPages().find((each) => each.path === `${path}working/`)?.html ?? '',
    ]),
  )('%s shows its formulas on the page of its working', (_, html) => {
    expect(html.match(/<math\b/g)?.length ?? 0).toBeGreaterThan(5);
    expect(html).not.toMatch(/class="katex-error"|\$\$|\\frac|\\lambda/);
  });
});

/** The words of a page as it is built: without code, lists of units to pick from, and marks. */
function wordsOf(html: string): string {
  return html
    .replace(/<(script|style|option)\b[^>]*>[\s\S]*?<\/\1>/g, '')
    .replace(/<[^>]+>/g, '\n')
    .replace(/&nbsp;|\u00a0/g, ' ');
}

// The table of units lists every spelling that a field reads.
it.each(pages.filter(({ path }) => path !== 'units/').map(({ path, html }) => [path, html]))(
  '%s says it in the words of the trade',
  (_, html) => {
    const lines = wordsOf(html).split('\n');
    for (const [word, instead] of unwanted)
      expect
        .soft(
          lines.filter((line) => word.test(line) && !allowed.some((place) => place.test(line))),
          instead,
        )
        .toEqual([]);
  },
);

it('the address of no page is answered in words, with a way back', async () => {
  const answer = await fetch(`${siteAddress()}no-such-page/`);
  expect(answer.status).toBe(404);
  const page = await site.arrive('no-such-page/');
  await page
    .getByRole('link', { name: /topics/i })
    .first()
    .waitFor();
  // The browser itself logs the missing page; that is no fault of it.
  site.forgive(/404/);
});
