import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import * as quantities from '../../src/calculators/quantities.ts';
import { means, sources } from '../../src/notebook/carried.ts';
import { carriedText } from '../../src/notebook/carrying.svelte.ts';
import { readField } from '../../src/notebook/evaluation.ts';
import { Notebook } from '../../src/notebook/notebook.svelte.ts';
import { homeSet, type StoredValue } from '../../src/notebook/values.ts';
import { meanOf, weighedLists } from '../../src/notebook/weighed.ts';
import { FakeTab } from './fake-world.ts';

const declared: Readonly<Record<string, AnyCalculator>> = calculators;
const all = Object.entries(sources);
const dictionary = new Map(Object.values(quantities).map((entry) => [entry.name, entry]));
const { smallEndMass, peakPressure, pistonMass } = quantities;

describe('the results that other pages are filled with', () => {
  test('are those that are declared as carried', () => {
    const carried = Object.values(declared).flatMap(({ id, outputs }) =>
      Object.entries(outputs).flatMap(([output, entry]) =>
        entry.type !== 'series' && entry.carries !== undefined
          ? [`${id}.${output} to ${entry.carries}`]
          : [],
      ),
    );
    const listed = all.map(([to, { calculator, output }]) => `${calculator}.${output} to ${to}`);
    expect([...listed].sort()).toEqual([...carried].sort());
    expect(listed.length).toBeGreaterThanOrEqual(9);
  });

  it.each(all)(
    '%s: of one kind, from a page that has it, after numbers of each set',
    (name, source) => {
      const from = declared[source.calculator];
      const output = from?.outputs[source.output];
      const entry = dictionary.get(name);
      if (output?.type === undefined || output.type === 'series') throw new Error('no number');
      expect(entry?.type === 'number' && entry.kind).toBe(output.kind);
      if (source.plusMinus !== undefined) {
        const spread = from?.outputs[source.plusMinus];
        expect(spread?.type !== 'series' && spread?.kind).toBe(output.kind);
      }
      for (const need of source.needs) {
        const input = from?.inputs[need];
        expect(input && homeSet('candidate', input), need).toBe('candidate');
      }
      expect(source.needs.length).toBeGreaterThan(0);
      const topic = readFileSync(
        new URL(`../../content/topics/${source.page}/index.mdx`, import.meta.url),
        'utf8',
      );
      expect(topic).toContain(`title: ${source.title}\n`);
      expect(/^calculators: \[(.*)\]$/m.exec(topic)?.[1]?.split(', ')).toContain(source.calculator);
      // Somebody asks for it.
      const asking = Object.values(declared).filter(
        ({ id, inputs }) => id !== source.calculator && Object.hasOwn(inputs, name),
      );
      expect(asking.length).toBeGreaterThan(0);
    },
  );

  test('run in no circle', () => {
    const feeds = (id: string): readonly string[] =>
      Object.keys(declared[id]?.inputs ?? {}).flatMap((name) => {
        const from = sources[name]?.calculator;
        return from === undefined || from === id ? [] : [from];
      });
    const walk = (id: string, on: readonly string[]): void => {
      expect(on, [...on, id].join(' from ')).not.toContain(id);
      for (const next of feeds(id)) walk(next, [...on, id]);
    };
    for (const id of Object.keys(declared)) walk(id, []);
    // No calculator is filled by its own result either.
    for (const [name, { calculator }] of all)
      expect(Object.keys(declared[calculator]?.inputs ?? {})).not.toContain(name);
    expect(readdirSync(new URL('../../content/topics', import.meta.url)).length).toBeGreaterThan(5);
  });

  // The example is one engine: what a page makes of it stands as the example of the pages that ask for it.
  it.each(all)('%s: the example is what the page makes of the example', (name, source) => {
    const from = declared[source.calculator];
    const entry = dictionary.get(name);
    if (from === undefined || entry?.type !== 'number') throw new Error('not there');
    for (const set of ['baseline', 'candidate'] as const) {
      const book = new Notebook(new FakeTab());
      const input = Object.fromEntries(
        Object.entries(from.inputs).map(([key, each]) => [
          key,
          readField(each, book.value(set, each)).value,
        ]),
      );
      const result = from.compute(input)[source.output];
      const example = readField(entry, book.value(set, entry)).value;
      if (typeof result !== 'number' || typeof example !== 'number') throw new Error('no number');
      expect(Math.abs(result - example) / example, set).toBeLessThan(0.02);
    }
  });
});

describe('a number that another page gives', () => {
  const value = { text: '171.3', unit: 'g', plusMinus: '0.2' };

  test('stands where the reader has written none, and is no example', () => {
    const book = new Notebook(new FakeTab());
    book.carry('candidate', 'smallEndMass', value);
    expect(book.value('candidate', smallEndMass)).toEqual(value);
    expect(book.isExample('candidate', smallEndMass)).toBe(false);
    expect(book.isExample('baseline', smallEndMass)).toBe(true);
    expect(book.carriedFor('candidate', smallEndMass)).toEqual({ value, stands: true });
    expect(book.carriedFor('baseline', smallEndMass)).toBeUndefined();
    book.carry('candidate', 'smallEndMass', undefined);
    expect(book.isExample('candidate', smallEndMass)).toBe(true);
  });

  test('gives way to the reader’s own, and comes back when that is taken out', () => {
    const book = new Notebook(new FakeTab());
    book.carry('candidate', 'smallEndMass', value);
    book.put('candidate', 'smallEndMass', { text: '170', unit: 'g' }, smallEndMass);
    expect(book.value('candidate', smallEndMass)).toEqual({ text: '170', unit: 'g' });
    expect(book.carriedFor('candidate', smallEndMass)?.stands).toBe(false);
    book.clear('candidate', 'smallEndMass');
    expect(book.value('candidate', smallEndMass)).toEqual(value);
  });

  test('is worked, and so neither kept on the device nor written to a file', () => {
    const tab = new FakeTab();
    const book = new Notebook(tab);
    book.carry('candidate', 'smallEndMass', value);
    expect(tab.shared.kept.size).toBe(0);
    expect(book.contents.values.candidate).toEqual({});
    expect(book.hasOwn).toBe(false);
  });

  test('counts as given for what is made of it in turn', () => {
    const book = new Notebook(new FakeTab());
    expect(book.isGiven('candidate', 'smallEndMass')).toBe(false);
    book.carry('candidate', 'smallEndMass', value);
    expect(book.isGiven('candidate', 'smallEndMass')).toBe(true);
    book.put('baseline', 'pistonMass', { text: '500' }, pistonMass);
    expect(book.isGiven('baseline', 'pistonMass')).toBe(true);
    expect(book.isGiven('candidate', 'pistonMass')).toBe(false);
  });

  test('is text in the metric unit of its quantity, to six digits and a tenth of its ±', () => {
    const text = carriedText(peakPressure, 7_312_345.678, 61_234);
    expect(text).toEqual({ text: '73.12', unit: peakPressure.metric, plusMinus: '0.61' });
    expect(readField(peakPressure, text).value).toBeCloseTo(7_312_000, 0);
    expect(carriedText(smallEndMass, 0.17, undefined)).toEqual({ text: '170', unit: 'g' });
    expect(carriedText(smallEndMass, 0.180_133_333, undefined).text).toBe('180.133');
    // A ± of 3 g leaves the tenths, one of 30 g none.
    expect(carriedText(smallEndMass, 0.180_4, 0.003).text).toBe('180.4');
    expect(carriedText(smallEndMass, 0.180_4, 0.03).text).toBe('180');
    expect(carriedText(smallEndMass, 0.180_4, 5)).toEqual({
      text: '180',
      unit: 'g',
      plusMinus: '5000',
    });
  });
});

describe('the mean of the parts that were weighed', () => {
  const of = (text: string, more: Partial<StoredValue> = {}): StoredValue | undefined =>
    meanOf(quantities.pistonMasses, { text, unit: 'g', ...more });

  test('is worked by hand, says how many it is of, and has a digit more than they', () => {
    expect(of('428.0; 427.1; 429.2; 428.6; 426.8; 428.3; 427.7; 429.0')).toEqual({
      text: '428.09',
      unit: 'g',
      note: 'mean of the 8 weighed',
    });
    expect(of('428.0')).toEqual({ text: '428', unit: 'g', note: 'the one weighed' });
    // 16 oz are a pound: 453.59237 g, read to an ounce and so given to a gram.
    expect(of('15 oz; 17 oz')?.text).toBe('454');
  });

  test('leaves out what is not weighed yet, and is none of nothing', () => {
    expect(of('428; –; 430; n/a')?.note).toBe('mean of the 2 weighed');
    expect(of('428; –; 430; n/a')?.text).toBe('429');
    expect(of('n/a')).toBeUndefined();
    expect(of('')).toBeUndefined();
  });

  test('has the ± of one part, which a mean of many does not make smaller', () => {
    expect(of('428; 430', { plusMinus: '0.1' })?.plusMinus).toBe('0.1');
    expect(of('15; 15', { unit: 'oz', plusMinus: '0.1' })?.plusMinus).toBe('0.1\u00a0oz');
    expect(of('15; 15', { unit: 'oz', plusMinus: '2 g' })?.plusMinus).toBe('2 g');
  });

  test('fills quantities of the same kind and unit, each from a list of its own', () => {
    expect(Object.values(means).sort()).toEqual(Object.keys(weighedLists).sort());
    for (const [name, list] of Object.entries(means)) {
      const [entry, from] = [dictionary.get(name), weighedLists[list]];
      expect(from).toBe(dictionary.get(list));
      expect(entry?.type).toBe('number');
      if (entry?.type !== 'number') continue;
      expect([entry.kind, entry.metric]).toEqual([from?.kind, from?.metric]);
      expect(entry.usual).toEqual(from?.usual);
      // The example agrees with itself.
      for (const set of ['baseline', 'candidate'] as const) {
        const mean = from && meanOf(from, { text: from.demo[set], unit: 'g' });
        const example = Number.parseFloat(entry.demo[set]);
        expect(Math.abs(Number(mean?.text) - example) / example).toBeLessThan(0.005);
      }
    }
  });
});
