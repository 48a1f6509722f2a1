import { hydrate } from 'svelte';
import { opened } from '../../notebook/notebook.svelte.ts';
import { workOf } from '../waking/alive.svelte.ts';
import BalanceCard from './BalanceCard.svelte';

document.querySelector('[data-print]')?.addEventListener('click', () => {
  window.print();
});

/** Brings the balance card to life in the server's HTML. */
const target = document.querySelector<HTMLElement>('[data-card]');
if (target !== null) {
  await opened;
  const work = await workOf('bobweight');
  hydrate(BalanceCard, { target, props: { work, workOf } });
  target.setAttribute('data-alive', '');
}
