import { type Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { field, result, seen, shows } from './support/form.ts';
import { alive, useSite } from './support/site.ts';

const site = useSite();

/** Whether whatever has the focus shows it: an outline or a shadow that is not there without. */
function focusShown(page: Page): Promise<boolean> {
  return page.evaluate(() => {
    const at = document.activeElement;
    if (at === null) return false;
    const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(at);
    return (outlineStyle !== 'none' && parseFloat(outlineWidth) >= 1) || boxShadow !== 'none';
  });
}

interface Stop {
  readonly id: string;
  readonly name: string;
  readonly top: number;
}

function stop(page: Page): Promise<Stop> {
  return page.evaluate(() => {
    const at = document.activeElement;
    return {
      id: at?.id ?? '',
      name: (at?.getAttribute('aria-label') ?? at?.textContent ?? '').replace(/\s+/g, ' ').trim(),
      top: (at?.getBoundingClientRect().top ?? 0) + scrollY,
    };
  });
}

/** Tabs on until what is wanted has the focus; each stop on the way must show its focus. */
async function tabTo(
  page: Page,
  wanted: (at: Stop) => boolean,
  most = 90,
): Promise<readonly Stop[]> {
  const stops: Stop[] = [];
  for (let presses = 0; presses < most; presses += 1) {
    await page.keyboard.press('Tab');
    const at = await stop(page);
    stops.push(at);
    expect.soft(await focusShown(page), `focus shown on “${at.name || at.id}”`).toBe(true);
    if (wanted(at)) return stops;
  }
  throw new Error(`Not reached. Stops: ${stops.map(({ id, name }) => id || name).join(', ')}`);
}

it('the keyboard alone does the story', async () => {
  const reader = await site.reader({ permissions: ['clipboard-read', 'clipboard-write'] });
  const page = await reader.open('');
  await tabTo(page, ({ id }) => id === 'home-pistonMass-candidate');
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('300,4');
  const sliding = 300.4 + 77 + 1.2 + 23.5 + 138.2;
  await shows(page.locator('[data-result="candidate"]'), 675.2 + sliding, 'g');
  await tabTo(page, ({ name }) => name === 'Carry this on to the bobweight page');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/bobweight/');
  await alive(page);

  // Past the head of the page at one press.
  await page.keyboard.press('Tab');
  expect(await seen(page.locator(':focus'))).toBe('Skip to the text');
  expect((await page.locator(':focus').boundingBox())?.y).toBeGreaterThanOrEqual(0);
  await page.keyboard.press('Enter');
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('content');

  const stops = await tabTo(page, ({ id }) => id === 'bobweight-pistonMass-baseline');
  expect(stops.map(({ name }) => name)).toContain('Copy link');
  expect(await field(page, 'bobweight', 'pistonMass', 'candidate').inputValue()).toBe('300,4');
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('430');
  await shows(
    result(page, 'bobweight', 'reciprocatingPerCylinder', 'baseline'),
    430 + 120.2 + 38 + 0 + 170.6,
    'g',
  );

  // Through the form in the order of its rows, baseline before candidate.
  const on = await tabTo(page, ({ id }) => id === 'bobweight-reciprocatingFraction-candidate');
  const fields = on.map(({ id }) => id).filter((id) => id.startsWith('bobweight-'));
  expect(fields.slice(0, 5)).toEqual([
    'bobweight-pistonMass-candidate',
    'bobweight-pinMass-baseline',
    'bobweight-pinMass-candidate',
    'bobweight-ringMass-baseline',
    'bobweight-ringMass-candidate',
  ]);
  const tops = on.filter(({ id }) => id.startsWith('bobweight-')).map(({ top }) => top);
  expect(tops).toEqual([...tops].sort((a, b) => a - b));

  // A tool below the results opens, and the link is copied.
  await tabTo(page, ({ name }) => name === 'Solve for');
  await page.keyboard.press('Enter');
  await page
    .getByLabel(/^becomes/)
    .first()
    .waitFor();
  await page.keyboard.press('Shift+Tab');
  await page.getByRole('button', { name: 'Copy link' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => seen(page.locator('.bar-status'))).toContain('The link is copied.');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('pistonMass=430g');
});

it('the mechanism turns by the keys', async () => {
  const page = await site.open('piston-motion/');
  const figure = page.locator('[data-figure="mechanism"]');
  const slider = figure.getByRole('slider', { name: 'Crank angle' });
  await slider.focus();
  expect(await slider.inputValue()).toBe('40');
  for (const [key, angle] of [
    ['ArrowRight', '41'],
    ['ArrowUp', '42'],
    ['ArrowLeft', '41'],
    ['End', '360'],
    ['Home', '0'],
  ] as const) {
    await page.keyboard.press(key);
    await expect.poll(() => slider.inputValue()).toBe(angle);
    await expect.poll(() => seen(figure.locator('figcaption'))).toContain(`At ${angle}° after TDC`);
  }
  expect(await slider.getAttribute('aria-valuetext')).toMatch(/^0\s?°/);
  const exact = figure.getByRole('textbox', { name: 'Crank angle' });
  await exact.focus();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('90.5');
  await expect.poll(() => seen(figure.locator('figcaption'))).toContain('At 90.5° after TDC');
  await page.keyboard.press('ArrowUp');
  expect(await exact.inputValue()).toBe('90.6');
});

it('undo takes back a step of a number, and not what was typed before it', async () => {
  const page = await site.open('bobweight/');
  const piston = field(page, 'bobweight', 'pistonMass', 'baseline');
  const pin = field(page, 'bobweight', 'pinMass', 'baseline');
  await piston.click();
  await page.keyboard.type('412');
  await page.keyboard.press('Enter');
  await alive(page);
  const stood = await pin.inputValue();
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => pin.inputValue()).not.toBe(stood);
  await page.keyboard.press('ControlOrMeta+z');
  await expect.poll(() => pin.inputValue()).toBe(stood);
  expect(await piston.inputValue()).toBe('412');
});
