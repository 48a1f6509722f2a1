/**
 * The item at `index` of a list that is known to reach so far.
 *
 * Throws RangeError where nothing stands there: a fault of the caller, never taken for zero.
 */
export function at<T>(list: ArrayLike<T>, index: number): T {
  const item = list[index];
  if (item === undefined)
    throw new RangeError(`there is no item ${index} in a list of ${list.length}`);
  return item;
}
