import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fromFile } from '../../src/notebook/file.ts';
import { fromJobsFile } from '../../src/notebook/jobs-file.ts';
import { decodeLink } from '../../src/notebook/link.ts';
import { readThen } from '../../src/notebook/then.ts';
import { emptySets } from '../../src/notebook/values.ts';

/*
 * Links and files of every form that was ever handed out. They stand in mails and on disks, so that none of them is
 * changed here: a new form is added.
 */
const issued = (name: string): string =>
  readFileSync(new URL(`../fixtures/issued/${name}`, import.meta.url), 'utf8');

const baseline = {
  bore: { text: '3 9/16"', unit: 'in' },
  pistonMass: { text: '495.2', unit: 'g', plusMinus: '0.1' },
};
const candidate = { pistonMass: { text: '398.6', unit: 'g' } };

describe('a file that was saved', () => {
  test('with two sets', () => {
    const read = fromFile(issued('file-1.json'));
    expect(read).toMatchObject({ job: 'No. 17', usable: true, problems: [] });
    expect(read.values).toEqual({ ...emptySets(), baseline, candidate });
  });

  test('with more sets, their names and the results of then', () => {
    const read = fromFile(issued('file-2.json'));
    expect(read).toMatchObject({ job: 'No. 17', usable: true, problems: [] });
    expect(read.values).toEqual({
      ...emptySets(),
      baseline,
      candidate,
      third: { pistonMass: { text: '410', unit: 'g' } },
    });
    expect(read.sets).toEqual({
      kept: ['baseline', 'candidate', 'third'],
      names: { third: 'Forged' },
      shown: { baseline: 'baseline', candidate: 'third' },
    });
    expect(readThen(read.was)?.results[0]).toMatchObject({ baseline: 1.912, candidate: 1.391 });
  });

  test('with several jobs', () => {
    const { jobs, problems } = fromJobsFile(issued('jobs-1.json'));
    expect(problems).toEqual([]);
    expect(jobs).toMatchObject([
      {
        job: 'No. 17',
        hasExample: false,
        about: { customer: 'A. Customer', notes: 'two lines\nof notes', message: '' },
        values: { baseline: { pistonMass: baseline.pistonMass }, candidate },
      },
    ]);
  });
});

test.each(issued('links.txt').trim().split('\n'))('a link that was sent: %s', (hash) => {
  const link = decodeLink(hash);
  if (link?.ok !== true) throw new Error('not a link');
  expect(link).toMatchObject({ problems: [], numbers: 4, letter: { job: 'No. 17' } });
  expect(link.values).toEqual([
    { name: 'pistonMass', baseline: baseline.pistonMass, candidate: candidate.pistonMass },
    {
      name: 'bore',
      baseline: { text: '3 9/16', unit: 'in' },
      candidate: { text: 'abc', unit: 'mm' },
    },
  ]);
  if (hash.includes('sets=')) expect(link.letter.sets).toBe('Road\nHill');
  if (hash.includes('note=')) expect(link.letter.note).toBe('New pistons!');
  if (hash.includes('view=')) expect(link.view).toBe('load-speed/at/7464');
});
