import { hydrate } from 'svelte';
import { opened } from '../../notebook/notebook.svelte.ts';
import { workOf } from '../waking/alive.svelte.ts';
import MatchingSheet from './MatchingSheet.svelte';

/** Brings the matching sheet to life in the server's HTML, which has the sets of the example. */
const target = document.querySelector<HTMLElement>('[data-matching]');
if (target !== null) {
  await opened;
  hydrate(MatchingSheet, { target, props: { work: await workOf('part-matching') } });
  target.setAttribute('data-alive', '');
  document.documentElement.removeAttribute('data-pending');
}
