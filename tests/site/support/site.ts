import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest';
import { startBrowser } from './engine.ts';
import { patience } from './patience.ts';

/** What a reader's browser is like; `before` runs in each page ahead of the page's own code. */
type ReaderOptions = BrowserContextOptions & { readonly before?: () => void };

/** One reader: a browser profile of its own, with its own storage. */
export interface Reader {
  readonly context: BrowserContext;
  /** Opens a page of the site and touches nothing; the path is relative to the site's root: `bobweight/`. */
  arrive(path: string): Promise<Page>;
  /** The same, but brings every part of the page to life and waits until all are. */
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
  reader(how?: ReaderOptions): Promise<Reader>;
  /** The page of a new reader, as that reader's `arrive` and `open` give it. */
  arrive(path: string, how?: ReaderOptions): Promise<Page>;
  open(path: string, how?: ReaderOptions): Promise<Page>;
  /** Lets complaints of this test pass that it called for itself, whenever they come. */
  forgive(what: RegExp): void;
} {
  let browser: Browser | undefined;
  const contexts: BrowserContext[] = [];
  const troubles: string[] = [];
  const forgiven: RegExp[] = [];

  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterEach(async () => {
    await Promise.all(contexts.splice(0).map((context) => context.close()));
    const pardons = forgiven.splice(0);
    const rest = troubles
      .splice(0)
      .filter((trouble) => !pardons.some((what) => what.test(trouble)));
    expect(rest, 'what the pages complained of').toEqual([]);
  });
  afterAll(async () => {
    await browser?.close();
  });

  async function reader(how: ReaderOptions = {}): Promise<Reader> {
    if (browser === undefined) throw new Error('The browser is not running.');
    const { before, ...rest } = how;
    // What a test holds back or changes on its way must come from the server; only tests of the copy on the device let
    // a worker answer.
    const context = await browser.newContext({
      baseURL: siteAddress(),
      serviceWorkers: 'block',
      ...rest,
    });
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
    async function arrive(path: string): Promise<Page> {
      const page = await context.newPage();
      await page.goto(path);
      return page;
    }
    async function open(path: string): Promise<Page> {
      const page = await arrive(path);
      if (rest.javaScriptEnabled !== false) await alive(page);
      return page;
    }
    return { context, arrive, open };
  }
  return {
    reader,
    async arrive(path, how) {
      return (await reader(how)).arrive(path);
    },
    async open(path, how) {
      return (await reader(how)).open(path);
    },
    forgive(what) {
      forgiven.push(what);
    },
  };
}

function watch(context: BrowserContext, troubles: string[]): void {
  context.on('console', (message) => {
    const isTrouble = message.type() === 'error' || message.type() === 'warning';
    if (isTrouble && message.text() !== 'Service Worker registration blocked by Playwright')
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

/** Touches a sheet, as a reader does who passes over the question and goes to work: its figures are there then. */
export async function goToWork(page: Page): Promise<void> {
  const sheet = page.locator('.calculator').first();
  if ((await sheet.count()) > 0) await sheet.dispatchEvent('pointerdown');
}

/** Moves the pointer over every calculator, figure, bar and table of parts of the page, and waits until each answers. */
export async function alive(page: Page): Promise<void> {
  await touchAll(page);
  await goToWork(page);
  await page.waitForFunction(
    () =>
      [
        ...document.querySelectorAll(
          '[data-calculator], [data-figure], [data-notebook-bar], [data-parts], [data-home-try], [data-card]',
        ),
      ].every((island) => island.hasAttribute('data-alive') || island.matches('[data-static]')) &&
      !document.documentElement.hasAttribute('data-pending'),
  );
}

/** Says to every part of the page that a pointer is over it: what a part needs is fetched then. */
export async function touchAll(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const part of document.querySelectorAll(
      '[data-calculator], [data-figure], [data-notebook-bar], [data-parts]',
    ))
      part.dispatchEvent(new PointerEvent('pointermove', { bubbles: true }));
  });
}
