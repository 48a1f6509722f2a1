import { hydrate } from 'svelte';
import { clickCell, moveByKeys } from '../form/keys.ts';
import { opened } from '../../notebook/notebook.svelte.ts';
import Jobs from './Jobs.svelte';

/** Brings the list of jobs to life in the server's HTML. */
const target = document.querySelector<HTMLElement>('[data-jobs]');
if (target !== null) {
  await opened;
  hydrate(Jobs, { target });
  document.addEventListener('keydown', moveByKeys);
  document.addEventListener('click', clickCell);
  target.setAttribute('data-alive', '');
  document.documentElement.removeAttribute('data-pending');
}
