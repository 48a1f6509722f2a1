import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  countLayout,
  layoutBudget,
  printedSides,
  screens,
} from '../../src/build/measure-layout.js';
import { useSite } from './support/site.ts';

const site = useSite();
const topics = readdirSync(join(import.meta.dirname, '../../content/topics'));

/** What a reader meets on a topic's page as it opens: few numbers, the result in sight, a page that ends. */
describe.each(Object.entries(screens))('a topic opens with little, on a %s', (name, viewport) => {
  it.each(topics)('%s', async (topic) => {
    const { context } = await site.reader({ viewport });
    const page = await context.newPage();
    await page.goto(`${topic}/`);
    const count = await page.evaluate(countLayout);
    const { result, page: length } = layoutBudget[name === 'phone' ? 'phone' : 'desk'];
    expect.soft(count.boxes, 'open boxes').toBeLessThanOrEqual(layoutBudget.boxes);
    expect.soft(count.boxes).toBeGreaterThan(0);
    expect.soft(count.lines, 'open result lines').toBeLessThanOrEqual(layoutBudget.lines);
    expect.soft(count.lines).toBeGreaterThan(0);
    expect.soft(count.elements, 'elements').toBeLessThanOrEqual(layoutBudget.elements);
    expect.soft(count.result, 'screens to the first result').toBeLessThanOrEqual(result);
    expect.soft(count.page, 'screens of the page').toBeLessThanOrEqual(length);
    if (name === 'desk')
      expect
        .soft(await printedSides(page), 'printed sides')
        .toBeLessThanOrEqual(layoutBudget.sides);
  });
});
