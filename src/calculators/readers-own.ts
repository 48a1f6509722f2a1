import type { AnyCalculator, Entry } from './define.ts';

/** Kinds of what is measured on the engine or its car; other numbers of a thing are looked up or assumed. */
const measured: readonly string[] = ['length', 'inertia', 'torque', 'count'];
/** Kinds of what is chosen for the engine: its speeds, and how many of a part it has. */
const chosen: readonly string[] = ['angularSpeed', 'count'];

/**
 * True for a number that only the reader can have: measured or drawn for each part, a dimension that both sets have, a
 * speed or a number of parts that is chosen. An invented one would hide in the result; what is assumed, looked up in
 * a table or decided by custom may stand until it is known better.
 */
export function isReadersOwn(entry: Entry): boolean {
  if (entry.type === 'choice') return false;
  if (entry.origin === 'part') return true;
  if (entry.origin === 'thing') return measured.includes(entry.kind);
  return entry.origin === 'choice' && chosen.includes(entry.kind);
}

/** The inputs without which a calculator has no result that is the reader's own. */
export function readersOwnInputs({ inputs }: AnyCalculator): readonly Entry[] {
  return Object.values(inputs).filter((entry) => entry.optional !== true && isReadersOwn(entry));
}
