import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest';
import { startBrowser } from './engine.ts';
import { patience } from './patience.ts';

/** One reader: a browser profile of its own, with its own storage. */
export interface Reader {
  readonly context: BrowserContext;
  /** Opens a page of the site; the path is relative to its root: `bobweight/`. Waits until it is alive. */
  open(path: string): Promise<Page>;
}

/** Where the site is served; ends in a slash. */
export function siteAddress(): string {
  return inject('address');
}

/**
 * One browser for the tests of a file, and a fresh profile for each reader. After each test all profiles are
 * closed, and the test fails if a page logged an error, threw, broke its content policy or asked anyone but
 * the site for anything.
 */
export function useSite(): {
  reader(how?: BrowserContextOptions & { readonly before?: () => void }): Promise<Reader>;
  /** The page of a new reader. */
  open(path: string, how?: BrowserContextOptions & { readonly before?: () => void }): Promise<Page>;
  /** Takes complaints out that the test itself called for. */
  forgive(what: RegExp): void;
} {
  let browser: Browser | undefined;
  const contexts: BrowserContext[] = [];
  const troubles: string[] = [];

  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterEach(async () => {
    await Promise.all(contexts.splice(0).map((context) => context.close()));
    expect(troubles.splice(0), 'what the pages complained of').toEqual([]);
  });
  afterAll(async () => {
    await browser?.close();
  });

  async function reader(
    how: BrowserContextOptions & { readonly before?: () => void } = {},
  ): Promise<Reader> {
    if (browser === undefined) throw new Error('The browser is not running.');
    const { before, ...rest } = how;
    const context = await browser.newContext({ baseURL: siteAddress(), ...rest });
    contexts.push(context);
    context.setDefaultTimeout(patience);
    watch(context, troubles);
    // A policy that is broken gives no other sign.
    await context.addInitScript(() => {
      document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
        console.error(`Content policy broken: ${violatedDirective}, ${blockedURI}`);
      });
    });
    if (before !== undefined) await context.addInitScript(before);
    return {
      context,
      async open(path) {
        const page = await context.newPage();
        await page.goto(path);
        if (rest.javaScriptEnabled !== false) await alive(page);
        return page;
      },
    };
  }
  return {
    reader,
    async open(path, how) {
      return (await reader(how)).open(path);
    },
    forgive(what) {
      const rest = troubles.filter((trouble) => !what.test(trouble));
      troubles.splice(0, troubles.length, ...rest);
    },
  };
}

function watch(context: BrowserContext, troubles: string[]): void {
  context.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning')
      troubles.push(`${message.text()} (${message.location().url})`);
  });
  context.on('weberror', (error) => {
    troubles.push(String(error.error()));
  });
  context.on('request', (request) => {
    const url = request.url();
    if (!/^(blob|data|about):/.test(url) && !url.startsWith(siteAddress()))
      troubles.push(`Asked another origin: ${url}`);
  });
}

/** Moves the pointer over every calculator, figure and bar of the page, and waits until each answers. */
export async function alive(page: Page): Promise<void> {
  await touchAll(page);
  await page.waitForFunction(
    () =>
      [
        ...document.querySelectorAll(
          '[data-calculator], [data-figure], [data-notebook-bar], [data-home-try], [data-card]',
        ),
      ].every((island) => island.hasAttribute('data-alive') || island.matches('[data-static]')) &&
      !document.documentElement.hasAttribute('data-pending'),
  );
}

/** Says to every part of the page that a pointer is over it: what a part needs is fetched then. */
export async function touchAll(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const part of document.querySelectorAll(
      '[data-calculator], [data-figure], [data-notebook-bar]',
    ))
      part.dispatchEvent(new PointerEvent('pointerover', { bubbles: true }));
  });
}
