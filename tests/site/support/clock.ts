import type { Page } from 'playwright-core';

/**
 * Waits until the page has been idle twice: what its last event put off until it is idle is done by then, and what
 * that put off in turn. Not for a page whose clock is stopped.
 */
export function idle(page: Page): Promise<void> {
  return page.evaluate(() => {
    // The longest that the page's own code lets itself be put off, or a browser that is never idle would never say so.
    const most = { timeout: 2000 };
    return new Promise<void>((done) => {
      requestIdleCallback(() => {
        requestIdleCallback(() => {
          done();
        }, most);
      }, most);
    });
  });
}

/**
 * Waits until every part of the page shows the numbers of now, also what nobody sees and what would follow once the
 * keys are quiet: a page that is about to be printed catches up at once.
 */
export async function followed(page: Page): Promise<void> {
  await idle(page);
  await page.evaluate(() => {
    window.dispatchEvent(new Event('beforeprint'));
  });
}

/**
 * Stops the clock of an open page: from here on its timers run out only when the function given back lets time
 * pass, and then all that are due have run when its promise is fulfilled.
 */
export async function stopClock(page: Page): Promise<(milliseconds: number) => Promise<void>> {
  // Timers that are running already keep to the machine's clock.
  await idle(page);
  await page.clock.install();
  const day = 24 * 60 * 60 * 1000;
  await page.clock.pauseAt(Date.now() + day);
  return (milliseconds) => page.clock.runFor(milliseconds);
}
