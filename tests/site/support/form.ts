import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

export type SetId = 'baseline' | 'candidate';

/** The field of one quantity. */
export function field(page: Page, calculator: string, name: string, set: SetId): Locator {
  return page.locator(`[id="${calculator}-${name}-${set}"]`);
}

/** What the page says of a field, below it. */
export function note(page: Page, calculator: string, name: string, set: SetId): Locator {
  return page.locator(`[id="${calculator}-${name}-${set}-note"]`);
}

/** The cell of one result. */
export function result(page: Page, calculator: string, name: string, set: SetId): Locator {
  return page.locator(
    `[data-calculator="${calculator}"] tr[data-output="${name}"] td[data-set="${set}"]`,
  );
}

/** Opens every fold that a part of the page stands in. */
export async function openFolds(part: Locator): Promise<void> {
  // The rows of a fold are made when it is first opened.
  if ((await part.count()) === 0)
    await part.page().evaluate(() => {
      for (const fold of document.querySelectorAll<HTMLDetailsElement>('details.spare'))
        fold.open = true;
    });
  await part.evaluate((node) => {
    for (
      let fold = node.closest('details');
      fold !== null;
      fold = fold.parentElement?.closest('details') ?? null
    )
      fold.open = true;
  });
}

/** The unit of a row, which stands once for both sets. */
export function unitOf(box: Locator): Locator {
  return box.locator('xpath=ancestor::*[contains(@class, "row")][1]').locator('select.row-unit');
}

/** Opens the results and inputs that a calculator keeps folded. */
export async function unfold(page: Page, calculator: string): Promise<void> {
  const folds = page.locator(
    `[data-calculator="${calculator}"] :is(.spare, .more-results) > summary`,
  );
  for (const fold of await folds.all()) await fold.click();
}

/** One of the folded tools below a calculator, opened and fetched. */
export async function openTool(page: Page, calculator: string, words: string): Promise<Locator> {
  const tool = page
    .locator(`[data-calculator="${calculator}"] .tool`)
    .filter({ has: page.getByText(words, { exact: true }) });
  await tool.locator('summary').click();
  return tool;
}

/** Types over what stands in a field, key by key. */
export async function type(box: Locator, text: string): Promise<void> {
  await openFolds(box);
  await box.focus();
  await box.press('ControlOrMeta+a');
  if (text === '') await box.press('Backspace');
  else await box.pressSequentially(text);
}

/** Puts a whole text in place of what stands in a field, as a paste would: nothing is read on the way. */
export async function put(box: Locator, text: string): Promise<void> {
  await openFolds(box);
  await box.focus();
  await box.press('ControlOrMeta+a');
  if (text === '') await box.press('Backspace');
  else await box.page().keyboard.insertText(text);
  await box.blur();
}

/** Types and leaves the field, so that the page says what it has to say. */
export async function enter(box: Locator, text: string): Promise<void> {
  await type(box, text);
  await box.blur();
}

/** The text as a reader sees it, each run of spaces as one. */
export async function seen(part: Locator): Promise<string> {
  return (await part.innerText()).replace(/\s+/g, ' ').trim();
}

/** Waits until the text of a part, spaces as one, holds or matches what is wanted. */
export async function says(part: Locator, wanted: string | RegExp): Promise<void> {
  const text = expect.poll(() => seen(part));
  if (typeof wanted === 'string') await text.toContain(wanted);
  else await text.toMatch(wanted);
}

/** A printed number with its ± and unit. */
export interface Printed {
  readonly value: number;
  readonly plusMinus?: number;
  readonly unit: string;
  /** Half of one unit of the last digit printed. */
  readonly half: number;
}

/** Zeros that a whole number may have been rounded to: 35 300 stands for a number between 35 250 and 35 350. */
function roundedZeros(whole: string): number {
  const zeros = /0*$/.exec(whole)?.[0].length ?? 0;
  return Math.max(0, Math.min(zeros, whole.replace('-', '').length - 1));
}

/** Reads a number as the site prints it: `1685.2 ± 2.3 g`, `43 210 N`, `−0.16 %`. */
export function printed(text: string): Printed {
  const plain = text.replace(/\u2212/g, '-').replace(/(?<=\d)[\u202f\u00a0 ](?=\d{3}(?!\d))/g, '');
  const m = /^\s*([+-]?\d+(?:\.(\d+))?)(?:\s*±\s*(\d+(?:\.\d+)?))?\s*(.*?)\s*$/.exec(plain);
  if (m === null) throw new Error(`“${text}” is not a printed number.`);
  const [, value = '', decimals = '', spread, unit = ''] = m;
  return {
    value: Number(value),
    ...(spread === undefined ? {} : { plusMinus: Number(spread) }),
    unit: unit.replace(/\s+/g, ' '),
    half: 0.5 * 10 ** (decimals === '' ? roundedZeros(value) : -decimals.length),
  };
}

/** Waits until a result is printed as the number wanted, and its ± if one is, to the last digit, in the unit. */
export async function shows(
  cell: Locator,
  wanted: number,
  unit: string,
  plusMinus?: number,
): Promise<void> {
  await openFolds(cell);
  await expect
    .poll(
      async () => {
        const number = printed(await cell.innerText());
        const close =
          Math.abs(number.value - wanted) <= 1.01 * number.half &&
          (plusMinus === undefined ||
            Math.abs((number.plusMinus ?? 0) - plusMinus) <= 1.01 * number.half);
        return close && number.unit === unit ? 'as wanted' : await seen(cell);
      },
      { message: `${String(wanted)} ± ${String(plusMinus)} ${unit}` },
    )
    .toBe('as wanted');
}

/** Every field of a calculator as it stands, with the unit beside it. */
export async function texts(page: Page, calculator: string): Promise<Record<string, string>> {
  for (const fold of await page.locator(`[data-calculator="${calculator}"] .spare`).all())
    await fold.evaluate((node) => node.setAttribute('open', ''));
  // The rows of a fold are made a moment after it opens.
  await expect
    .poll(() => page.locator(`[data-calculator="${calculator}"] .spare > .in-short`).count())
    .toBe(0);
  return page
    .locator(`[data-calculator="${calculator}"]`)
    .evaluate((island) =>
      Object.fromEntries(
        [...island.querySelectorAll<HTMLInputElement>('input[data-name]')].map((box) => [
          `${box.dataset['name'] ?? ''} ${box.dataset['set'] ?? ''}`,
          `${box.value} | ${box.closest('.row')?.querySelector<HTMLSelectElement>('select.row-unit')?.value ?? ''}`,
        ]),
      ),
    );
}

/** Every result of a calculator as printed, by name and set. */
export async function results(page: Page, calculator: string): Promise<Record<string, string>> {
  return page
    .locator(`[data-calculator="${calculator}"]`)
    .evaluate((island) =>
      Object.fromEntries(
        [...island.querySelectorAll<HTMLElement>('tr[data-output] td[data-set]')].map((cell) => [
          `${cell.closest('tr')?.dataset['output'] ?? ''} ${cell.dataset['set'] ?? ''}`,
          (cell.textContent ?? '').replace(/\s+/g, ' ').trim(),
        ]),
      ),
    );
}

/** Everything the reader's notebook holds in this browser. */
export function stored(page: Page): Promise<Record<string, string>> {
  return page.evaluate(() =>
    Object.fromEntries(
      Object.entries(localStorage).filter(([key]) => key.startsWith('throwbook/1/')),
    ),
  );
}
