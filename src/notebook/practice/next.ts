import type { PracticeRecord } from './record.ts';

/** What was missed comes back after so many others. */
export const othersBetween = 2;

/**
 * The exercise to ask next: first what was missed and is due, the longest ago first, but not before
 * {@link othersBetween} others; then what was never asked, in the order given; then what needs the most showing.
 *
 * @param ids the exercises there are
 * @param asked those asked in this sitting, the last one last
 */
export function nextExercise(
  ids: readonly string[],
  records: Readonly<Record<string, PracticeRecord>>,
  sitting: number,
  asked: readonly string[],
): string | undefined {
  const lastAsked = (id: string): number => asked.lastIndexOf(id);
  const just = asked.slice(-othersBetween);
  const isDue = (id: string): boolean => (records[id]?.due ?? Infinity) <= sitting;
  const due = ids
    .filter((id) => isDue(id) && !just.includes(id))
    .toSorted((one, other) => lastAsked(one) - lastAsked(other));
  const fresh = ids.filter((id) => records[id] === undefined && lastAsked(id) < 0);
  const rest = ids
    .filter((id) => id !== asked.at(-1))
    .toSorted(
      (one, other) =>
        Number(just.includes(one)) - Number(just.includes(other)) ||
        (records[one]?.level ?? 0) - (records[other]?.level ?? 0) ||
        lastAsked(one) - lastAsked(other),
    );
  return due[0] ?? fresh[0] ?? rest[0] ?? ids[0];
}
