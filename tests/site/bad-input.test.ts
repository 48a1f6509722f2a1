import { type Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { followed } from './support/clock.ts';
import {
  openTool,
  enter,
  field,
  note,
  put,
  result,
  results,
  says,
  seen,
  shows,
  stored,
  type SetId,
} from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();

/** No sentence of the page may hold what a failed computation leaves behind. */
async function clean(page: Page): Promise<void> {
  await followed(page);
  const text = await page.locator('body').evaluate((body) => body.textContent ?? '');
  expect(text.length).toBeGreaterThan(1000);
  expect(/.{0,40}(?:\bNaN\b|\bInfinity\b|∞|\bundefined\b|\[object ).{0,20}/.exec(text)?.[0]).toBe(
    undefined,
  );
  const marks = await page
    .locator('svg, svg *')
    .evaluateAll((parts) =>
      parts
        .flatMap((part) => [...part.attributes].map(({ value }) => value))
        .filter((value) => /NaN|Infinity|undefined/.test(value)),
    );
  expect(marks).toEqual([]);
}

interface Case {
  readonly what: string;
  readonly page: string;
  readonly name: string;
  readonly set?: SetId;
  readonly text: string;
  /** The sentence beside the field; it names the quantity, what was typed and what is accepted. */
  readonly say: RegExp;
}

const stroke = { page: 'piston-motion', name: 'stroke' } as const;
const refused: readonly Case[] = [
  {
    ...stroke,
    what: 'nothing',
    text: '',
    say: /^Stroke .* must be a length\. Nothing is entered\./,
  },
  {
    ...stroke,
    what: 'spaces',
    text: '   ',
    say: /^Stroke .* must be a length\. Nothing is entered/,
  },
  { ...stroke, what: 'words', text: 'three and a half', say: /^Stroke .* “three and a half”/ },
  { ...stroke, what: 'a mass', text: '350 g', say: /^Stroke .* You entered a mass: 350 g\./ },
  {
    ...stroke,
    what: 'an unknown unit',
    text: '73 cubits',
    say: /^Stroke .* “73 cubits”; “cubits” is not a unit known here\. Units read here: .*mm/,
  },
  {
    ...stroke,
    what: 'a zero below the line',
    text: '1 7/0',
    say: /^Stroke .* “1 7\/0”: .*cannot have 0/,
  },
  { ...stroke, what: 'two numbers', text: '73 14', say: /^Stroke .* “73 14”/ },
  {
    ...stroke,
    what: 'more than a double holds',
    text: '1e999',
    say: /^Stroke .* “1e999”: .*too large/,
  },
  {
    ...stroke,
    what: 'zero',
    text: '0',
    say: /^Stroke .* must be greater than 0 ?mm\. You entered 0 mm\./,
  },
  {
    page: 'bobweight',
    name: 'pistonMass',
    what: 'a negative mass',
    text: '-5',
    say: /^Piston, bare must be greater than 0 g\. You entered -5 g\./,
  },
  {
    page: 'bobweight',
    name: 'ringMass',
    what: 'a negative mass with a real minus',
    text: '−23,5 g',
    say: /^Rings of one piston must be at least 0 g\. You entered −23,5 g\./,
  },
  {
    page: 'bobweight',
    name: 'rodsPerPin',
    what: 'a broken count',
    text: '1.5',
    say: /^Rods on one crankpin must be .*1\.5/,
  },
  {
    page: 'piston-motion',
    name: 'rodLength',
    what: 'a rod shorter than half the stroke',
    text: '30',
    say: /^Rod length, .* must be greater than half the stroke \(36\.50* mm\)\. You entered 30 mm\./,
  },
  {
    page: 'reversal-load',
    name: 'rodLength',
    what: 'a rod shorter than half the stroke',
    text: '36.5',
    say: /^Rod length, .* must be greater than half the stroke \(36\.50* mm\)\. You entered 36\.5 mm\./,
  },
  {
    page: 'piston-motion',
    name: 'pinOffset',
    what: 'an offset beyond rod length less throw',
    text: '120',
    say: /^Pin offset .* less than the rod length less half the stroke \(109\.50? mm\)\. You entered 120 mm\./,
  },
  {
    page: 'reversal-load',
    name: 'maxSpeed',
    what: 'a speed that overflows',
    text: '1e300',
    say: /./,
  },
];

describe('what cannot be used', () => {
  it.each(refused)('$page, $name: $what', async ({ page: path, name, text, say }) => {
    const page = await site.open(`${path}/`);
    const set = 'candidate';
    const before = await results(page, path);
    const box = field(page, path, name, set);
    await put(box, text);
    const standing = page.locator(`[data-calculator="${path}"] .standing`);
    await says(
      standing,
      /^The candidate shows the last good result, for .+, not the numbers in the form\./,
    );
    const beside = note(page, path, name, set).locator('.problem');
    if (await beside.count()) {
      expect(await seen(beside)).toMatch(say);
      expect(await box.getAttribute('aria-invalid')).toBe('true');
    } else {
      // No single field is to blame: the sentence stands with the results.
      expect(text).toBe('1e300');
      await says(standing, /grows past what can be computed/);
    }
    expect(await box.inputValue()).toBe(text);
    expect(await results(page, path)).toEqual(before);
    const cells = page.locator(`[data-calculator="${path}"] td[data-set="${set}"]`);
    expect(await cells.count()).toBeGreaterThan(5);
    // A folded table follows when the keys are quiet.
    await expect
      .poll(() => cells.evaluateAll((all) => all.filter((cell) => !cell.matches('.stale')).length))
      .toBe(0);
    await clean(page);

    // Nothing is lost: it is there after a reload, and mending it brings the result back.
    await page.reload();
    await expect.poll(() => field(page, path, name, set).inputValue()).toBe(text);
  });

  it('is mended by a good number', async () => {
    const page = await site.open('bobweight/');
    const box = field(page, 'bobweight', 'pistonMass', 'candidate');
    const cell = result(page, 'bobweight', 'reciprocatingPerCylinder', 'candidate');
    await enter(box, 'about 300');
    await says(note(page, 'bobweight', 'pistonMass', 'candidate'), 'about 300');
    await enter(box, '300');
    await shows(cell, 539.9, 'g');
    expect(await seen(page.locator('[data-calculator="bobweight"] .standing'))).toBe('');
    expect(await cell.getAttribute('class')).not.toContain('stale');
  });

  it('a ± that is no number is named, and the result stands', async () => {
    const page = await site.open('bobweight/');
    await openTool(page, 'bobweight', 'How sure (±)');
    for (const text of ['-1', 'some', '5 mm']) {
      await enter(page.locator('[id="bobweight-pistonMass-candidate-pm"]'), text);
      await says(
        note(page, 'bobweight', 'pistonMass', 'candidate'),
        new RegExp(`Piston, bare.*${text}`),
      );
      await clean(page);
    }
    await shows(result(page, 'bobweight', 'reciprocatingPerCylinder', 'candidate'), 557.9, 'g');
  });
});

describe('what is strange but can be', () => {
  it('speed zero and 1e9 are computed, and flagged', async () => {
    for (const path of ['piston-motion', 'reversal-load']) {
      const page = await site.open(`${path}/`);
      const output = path === 'piston-motion' ? 'accelerationTop' : 'partingPull';
      for (const text of ['0', '1e9']) {
        await enter(field(page, path, 'maxSpeed', 'candidate'), text);
        await says(note(page, path, 'maxSpeed', 'candidate'), 'Unusual, but computed');
        await says(
          result(page, path, output, 'candidate'),
          text === '0' ? /^0(\.0+)? / : /\d \d{3} \d{3} |×/,
        );
        await clean(page);
      }
    }
  });

  it('a mass of a ton is computed, and flagged', async () => {
    const page = await site.open('bobweight/');
    await enter(field(page, 'bobweight', 'bigEndMass', 'candidate'), '1000 kg');
    await says(note(page, 'bobweight', 'bigEndMass', 'candidate'), 'Unusual, but computed');
    await clean(page);
  });
});

describe('a damaged link', () => {
  it('of 100 kB is named and not used', async () => {
    const page = await site.open(`bobweight/#pistonMass=${'4'.repeat(100_000)}&v=1`);
    await says(page.locator('.bar-status'), /This link is 100\d{3} characters long/);
    expect(await field(page, 'bobweight', 'pistonMass', 'baseline').inputValue()).toBe('428.0');
    await clean(page);
  });

  it('is used as far as it can be read', async () => {
    const page = await site.open(
      'bobweight/#pistonMass=495.2g,abc&ringMass=350mm,12g&wingspan=3m,4m&pinMass&=&lockMass=%E0%A4%A,1g&v=1',
    );
    const visit = page.locator('.visit');
    await says(visit, 'Piston, bare (candidate)');
    await says(visit, 'Rings of one piston (baseline)');
    await says(visit, '“wingspan”');
    await says(visit, '“pinMass” in this link has no value');
    expect(await field(page, 'bobweight', 'pistonMass', 'baseline').inputValue()).toBe('495.2');
    expect(await field(page, 'bobweight', 'ringMass', 'candidate').inputValue()).toBe('12');
    await clean(page);
  });

  it('that was cut says so', async () => {
    const page = await site.open('bobweight/#pistonMass=495.2g,398.6g&pinMass=118.2g,77');
    await says(page.locator('.visit'), 'The end of this link is missing');
    expect(await field(page, 'bobweight', 'pistonMass', 'candidate').inputValue()).toBe('398.6');
    expect(await field(page, 'bobweight', 'pinMass', 'candidate').inputValue()).toBe('77.0');
  });

  it('that is an anchor of the page is no link', async () => {
    const page = await site.open('bobweight/#calculator-bobweight');
    expect(await page.locator('.visit').count()).toBe(0);
    expect(await seen(page.locator('.bar-status'))).toBe('');
  });
});

describe('a damaged file', () => {
  it.each([
    ['cut', '{"format":"throwbook', /file/i],
    ['of another sort', '[1,2,3]', /file/i],
    ['empty', '', /file/i],
    ['not text', '\u0000\u0001\u0002', /file/i],
  ])('that is %s is refused in a sentence, and nothing changes', async (_, text, say) => {
    const page = await site.open('bobweight/');
    await enter(field(page, 'bobweight', 'pistonMass', 'baseline'), '444');
    await page.getByRole('button', { name: 'Open file' }).click();
    await page
      .getByLabel('File of a saved job')
      .setInputFiles({ name: 'job.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await says(page.locator('.open-refusal'), say);
    expect(await page.getByRole('button', { name: 'Open it' }).count()).toBe(0);
    expect(await field(page, 'bobweight', 'pistonMass', 'baseline').inputValue()).toBe('444');
  });
});

describe('storage', () => {
  async function goesOn(page: Page, notice: string): Promise<void> {
    await enter(field(page, 'bobweight', 'pistonMass', 'candidate'), '300');
    await shows(result(page, 'bobweight', 'reciprocatingPerCylinder', 'candidate'), 539.9, 'g');
    await says(page.locator('.bar-status'), notice);
    expect(await field(page, 'bobweight', 'pistonMass', 'candidate').inputValue()).toBe('300');
    await clean(page);
  }

  it('that is full is named, and the page goes on', async () => {
    const page = await site.open('bobweight/', {
      before: () => {
        Storage.prototype.setItem = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
      },
    });
    await goesOn(page, 'The storage of this browser is full.');
  });

  it('that is really full is named, and what was there stays', async () => {
    const page = await site.open('bobweight/');
    await put(field(page, 'bobweight', 'ringMass', 'baseline'), '33.3');
    await page.evaluate(() => {
      let size = 1 << 20;
      for (let part = 0; size > 0; part += 1) {
        try {
          localStorage.setItem(`filler ${String(part)}`, 'x'.repeat(size));
        } catch {
          size >>= 1;
        }
      }
    });
    const notebook = await stored(page);
    await goesOn(page, 'The storage of this browser is full.');
    expect(await stored(page)).toEqual(notebook);
    expect(await field(page, 'bobweight', 'ringMass', 'baseline').inputValue()).toBe('33.3');
  });

  it('that is forbidden is named, and the page goes on', async () => {
    const page = await site.open('bobweight/', {
      before: () => {
        for (const name of ['localStorage', 'sessionStorage']) {
          Object.defineProperty(window, name, {
            get() {
              throw new DOMException('denied', 'SecurityError');
            },
          });
        }
      },
    });
    await goesOn(page, 'This browser does not let the page keep your numbers.');
  });

  it('with a damaged value loses only that value', async () => {
    const reader = await site.reader();
    const first = await reader.open('bobweight/');
    await enter(field(first, 'bobweight', 'ringMass', 'baseline'), '33.3');
    await first.evaluate(() => {
      localStorage.setItem('throwbook/1/baseline/pistonMass', '{"text":');
    });
    await first.reload();
    await says(
      first.locator('.bar-status'),
      'The stored value of pistonMass (baseline) is damaged.',
    );
    expect(await field(first, 'bobweight', 'ringMass', 'baseline').inputValue()).toBe('33.3');
    await clean(first);
  });
});
