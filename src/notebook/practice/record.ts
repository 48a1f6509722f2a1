import { levelAfter, type Level } from '../../calculators/practice/fade.ts';

/** What is kept of one exercise. */
export interface PracticeRecord {
  /** How much of the working is still shown. */
  readonly level: Level;
  /** How often it was right at the first try. */
  readonly right: number;
  readonly missed: number;
  /** The sitting in which it is asked again because it was missed; absent where it was not, or is learned. */
  readonly due?: number;
  /** Sittings from one return to the next; doubled by each right answer. */
  readonly gap: number;
}

export const newRecord: PracticeRecord = { level: 0, right: 0, missed: 0, gap: 1 };

/** After so long a gap what was missed counts as learned. */
const longest = 4;

/** The record after one more answer at the first try, in a sitting of that number. */
export function recordAfter(
  record: PracticeRecord,
  isRight: boolean,
  sitting: number,
): PracticeRecord {
  const level = levelAfter(record.level, isRight);
  if (!isRight)
    return { level, right: record.right, missed: record.missed + 1, due: sitting, gap: 1 };
  const { due, gap } = record;
  const right = { level, right: record.right + 1, missed: record.missed };
  if (due === undefined || gap > longest) return { ...right, gap: 1 };
  // Asked again before its time, it is due when it was.
  return due > sitting ? { ...right, due, gap } : { ...right, due: sitting + gap, gap: 2 * gap };
}

function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && Number(value) >= 0;
}

/** A record as it was kept; undefined for a text that is none. */
export function readRecord(text: string): PracticeRecord | undefined {
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (typeof found !== 'object' || found === null) return undefined;
  const { level, right, missed, due, gap } = found as Partial<Record<string, unknown>>;
  if (level !== 0 && level !== 1 && level !== 2 && level !== 3) return undefined;
  if (!isCount(right) || !isCount(missed) || !isCount(gap) || gap === 0) return undefined;
  if (due !== undefined && !isCount(due)) return undefined;
  return { level, right, missed, gap, ...(due === undefined ? {} : { due }) };
}
