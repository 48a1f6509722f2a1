import { getContext, setContext } from 'svelte';

/** Drawing units in which text of 13 reads well; the page's own root size is 17 px on ordinary screens. */
const root = 17;

/** Where a component says to those in it what width the server draws them for. */
const drawnFor = Symbol('width that the server draws for');

/** Lets the server draw everything inside the component that calls this for a width, in drawing units. */
export function drawFor(width: number): void {
  setContext(drawnFor, width);
}

/**
 * The width of a drawing in its own units, so that text keeps its size whatever the width: one unit is one
 * pixel at the page's ordinary text size and grows with the reader's larger text. Where nothing is measured yet it
 * is 400, which a phone shrinks and half a page enlarges, both still readable; on the server what
 * {@link drawFor} said.
 */
export function drawingWidth(measured: number | undefined, least: number, most: number): number {
  if (typeof window === 'undefined')
    return Math.min(most, getContext<number | undefined>(drawnFor) ?? 400);
  if (!measured) return 400;
  const size = parseFloat(getComputedStyle(document.documentElement).fontSize) || root;
  return Math.min(most, Math.max(least, Math.round((measured * root) / size)));
}
