import puppeteer from 'puppeteer-core';
import { inject } from 'vitest';
import { startBrowser } from './engine.ts';
import { patience } from './patience.ts';
import { selectAll, type Engine, type Running } from './tab.ts';
import { startWebKit } from './webkit.ts';

const height = 900;

async function startChromium(): Promise<Running> {
  const browser = await startBrowser();
  return {
    async tab() {
      const context = await browser.newContext();
      const page = await context.newPage();
      page.setDefaultTimeout(patience);
      return {
        goto: async (address) => void (await page.goto(address)),
        async reload() {
          // Firefox gives a loading up where the page's own code has begun another; the second one comes to its end.
          await page.reload().catch(() => page.reload());
        },
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
