import puppeteer from 'puppeteer-core';
import { inject } from 'vitest';
import { startBrowser } from './engine.ts';
import { patience } from './patience.ts';
import { startWebKit } from './webkit.ts';

/** One tab of a profile of its own, in whichever engine. */
export interface Tab {
  goto(address: string): Promise<void>;
  reload(): Promise<void>;
  /** Runs the body of a function in the page and gives what it returns, a promise's value too. */
  run<Result>(body: string): Promise<Result>;
  /** Types over what stands in a field, by keys. */
  type(selector: string, text: string): Promise<void>;
  /** Makes the window this wide, 900 px high. */
  widen(width: number): Promise<void>;
  close(): Promise<void>;
}

/** An engine at work. */
export interface Running {
  /** A tab in a fresh profile: its own storage, its own cache. */
  tab(): Promise<Tab>;
  close(): Promise<void>;
}

/** What is asked of each engine, and of no more than that: all else is told to it as a script. */
export interface Engine {
  readonly name: 'Chromium' | 'Firefox' | 'WebKitGTK';
  start(): Promise<Running>;
}

const height = 900;

/** A script that selects all that stands in a field and has the focus there. */
export function selectAll(selector: string): string {
  return `const box = document.querySelector(${JSON.stringify(selector)}); box.focus(); box.select();`;
}

async function startChromium(): Promise<Running> {
  const browser = await startBrowser();
  return {
    async tab() {
      const context = await browser.newContext();
      const page = await context.newPage();
      page.setDefaultTimeout(patience);
      return {
        goto: async (address) => void (await page.goto(address)),
        reload: async () => void (await page.reload()),
        run: <Result>(body: string) => page.evaluate<Result>(`(async () => {${body}})()`),
        async type(selector, text) {
          await page.evaluate(`{${selectAll(selector)}}`);
          await page.keyboard.type(text);
        },
        widen: (width) => page.setViewportSize({ width, height }),
        close: () => context.close(),
      };
    },
    close: () => browser.close(),
  };
}

async function startFirefox(executablePath: string): Promise<Running> {
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath,
    headless: true,
    timeout: patience,
  });
  return {
    async tab() {
      const context = await browser.createBrowserContext();
      const page = await context.newPage();
      page.setDefaultTimeout(patience);
      return {
        goto: async (address) => void (await page.goto(address)),
        reload: async () => void (await page.reload()),
        run: async <Result>(body: string) =>
          (await page.evaluate(`(async () => {${body}})()`)) as Result,
        async type(selector, text) {
          await page.evaluate(`{${selectAll(selector)}}`);
          await page.keyboard.type(text);
        },
        widen: (width) => page.setViewport({ width, height }),
        close: () => context.close(),
      };
    },
    close: () => browser.close(),
  };
}

/** The engines of this machine; which are missing is said as the tests begin. */
export function enginesHere(): readonly Engine[] {
  const firefox = inject('firefox');
  const webkit = inject('webkit');
  return [
    { name: 'Chromium', start: startChromium },
    ...(firefox === undefined
      ? []
      : [{ name: 'Firefox' as const, start: () => startFirefox(firefox) }]),
    ...(webkit === undefined
      ? []
      : [{ name: 'WebKitGTK' as const, start: () => startWebKit(webkit) }]),
  ];
}
