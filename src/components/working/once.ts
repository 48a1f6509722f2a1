/** Anchors already given out, page by page: two calculators of a page may share a quantity, an id may not. */
const given = new WeakMap<object, Set<string>>();

/**
 * The id, the first time it is asked for on a page; undefined after that.
 *
 * @param page an object that is the same for all parts of one page: its request
 */
export function idOnce(page: object, id: string): string | undefined {
  const known = given.get(page) ?? new Set<string>();
  given.set(page, known);
  if (known.has(id)) return undefined;
  known.add(id);
  return id;
}
