import { isLink } from '../../notebook/is-link.ts';

/*
 * A part in a frame of another site comes to life as on its topic's page. What the notebook bar says there, of numbers
 * that come with the address, is said here in one line.
 */
async function follow(): Promise<void> {
  const words = document.querySelector('[data-whose]');
  const { notebook, opened } = await import('../../notebook/notebook.svelte.ts');
  await opened;
  document.documentElement.removeAttribute('data-pending');
  if (words === null) return;
  const { visiting, notice } = notebook;
  if (visiting !== undefined)
    words.textContent = ['The numbers come with the address.', ...visiting.problems].join(' ');
  else if (notice !== undefined)
    words.textContent = `${notice} Those shown are an invented example.`;
}

if (isLink(location.hash)) void follow();
