import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { AnyCalculator, Entry } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { encodeLink } from '../../src/notebook/link.ts';
import { takeApart } from '../../src/units/take-apart.ts';
import { field } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();
const declared: Readonly<Record<string, AnyCalculator>> = calculators;

/** A link as the page made it while all these calculators stood on it: every quantity of both sets. */
function linkOfThen(
  page: string,
  ids: readonly string[],
  own: Readonly<Record<string, string>>,
): string {
  const entries = new Map<string, Entry>();
  for (const id of ids)
    for (const entry of Object.values(declared[id]?.inputs ?? {})) entries.set(entry.name, entry);
  const values = [...entries.values()].map((entry) => {
    const of = (set: 'baseline' | 'candidate') => {
      const text = own[entry.name] ?? entry.demo[set];
      if (entry.type !== 'number') return { text, unit: entry.type === 'list' ? entry.metric : '' };
      const typed = takeApart(text, entry.metric);
      return { text: typed?.number ?? text, unit: typed?.unit ?? entry.metric };
    };
    const both = entry.type === 'list' || entry.common !== true;
    return {
      name: entry.name,
      entry,
      baseline: of('baseline'),
      ...(both ? { candidate: of('candidate') } : {}),
    };
  });
  return encodeLink({ address: `${page}/`, letter: { job: 'No.17' }, version: 1, values });
}

const bobweight = linkOfThen(
  'bobweight',
  ['bobweight', 'partial-balance', 'bobweight-error', 'bobweight-implied'],
  { pistonMass: '444 g', bankAngle: '60 deg', bobweight: '1777 g', bobweightError: '7 g' },
);
const inertia = linkOfThen(
  'rotating-inertia',
  ['rotating-inertia', 'inertia-through-gears', 'speed-ripple', 'bench-swing', 'rod-swing'],
  { carMass: '999 kg', energySwing: '77 J', swingTime: '23.4 s', smallEndTime: '37.11 s' },
);

/** The lines that lead on with the numbers of a link. */
function lines(page: Page): Promise<readonly string[]> {
  return page
    .locator('.moved-numbers:not([hidden]) a')
    .evaluateAll((links) => links.map((link) => link.textContent ?? ''));
}

describe('a link with numbers, made when a page had more parts', () => {
  it.each([
    [bobweight, 'Balance factor', [['partial-balance', 'bankAngle', '60']]],
    [
      bobweight,
      'A quoted bobweight',
      [
        ['bobweight-implied', 'bobweight', '1777'],
        ['bobweight-implied', 'pistonMass', '444'],
      ],
    ],
    [bobweight, 'Residual unbalance', [['bobweight-error', 'bobweightError', '7']]],
    [inertia, 'Inertia through the gears', [['inertia-through-gears', 'carMass', '999']]],
    [inertia, 'Speed fluctuation', [['speed-ripple', 'energySwing', '77']]],
    [
      inertia,
      'Inertia by swinging',
      [
        ['bench-swing', 'swingTime', '23.4'],
        ['rod-swing', 'smallEndTime', '37.11'],
      ],
    ],
  ] as const)('leads on from %.20s… to %s, with its numbers', async (link, title, fields) => {
    const page = await site.arrive(link);
    await page.locator('.moved-numbers').getByRole('link', { name: title, exact: true }).click();
    await page.locator('h1', { hasText: title }).waitFor();
    for (const [calculator, name, text] of fields)
      await expect.poll(() => field(page, calculator, name, 'baseline').inputValue()).toBe(text);
    expect(await page.locator('.visit').innerText()).toContain('No.17');
  });

  it('says for which, as long as its numbers are shown', async () => {
    const page = await site.arrive(bobweight);
    await expect
      .poll(() => lines(page))
      .toEqual(['Balance factor', 'A quoted bobweight', 'Residual unbalance']);
    const piston = field(page, 'bobweight', 'pistonMass', 'baseline');
    await expect.poll(() => piston.inputValue()).toBe('444');
    await page.getByRole('button', { name: 'Back to the example' }).click();
    await expect.poll(() => lines(page)).toEqual([]);
  });

  it('of the page as it is now leads nowhere else', async () => {
    const page = await site.arrive(linkOfThen('bobweight', ['bobweight'], {}));
    await page.locator('.visit').waitFor();
    await page.locator('[data-calculator="bobweight"][data-alive]').waitFor();
    expect(await lines(page)).toEqual([]);
  });
});

describe('a link to a place that has gone to another page', () => {
  it.each([
    ['bobweight/#where-the-half-comes-from', 'balance-factor/'],
    ['bobweight/#calculator-partial-balance', 'balance-factor/'],
    ['bobweight/#checking-a-quoted-bobweight', 'quoted-bobweight/'],
    ['bobweight/#calculator-bobweight-implied', 'quoted-bobweight/'],
    ['bobweight/#what-a-gram-does', 'residual-unbalance/'],
    ['bobweight/#calculator-bobweight-error', 'residual-unbalance/'],
    [
      'bobweight/working/#working-bobweight-error',
      'residual-unbalance/working/#working-bobweight-error',
    ],
    [
      'bobweight/working/#working-partial-balance',
      'balance-factor/working/#working-partial-balance',
    ],
    ['rotating-inertia/#through-the-gears-to-the-road', 'inertia-through-gears/'],
    ['rotating-inertia/#calculator-inertia-through-gears', 'inertia-through-gears/'],
    ['rotating-inertia/#what-a-light-flywheel-costs', 'speed-fluctuation/'],
    ['rotating-inertia/#predict-light-flywheel', 'speed-fluctuation/'],
    ['rotating-inertia/#calculator-speed-ripple', 'speed-fluctuation/'],
    ['rotating-inertia/#measuring-it-on-the-bench', 'inertia-by-swinging/'],
    ['rotating-inertia/#calculator-bench-swing', 'inertia-by-swinging/'],
    ['rotating-inertia/#calculator-rod-swing', 'inertia-by-swinging/'],
    [
      'rotating-inertia/working/#working-rod-swing',
      'inertia-by-swinging/working/#working-rod-swing',
    ],
  ])('%s shows the line that leads to %s, without a script too', async (from, to) => {
    const page = await site.arrive(from, { javaScriptEnabled: false });
    const link = page.locator(
      `.moved:has([id="${from.replace(/^.*#/u, '')}"]) a, p.moved[id="${from.replace(/^.*#/u, '')}"] a`,
    );
    expect(await link.getAttribute('href')).toBe(`/${to}`);
    const { top = -1, bottom = Infinity } = await link.evaluate(
      (node) => node.getBoundingClientRect().toJSON() as DOMRect,
    );
    expect(top).toBeGreaterThanOrEqual(0);
    expect(bottom).toBeLessThanOrEqual(page.viewportSize()?.height ?? 0);
  });

  it('cautions are where they were', async () => {
    for (const [path, ids] of [
      ['bobweight/', ['weighing', 'balancing', 'twisting']],
      ['rotating-inertia/', ['flywheel', 'twisting', 'running']],
    ] as const) {
      const page = await site.arrive(path);
      for (const id of ids) expect(await page.locator(`#caution-${id}`).count()).toBe(1);
    }
  });
});
