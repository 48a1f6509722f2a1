import { hydrate } from 'svelte';
import { opened } from '../../notebook/notebook.svelte.ts';
import Jobs from './Jobs.svelte';

/** Brings the list of jobs to life in the server's HTML. */
const target = document.querySelector<HTMLElement>('[data-jobs]');
if (target !== null) {
  await opened;
  hydrate(Jobs, { target });
  target.setAttribute('data-alive', '');
  document.documentElement.removeAttribute('data-pending');
}
