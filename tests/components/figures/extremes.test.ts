import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import type { AnyCalculator, Entry, SetId } from '../../../src/calculators/define.ts';
import { calculators } from '../../../src/calculators/index.ts';
import Drawn from '../../../src/components/figures/Drawn.svelte';
import { figureIds, figureOf } from '../../../src/components/figures/static.ts';
import type { FigureSet, FigureWork } from '../../../src/components/figures/types.ts';
import { evaluate } from '../../../src/notebook/evaluation.ts';
import { exampleOf } from '../../../src/notebook/example.ts';
import { standingOf } from '../../../src/notebook/standing.ts';
import type { StoredValue } from '../../../src/notebook/values.ts';

/** Neither a picture nor its words and tables may hold what a failed computation leaves behind. */
const rubbish = /NaN|Infinity|∞|undefined|\[object /;

/** What stands in one field, instead of the example, in both sets. */
interface Change {
  readonly name: string;
  readonly text: string;
}

/** A set as the page would have it after that change; `known`: the example was worked before. */
function setOf(
  calculator: AnyCalculator,
  id: SetId,
  change: Change | undefined,
  known: boolean,
): FigureSet {
  const example = (entry: Entry): StoredValue => exampleOf(id, entry);
  const typed = (entry: Entry): StoredValue =>
    entry.name === change?.name ? { ...example(entry), text: change.text } : example(entry);
  const found = evaluate(calculator, typed);
  const { input, output } = found;
  if (output !== undefined) return { input, output, stale: false, standing: undefined };
  const values = (of: typeof typed): Record<string, StoredValue> =>
    Object.fromEntries(Object.values(calculator.inputs).map((entry) => [entry.name, of(entry)]));
  const last = known ? evaluate(calculator, example) : undefined;
  const standing = standingOf(calculator, found, values(typed), last && values(example));
  return { input: last?.input, output: last?.output, stale: true, standing };
}

function htmlOf(
  Part: NonNullable<ReturnType<typeof figureOf>>['default'],
  calculator: AnyCalculator,
  change: Change | undefined,
  known = true,
): string {
  const [baseline, candidate] = (['baseline', 'candidate'] as const).map((id) =>
    setOf(calculator, id, change, known),
  );
  if (baseline === undefined || candidate === undefined) throw new Error('There are two sets.');
  const work: FigureWork = {
    sets: { baseline, candidate },
    system: 'metric',
    put: () => undefined,
  };
  return render(Drawn, { props: { Part, work } }).body;
}

const all: Readonly<Record<string, AnyCalculator>> = calculators;
const figures = figureIds.flatMap((id) => {
  const figure = figureOf(id);
  const calculator = all[figure?.calculator ?? ''];
  return figure === undefined || calculator === undefined ? [] : [{ id, figure, calculator }];
});

describe.each(figures)('$id', ({ figure: { default: Part }, calculator }) => {
  const numbers = Object.values(calculator.inputs).filter((entry) => entry.type === 'number');

  test.each(numbers.map((entry) => [entry.name, entry] as const))(
    '%s at zero, at its limits and far beyond',
    (name, entry) => {
      for (const text of [
        '0',
        ...entry.hard.map(String),
        '1e15',
        '1e25',
        '1e308',
        '1e-25',
        '1e-300',
      ])
        expect(htmlOf(Part, calculator, { name, text }), text).not.toMatch(rubbish);
    },
  );

  test('is marked with what its last good numbers were for', () => {
    const [entry] = numbers.filter((each) => each.common !== true);
    if (entry === undefined) throw new Error('The figure has no number to change.');
    const html = htmlOf(Part, calculator, { name: entry.name, text: '4x' });
    expect(html).toContain('Drawn for the last good numbers of the baseline (');
    expect(html).toContain(exampleOf('candidate', entry).text);
    expect(html).toContain('<svg');
  });

  test('says in words, and without a number, that there is nothing to draw', () => {
    const [entry] = numbers;
    if (entry === undefined) throw new Error('The figure has no number to change.');
    const html = htmlOf(Part, calculator, { name: entry.name, text: '4x' }, false);
    expect(html).not.toContain('<svg');
    const words = html.replace(/<[^>]*>/g, '');
    expect(words).toContain('There is nothing to draw');
    expect(words).toContain(entry.label);
    expect(words.replaceAll(entry.label, '')).not.toMatch(/\d/);
  });

  test('its description stands once', () => {
    const html = htmlOf(Part, calculator, undefined);
    const caption = /<figcaption[^>]*>([\s\S]*?)<\/figcaption>/.exec(html)?.[1] ?? '';
    const words = caption.replace(/<[^>]*>/g, '').trim();
    expect(words.length).toBeGreaterThan(40);
    expect(html.split(words)).toHaveLength(2);
  });
});
