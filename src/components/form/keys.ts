/**
 * Keys of a sheet, as in any table of numbers: Enter goes down the column, with Shift up; F2 goes to the unit of
 * the row and Escape back from there. Tab goes across by itself, since units are out of its way. For `{@attach}`.
 */
export function moveByKeys(sheet: HTMLElement): () => void {
  let left: HTMLElement | undefined;

  function press(event: KeyboardEvent): void {
    const { target } = event;
    if (!(target instanceof HTMLElement)) return;
    if (event.key === 'Escape' && target.matches('select.row-unit') && left !== undefined) {
      left.focus();
      return;
    }
    if (!target.matches('[data-name]')) return;
    if (event.key === 'F2') {
      const unit = target.closest('.row')?.querySelector<HTMLElement>('select.row-unit');
      if (unit === null || unit === undefined) return;
      left = target;
      event.preventDefault();
      unit.focus();
      return;
    }
    const list = target.matches('textarea');
    if (event.key !== 'Enter' || event.isComposing || event.ctrlKey || event.metaKey) return;
    // In a field of several readings Enter begins the next of them.
    if (list) return;
    event.preventDefault();
    const next = below(sheet, target, event.shiftKey ? -1 : 1);
    next?.focus();
    // What is typed next takes the place of what stands there, as after Tab.
    if (next instanceof HTMLInputElement) next.select();
  }
  sheet.addEventListener('keydown', press);
  return () => sheet.removeEventListener('keydown', press);
}

/** The field `way` rows from this one in its column; one that serves both sets stands in both columns. */
function below(sheet: HTMLElement, field: HTMLElement, way: 1 | -1): HTMLElement | undefined {
  const set = field.dataset['set'] ?? 'baseline';
  const seen = [...sheet.querySelectorAll<HTMLElement>('.row')].filter(
    (row) => row.offsetParent !== null,
  );
  const here = field.closest<HTMLElement>('.row');
  const row = here === null ? undefined : seen[seen.indexOf(here) + way];
  const fields = [...(row?.querySelectorAll<HTMLElement>('[data-name]') ?? [])];
  return fields.find((each) => each.dataset['set'] === set) ?? fields[0];
}
