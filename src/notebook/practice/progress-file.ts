import type { Shelf } from '../storage.ts';
import { damagedPrefix, keepRecord, readProgress, recordPrefix, sittingKey } from './progress.ts';
import { readRecord, type PracticeRecord } from './record.ts';

const what = 'Throwbook practice';
const format = 1;
const exerciseId = /^[a-z][a-z-]*(?:\.[a-zA-Z]+)+$/u;

/** What came of reading a file of progress, counted in exercises. */
export interface Taken {
  readonly taken: number;
  /** On this device more had been answered. */
  readonly left: number;
  readonly unread: number;
}

function sittingOf(shelf: Shelf): number {
  return Number((shelf.get(sittingKey) ?? '1').split(' ')[0]);
}

/** The progress as the text of a file, damaged records as they were found. */
export function progressFile(shelf: Shelf, now: Date): string {
  const { records, damaged } = readProgress(shelf);
  const aside = shelf.keys().filter((key) => key.startsWith(damagedPrefix));
  const unread = Object.fromEntries([
    ...damaged.map((id) => [id, shelf.get(recordPrefix + id) ?? '']),
    ...aside.map((key) => [key.slice(damagedPrefix.length), shelf.get(key) ?? '']),
  ]);
  const file = {
    what,
    format,
    saved: now.toISOString(),
    sitting: sittingOf(shelf),
    exercises: records,
    ...(Object.keys(unread).length === 0 ? {} : { unread }),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

/**
 * Takes the progress of a file to that of this device; of one exercise the record with more answers stands. What is due
 * again comes as many sittings from now as it would have come where it was saved.
 *
 * @returns undefined for a text that is no such file; then nothing is written
 */
export function takeProgressFile(shelf: Shelf, text: string): Taken | undefined {
  const file = readFile(text);
  if (file === undefined) return undefined;
  const { records } = readProgress(shelf);
  const later = sittingOf(shelf) - file.sitting;
  let [taken, left, unread] = [0, 0, 0];
  for (const [id, found] of file.exercises) {
    const record = exerciseId.test(id) ? readRecord(JSON.stringify(found)) : undefined;
    if (record === undefined) unread += 1;
    else if (answers(records[id]) >= answers(record)) left += 1;
    else {
      const { due } = record;
      keepRecord(
        shelf,
        id,
        due === undefined ? record : { ...record, due: Math.max(0, due + later) },
      );
      taken += 1;
    }
  }
  return { taken, left, unread };
}

function answers(record: PracticeRecord | undefined): number {
  return record === undefined ? 0 : record.right + record.missed;
}

function readFile(
  text: string,
): { readonly sitting: number; readonly exercises: readonly [string, unknown][] } | undefined {
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (typeof found !== 'object' || found === null) return undefined;
  const file = found as Partial<Record<string, unknown>>;
  const { exercises, sitting } = file;
  if (file['what'] !== what || file['format'] !== format) return undefined;
  if (typeof exercises !== 'object' || exercises === null) return undefined;
  return {
    sitting: Number.isSafeInteger(sitting) ? Number(sitting) : 1,
    exercises: Object.entries(exercises),
  };
}
