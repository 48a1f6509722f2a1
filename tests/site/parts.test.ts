import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { enter, field, openFolds, says, seen, stored, type SetId } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** As a spreadsheet of a country with decimal commas puts it on the clipboard. */
const eight =
  'Kolben [g]\r\n428,0\r\n427,1\r\n429,2\r\n428,6\r\n426,8\r\n428,3\r\n427,7\r\n429,0\r\n';

async function openParts(page: Page, place = ''): Promise<void> {
  await page.goto(`parts/${place}`);
  await awake(page);
}
async function awake(page: Page): Promise<void> {
  await page.locator('[data-parts]').dispatchEvent('pointermove');
  await page.locator('[data-parts][data-alive]').waitFor();
}
async function unfold(page: Page, group: string): Promise<void> {
  await page.locator(`#parts-${group} > summary`).click();
}
/** The weight of one cylinder. */
function weight(page: Page, list: string, set: SetId, line: number): Locator {
  return page.locator(`[id="parts-${list}-${set}-${String(line)}"]`);
}
function row(page: Page, name: string): Locator {
  return page.locator(`#part-${name}`);
}
function panel(page: Page): Locator {
  return page.getByRole('region', { name: 'Paste weights' });
}
async function pasteAll(page: Page, text: string): Promise<void> {
  await page.getByRole('button', { name: 'Paste cells' }).click();
  await panel(page).getByRole('textbox').fill(text);
}
async function take(page: Page, weights: number): Promise<void> {
  const words = weights === 1 ? '1 weight' : `${String(weights)} weights`;
  await panel(page)
    .getByRole('button', { name: `Take ${words}` })
    .click();
  await panel(page).waitFor({ state: 'detached' });
}
/** The text of the file that a button saves. */
async function saved(page: Page, button: string): Promise<string> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return readFile(await file.path(), 'utf8');
}
/** The sum of a list as its foot shows it. */
function sum(page: Page, list: string, of: string, set: SetId): Locator {
  return row(page, list).locator(`dd[data-sum="${of}"][data-set="${set}"]`);
}

describe('eight weights pasted from a spreadsheet', () => {
  it('are shown, taken, and stand with their mean on the pages that need them', async () => {
    const { open, arrive } = await site.reader();
    const page = await arrive('parts/');
    await openParts(page);
    await pasteAll(page, eight);
    // Nothing is taken by looking.
    await says(panel(page), '428,0 = 428.0 g');
    expect(await panel(page).getByLabel('Column 1 goes to').inputValue()).toBe(
      'pistonMasses/baseline/weights',
    );
    expect(await panel(page).getByLabel('Unit of column 1').inputValue()).toBe('g');
    expect(await stored(page)).toEqual({});
    await take(page, 8);
    await says(page.locator('.parts-said'), 'Pistons, baseline: 8 taken.');
    expect(await weight(page, 'pistonMasses', 'baseline', 3).inputValue()).toBe('429.2');
    // By hand: 3424.7 g over 8.
    await says(sum(page, 'pistonMasses', 'mean', 'baseline'), '428.09 g');
    await says(sum(page, 'pistonMasses', 'least', 'baseline'), '426.8 g');
    await says(sum(page, 'pistonMasses', 'greatest', 'baseline'), '429.2 g');
    await says(sum(page, 'pistonMasses', 'spread', 'baseline'), '2.4 g');
    await says(row(page, 'pistonMass'), 'Baseline: mean of the 8 weighed');

    const bobweight = await open('bobweight/');
    const mass = field(bobweight, 'bobweight', 'pistonMass', 'baseline');
    await expect.poll(() => mass.inputValue()).toBe('428.09');
    const there = bobweight.locator('.row', { has: mass });
    await says(there, 'Baseline: mean of the 8 weighed');
    // The reader's own goes before it, and one press gives it back.
    await enter(mass, '430');
    await says(there, 'your own; mean of the 8 weighed is 428.09 g.');
    await there.getByRole('button', { name: 'Use it' }).click();
    await expect.poll(() => mass.inputValue()).toBe('428.09');
    await there.getByRole('link', { name: 'mean of the 8 weighed' }).click();
    // It opens where the list is, with no touch: the numbers are the reader's.
    await weight(bobweight, 'pistonMasses', 'baseline', 8).waitFor();

    const matching = await open('part-matching/');
    expect(await field(matching, 'part-matching', 'pistonMasses', 'baseline').inputValue()).toBe(
      '428.0; 427.1; 429.2; 428.6; 426.8; 428.3; 427.7; 429.0',
    );
    // What is worked from the mean in turn is there as well, on a page that does not ask for the piston.
    for (const group of ['pins', 'rings', 'rods']) await unfold(page, group);
    for (const [name, grams] of [
      ['pinMass', '100'],
      ['ringMass', '30'],
      ['smallEndMass', '150'],
    ] as const)
      await enter(page.locator(`[id="parts-${name}-baseline"]`), grams);
    const factor = await open('balance-factor/');
    const reciprocating = field(factor, 'partial-balance', 'reciprocatingMass', 'baseline');
    await openFolds(reciprocating);
    await expect.poll(() => reciprocating.inputValue()).toBe('708.09');
  });

  it('go before the weighing of one rod', async () => {
    const { open, arrive } = await site.reader();
    const weighing = await open('rod-weighing/');
    await enter(field(weighing, 'rod-weighing', 'bigEndReadings', 'candidate'), '310.0; 310.4');
    const page = await arrive('parts/');
    await openParts(page);
    await unfold(page, 'rods');
    const mass = page.locator('[id="parts-bigEndMass-candidate"]');
    await expect.poll(() => mass.inputValue()).toBe('310.2');
    await row(page, 'bigEndMasses').locator('summary').click();
    await row(page, 'bigEndMasses').getByRole('button', { name: 'Paste a column' }).click();
    await panel(page).getByRole('textbox').fill('new\n300.1\n299.5');
    await take(page, 2);
    await expect.poll(() => mass.inputValue()).toBe('299.8');
    await says(row(page, 'bigEndMass'), 'Candidate: mean of the 2 weighed');
    // Taken out again, the rod's own weighing is back.
    await weight(page, 'bigEndMasses', 'candidate', 1).fill('');
    await weight(page, 'bigEndMasses', 'candidate', 2).fill('');
    await expect.poll(() => mass.inputValue()).toBe('310.2');
  });
});

describe('marks of the parts', () => {
  it('are pasted beside the weights, and name the parts where they are put together, on paper and in the file', async () => {
    const { arrive, open } = await site.reader();
    const page = await arrive('parts/');
    await openParts(page);
    await pasteAll(page, 'Piston (g)\tMark\n428.0\tP7\n427.1\tP3\n429.2\tP9\n428.6\tP1');
    await says(panel(page), 'Mark');
    expect(await panel(page).getByLabel('Column 2 goes to').inputValue()).toBe(
      'pistonMasses/baseline/marks',
    );
    await take(page, 4);
    await says(page.locator('.parts-said'), 'Marks of Pistons, baseline: 4 taken.');
    const list = row(page, 'pistonMasses');
    await says(list, '1 , mark P7 / –');
    // A second column alone goes where there is none yet; one over the first says so beside it.
    await list.getByRole('button', { name: 'Paste a column' }).click();
    await panel(page).getByRole('textbox').fill('318.0\n317.2\n318.4\n318.1');
    expect(await panel(page).getByLabel('Column 1 goes to').inputValue()).toBe(
      'pistonMasses/candidate/weights',
    );
    await panel(page).getByLabel('Column 1 goes to').selectOption('pistonMasses/baseline/weights');
    await says(panel(page), 'replaces the 4 weights there');
    await panel(page).getByRole('button', { name: 'Leave everything' }).click();

    // One by one, with the keys of a column; two of the same are told.
    await list.getByRole('button', { name: 'Marks on the parts' }).click();
    await page.locator('[id="mark-pistonMasses-baseline-1"]').click();
    await page.keyboard.type('P5');
    await page.keyboard.press('Enter');
    await page.keyboard.type('P9');
    await says(list, 'Two parts have the mark “P9”.');
    await page.keyboard.press('Shift+Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(
      'mark-pistonMasses-baseline-1',
    );
    await page.locator('[id="mark-pistonMasses-baseline-2"]').fill('P 3');
    await list.getByRole('button', { name: 'Back to the weights' }).click();
    await says(list, '2 , mark P 3 / –');
    const csv = await saved(page, 'Save CSV');
    expect(csv).toMatch(/^Pistons,[^\r]*,1,g,428,,,,P5,/m);

    await page.goto('part-matching/');
    for (const [name, texts] of [
      ['pinMasses', '118.0; 118.4; 117.9; 118.2'],
      ['smallEndMasses', '151.0; 150.2; 150.8; 151.1'],
      ['bigEndMasses', '421.0; 420.2; 420.8; 421.4'],
    ] as const) {
      const list = field(page, 'part-matching', name, 'baseline');
      await openFolds(list);
      await enter(list, texts);
    }
    const matching = await open('part-matching/');
    const figure = matching.locator('[data-figure="matched-sets"]');
    await figure.locator('summary').first().click();
    const table = figure.getByRole('region', { name: 'Matched sets: table' });
    await says(table, 'baseline 1 P5');
    const sheet = await open('matching-sheet/');
    await sheet.locator('[data-matching][data-alive]').waitFor();
    const words = await seen(sheet.locator('.matching-sheet'));
    for (const mark of ['P5 428.0', 'P 3 427.1', 'P9 429.2', 'P1 428.6'])
      expect(words).toContain(mark);
    const sides = (await sheet.pdf({ format: 'A4' }))
      .toString('latin1')
      .match(/\/Type\s*\/Page\b/g);
    expect(sides).toHaveLength(1);

    // Other parts have other marks.
    await page.goto('parts/');
    await awake(page);
    await pasteAll(page, 'Old pistons (g)\n430.0\n431.0');
    await take(page, 2);
    await says(row(page, 'pistonMasses'), '430.5');
    expect((await stored(page))['throwbook/1/baseline/pistonMasses']).not.toContain('P5');
  });
});

describe('what is pasted', () => {
  it('loses nothing: blank cells keep their place, and what is no number stays until it is mended', async () => {
    const page = await site.arrive('parts/');
    await openParts(page);
    await pasteAll(
      page,
      'Cyl\tOld (g)\tNew (g)\tMark\n1\t428,0\t318,0\tA\n2\t427,1\tn/a\tB\n3\t\t318,7\tC\nMean\t427,6\t318,4\t\n',
    );
    await says(panel(page), 'One cell is no weight.');
    await says(panel(page), 'You entered “n/a”, which holds no number.');
    await says(panel(page), 'Pistons, baseline: 1 blank, kept as still to be weighed.');
    await says(panel(page), 'Goes nowhere: column “Mark”, line “Mean 427,6 318,4”.');
    await take(page, 4);
    await says(
      page.locator('.parts-said'),
      '“n/a” is no weight; it stands in Pistons, candidate, line 2, until you mend it. Not taken: column “Mark”',
    );
    expect(await weight(page, 'pistonMasses', 'baseline', 3).inputValue()).toBe('');
    const odd = weight(page, 'pistonMasses', 'candidate', 2);
    expect(await odd.inputValue()).toBe('n/a');
    expect(await odd.getAttribute('aria-invalid')).toBe('true');
    await says(row(page, 'pistonMasses'), 'Pistons, line 2, must be a mass.');
    await says(sum(page, 'pistonMasses', 'mean', 'candidate'), '318.35 g');
    await says(row(page, 'pistonMass'), 'Candidate: mean of the 2 weighed');
    await page.reload();
    await awake(page);
    await unfold(page, 'pistons');
    expect(await odd.inputValue()).toBe('n/a');
    await odd.fill('318.5');
    await says(sum(page, 'pistonMasses', 'mean', 'candidate'), '318.40 g');
    expect((await stored(page))['throwbook/1/baseline/pistonMasses']).toContain('428.0; 427.1"');
    expect((await stored(page))['throwbook/1/candidate/pistonMasses']).toContain(
      '318.0; 318.5; 318.7',
    );
  });

  it('into a line is shown first as well, and one column of it can be led elsewhere', async () => {
    const { context } = await site.reader({ permissions: ['clipboard-read', 'clipboard-write'] });
    const page = await context.newPage();
    await openParts(page, '#part-pinMasses');
    await page.evaluate(() => navigator.clipboard.writeText('120.1\t77.0\n120.3\t77.2'));
    await weight(page, 'pinMasses', 'baseline', 1).focus();
    await page.keyboard.press('ControlOrMeta+v');
    await says(panel(page), 'Wrist pins, baseline');
    await panel(page)
      .getByLabel('Column 2 goes to')
      .selectOption({ label: 'Wrist pins, baseline' });
    await says(panel(page), 'Two columns go to the same place.');
    await panel(page).getByLabel('Column 2 goes to').selectOption({ label: 'nowhere' });
    await panel(page).getByLabel('Unit of column 1').selectOption({ label: 'oz' });
    await panel(page).getByLabel('Unit of column 1').selectOption({ label: 'g' });
    await take(page, 2);
    await says(sum(page, 'pinMasses', 'mean', 'baseline'), '120.20 g');
    expect(Object.keys(await stored(page))).toEqual(['throwbook/1/baseline/pinMasses']);
  });

  it('is answered with a sentence where it is far too much, and is only text whatever it holds', async () => {
    const page = await site.arrive('parts/');
    await openParts(page);
    const rows = Array.from({ length: 10_000 }, (_, at) => `${String(at)}\t428.0`).join('\n');
    await page.getByRole('button', { name: 'Paste cells' }).click();
    const box = panel(page).getByRole('textbox');
    const took = await box.evaluate((node, text) => {
      if (!(node instanceof HTMLTextAreaElement)) return Infinity;
      const start = performance.now();
      node.value = text;
      node.dispatchEvent(new Event('input', { bubbles: true }));
      return performance.now() - start;
    }, rows);
    await says(panel(page), 'The text has 10000 lines; at most 100 are read.');
    // A tenth of that is usual; a second is what a reader would notice.
    expect(took).toBeLessThan(1000);
    expect(await panel(page).getByRole('button', { name: /^Take/ }).isDisabled()).toBe(true);
    await box.fill('<img src=x onerror=alert(1)>\t=HYPERLINK("x")\n428.0\t<b>9</b>\n427.0\t318.0');
    await says(panel(page), '<img src=x onerror=alert(1)>');
    await take(page, 3);
    expect(await weight(page, 'pistonMasses', 'candidate', 1).inputValue()).toBe('<b>9</b>');
    await box.waitFor({ state: 'detached' });
  });

  it('is opened from a file of separated values', async () => {
    const page = await site.arrive('parts/');
    await openParts(page);
    await page.getByLabel('Open CSV').setInputFiles({
      name: 'weights.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(
        '\uFEFFpiston;pin;small end;big end\n15,1;4,2;6,0;14,9\n15,0;4,2;6,1;14,8\n',
      ),
    });
    await says(panel(page), 'Big ends, baseline');
    for (const column of [1, 2, 3, 4])
      await panel(page)
        .getByLabel(`Unit of column ${String(column)}`)
        .selectOption({ label: 'oz' });
    await take(page, 8);
    const kept = await stored(page);
    for (const [list, text] of [
      ['pistonMasses', '15.1; 15.0'],
      ['pinMasses', '4.2; 4.2'],
      ['smallEndMasses', '6.0; 6.1'],
      ['bigEndMasses', '14.9; 14.8'],
    ] as const)
      expect(kept[`throwbook/1/baseline/${list}`]).toBe(JSON.stringify({ text, unit: 'oz' }));
    // What was taken at once goes at once.
    await page.locator('[data-notebook-bar]').hover();
    await page.locator('[data-notebook-bar][data-alive]').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await says(
      page.locator('.bar-status'),
      'One step is undone: Pistons, each (Baseline), Wrist pins, each (Baseline) and 2 more.',
    );
    expect(Object.keys(await stored(page)).filter((key) => key.includes('Masses'))).toEqual([]);
  });
});

describe('at the scale', () => {
  it('weights are typed one by one: the first of them leaves none of the example behind', async () => {
    const page = await site.arrive('parts/');
    await openParts(page);
    await unfold(page, 'pistons');
    await weight(page, 'pistonMasses', 'baseline', 1).click();
    await page.keyboard.type('431.0');
    await page.keyboard.press('Enter');
    await page.keyboard.type('432,4');
    await page.keyboard.press('Enter');
    // The third is not there yet.
    await page.keyboard.press('Enter');
    await page.keyboard.type('430.2');
    await page.keyboard.press('Enter');
    expect(JSON.parse((await stored(page))['throwbook/1/baseline/pistonMasses'] ?? '')).toEqual({
      text: '431.0; 432.4; –; 430.2',
      unit: 'g',
    });
    await says(row(page, 'pistonMasses').locator('summary'), '3 of 8');
    expect(await weight(page, 'pistonMasses', 'baseline', 5).inputValue()).toBe('');
    expect(await weight(page, 'pistonMasses', 'candidate', 5).inputValue()).toBe('317.6');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(
      'parts-pistonMasses-candidate-5',
    );
    // One in ounces changes no other.
    await weight(page, 'pistonMasses', 'baseline', 3).fill('15.2 oz');
    await says(sum(page, 'pistonMasses', 'greatest', 'baseline'), '432.4');
    await says(sum(page, 'pistonMasses', 'least', 'baseline'), '430.2');
  });

  it('a number keeps where it is from and a note, through a reload and into the file', async () => {
    const page = await site.arrive('parts/');
    await openParts(page);
    await unfold(page, 'layout');
    const stroke = row(page, 'stroke');
    await stroke.getByRole('button', { name: '±, source, note of Stroke' }).click();
    await says(stroke, 'No number of your own stands here');
    await enter(page.locator('[id="parts-stroke-baseline"]'), '73.02');
    const said = stroke.getByRole('group', { name: 'Baseline' });
    await said.getByLabel('Where from').selectOption({ label: 'measured' });
    await said.getByLabel('Note').fill('=1+1 over <full> travel');
    await says(stroke, 'measured; =1+1 over <full> travel');
    await page.reload();
    await awake(page);
    await unfold(page, 'layout');
    await says(stroke, 'measured; =1+1 over <full> travel');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save CSV' }).click(),
    ]);
    const csv = await readFile(await download.path(), 'utf8');
    expect(csv).toContain(
      "Layout and speeds,Stroke (twice the throw),,mm,73.02,,measured,'=1+1 over <full> travel,,73,0.02,invented example,",
    );
    expect(csv).toContain('Pistons,"Pistons, each",8,g,429,');
    await page.locator('[data-notebook-bar]').hover();
    await page.locator('[data-notebook-bar][data-alive]').waitFor();
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save file' }).click(),
    ]);
    expect(await readFile(await file.path(), 'utf8')).toContain('"from":"measured"');
  });

  it('an empty job has as many lines as its crank has cylinders, and says what each result lacks', async () => {
    const page = await site.arrive('jobs/');
    await page.locator('[data-jobs][data-alive]').waitFor();
    await page.getByLabel('Name', { exact: true }).fill('A V-twin');
    await page.getByRole('button', { name: 'Begin it' }).click();
    await page.getByRole('link', { name: 'the parts table' }).click();
    await awake(page);
    await unfold(page, 'pistons');
    const lines = row(page, 'pistonMasses').locator('.each-lines .row');
    await expect.poll(() => lines.count()).toBe(8);
    await unfold(page, 'layout');
    const layout = row(page, 'crankLayout').locator('select[data-set]');
    for (const set of [0, 1]) await layout.nth(set).selectOption({ index: 0 });
    await expect.poll(() => lines.count()).toBe(1);
    await says(row(page, 'pistonMasses').locator('summary'), '0 of 1');
    const mass = row(page, 'pistonMass');
    await says(mass, /missing.*for Bobweight/);
    await mass.getByRole('link', { name: 'missing' }).click();
    await page.waitForURL(/bobweight\/#calculator-bobweight$/);
    await openParts(page);
    await unfold(page, 'pistons');
    await weight(page, 'pistonMasses', 'baseline', 1).fill('410.2');
    // The candidate has the same parts until it is given its own; the first of those leaves none of the others behind.
    await says(row(page, 'pistonMass'), 'Baseline: the one weighed');
    expect(await weight(page, 'pistonMasses', 'candidate', 1).inputValue()).toBe('410.2');
    await expect
      .poll(() => page.locator('[id="parts-pistonMass-candidate"]').inputValue())
      .toBe('410.2');
    await says(page.locator('#parts-pistons > summary'), '3 of your own, 1 worked out');
    await weight(page, 'pistonMasses', 'candidate', 1).fill('318');
    await expect
      .poll(() => page.locator('[id="parts-pistonMass-candidate"]').inputValue())
      .toBe('318');
    await page.locator('[data-notebook-bar]').hover();
    await page.locator('[data-notebook-bar][data-alive]').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect
      .poll(() => weight(page, 'pistonMasses', 'candidate', 1).inputValue())
      .toBe('410.2');
  });
});

describe('the page', () => {
  it('holds on a phone of 360 px, folded and unfolded', async () => {
    const page = await site.arrive('parts/', {
      viewport: { width: 360, height: 740 },
      hasTouch: true,
    });
    await openParts(page);
    const width = (): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth);
    expect(await width()).toBe(360);
    await unfold(page, 'rods');
    await pasteAll(page, 'Old\tNew\tMark of the part\n428,0\t318,0\tA\n427,1\tn/a\tB');
    await says(panel(page), 'One cell is no weight.');
    expect(await width()).toBe(360);
    const box = await weight(page, 'smallEndMasses', 'candidate', 1).boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(44);
    expect((box?.x ?? 360) + (box?.width ?? 0)).toBeLessThanOrEqual(360);
  });

  it('does what was pressed before its code was there, and keeps what was unfolded', async () => {
    const page = await site.arrive('parts/');
    const code = page.waitForRequest(/parts-page/);
    await page.locator('#parts-pins > summary').click();
    await page.getByRole('button', { name: 'Paste cells' }).click();
    await code;
    await panel(page).getByRole('textbox').waitFor();
    await weight(page, 'pinMasses', 'candidate', 8).waitFor();
  });

  it('is led to a row by its address', async () => {
    const page = await site.arrive('parts/#part-pinLength');
    await awake(page);
    await page.locator('[id="parts-pinLength-baseline"]').waitFor();
  });

  it('is read without a script', async () => {
    const { arrive } = await site.reader({ javaScriptEnabled: false });
    const page = await arrive('parts/');
    await page.locator('#parts-rods > summary').click();
    const table = page.locator('#parts-rods table');
    await says(table, /Big end on the scale.*421\.2 g.*300\.1 g/);
    await says(table, '8 weighed, mean 421.44 g, spread 2.8 g');
    expect(await page.locator('.parts input:visible').count()).toBe(0);
  });

  it('takes sixteen weights in two sets, and each key of them', async () => {
    const page = await site.arrive('parts/');
    await openParts(page);
    const sixteen = Array.from({ length: 16 }, (_, at) => `${(428 + at / 10).toFixed(1)}\t318.0`);
    await pasteAll(page, sixteen.join('\n'));
    await take(page, 32);
    const cell = weight(page, 'pistonMasses', 'baseline', 16);
    await cell.click();
    await page.keyboard.type('440.0');
    await says(sum(page, 'pistonMasses', 'greatest', 'baseline'), '440.0 g');
    expect(await seen(row(page, 'pistonMasses').locator('summary'))).toContain('16 of 8');
  });
});
