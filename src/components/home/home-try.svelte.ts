import { hydrate } from 'svelte';
import { opened } from '../../notebook/notebook.svelte.ts';
import { workOf } from '../waking/alive.svelte.ts';
import HomeTry from './HomeTry.svelte';

/** Brings the first page's calculator to life in the server's HTML. */
const target = document.querySelector<HTMLElement>('[data-home-try]');
if (target !== null) {
  await opened;
  hydrate(HomeTry, {
    target,
    props: { work: await workOf('bobweight'), href: target.dataset['href'] ?? '' },
  });
  target.setAttribute('data-alive', '');
  document.documentElement.removeAttribute('data-pending');
}
