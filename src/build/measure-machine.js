/*
 * How fast the machine is while something is timed. Machines differ by a factor of two, and one that does other work
 * at the same time by more; so a fixed piece of work is timed in between, and each time is also told as it would be
 * on the machine that the budgets were made on.
 */

/** What {@link fixedWork} takes on that machine while it does nothing else (ms). */
const reference = 3.6;

/**
 * A piece of work that is always the same and asks nothing but the processor.
 *
 * @returns {number} of no meaning; it keeps a compiler from leaving the work out
 */
export function fixedWork() {
  let sum = 0;
  for (let n = 1; n <= 300_000; n += 1) sum += Math.sin(n) / Math.sqrt(n);
  return sum;
}

/**
 * @param {readonly number[]} values
 * @param {number} share 0.5 for the median
 */
export function at(values, share) {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

/**
 * How many times as long as on the reference machine everything takes. A median is judged by the median of the fixed
 * work, and the slowest by its slowest: both met what else the machine did.
 *
 * @param {readonly number[]} times of {@link fixedWork}, in ms
 * @param {number} share 0.5 for the median
 * @param {number} slowed how many times the processor was slowed on purpose
 */
export function machineFactor(times, share, slowed = 1) {
  return at(times, share) / (reference * slowed);
}
