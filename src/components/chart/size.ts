import { getContext, setContext } from 'svelte';

/** Drawing units in which text of 13 reads well; the page's own root size is 17 px on ordinary screens. */
const root = 17;

/** Where nothing is measured yet: a phone shrinks it hardly, half a wide page enlarges it. */
const unmeasured = 380;

/**
 * The greatest width of a drawing that takes half of a wide page, and of one that takes all of it. Drawn no wider,
 * they grow with the page, so that their text can be read at a desk and from the back of a room.
 */
export const halfPage = 380;
export const wholePage = 720;

/** Where a component says to those in it what width the server draws them for. */
const drawnFor = Symbol('width that the server draws for');

/** Lets the server draw everything inside the component that calls this for a width, in drawing units. */
export function drawFor(width: number): void {
  setContext(drawnFor, width);
}

/**
 * The width of a drawing in its own units, so that text keeps its size whatever the width: one unit is one
 * pixel at the page's ordinary text size and grows with the reader's larger text, and with a page that is wider than
 * the drawing's greatest width. On the server it is what {@link drawFor} said, if anything did.
 */
export function drawingWidth(measured: number | undefined, least: number, most: number): number {
  if (typeof window === 'undefined')
    return Math.min(most, getContext<number | undefined>(drawnFor) ?? unmeasured);
  if (!measured) return Math.min(most, unmeasured);
  const size = parseFloat(getComputedStyle(document.documentElement).fontSize) || root;
  return Math.min(most, Math.max(least, Math.round((measured * root) / size)));
}
