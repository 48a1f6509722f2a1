/** Data as the text of a script element, in which no `<` may stand that could end it. */
export function inScript(data: unknown): string {
  return JSON.stringify(data).replaceAll('<', '\\u003c');
}
