/** Quantities that once had another name, by that name: links, files and stored numbers of then still bear it. */
export const renamed: ReadonlyMap<string, string> = new Map([['targetPressure', 'pressureShare']]);

/** The name that a quantity has today. */
export function nameToday(name: string): string {
  return renamed.get(name) ?? name;
}
