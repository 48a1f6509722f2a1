import { describe, expect, test } from 'vitest';
import { optional } from '../../src/calculators/define.ts';
import * as quantities from '../../src/calculators/quantities.ts';
import {
  addJob,
  bringBack,
  deleteJob,
  describeJob,
  lastDeleted,
  listJobs,
  makeJob,
  readJob,
  renameJob,
  setExample,
  wholeJob,
} from '../../src/notebook/jobs.ts';
import { fromJobsFile, toJobsFile } from '../../src/notebook/jobs-file.ts';
import { toFile } from '../../src/notebook/file.ts';
import { loadDictionary } from '../../src/notebook/dictionary.ts';
import { plainSets } from '../../src/notebook/job-sets.ts';
import { Notebook } from '../../src/notebook/notebook.svelte.ts';
import { jobIds, keyInJob, openShelf, shelfOfJob, valueKey } from '../../src/notebook/storage.ts';
import { emptySets } from '../../src/notebook/values.ts';
import { FakeStorage, FakeTab } from './fake-world.ts';

await loadDictionary();
const { pistonMass, stroke } = quantities;
const about = {
  customer: 'A. Customer',
  engine: 'V8 for hills',
  date: '2026-11-30',
  who: 'the second year',
  notes: '<script>alert(1)</script> "quoted" =1+1',
  message: 'Two lines\nof thanks',
};
/** A lot that gives each id once. */
function lots(): () => number {
  let drawn = 0;
  return () => (drawn += 0.01);
}
function type(book: Notebook, text: string): void {
  book.put('baseline', 'pistonMass', { text, unit: 'g' }, pistonMass);
}
const textIn = (book: Notebook): string => book.value('baseline', pistonMass).text;

describe('the shelf of a job', () => {
  test('keeps the keys of one job from those of all others', () => {
    const storage = new FakeStorage();
    const device = openShelf(() => storage);
    const key = valueKey('baseline', 'pistonMass');
    shelfOfJob('', device).set(key, 'first');
    shelfOfJob('b7', device).set(key, 'second');
    expect([...storage.kept.entries()]).toEqual([
      ['throwbook/1/baseline/pistonMass', 'first'],
      ['throwbook/1/jobs/b7/baseline/pistonMass', 'second'],
    ]);
    for (const id of ['', 'b7']) expect(shelfOfJob(id, device).keys()).toEqual([key]);
    expect(shelfOfJob('b', device).keys()).toEqual([]);
    expect(jobIds(device)).toEqual(['', 'b7']);
    expect(keyInJob('b7', 'throwbook/1/jobs/b7/job')).toBe('throwbook/1/job');
    expect(keyInJob('b7', 'throwbook/1/job')).toBeUndefined();
    expect(keyInJob('', 'throwbook/1/jobs/b7/job')).toBeUndefined();
    shelfOfJob('b7', device).remove(key);
    expect([...storage.kept.keys()]).toEqual(['throwbook/1/baseline/pistonMass']);
  });

  test('the system of units is the device’s', () => {
    const tab = new FakeTab();
    const book = new Notebook(tab);
    book.setSystem('inch');
    const id = makeJob(book.device, 'Other');
    book.openJob(id);
    expect(book.system).toBe('inch');
    book.setSystem('metric');
    book.openJob('');
    expect(book.system).toBe('metric');
  });
});

describe('jobs of a device', () => {
  test('a notebook from before is the first job', () => {
    const tab = new FakeTab();
    const before = new Notebook(tab);
    type(before, '500');
    before.job = 'From before';
    expect(listJobs(before.device)).toEqual([
      {
        id: '',
        label: 'From before',
        about: { customer: '', engine: '', date: '', who: '', notes: '', message: '' },
        numbers: 1,
        hasExample: true,
      },
    ]);
  });

  test('each has its own numbers, on the next page and in the next tab', () => {
    const tab = new FakeTab();
    const book = new Notebook(tab);
    type(book, '500');
    const id = makeJob(book.device, 'Second');
    book.openJob(id);
    expect(book.job).toBe('Second');
    expect(textIn(book)).toBe('');
    expect(book.isExample('baseline', pistonMass)).toBe(false);
    type(book, '333');
    expect(textIn(new Notebook(tab))).toBe('333');
    // A tab to come begins with the job that was opened last.
    expect(new Notebook(new FakeTab(tab.shared)).jobId).toBe(id);
    book.openJob('');
    expect(textIn(book)).toBe('500');
  });

  test('two tabs on two jobs do not mix, whatever the other opens', () => {
    const one = new FakeTab();
    const other = new FakeTab(one.shared);
    const first = new Notebook(one);
    const second = new Notebook(other);
    second.openJob(makeJob(second.device, 'Second'));
    type(second, '333');
    first.follow('throwbook/1/open');
    first.follow(`throwbook/1/jobs/${second.jobId}/baseline/pistonMass`);
    expect(first.jobId).toBe('');
    expect(textIn(first)).toBe('428.0');
    type(first, '500');
    second.follow('throwbook/1/baseline/pistonMass');
    expect(textIn(second)).toBe('333');
    // Loaded again, each goes on with its own.
    expect(textIn(new Notebook(one))).toBe('500');
    expect(textIn(new Notebook(other))).toBe('333');
    // On the same job they follow each other.
    const third = new Notebook(new FakeTab(one.shared));
    third.openJob(second.jobId);
    type(third, '334');
    second.follow(`throwbook/1/jobs/${second.jobId}/baseline/pistonMass`);
    expect(textIn(second)).toBe('334');
  });

  test('are made empty or as a copy, named and described', () => {
    const book = new Notebook(new FakeTab());
    type(book, '500');
    describeJob(book.device, '', about);
    const random = lots();
    const empty = makeJob(book.device, 'Empty', undefined, random);
    const copy = makeJob(book.device, 'Copy', '', random);
    expect(readJob(book.device, empty)).toMatchObject({ label: 'Empty', numbers: 0 });
    expect(readJob(book.device, copy)).toEqual({
      id: copy,
      label: 'Copy',
      about,
      numbers: 1,
      hasExample: true,
    });
    renameJob(book.device, copy, 'Another');
    // The first stands first, the others by name.
    expect(listJobs(book.device).map(({ label }) => label)).toEqual(['', 'Another', 'Empty']);
    // The copy goes its own way.
    book.openJob(copy);
    type(book, '510');
    expect(wholeJob(book.device, '').values.baseline['pistonMass']?.text).toBe('500');
  });

  test('an id is drawn until it is free', () => {
    const book = new Notebook(new FakeTab());
    const draws = [0.5, 0.5, 0.5, 0.25];
    const random = (): number => draws.shift() ?? 0;
    const one = makeJob(book.device, 'One', undefined, random);
    const other = makeJob(book.device, 'Other', undefined, random);
    expect(one).not.toBe(other);
    expect(listJobs(book.device)).toHaveLength(3);
  });

  test('deleted ones come back as they were, the last first', () => {
    const book = new Notebook(new FakeTab());
    const random = lots();
    type(book, '500');
    const [a, b] = [
      makeJob(book.device, 'A', '', random),
      makeJob(book.device, 'B', undefined, random),
    ];
    describeJob(book.device, a, about);
    const before = listJobs(book.device);
    deleteJob(book.device, a);
    deleteJob(book.device, b);
    expect(listJobs(book.device).map(({ id }) => id)).toEqual(['']);
    expect(lastDeleted(book.device)).toBe('B');
    expect(bringBack(book.device)).toBe(b);
    expect(bringBack(book.device)).toBe(a);
    expect(bringBack(book.device)).toBeUndefined();
    expect(lastDeleted(book.device)).toBeUndefined();
    expect(listJobs(book.device)).toEqual(before);
  });

  test('the first is emptied and comes back; what the device keeps stays', () => {
    const book = new Notebook(new FakeTab());
    type(book, '500');
    book.job = 'First';
    book.setSystem('inch');
    const other = makeJob(book.device, 'Other');
    deleteJob(book.device, '');
    book.openJob('');
    expect([book.job, textIn(book), book.system]).toEqual(['', '428.0', 'inch']);
    expect(listJobs(book.device).map(({ id }) => id)).toEqual(['', other]);
    expect(bringBack(book.device)).toBe('');
    book.openJob('');
    expect([book.job, textIn(book)]).toEqual(['First', '500']);
  });

  test('one that another tab still writes to is not lost, and comes back beside what was deleted', () => {
    const tab = new FakeTab();
    const book = new Notebook(tab);
    const id = makeJob(book.device, 'Both', undefined, lots());
    book.openJob(id);
    type(book, '500');
    deleteJob(new Notebook(new FakeTab(tab.shared)).device, id);
    book.put('baseline', 'stroke', { text: '80', unit: 'mm' }, stroke);
    expect(readJob(book.device, id).numbers).toBe(1);
    const back = bringBack(book.device, lots()) ?? '';
    expect(back).not.toBe(id);
    expect(wholeJob(book.device, back).values.baseline['pistonMass']?.text).toBe('500');
  });

  test('what is damaged on the device is no job, no description and no deletion', () => {
    const storage = new FakeStorage();
    storage.kept.set('throwbook/1/jobs/BAD ID/baseline/bore', '{}');
    storage.kept.set('throwbook/1/jobs/x1/about', '[');
    storage.kept.set('throwbook/1/deleted', '[1, {"id": 2}, null]');
    storage.kept.set('throwbook/1/open', '../../etc');
    const device = openShelf(() => storage);
    expect(listJobs(device).map(({ id }) => id)).toEqual(['', 'x1']);
    expect(readJob(device, 'x1').about.customer).toBe('');
    expect(bringBack(device)).toBeUndefined();
    expect(new Notebook(new FakeTab(storage)).jobId).toBe('');
  });

  test('a full storage keeps what was typed until the page closes, and says so', () => {
    const storage = new FakeStorage();
    const book = new Notebook(new FakeTab(storage));
    storage.full = true;
    const id = makeJob(book.device, 'No room');
    expect(listJobs(book.device).map(({ label }) => label)).toEqual(['', 'No room']);
    book.openJob(id);
    type(book, '500');
    expect(textIn(book)).toBe('500');
    expect(book.notice).toContain('full');
  });
});

describe('a job without the example', () => {
  const {
    maxSpeed,
    oilMass,
    reciprocatingFraction,
    rodsPerPin,
    partnerRotating,
    crankLayout,
    rodDensity,
  } = quantities;

  test('has nothing for what only the reader can have, and defaults for the rest', () => {
    const book = new Notebook(new FakeTab());
    book.openJob(makeJob(book.device, 'Bare'));
    for (const entry of [pistonMass, stroke, maxSpeed, rodsPerPin]) {
      expect(book.value('candidate', entry).text, entry.name).toBe('');
      expect(book.isMissing('candidate', entry), entry.name).toBe(true);
      expect(book.isExample('candidate', entry), entry.name).toBe(false);
    }
    for (const entry of [oilMass, reciprocatingFraction, crankLayout, rodDensity]) {
      expect(book.value('candidate', entry).text, entry.name).not.toBe('');
      expect(book.isMissing('candidate', entry), entry.name).toBe(false);
      expect(book.isExample('candidate', entry), entry.name).toBe(true);
    }
    const spare = optional(partnerRotating);
    expect(book.value('baseline', spare).text).toBe('');
    expect(book.isMissing('baseline', spare)).toBe(false);
    expect(book.isExample('baseline', spare)).toBe(false);
    type(book, '500');
    expect(book.isMissing('baseline', pistonMass)).toBe(false);
    // A number that was emptied is not one that nobody has written.
    type(book, '');
    expect(book.isMissing('baseline', pistonMass)).toBe(false);
    book.carry('candidate', 'pistonMass', { text: '318', unit: 'g' });
    expect(book.isMissing('candidate', pistonMass)).toBe(false);
    // Emptied where another page gives it, a number is that page's again.
    book.put('candidate', 'pistonMass', { text: '300', unit: 'g' }, pistonMass);
    book.put('candidate', 'pistonMass', { text: ' ' }, pistonMass);
    expect(book.value('candidate', pistonMass).text).toBe('318');
  });

  test('can be given it, and a copy has it as its original', () => {
    const book = new Notebook(new FakeTab());
    const bare = makeJob(book.device, 'Bare', undefined, lots());
    expect(readJob(book.device, makeJob(book.device, 'Copy', bare)).hasExample).toBe(false);
    setExample(book.device, bare, true);
    book.openJob(bare);
    expect(textIn(book)).toBe('428.0');
    expect(readJob(book.device, makeJob(book.device, 'Copy', bare)).hasExample).toBe(true);
    setExample(book.device, bare, false);
    book.openJob(bare);
    deleteJob(book.device, bare);
    bringBack(book.device);
    expect(readJob(book.device, bare).hasExample).toBe(false);
  });

  test('a link that is visited from it stands on the example of its own, as anywhere', () => {
    const tab = new FakeTab();
    const book = new Notebook(tab);
    book.openJob(makeJob(book.device, 'Bare'));
    tab.fragment = '#pistonMass=410g,300.5g&v=1';
    book.arrive(false);
    expect(book.value('baseline', stroke).text).not.toBe('');
    expect(book.isMissing('baseline', stroke)).toBe(false);
    book.leaveVisit();
    expect(book.isMissing('baseline', stroke)).toBe(true);
  });

  test('a link of it leaves what is missing missing, and says no number for it', () => {
    const book = new Notebook(new FakeTab());
    book.openJob(makeJob(book.device, 'Bare'));
    type(book, '500');
    const { href } = book.linkFor([pistonMass, stroke]);
    const guest = new Notebook(new FakeTab(new FakeStorage(), href.slice(href.indexOf('#'))));
    guest.open();
    expect(textIn(guest)).toBe('500');
    expect(guest.value('baseline', stroke).text).toBe('');
    expect(guest.isMissing('baseline', stroke)).toBe(true);
    expect(guest.isExample('baseline', stroke)).toBe(false);
  });

  test('deleted in another tab it says so, shows no example, and begins anew where one types', () => {
    const tab = new FakeTab();
    const book = new Notebook(tab);
    const id = makeJob(book.device, 'Both', '', lots());
    book.openJob(id);
    const before = new Set(tab.shared.kept.keys());
    deleteJob(new Notebook(new FakeTab(tab.shared)).device, id);
    for (const key of before) if (!tab.shared.kept.has(key)) book.follow(key);
    expect(book.notice).toContain('deleted in another tab');
    expect(book.isExample('baseline', pistonMass)).toBe(false);
    type(book, '500');
    expect(readJob(book.device, id).numbers).toBe(1);
  });
});

describe('a file of jobs', () => {
  const values = {
    ...emptySets(),
    baseline: { pistonMass: { text: '500', unit: 'g' } },
    candidate: { pistonMass: { text: '17 1/2', unit: 'oz', plusMinus: '0.1' } },
  };
  const when = '2026-11-30T10:00:00.000Z';

  test('comes back as it was saved', () => {
    const jobs = [
      { job: 'One', values, sets: plainSets, about, hasExample: false },
      {
        job: '',
        values: emptySets(),
        sets: plainSets,
        about: { ...about, notes: '', message: '' },
        hasExample: true,
      },
    ];
    expect(fromJobsFile(toJobsFile(jobs, when))).toEqual({ jobs, problems: [] });
    const device = openShelf(() => new FakeStorage());
    const [one] = jobs;
    if (one === undefined) throw new Error('no job');
    expect(wholeJob(device, addJob(device, one))).toEqual(one);
  });

  test('of one job is read as well', () => {
    const { jobs, problems } = fromJobsFile(toFile({ job: 'Single', values }, when));
    expect(problems).toEqual([]);
    expect(jobs.map(({ job }) => job)).toEqual(['Single']);
    expect(jobs[0]?.values).toEqual(values);
  });

  test('damaged in one job loses that alone, and says which', () => {
    const text = toJobsFile(
      [
        { job: 'Good', values, about, hasExample: true },
        { job: 'Bad', values, about, hasExample: true },
      ],
      when,
    );
    const file = JSON.parse(text) as { jobs: { notebook: unknown }[] };
    file.jobs[1] = { notebook: { format: 'something else' } };
    const { jobs, problems } = fromJobsFile(JSON.stringify(file));
    expect(jobs.map(({ job }) => job)).toEqual(['Good']);
    expect(problems.join(' ')).toContain('Job number 2:');
  });

  test.each([['nothing of ours'], ['{}'], ['{"format":"throwbook-jobs","version":1}'], ['']])(
    '%j gives no job and a sentence',
    (text) => {
      const { jobs, problems } = fromJobsFile(text);
      expect(jobs).toEqual([]);
      expect(problems.join(' ')).toMatch(/None of it was used/);
    },
  );

  test('of a later version is read as far as it is known', () => {
    const file = JSON.parse(
      toJobsFile([{ job: 'One', values, about, hasExample: true }], when),
    ) as {
      version: number;
    };
    file.version = 9;
    const { jobs, problems } = fromJobsFile(JSON.stringify(file));
    expect(jobs).toHaveLength(1);
    expect(problems.join(' ')).toContain('a later version');
  });
});
