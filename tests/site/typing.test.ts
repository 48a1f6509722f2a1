import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Locator, type Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { stopClock } from './support/clock.ts';
import {
  enter,
  field,
  note,
  result,
  results,
  says,
  seen,
  shows,
  stored,
  texts,
  type,
  unfold,
} from './support/form.ts';
import { alive, useSite } from './support/site.ts';

const site = useSite();
const motion = 'piston-motion';

/** The page of the piston's motion with everything unfolded; the pin offset is zero there, so travel = stroke. */
async function open(
  how: Parameters<typeof site.open>[1] = {},
): Promise<{ page: Page; stroke: Locator; travel: Locator; said: Locator }> {
  const page = await site.open('piston-motion/', how);
  await unfold(page, motion);
  return {
    page,
    stroke: field(page, motion, 'stroke', 'candidate'),
    travel: result(page, motion, 'travel', 'candidate'),
    said: note(page, motion, 'stroke', 'candidate'),
  };
}

async function useInches(page: Page): Promise<void> {
  await page.getByRole('radio', { name: 'Inch' }).check();
}

/** Types, looks at the text before and after leaving the field, and at what the notebook keeps of it. */
async function typeAndKeep(page: Page, box: Locator, text: string): Promise<void> {
  await type(box, text);
  expect.soft(await box.inputValue(), 'while it is typed').toBe(text);
  await box.blur();
  const [name, set] = [await box.getAttribute('data-name'), await box.getAttribute('data-set')];
  const kept: unknown = JSON.parse((await stored(page))[`throwbook/1/${set}/${name}`] ?? 'null');
  expect.soft(kept, 'as it is kept').toMatchObject({ text });
}

describe('a length typed as a shop writes it', () => {
  it('is read in an inch box', async () => {
    const { page, stroke, travel, said } = await open();
    await useInches(page);
    const table: readonly (readonly [text: string, inches: number])[] = [
      ['1.888', 1.888],
      ['1.888 in', 1.888],
      ['1 7/8"', 1.875],
      ['1-7/8 in', 1.875],
      ['1⅞', 1.875],
      ['1 7⁄8', 1.875],
      ['1 7/8″', 1.875],
      ['1 7/8”', 1.875],
      ['2\u00a07/8\u202fin', 2.875],
      ['1,875', 1.875],
      ['47,96mm', 47.96 / 25.4],
      ['  2.875  ', 2.875],
      ['１.８８８', 1.888],
      ['2875 thou', 2.875],
      ['28750 tenths', 2.875],
      ['11/4"', 2.75],
    ];
    for (const [text, inches] of table) {
      await typeAndKeep(page, stroke, text);
      await shows(travel, inches, 'in');
      expect.soft(await said.locator('.problem').count(), text).toBe(0);
    }
    // The last one may be a lost space: it is read as it stands, and the other reading is offered.
    await says(said, 'If you meant 1 1/4, type a space.');
    await said.getByRole('button', { name: '1 1/4 in' }).click();
    await shows(travel, 1.25, 'in');
  });

  it('is read in a millimetre box', async () => {
    const { page, stroke, travel, said } = await open();
    const table: readonly (readonly [text: string, millimetres: number, said?: string])[] = [
      ['73', 73],
      ['73,05', 73.05],
      ['47,96mm', 47.96],
      ['73.0\u00a0mm', 73],
      ['7,3e1', 73],
      ['1 7/8 in', 47.625, '1 7/8 in = 47.625 mm'],
      ['2.875"', 73.025],
      ['7.3 cm', 73, '7.3 cm = 73 mm'],
      ['0.073 m', 73, '0.073 m = 73 mm'],
      ['2 thou', 0.0508, '2 in?'],
    ];
    for (const [text, millimetres, echo] of table) {
      await typeAndKeep(page, stroke, text);
      await shows(travel, millimetres, 'mm');
      if (echo !== undefined) await says(said, echo);
    }
  });

  it('is read with thousands and a decimal comma', async () => {
    const { page } = await open();
    const rod = field(page, motion, 'rodLength', 'candidate');
    await enter(rod, '1.234,5 mm');
    await says(note(page, motion, 'rodLength', 'candidate'), /1234\.5|Unusual, but computed/);
    await shows(result(page, motion, 'rodRatio', 'candidate'), 1234.5 / 73, '');
  });

  it('is read with a Unicode minus', async () => {
    const { page } = await open();
    const offset = field(page, motion, 'pinOffset', 'candidate');
    await enter(offset, '−0.5');
    await shows(result(page, motion, 'offset', 'candidate'), 0.5, 'mm');
    await enter(offset, '-.5');
    await shows(result(page, motion, 'offset', 'candidate'), 0.5, 'mm');
  });

  it('is read when it is pasted', async () => {
    const reader = await site.reader({ permissions: ['clipboard-read', 'clipboard-write'] });
    const page = await reader.open('piston-motion/');
    await unfold(page, motion);
    const stroke = field(page, motion, 'stroke', 'candidate');
    await page.evaluate(() => navigator.clipboard.writeText('\u200b 2 7/8\u00a0in\n'));
    await stroke.click();
    await stroke.press('ControlOrMeta+a');
    await stroke.press('ControlOrMeta+v');
    await shows(result(page, motion, 'travel', 'candidate'), 73.025, 'mm');
  });

  it('is no number when the lines of a block are pasted into its one line', async () => {
    const reader = await site.reader({ permissions: ['clipboard-read', 'clipboard-write'] });
    const page = await reader.open('piston-motion/');
    await unfold(page, motion);
    const stroke = field(page, motion, 'stroke', 'candidate');
    await page.evaluate(() => navigator.clipboard.writeText('7\r\n3\r\n'));
    await stroke.click();
    await stroke.press('ControlOrMeta+a');
    await stroke.press('ControlOrMeta+v');
    await expect.poll(() => stroke.inputValue()).toBe('7; 3');
    await stroke.press('Enter');
    await says(note(page, motion, 'stroke', 'candidate'), /“7; 3”, which is more than one number/);
  });

  it('takes the ± behind it to its own place', async () => {
    const { page, stroke } = await open();
    await enter(stroke, '73.0 ± 0.05');
    await says(stroke.locator('..'), '± 0.05');
    expect(await stroke.inputValue()).toBe('73.0');
    await page.reload();
    await expect.poll(() => stroke.inputValue()).toBe('73.0');
  });

  it('is in the unit of its row, whatever unit was typed before it', async () => {
    const page = await site.open('bobweight/');
    const piston = field(page, 'bobweight', 'pistonMass', 'candidate');
    const sum = result(page, 'bobweight', 'reciprocatingPerCylinder', 'candidate');
    await enter(piston, '0.428 kg');
    await shows(sum, 667.9, 'g');
    await enter(piston, '429');
    await shows(sum, 668.9, 'g');
  });

  it('is asked about where it says two things', async () => {
    const { stroke, travel, said } = await open();
    await enter(stroke, '1,875');
    await says(said, /must be a length\. You entered “1,875”: 1\.875 mm or 1875 mm\?/);
    expect(await stroke.inputValue()).toBe('1,875');
    await enter(stroke, '2,875 in');
    await shows(travel, 73.025, 'mm');
  });

  it('is caught when it is a millimetre number in an inch box', async () => {
    const { page, stroke, travel, said } = await open();
    await useInches(page);
    await enter(stroke, '86');
    await says(said, /“86”: 86 mm or 86 in\?/);
    expect(await stroke.inputValue()).toBe('86');
    await said.getByRole('button', { name: '86 mm' }).click();
    await shows(travel, 86 / 25.4, 'in');
    expect(await stroke.inputValue()).toBe('3.39');
  });
});

describe('a mass typed as a shop writes it', () => {
  it('is read, with its unit', async () => {
    const page = await site.open('bobweight/');
    const piston = field(page, 'bobweight', 'pistonMass', 'candidate');
    // Sliding parts without the piston, from the example: 138.2 + 77.0 + 1.2 + 23.5 g.
    const rest = 239.9;
    const table: readonly (readonly [text: string, grams: number])[] = [
      ['350', 350],
      ['350 g', 350],
      ['0,350 kg', 350],
      ['12 oz', 12 * 28.349523125],
      ['12 1/2 oz', 12.5 * 28.349523125],
      ['1 lb', 453.59237],
      ['5400 grains', 5400 * 0.06479891],
    ];
    for (const [text, grams] of table) {
      await typeAndKeep(page, piston, text);
      await shows(
        result(page, 'bobweight', 'reciprocatingPerCylinder', 'candidate'),
        rest + grams,
        'g',
      );
    }
  });

  it('is named when a length was wanted', async () => {
    const { stroke, said } = await open();
    await enter(stroke, '350 g');
    await says(said, 'Stroke (twice the throw) must be a length. You entered a mass: 350 g.');
    expect(await stroke.inputValue()).toBe('350 g');
  });
});

describe('the keys of a field', () => {
  it('step the last digit typed', async () => {
    const { stroke, travel } = await open();
    const table: readonly (readonly [text: string, key: string, after: string])[] = [
      ['3.480 in', 'ArrowUp', '3.481 in'],
      ['3.480 in', 'ArrowDown', '3.479 in'],
      ['3.480 in', 'PageUp', '3.490 in'],
      ['3.480 in', 'PageDown', '3.470 in'],
      ['3.480 in', 'Alt+ArrowUp', '3.4801 in'],
      ['3.480 in', 'Alt+ArrowDown', '3.4799 in'],
      ['1 7/8 in', 'ArrowUp', '1 15/16 in'],
      ['47,96mm', 'ArrowUp', '47,97mm'],
      ['73', 'ArrowDown', '72'],
    ];
    for (const [text, key, after] of table) {
      await type(stroke, text);
      await stroke.press(key);
      expect.soft(await stroke.inputValue(), `${text} ${key}`).toBe(after);
    }
    await shows(travel, 72, 'mm');
    await stroke.press('ArrowUp');
    await shows(travel, 73, 'mm');
  });

  it('have two buttons beside them, large enough for a thumb', async () => {
    const { page, stroke, travel } = await open({ hasTouch: true });
    await stroke.focus();
    for (const [word, after] of [
      ['Less', 72.99],
      ['More', 73],
    ] as const) {
      const button = page.getByRole('button', {
        name: `${word}: Stroke (twice the throw), Candidate`,
      });
      const box = await button.boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
      await button.click();
      await expect.poll(() => stroke.inputValue()).toBe(after.toFixed(2));
      await shows(travel, after, 'mm');
    }
  });

  it('leave the value alone when the wheel turns', async () => {
    const { page, stroke } = await open();
    const before = await texts(page, motion);
    await stroke.click();
    const top = await page.evaluate(() => scrollY);
    await page.mouse.wheel(0, 300);
    await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(top);
    await page.mouse.wheel(0, -300);
    await expect.poll(() => page.evaluate(() => scrollY)).toBeLessThanOrEqual(top);
    expect(await texts(page, motion)).toEqual(before);
  });

  it('never find their text rewritten', async () => {
    const { page, stroke } = await open();
    const pass = await stopClock(page);
    for (const text of ['1 7/8 in ', '47,96 mm', '..', 'abc', '0.0', '1.234,50']) {
      await stroke.click();
      await stroke.press('ControlOrMeta+a');
      await stroke.press('Backspace');
      let so = '';
      for (const letter of text) {
        await page.keyboard.insertText(letter);
        so += letter;
        expect(await stroke.inputValue()).toBe(so);
      }
      // Longer than any time after which the page takes the keys for quiet.
      await pass(2000);
      expect(await stroke.inputValue()).toBe(text);
    }
  });
});

it('no page has a number box, a length limit or a sample text in a field', () => {
  const folder = inject('folder');
  const pages = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.html'),
  );
  const inputs = pages.flatMap(
    (page) => readFileSync(join(folder, page), 'utf8').match(/<input\b[^>]*>/g) ?? [],
  );
  expect(inputs.length).toBeGreaterThan(50);
  const barred = /\stype="?number|\splaceholder=|\smaxlength=/;
  expect(inputs.filter((input) => barred.test(input))).toEqual([]);
  // A keypad of digits has no fraction bar and no sign: only weighed masses, speeds and counts ask for it.
  const keypads = inputs.filter((input) => /\sinputmode="?decimal/.test(input));
  expect(keypads.length).toBeGreaterThan(10);
  const lengths = /data-name="(?:stroke|bore|rodLength|crankAngle)"/;
  expect(keypads.filter((input) => lengths.test(input))).toEqual([]);
});

it('metric and inch a hundred times change nothing', async () => {
  const page = await site.open('bobweight/');
  await enter(field(page, 'bobweight', 'pistonMass', 'baseline'), '15 1/8 oz');
  await enter(field(page, 'bobweight', 'bigEndMass', 'candidate'), '300,25');
  await page.goto('/piston-motion/');
  await alive(page);
  const pass = await stopClock(page);
  await unfold(page, motion);
  await enter(field(page, motion, 'stroke', 'candidate'), '2 7/8 in');
  await enter(field(page, motion, 'stroke', 'baseline'), '73,05');
  await enter(field(page, motion, 'rodLength', 'candidate'), '5.748"');
  const metric = page.getByRole('radio', { name: 'Metric' });
  const travel = result(page, motion, 'travel', 'candidate');
  await metric.focus();
  await shows(travel, 73.025, 'mm');
  // Both lengths were typed without ±, so that the last ± to be worked out is none.
  await pass(2000);
  expect((await results(page, motion))['lambda candidate']).not.toContain('±');
  const before = { kept: await stored(page), shown: await results(page, motion) };
  for (let turn = 0; turn < 50; turn += 1) {
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowLeft');
  }
  await pass(2000);
  expect(await metric.isChecked()).toBe(true);
  await shows(travel, 73.025, 'mm');
  expect(await stored(page)).toEqual({ ...before.kept, 'throwbook/1/system': 'metric' });
  expect(await results(page, motion)).toEqual(before.shown);
  expect(await seen(travel)).toContain('73.02');
  // In the other system the same keys show the text that was typed.
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => field(page, motion, 'stroke', 'candidate').inputValue()).toBe('2 7/8 in');
  await shows(travel, 2.875, 'in');
});
