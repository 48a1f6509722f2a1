/** A text and what is selected in it, or where the caret stands. */
export interface Selected {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/**
 * A place in the text that was `seen`, found in the one that stands there `now`, where some figures may be others and
 * one more in front: the end is the end, what follows the same beginning follows it, and what is left is counted from
 * the end.
 */
export function samePlace(place: number, seen: string, now: string): number {
  if (place === seen.length) return now.length;
  if (now.startsWith(seen.slice(0, place))) return place;
  return Math.max(0, now.length - (seen.length - place));
}

/**
 * The text `now` after the edit that made `after` of `before`. An edit is what was put in place of the selection or
 * taken away beside the caret; where the two texts differ elsewhere as well, `after` takes the place of everything.
 */
export function edited(now: string, before: Selected, after: Selected): string {
  const from = Math.min(before.start, after.end);
  const to = before.text.length - (after.text.length - after.end);
  const isOne =
    from <= to &&
    before.text.slice(0, from) === after.text.slice(0, from) &&
    before.text.slice(to) === after.text.slice(after.end);
  if (!isOne) return after.text;
  const [start, end] = [from, to].map((place) => samePlace(place, before.text, now));
  return now.slice(0, start) + after.text.slice(from, after.end) + now.slice(end);
}
