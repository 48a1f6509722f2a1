import type { Locator } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { AnyCalculator, Entry, SetId, Value } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { unitFor } from '../../src/calculators/output-unit.ts';
import { readList, readQuantity } from '../../src/units/read.ts';
import { fromSI, unitOf } from '../../src/units/units.ts';
import { sitePages, topicPages } from './support/build.ts';
import { printed, seen } from './support/form.ts';
import { useSite } from './support/site.ts';

const site = useSite();
const all: Readonly<Record<string, AnyCalculator>> = calculators;

function demoValue(entry: Entry, set: SetId): Value {
  const common = entry.type !== 'list' && entry.common === true;
  const text = entry.demo[common ? 'baseline' : set];
  if (entry.type === 'choice') return text;
  if (text === '') return undefined;
  const context = { label: entry.label, kind: entry.kind, unit: entry.metric };
  const read =
    entry.type === 'list' ? readList(text, context, entry.most) : readQuantity(text, context);
  if (!read.ok) throw new Error(read.say);
  return read.si;
}

function computed(calculator: AnyCalculator, set: SetId) {
  const input = Object.fromEntries(
    Object.values(calculator.inputs).flatMap((entry) => {
      const value = demoValue(entry, set);
      return value === undefined ? [] : [[entry.name, value] as const];
    }),
  );
  return { input, output: calculator.compute(input) };
}

/** Whether a printed text says the computed result, to its last digit. */
function agrees(text: string, result: unknown, unit: string): boolean {
  if (typeof result === 'object' && result !== null && 'absent' in result)
    return text === result.absent;
  if (typeof result !== 'number') return false;
  const { value, half, unit: symbol } = printed(text);
  const wanted = fromSI(result, unit);
  return Math.abs(value - wanted) <= 1.01 * half && symbol === unitOf(unit).symbol;
}

/** What a calculator shows, as a reader sees it: `output set` for the results of a set, the bare name for a comparison. */
async function texts(island: Locator): Promise<Readonly<Record<string, string>>> {
  const pairs = await island
    .locator('tr[data-output] td[data-set], [data-comparison]')
    .evaluateAll((cells) =>
      cells.map((cell) => {
        const row = cell.closest('tr')?.getAttribute('data-output');
        const compared = cell.getAttribute('data-comparison');
        const place = compared ?? `${row ?? ''} ${cell.getAttribute('data-set') ?? ''}`;
        const part = cell.querySelector<HTMLElement>(
          compared === null ? ':scope > span' : 'strong',
        );
        return [place, (part?.innerText ?? '').replace(/\s+/g, ' ').trim()] as const;
      }),
    );
  return Object.fromEntries(pairs);
}

describe('without JavaScript', () => {
  it.each(topicPages().map(({ path }) => [path]))(
    '%s shows every result of the example, as its declaration computes it',
    async (path) => {
      const page = await site.open(path, { javaScriptEnabled: false });
      // A further calculator is a line until it is opened, and may stand in a section that is folded.
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll<HTMLDetailsElement>(
          '.section, .calculator-more',
        ))
          fold.open = true;
      });
      const islands = await page.locator('[data-calculator]').all();
      expect(islands.length).toBeGreaterThan(0);
      for (const island of islands) {
        const id = (await island.getAttribute('data-calculator')) ?? '';
        const calculator = all[id];
        if (calculator === undefined) throw new Error(`No calculator ${id}.`);
        const fold = island.locator('.more-results > summary');
        if ((await fold.count()) > 0) await fold.click();
        const both = {
          baseline: computed(calculator, 'baseline'),
          candidate: computed(calculator, 'candidate'),
        };
        const shown = await texts(island);
        for (const [name, output] of Object.entries(calculator.outputs)) {
          if (output.type === 'series') continue;
          for (const set of ['baseline', 'candidate'] as const) {
            const text = shown[`${name} ${set}`] ?? 'not shown';
            const right = agrees(text, both[set].output[name], unitFor(output, 'metric'));
            expect.soft(right, `${id} ${name} ${set}: ${text}`).toBe(true);
          }
        }
        const comparison = calculator.compare?.(both) ?? {};
        for (const [name, output] of Object.entries(calculator.comparisons ?? {})) {
          const text = shown[name] ?? 'not shown';
          const right = agrees(text, comparison[name], unitFor(output, 'metric'));
          expect.soft(right, `${id} ${name}: ${text}`).toBe(true);
        }
        expect.soft((await seen(island.locator('.plain-words'))).length, id).toBeGreaterThan(40);
      }
    },
  );

  it('every calculator has a page', () => {
    const shown = new Set(
      sitePages().flatMap(({ html }) =>
        [...html.matchAll(/\sdata-calculator="([^"]+)"/g)].map(([, id]) => id),
      ),
    );
    expect(Object.keys(all).filter((id) => !shown.has(id))).toEqual([]);
  });

  it.each(sitePages().map(({ path }) => [path || '(first page)', path]))(
    '%s unfolds its answers, and shows no control that needs it',
    async (_, path) => {
      const page = await site.open(path, { javaScriptEnabled: false });
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll<HTMLDetailsElement>('.section'))
          fold.open = true;
      });
      for (const question of await page.locator('.predict').all()) {
        const answer = question.locator('.predict-answer > :not(summary)').first();
        expect(await answer.isVisible()).toBe(false);
        await question.getByText('Show the answer').click();
        expect(await answer.isVisible()).toBe(true);
        expect(await question.locator('label').count()).toBe(3);
      }
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll('details')) fold.open = true;
      });
      // A symbol that can be questioned is also the symbol itself, so it stays.
      const dead = page.locator(
        'button:not([data-ask]), input[type="range"], input[type="radio"], input[type="checkbox"], input[type="file"]',
      );
      const visible = await dead.evaluateAll((controls) =>
        controls
          .filter((control) => control.checkVisibility())
          .map((control) => control.outerHTML.slice(0, 120)),
      );
      expect(visible).toEqual([]);
    },
  );

  it('numbers in prose stand too', async () => {
    const page = await site.open('piston-motion/', { javaScriptEnabled: false });
    // A slot for the other system of units has nothing to say while its own would be the same.
    const slots = page.locator('[data-v]:not([data-also])');
    expect(await slots.count()).toBeGreaterThan(10);
    const empty = await slots.evaluateAll((found) =>
      found
        .filter((slot) => !/\d|[a-z]{4}/.test(slot.textContent ?? ''))
        .map((slot) => slot.outerHTML),
    );
    expect(empty).toEqual([]);
  });
});
