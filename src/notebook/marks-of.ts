import type { Marks } from '../units/marks.ts';
import type { TypedValues } from './standing.ts';

/** The list of a part that may be marked in another list too: a rod at either of its ends. */
const alsoIn: Readonly<Record<string, string>> = { smallEndMasses: 'bigEndMasses' };

/** The marks of the parts of a list, among the values of a set as typed; undefined where none is marked. */
export function marksOf(typed: TypedValues | undefined, list: string): Marks | undefined {
  return typed?.[list]?.marks ?? typed?.[alsoIn[list] ?? '']?.marks;
}
