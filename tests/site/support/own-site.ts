import type { Page } from 'playwright-core';
import { afterEach } from 'vitest';
import { serve } from '../../../src/build/serve.js';
import type { Reader, useSite } from './site.ts';

const cleaning: (() => unknown)[] = [];
afterEach(async () => {
  for (const clean of cleaning.splice(0)) await clean();
});

/** What is to be undone after the test. */
export function afterwards(clean: () => unknown): void {
  cleaning.push(clean);
}

/** A reader of the site on a server of its own, which the test can change or stop; a worker may answer. */
export async function ownSite(
  site: ReturnType<typeof useSite>,
  folder: string,
): Promise<{ readonly reader: Reader; readonly server: Awaited<ReturnType<typeof serve>> }> {
  const server = await serve(folder, 0);
  afterwards(server.close);
  const { origin } = new URL(server.address);
  // It is the site, though at another address than the other tests use.
  site.forgive(new RegExp(`^Asked another origin: ${origin}/`));
  const reader = await site.reader({ baseURL: server.address, serviceWorkers: 'allow' });
  return { reader, server };
}

/** Waits until the worker answers for the page and has all its files. */
export async function isKept(page: Page): Promise<void> {
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}
