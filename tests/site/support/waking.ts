import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import { goToWork } from './site.ts';

/** The two widths that everything on a page is tried at. */
export const phone = { viewport: { width: 390, height: 844 }, hasTouch: true };
export const desk = { viewport: { width: 1280, height: 720 } };

/** Says whether what a page does without a connection has been fetched: it comes last, when the page is idle. */
export const isReadyForLoss = `performance.getEntriesByType('resource').some(
  ({ name, responseEnd }) => /\\/lost\\.[^/]*\\.js$/.test(name) && responseEnd > 0)`;

/** Waits for it. */
export async function readyForLoss(page: Page): Promise<void> {
  await expect.poll(() => page.evaluate(isReadyForLoss)).toBe(true);
}

/** Parts of the page that have not come to life. */
export async function asleep(page: Page): Promise<number> {
  return page
    .locator(':is([data-calculator], [data-figure], [data-notebook-bar]):not([data-alive])')
    .count();
}

/** Opens a page whose parts get no code until the function given with it is called. */
export async function openHeldBack(
  context: BrowserContext,
  path: string,
): Promise<{ page: Page; release: () => void }> {
  const page = await context.newPage();
  let release = (): void => undefined;
  const wait = new Promise<void>((done) => {
    release = done;
  });
  await page.route(/alive\.svelte.*\.js$/, async (route) => {
    await wait;
    await route.continue();
  });
  await page.goto(path);
  await goToWork(page);
  return { page, release };
}

/** How the page stands now, line by line: its parts and prose, what is entered, open, selected and kept. */
function standing(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const words = (element: Element | null): string =>
      (element?.textContent ?? '').replace(/\s+/g, ' ').trim();
    const name = (element: Element | null): string =>
      element === null ? '' : element.id || element.getAttribute('aria-label') || words(element);
    const parts = ':is([data-calculator], [data-figure], [data-notebook-bar])';
    const at = document.activeElement;
    const isText = at instanceof HTMLInputElement && at.type === 'text';
    const fields = [
      ...document.querySelectorAll<HTMLInputElement>(`${parts} :is(input, select, textarea)`),
    ].map((field) => {
      const turned = /^(?:checkbox|radio)$/.test(field.type) ? String(field.checked) : '';
      return `${name(field)} ${words(field.closest('label'))}: ${field.value} ${turned}`;
    });
    const open = [...document.querySelectorAll('details[open] > summary, [aria-expanded="true"]')];
    const selected = isText ? `${String(at.selectionStart)}-${String(at.selectionEnd)}` : '';
    return [
      ...fields,
      ...open.map((each) => `open: ${name(each)}`),
      `focus: ${name(at)} ${selected}`,
      ...[...document.querySelectorAll(`${parts}, main p`)].map(words),
      ...Object.entries(localStorage)
        .map((kept) => kept.join(': '))
        .sort(),
    ];
  });
}

/** In what one page stands otherwise than another, line by line; the names that a browser gave count as one. */
export async function differences(page: Page, wanted: Page): Promise<readonly string[]> {
  const [lines, others] = await Promise.all(
    [page, wanted].map(async (each) =>
      (await standing(each)).map((line) => line.replace(/\bc\d+-/g, 'c-')),
    ),
  );
  const all = Array.from({ length: Math.max(lines?.length ?? 0, others?.length ?? 0) }, (_, i) => [
    lines?.[i] ?? 'nothing',
    others?.[i] ?? 'nothing',
  ]);
  return all.filter(([one, other]) => one !== other).map((pair) => pair.join(' | not: '));
}
