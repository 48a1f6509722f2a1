import type { Locator, Page } from 'playwright-core';
import { field, note, stored, unitOf } from './form.ts';

/** What a reader does with mouse and keys, and where it shows. */
export interface Story {
  readonly path: string;
  readonly deeds: (page: Page) => Promise<void>;
  readonly at: (page: Page) => Promise<string | null>;
  readonly shows: string | RegExp;
}

/** The calculator that most of it is done to, and its page. */
export const weighing = 'rod-weighing';
/** One with nothing but numbers. */
const overlap = 'crank-overlap';
/** The first number of its form. */
export const mass = (page: Page): Locator => field(page, weighing, 'rodMass', 'baseline');
/** Steps it so many times: by the buttons that come with the focus on touch, else by keys. */
export async function step(page: Page, way: 'More' | 'Less', times: number): Promise<void> {
  await mass(page).focus();
  const button = mass(page)
    .locator('..')
    .getByRole('button', { name: `${way}:` });
  if (await button.isVisible()) {
    await click(button, times);
    // From the button back to the number, the caret where it can be told.
    await mass(page).focus();
    await page.keyboard.press('End');
    return;
  }
  for (let time = 0; time < times; time += 1)
    await page.keyboard.press(way === 'More' ? 'ArrowUp' : 'ArrowDown');
}
const fold = (page: Page, words: string): Locator =>
  page.locator(`[data-calculator="${weighing}"] summary`).filter({ hasText: words });
/** The drawing of a figure that can be seen: the figure itself, or the server's for a wide page. */
const drawing = (page: Page, id: string): Locator =>
  page.locator(`[data-figure="${id}"]:visible, [data-figure="${id}"] + .figure-wide:visible`);

/** Presses keys one after the other, wherever the focus is. */
export async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}
/** Clicks so many times. */
export async function click(target: Locator, times: number): Promise<void> {
  for (let time = 0; time < times; time += 1) await target.click();
}
/** Selects all that stands in the field with the focus, and types. */
export async function typeOver(page: Page, text: string): Promise<void> {
  await press(page, 'ControlOrMeta+a');
  await page.keyboard.type(text);
}

/** By the words of their tests. */
export const stories: Readonly<Record<string, Story>> = {
  'three steps up and one down': {
    path: `${weighing}/`,
    async deeds(page) {
      await step(page, 'More', 3);
      await step(page, 'Less', 1);
    },
    at: (page) => mass(page).inputValue(),
    shows: '592.2',
  },
  'three presses of ↑, with a page up and a finer step': {
    path: `${weighing}/`,
    async deeds(page) {
      await mass(page).click();
      await press(page, 'ArrowUp', 'ArrowUp', 'ArrowUp', 'PageUp', 'Alt+ArrowUp', 'ArrowDown');
    },
    at: (page) => mass(page).inputValue(),
    shows: '593.30',
  },
  'what is typed after stepping': {
    path: `${weighing}/`,
    async deeds(page) {
      await mass(page).click();
      await typeOver(page, '998');
      await press(page, 'ArrowUp', 'ArrowUp', 'ArrowUp');
      await page.keyboard.type('0.55');
      await press(page, 'Backspace', 'ArrowUp', 'Home');
      await page.keyboard.type('25');
    },
    at: (page) => mass(page).inputValue(),
    shows: '2510010.6',
  },
  'what is typed over a stepped number, and in another field': {
    path: `${weighing}/`,
    async deeds(page) {
      await step(page, 'More', 3);
      await mass(page).focus();
      await typeOver(page, '20.5 oz');
      await press(page, 'ArrowUp', 'Tab', 'ArrowDown', 'ArrowDown', 'ArrowDown');
      await mass(page).click();
      await press(page, 'End', 'Backspace');
    },
    at: (page) => field(page, weighing, 'rodMass', 'candidate').inputValue(),
    shows: '437.7',
  },
  'a number that cannot be, and leaving it': {
    path: `${weighing}/`,
    async deeds(page) {
      await mass(page).click();
      await typeOver(page, '-5');
      await press(page, 'Tab');
    },
    at: (page) => note(page, weighing, 'rodMass', 'baseline').textContent(),
    shows: /must be/,
  },
  'Enter, which goes down, and asks what is wrong': {
    path: `${overlap}/`,
    async deeds(page) {
      await field(page, overlap, 'mainDiameter', 'baseline').click();
      await typeOver(page, '-5');
      await press(page, 'Enter');
      await page.keyboard.type('51.5');
      await press(page, 'Enter', 'Shift+Enter', 'Enter', 'ArrowUp', 'ArrowUp', 'F2', 'Escape');
    },
    at: (page) => note(page, overlap, 'mainDiameter', 'baseline').textContent(),
    shows: /must be/,
  },
  'a number clicked and typed over, clicked twice and typed into': {
    path: `${weighing}/`,
    async deeds(page) {
      await mass(page).click();
      await page.keyboard.type('602');
      const other = field(page, weighing, 'rodMass', 'candidate');
      await other.click();
      await other.click();
      await press(page, 'End', 'Backspace');
      await page.keyboard.type('4');
    },
    at: async (page) =>
      [
        await mass(page).inputValue(),
        await field(page, weighing, 'rodMass', 'candidate').inputValue(),
      ].join(),
    shows: '602,438.4',
  },
  'readings of several lines, gone through by keys': {
    path: `${weighing}/`,
    async deeds(page) {
      await field(page, weighing, 'bigEndReadings', 'baseline').click();
      await press(page, 'ControlOrMeta+End', 'Enter', 'ArrowUp', 'End', 'Backspace');
      await press(page, 'ArrowDown');
      await page.keyboard.type('421.5');
      await press(page, 'Enter', 'PageUp', 'Home');
      await page.keyboard.type('4');
      await press(page, 'Tab', 'ControlOrMeta+End', 'Backspace');
    },
    at: (page) => field(page, weighing, 'bigEndReadings', 'baseline').inputValue(),
    shows: /^4/,
  },
  'a unit chosen, a number typed, another unit chosen': {
    path: `${weighing}/`,
    async deeds(page) {
      const unit = unitOf(mass(page));
      await unit.focus();
      await page.keyboard.type('oz');
      await mass(page).focus();
      await typeOver(page, '1.3');
      await unit.focus();
      await page.keyboard.type('lb');
    },
    at: async (page) => (await stored(page))['throwbook/1/baseline/rodMass'] ?? '',
    shows: /"1\.3","unit":"lb"/,
  },
  'a box, folds and tools, some pressed once and some twice': {
    path: `${weighing}/`,
    async deeds(page) {
      const sure = fold(page, 'How sure');
      await click(sure, 2);
      await press(page, 'Space');
      await fold(page, 'More results').click();
      await click(fold(page, 'May be left empty'), 3);
      await fold(page, 'Solve for').click();
      await fold(page, 'Plot').focus();
      await press(page, 'Enter', 'Space');
      await step(page, 'More', 1);
    },
    at: async (page) =>
      String(await page.locator(`[data-calculator] :is(details[open], [id$="-pm"])`).count()),
    shows: '2',
  },
  'radio buttons and the panels of the bar': {
    path: `${weighing}/`,
    async deeds(page) {
      await click(page.getByRole('button', { name: 'Open file' }), 2);
      await click(page.getByRole('button', { name: 'QR code' }), 2);
      await page.getByRole('radio', { name: 'Inch' }).click();
      await press(page, 'ArrowLeft', 'ArrowRight');
      await click(page.getByRole('button', { name: 'QR code' }), 1);
      await click(page.getByRole('button', { name: 'Open file' }), 1);
    },
    at: async (page) => String(await page.getByRole('radio', { name: 'Inch' }).isChecked()),
    shows: 'true',
  },
  'a figure turned, slid, stepped and typed in': {
    path: 'piston-motion/',
    async deeds(page) {
      const part = drawing(page, 'mechanism');
      await part.getByRole('radio', { name: 'candidate' }).click();
      await click(part.getByLabel('Also draw the two-term series'), 2);
      await part.getByRole('button', { name: '90°', exact: true }).click();
      await part.getByRole('slider').focus();
      await press(page, 'ArrowRight', 'ArrowRight', 'End', 'ArrowLeft', 'ArrowLeft');
      await click(part.getByRole('button', { name: 'less' }), 3);
      await part.getByRole('textbox').focus();
      await press(page, 'End');
      await page.keyboard.type('.5');
      await press(page, 'ArrowUp', 'ArrowUp');
    },
    at: (page) => drawing(page, 'mechanism').getByRole('textbox').inputValue(),
    shows: '355.7',
  },
  'a figure whose section is chosen, stepped and unfolded': {
    path: 'reversal-load/',
    async deeds(page) {
      const part = drawing(page, 'load-speed');
      await part.getByRole('radio', { name: 'parting line' }).focus();
      await press(page, 'ArrowUp', 'ArrowUp');
      await click(part.getByRole('button', { name: 'more' }), 3);
      await part.getByRole('slider').focus();
      await press(page, 'ArrowRight');
      await click(part.locator('summary'), 3);
      await part.getByRole('textbox').focus();
      await press(page, 'End', 'Backspace');
      await page.keyboard.type('5');
      await press(page, 'ArrowDown');
    },
    at: (page) => drawing(page, 'load-speed').getByRole('textbox').inputValue(),
    shows: /4$/,
  },
  'the tool of a figure, folded and unfolded': {
    path: 'cylinder-pressure/',
    async deeds(page) {
      const part = drawing(page, 'pressure-curve');
      await click(part.locator('summary').last(), 3);
      await click(part.locator('summary').first(), 2);
      await part.getByRole('combobox').first().focus();
      await press(page, 'ArrowDown');
    },
    at: async (page) => String(await drawing(page, 'pressure-curve').locator('textarea').count()),
    shows: '1',
  },
};
