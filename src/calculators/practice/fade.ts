/**
 * How much of the working is shown with an exercise. At 0 all of a similar one, with other numbers; at 1 the exercise's
 * own but for its last line; at 2 but for the last two; at 3 nothing. A right answer at the first try leads on by one, a miss
 * back by one.
 */
export type Level = 0 | 1 | 2 | 3;

const levels: readonly Level[] = [0, 1, 2, 3];

export function levelAfter(level: Level, isRight: boolean): Level {
  return levels[Math.min(3, Math.max(0, level + (isRight ? 1 : -1)))] ?? 0;
}

/** How many lines of a working of `count` are shown with the exercise's own numbers. */
export function linesShown(level: Level, count: number): number {
  return level === 0 || level === 3 ? 0 : Math.max(0, count - level);
}

/** The seed of the similar exercise whose working is shown in full. */
export function similarSeed(seed: number): number {
  // Far from any seed that is asked, and another for each.
  return (seed ^ 0x5a5a5a) + 10_000_000;
}
