import { readFile } from 'node:fs/promises';
import { type Locator, type Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { field, openTool, printed, put, result, says, seen, shows } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();

async function saved(page: Page, button: Locator): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  return {
    name: download.suggestedFilename(),
    text: await readFile(await download.path(), 'utf8'),
  };
}

/** The rows of a CSV without quoted line breaks, each as its cells. */
function rows(csv: string): readonly (readonly string[])[] {
  return csv
    .replace(/^\uFEFF/, '')
    .trimEnd()
    .split('\r\n')
    .map((row) =>
      [...row.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, a, b]) => a ?? b ?? ''),
    );
}

describe('solve for', () => {
  it('finds the piston that gives a bobweight, and puts it in', async () => {
    const page = await site.open('bobweight/');
    const tool = await openTool(page, 'bobweight', 'Solve for');
    await tool.getByLabel(/^becomes/).fill('1200');
    await tool.getByRole('button', { name: 'Solve' }).click();
    // A gram of piston is a gram of bobweight here: 318.0 - (1233.1 - 1200).
    await says(tool.locator('.tool-answer'), '284.9');
    await tool.getByRole('button', { name: /^Put 284\.9/ }).click();
    await expect
      .poll(() => field(page, 'bobweight', 'pistonMass', 'candidate').inputValue())
      .toMatch(/^284\.9/);
    await shows(result(page, 'bobweight', 'bobweight', 'candidate'), 1200, 'g');
  });

  it('says so when there is no answer, or no number to reach', async () => {
    const page = await site.open('bobweight/');
    const tool = await openTool(page, 'bobweight', 'Solve for');
    await tool.getByRole('button', { name: 'Solve' }).click();
    await says(tool.locator('.tool-answer'), /Bobweight.*Nothing is entered/);
    await tool.getByLabel(/^becomes/).fill('12 mm');
    await tool.getByRole('button', { name: 'Solve' }).click();
    await says(tool.locator('.tool-answer'), /length/);
    await tool.getByLabel(/^becomes/).fill('50');
    await tool.getByRole('button', { name: 'Solve' }).click();
    await says(tool.locator('.tool-answer'), /no value .* gives/);
    expect(await tool.getByRole('button', { name: /^Put/ }).count()).toBe(0);
  });

  it('finds a speed for an acceleration', async () => {
    const page = await site.open('piston-motion/');
    const tool = await openTool(page, 'piston-motion', 'Solve for');
    await tool.getByLabel('In the set').selectOption('candidate');
    await tool.getByLabel(/^becomes/).fill('30000');
    await tool.getByRole('button', { name: 'Solve' }).click();
    // a = r w² (1 + r/L), so w follows from a square root.
    const w = Math.sqrt(30_000 / (0.0365 * (1 + 36.5 / 146)));
    const button = tool.getByRole('button', { name: /^Put/ });
    const offered = /Put (.*) into/.exec(await seen(button))?.[1] ?? '';
    expect(Math.abs(printed(offered).value - (w * 30) / Math.PI)).toBeLessThan(1);
  });
});

describe('plot one against another', () => {
  it('draws both sets, says it in words and in a table', async () => {
    const page = await site.open('bobweight/');
    const tool = await openTool(page, 'bobweight', 'Plot');
    await tool.locator('svg').first().waitFor();
    await says(tool, 'The baseline runs from');
    await says(tool, 'The candidate runs from');
    const before = await tool.locator('svg').first().innerHTML();
    const table = tool.locator('table').first();
    await table.waitFor({ state: 'attached' });
    const cells = await table.locator('tbody td').allTextContents();
    expect(cells.length).toBeGreaterThan(10);
    expect(cells.filter((cell) => !/[\d—]/.test(cell))).toEqual([]);
    await tool
      .getByRole('combobox', { name: 'against' })
      .selectOption({ label: 'Oil allowance of one crankpin' });
    await expect.poll(() => tool.locator('svg').first().innerHTML()).not.toBe(before);
    expect(await tool.innerHTML()).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('leaves a gap where the calculator refuses', async () => {
    const page = await site.open('piston-motion/');
    const tool = await openTool(page, 'piston-motion', 'Plot');
    await tool
      .getByRole('combobox', { name: 'against' })
      .selectOption({ label: 'Rod length, centre to centre' });
    // The plot begins at rods of 80 mm, and half of this stroke is 100.
    await put(field(page, 'piston-motion', 'stroke', 'candidate'), '200');
    await says(tool, 'with no result');
    expect(await tool.innerHTML()).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe('take the numbers along', () => {
  it('inputs and results go into a table that names their units', async () => {
    const page = await site.open('bobweight/');
    await put(field(page, 'bobweight', 'pistonMass', 'candidate'), '10 1/2 oz');
    const tool = await openTool(page, 'bobweight', 'Export');
    const { name, text } = await saved(
      page,
      tool.getByRole('button', { name: 'Inputs and results as CSV' }),
    );
    expect(name).toBe('bobweight.csv');
    const [head = [], ...body] = rows(text);
    expect(body.map(([set]) => set)).toEqual(['baseline', 'candidate']);
    expect(body.every((row) => row.length === head.length)).toBe(true);
    const [baseline = [], candidate = []] = body;
    const mass = head.indexOf('Piston, bare (g)');
    expect(Number(baseline[mass])).toBeCloseTo(428, 9);
    // The number as it is, not as it is printed.
    expect(Number(candidate[mass])).toBeCloseTo(10.5 * 28.349523125, 9);
    expect(Number(baseline[mass + 1])).toBeCloseTo(0.1, 12);
    const answer = head.indexOf('Bobweight of one crankpin (g)');
    const sliding = 10.5 * 28.349523125 + 77 + 1.2 + 23.5 + 138.2;
    expect(Number(candidate[answer])).toBeCloseTo(675.2 + sliding, 9);
    expect(text).not.toMatch(/NaN|undefined/);
  });

  it('a curve goes along too', async () => {
    const page = await site.open('piston-motion/');
    const tool = await openTool(page, 'piston-motion', 'Export');
    const button = tool.getByRole('button', { name: /as CSV$/ }).nth(1);
    const { name, text } = await saved(page, button);
    expect(name).toMatch(/^piston-motion-.*\.csv$/);
    const table = rows(text);
    expect(table.length).toBeGreaterThan(100);
    const numbers = table
      .slice(1)
      .flat()
      .filter((cell) => cell !== '');
    expect(numbers.every((cell) => Number.isFinite(Number(cell)))).toBe(true);
  });
});
