/** What the reader did to one field or button before its code had arrived. */
interface Deed {
  readonly value: string;
  readonly checked: boolean;
}

type Field = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement | HTMLButtonElement;

const deeds = new WeakMap<HTMLElement, Map<Field, Deed>>();

function fieldOf(target: EventTarget | null): Field | undefined {
  const field =
    target instanceof Element ? target.closest('input, select, textarea, button') : null;
  const isField =
    field instanceof HTMLInputElement ||
    field instanceof HTMLSelectElement ||
    field instanceof HTMLTextAreaElement ||
    field instanceof HTMLButtonElement;
  return isField ? field : undefined;
}

/** Remembers a `click`, `input` or `change` in a part of the page that has no code yet. */
export function remember(part: HTMLElement, { type, target }: Event): void {
  const field = fieldOf(target);
  // A click on a field says nothing that its other events do not say better.
  if (field === undefined || (type === 'click') !== field instanceof HTMLButtonElement) return;
  const known = deeds.get(part) ?? new Map<Field, Deed>();
  deeds.set(part, known);
  known.set(field, {
    value: field.value,
    checked: field instanceof HTMLInputElement && field.checked,
  });
}

/**
 * Says what was remembered of a part again to its code, now that it is there: bringing HTML to life may set a field
 * back to what it was made with.
 */
export function replay(part: HTMLElement): void {
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
