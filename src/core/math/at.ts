/** The value of a list at `index`. Throws RangeError where the list has none: an error of the caller's. */
export function at(list: ArrayLike<number>, index: number): number {
  const value = list[index];
  if (value === undefined) throw new RangeError(`the list has no value at ${index}`);
  return value;
}
