import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { topicPages } from './support/build.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** The least size of text [px] in a drawing, by the width of the page: a phone in the hand, a desk, a projector. */
const least = [
  [360, 11],
  [390, 12],
  [820, 12],
  [1280, 18],
  [1920, 26],
] as const;

/** What is wrong with the words of the drawings that can be seen: too small, cut, or one over another. */
function faults(page: Page, size: number): Promise<readonly string[]> {
  return page.evaluate((wanted) => {
    const drawings = [...document.querySelectorAll<SVGSVGElement>('.figure-island svg[role=img]')];
    return drawings
      .filter((svg) => svg.checkVisibility())
      .flatMap((svg) => {
        const name = svg.closest('.figure-island')?.getAttribute('data-figure') ?? 'wide';
        const frame = svg.getBoundingClientRect();
        const words = [...svg.querySelectorAll('text')].map((text) => {
          const matrix = text.getScreenCTM() ?? new DOMMatrix();
          const scale = Math.hypot(matrix.a, matrix.b);
          return {
            said: (text.textContent ?? '').trim(),
            box: text.getBoundingClientRect(),
            size: parseFloat(getComputedStyle(text).fontSize) * scale,
          };
        });
        const small = words.filter((word) => word.size < wanted - 0.05);
        const cut = words.filter(
          ({ box }) =>
            box.left < frame.left - 2 ||
            box.right > frame.right + 2 ||
            box.top < frame.top - 2 ||
            box.bottom > frame.bottom + 2,
        );
        const over = words.flatMap((one, i) =>
          words.slice(i + 1).flatMap((other) => {
            const across =
              Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
            const down =
              Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
            // A line of text is higher than its letters.
            const most = 0.35 * Math.min(one.box.height, other.box.height);
            return across > 1 && down > most ? [`${one.said} | ${other.said}`] : [];
          }),
        );
        return [
          ...small.map((word) => `${name}: “${word.said}” has ${word.size.toFixed(1)} px`),
          ...cut.map((word) => `${name}: “${word.said}” is cut`),
          ...over.map((pair) => `${name}: “${pair}” overlap`),
        ];
      });
  }, size);
}

const pages = topicPages()
  .filter(({ html }) => html.includes('data-figure='))
  .map(({ path }) => path);

it('there are pages with figures', () => {
  expect(pages.length).toBeGreaterThan(9);
});

it.each(pages)('%s has words in its figures that can be read, whole and apart', async (path) => {
  const unfold = (page: Page): Promise<void> =>
    page.evaluate(() => {
      for (const fold of document.querySelectorAll('details.section'))
        fold.setAttribute('open', '');
    });
  for (const open of [site.arrive, site.open]) {
    const page = await open(path);
    await unfold(page);
    for (const [width, size] of least) {
      await page.setViewportSize({ width, height: 900 });
      // A drawing that is alive is measured and drawn anew with the next frame.
      await expect
        .poll(() => faults(page, size), { message: `at ${String(width)} px` })
        .toEqual([]);
    }
  }
});
