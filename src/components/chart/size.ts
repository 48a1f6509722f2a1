/** Drawing units in which text of 13 reads well; the page's own root size is 17 px on ordinary screens. */
const root = 17;

/**
 * The width of a drawing in its own units, so that text keeps its size whatever the width: one unit is one
 * pixel at the page's ordinary text size and grows with the reader's larger text. 400 where nothing is
 * measured yet, which a phone shrinks and a page column enlarges, both still readable.
 */
export function drawingWidth(measured: number | undefined, least: number, most: number): number {
  if (!measured) return 400;
  const size = parseFloat(getComputedStyle(document.documentElement).fontSize) || root;
  return Math.min(most, Math.max(least, Math.round((measured * root) / size)));
}
