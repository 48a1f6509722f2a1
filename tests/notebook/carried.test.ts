import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import type { AnyCalculator } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import * as quantities from '../../src/calculators/quantities.ts';
import { sources } from '../../src/notebook/carried.ts';
import { carriedText } from '../../src/notebook/carrying.svelte.ts';
import { readField } from '../../src/notebook/evaluation.ts';
import { Notebook } from '../../src/notebook/notebook.svelte.ts';
import { homeSet } from '../../src/notebook/values.ts';
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
