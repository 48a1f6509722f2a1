import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { readHash, hashOf } from '../../../src/notebook/practice/address.ts';
import { nextExercise } from '../../../src/notebook/practice/next.ts';
import { progressFile, takeProgressFile } from '../../../src/notebook/practice/progress-file.ts';
import {
  clearProgress,
  keepRecord,
  practiceShelf,
  readProgress,
  sitDown,
} from '../../../src/notebook/practice/progress.ts';
import {
  newRecord,
  readRecord,
  recordAfter,
  type PracticeRecord,
} from '../../../src/notebook/practice/record.ts';

/** A browser's storage for tests. */
function storage(first: Readonly<Record<string, string>> = {}, room = Infinity): Storage {
  const map = new Map(Object.entries(first));
  return {
    get length() {
      return map.size;
    },
    key: (at: number) => [...map.keys()][at] ?? null,
    getItem: (key: string) => map.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (map.size >= room && !map.has(key)) throw new Error('full');
      map.set(key, text);
    },
    removeItem: (key: string) => void map.delete(key),
    clear: () => map.clear(),
  };
}
const ids = ['a.x', 'a.y', 'a.z', 'a.w'];

describe('a record', () => {
  it('counts, and leads on or back', () => {
    const right = recordAfter(newRecord, true, 1);
    expect(right).toEqual({ level: 1, right: 1, missed: 0, gap: 1 });
    expect(recordAfter(right, false, 1)).toEqual({ level: 0, right: 1, missed: 1, due: 1, gap: 1 });
  });

  it('comes back in later sittings after a miss, less and less often, and is learned', () => {
    let record = recordAfter(newRecord, false, 1);
    const due: (number | undefined)[] = [record.due];
    for (const sitting of [1, 2, 4, 8]) {
      record = recordAfter(record, true, sitting);
      due.push(record.due);
    }
    expect(due).toEqual([1, 2, 4, 8, undefined]);
  });

  it('that is not due yet stays due when it was', () => {
    const record = recordAfter(recordAfter(newRecord, false, 1), true, 1);
    expect(recordAfter(record, true, 1)).toMatchObject({ due: 2, gap: 2 });
  });

  test('is read as it was kept; any other text is none', () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { maxLength: 12 }), (answers) => {
        let record: PracticeRecord = newRecord;
        for (const [at, isRight] of answers.entries())
          record = recordAfter(record, isRight, at + 1);
        expect(readRecord(JSON.stringify(record))).toEqual(record);
      }),
    );
    for (const text of [
      '',
      'null',
      '[]',
      '7',
      '{"level": 9',
      '{"level":4,"right":0,"missed":0,"gap":1}',
      '{"level":1,"right":-1,"missed":0,"gap":1}',
      '{"level":1,"right":0,"missed":0,"gap":0}',
      '{"level":1,"right":0,"missed":0,"gap":1,"due":"soon"}',
    ])
      expect(readRecord(text), text).toBeUndefined();
  });
});

describe('the next exercise', () => {
  const missed: PracticeRecord = { level: 0, right: 0, missed: 1, due: 1, gap: 1 };
  const learned: PracticeRecord = { level: 3, right: 4, missed: 0, gap: 1 };

  it('is the first that was never asked', () => {
    expect(nextExercise(ids, {}, 1, [])).toBe('a.x');
    expect(nextExercise(ids, { 'a.x': learned }, 1, ['a.x'])).toBe('a.y');
  });

  it('is what was missed, after two others and not before', () => {
    const records = { 'a.x': missed };
    expect(nextExercise(ids, records, 1, ['a.x'])).toBe('a.y');
    expect(nextExercise(ids, { ...records, 'a.y': learned }, 1, ['a.x', 'a.y'])).toBe('a.z');
    expect(nextExercise(ids, records, 1, ['a.x', 'a.y', 'a.z'])).toBe('a.x');
  });

  it('is what is due from a former sitting, before anything new', () => {
    expect(nextExercise(ids, { 'a.z': { ...missed, due: 3 } }, 3, [])).toBe('a.z');
    expect(nextExercise(ids, { 'a.z': { ...missed, due: 3 } }, 2, [])).toBe('a.x');
  });

  it('is what needs the most showing where all were asked', () => {
    const records = {
      'a.x': learned,
      'a.y': { ...learned, level: 1 as const },
      'a.z': learned,
      'a.w': learned,
    };
    expect(nextExercise(ids, records, 1, ['a.x'])).toBe('a.y');
  });

  it('is never the same twice in a row where there is another', () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { minLength: 1, maxLength: 40 }), (answers) => {
        const records: Record<string, PracticeRecord> = {};
        const asked: string[] = [];
        for (const isRight of answers) {
          const id = nextExercise(ids, records, 1, asked) ?? '';
          expect(ids).toContain(id);
          expect(id).not.toBe(asked.at(-1));
          asked.push(id);
          records[id] = recordAfter(records[id] ?? newRecord, isRight, 1);
        }
      }),
    );
    const two = {
      'a.x': { ...newRecord, right: 1 },
      'a.y': { ...newRecord, right: 1, level: 3 as const },
    };
    expect(nextExercise(['a.x', 'a.y'], two, 1, ['a.y', 'a.x'])).toBe('a.y');
    expect(nextExercise(['a.x'], {}, 1, ['a.x'])).toBe('a.x');
    expect(nextExercise([], {}, 1, [])).toBeUndefined();
  });
});

describe('the progress on a device', () => {
  it('is read as it was kept, each exercise by itself', () => {
    const own = storage({ 'throwbook/1/baseline/pistonMass': '{}' });
    const shelf = practiceShelf(() => own);
    keepRecord(shelf, 'a.x', recordAfter(newRecord, true, 1));
    expect(readProgress(practiceShelf(() => own))).toMatchObject({
      records: { 'a.x': { right: 1 } },
      damaged: [],
    });
    expect(shelf.notice).toBeUndefined();
  });

  it('keeps what is damaged beside it, and puts it into the file', () => {
    const own = storage({ 'throwbook/practice/1/exercise/a.x': '{"level": 9' });
    const shelf = practiceShelf(() => own);
    expect(readProgress(shelf).damaged).toEqual(['a.x']);
    const file = () => JSON.parse(progressFile(shelf, new Date(0))) as unknown;
    expect(file()).toMatchObject({ unread: { 'a.x': '{"level": 9' } });
    keepRecord(shelf, 'a.x', newRecord);
    expect(file()).toMatchObject({
      unread: { 'a.x': '{"level": 9' },
      exercises: { 'a.x': newRecord },
    });
    keepRecord(shelf, 'a.x', recordAfter(newRecord, true, 1));
    expect(file()).toMatchObject({ unread: { 'a.x': '{"level": 9' } });
  });

  it.each([
    ['full', () => storage({}, 0), /is full/],
    [
      'forbidden',
      () => {
        throw new Error('no');
      },
      /does not let/,
    ],
  ])('is held in memory where the storage is %s, and one sentence says so', (_, find, words) => {
    const shelf = practiceShelf(find);
    keepRecord(shelf, 'a.x', newRecord);
    expect(shelf.notice).toMatch(words);
    expect(shelf.notice).toMatch(/progress/);
    expect(readProgress(shelf).records).toEqual({ 'a.x': newRecord });
  });

  it('is cleared and brought back, and nothing of the notebook with it', () => {
    const own = storage({ 'throwbook/1/job': 'mine' });
    const shelf = practiceShelf(() => own);
    sitDown(shelf, 0);
    keepRecord(shelf, 'a.x', newRecord);
    const bringBack = clearProgress(shelf);
    expect(own.length).toBe(1);
    expect(readProgress(shelf).records).toEqual({});
    bringBack();
    expect(readProgress(shelf).records).toEqual({ 'a.x': newRecord });
  });

  it('goes by its file to another device, where the record with more answers stands', () => {
    const [here, there] = [practiceShelf(() => storage()), practiceShelf(() => storage())];
    const hour = 3_600_000;
    for (const time of [0, 10 * hour, 20 * hour]) sitDown(here, time);
    sitDown(there, 0);
    keepRecord(here, 'a.x', recordAfter(newRecord, false, 3));
    keepRecord(here, 'a.y', recordAfter(newRecord, true, 3));
    const more = recordAfter(recordAfter(newRecord, true, 1), true, 1);
    keepRecord(there, 'a.y', more);
    const file = progressFile(here, new Date(0));
    expect(takeProgressFile(there, file)).toEqual({ taken: 1, left: 1, unread: 0 });
    expect(readProgress(there).records).toEqual({
      // Due in the sitting that it was missed in, which here is the first.
      'a.x': { ...recordAfter(newRecord, false, 3), due: 1 },
      'a.y': more,
    });
    expect(takeProgressFile(there, file)).toEqual({ taken: 0, left: 2, unread: 0 });
  });

  it.each([
    '',
    'nonsense',
    '[]',
    'null',
    '{"what":"Throwbook practice","format":2,"exercises":{}}',
  ])('a file of “%s” is none, and changes nothing', (text) => {
    const own = storage();
    expect(
      takeProgressFile(
        practiceShelf(() => own),
        text,
      ),
    ).toBeUndefined();
    expect(own.length).toBe(0);
  });

  it('leaves out what cannot be read in a file', () => {
    const shelf = practiceShelf(() => storage());
    const exercises = { 'a.x': { level: 9 }, 'a.y': newRecord, 'no exercise': newRecord };
    const text = JSON.stringify({ what: 'Throwbook practice', format: 1, sitting: 1, exercises });
    expect(takeProgressFile(shelf, text)).toEqual({ taken: 0, left: 1, unread: 2 });
  });

  it('counts a sitting anew after a long pause, and never for a clock that was set back', () => {
    const shelf = practiceShelf(() => storage());
    const hour = 3_600_000;
    expect(sitDown(shelf, 10 * hour)).toBe(1);
    expect(sitDown(shelf, 11 * hour)).toBe(1);
    expect(sitDown(shelf, 14 * hour)).toBe(2);
    expect(sitDown(shelf, 1 * hour)).toBe(2);
    shelf.set('throwbook/practice/1/sitting', 'nonsense');
    expect(sitDown(shelf, 20 * hour)).toBe(1);
  });
});

describe('the end of an address', () => {
  it('names an exercise and its numbers', () => {
    expect(readHash(hashOf('a.x', 4821), ids)).toEqual({ is: 'question', id: 'a.x', seed: 4821 });
    expect(readHash('#a.x', ids)).toEqual({ is: 'exercise', id: 'a.x' });
    expect(readHash('', ids)).toEqual({ is: 'nothing' });
    expect(readHash('#content', ids)).toEqual({ is: 'nothing' });
  });

  it.each([
    ['#a.x/2/4821', 'exercise', /another version/],
    ['#a.x/1/', 'exercise', /cut or changed/],
    ['#a.x/1/48%', 'exercise', /cut or changed/],
    ['#a.x/1/1/1', 'exercise', /cut or changed/],
    ['#b.q/1/4821', 'unknown', /does not have/],
    ['#<b>.q', 'unknown', /does not have/],
  ])('%s gets words', (hash, is, words) => {
    const asks = readHash(hash, ids);
    expect(asks.is).toBe(is);
    expect('say' in asks ? asks.say : '').toMatch(words);
  });
});
