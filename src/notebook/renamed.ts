/** Quantities that once had another name, by that name: links, files and stored numbers of then still bear it. */
export const renamed: ReadonlyMap<string, string> = new Map([['targetPressure', 'pressureShare']]);

/**
 * Quantities whose bare number in a link is in another unit than their field's: a balance factor was once a
 * plain fraction, and plain numbers bear no unit in a link.
 */
const bareUnit: ReadonlyMap<string, string> = new Map([['reciprocatingFraction', 'ratio']]);

/** The unit of a number that a link brings without one; nothing where the field's own counts. */
export function unitOfBare(name: string): string {
  return bareUnit.get(name) ?? '';
}

/** The name that a quantity has today. */
export function nameToday(name: string): string {
  return renamed.get(name) ?? name;
}
