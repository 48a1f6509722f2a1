import { expect, test } from 'vitest';
import * as quantities from '../../src/calculators/quantities.ts';
import { fromFile } from '../../src/notebook/file.ts';
import { Notebook } from '../../src/notebook/notebook.svelte.ts';
import { nameToday, renamed } from '../../src/notebook/renamed.ts';
import { openShelf, renameOnShelf, valueKey } from '../../src/notebook/storage.ts';
import { arrive, parseVisit } from '../../src/notebook/visit.ts';
import { emptySets } from '../../src/notebook/values.ts';
import { FakeStorage, FakeTab } from './fake-world.ts';

const dictionary = new Map(Object.values(quantities).map((entry) => [entry.name as string, entry]));
const before = 'targetPressure';
const today = 'pressureShare';
const half = { text: '0.5', unit: 'ratio' };
const third = { text: '0.3', unit: 'ratio' };

test('a former name is in the dictionary no more, and stands for one that is', () => {
  expect([...renamed]).toContainEqual([before, today]);
  for (const [former, name] of renamed) {
    expect(dictionary.has(former)).toBe(false);
    expect(dictionary.has(name)).toBe(true);
  }
  expect(nameToday('bore')).toBe('bore');
});

test('an old link opens under the new name, without a word', () => {
  const arrival = arrive(`#${before}=0.5ratio,0.3ratio&v=1`, dictionary);
  expect(arrival).toMatchObject({
    visit: {
      values: { ...emptySets(), baseline: { [today]: half }, candidate: { [today]: third } },
      problems: [],
    },
  });
});

test('a balance factor of an old link is the fraction that it was, and not a per cent', () => {
  const arrival = arrive('#reciprocatingFraction=0.50,0.55&v=1', dictionary);
  const factor = (text: string) => ({ reciprocatingFraction: { text, unit: 'ratio' } });
  expect(arrival).toMatchObject({
    visit: { values: { baseline: factor('0.50'), candidate: factor('0.55') }, problems: [] },
  });
});

test('an old file opens under the new name, whole or cut short', () => {
  const file = `{
  "format": "throwbook-notebook",
  "version": 1,
  "job": "",
  "sets": {
    "baseline": {
      "${before}": {"text":"0.5","unit":"ratio"}
    },
    "candidate": {}
  }
}`;
  const values = { ...emptySets(), baseline: { [today]: half } };
  expect(fromFile(file)).toMatchObject({ values, problems: [] });
  expect(fromFile(file.slice(0, -8)).values).toEqual(values);
});

test('a stored value moves to the new name, and gives way to one that stands there', () => {
  const storage = new FakeStorage();
  storage.kept.set(valueKey('baseline', before), JSON.stringify(half));
  storage.kept.set(valueKey('candidate', before), JSON.stringify(half));
  storage.kept.set(valueKey('candidate', today), JSON.stringify(third));
  renameOnShelf(openShelf(() => storage));
  expect(Object.fromEntries(storage.kept)).toEqual({
    [valueKey('baseline', today)]: JSON.stringify(half),
    [valueKey('candidate', today)]: JSON.stringify(third),
  });
});

test('the notebook shows a value stored under the former name', () => {
  const tab = new FakeTab();
  tab.shared.kept.set(valueKey('baseline', before), JSON.stringify(third));
  expect(new Notebook(tab).value('baseline', quantities.pressureShare)).toEqual(third);
});

test('a notebook that was put away, and a visit that goes on, bear the new name', () => {
  const put = JSON.stringify({ job: '', values: { baseline: { [before]: half }, candidate: {} } });
  expect(parseVisit(put)?.values.baseline).toEqual({ [today]: half });
});
