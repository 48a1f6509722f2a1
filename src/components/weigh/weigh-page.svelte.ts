import { hydrate } from 'svelte';
import { opened } from '../../notebook/notebook.svelte.ts';
import WeighSheet from './WeighSheet.svelte';

/** Brings the weigh sheet to life in the server's HTML, which has the rows of the example's layout. */
const target = document.querySelector<HTMLElement>('[data-weigh]');
if (target !== null) {
  await opened;
  hydrate(WeighSheet, { target });
  target.setAttribute('data-alive', '');
  document.documentElement.removeAttribute('data-pending');
}
