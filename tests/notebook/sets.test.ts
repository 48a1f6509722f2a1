import { describe, expect, test } from 'vitest';
import * as quantities from '../../src/calculators/quantities.ts';
import { loadDictionary } from '../../src/notebook/dictionary.ts';
import { fromFile, toFile } from '../../src/notebook/file.ts';
import { makeJob, wholeJob } from '../../src/notebook/jobs.ts';
import { named, plainSets, shownAs, withAnother } from '../../src/notebook/job-sets.ts';
import { Notebook } from '../../src/notebook/notebook.svelte.ts';
import { valueKey } from '../../src/notebook/storage.ts';
import type { JobSets } from '../../src/notebook/values.ts';
import { FakeTab } from './fake-world.ts';

await loadDictionary();
const { pistonMass, bigEndMass, bigEndReadings, crankAngle, stroke } = quantities;

function begun(tab = new FakeTab()): Notebook {
  const book = new Notebook(tab);
  book.openJob(makeJob(book.device, 'Three ways'));
  return book;
}
function type(book: Notebook, set: 'baseline' | 'candidate', text: string): void {
  book.put(set, 'pistonMass', { text, unit: 'g' }, pistonMass);
}
function three(): JobSets {
  return withAnother(plainSets) ?? plainSets;
}

describe('a third set', () => {
  test('takes what is typed in the column where it stands, and keeps it when another stands there', () => {
    const book = begun();
    type(book, 'baseline', '428');
    type(book, 'candidate', '318');
    book.arrange(three());
    type(book, 'candidate', '350');
    expect(book.ownOf('third')).toEqual({ pistonMass: { text: '350', unit: 'g' } });
    expect(book.value('baseline', pistonMass).text).toBe('428');
    book.arrange(shownAs(three(), 'baseline', 'candidate'));
    expect(book.value('baseline', pistonMass).text).toBe('318');
    expect(book.value('candidate', pistonMass).text).toBe('350');
    type(book, 'baseline', '319');
    expect(book.ownOf('candidate')['pistonMass']?.text).toBe('319');
    expect(book.ownOf('baseline')['pistonMass']?.text).toBe('428');
  });

  test('leaves what all sets share where it was', () => {
    const book = begun();
    book.arrange(shownAs(three(), 'baseline', 'third'));
    book.put('baseline', 'crankAngle', { text: '75' }, crankAngle);
    expect(book.ownOf('baseline')['crankAngle']?.text).toBe('75');
    expect(book.value('candidate', crankAngle).text).toBe('75');
    book.clear('candidate', 'crankAngle');
    expect(book.ownOf('baseline')).toEqual({});
  });

  test('comes back on the next page, in another tab, in a copy of the job and from a file', () => {
    const tab = new FakeTab();
    const book = begun(tab);
    book.arrange(named(three(), 'third', 'Hill parts'));
    type(book, 'candidate', '350');
    for (const next of [new Notebook(tab), new Notebook(new FakeTab(tab.shared))]) {
      expect(next.setName('candidate')).toBe('Hill parts');
      expect(next.value('candidate', pistonMass).text).toBe('350');
    }
    const copy = wholeJob(book.device, makeJob(book.device, 'Copy', book.jobId));
    expect(copy).toMatchObject({ sets: book.sets, values: { third: { pistonMass: {} } } });
    const file = fromFile(toFile(book.contents, '2026-11-30'));
    expect(file).toEqual({ ...book.contents, problems: [], usable: true });
  });

  test('of a job that is open in two tabs follows from one to the other', () => {
    const tab = new FakeTab();
    const book = begun(tab);
    const other = new Notebook(tab);
    book.arrange(three());
    other.follow(`throwbook/1/jobs/${book.jobId}/sets`);
    expect(other.sets).toEqual(three());
    type(book, 'candidate', '350');
    other.follow(valueKey('third', 'pistonMass').replace('/1/', `/1/jobs/${book.jobId}/`));
    expect(other.value('candidate', pistonMass).text).toBe('350');
  });

  test('is none of a link: there two sets stand under their own names', () => {
    const tab = new FakeTab();
    const book = begun(tab);
    book.arrange(named(three(), 'third', 'Hill parts'));
    tab.fragment = '#pistonMass=400g,300g&v=1';
    book.arrive(false);
    expect(book.setName('candidate')).toBe('Candidate');
    expect(book.value('candidate', pistonMass).text).toBe('300');
    type(book, 'candidate', '301');
    book.arrange(plainSets);
    book.leaveVisit();
    expect(book.setName('candidate')).toBe('Hill parts');
    expect(book.isMissing('candidate', pistonMass)).toBe(true);
  });
});

describe('the same as the other set', () => {
  test('is what stands in a set without a number of its own, and then one part', () => {
    const book = begun();
    type(book, 'baseline', '428');
    expect(book.value('candidate', pistonMass).text).toBe('428');
    expect(book.sameAs('candidate', pistonMass)).toBe('Baseline');
    expect(book.sameAs('baseline', pistonMass)).toBeUndefined();
    expect(book.isOnePart(pistonMass)).toBe(true);
    expect(book.isMissing('candidate', pistonMass)).toBe(false);
    type(book, 'candidate', '428');
    expect(book.sameAs('candidate', pistonMass)).toBeUndefined();
    expect(book.isOnePart(pistonMass)).toBe(false);
    // Emptied, it is the other set's again.
    type(book, 'candidate', ' ');
    expect(book.sameAs('candidate', pistonMass)).toBe('Baseline');
    expect(book.ownOf('candidate')).toEqual({});
  });

  test('of nothing is nothing, and an emptied number says nothing of another set', () => {
    const book = begun();
    expect(book.sameAs('candidate', stroke)).toBeUndefined();
    expect(book.isMissing('candidate', stroke)).toBe(true);
    type(book, 'baseline', '');
    expect(book.isMissing('candidate', pistonMass)).toBe(true);
  });

  test('what another page makes of a number of its own comes before it', () => {
    const book = begun();
    book.put('baseline', 'bigEndMass', { text: '421', unit: 'g' }, bigEndMass);
    // Worked from the same readings, it is the same part still.
    book.carry('candidate', 'bigEndMass', { text: '420', unit: 'g' });
    expect(book.value('candidate', bigEndMass).text).toBe('421');
    expect(book.isOnePart(bigEndMass)).toBe(true);
    book.put('candidate', 'bigEndReadings', { text: '300; 301' }, bigEndReadings);
    book.carry('candidate', 'bigEndMass', { text: '300.5', unit: 'g' });
    expect(book.value('candidate', bigEndMass).text).toBe('300.5');
    expect(book.carriedFor('candidate', bigEndMass)?.stands).toBe(true);
    expect(book.sameAs('candidate', bigEndMass)).toBeUndefined();
    expect(book.isOnePart(bigEndMass)).toBe(false);
  });

  test('holds where the example stands for an added set alone: the candidate has an example of its own', () => {
    const book = new Notebook(new FakeTab());
    type(book, 'baseline', '500');
    expect(book.value('candidate', pistonMass).text).toBe('318.0');
    expect(book.isOnePart(pistonMass)).toBe(false);
    book.arrange(three());
    expect(book.value('candidate', pistonMass).text).toBe('500');
    expect(book.value('candidate', stroke)).toEqual(book.value('baseline', stroke));
    expect(book.isExample('candidate', stroke)).toBe(true);
  });
});

describe('undo', () => {
  test('goes back fifty steps and forth again, through numbers, names and sets', () => {
    const book = begun();
    book.job = 'Renamed';
    book.arrange(three());
    for (let count = 0; count < 50; count += 1)
      book.put(
        'candidate',
        count % 2 === 0 ? 'pistonMass' : 'stroke',
        { text: String(count) },
        count % 2 === 0 ? pistonMass : stroke,
      );
    for (let count = 0; count < 50; count += 1)
      expect(book.undo()).toMatchObject({ done: 1, left: 0 });
    expect(book.ownOf('third')).toEqual({});
    expect(book.sets).toEqual(three());
    book.undo();
    book.undo();
    expect([book.job, book.sets, book.canUndo]).toEqual(['Three ways', plainSets, false]);
    expect(book.undo()).toBeUndefined();
    while (book.canRedo) book.redo();
    expect(book.job).toBe('Renamed');
    expect(book.value('candidate', pistonMass).text).toBe('48');
    expect(book.value('candidate', stroke).text).toBe('49');
  });

  test('brings back a set that was refilled at once', () => {
    const book = begun();
    type(book, 'baseline', '428');
    book.put('baseline', 'stroke', { text: '88', unit: 'mm' }, stroke);
    const before = { ...book.ownOf('baseline') };
    book.refill('baseline', { pistonMass: { text: '1', unit: 'g' } });
    expect(book.ownOf('baseline')).toEqual({ pistonMass: { text: '1', unit: 'g' } });
    book.undo();
    expect(book.ownOf('baseline')).toEqual(before);
  });

  test('leaves what another tab has changed since, and says so', () => {
    const tab = new FakeTab();
    const book = begun(tab);
    type(book, 'baseline', '428');
    const other = new Notebook(tab);
    type(other, 'baseline', '430');
    expect(book.undo()).toMatchObject({ done: 0, left: 1 });
    expect(book.value('baseline', pistonMass).text).toBe('430');
  });

  test('outlives the page in its tab, each job with its own steps', () => {
    const tab = new FakeTab();
    const book = begun(tab);
    type(book, 'baseline', '428');
    const id = book.jobId;
    book.keepHistory();
    const next = new Notebook(tab);
    expect(next.canUndo).toBe(true);
    next.openJob('');
    expect(next.canUndo).toBe(false);
    next.openJob(id);
    next.undo();
    expect(next.isMissing('baseline', pistonMass)).toBe(true);
    expect(new Notebook(new FakeTab(tab.shared)).canUndo).toBe(false);
  });

  test('is of the reader’s own numbers, and none during a visit', () => {
    const tab = new FakeTab();
    const book = begun(tab);
    type(book, 'baseline', '428');
    tab.fragment = '#pistonMass=400g,300g&v=1';
    book.arrive(false);
    expect(book.canUndo).toBe(false);
    expect(book.undo()).toBeUndefined();
    book.leaveVisit();
    expect(book.canUndo).toBe(true);
  });
});
