import { describe, expect, test } from 'vitest';
import { optional, type ChoiceEntry } from '../../src/calculators/define.ts';
import * as quantities from '../../src/calculators/quantities.ts';
import { readField } from '../../src/notebook/evaluation.ts';
import { loadDictionary } from '../../src/notebook/dictionary.ts';
import { decodeLink } from '../../src/notebook/link.ts';
import { plainSets } from '../../src/notebook/job-sets.ts';
import { Notebook } from '../../src/notebook/notebook.svelte.ts';
import { valueKey } from '../../src/notebook/storage.ts';
import { emptySets } from '../../src/notebook/values.ts';
import { FakeStorage, FakeTab } from './fake-world.ts';

/** A notebook as a page of that tab opens it, with the numbers of a link if there are any. */
function bookIn(tab: FakeTab): Notebook {
  const book = new Notebook(tab);
  book.open();
  return book;
}

await loadDictionary();
const { bore, stroke, pistonMass, pinOffset, crankAngle, crankpinDiameter, bigEndReadings } =
  quantities;
const customersLink =
  '#job=No.17&pistonMass=495.2g:0.1,398.6g:0.1&crankpinDiameter=2.100in,1-7/8in&v=1';

function typed(tab: FakeTab): Notebook {
  const book = bookIn(tab);
  book.put('baseline', 'pistonMass', { text: '500', unit: 'g' }, pistonMass);
  book.put('baseline', 'bore', { text: '91.00', unit: 'mm' }, bore);
  book.job = 'My own';
  return book;
}

describe('the reader’s own numbers', () => {
  test('are the invented example until something is typed', () => {
    const book = bookIn(new FakeTab());
    const example = { text: '428.0', unit: 'g', plusMinus: '0.1' };
    expect(book.value('baseline', pistonMass)).toEqual(example);
    expect(book.isExample('baseline', pistonMass)).toBe(true);
    book.put('baseline', 'pistonMass', { plusMinus: '0.2' }, pistonMass);
    expect(book.value('baseline', pistonMass)).toEqual({ ...example, plusMinus: '0.2' });
    book.clear('baseline', 'pistonMass');
    book.put('baseline', 'pistonMass', { text: '500' }, pistonMass);
    expect(book.value('baseline', pistonMass)).toEqual({ text: '500', unit: 'g' });
    expect(book.isExample('baseline', pistonMass)).toBe(false);
    expect(book.isExample('candidate', pistonMass)).toBe(true);
    book.clear('baseline', 'pistonMass');
    expect(book.isExample('baseline', pistonMass)).toBe(true);
  });

  test('come back on the next page and in the next tab', () => {
    const tab = new FakeTab();
    typed(tab);
    const next = bookIn(new FakeTab(tab.shared));
    expect(next.value('baseline', pistonMass).text).toBe('500');
    expect(next.job).toBe('My own');
  });

  test('stay as typed, readable or not, also when the field is emptied', () => {
    const book = bookIn(new FakeTab());
    for (const text of ['', 'abc', '1 7/', ' 47,96 mm ']) {
      book.put('baseline', 'bore', { text }, bore);
      expect(book.value('baseline', bore).text).toBe(text);
      expect(book.isExample('baseline', bore)).toBe(false);
    }
  });

  test('take the unit that was typed behind the number', () => {
    const book = bookIn(new FakeTab());
    book.put('baseline', 'bore', { text: '3.563 in', unit: 'mm' }, bore);
    expect(book.value('baseline', bore)).toEqual({ text: '3.563 in', unit: 'in' });
    book.put('baseline', 'bigEndReadings', { text: '14.8; 14.9 oz' }, bigEndReadings);
    expect(book.value('baseline', bigEndReadings).unit).toBe('oz');
  });

  test('one value serves both sets where the entry says so', () => {
    const book = bookIn(new FakeTab());
    book.put('candidate', 'crankAngle', { text: '75' }, crankAngle);
    expect(book.value('baseline', crankAngle).text).toBe('75');
    expect(book.isExample('candidate', crankAngle)).toBe(false);
  });

  test('on the server nothing is written, so that no reader meets another’s numbers', () => {
    const book = new Notebook();
    book.put('baseline', 'bore', { text: '1' }, bore);
    book.job = 'x';
    book.setSystem('inch');
    book.clear('baseline', 'bore');
    expect(book.value('baseline', bore).text).toBe('90.50');
    expect([book.job, book.system, book.visiting, book.notice]).toEqual([
      '',
      'metric',
      undefined,
      undefined,
    ]);
  });

  test('another tab’s value arrives alone', () => {
    const tab = new FakeTab();
    const book = typed(tab);
    tab.shared.kept.set(valueKey('candidate', 'bore'), '{"text":"92","unit":"mm"}');
    book.follow(valueKey('candidate', 'bore'));
    expect(book.value('candidate', bore).text).toBe('92');
    tab.shared.kept.delete(valueKey('candidate', 'bore'));
    book.follow(valueKey('candidate', 'bore'));
    expect(book.isExample('candidate', bore)).toBe(true);
    tab.shared.clear();
    book.follow(null);
    expect(book.isExample('baseline', pistonMass)).toBe(true);
    expect(book.job).toBe('');
  });

  test('storage full: the number still counts, and one sentence says what to do', () => {
    const tab = new FakeTab();
    tab.shared.full = true;
    const book = typed(tab);
    expect(book.value('baseline', pistonMass).text).toBe('500');
    expect(book.notice).toMatch(/full.*save them as a file/);
  });

  test('storage forbidden: the same, and links work', () => {
    const tab = new FakeTab(new FakeStorage(), customersLink);
    tab.forbidden = true;
    const book = bookIn(tab);
    expect(book.value('baseline', pistonMass).text).toBe('495.2');
    book.leaveVisit();
    expect(book.hasOwn).toBe(false);
    book.put('baseline', 'bore', { text: '91' }, bore);
    expect(book.value('baseline', bore).text).toBe('91');
    expect(book.hasOwn).toBe(true);
    expect(book.notice).toContain('does not let the page keep');
  });

  test('a damaged value is named, the example used, and the rest kept, until a new one is typed', () => {
    const tab = new FakeTab();
    typed(tab);
    const key = valueKey('baseline', 'bore');
    tab.shared.kept.set(key, '{"text":');
    const book = bookIn(tab);
    expect(book.notice).toContain('bore (baseline) is damaged');
    expect(book.value('baseline', bore).text).toBe('90.50');
    expect(book.value('baseline', pistonMass).text).toBe('500');
    expect(tab.shared.kept.get(key)).toBe('{"text":');
    book.put('baseline', 'bore', { text: '91' }, bore);
    expect(book.notice).toBeUndefined();
    expect(tab.shared.kept.get(key)).toBe('{"text":"91","unit":"mm"}');
  });

  test('a stored unit of another kind is left for the parser to name, never misread', () => {
    const tab = new FakeTab();
    tab.shared.kept.set(valueKey('baseline', 'pistonMass'), '{"text":"40","unit":"in"}');
    expect(bookIn(tab).value('baseline', pistonMass)).toEqual({ text: '40 in', unit: 'g' });
  });
});

describe('metric and inch', () => {
  test('a hundred changes of system alter no stored text', () => {
    const tab = new FakeTab();
    const book = typed(tab);
    book.put('candidate', 'bore', { text: '3 9/16"' }, bore);
    const before = new Map(tab.shared.kept);
    for (let time = 0; time < 100; time += 1) {
      book.setSystem(time % 2 === 0 ? 'inch' : 'metric');
      book.display('baseline', bore);
      book.display('candidate', bore);
      book.linkFor([bore, pistonMass]);
    }
    for (const [key, text] of before) expect(tab.shared.kept.get(key)).toBe(text);
    expect(tab.shared.kept.get('throwbook/1/system')).toBe('metric');
  });

  test('a field shows the typed text in its own system, a conversion in the other', () => {
    const book = bookIn(new FakeTab());
    book.put('baseline', 'bore', { text: '90.50', plusMinus: '0.02' }, bore);
    expect(book.display('baseline', bore)).toEqual({
      text: '90.50',
      unit: 'mm',
      plusMinus: '0.02',
      converted: false,
    });
    book.setSystem('inch');
    // 0.01 mm is 0.0004 in, so the fourth decimal is the coarsest that loses nothing.
    expect(book.display('baseline', bore)).toEqual({
      text: '3.5630',
      unit: 'in',
      plusMinus: '0.0008',
      converted: true,
    });
    expect(book.value('baseline', bore)).toEqual({ text: '90.50', unit: 'mm', plusMinus: '0.02' });
    expect(book.display('baseline', pistonMass).unit).toBe('g');
  });

  test('a ± typed beside a converted number is in the unit shown, and keeps its meaning', () => {
    const book = bookIn(new FakeTab());
    book.put('baseline', 'bore', { text: '90.50' }, bore);
    book.setSystem('inch');
    book.put('baseline', 'bore', { plusMinus: '0.001' }, bore);
    expect(book.value('baseline', bore)).toEqual({
      text: '90.50',
      unit: 'mm',
      plusMinus: '0.001\u00a0in',
    });
    expect(book.display('baseline', bore).plusMinus).toBe('0.001');
    book.put('baseline', 'bore', { text: '3.563', unit: 'in' }, bore);
    expect(book.value('baseline', bore)).toEqual({
      text: '3.563',
      unit: 'in',
      plusMinus: '0.001\u00a0in',
    });
    expect(book.display('baseline', bore).plusMinus).toBe('0.001');
    expect(readField(bore, book.value('baseline', bore)).plusMinus).toBeCloseTo(0.0254e-3, 12);
    book.put('baseline', 'bore', { plusMinus: '' }, bore);
    expect(book.value('baseline', bore)).toEqual({ text: '3.563', unit: 'in' });
  });

  test('a ± is shown as it stands while it is typed, key by key', () => {
    for (const system of ['metric', 'inch'] as const) {
      const book = bookIn(new FakeTab());
      book.put('baseline', 'bore', { text: '90.50' }, bore);
      book.setSystem(system);
      for (const text of [
        '0',
        '0.',
        '0.0',
        '0.01',
        '0.01 ',
        '0.01 i',
        '0.01 in',
        '0.01 m',
        '0.01 mm',
        '',
      ]) {
        book.put('baseline', 'bore', { plusMinus: text }, bore);
        if (system === 'metric') expect(book.display('baseline', bore).plusMinus).toBe(text);
        else if (!text.includes('m')) expect(book.display('baseline', bore).plusMinus).toBe(text);
      }
    }
  });

  test('a bare ± does not change its size when the number is typed anew in another unit', () => {
    const book = bookIn(new FakeTab());
    book.put('baseline', 'bore', { text: '90.50', plusMinus: '0.02' }, bore);
    book.put('baseline', 'bore', { text: '3.563 in' }, bore);
    expect(book.value('baseline', bore).plusMinus).toBe('0.02\u00a0mm');
  });

  test('the same digits read in another unit take their ± along', () => {
    const book = bookIn(new FakeTab());
    book.put('baseline', 'bore', { text: '3.563', unit: 'mm', plusMinus: '0.001' }, bore);
    book.put('baseline', 'bore', { text: '3.563', unit: 'in' }, bore);
    expect(book.value('baseline', bore)).toEqual({ text: '3.563', unit: 'in', plusMinus: '0.001' });
  });
});

describe('visiting a link', () => {
  test('shows its numbers as typed and leaves the reader’s own alone', () => {
    const shared = new FakeStorage();
    typed(new FakeTab(shared));
    const before = new Map(shared.kept);
    const book = bookIn(new FakeTab(shared, customersLink));
    expect(book.visiting).toMatchObject({ job: 'No.17', problems: [] });
    expect(book.value('baseline', pistonMass)).toEqual({
      text: '495.2',
      unit: 'g',
      plusMinus: '0.1',
    });
    expect(book.value('candidate', crankpinDiameter)).toEqual({ text: '1 7/8', unit: 'in' });
    book.put('baseline', 'pistonMass', { text: '490' }, pistonMass);
    book.job = 'Tried';
    expect(book.value('baseline', pistonMass)).toEqual({
      text: '490',
      unit: 'g',
      plusMinus: '0.1',
    });
    expect(shared.kept).toEqual(before);
    book.leaveVisit();
    expect(book.visiting).toBeUndefined();
    expect(book.value('baseline', pistonMass).text).toBe('500');
    expect(book.job).toBe('My own');
    expect(shared.kept).toEqual(before);
  });

  test('what the link does not name is the example, or empty where it can be done without', () => {
    const shared = new FakeStorage();
    typed(new FakeTab(shared));
    const book = bookIn(new FakeTab(shared, customersLink));
    expect(book.value('baseline', bore).text).toBe('90.50');
    expect(book.isExample('baseline', bore)).toBe(true);
    expect(book.value('baseline', optional(pinOffset))).toEqual({ text: '', unit: 'mm' });
    expect(book.isExample('baseline', pistonMass)).toBe(false);
  });

  test('follows the reader to other pages of the tab, and stays out of other tabs', () => {
    const tab = new FakeTab(new FakeStorage(), customersLink);
    bookIn(tab).put('baseline', 'pistonMass', { text: '490' }, pistonMass);
    tab.fragment = '';
    expect(bookIn(tab).value('baseline', pistonMass).text).toBe('490');
    expect(bookIn(new FakeTab(tab.shared)).visiting).toBeUndefined();
  });

  test('a reload keeps what was tried; opening the link again starts from the link', () => {
    const tab = new FakeTab(new FakeStorage(), customersLink);
    bookIn(tab).put('baseline', 'pistonMass', { text: '490' }, pistonMass);
    tab.revisited = true;
    expect(bookIn(tab).value('baseline', pistonMass).text).toBe('490');
    tab.revisited = false;
    expect(bookIn(tab).value('baseline', pistonMass).text).toBe('495.2');
  });

  test('a second link in the same tab takes the place of the first', () => {
    const tab = new FakeTab(new FakeStorage(), customersLink);
    const book = bookIn(tab);
    tab.fragment = '#pistonMass=300g,200g&v=1';
    book.arrive(false);
    expect(book.value('baseline', pistonMass).text).toBe('300');
    expect(book.visiting?.job).toBe('');
    tab.fragment = '#working';
    book.arrive(false);
    expect(book.value('baseline', pistonMass).text).toBe('300');
  });

  test('keeping it writes over named quantities only, says how many of one’s own change, and can be undone', () => {
    const shared = new FakeStorage();
    typed(new FakeTab(shared));
    const tab = new FakeTab(shared, customersLink);
    const book = bookIn(tab);
    expect(book.visitReplaces).toBe(1);
    expect(book.keepVisit()).toBe(1);
    expect(book.visiting).toBeUndefined();
    expect(tab.fragment).toBe('');
    expect(book.value('baseline', pistonMass).text).toBe('495.2');
    expect(book.value('baseline', bore).text).toBe('91.00');
    expect(book.job).toBe('No.17');
    const later = bookIn(new FakeTab(shared));
    expect(later.value('candidate', crankpinDiameter).text).toBe('1 7/8');
    expect(later.canRestore).toBe(true);
    later.restorePrevious();
    expect(later.value('baseline', pistonMass).text).toBe('500');
    expect(later.isExample('candidate', crankpinDiameter)).toBe(true);
    expect(later.job).toBe('My own');
  });

  test('a number that the link repeats is not counted as replaced', () => {
    const shared = new FakeStorage();
    typed(new FakeTab(shared));
    const book = bookIn(new FakeTab(shared, '#pistonMass=500g,1g&bore=92mm,1mm&v=1'));
    expect(book.visitReplaces).toBe(1);
  });

  test('a link with damage names it and gives the rest', () => {
    const link =
      '#pistonMass=40in,398.6g&bore=abc,90mm&futureThing=12mm,13mm&crankAngle=40deg,50deg&stroke=73mm,73mm&v=1';
    const book = bookIn(new FakeTab(new FakeStorage(), link));
    const problems = book.visiting?.problems ?? [];
    expect(problems).toHaveLength(4);
    expect(problems[0]).toMatch(/^Piston, bare \(baseline\): .*a length/);
    expect(problems[1]).toMatch(/^Bore \(baseline\): /);
    expect(problems[2]).toMatch(/^Crank angle after TDC serves both sets/);
    expect(problems[3]).toBe(
      '“futureThing” is no quantity known here. It is kept, but nothing uses it.',
    );
    expect(book.value('baseline', pistonMass).text).toBe('428.0');
    expect(book.value('candidate', pistonMass).text).toBe('398.6');
    expect(book.value('baseline', stroke).text).toBe('73');
  });

  test('twenty thousand names that nobody knows are one sentence', () => {
    const book = typed(new FakeTab());
    const names = Array.from({ length: 20_000 }, (_, i) => [
      `x${String(i)}`,
      { text: '1', unit: '' },
    ]);
    const values = { ...emptySets(), baseline: Object.fromEntries(names) };
    const { problems } = book.offer({ job: '', values });
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(/^“x0”, “x1”, .*\b199\d\d others are no quantities known here/);
  });

  test('what nothing here knows travels on with the next link', () => {
    const link = '#futureThing=12mm:0.1,13mm&bore=90mm,91mm&v=1';
    const book = bookIn(new FakeTab(new FakeStorage(), link));
    expect(book.linkFor([bore]).href).toContain('&futureThing=12mm:0.1,13mm&v=1');
  });

  test('a link that gives nothing is refused in a sentence and leaves the notebook as it is', () => {
    const shared = new FakeStorage();
    typed(new FakeTab(shared));
    for (const fragment of [
      `#bore=${'9'.repeat(100_000)}`,
      '#bore=abc&v=1',
      '#x=',
      '#utm_source=chat',
    ]) {
      const book = bookIn(new FakeTab(shared, fragment));
      expect(book.visiting).toBeUndefined();
      expect(book.notice).toMatch(/link/);
      expect(book.value('baseline', pistonMass).text).toBe('500');
    }
  });

  test('a choice arrives without a word, and one that cannot be is named in words', () => {
    const { crankLayout, rodMaterial, swingRig } = quantities;
    const good =
      '#crankLayout=!v8$-flat,!v8$-cross&rodMaterial=!7075$-t6,c70s6&areaFrom=given,dimensions&v=1';
    const book = bookIn(new FakeTab(new FakeStorage(), good));
    expect(book.visiting?.problems).toEqual([]);
    expect(book.notice).toBeUndefined();
    expect(book.value('baseline', crankLayout).text).toBe('v8-flat');
    expect(book.value('baseline', rodMaterial).text).toBe('7075-t6');

    const bad = bookIn(
      new FakeTab(new FakeStorage(), '#swingRig=trapeze,trifilar&bore=90mm,90mm&v=1'),
    );
    expect(bad.visiting?.problems).toEqual([
      `Hung on (baseline): “trapeze” is not one of ${Object.values(swingRig.options).join(', ')}.`,
    ]);
    expect(bad.value('baseline', swingRig).text).toBe('bifilar');
    expect(bad.value('candidate', swingRig).text).toBe('trifilar');
  });

  test('a link that gives nothing, opened after a good one, keeps neither its job nor its numbers', () => {
    for (const fragment of ['#bore=abc&v=1', `#bore=${'9'.repeat(100_000)}`]) {
      const shared = new FakeStorage();
      typed(new FakeTab(shared));
      const tab = new FakeTab(shared, customersLink);
      const open = bookIn(tab);
      tab.fragment = fragment;
      open.arrive(false);
      for (const book of [open, bookIn(tab)]) {
        expect(book.visiting).toBeUndefined();
        expect(book.job).toBe('My own');
        expect(book.value('baseline', pistonMass).text).toBe('500');
        expect(book.notice).toMatch(/link/);
      }
    }
  });

  test('a damaged visit in the tab’s storage is no visit', () => {
    for (const json of ['', '{', '5', '{"values":5}']) {
      const tab = new FakeTab();
      tab.own.kept.set('throwbook/1/visit', json);
      expect(() => bookIn(tab)).not.toThrow();
      expect(bookIn(tab).visiting).toBeUndefined();
    }
  });
});

describe('sharing', () => {
  test('a link carries examples too, and opens with the same numbers elsewhere', () => {
    const entries = [pistonMass, bore, crankAngle, optional(pinOffset), bigEndReadings];
    const book = typed(new FakeTab());
    book.put('baseline', 'pinOffset', { text: '' }, optional(pinOffset));
    book.put('candidate', 'pinOffset', { text: '' }, optional(pinOffset));
    book.put('candidate', 'bore', { text: '3 9/16"' }, bore);
    const { href, problems } = book.linkFor(entries);
    expect(problems).toEqual([]);
    expect(href).toBe(
      'https://shop.example/bobweight/#job=My-own&pistonMass=500g,318.0g:0.1&bore=91.00mm,3-9/16in&crankAngle=40deg' +
        '&bigEndReadings=421.0;421.5;421.1;420.9;421.5g,300.0;300.4;299.8;300.3;300.0g&v=1',
    );
    const theirs = bookIn(new FakeTab(new FakeStorage(), href.slice(href.indexOf('#'))));
    for (const entry of entries) {
      for (const set of ['baseline', 'candidate'] as const) {
        expect(theirs.linkFor([entry]).href).toBe(book.linkFor([entry]).href);
        expect(theirs.value(set, entry).text.trim() === '').toBe(
          book.value(set, entry).text.trim() === '',
        );
      }
    }
  });

  test('what cannot be read is named before the link is sent', () => {
    const book = typed(new FakeTab());
    book.put('baseline', 'bore', { text: 'wide' }, bore);
    const { href, problems } = book.linkFor([bore, pistonMass]);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(/^Bore \(baseline\): /);
    expect(decodeLink(href.slice(href.indexOf('#')))).toMatchObject({ ok: true, numbers: 4 });
  });

  test('a choice travels as a plain word', () => {
    const choice: ChoiceEntry = {
      type: 'choice',
      name: 'strokesPerCycle',
      label: 'Cycle',
      symbol: 'z',
      options: { four: 'four-stroke', two: 'two-stroke' },
      demo: { baseline: 'four', candidate: 'two' },
    };
    const book = bookIn(new FakeTab());
    expect(book.linkFor([choice]).href).toContain('#strokesPerCycle=four,two&v=1');
    expect(book.display('candidate', choice)).toMatchObject({ text: 'two', unit: '' });
  });
});

describe('opening a file', () => {
  const contents = {
    job: 'No.18',
    values: {
      ...emptySets(),
      baseline: { bore: { text: '92', unit: 'mm' }, futureThing: { text: '1', unit: 'mm' } },
      candidate: { pistonMass: { text: 'heavy', unit: 'g' } },
    },
  };
  test('says first what it holds and what it puts away, and changes nothing', () => {
    const book = typed(new FakeTab());
    const offer = book.offer(contents, ['The file was cut.']);
    expect(offer).toMatchObject({ numbers: 3, putAway: 2, contents });
    expect(offer.problems).toHaveLength(3);
    expect(book.value('baseline', pistonMass).text).toBe('500');
  });
  test('replaces the notebook, keeps unreadable text and unknown names, and can be undone and redone', () => {
    const book = typed(new FakeTab());
    expect(book.canRestore).toBe(false);
    book.accept(book.offer(contents));
    expect(book.contents).toEqual({ ...contents, sets: plainSets });
    expect(book.isExample('baseline', pistonMass)).toBe(true);
    book.restorePrevious();
    expect(book.value('baseline', pistonMass).text).toBe('500');
    expect(book.job).toBe('My own');
    book.restorePrevious();
    expect(book.contents).toEqual({ ...contents, sets: plainSets });
  });
  test('ends a visit', () => {
    const book = bookIn(new FakeTab(new FakeStorage(), customersLink));
    expect(Object.keys(book.contents.values.baseline)).toEqual(['pistonMass', 'crankpinDiameter']);
    book.accept(book.offer(contents));
    expect(book.visiting).toBeUndefined();
    expect(book.value('baseline', bore).text).toBe('92');
  });
});
