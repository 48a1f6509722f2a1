import { expect, test } from 'vitest';
import { optional } from '../../src/calculators/define.ts';
import { platformMass, swingMass } from '../../src/calculators/quantities.ts';
import { loadDictionary } from '../../src/notebook/dictionary.ts';
import { exampleOf } from '../../src/notebook/example.ts';
import { bringsNumbersFor, movedFrom } from '../../src/notebook/moved.ts';
import { Notebook } from '../../src/notebook/notebook.svelte.ts';
import { emptyContents } from '../../src/notebook/values.ts';
import { FakeTab } from './fake-world.ts';

await loadDictionary();

/** A tab that goes from page to page. */
class Walk extends FakeTab {
  page = 'rotating-inertia';
  override address(): string {
    return `https://shop.example/${this.page}/`;
  }
}

/** What a link of the page brings to the page of swings: to a field that it names, and to one that can be left empty. */
function carried(link: string): readonly string[] {
  const tab = new Walk(undefined, link);
  new Notebook(tab).open();
  tab.page = 'inertia-by-swinging';
  tab.fragment = '';
  const book = new Notebook(tab);
  book.open();
  return [swingMass, optional(platformMass)].map((entry) => book.value('baseline', entry).text);
}

test('a link of the page as it was brings the numbers of a part, and leaves empty what it left empty', () => {
  expect(
    carried('#crankInertia=0.05kgm2,0.04kgm2&swingMass=21kg,19kg&swingTime=22s,21s&v=1'),
  ).toEqual(['21', '']);
});

test('a link of the page as it is now says nothing of the part: the example stands there', () => {
  const example = exampleOf('baseline', platformMass).text;
  expect(carried('#crankInertia=0.05kgm2,0.04kgm2&v=1')).toEqual([
    exampleOf('baseline', swingMass).text,
    example,
  ]);
  expect(example).not.toBe('');
});

test('pages are told by their names, and parts by what they ask for', () => {
  const host = 'https://shop.example/book/';
  const { baseline, ...rest } = emptyContents().values;
  const brought = { ...rest, baseline: { ...baseline, bankAngle: { text: '60', unit: 'deg' } } };
  const from = `${host}bobweight/`;
  expect(bringsNumbersFor(`${host}balance-factor/`, from, brought)).toBe(true);
  expect(bringsNumbersFor(`${host}balance-factor/working/`, from, brought)).toBe(true);
  expect(bringsNumbersFor(`${host}quoted-bobweight/`, from, brought)).toBe(false);
  expect(bringsNumbersFor(`${host}balance-factor/`, `${host}wrist-pin/`, brought)).toBe(false);
  expect(bringsNumbersFor(`${host}balance-factor/`, from, emptyContents().values)).toBe(false);
  expect(movedFrom('piston-motion')).toEqual([]);
});
