import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { field, put, result, says, seen } from './support/form.ts';
import { alive, useSite } from './support/site.ts';
import { asleep } from './support/waking.ts';

const site = useSite();
/** Room for the sheet and the figure at once. */
const tall = { viewport: { width: 1280, height: 2400 } };

/** A page whose parts are all alive, and on which the reader has written one number. */
async function open(path: string): Promise<Page> {
  const page = await site.open(path, tall);
  await alive(page);
  await expect.poll(() => asleep(page)).toBe(0);
  return page;
}

/** What two parts say before something is done, at once after it, and a frame later. */
interface Moments {
  readonly before: readonly string[];
  readonly atOnce: readonly string[];
  readonly later: readonly string[];
}

/** Does something in the page, and reads the parts in the microtasks after it, and once the next frame has been. */
function around(parts: readonly string[], what: string, then: string): string {
  return `(async () => {
    const read = () => ${JSON.stringify(parts)}.map((part) => document.querySelector(part).textContent);
    const before = read();
    const target = document.querySelector(${JSON.stringify(what)});
    ${then}
    for (let turn = 0; turn < 5; turn += 1) await Promise.resolve();
    const atOnce = read();
    // Asked for after what the page has asked for, so that it runs after it.
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    return { before, atOnce, later: read() };
  })()`;
}

const written = (text: string): string => `
  target.value = ${JSON.stringify(text)};
  target.dispatchEvent(new InputEvent('input', { bubbles: true, inputType: 'insertText' }));`;

const overlap =
  '[data-calculator="crank-overlap"] tr[data-output="overlap"] td[data-set="baseline"]';
const figure = '[data-figure="crank-throw"]';

describe('at a key', () => {
  it('results are there at once, and the figure in sight one frame later', async () => {
    const page = await open('crank-overlap/');
    const box = '[id="crank-overlap-crankpinDiameter-baseline"]';
    const caption = `${figure} figcaption`;
    const said = await page.evaluate<Moments>(around([overlap, caption], box, written('51')));
    expect(said.atOnce[0]).not.toBe(said.before[0]);
    expect(said.atOnce[1]).toBe(said.before[1]);
    expect(said.later[1]).not.toBe(said.before[1]);
    // What is written next is not put off by what still waits.
    await page.evaluate(around([overlap, caption], box, written('52') + written('53')));
    await says(page.locator(caption), 'The baseline’s crankpin of 53.000 mm');
  });

  it('a figure that is moved follows in the same frame', async () => {
    const page = await open('crank-overlap/');
    const less = `${figure} .exact button`;
    const said = await page.evaluate<Moments>(
      around([`${figure} figcaption`], less, 'target.click();'),
    );
    expect(said.atOnce[0]).not.toBe(said.before[0]);
    expect(said.later).toEqual(said.atOnce);
  });
});

describe('without a key', () => {
  it('a ± that comes later sets the digits of the prose as those of the result', async () => {
    const page = await open('bobweight/');
    await put(field(page, 'bobweight', 'pistonMass', 'baseline'), '500 ± 40');
    const shown = result(page, 'bobweight', 'bobweight', 'baseline');
    // Known to tens of grams, it is no longer told to tenths.
    await says(shown, /^1\d60 g$/);
    const prose = page.locator('[data-v="bobweight.bobweight.baseline"]:not([data-also])');
    const now = await seen(shown);
    await expect.poll(async () => new Set(await texts(prose))).toEqual(new Set([now]));
  });

  it('a ± that takes long sets the digits of a table that is folded too', async () => {
    const page = await open('bobweight/');
    // As on a slow machine: a slice of the work is one step, and the next slice waits.
    await page.evaluate(`{
      const [now, wait] = [performance.now.bind(performance), setTimeout];
      let late = 0;
      performance.now = () => now() + (late += 4);
      window.setTimeout = (act, ms = 0) => wait(act, Math.max(ms, 60));
    }`);
    await put(field(page, 'bobweight', 'pistonMass', 'baseline'), '500 ± 40');
    const folded = result(page, 'bobweight', 'carried', 'baseline');
    expect(await folded.evaluate((cell) => cell.closest('details')?.open)).toBe(false);
    await expect.poll(() => texts(folded)).toEqual([expect.stringMatching(/^\d+0 g$/)]);
  });

  it('a figure follows the system of units', async () => {
    const page = await open('crank-overlap/');
    await says(page.locator(`${figure} figcaption`), /\d mm/);
    await page.getByRole('radio', { name: 'Inch' }).check();
    await says(page.locator(`${figure} figcaption`), /\d in/);
  });

  it('a figure follows a slow model when its answer comes', async () => {
    const page = await open('gas-port/');
    const drawn = page.locator('[data-figure="groove-section"]');
    // It draws the candidate.
    const before = await seen(drawn);
    await put(field(page, 'gas-port', 'maxSpeed', 'candidate'), '3500');
    await expect.poll(() => seen(drawn)).not.toBe(before);
  });
});

/** The texts of all the parts, spaces as one. */
async function texts(parts: Locator): Promise<readonly string[]> {
  return (await parts.allTextContents()).map((text) => text.replace(/\s+/g, ' ').trim());
}
