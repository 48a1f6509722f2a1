import { readAnswer, type Answer, type Unread } from './read-answer.ts';
import { workWay, type Line, type Values } from './way.ts';

/** What became of one line of a reader's working. */
export type Standing = 'right' | 'follows' | 'differs';

/** A reader's working so far, held against the right one. */
export interface Trace {
  /** Of each line that the reader has given, by its name. `follows`: right for the reader's own earlier values. */
  readonly lines: Readonly<Record<string, Standing>>;
  /** The line at which the working first differs. */
  readonly differs?: string;
  /** The line to ask for next; none once one differs, or where all are given. */
  readonly next?: string;
  /** Whether the last line is right for the reader's own values on the way: that part is earned. */
  readonly earned: boolean;
}

function isNear(value: number | undefined, right: unknown, tolerance: number): boolean {
  if (value === undefined || typeof right !== 'number') return false;
  // Near nothing, as a sum that cancels, a share has no meaning.
  return Math.abs(value - right) <= tolerance * Math.abs(right) + 1e-12;
}

/**
 * Where a reader's working differs, found from the values on the way.
 *
 * @param way the lines that lead to the answer, its own last
 * @param values inputs and what is told [SI]
 * @param given the reader's values of lines [SI], the answer under its own name among them
 * @param tolerance as a share of each value
 */
export function traceWorking(
  way: readonly Line[],
  values: Values,
  given: Readonly<Record<string, number>>,
  tolerance: number,
): Trace {
  const right = workWay(way, values);
  const own: Record<string, number> = {};
  const lines: Record<string, Standing> = {};
  let differs: string | undefined;
  for (const line of way) {
    const value = given[line.of];
    if (value === undefined) continue;
    const followed = workWay(way, values, own)[line.of];
    if (isNear(value, right[line.of], tolerance)) lines[line.of] = 'right';
    else if (isNear(value, followed, tolerance)) lines[line.of] = 'follows';
    else {
      lines[line.of] = 'differs';
      differs ??= line.of;
    }
    own[line.of] = value;
  }
  const last = way.at(-1)?.of ?? '';
  const before = way.slice(0, -1);
  const next = before.find(({ of }) => given[of] === undefined)?.of;
  return {
    lines,
    ...(differs === undefined || differs === last ? {} : { differs }),
    ...(next === undefined || (differs !== undefined && differs !== last) ? {} : { next }),
    earned: lines[last] === 'follows',
  };
}

/** One value on the way as a reader typed it, in the unit that is asked. */
export function readOnTheWay(typed: string, unit: string): Answer | Unread {
  return readAnswer(typed, { unit, saysUnit: true });
}
