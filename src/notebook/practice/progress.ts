import { openShelf, type Keeping, type Shelf } from '../storage.ts';
import { readRecord, type PracticeRecord } from './record.ts';

const keeping: Keeping = {
  prefix: 'throwbook/practice/1/',
  forbidden:
    'This browser does not let the page keep your progress. It stays until the page is closed; save it as a file.',
  full: 'The storage of this browser is full. Your newest progress stays until the page is closed; save it as a file.',
};
/** Before the id of an exercise: the key of its record. */
export const recordPrefix = `${keeping.prefix}exercise/`;
/** Before the id of an exercise: the key of a record that could not be read. */
export const damagedPrefix = `${keeping.prefix}damaged/`;
/** The key of the sitting's number and of the time of its last answer. */
export const sittingKey = `${keeping.prefix}sitting`;

/** [ms] Who comes back after a longer time sits down anew. */
const pause = 2 * 60 * 60 * 1000;

/** A reader's progress, as it stands on this device. */
export interface Progress {
  readonly records: Readonly<Record<string, PracticeRecord>>;
  /** Ids of exercises whose record could not be read. Its text stays where it is until it is asked again. */
  readonly damaged: readonly string[];
}

/** A shelf for the progress. One key an exercise, so that two tabs never undo each other. */
export function practiceShelf(find: () => Storage | undefined): Shelf {
  return openShelf(find, keeping);
}

/** Reads all of it; nothing is written. */
export function readProgress(shelf: Shelf): Progress {
  const records: Record<string, PracticeRecord> = {};
  const damaged: string[] = [];
  for (const key of shelf.keys()) {
    if (!key.startsWith(recordPrefix)) continue;
    const id = key.slice(recordPrefix.length);
    const record = readRecord(shelf.get(key) ?? '');
    if (record === undefined) damaged.push(id);
    else records[id] = record;
  }
  return { records, damaged };
}

/** Keeps the record of one exercise. A damaged text that stood there is put aside, and goes into the file. */
export function keepRecord(shelf: Shelf, id: string, record: PracticeRecord): void {
  const before = shelf.get(recordPrefix + id);
  if (before !== undefined && readRecord(before) === undefined)
    shelf.set(damagedPrefix + id, before);
  shelf.set(recordPrefix + id, JSON.stringify(record));
}

/** The number of the sitting at this time [ms since 1970]: one more than the last where that was long ago. */
export function sitDown(shelf: Shelf, now: number): number {
  const [number = Number.NaN, last = Number.NaN] = (shelf.get(sittingKey) ?? '')
    .split(' ')
    .map(Number);
  const isKnown = Number.isSafeInteger(number) && number > 0 && Number.isFinite(last);
  // A clock that was set back ends no sitting.
  const sitting = !isKnown ? 1 : now - last > pause ? number + 1 : number;
  shelf.set(sittingKey, `${String(sitting)} ${String(now)}`);
  return sitting;
}

/** Takes all progress away, and gives back what brings it back again. */
export function clearProgress(shelf: Shelf): () => void {
  const all = shelf.keys().map((key) => [key, shelf.get(key) ?? ''] as const);
  for (const [key] of all) shelf.remove(key);
  return () => {
    for (const [key, text] of all) shelf.set(key, text);
  };
}
