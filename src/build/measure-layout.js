/*
 * What a reader meets on a topic's page as it opens: counted in the page itself, so that the table of `npm run
 * measure` and the test of the budgets count the same.
 */

/** The two screens that a page is counted on. */
export const screens = /** @type {const} */ ({
  phone: { width: 390, height: 844 },
  desk: { width: 1440, height: 900 },
});

/** What a topic's page may hold as it opens; heights in screens. */
export const layoutBudget = /** @type {const} */ ({
  boxes: 12,
  lines: 6,
  elements: 3000,
  sides: 4,
  phone: { result: 2, page: 14 },
  desk: { result: 1, page: 8 },
});

/**
 * The counts of an open topic page, as it stands; to be run in the page. `result` and `field` are how far the first
 * headline result and the first field of the first sheet stand below the sheet's top, where *Work it* leads to.
 *
 * @returns {{ boxes: number, lines: number, elements: number, words: number, result: number, field: number, page: number }}
 */
export function countLayout() {
  /** @param {Element} element */
  const isOpen = (element) => element.checkVisibility();
  const all = [...document.querySelectorAll('*')];
  /** @param {string} selector */
  const open = (selector) => [...document.querySelectorAll(selector)].filter(isOpen);
  const sheet = document.querySelector('section.calculator');
  const top = sheet?.getBoundingClientRect().top ?? 0;
  /** @param {string} selector */
  const below = (selector) => {
    const found = open(selector)[0];
    return found === undefined ? NaN : (found.getBoundingClientRect().top - top) / innerHeight;
  };
  return {
    boxes: open('.sheet [data-name]').length,
    lines: open('.sheet tr[data-output]').length,
    elements: all.length,
    words: (document.body.innerText.match(/\p{L}+/gu) ?? []).length,
    result: below('.sheet tr[data-output] td[data-set]'),
    field: below('.sheet [data-name]'),
    page: document.documentElement.scrollHeight / innerHeight,
  };
}

/**
 * How many A4 sides a page prints on.
 *
 * @param {import('playwright-core').Page} page
 */
export async function printedSides(page) {
  const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true });
  return (pdf.toString('latin1').match(/\/Type\s*\/Page(?!s)/gu) ?? []).length;
}
