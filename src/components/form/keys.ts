/** The number from which F2 went to the unit of its row. */
let left: HTMLElement | undefined;

/**
 * Keys of a sheet, as in any table of numbers: Enter goes down the column, with Shift up; F2 goes to the unit of
 * the row and Escape back from there. Tab goes across by itself, since units are out of its way. It is heard on the
 * document, so that a sheet whose code is not there yet is gone through in the same way; a key that is only said
 * again to such code has moved already.
 */
export function moveByKeys(event: KeyboardEvent): void {
  const { target, key } = event;
  if (!(target instanceof HTMLElement) || !event.isTrusted) return;
  if (key === 'Escape' && target.matches('select.row-unit') && left !== undefined) {
    left.focus();
    return;
  }
  if (!target.matches('[data-name]')) return;
  if (key === 'F2') {
    const unit = target.closest('.row')?.querySelector<HTMLElement>('select.row-unit');
    if (unit === null || unit === undefined) return;
    left = target;
    event.preventDefault();
    unit.focus();
    return;
  }
  if (key !== 'Enter' || event.isComposing || event.ctrlKey || event.metaKey) return;
  // In a field of several readings Enter begins the next of them.
  if (target.matches('textarea')) return;
  const sheet = target.closest('[data-calculator], [data-parts], [data-sheet]');
  if (sheet === null) return;
  event.preventDefault();
  const next = below(sheet, target, event.shiftKey ? -1 : 1);
  next?.focus();
  // What is typed next takes the place of what stands there, as after Tab.
  if (next instanceof HTMLInputElement) next.select();
}

let clicked: EventTarget | null;

/**
 * The first click on a number selects it, so that what is typed takes its place, as after Tab and Enter; another one
 * sets the caret. Whoever has marked a part of it by drawing the pointer over it keeps that.
 */
export function clickCell({ target }: Event): void {
  const isCell = target instanceof HTMLInputElement && target.matches('[data-name]');
  if (isCell && target !== clicked && target.selectionStart === target.selectionEnd)
    target.select();
  clicked = target;
}

/** The field `way` rows from this one in its column; one that serves both sets stands in both columns. */
function below(sheet: Element, field: HTMLElement, way: 1 | -1): HTMLElement | undefined {
  const rows = [...sheet.querySelectorAll<HTMLElement>('.row')].filter(
    (row) => row.offsetParent !== null && row.querySelector('[data-name]') !== null,
  );
  const next = rows[rows.findIndex((row) => row.contains(field)) + way];
  const fields = [...(next?.querySelectorAll<HTMLElement>('[data-name]') ?? [])];
  return fields.find((each) => each.dataset['set'] === field.dataset['set']) ?? fields[0];
}
