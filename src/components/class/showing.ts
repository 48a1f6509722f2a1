import { to } from '../site/to.ts';
import type { DemonstrationShelf } from './demonstrations.ts';

/** The list that is shown in this tab, from the class view of one of its screens. */
export interface Showing {
  /** False where the class view was opened by itself. */
  readonly isOn: boolean;
  /** Goes to the next one of the list, or back; stays at either end. */
  go(way: 1 | -1): void;
}

/** The showing of a list, if this page was opened as one of it; its note and its place stand on the desk. */
export function showingOf(shelf: DemonstrationShelf): Showing {
  const { list } = shelf;
  const at = shelf.shown;
  const here = at === undefined ? undefined : list[at];
  const isHere = here !== undefined && to(here.path) === location.pathname + location.hash;
  if (at === undefined || here === undefined || !isHere) {
    shelf.show(undefined);
    return { isOn: false, go: () => undefined };
  }
  const said = document.querySelector<HTMLElement>('[data-shown]');
  if (said !== null)
    said.textContent = `${String(at + 1)} of ${String(list.length)} kept. ${here.note}`;
  return {
    isOn: true,
    go(way) {
      const next = list[at + way];
      if (next === undefined) return;
      shelf.show(at + way);
      const isSamePage = to(next.path).split('#')[0] === location.pathname;
      location.assign(to(next.path));
      // Where only the fragment is another, the page would stay as it is.
      if (isSamePage) location.reload();
    },
  };
}
