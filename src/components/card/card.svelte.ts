import { hydrate } from 'svelte';
import { bobweight } from '../../calculators/balance/bobweight.ts';
import { opened } from '../../notebook/notebook.svelte.ts';
import { Work } from '../../notebook/work.svelte.ts';
import BalanceCard from './BalanceCard.svelte';

document.querySelector('[data-print]')?.addEventListener('click', () => {
  window.print();
});

/** Brings the balance card to life in the server's HTML. */
const target = document.querySelector<HTMLElement>('[data-card]');
if (target !== null) {
  await opened;
  const work = new Work(bobweight);
  $effect.root(() => {
    work.sets.baseline.follow();
    work.sets.candidate.follow();
  });
  hydrate(BalanceCard, { target, props: { work } });
  target.setAttribute('data-alive', '');
}
