/** What the reader did to one field or button before its code had arrived. */
interface Deed {
  readonly value: string;
  readonly checked: boolean;
}

type Field = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement | HTMLButtonElement;

const deeds = new WeakMap<HTMLElement, Map<Field, Deed>>();
const all = 'input, select, textarea, button, summary';

function fieldOf(target: EventTarget | null): Field | undefined {
  const field = target instanceof Element ? target.closest(all) : null;
  const isField =
    field instanceof HTMLInputElement ||
    field instanceof HTMLSelectElement ||
    field instanceof HTMLTextAreaElement ||
    field instanceof HTMLButtonElement;
  return isField ? field : undefined;
}

/** The server's drawing of a figure for a wide page, which stands beside the figure itself. */
export function wideDrawingOf(part: HTMLElement): Element | undefined {
  const next = part.nextElementSibling;
  return next?.matches('.figure-wide') === true ? next : undefined;
}

/** The element of `part` that stands where `element` stands in another drawing of it. */
function counterpart<Kind extends Element>(part: HTMLElement, drawn: Element, element: Kind): Kind {
  const place = [...drawn.querySelectorAll(all)].indexOf(element);
  // Both are the same HTML but for the width, so the kind is the same as well.
  return ([...part.querySelectorAll(all)][place] ?? element) as Kind;
}

/**
 * Remembers a `click`, `input` or `change` in a part of the page that has no code yet, or in the server's wide
 * drawing of it.
 */
export function remember(part: HTMLElement, { type, target, currentTarget }: Event): void {
  const field = fieldOf(target);
  // A click on a field says nothing that its other events do not say better.
  if (field === undefined || (type === 'click') !== field instanceof HTMLButtonElement) return;
  const known = deeds.get(part) ?? new Map<Field, Deed>();
  deeds.set(part, known);
  const drawn = currentTarget instanceof Element ? currentTarget : part;
  known.set(drawn === part ? field : counterpart(part, drawn, field), {
    value: field.value,
    checked: field instanceof HTMLInputElement && field.checked,
  });
}

/** Notes what is selected in the field that is being written in, and gives a function that selects it again. */
export function holdSelection(part: HTMLElement): () => void {
  const field = document.activeElement;
  const isText =
    (field instanceof HTMLInputElement && field.type === 'text') ||
    field instanceof HTMLTextAreaElement;
  if (!isText || !part.contains(field)) return () => undefined;
  const { value, selectionStart, selectionEnd } = field;
  return () => {
    if (field.value === value) field.setSelectionRange(selectionStart, selectionEnd);
  };
}

/**
 * Says what was remembered of a part again to its code, now that it is there: bringing HTML to life may set a field
 * back to what it was made with. The server's wide drawing of the part leaves, and what was open in it or had the
 * focus is so in the part.
 */
export function replay(part: HTMLElement): void {
  const wide = wideDrawingOf(part);
  if (wide !== undefined) {
    const focus = wide.querySelector<HTMLElement>(':focus');
    for (const summary of wide.querySelectorAll('details[open] > summary'))
      counterpart(part, wide, summary).closest('details')?.setAttribute('open', '');
    if (focus !== null) counterpart(part, wide, focus).focus({ preventScroll: true });
    wide.remove();
  }
  const focused = document.activeElement;
  if (focused !== null && part.contains(focused)) focused.dispatchEvent(new FocusEvent('focus'));
  for (const [field, { value, checked }] of deeds.get(part) ?? []) {
    if (!field.isConnected) continue;
    if (field instanceof HTMLButtonElement) {
      field.click();
      continue;
    }
    if (field instanceof HTMLInputElement && /^(?:radio|checkbox)$/.test(field.type))
      field.checked = checked;
    else field.value = value;
    for (const type of ['input', 'change']) field.dispatchEvent(new Event(type, { bubbles: true }));
  }
  deeds.delete(part);
}
