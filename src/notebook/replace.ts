import {
  jobKey,
  placeOf,
  previousKey,
  readShelf,
  setsKey,
  type Shelf,
  valueKey,
} from './storage.ts';
import { keptSets, type Contents, parseValue, writeValue } from './values.ts';

/** Replaces the notebook on the shelf by `contents`, and keeps what it replaced for one step back. */
export function replaceOnShelf(shelf: Shelf, contents: Contents): void {
  const before = readShelf(shelf);
  shelf.set(
    previousKey,
    JSON.stringify({ job: before.job, values: before.values, sets: before.sets }),
  );
  for (const key of shelf.keys()) {
    const place = placeOf(key);
    if (place === undefined || Object.hasOwn(contents.values[place.set], place.name)) continue;
    // A damaged value is in no copy, so it stays where it is.
    if (parseValue(shelf.get(key) ?? '') !== undefined) shelf.remove(key);
  }
  for (const set of keptSets) {
    for (const [name, value] of Object.entries(contents.values[set])) {
      shelf.set(valueKey(set, name), writeValue(value));
    }
  }
  shelf.set(jobKey, contents.job);
  if (contents.sets !== undefined) shelf.set(setsKey, JSON.stringify(contents.sets));
}
