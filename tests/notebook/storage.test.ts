import { describe, expect, test } from 'vitest';
import {
  jobKey,
  openShelf,
  placeOf,
  previousKey,
  readShelf,
  valueKey,
  type Shelf,
} from '../../src/notebook/storage.ts';
import { replaceOnShelf } from '../../src/notebook/replace.ts';
import { plainSets } from '../../src/notebook/job-sets.ts';
import { emptySets } from '../../src/notebook/values.ts';
import { FakeStorage } from './fake-world.ts';

const key = valueKey('baseline', 'pistonMass');
const value = JSON.stringify({ text: '495.2', unit: 'g' });

describe('a shelf', () => {
  test('keeps one key a value, so that two tabs writing at once keep both', () => {
    const storage = new FakeStorage();
    const [one, other] = [openShelf(() => storage), openShelf(() => storage)];
    one.set(key, value);
    other.set(valueKey('candidate', 'pistonMass'), value);
    expect(key).toBe('throwbook/1/baseline/pistonMass');
    expect([...storage.kept.keys()]).toEqual([
      'throwbook/1/baseline/pistonMass',
      'throwbook/1/candidate/pistonMass',
    ]);
    expect(one.notice).toBeUndefined();
  });

  test.each([
    [
      'forbidden: its mere mention throws',
      () => {
        throw new DOMException('opaque', 'SecurityError');
      },
    ],
    ['absent', () => undefined],
    ['broken at the first look', () => Object.assign(new FakeStorage(), { broken: true })],
  ])('%s: memory serves, and one sentence says so', (_, find: () => Storage | undefined) => {
    const shelf = openShelf(find);
    expect(shelf.notice).toBeUndefined();
    shelf.set(key, value);
    expect(shelf.get(key)).toBe(value);
    expect(shelf.keys()).toEqual([key]);
    expect(shelf.notice).toContain('does not let the page keep your numbers');
    shelf.remove(key);
    expect(shelf.get(key)).toBeUndefined();
    expect(shelf.keys()).toEqual([]);
  });

  test('full: the newest number stays in memory, the older one in storage, and later room is used', () => {
    const storage = new FakeStorage();
    const shelf = openShelf(() => storage);
    shelf.set(key, '"old"');
    storage.full = true;
    shelf.set(key, value);
    expect(shelf.get(key)).toBe(value);
    expect(storage.kept.get(key)).toBe('"old"');
    expect(shelf.notice).toContain('full');
    storage.full = false;
    shelf.set(key, value);
    expect(storage.kept.get(key)).toBe(value);
  });

  test('taken away in between: nothing throws, and what was removed stays removed', () => {
    const storage = new FakeStorage();
    const shelf = openShelf(() => storage);
    shelf.set(key, value);
    storage.broken = true;
    expect(shelf.get(key)).toBeUndefined();
    expect(shelf.keys()).toEqual([]);
    shelf.remove(key);
    storage.broken = false;
    expect(shelf.get(key)).toBeUndefined();
    expect(shelf.keys()).toEqual([]);
  });

  describe('that asks the browser later', () => {
    function lateShelf(): {
      storage: FakeStorage;
      shelf: Shelf;
      run: () => void;
      told: string[];
    } {
      const storage = new FakeStorage();
      const runs: (() => void)[] = [];
      const told: string[] = [];
      const shelf = openShelf(() => storage, undefined, {
        soon: (run) => void runs.push(run),
        told: () => void told.push(shelf.notice ?? ''),
      });
      const run = (): void => {
        for (const each of runs.splice(0)) each();
      };
      return { storage, shelf, run, told };
    }

    test('gives what is to be kept, and keeps the last of it', () => {
      const { storage, shelf, run, told } = lateShelf();
      shelf.set(key, '"first"');
      shelf.set(key, value);
      expect(shelf.get(key)).toBe(value);
      expect(shelf.keys()).toEqual([key]);
      expect(storage.kept.size).toBe(0);
      run();
      expect(storage.kept.get(key)).toBe(value);
      expect(told).toEqual([]);
      // And again, after it has run.
      shelf.set(key, '"second"');
      run();
      expect(storage.kept.get(key)).toBe('"second"');
    });

    test('keeps nothing that was removed, or written by another tab, meanwhile', () => {
      const { storage, shelf, run } = lateShelf();
      const other = valueKey('candidate', 'pistonMass');
      shelf.set(key, value);
      shelf.set(other, value);
      shelf.remove(key);
      storage.kept.set(other, '"theirs"');
      shelf.forget(other);
      run();
      expect(Object.fromEntries(storage.kept)).toEqual({ [other]: '"theirs"' });
    });

    test('says once that the storage is full, when it finds out', () => {
      const { storage, shelf, run, told } = lateShelf();
      storage.full = true;
      shelf.set(key, value);
      expect(shelf.notice).toBeUndefined();
      run();
      expect(told).toHaveLength(1);
      expect(shelf.notice).toContain('full');
      expect(shelf.get(key)).toBe(value);
      shelf.set(key, '"newer"');
      run();
      expect(told).toHaveLength(1);
      expect(shelf.get(key)).toBe('"newer"');
    });
  });

  test('another tab is newer than memory', () => {
    const storage = new FakeStorage();
    const shelf = openShelf(() => storage);
    storage.full = true;
    shelf.set(key, value);
    storage.kept.set(key, '"theirs"');
    shelf.forget(key);
    expect(shelf.get(key)).toBe('"theirs"');
  });
});

describe('reading a shelf', () => {
  test.each([
    '',
    '{',
    '5',
    'null',
    '{"text":5,"unit":"g"}',
    '{"text":"1"}',
    '{"text":"1","unit":"cubit"}',
    '{"text":"1","unit":"g","plusMinus":2}',
  ])('a damaged value %j is named, left in place, and harms no other', (damage) => {
    const storage = new FakeStorage();
    storage.kept.set(key, damage);
    storage.kept.set(valueKey('candidate', 'bore'), '{"text":"90.5","unit":"mm"}');
    const found = readShelf(openShelf(() => storage));
    expect(found.damaged[key]).toContain('pistonMass (baseline) is damaged');
    expect(found.values).toEqual({
      ...emptySets(),
      baseline: {},
      candidate: { bore: { text: '90.5', unit: 'mm' } },
    });
    expect(storage.kept.get(key)).toBe(damage);
  });

  test('keys of other sorts are nobody’s value', () => {
    for (const other of [
      jobKey,
      'throwbook/1/baseline/__proto__',
      'throwbook/1/baseline/a/b',
      'throwbook/2/baseline/bore',
      'theme',
    ]) {
      expect(placeOf(other)).toBeUndefined();
    }
  });
});

describe('replacing a notebook', () => {
  test('what was there is kept for one step back; a damaged value stays where it is', () => {
    const storage = new FakeStorage();
    const shelf = openShelf(() => storage);
    shelf.set(key, value);
    shelf.set(jobKey, 'No.17');
    storage.kept.set(valueKey('baseline', 'stroke'), 'damaged');
    replaceOnShelf(shelf, {
      job: 'No.18',
      values: { ...emptySets(), baseline: { bore: { text: '90.5', unit: 'mm' } } },
    });
    expect(storage.kept.get(key)).toBeUndefined();
    expect(storage.kept.get(valueKey('baseline', 'bore'))).toBe('{"text":"90.5","unit":"mm"}');
    expect(storage.kept.get(valueKey('baseline', 'stroke'))).toBe('damaged');
    expect(storage.kept.get(jobKey)).toBe('No.18');
    expect(JSON.parse(storage.kept.get(previousKey) ?? '')).toEqual({
      job: 'No.17',
      values: { ...emptySets(), baseline: { pistonMass: { text: '495.2', unit: 'g' } } },
      sets: plainSets,
    });
  });
});
