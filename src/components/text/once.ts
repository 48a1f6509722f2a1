const seen = new WeakMap<Request, Set<string>>();

/**
 * True the first time a page asks for `key`, false afterwards. The page is known by its request, which the build
 * makes anew for each.
 */
export function firstOnPage(request: Request, key: string): boolean {
  const keys = seen.get(request) ?? new Set<string>();
  seen.set(request, keys);
  if (keys.has(key)) return false;
  keys.add(key);
  return true;
}
