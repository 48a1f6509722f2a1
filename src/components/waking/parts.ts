/** The parts of a page that code brings to life. */
export const partSelector = '[data-calculator], [data-figure], [data-notebook-bar], [data-parts]';

/** What in a part answers the reader. */
export const answering = 'input, select, textarea, button, summary';

/** The server's drawing of a figure for a wide page, which stands beside the figure itself. */
export function wideDrawingOf(part: Element): Element | undefined {
  const next = part.nextElementSibling;
  return next?.matches('.figure-wide') === true ? next : undefined;
}

/** The part that something stands in; for the wide drawing of a figure that figure. */
export function partOf(target: EventTarget | null): HTMLElement | undefined {
  const drawing =
    target instanceof Element ? target.closest(`${partSelector}, .figure-wide`) : null;
  const part = drawing?.matches('.figure-wide') === true ? drawing.previousElementSibling : drawing;
  return part instanceof HTMLElement ? part : undefined;
}

/** The element of the part itself that stands where `element` stands, be it in the part or in its wide drawing. */
export function ownOf<Kind extends Element>(part: Element, element: Kind): Kind {
  if (part.contains(element)) return element;
  const place = [...(wideDrawingOf(part)?.querySelectorAll(answering) ?? [])].indexOf(element);
  // Both are the same HTML but for the width, so the kind is the same as well.
  return ([...part.querySelectorAll(answering)][place] ?? element) as Kind;
}
