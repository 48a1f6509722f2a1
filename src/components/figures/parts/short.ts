/** A coordinate as it stands in a path: rounded, so that server and browser write the same one. */
export function short(value: number): number {
  // Nothing is added to nothing, so that a zero has no sign.
  return Math.round(value * 100) / 100 + 0;
}
