let count = $state(0);

/**
 * How many results have come without a key: a ± worked out in slices, or what a slow model gives once the keys are
 * quiet. The notebook's revision says nothing of them, so who follows late reads both.
 */
export function arrivals(): number {
  return count;
}

/** One more has come. */
export function cameLate(): void {
  count += 1;
}
