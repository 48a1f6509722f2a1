import { loadLinks } from '../../notebook/dictionary.ts';
import { notebook } from '../../notebook/notebook.svelte.ts';
import { to } from '../site/to.ts';
import { entriesOf, workOf } from '../waking/alive.svelte.ts';
import { unfetched } from '../site/unfetched.ts';
import { DemonstrationShelf, mostDemonstrations } from './demonstrations.ts';

/**
 * Lets the desk keep the screen that is shown, with the numbers of the page and what its figures are set to.
 *
 * @param titleOf gives what the screen is called
 */
export function wireKeeping(desk: HTMLElement, titleOf: () => string): void {
  const form = desk.querySelector<HTMLFormElement>('[data-keep]');
  const note = form?.querySelector('input');
  const said = desk.querySelector<HTMLElement>('[data-kept]');
  const ids = desk.querySelector<HTMLElement>('[data-notebook-bar]')?.dataset['notebookBar'] ?? '';
  if (form === null || note === null || note === undefined || said === null) return;

  async function keep(): Promise<string> {
    const [works] = await Promise.all([Promise.all(ids.split(' ').map(workOf)), loadLinks()]);
    const { pathname, hash } = new URL(notebook.linkFor(entriesOf(works)).href);
    const shelf = new DemonstrationShelf();
    if (shelf.list.length >= mostDemonstrations)
      return `The list is full: it holds ${String(mostDemonstrations)}. Save it as a file and begin another.`;
    const path = pathname.slice(to('').length) + hash;
    const isKept = shelf.keep([
      ...shelf.list,
      { title: titleOf(), path, note: note?.value.trim() ?? '' },
    ]);
    if (note !== null && note !== undefined) note.value = '';
    return isKept
      ? `Kept as number ${String(shelf.list.length)} of the demonstrations.`
      : 'This browser does not keep it. Copy the link instead.';
  }
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    void keep().then(
      (words) => (said.textContent = words),
      () => (said.textContent = unfetched),
    );
  });
}
